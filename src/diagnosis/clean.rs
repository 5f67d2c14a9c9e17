//! What a clean run would have read: the plan with its own faults taken away, under the conditions of
//! each reading, with its band.

use super::evidence::{Planned, Quantity, planned};
use super::model::Model;
use super::particle::Fault;
use super::predict::{airflows, predict};
use crate::plan::{Plan, Reading};
use crate::system::Band;
use serde::{Deserialize, Serialize};

/// How many runs the bands are read from.
pub const CLEAN_DRAWS: usize = 512;

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
    /// The standard error that the reading is taken with: instrument, place and formulas.
    pub error: f64,
    /// The airflow at the outlet that the likely clean run has under these conditions, m³/s.
    pub airflow: f64,
    /// Its velocity pressure at the place, Pa.
    pub velocity_pressure: f64,
}

/// The clean prediction beside each reading, for exactly its conditions; none for a place that is no
/// more in the plan, or for a temperature where the plan's air keeps its own.
pub fn clean_readings(plan: &Plan, readings: &[&Reading]) -> Vec<Option<CleanReading>> {
    let none = || readings.iter().map(|_| None).collect();
    let (Some(mut likely), Some(mut drawn)) = (Model::of(plan, 0), Model::of(plan, CLEAN_DRAWS))
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
            let (mut all, _) = clean_values(&drawn, &at);
            let (values, velocity_pressure) = clean_values(&likely, &at_likely);
            let swirl = at.swirl * velocity_pressure;
            Some(CleanReading {
                read: at.value,
                likely: *values.first()?,
                error: at.error.hypot(at.relative * at.value).hypot(swirl),
                airflow: *airflows(&likely, &at_likely, &[]).first()?,
                velocity_pressure,
                band: Band::of(&mut all),
            })
        })
        .collect()
}

/// The values under each draw and the mean velocity pressure at the place, Pa.
fn clean_values(model: &Model, at: &Planned) -> (Vec<f64>, f64) {
    const NOTHING: [Fault; 0] = [];
    let mut values = Vec::new();
    let velocity_pressure = predict(model, at, &NOTHING, &mut values);
    if at.quantity == Quantity::Velocity {
        for value in &mut values {
            *value = value.max(0.0);
        }
    }
    (values, velocity_pressure)
}
