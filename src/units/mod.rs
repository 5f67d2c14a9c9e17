//! Quantities in SI, the lengths and numbers that people type, and how a figure is shown.
//!
//! Knows nothing of any other room.

mod display;
mod length_text;
mod number_text;
mod quantity;

pub use display::{Shown, UnitSystem};
pub use length_text::{LengthTextError, parse_length};
pub use number_text::parse_number;
pub use quantity::{
    Airflow, Angle, Density, ICE_POINT_KELVINS, Length, METRES_PER_FOOT, METRES_PER_INCH, MassFlow,
    Pressure, Temperature, TemperatureDifference, Velocity, Viscosity,
};
