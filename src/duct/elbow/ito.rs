//! Smooth bends by Ito.

use crate::units::Angle;

/// Loss of total pressure in a smooth bend by Ito's measurements on smooth pipe, in velocity
/// pressures, friction along the arc included: K = 0.00431 alpha a Re^-0.17 (r/D)^0.84, a in
/// degrees; alpha is 1 + 5.13 (D/r)^1.47 at 45 deg, 0.95 + 4.42 (D/r)^1.96 at 90 and
/// 1 + 5.06 (D/r)^4.52 at 180, straight between.
///
/// * `angle`: 45..180 deg; * `radius_ratio`: r/D of 1 to 9.8; * `reynolds`: 2e4..4e5, with
///   Re (D/r)² above 360, which every elbow of a dryer's run has.
///
/// Source: H. Ito, "Pressure losses in smooth pipe bends", J. Basic Eng. 82 (1960) 131-140, as
/// given by Blevins and in the `fluids` library.
pub fn ito(angle: Angle, radius_ratio: f64, reynolds: f64) -> f64 {
    let degrees = angle.degrees();
    let alpha_45 = 1.0 + 5.13 * radius_ratio.powf(-1.47);
    let alpha_90 = 0.95 + 4.42 * radius_ratio.powf(-1.96);
    let alpha_180 = 1.0 + 5.06 * radius_ratio.powf(-4.52);
    let alpha = if degrees <= 45.0 {
        alpha_45
    } else if degrees <= 90.0 {
        alpha_45 + (alpha_90 - alpha_45) * (degrees - 45.0) / 45.0
    } else {
        alpha_90 + (alpha_180 - alpha_90) * (degrees - 90.0) / 90.0
    };
    0.00431 * alpha * degrees * reynolds.powf(-0.17) * radius_ratio.powf(0.84)
}
