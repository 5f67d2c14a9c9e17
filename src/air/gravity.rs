//! The weight of air.

use crate::source::source;

source! {
    /// Of standard gravity.
    pub static GRAVITY_SOURCE {
        title: "ISO 80000-3, Quantities and units, space and time",
        edition: "2019",
        locator: "standard acceleration of free fall, 9.80665 m/s² exactly",
        standing: Published,
    }
}

/// Standard gravity, m/s². Source: [`GRAVITY_SOURCE`].
pub const GRAVITY: f64 = 9.806_65;
