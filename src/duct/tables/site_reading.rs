//! What a reading on site may be off beside its instrument, and what can be read at all.

use crate::source::source;

source! {
    /// Of the errors and bounds of readings on site.
    pub static SOURCE {
        title: "Our assumption for readings on site: errors beside the instrument's own, and what is possible at all",
        edition: "2026",
        locator: "beside each figure of the fault-finder; none was measured",
        standing: Assumption,
    }
}

/// How far the exhaust of a dryer that heats may be off what the plan states, either way, K: load,
/// thermostat and the moment of the cycle. Source: [`SOURCE`].
pub const EXHAUST_SPREAD: f64 = 15.0;
/// The same of a cycle without heat, for the room, K. Source: [`SOURCE`].
pub const ROOM_SPREAD: f64 = 5.0;
/// Standard error of a predicted temperature, K. Source: [`SOURCE`].
pub const TEMPERATURE_ERROR: f64 = 1.0;
/// The same as a share of what the air cools to the place: films, emissivity and surroundings are
/// not known better. Source: [`SOURCE`].
pub const COOLING_ERROR: f64 = 0.15;
