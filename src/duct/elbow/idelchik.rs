//! Smooth bends by Idelchik.

use super::LinearInFriction;
use crate::units::Angle;

/// Loss of total pressure in a smooth round bend, in velocity pressures, friction along the arc
/// included: K = A1 B1 + f a R, with R = r/D;
/// A1 is 0.9 sin a to 70 deg, 1 at 90, 0.7 + 0.35 a/90 from 100 deg, straight between;
/// B1 is 0.21 R^-2.5 for R below 1 and 0.21 R^-0.5 from 1 on.
///
/// * `angle`: 0..180 deg; * `radius_ratio`: r/D 0.5..1.5 as measured, used to 4 here.
///
/// Source: I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 6-1 (from memory);
/// its factors for roughness and low Reynolds number are left out.
pub fn idelchik(angle: Angle, radius_ratio: f64) -> LinearInFriction {
    let degrees = angle.degrees();
    let by_angle = if degrees <= 70.0 {
        0.9 * angle.radians().sin()
    } else if degrees <= 90.0 {
        let at_70 = 0.9 * 70.0_f64.to_radians().sin();
        at_70 + (1.0 - at_70) * (degrees - 70.0) / 20.0
    } else if degrees <= 100.0 {
        let at_100 = 0.7 + 0.35 * 100.0 / 90.0;
        1.0 + (at_100 - 1.0) * (degrees - 90.0) / 10.0
    } else {
        0.7 + 0.35 * degrees / 90.0
    };
    let exponent = if radius_ratio < 1.0 { -2.5 } else { -0.5 };
    LinearInFriction {
        constant: by_angle * 0.21 * radius_ratio.powf(exponent),
        slope: angle.radians() * radius_ratio,
    }
}
