//! Velocity pressure.

use crate::units::{Density, Pressure, Velocity};

/// q = rho V²/2, the pressure that air gives up when it is brought to rest.
///
/// ```
/// use elbowroom::{duct::velocity_pressure, units::{Density, Velocity}};
/// // 1146 fpm at 70 °F: 0.082 in. w.c. (derived).
/// let q = velocity_pressure(
///     Density::from_kilograms_per_cubic_metre(1.2),
///     Velocity::from_metres_per_second(5.82),
/// );
/// assert!((q.pascals() / 248.84 - 0.082).abs() < 0.0005);
/// ```
pub fn velocity_pressure(density: Density, velocity: Velocity) -> Pressure {
    let speed = velocity.metres_per_second();
    Pressure::from_pascals(density.kilograms_per_cubic_metre() * speed * speed / 2.0)
}
