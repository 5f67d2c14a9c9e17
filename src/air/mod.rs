//! Moist air: density, viscosity, humidity ratio and dew point, and pressure by altitude.
//!
//! Knows nothing of ducts.

mod altitude;
mod moist;
mod saturation;
mod viscosity;

pub use altitude::pressure_at_altitude;
pub use moist::MoistAir;
pub use saturation::{dew_point, saturation_pressure};
