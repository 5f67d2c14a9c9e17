//! The dryer's blower.

use super::input::Values;
use crate::duct::tables::blower::STANDARD_DENSITY;
use crate::plan::Input;
use crate::units::{Airflow, Density, Pressure};
use serde::Serialize;

/// A blower by its static curve at the dryer's outlet: p = p0 (rho/1.2) (1 - (Q/Q0)^n).
///
/// Source: the fan laws; the numbers of the default are an assumption (`duct::tables::blower`).
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Blower {
    /// Airflow Q0 at no back pressure.
    #[serde(rename = "free_airflow_m3_per_s")]
    pub free_airflow: Airflow,
    /// Static rise p0 at no airflow and density 1.2 kg/m³.
    #[serde(rename = "shut_off_pressure_pa")]
    pub shut_off_pressure: Pressure,
    /// Exponent n.
    pub exponent: f64,
}

impl Blower {
    /// The assumed blower of a full-size dryer, with these values of its three inputs.
    pub(super) fn with(values: &Values) -> Self {
        let value = |input: Input| values.get(input);
        let free = value(Input::BlowerFreeAirflow);
        Self {
            free_airflow: Airflow::from_cubic_metres_per_second(free),
            shut_off_pressure: Pressure::from_pascals(value(Input::BlowerShutOffPressure)),
            exponent: value(Input::BlowerExponent),
        }
    }

    /// Static rise at `airflow`, at the blower's `density`; negative beyond the free airflow.
    /// Air that a draught drives backward through the dryer meets the rise of no airflow.
    ///
    /// ```
    /// use elbowroom::{system::Blower, units::{Airflow, Density, Pressure}};
    /// let blower = Blower {
    ///     free_airflow: Airflow::from_cubic_metres_per_second(0.080),
    ///     shut_off_pressure: Pressure::from_pascals(320.0),
    ///     exponent: 2.0,
    /// };
    /// let rise = blower.static_rise(
    ///     Airflow::from_cubic_metres_per_second(0.040),
    ///     Density::from_kilograms_per_cubic_metre(1.2),
    /// );
    /// // Worked by hand: half the airflow takes off a quarter.
    /// assert!((rise.pascals() - 240.0).abs() < 1e-9);
    /// ```
    pub fn static_rise(&self, airflow: Airflow, density: Density) -> Pressure {
        let share = (airflow / self.free_airflow).max(0.0).powf(self.exponent);
        let thin = density.kilograms_per_cubic_metre() / STANDARD_DENSITY;
        self.shut_off_pressure * (thin * (1.0 - share))
    }
}
