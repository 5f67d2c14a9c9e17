//! Heat and vapour from the air in a duct to its wall, and from the wall to the air around it.
//!
//! Works in W, m, K, °C and kg of vapour a kg of dry air.

mod condensation;
mod inside;
mod outside;
mod shell;
mod still_air;
mod wall;

pub use condensation::{CONDENSATION_SOURCE, mass_transfer_coefficient};
pub use inside::{FULLY_TURBULENT, INSIDE_SOURCE, nusselt};
pub use outside::{
    OUTSIDE_SOURCE, RADIATION_SOURCE, horizontal_cylinder, radiation_coefficient, vertical_plate,
};
pub use shell::Shell;
pub use still_air::StillAir;
pub use wall::{Bulk, Film, Wall, wall};
