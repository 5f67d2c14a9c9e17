//! The opening through which a room draws its air.

use crate::source::{source, uncertain};

source! {
    /// A sharp-edged opening.
    pub static SOURCE {
        title: "Orifice law with the discharge coefficient of a sharp-edged opening or a door's undercut",
        edition: "as handbooks give it",
        locator: "Cd 0.6, believed from 0.5 to 0.7",
        standing: Published,
    }
}

uncertain! {
    /// Discharge coefficient.
    pub const DISCHARGE {
        low: 0.5,
        likely: 0.6,
        high: 0.7,
        source: SOURCE,
    }
}

source! {
    /// Of the air that a room draws from the house.
    pub static ROOM_AIR_SOURCE {
        title: "Our assumption for the air of the house",
        edition: "2026",
        locator: "20 °C, half saturated: its density hardly moves the loss",
        standing: Assumption,
    }
}

/// Temperature of the room that make-up air comes through, °C. Source: [`ROOM_AIR_SOURCE`].
pub const ROOM_CELSIUS: f64 = 20.0;
/// Its relative humidity, 0..1. Source: [`ROOM_AIR_SOURCE`].
pub const ROOM_HUMIDITY: f64 = 0.5;
