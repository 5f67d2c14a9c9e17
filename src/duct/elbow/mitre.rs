//! Sharp mitres.

use crate::duct::tables::mitre_reynolds;
use crate::units::Angle;

/// Loss of total pressure in a sharp single mitre at high Reynolds number, in velocity pressures:
/// K = 0.42 sin(a/2) + 2.56 sin³(a/2).
///
/// * `angle`: turn a, 0..150 deg.
///
/// Source: Rennels & Hudson, Pipe Flow, 2012, ch. 15, mitre bends, as in the `fluids` library.
///
/// ```
/// use elbowroom::{duct::elbow, units::Angle};
/// assert!((elbow::mitre(Angle::from_degrees(90.0)) - 1.2).abs() < 0.01);
/// ```
pub fn mitre(angle: Angle) -> f64 {
    let half_sine = (angle.radians() / 2.0).sin();
    0.42 * half_sine + 2.56 * half_sine.powi(3)
}

/// Factor on a mitre's K at the Reynolds number `reynolds`: 1.40 at 1e4 falling to 1 at 1.4e5,
/// straight between the table's rows and constant outside them.
///
/// Source: [`mitre_reynolds::SOURCE`].
pub fn mitre_reynolds_factor(reynolds: f64) -> f64 {
    let rows = &mitre_reynolds::FACTOR;
    let above = rows.partition_point(|(at, _)| *at <= reynolds);
    match above {
        0 => rows[0].1,
        above if above == rows.len() => rows[rows.len() - 1].1,
        above => {
            let (from, to) = (rows[above - 1], rows[above]);
            from.1 + (to.1 - from.1) * (reynolds - from.0) / (to.0 - from.0)
        }
    }
}
