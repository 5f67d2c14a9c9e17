//! The duct's wall and what is wrapped about it.

use super::{StillAir, radiation_coefficient};
use crate::units::ICE_POINT_KELVINS;
use core::f64::consts::PI;

/// A stretch of duct as heat meets it: thin metal, whose own resistance is left out, and insulation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shell {
    /// Wetted edge, m.
    pub perimeter: f64,
    /// What its inside diameter is for the flow, m.
    pub hydraulic_diameter: f64,
    /// Across its outside, m; of flat duct that of a round one with the same edge.
    outside_diameter: f64,
    /// Of the insulation, K m/W for each metre of duct.
    resistance: f64,
    emissivity: f64,
    /// Height of a riser, m; none where it lies level.
    height: Option<f64>,
}

impl Shell {
    /// Duct of a wetted edge and hydraulic diameter, m, whose outside has this emissivity; of a
    /// `height`, m, where it stands up.
    pub fn bare(
        perimeter: f64,
        hydraulic_diameter: f64,
        emissivity: f64,
        height: Option<f64>,
    ) -> Self {
        Self {
            perimeter,
            hydraulic_diameter,
            outside_diameter: perimeter / PI,
            resistance: 0.0,
            emissivity,
            height,
        }
    }

    /// The same with insulation of a `thickness`, m, and conductivity, W/(m K), about it, whose
    /// outside has this emissivity: ln(Do/D)/(2 pi k) a metre.
    ///
    /// ```
    /// use elbowroom::duct::heat_transfer::Shell;
    /// // Worked by hand: ln(2)/(2 pi 0.04) = 2.758 K m/W about 100 mm in 50 mm.
    /// let duct = Shell::bare(core::f64::consts::PI * 0.1, 0.1, 0.25, None);
    /// assert!((duct.insulated(0.05, 0.04, 0.9).resistance() - 2.758).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn insulated(self, thickness: f64, conductivity: f64, emissivity: f64) -> Self {
        let outside_diameter = self.outside_diameter + 2.0 * thickness;
        let ratio = outside_diameter / self.outside_diameter;
        Self {
            outside_diameter,
            resistance: self.resistance + ratio.ln() / (2.0 * PI * conductivity),
            emissivity,
            ..self
        }
    }

    /// Of the insulation, K m/W for each metre of duct.
    pub const fn resistance(&self) -> f64 {
        self.resistance
    }

    /// Heat that goes out for each K that the wall, °C, is warmer than the still air, W/(K m), and of that
    /// way's resistance the share of the outside film, 0..1. `film` is that share as it was last found:
    /// it places the surface between wall and air.
    pub(super) fn outward(&self, wall: f64, film: f64, still: &StillAir) -> (f64, f64) {
        // The surface under the film: the wall itself where nothing is wrapped about it.
        let surface = still.celsius + (wall - still.celsius) * film;
        let convection = still.convection(surface, self.outside_diameter, self.height);
        let radiation = radiation_coefficient(
            self.emissivity,
            surface + ICE_POINT_KELVINS,
            still.celsius + ICE_POINT_KELVINS,
        );
        let film = 1.0 / ((convection + radiation) * PI * self.outside_diameter);
        let whole = film + self.resistance;
        (1.0 / whole, film / whole)
    }
}
