//! The state of moist air.

use super::{conductivity, dew_point, saturation_pressure, viscosity};
use crate::source::source;
use crate::units::{Density, Pressure, Temperature, Viscosity};

source! {
    /// Of the gas constants from which density follows.
    pub static DENSITY_SOURCE {
        title: "S. Herrmann, H.-J. Kretzschmar, D. P. Gatley, Thermodynamic properties of real moist air; IAPWS-95",
        edition: "2009; 1995",
        locator: "gas constants of dry air and of water vapour, as an ideal mixture",
        standing: Published,
    }
}

/// Gas constants, J/(kg K): Herrmann, Kretzschmar & Gatley 2009 (dry air), IAPWS-95 (water vapour).
/// Source: [`DENSITY_SOURCE`].
const DRY_AIR_GAS_CONSTANT: f64 = 287.042;
const WATER_VAPOUR_GAS_CONSTANT: f64 = 461.524;
/// Molar mass of water over that of dry air, by their gas constants. Source: [`DENSITY_SOURCE`].
const VAPOUR_RATIO: f64 = DRY_AIR_GAS_CONSTANT / WATER_VAPOUR_GAS_CONSTANT;

/// Humidity ratio of saturated air, kg/kg, at `temperature` and `pressure`; infinite where water
/// boils.
pub fn saturated_humidity_ratio(temperature: Temperature, pressure: Pressure) -> f64 {
    let vapour = saturation_pressure(temperature);
    if vapour >= pressure {
        return f64::INFINITY;
    }
    VAPOUR_RATIO * (vapour / (pressure - vapour))
}

/// Moist air as an ideal-gas mixture.
///
/// Range: -40..100 °C, below 2 bar. Density within 0.5 % and viscosity within 4 % of CoolProp's
/// moist air; the enhancement of saturation by pressed air (under 0.5 %) is left out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistAir {
    temperature: Temperature,
    pressure: Pressure,
    vapour_pressure: Pressure,
}

impl MoistAir {
    /// Air at `temperature`, barometric `pressure` and `relative_humidity` (0..1, cut to that).
    ///
    /// ```
    /// use elbowroom::{air::MoistAir, units::{Pressure, Temperature}};
    /// let air = MoistAir::new(Temperature::from_celsius(20.0), Pressure::from_pascals(101_325.0), 0.5);
    /// assert!((air.density().kilograms_per_cubic_metre() - 1.1989).abs() < 0.001);
    /// ```
    pub fn new(temperature: Temperature, pressure: Pressure, relative_humidity: f64) -> Self {
        let vapour = saturation_pressure(temperature) * relative_humidity.clamp(0.0, 1.0);
        Self {
            temperature,
            pressure,
            // Hot air in thin air could be asked to hold more vapour than there is pressure.
            vapour_pressure: if vapour > pressure { pressure } else { vapour },
        }
    }

    /// Air at `temperature` and barometric `pressure` with so many kg of vapour a kg of dry air (not
    /// below nought). It may hold more than saturated air: what is over floats in it as mist.
    ///
    /// ```
    /// use elbowroom::{air::MoistAir, units::{Pressure, Temperature}};
    /// let (warm, sea) = (Temperature::from_celsius(40.0), Pressure::from_pascals(101_325.0));
    /// let air = MoistAir::with_humidity_ratio(warm, sea, 0.02);
    /// assert!((air.humidity_ratio() - 0.02).abs() < 1e-12);
    /// ```
    pub fn with_humidity_ratio(
        temperature: Temperature,
        pressure: Pressure,
        humidity_ratio: f64,
    ) -> Self {
        let ratio = humidity_ratio.max(0.0);
        Self {
            temperature,
            pressure,
            vapour_pressure: pressure * (ratio / (ratio + VAPOUR_RATIO)),
        }
    }

    /// Thermal conductivity of the mixture, W/(m K).
    pub fn conductivity(&self) -> f64 {
        conductivity::of_moist_air(self.temperature, self.vapour_pressure / self.pressure)
    }

    /// Density of the mixture: (p - pw)/(R_a T) + pw/(R_w T).
    pub fn density(&self) -> Density {
        let kelvins = self.temperature.kelvins();
        let dry =
            (self.pressure - self.vapour_pressure).pascals() / (DRY_AIR_GAS_CONSTANT * kelvins);
        let wet = self.vapour_pressure.pascals() / (WATER_VAPOUR_GAS_CONSTANT * kelvins);
        Density::from_kilograms_per_cubic_metre(dry + wet)
    }

    /// Dynamic viscosity of the mixture.
    pub fn viscosity(&self) -> Viscosity {
        viscosity::of_moist_air(self.temperature, self.vapour_pressure / self.pressure)
    }

    /// Humidity ratio, kg of vapour a kg of dry air.
    pub fn humidity_ratio(&self) -> f64 {
        VAPOUR_RATIO * (self.vapour_pressure / (self.pressure - self.vapour_pressure))
    }

    /// Temperature at which the air's vapour begins to condense; none for dry air.
    pub fn dew_point(&self) -> Option<Temperature> {
        dew_point(self.vapour_pressure)
    }
}
