//! Which input moves a figure most: first-order shares of its variance.

use super::INPUTS;
use crate::plan::Input;
use serde::{Deserialize, Serialize};

/// A share that is less than this, 0..1, is the sample's own noise. Of the computation.
pub const LEAST_SHARE: f64 = 0.01;

/// How much of a figure's variance one input alone accounts for.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Share {
    /// The input.
    #[serde(deserialize_with = "any_input")]
    pub input: Input,
    /// First-order share of the variance, 0..1.
    pub share: f64,
}

/// Reads an input by its name, those too that no plan can set.
fn any_input<'a, D: serde::Deserializer<'a>>(reader: D) -> Result<Input, D::Error> {
    let name = String::deserialize(reader)?;
    let mut inputs = Input::ALL.into_iter();
    let input = inputs.find(|input| input.to_string() == name);
    input.ok_or_else(|| serde::de::Error::custom(name))
}

/// The first-order shares of the variance of each of `values`, worked out at `quantiles`, most first;
/// what is under [`LEAST_SHARE`] is left out. Nothing where the values do not differ.
///
/// The figure is projected on the first three orthonormal Legendre polynomials of each input's
/// quantile: the sum of the squared coefficients over the variance is that input's share, as in a
/// polynomial chaos expansion. I. M. Sobol', "Sensitivity estimates for nonlinear mathematical
/// models" (1993), defines the share; B. Sudret, "Global sensitivity analysis using polynomial chaos
/// expansions", Reliability Engineering & System Safety 93 (2008) 964-979, the projection (both from
/// memory). What an input does beyond a cubic is left out.
pub(super) fn shares<const FIGURES: usize>(
    quantiles: &[[f64; INPUTS]],
    values: [&[f64]; FIGURES],
) -> [Vec<Share>; FIGURES] {
    #[allow(clippy::cast_precision_loss, reason = "a few thousand values")]
    let count = quantiles.len() as f64;
    let means = values.map(|values| values.iter().sum::<f64>() / count);
    let mut sums = [[[0.0; 3]; INPUTS]; FIGURES];
    for (draw, quantiles) in quantiles.iter().enumerate() {
        let polynomials = quantiles.map(legendre);
        for figure in 0..FIGURES {
            let off = values[figure][draw] - means[figure];
            for (sums, polynomials) in sums[figure].iter_mut().zip(&polynomials) {
                for (sum, polynomial) in sums.iter_mut().zip(polynomials) {
                    *sum += off * polynomial;
                }
            }
        }
    }
    core::array::from_fn(|figure| {
        let mean = means[figure];
        let squares = values[figure].iter().map(|value| (value - mean).powi(2));
        let variance = squares.sum::<f64>() / count;
        // A stated airflow is the same in every draw but for the last digits.
        if variance <= (mean * 1e-9).powi(2) {
            return Vec::new();
        }
        let shares = Input::ALL.into_iter().map(|input| {
            let sums = sums[figure][input as usize];
            let squares = sums.iter().map(|sum| (sum / count).powi(2));
            let share = squares.sum::<f64>() / variance;
            Share { input, share }
        });
        let mut shares: Vec<Share> = shares.filter(|share| share.share >= LEAST_SHARE).collect();
        shares.sort_by(|a, b| b.share.total_cmp(&a.share));
        shares
    })
}

/// The Legendre polynomials of degree 1 to 3, orthonormal over `u` in 0..1.
fn legendre(u: f64) -> [f64; 3] {
    let x = 2.0 * u - 1.0;
    [
        3.0_f64.sqrt() * x,
        5.0_f64.sqrt() * (1.5 * x * x - 0.5),
        7.0_f64.sqrt() * (2.5 * x * x - 1.5) * x,
    ]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::numeric::Sobol;

    fn sample(count: usize) -> Vec<[f64; INPUTS]> {
        Sobol::default()
            .take(count)
            .map(|point| {
                let mut quantiles = [0.0; INPUTS];
                quantiles.copy_from_slice(&point[..INPUTS]);
                quantiles
            })
            .collect()
    }

    /// Of a sum of independent uniform variables with factors a, the shares are a²/sum of a².
    #[test]
    fn a_weighted_sum_has_the_shares_of_its_squared_weights() {
        let quantiles = sample(512);
        let values: Vec<f64> = quantiles
            .iter()
            .map(|q| 3.0 * q[2] - 2.0 * q[7] + q[11])
            .collect();
        let [found] = shares(&quantiles, [&values]);
        let inputs: Vec<usize> = found.iter().map(|share| share.input as usize).collect();
        assert_eq!(inputs, [2, 7, 11]);
        for (share, wanted) in found.iter().zip([9.0 / 14.0, 4.0 / 14.0, 1.0 / 14.0]) {
            assert!((share.share - wanted).abs() < 0.005, "{share:?}, {wanted}");
        }
    }

    /// x y of two uniform variables over 0..1: variance 7/144, each alone 1/48 of it, 3/7.
    #[test]
    fn what_two_do_together_is_no_ones_share() {
        let quantiles = sample(2_048);
        let values: Vec<f64> = quantiles.iter().map(|q| q[0] * q[5]).collect();
        let [found] = shares(&quantiles, [&values]);
        assert_eq!(found.len(), 2);
        for share in found {
            assert!((share.share - 3.0 / 7.0).abs() < 0.005, "{share:?}");
        }
    }

    #[test]
    fn every_input_comes_back_from_its_name() {
        for input in Input::ALL {
            let share = Share { input, share: 0.5 };
            let text = serde_json::to_string(&share).unwrap_or_default();
            assert_eq!(
                serde_json::from_str::<Share>(&text).ok(),
                Some(share),
                "{text}"
            );
        }
    }

    #[test]
    fn figures_that_do_not_differ_have_no_shares() {
        assert_eq!(shares(&sample(64), [&[0.06; 64]]), [vec![]]);
    }
}
