//! What a clean run would have read: the plan with its own faults taken away, under the conditions of
//! each reading, with its band.

use super::evidence::{Planned, Quantity, planned};
use super::model::Model;
use super::particle::Fault;
use super::predict::predict;
use crate::plan::{Plan, Reading};
use crate::system::Band;
use serde::{Deserialize, Serialize};

/// How many runs the bands are read from.
const BAND_DRAWS: usize = 512;

/// The plan as it would be clean: no blockage, no leak, the end wholly open.
pub fn clean_plan(plan: &Plan) -> Plan {
    let mut plan = plan.clone();
    for point in &mut plan.run.points {
        point.leg.blockage_free_area = None;
        point.leg.leak_free_area_m2 = None;
    }
    plan.run.termination.free_area = 1.0;
    plan
}

/// A reading beside what a clean run would have shown, in SI (Pa, m/s, deg C).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct CleanReading {
    /// The reading itself: of several points, what they say of the mean velocity.
    pub read: f64,
    /// What a clean run shows at likely inputs.
    pub likely: f64,
    /// From the 10th to the 90th percentile of all inputs.
    pub band: Band,
}

/// The clean prediction beside each reading, for exactly its conditions; none for a place that is no
/// more in the plan, or for a temperature where the plan's air keeps its own.
pub fn clean_readings(plan: &Plan, readings: &[&Reading]) -> Vec<Option<CleanReading>> {
    let none = || readings.iter().map(|_| None).collect();
    let (Some(mut likely), Some(mut drawn)) = (Model::of(plan, 0), Model::of(plan, BAND_DRAWS))
    else {
        return none();
    };
    readings
        .iter()
        .map(|reading| {
            let mut at_likely = planned(&mut likely, reading)?;
            at_likely.table = likely.tabulate(at_likely.setting);
            let mut at = planned(&mut drawn, reading)?;
            at.table = drawn.tabulate(at.setting);
            let mut all = clean_values(&drawn, &at);
            all.sort_by(f64::total_cmp);
            Some(CleanReading {
                read: at.value,
                likely: clean_values(&likely, &at_likely)[0],
                band: Band {
                    low: percentile(&all, 0.1),
                    high: percentile(&all, 0.9),
                },
            })
        })
        .collect()
}

fn clean_values(model: &Model, at: &Planned) -> Vec<f64> {
    const NOTHING: [Fault; 0] = [];
    let mut values = Vec::new();
    predict(model, at, &NOTHING, &mut values);
    if at.quantity == Quantity::Velocity {
        for value in &mut values {
            *value = value.max(0.0);
        }
    }
    values
}

/// The value below which the share `at` of the sorted `values` lies, straight between neighbours.
#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "an index into a few hundred values"
)]
fn percentile(values: &[f64], at: f64) -> f64 {
    let place = at * (values.len() - 1) as f64;
    let below = place as usize;
    let above = (below + 1).min(values.len() - 1);
    values[below] + (values[above] - values[below]) * place.fract()
}
