//! How warm the air is at each joint of the clean run, by its airflow.

use super::run_air::in_run;
use crate::duct::tables::site_reading::{EXHAUST_SPREAD, ROOM_SPREAD};
use crate::plan::Plan;
use crate::system::{CompiledRun, Draw, heat_at};
use crate::units::{Airflow, TemperatureDifference};

/// Airflows at which the run is marched: from the first upward by the same factor.
const NODES: usize = 12;
/// m³/s. Of the computation.
const FIRST_NODE: f64 = 0.004;
/// Of the computation.
const FACTOR: f64 = 1.4;
/// The exhaust is taken so much warmer to see how far along that is felt, K. Of the computation.
const WARMER: f64 = 4.0;

/// Temperatures of a run in one state of its air.
#[derive(Debug, Clone)]
pub(super) struct Temperatures {
    /// At each joint, deg C, by airflow.
    celsius: Vec<[f64; NODES]>,
    /// What a K more at the outlet is there, K.
    per_kelvin: Vec<[f64; NODES]>,
    /// How far the exhaust may be off what the plan says, K.
    spread: f64,
}

impl Temperatures {
    /// Of `plan` in the air that it states; none where that keeps its temperature.
    pub fn of(plan: &Plan, hot: bool) -> Option<Self> {
        let celsius = table(plan)?;
        let mut warmer = plan.clone();
        let more = TemperatureDifference::from_kelvins(WARMER);
        warmer.exhaust.temperature = plan.exhaust.temperature + more;
        // As much vapour as before.
        let humidity = |plan: &Plan| {
            let pressure = crate::air::pressure_at_altitude(plan.site.altitude);
            let exhaust = &plan.exhaust;
            crate::air::MoistAir::new(exhaust.temperature, pressure, exhaust.relative_humidity)
                .humidity_ratio()
        };
        let (wanted, found) = (humidity(plan), humidity(&warmer));
        if found > 0.0 {
            warmer.exhaust.relative_humidity *= wanted / found;
        }
        let mut per_kelvin = table(&warmer)?;
        for (warmer, plain) in per_kelvin.iter_mut().zip(&celsius) {
            for (warmer, plain) in warmer.iter_mut().zip(plain) {
                *warmer = (*warmer - plain) / WARMER;
            }
        }
        Some(Self {
            celsius,
            per_kelvin,
            spread: if hot { EXHAUST_SPREAD } else { ROOM_SPREAD },
        })
    }

    /// At a joint, with so much air passing it, m³/s; `off` is where between its least and its
    /// greatest the exhaust's own temperature lies, -1..1.
    pub fn at(&self, place: usize, airflow: f64, off: f64) -> f64 {
        let at = |row: &[f64; NODES]| between(row, airflow);
        at(&self.celsius[place]) + at(&self.per_kelvin[place]) * off * self.spread
    }
}

/// The value at an airflow, straight over its inverse between two nodes.
fn between(row: &[f64; NODES], airflow: f64) -> f64 {
    let upper = (1..NODES - 1)
        .find(|node| node_at(*node) > airflow)
        .unwrap_or(NODES - 1);
    let (slow, fast) = (node_at(upper - 1).recip(), node_at(upper).recip());
    let share = ((slow - airflow.recip()) / (slow - fast)).clamp(0.0, 1.0);
    row[upper - 1] + (row[upper] - row[upper - 1]) * share
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_possible_wrap,
    reason = "a few nodes"
)]
fn node_at(node: usize) -> f64 {
    FIRST_NODE * FACTOR.powi(node as i32)
}

/// deg C at the joint before each element and past the end, by airflow.
fn table(plan: &Plan) -> Option<Vec<[f64; NODES]>> {
    let (run, _) = CompiledRun::of(plan);
    let places: Vec<usize> = in_run(&run).map(|(index, _)| index).collect();
    let mut rows = vec![[0.0; NODES]; places.len() + 1];
    for node in 0..NODES {
        let airflow = Airflow::from_cubic_metres_per_second(node_at(node));
        let profile = heat_at(&run, airflow, &Draw::LIKELY)?;
        for (row, place) in rows.iter_mut().zip(&places) {
            row[node] = profile.elements[*place].entering.celsius();
        }
        rows[places.len()][node] = profile.leaving().celsius();
    }
    Some(rows)
}
