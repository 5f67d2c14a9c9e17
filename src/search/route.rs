//! From a chain of labels to a whole plan.

use super::label::Label;
use crate::plan::{
    Duct, Elbow, ElbowKind, Fitting, LegState, Plan, Point, Riser, Run, RunPoint, Termination,
    TerminationKind,
};
use crate::units::Length;

/// The elbow that new runs are made with: the one most used in the present run, where it is one that
/// can be bought.
pub(super) fn usual_elbow(run: &Run) -> Elbow {
    let fittings = run.points.iter().map(|point| &point.fitting);
    let elbows = core::iter::once(&run.outlet)
        .chain(fittings)
        .flat_map(|it| {
            let riser = it.riser.map(|riser| riser.elbow);
            core::iter::once(it.elbow).chain(riser)
        });
    let bought: Vec<Elbow> = elbows
        .filter(|elbow| elbow.kind != ElbowKind::BentFlexible)
        .collect();
    let uses = |elbow: &Elbow| bought.iter().filter(|other| *other == elbow).count();
    // Of those used as often, the first.
    let most = bought.iter().rev().max_by_key(|elbow| uses(elbow));
    most.copied().unwrap_or(Elbow {
        kind: ElbowKind::Segmented,
        radius: run.diameter,
    })
}

/// What new runs end in at a wall: what the present one does, where that fits a wall.
pub(super) fn wall_termination(present: TerminationKind) -> TerminationKind {
    match present {
        TerminationKind::WallHood | TerminationKind::LouvredHood => present,
        TerminationKind::RoofCap | TerminationKind::OpenEnd => TerminationKind::WallHood,
    }
}

/// A corner: where, and how far the run rises there.
pub(super) type Corner = (Point, Length);

/// `plan` with a run of clean rigid duct from the outlet by `corners`, the first of which is the outlet,
/// to `end`, which rises where it goes up through the roof.
pub(super) fn plan_by(plan: &Plan, elbow: Elbow, corners: &[Corner], end: Corner) -> Plan {
    let fitting = |rise: Length| Fitting {
        elbow,
        riser: (rise != Length::ZERO).then_some(Riser { rise, elbow }),
    };
    let mut plan = plan.clone();
    let outlet = corners.first().map_or(Length::ZERO, |(_, rise)| *rise);
    plan.run.outlet = fitting(outlet);
    let ends = core::iter::once(end);
    let points = corners.iter().skip(1).copied().chain(ends).enumerate();
    plan.run.points = points
        .map(|(index, (position, rise))| RunPoint {
            id: format!("p{}", index + 1).as_str().into(),
            position,
            duct: Duct::Rigid,
            leg: LegState::default(),
            fitting: fitting(rise),
        })
        .collect();
    plan.run.termination = Termination::clean(if end.1 == Length::ZERO {
        wall_termination(plan.run.termination.kind)
    } else {
        TerminationKind::RoofCap
    });
    plan
}

/// The corners of a chain of labels, from the outlet on.
pub(super) fn corners(
    chain: &[Label],
    outlet: Point,
    at: impl Fn(&Label) -> (Point, Length),
) -> Vec<Corner> {
    let mut corners = vec![(outlet, Length::ZERO)];
    for pair in chain.windows(2) {
        let (before, after) = (&pair[0], &pair[1]);
        let ((_, low), (point, high)) = (at(before), at(after));
        let turns = before.way != after.way || low != high;
        if turns && after.terminal.is_none() {
            let is_outlet =
                before.before.is_none() && before.is_first_leg && point == at(&chain[0]).0;
            if is_outlet {
                corners[0].1 = high - low;
            } else {
                corners.push((point, high - low));
            }
        }
    }
    corners
}
