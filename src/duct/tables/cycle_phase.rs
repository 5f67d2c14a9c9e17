//! The air that a dryer sends out in the phases of a cycle.

use crate::source::source;

source! {
    /// No open measurement over a whole cycle was found.
    pub static SOURCE {
        title: "Our assumption for a full-size dryer of about 5.5 kW on 0.06 m3/s of room air",
        edition: "2026",
        locator: "energy balance: heater less warming of air and load, the rest evaporates 3 kg an hour while the load is wet",
        standing: Assumption,
    }
}

/// Temperature, °C, and relative humidity, 0..1, at the dryer's outlet.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutletAir {
    /// Temperature, °C.
    pub celsius: f64,
    /// Relative humidity, 0..1.
    pub relative_humidity: f64,
}

const fn assumed(celsius: f64, relative_humidity: f64) -> OutletAir {
    OutletAir {
        celsius,
        relative_humidity,
    }
}

/// While drum and load get warm.
pub const WARM_UP: OutletAir = assumed(35.0, 0.5);
/// While water leaves the load as fast as heat comes: dew point about 27 °C.
pub const DRYING: OutletAir = assumed(50.0, 0.3);
/// Nearly dry.
pub const END_OF_DRYING: OutletAir = assumed(65.0, 0.1);
/// Heat off, the load still warm.
pub const COOL_DOWN: OutletAir = assumed(35.0, 0.2);
/// No heat, an empty drum: air of the room.
pub const NO_HEAT: OutletAir = assumed(22.0, 0.45);
