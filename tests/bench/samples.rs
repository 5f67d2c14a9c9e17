//! What criterion measured, read back from its files: the median and the 95th percentile of its
//! samples, which it does not print, and the exponent with which a cost grows.

use serde::{Deserialize, Serialize};
use std::path::Path;

/// One timed thing.
#[derive(Debug, Clone, Serialize)]
pub struct Timing {
    /// Its name.
    pub name: String,
    /// Median, ns.
    pub median_ns: f64,
    /// 95th percentile, ns.
    pub p95_ns: f64,
    /// How many samples these are read from; each is the mean of many repeats of a short thing.
    pub samples: usize,
}

/// criterion's own file: so many repeats took so many nanoseconds, sample by sample.
#[derive(Deserialize)]
struct SampleFile {
    iters: Vec<f64>,
    times: Vec<f64>,
}

impl Timing {
    /// The timing of `name` in `group` below criterion's folder; none where it was left out.
    pub fn read(folder: &Path, group: &str, name: &str) -> Option<Self> {
        let file = folder.join(group).join(name).join("new/sample.json");
        let text = std::fs::read_to_string(file).ok()?;
        let file: SampleFile = serde_json::from_str(&text).expect("criterion wrote its samples");
        let means = file.times.iter().zip(&file.iters);
        let mut means: Vec<f64> = means.map(|(time, iters)| time / iters).collect();
        means.sort_by(f64::total_cmp);
        Some(Self {
            name: name.to_owned(),
            median_ns: percentile(&means, 0.5),
            p95_ns: percentile(&means, 0.95),
            samples: means.len(),
        })
    }
}

/// Removes all timings of an earlier run, so that none is taken for one of this.
pub fn forget(folder: &Path) {
    if folder.exists() {
        std::fs::remove_dir_all(folder).expect("old timings can be removed");
    }
}

/// The share `at` of sorted `values`, straight between neighbours.
#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "an index into some hundred values"
)]
fn percentile(values: &[f64], at: f64) -> f64 {
    let place = at * (values.len() - 1) as f64;
    let below = place as usize;
    let above = (below + 1).min(values.len() - 1);
    values[below] + (values[above] - values[below]) * place.fract()
}

/// The exponent b of cost = a size^b, by least squares on the logarithms.
pub fn growth_exponent(points: &[(f64, f64)]) -> f64 {
    let logarithms: Vec<(f64, f64)> = points
        .iter()
        .map(|(size, cost)| (size.ln(), cost.ln()))
        .collect();
    let mean = |values: &mut dyn Iterator<Item = f64>| {
        let (sum, count) =
            values.fold((0.0, 0.0), |(sum, count), value| (sum + value, count + 1.0));
        sum / count
    };
    let x_mean = mean(&mut logarithms.iter().map(|(x, _)| *x));
    let y_mean = mean(&mut logarithms.iter().map(|(_, y)| *y));
    let products = logarithms.iter().map(|(x, y)| (x - x_mean) * (y - y_mean));
    let squares = logarithms.iter().map(|(x, _)| (x - x_mean).powi(2));
    products.sum::<f64>() / squares.sum::<f64>()
}
