//! Readings under one set of faults, taken as jointly normal over the draws: what the readings taken
//! say of a set of faults, and what they leave open of a reading to come.

/// A square root of a covariance, by rows: its lower triangle.
#[derive(Debug, Clone)]
pub(super) struct Joint {
    /// Each reading's values over the draws, less their mean.
    spread: Vec<Vec<f64>>,
    root: Vec<Vec<f64>>,
    /// The covariance's inverse times what the readings are off their means.
    weighted: Vec<f64>,
    /// The sum of squares that the readings are off by, in standard deviations.
    pub misfit: f64,
    /// The logarithm of the readings' likelihood.
    pub log_likelihood: f64,
}

/// A reading's values over the draws, what was read, and the variance of the reading itself.
pub(super) struct Sample {
    pub values: Vec<f64>,
    pub read: f64,
    pub variance: f64,
}

/// The least variance that a reading is taken to have, so that nothing is ever certain.
/// Of the computation.
const LEAST_VARIANCE: f64 = 1e-6;

impl Joint {
    #[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
    pub fn of(samples: &[Sample]) -> Self {
        let count = samples.len();
        let mut off = Vec::with_capacity(count);
        let spread: Vec<Vec<f64>> = samples
            .iter()
            .map(|sample| {
                let mean = mean(&sample.values);
                off.push(sample.read - mean);
                sample.values.iter().map(|value| value - mean).collect()
            })
            .collect();
        let mut root = vec![vec![0.0; count]; count];
        for row in 0..count {
            for column in 0..=row {
                let mut value = covariance(&spread[row], &spread[column]);
                if row == column {
                    value += samples[row].variance.max(LEAST_VARIANCE);
                }
                value -= dot(&root[row][..column], &root[column][..column]);
                root[row][column] = if row == column {
                    value.max(LEAST_VARIANCE).sqrt()
                } else {
                    value / root[column][column]
                };
            }
        }
        let standard = forward(&root, &off);
        let misfit: f64 = standard.iter().map(|value| value * value).sum();
        let log_root: f64 = (0..count).map(|at| root[at][at].ln()).sum();
        let weighted = backward(&root, &standard);
        Self {
            spread,
            root,
            weighted,
            misfit,
            log_likelihood: -0.5 * misfit
                - log_root
                - 0.5 * (count as f64) * (2.0 * core::f64::consts::PI).ln(),
        }
    }

    /// Mean and variance of a value to come, given the readings: `values` over the draws, with the
    /// `variance` of the reading itself.
    pub fn given(&self, values: &[f64], variance: f64) -> (f64, f64) {
        let middle = mean(values);
        let spread: Vec<f64> = values.iter().map(|value| value - middle).collect();
        let cross: Vec<f64> = self
            .spread
            .iter()
            .map(|reading| covariance(reading, &spread))
            .collect();
        let expected = middle + dot(&cross, &self.weighted);
        let known = forward(&self.root, &cross);
        let left = covariance(&spread, &spread) - dot(&known, &known);
        (expected, left.max(0.0) + variance.max(LEAST_VARIANCE))
    }
}

fn dot(one: &[f64], other: &[f64]) -> f64 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
fn covariance(one: &[f64], other: &[f64]) -> f64 {
    dot(one, other) / one.len() as f64
}

/// Solves root x = right.
fn forward(root: &[Vec<f64>], right: &[f64]) -> Vec<f64> {
    let mut found: Vec<f64> = Vec::with_capacity(right.len());
    for (row, right) in right.iter().enumerate() {
        let value = (right - dot(&root[row][..row], &found)) / root[row][row];
        found.push(value);
    }
    found
}

/// Solves the transposed root x = right.
fn backward(root: &[Vec<f64>], right: &[f64]) -> Vec<f64> {
    let count = right.len();
    let mut found = vec![0.0; count];
    for row in (0..count).rev() {
        let after: f64 = (row + 1..count)
            .map(|below| root[below][row] * found[below])
            .sum();
        found[row] = (right[row] - after) / root[row][row];
    }
    found
}
