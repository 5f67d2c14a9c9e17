//! Moist air: density, viscosity, conductivity, heat, humidity ratio and dew point, and pressure by
//! altitude.
//!
//! Knows nothing of ducts.

mod altitude;
mod conductivity;
mod enthalpy;
mod gravity;
mod moist;
mod saturation;
mod viscosity;

pub use altitude::{ALTITUDE_SOURCE, pressure_at_altitude};
pub use conductivity::CONDUCTIVITY_SOURCE;
pub use enthalpy::{
    DRY_AIR_HEAT_CAPACITY, ENTHALPY_SOURCE, WATER_HEAT_CAPACITY, enthalpy, heat_capacity,
    latent_heat,
};
pub use gravity::{GRAVITY, GRAVITY_SOURCE};
pub use moist::{DENSITY_SOURCE, MoistAir, saturated_humidity_ratio};
pub use saturation::{SATURATION_SOURCE, dew_point, saturation_pressure};
pub use viscosity::VISCOSITY_SOURCE;
