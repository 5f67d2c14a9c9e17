//! The blower from the user's own readings: each static pressure at the outlet with a velocity there
//! under the same conditions is a point on its curve, whatever the run is like.

use super::cause::BLOWER_INPUTS;
use super::evidence::{Planned, Quantity, planned};
use super::model::Model;
use crate::plan::{Entry, Input, Override, Plan, Spot, Visit};
use crate::system::CompiledRun;
use serde::{Deserialize, Serialize};

/// A blower fitted to readings, with what it rests on.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BlowerFit {
    /// The values that take the place of the assumed blower's.
    pub overrides: Vec<Override>,
    /// How many points of the curve were read.
    pub points: usize,
}

/// How many exponents and how many corners of the readings' errors are tried.
const EXPONENTS: usize = 9;
/// Two points closer than this, as a share of the airflow, fix no curve. Of the computation.
const LEAST_APART: f64 = 0.12;

/// A point of the curve: airflow, m³/s; pressure at density 1.2, Pa; and the standard error of each.
struct CurvePoint {
    airflow: (f64, f64),
    pressure: (f64, f64),
}

/// The blower that the readings of `visit` fix; none where fewer than two points of its curve were
/// read. An outlet that stands open is a point without pressure.
pub fn fit_blower(plan: &Plan, visit: &Visit, note: &str) -> Option<BlowerFit> {
    let mut model = Model::of(plan, 0)?;
    let points = points(&mut model, visit);
    let slow = points
        .iter()
        .min_by(|one, other| one.airflow.0.total_cmp(&other.airflow.0))?;
    let fast = points
        .iter()
        .max_by(|one, other| one.airflow.0.total_cmp(&other.airflow.0))?;
    if fast.airflow.0 < slow.airflow.0 * (1.0 + LEAST_APART) {
        return None;
    }
    let (run, _) = CompiledRun::of(plan);
    let exponent = run.coefficients[Input::BlowerExponent as usize];
    let mut found: [Vec<f64>; 2] = [Vec::new(), Vec::new()];
    let corners = [-1.0, 0.0, 1.0];
    for step in 0..EXPONENTS {
        #[allow(clippy::cast_precision_loss, reason = "a few steps")]
        let share = step as f64 / (EXPONENTS - 1) as f64;
        let n = exponent.low + (exponent.high - exponent.low) * share;
        for (a, b, c, d) in corners
            .iter()
            .flat_map(|a| corners.iter().map(move |b| (a, b)))
            .flat_map(|(a, b)| corners.iter().map(move |c| (a, b, c)))
            .flat_map(|(a, b, c)| corners.iter().map(move |d| (a, b, c, d)))
        {
            let shifted = |(value, error): (f64, f64), by: &f64| value + by * error;
            let (q1, p1) = (shifted(slow.airflow, a), shifted(slow.pressure, b));
            let (q2, p2) = (shifted(fast.airflow, c), shifted(fast.pressure, d));
            if let Some((free, shut_off)) = curve((q1, p1), (q2, p2), n) {
                found[0].push(free);
                found[1].push(shut_off);
            }
        }
    }
    let middle = curve(
        (slow.airflow.0, slow.pressure.0),
        (fast.airflow.0, fast.pressure.0),
        exponent.likely,
    )?;
    let likely = [middle.0, middle.1];
    let mut overrides = Vec::new();
    for ((values, likely), input) in found.into_iter().zip(likely).zip(BLOWER_INPUTS) {
        let low = values.iter().copied().fold(likely, f64::min);
        let high = values.iter().copied().fold(likely, f64::max);
        overrides.push(Override {
            input,
            low,
            likely,
            high,
            note: note.to_owned(),
        });
    }
    Some(BlowerFit {
        overrides,
        points: points.len(),
    })
}

/// Free airflow and shut-off pressure of the curve p0 (1 - (Q/Q0)^n) through two points.
fn curve(slow: (f64, f64), fast: (f64, f64), n: f64) -> Option<(f64, f64)> {
    let (x1, x2) = (slow.0.powf(n), fast.0.powf(n));
    // p = p0 - s x.
    let slope = (slow.1 - fast.1) / (x2 - x1);
    let shut_off = slow.1 + slope * x1;
    let free = (shut_off / slope).powf(n.recip());
    (slope > 0.0 && shut_off > 0.0 && free.is_finite()).then_some((free, shut_off))
}

fn points(model: &mut Model, visit: &Visit) -> Vec<CurvePoint> {
    let readings: Vec<Planned> = visit
        .entries
        .iter()
        .filter_map(|entry| match entry {
            Entry::Reading(reading) if reading.at == Spot::Outlet => planned(model, reading),
            _ => None,
        })
        .filter(|planned| planned.screen_clean)
        .collect();
    let mut points = Vec::new();
    for velocity in readings
        .iter()
        .filter(|it| it.quantity == Quantity::Velocity)
    {
        let area = model.outlet_area;
        let thin =
            model.air(velocity.setting.hot).density / crate::duct::tables::blower::STANDARD_DENSITY;
        let error = velocity.error.hypot(velocity.relative * velocity.value);
        let airflow = (velocity.value * area, error * area);
        let is_open = velocity.setting.open == Some(0);
        let pressure = readings
            .iter()
            .find(|it| it.quantity == Quantity::AgainstRoom && it.setting == velocity.setting);
        let pressure = match pressure {
            Some(pressure) => (pressure.value / thin, pressure.error / thin),
            None if is_open => (0.0, 1.0),
            None => continue,
        };
        points.push(CurvePoint { airflow, pressure });
    }
    points
}
