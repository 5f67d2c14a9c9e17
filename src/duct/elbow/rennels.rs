//! Smooth bends by Rennels and Hudson.

use super::LinearInFriction;
use crate::source::source;
use crate::units::Angle;

source! {
    /// The formula's source.
    pub static RENNELS_SOURCE {
        title: "Rennels & Hudson, Pipe Flow: A Practical and Comprehensive Guide",
        edition: "1st, 2012",
        locator: "ch. 15, smooth bends, as implemented in the `fluids` library",
        standing: Published,
    }
}

/// Loss of total pressure in a smooth round bend, in velocity pressures, friction along the arc
/// included:
/// K = f a (r/D) + (0.10 + 2.4 f) sin(a/2) + 6.6 f (sqrt(sin(a/2)) + sin(a/2)) / (r/D)^(4a/pi).
///
/// * `angle`: turn a, 0..180 deg.
/// * `radius_ratio`: centre-line radius over inside diameter r/D, at least 0.5.
///
/// Off: below 45 deg it gives more than a sharp mitre (the laws here take the lesser); a value
/// above 1.3 for a 90 of r/D 0.75 or more is out of its range.
/// Source: [`RENNELS_SOURCE`].
///
/// ```
/// use elbowroom::{duct::elbow, units::Angle};
/// // 0.0369 + 0.1564 * 0.7071 + 0.1551 * 1.5480, worked by hand.
/// let k = elbow::rennels(Angle::from_degrees(90.0), 1.0).at(0.0235);
/// assert!((k - 0.3876).abs() < 2e-4);
/// ```
pub fn rennels(angle: Angle, radius_ratio: f64) -> LinearInFriction {
    let a = angle.radians();
    let half_sine = (a / 2.0).sin();
    let curvature = radius_ratio.powf(4.0 * a / core::f64::consts::PI);
    LinearInFriction {
        constant: 0.10 * half_sine,
        slope: a * radius_ratio
            + 2.4 * half_sine
            + 6.6 * (half_sine.sqrt() + half_sine) / curvature,
    }
}
