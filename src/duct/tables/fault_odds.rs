//! How likely each fault of a run is before anything is read, and how bad.

use crate::source::source;

source! {
    /// Nobody publishes counts of what was found in dryer ducts.
    pub static SOURCE {
        title: "Lint gathers first in 90 degree fittings and at a flap that sticks: common practice, no source; every figure is our assumption",
        edition: "2026",
        locator: "odds of a run that somebody had reason to read",
        standing: CommonPractice,
    }
}

/// That nothing is wrong. Source: [`SOURCE`].
pub const NOTHING: f64 = 0.25;
/// That one place of the run is blocked or crushed, or its flap stuck. Source: [`SOURCE`].
pub const ONE_PLACE: f64 = 0.45;
/// That two places are. Source: [`SOURCE`].
pub const TWO_PLACES: f64 = 0.08;
/// That one place is at fault and the blower too. Source: [`SOURCE`].
pub const PLACE_AND_BLOWER: f64 = 0.02;
/// That one place is at fault and a joint leaks. Source: [`SOURCE`].
pub const PLACE_AND_LEAK: f64 = 0.02;
/// That one place is at fault and the room cannot draw enough air. Source: [`SOURCE`].
pub const PLACE_AND_ROOM: f64 = 0.03;
/// That the blower turns too slowly or its wheel is caked. Source: [`SOURCE`].
pub const BLOWER: f64 = 0.05;
/// That a joint leaks. Source: [`SOURCE`].
pub const LEAK: f64 = 0.05;
/// That the room cannot draw enough air. Source: [`SOURCE`].
pub const ROOM: f64 = 0.08;
/// That the lint screen is at fault, where it was not cleaned. Source: [`SOURCE`].
pub const SCREEN: f64 = 0.10;

/// Of one place against another: a fitting of 60 deg or more. Source: [`SOURCE`].
pub const ELBOW: f64 = 4.0;
/// A fitting of less. Source: [`SOURCE`].
pub const SLIGHT_ELBOW: f64 = 2.0;
/// A leg of flexible duct: crushed. Source: [`SOURCE`].
pub const FLEXIBLE: f64 = 3.0;
/// A recessed wall box. Source: [`SOURCE`].
pub const WALL_BOX: f64 = 2.0;
/// A straight, whatever its length. Source: [`SOURCE`].
pub const STRAIGHT: f64 = 0.4;
/// What each metre of a straight adds. Source: [`SOURCE`].
pub const STRAIGHT_METRE: f64 = 0.1;
/// A flap. Source: [`SOURCE`].
pub const FLAP: f64 = 6.0;
/// The opening of a hood or cap, by a nest or lint rather than by its flap. Source: [`SOURCE`].
pub const OPENING: f64 = 1.5;

/// The free share of the area that is left: any between these is as likely. Source: [`SOURCE`].
pub const FREE_AREA: (f64, f64) = (0.15, 0.65);
/// The share of its speed at which an ailing blower turns. Source: [`SOURCE`].
pub const BLOWER_SPEED: (f64, f64) = (0.55, 0.85);
/// The free area of a leak that matters, m². Source: [`SOURCE`].
pub const LEAK_AREA: (f64, f64) = (0.0008, 0.004);
/// The free area left for make-up air in a starved room, m². Source: [`SOURCE`].
pub const ROOM_AREA: (f64, f64) = (0.003, 0.012);
/// K of a lint screen that was not cleaned, on the outlet's velocity pressure. Source: [`SOURCE`].
pub const SCREEN_K: (f64, f64) = (1.0, 12.0);
/// That a look misses what is there. Source: [`SOURCE`].
pub const LOOK_MISSES: f64 = 0.04;
/// That a look takes for a blockage what is none. Source: [`SOURCE`].
pub const LOOK_MISTAKES: f64 = 0.02;
