//! Air pressure by altitude.

use crate::source::source;
use crate::units::{Length, Pressure};

source! {
    /// Of the pressure by altitude.
    pub static ALTITUDE_SOURCE {
        title: "ISO 2533, Standard Atmosphere",
        edition: "1975",
        locator: "pressure in the troposphere",
        standing: Published,
    }
}

/// Pressure of the standard atmosphere at `altitude` above sea level:
/// p = 101325 (1 - 2.25577e-5 z)^5.2559, z in m.
///
/// Range: -500..11,000 m. Weather moves the true pressure by about 3 % either way.
/// Source: ISO 2533:1975, Standard Atmosphere, troposphere.
///
/// ```
/// use elbowroom::{air::pressure_at_altitude, units::Length};
/// let denver = pressure_at_altitude(Length::from_metres(1609.0));
/// assert!((denver.pascals() - 83_436.0).abs() < 60.0);
/// ```
pub fn pressure_at_altitude(altitude: Length) -> Pressure {
    /// Source: [`ALTITUDE_SOURCE`].
    const SEA_LEVEL_PASCALS: f64 = 101_325.0;
    const PER_METRE: f64 = 2.255_77e-5;
    const EXPONENT: f64 = 5.2559;
    Pressure::from_pascals(SEA_LEVEL_PASCALS * (1.0 - PER_METRE * altitude.metres()).powf(EXPONENT))
}
