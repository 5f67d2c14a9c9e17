//! The temperature about a place of the run.

use crate::duct::tables::make_up_air::ROOM_CELSIUS;
use crate::plan::{Level, Plan, Point};
use crate::source::source;
use crate::units::{Length, Temperature};

source! {
    /// Of the temperature where no zone was drawn.
    pub static SURROUNDINGS_SOURCE {
        title: "Our assumption where no zone says otherwise",
        edition: "2026",
        locator: "between floor and ceiling 20 degC; over the ceiling and under the floor the air outdoors",
        standing: Assumption,
    }
}

/// The air's temperature about a place at a height above the room's floor: that of the zone there.
/// Where none was drawn, the room's below the ceiling, and the outdoors' above and under the floor.
pub fn surrounding_temperature(plan: &Plan, place: Point, height: Length) -> Temperature {
    match plan.zone_at(place, height) {
        Some(zone) => zone.temperature,
        None if plan.level_at(height) == Level::Room => Temperature::from_celsius(ROOM_CELSIUS),
        None => plan.site.outdoor_temperature,
    }
}
