//! The still air about a duct, made ready so that a film's figures are a few multiplications.

use super::outside::{
    cylinder_factor, plate_factor, sixth_root, with_cylinder_factor, with_plate_factor,
};
use crate::air::{DRY_AIR_HEAT_CAPACITY, GRAVITY, MoistAir};
use crate::units::{Pressure, Temperature, TemperatureDifference};

/// The film temperatures that the parabolas go through, K above the still air. Of the computation.
const STEP: f64 = 20.0;

/// Still air of one temperature, taken as dry: its humidity hardly moves the figures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StillAir {
    /// Its temperature, °C.
    pub celsius: f64,
    /// Conductivity against the film's K above the air: constant, first, second power.
    conductivity: [f64; 3],
    /// The sixth root of g beta/(nu alpha), in 1/(K m³), the same way: nearly straight.
    buoyancy: [f64; 3],
    cylinder: f64,
    plate: f64,
}

impl StillAir {
    /// Air at `temperature` and barometric `pressure`.
    ///
    /// Films from 40 K colder to 60 K warmer than the air, within 0.3 % of the properties' own
    /// formulas.
    pub fn new(temperature: Temperature, pressure: Pressure) -> Self {
        let film = |above: f64| {
            let film = temperature + TemperatureDifference::from_kelvins(above);
            let air = MoistAir::new(film, pressure, 0.0);
            let density = air.density().kilograms_per_cubic_metre();
            let viscosity = air.viscosity().pascal_seconds();
            let conductivity = air.conductivity();
            let diffusivity = conductivity / (density * DRY_AIR_HEAT_CAPACITY);
            let buoyancy = GRAVITY / film.kelvins() / (viscosity / density) / diffusivity;
            let prandtl = viscosity * DRY_AIR_HEAT_CAPACITY / conductivity;
            (conductivity, sixth_root(buoyancy), prandtl)
        };
        let (here, near, far) = (film(0.0), film(STEP), film(2.0 * STEP));
        let prandtl = near.2;
        Self {
            celsius: temperature.celsius(),
            conductivity: parabola(here.0, near.0, far.0),
            buoyancy: parabola(here.1, near.1, far.1),
            cylinder: cylinder_factor(prandtl),
            plate: plate_factor(prandtl),
        }
    }

    /// Natural convection about a duct whose surface is `surface` °C, W/(m² K): about a horizontal
    /// cylinder of `diameter`, m, or where it stands up along a plate of `height`, m.
    pub fn convection(&self, surface: f64, diameter: f64, height: Option<f64>) -> f64 {
        let over = surface - self.celsius;
        let film = over / 2.0;
        let conductivity = on_parabola(self.conductivity, film);
        let buoyancy = on_parabola(self.buoyancy, film);
        // The sixth root of the Rayleigh number.
        let root = |size: f64| buoyancy * sixth_root(over.abs()) * size.sqrt();
        match height {
            None => with_cylinder_factor(root(diameter), self.cylinder) * conductivity / diameter,
            Some(height) => with_plate_factor(root(height), self.plate) * conductivity / height,
        }
    }
}

/// The parabola through three values at nought, one and two steps.
fn parabola(here: f64, near: f64, far: f64) -> [f64; 3] {
    let second = (far - 2.0 * near + here) / (2.0 * STEP * STEP);
    [here, (near - here) / STEP - second * STEP, second]
}

fn on_parabola([constant, first, second]: [f64; 3], at: f64) -> f64 {
    constant + at * (first + at * second)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The promise itself: against air made at the film's own temperature.
    #[test]
    fn the_parabolas_keep_to_the_properties() {
        let pressure = Pressure::from_pascals(95_000.0);
        for celsius in [-30.0, 0.0, 20.0, 45.0] {
            let still = StillAir::new(Temperature::from_celsius(celsius), pressure);
            for above in [-20.0, -5.0, 10.0, 30.0, 45.0] {
                let own = StillAir::new(Temperature::from_celsius(celsius + above), pressure);
                for (found, own) in [
                    (on_parabola(still.conductivity, above), own.conductivity[0]),
                    (
                        on_parabola(still.buoyancy, above).powf(0.25),
                        own.buoyancy[0].powf(0.25),
                    ),
                ] {
                    let off = found / own - 1.0;
                    assert!(off.abs() < 0.004, "{celsius} °C, {above} K: {off}");
                }
            }
        }
    }
}
