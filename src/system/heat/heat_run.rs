//! A run made ready for heat: what hangs on the drawing and the exhaust alone, worked out once.

use super::stretch::{Stretch, Stretches};
use crate::air::{MoistAir, heat_capacity};
use crate::duct::heat_transfer::StillAir;
use crate::plan::{Plan, RunPath};
use crate::system::element::CompiledElement;
use crate::units::{Pressure, Temperature, TemperatureDifference};

/// Half of the air is vapour: no dryer sends it out, and the models of thin vapour do not hold.
/// Of the computation.
const MOST_VAPOUR: f64 = 0.6;

/// The stretches of a run and the air that enters it.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::system) struct HeatRun {
    pub stretches: Vec<Stretch>,
    pub still: Vec<StillAir>,
    pub pressure: Pressure,
    /// Exhaust air, °C.
    pub celsius: f64,
    pub humidity_ratio: f64,
    /// No wall at or above this, °C, can be wet.
    pub dry_above: f64,
    /// Of the exhaust.
    pub prandtl: f64,
    /// Conductivity at the exhaust's temperature, and what a K adds.
    conductivity: (f64, f64),
}

impl HeatRun {
    /// None where the exhaust is mostly vapour.
    pub fn of(
        plan: &Plan,
        path: &RunPath,
        elements: &[CompiledElement],
        exhaust: &MoistAir,
        pressure: Pressure,
    ) -> Option<Self> {
        /// Over this span conductivity is straight within 0.1 %, K. Of the computation.
        const SPAN: f64 = 25.0;
        let temperature = plan.exhaust.temperature;
        let humidity_ratio = exhaust.humidity_ratio();
        if humidity_ratio.is_nan() || humidity_ratio > MOST_VAPOUR {
            return None;
        }
        let cooler = temperature + TemperatureDifference::from_kelvins(-SPAN);
        let cooler = MoistAir::with_humidity_ratio(cooler, pressure, humidity_ratio);
        let conductivity = exhaust.conductivity();
        let capacity = heat_capacity(humidity_ratio) / (1.0 + humidity_ratio);
        let cut = Stretches::of(plan, path, elements, pressure);
        Some(Self {
            stretches: cut.list,
            still: cut.still,
            pressure,
            celsius: temperature.celsius(),
            humidity_ratio,
            // No vapour: no wall is ever wet.
            dry_above: exhaust
                .dew_point()
                .map_or(f64::NEG_INFINITY, Temperature::celsius),
            prandtl: exhaust.viscosity().pascal_seconds() * capacity / conductivity,
            conductivity: (conductivity, (conductivity - cooler.conductivity()) / SPAN),
        })
    }

    /// Conductivity of the air at so many °C, W/(m K).
    pub fn conductivity(&self, celsius: f64) -> f64 {
        let (at_outlet, a_kelvin) = self.conductivity;
        at_outlet + a_kelvin * (celsius - self.celsius)
    }

    /// Air of so many °C with so many kg of vapour a kg of dry air, at the run's pressure.
    pub fn air(&self, celsius: f64, humidity_ratio: f64) -> MoistAir {
        let temperature = Temperature::from_celsius(celsius);
        MoistAir::with_humidity_ratio(temperature, self.pressure, humidity_ratio)
    }
}
