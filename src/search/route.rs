//! From corners to a plan whose run has them.

use super::labels::{Corner, End, Found};
use crate::plan::{
    Duct, Elbow, Fitting, LegState, Plan, Riser, RunPoint, Termination, TerminationKind,
};
use crate::units::Length;

/// `plan` with its run in rigid duct along the corners of `found`.
pub(super) fn plan_with(plan: &Plan, found: &Found, elbow: Elbow) -> Plan {
    let mut made = plan.clone();
    let level = Fitting { elbow, riser: None };
    made.run.outlet = level;
    made.run.points.clear();
    let mut before: Option<&Corner> = None;
    for corner in &found.corners {
        if let Some(before) = before {
            if before.at == corner.at {
                // A riser at the last point, which stands at the outlet where there is none.
                let rise = Length::from_metres(corner.height - before.height);
                let fitting = made
                    .run
                    .points
                    .last_mut()
                    .map_or(&mut made.run.outlet, |point| &mut point.fitting);
                fitting.riser = Some(Riser { rise, elbow });
            } else {
                made.run.points.push(RunPoint {
                    id: format!("r{}", made.run.points.len() + 1).into(),
                    position: corner.at,
                    duct: Duct::Rigid,
                    leg: LegState::default(),
                    fitting: level,
                });
            }
        }
        before = Some(corner);
    }
    let kind = match (found.end, plan.run.termination.kind) {
        (End::Roof, _) => TerminationKind::RoofCap,
        (End::Wall(_), TerminationKind::RoofCap | TerminationKind::OpenEnd) => {
            TerminationKind::WallHood
        }
        (End::Wall(_), kind) => kind,
    };
    made.run.termination = Termination::clean(kind);
    made
}
