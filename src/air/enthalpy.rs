//! Heat that air, vapour and water hold.

use crate::source::source;
use crate::units::Temperature;

source! {
    /// Of the heat that moist air holds.
    pub static ENTHALPY_SOURCE {
        title: "ASHRAE Handbook, Fundamentals, psychrometrics",
        edition: "2017",
        locator: "ch. 1: h = 1.006 t + W (2501 + 1.86 t) kJ/kg of dry air, and 4.186 t for liquid water",
        standing: Published,
    }
}

/// Heat capacity of dry air, J/(kg K). Range: -20..100 °C, within 0.3 %.
/// Source: [`ENTHALPY_SOURCE`].
pub const DRY_AIR_HEAT_CAPACITY: f64 = 1006.0;
/// Heat capacity of water vapour, J/(kg K). Source: [`ENTHALPY_SOURCE`].
const VAPOUR_HEAT_CAPACITY: f64 = 1860.0;
/// Heat capacity of liquid water, J/(kg K). Source: [`ENTHALPY_SOURCE`].
pub const WATER_HEAT_CAPACITY: f64 = 4186.0;
/// Heat that turns water of 0 °C into vapour, J/kg. Source: [`ENTHALPY_SOURCE`].
const LATENT_HEAT_AT_ZERO: f64 = 2_501_000.0;

/// Heat capacity of moist air of a humidity ratio, J/(K kg of dry air).
pub const fn heat_capacity(humidity_ratio: f64) -> f64 {
    DRY_AIR_HEAT_CAPACITY + humidity_ratio * VAPOUR_HEAT_CAPACITY
}

/// Heat in moist air above that in dry air and liquid water at 0 °C, J/kg of dry air.
///
/// ```
/// use elbowroom::{air::enthalpy, units::Temperature};
/// // The handbook's own 25 °C at 10 g/kg: 50.6 kJ/kg.
/// let found = enthalpy(Temperature::from_celsius(25.0), 0.010);
/// assert!((found - 50_625.0).abs() < 1.0);
/// ```
pub fn enthalpy(temperature: Temperature, humidity_ratio: f64) -> f64 {
    heat_capacity(humidity_ratio) * temperature.celsius() + humidity_ratio * LATENT_HEAT_AT_ZERO
}

/// Heat that vapour out of air at `air` gives up as it becomes water at `water`, J/kg. Below 0 °C
/// the water is taken as liquid still: the heat of freezing (13 %) is left out.
///
/// ```
/// use elbowroom::{air::latent_heat, units::Temperature};
/// // Steam tables: 2406 kJ/kg at 40 °C.
/// let warm = Temperature::from_celsius(40.0);
/// assert!((latent_heat(warm, warm) / 2.406e6 - 1.0).abs() < 1.5e-3);
/// ```
pub fn latent_heat(air: Temperature, water: Temperature) -> f64 {
    LATENT_HEAT_AT_ZERO + VAPOUR_HEAT_CAPACITY * air.celsius()
        - WATER_HEAT_CAPACITY * water.celsius()
}
