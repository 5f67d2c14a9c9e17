//! The Sobol sequence against `sobol.csv`: scipy 1.17.1, direction numbers of Joe and Kuo 2008.

use crate::reference;
use elbowroom::numeric::{SOBOL_DIMENSIONS, Sobol};

/// As many points as a band is read from.
const ROWS: usize = 512;

/// Every coordinate is a multiple of 1/512, so both sides are exact.
#[test]
#[allow(clippy::float_cmp, reason = "both sides are exact")]
fn the_points_are_scipys() {
    let rows: Vec<[f64; SOBOL_DIMENSIONS]> = reference::rows("sobol.csv", ROWS);
    for (index, (found, expected)) in Sobol::default().zip(&rows).enumerate() {
        assert_eq!(found, *expected, "point {index}");
    }
    assert_eq!(Sobol::default().take(rows.len()).count(), rows.len());
}
