//! A plan's run assessed: operating point, ledger and findings together.

use super::{CompiledRun, Draw, Finding, Ledger, OperatingPoint, heat, operating_point};
use crate::duct::friction::{LAMINAR_BELOW, TURBULENT_FROM};
use crate::plan::Plan;

/// Everything that the physics says of a plan. Half a run still gives what can be said.
#[derive(Debug, Clone, PartialEq)]
pub struct Assessment {
    /// The run made ready.
    pub run: CompiledRun,
    /// Its operating point and ledger; none where no air moves.
    pub working: Option<(OperatingPoint, Ledger)>,
    /// What is wrong or doubtful.
    pub findings: Vec<Finding>,
}

/// Assesses the run of `plan` at likely inputs.
pub fn assess(plan: &Plan) -> Assessment {
    let (run, mut findings) = CompiledRun::of(plan);
    let working = operating_point(&run, &Draw::LIKELY).ok().map(|point| {
        let ledger = Ledger::of(&run, &point);
        (point, ledger)
    });
    match &working {
        None => findings.push(Finding::NoAirflow),
        Some((point, ledger)) => {
            for row in ledger.rows.iter().filter(|row| row.leaks()) {
                findings.push(Finding::JointLeaks {
                    element: row.element.id.clone(),
                    escaped: row.escaped,
                });
            }
            let profile = point.heat.as_ref();
            findings.extend(heat::findings(&run, ledger, profile));
            if (LAMINAR_BELOW..TURBULENT_FROM).contains(&point.evaluation.reynolds) {
                findings.push(Finding::TransitionalFlow);
            }
        }
    }
    Assessment {
        run,
        working,
        findings,
    }
}
