//! From the duct's outside to still air and to what stands around.

use crate::source::source;

source! {
    /// Of natural convection from a duct.
    pub static OUTSIDE_SOURCE {
        title: "S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18",
        edition: "1975",
        locator: "horizontal cylinder pp. 1049-1053, vertical plate pp. 1323-1329, for laminar and turbulent flow together",
        standing: Published,
    }
}
source! {
    /// Of radiation.
    pub static RADIATION_SOURCE {
        title: "Stefan and Boltzmann's law, for a small grey body in large surroundings",
        edition: "constant of CODATA 2018",
        locator: "5.670374419e-8 W/(m2 K4); the surroundings taken at the air's temperature",
        standing: Published,
    }
}

/// Source: [`RADIATION_SOURCE`].
const STEFAN_BOLTZMANN: f64 = 5.670_374_419e-8;

/// What the Prandtl number does to a horizontal cylinder: 0.387/(1 + (0.559/Pr)^(9/16))^(8/27).
pub(super) fn cylinder_factor(prandtl: f64) -> f64 {
    0.387 / (1.0 + (0.559 / prandtl).powf(9.0 / 16.0)).powf(8.0 / 27.0)
}

/// The same of a vertical plate, with 0.492.
pub(super) fn plate_factor(prandtl: f64) -> f64 {
    0.387 / (1.0 + (0.492 / prandtl).powf(9.0 / 16.0)).powf(8.0 / 27.0)
}

/// The sixth root, by a square root and a cube root.
pub(super) fn sixth_root(value: f64) -> f64 {
    value.sqrt().cbrt()
}

/// A horizontal cylinder's Nusselt number from the sixth root of the Rayleigh number.
pub(super) fn with_cylinder_factor(root: f64, factor: f64) -> f64 {
    (0.60 + factor * root).powi(2)
}

/// A vertical plate's, the same way.
pub(super) fn with_plate_factor(root: f64, factor: f64) -> f64 {
    (0.825 + factor * root).powi(2)
}

/// Nusselt number h D/k of natural convection about a long horizontal cylinder:
/// (0.60 + 0.387 Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))².
///
/// * `rayleigh`: Ra = g beta dT D³/(nu alpha), to 1e12, air at the mean of wall and surroundings.
/// * `prandtl`: Pr of that air.
///
/// Source: Churchill & Chu 1975.
///
/// ```
/// use elbowroom::duct::heat_transfer::horizontal_cylinder;
/// // Cengel & Ghajar, example 9-1: 17.4 at Ra 1.869e6, Pr 0.7241.
/// assert!((horizontal_cylinder(1.869e6, 0.7241) - 17.4).abs() < 0.03);
/// ```
pub fn horizontal_cylinder(rayleigh: f64, prandtl: f64) -> f64 {
    with_cylinder_factor(sixth_root(rayleigh), cylinder_factor(prandtl))
}

/// Nusselt number h L/k of natural convection along a vertical plate of height L, taken for a riser:
/// (0.825 + 0.387 Ra^(1/6)/(1 + (0.492/Pr)^(9/16))^(8/27))².
///
/// * `rayleigh`: Ra on the height, 0.1..1e12; * `prandtl`: Pr.
///
/// Known to be off: a slender cylinder gives more than a plate once its diameter is below about
/// 35 L/Gr^(1/4), as a 4 in riser's is from 1.5 m up (some 10 %).
/// Source: Churchill & Chu 1975.
///
/// ```
/// use elbowroom::duct::heat_transfer::vertical_plate;
/// // Worked by hand: Ra 1e9, Pr 0.71: (0.825 + 0.3246 × 31.62)² = 123.
/// assert!((vertical_plate(1e9, 0.71) - 123.0).abs() < 1.0);
/// ```
pub fn vertical_plate(rayleigh: f64, prandtl: f64) -> f64 {
    with_plate_factor(sixth_root(rayleigh), plate_factor(prandtl))
}

/// Heat by radiation a K of difference, W/(m² K): e s (T² + T0²)(T + T0).
///
/// * `emissivity`: 0..1; * `surface`, `surroundings`: K.
///
/// ```
/// use elbowroom::duct::heat_transfer::radiation_coefficient;
/// // Cengel & Ghajar, example 9-1: black, 1.508 m² at 70 °C in 20 °C radiate 553 W.
/// let watts = radiation_coefficient(1.0, 343.15, 293.15) * 1.508 * 50.0;
/// assert!((watts - 553.0).abs() < 3.0, "{watts}");
/// ```
pub fn radiation_coefficient(emissivity: f64, surface: f64, surroundings: f64) -> f64 {
    let squares = surface * surface + surroundings * surroundings;
    emissivity * STEFAN_BOLTZMANN * squares * (surface + surroundings)
}
