//! The loss formulas of ducts and fittings, each a data sheet, and the tables they rest on.
//!
//! Works in the field's plain numbers (Re, f, r/D, K, Nu); knows nothing of plans.

pub mod area_change;
pub mod blockage;
pub mod elbow;
pub mod friction;
pub mod heat_transfer;
pub mod orifice;
pub mod point_velocity;
pub mod tables;
mod velocity_pressure;

pub use velocity_pressure::velocity_pressure;
