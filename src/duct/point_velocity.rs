//! From what a vane or a pitot tube reads to the mean velocity in a duct.

use crate::units::{Density, Pressure, Velocity};

/// The velocity that a pitot tube's velocity pressure means: sqrt(2 q / rho); nought for a negative one.
///
/// ```
/// use elbowroom::{duct::point_velocity, units::{Density, Pressure}};
/// // 25 Pa in air of 1.2 kg/m³: sqrt(2 * 25 / 1.2) = 6.455 m/s (worked by hand).
/// let air = Density::from_kilograms_per_cubic_metre(1.2);
/// let velocity = point_velocity::of_pitot(Pressure::from_pascals(25.0), air);
/// assert!((velocity.metres_per_second() - 6.455).abs() < 1e-3);
/// ```
pub fn of_pitot(velocity_pressure: Pressure, density: Density) -> Velocity {
    let q = velocity_pressure.pascals().max(0.0);
    Velocity::from_metres_per_second((2.0 * q / density.kilograms_per_cubic_metre()).sqrt())
}

/// The mean of the velocities at the points of a traverse; none without a point. Each point stands
/// for the same area, so it is the velocities that are averaged, not their pressures.
///
/// Source: [`SOURCE`](crate::duct::tables::velocity_points::SOURCE).
#[allow(clippy::cast_precision_loss, reason = "a few dozen points")]
pub fn mean(points: &[Velocity]) -> Option<Velocity> {
    let sum: f64 = points.iter().map(|point| point.metres_per_second()).sum();
    (!points.is_empty()).then(|| Velocity::from_metres_per_second(sum / points.len() as f64))
}
