//! How sure the figures are: the run worked out again for a fixed sample of all uncertain inputs.

use super::{CompiledRun, Draw, INPUTS, operating_point};
use crate::numeric::Sobol;
use serde::{Deserialize, Serialize};

/// How many runs the band is read from.
pub const BAND_SAMPLES: usize = 512;

/// The 10th and 90th percentile of a figure over the sample.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Band {
    /// 10th percentile.
    pub low: f64,
    /// 90th percentile.
    pub high: f64,
}

/// The bands of a run's totals, in SI.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Bands {
    /// Airflow, m³/s.
    pub airflow: Band,
    /// Back pressure, Pa.
    pub back_pressure: Band,
    /// Velocity, m/s.
    pub velocity: Band,
}

/// The bands of `run` over the first [`BAND_SAMPLES`] points of the Sobol sequence, each input
/// triangular over its low, likely and high, one draw shared by all elements that use it. The same
/// run gives the same band to the last bit. None where any drawn blower moves no air.
pub fn bands(run: &CompiledRun) -> Option<Bands> {
    let mut airflows = Vec::with_capacity(BAND_SAMPLES);
    let mut pressures = Vec::with_capacity(BAND_SAMPLES);
    let mut velocities = Vec::with_capacity(BAND_SAMPLES);
    for point in Sobol::default().take(BAND_SAMPLES) {
        let mut quantiles = [0.0; INPUTS];
        quantiles.copy_from_slice(&point[..INPUTS]);
        let evaluation = operating_point(run, &Draw::at(quantiles)).ok()?.evaluation;
        airflows.push(evaluation.airflow.cubic_metres_per_second());
        pressures.push(evaluation.back_pressure.pascals());
        velocities.push(evaluation.velocity.metres_per_second());
    }
    Some(Bands {
        airflow: band(airflows),
        back_pressure: band(pressures),
        velocity: band(velocities),
    })
}

fn band(mut values: Vec<f64>) -> Band {
    values.sort_by(f64::total_cmp);
    Band {
        low: percentile(&values, 0.1),
        high: percentile(&values, 0.9),
    }
}

/// The share `at` of sorted `values`, straight between neighbours.
#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "an index into at most 512 values"
)]
fn percentile(values: &[f64], at: f64) -> f64 {
    let place = at * (values.len() - 1) as f64;
    let below = place as usize;
    let above = (below + 1).min(values.len() - 1);
    values[below] + (values[above] - values[below]) * place.fract()
}
