//! Moist air: density, viscosity, humidity ratio and dew point, and pressure by altitude.
//!
//! Knows nothing of ducts.

mod altitude;
mod moist;
mod saturation;
mod viscosity;

pub use altitude::{ALTITUDE_SOURCE, pressure_at_altitude};
pub use moist::{DENSITY_SOURCE, MoistAir};
pub use saturation::{SATURATION_SOURCE, dew_point, saturation_pressure};
pub use viscosity::VISCOSITY_SOURCE;
