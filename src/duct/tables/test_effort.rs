//! What a test on site costs, against a reading at the dryer's outlet.

use crate::source::{Source, Standing};

/// What a person on site would say.
pub static SOURCE: Source = Source {
    title: "Effort of each test against a reading at the outlet: common practice, no source; every figure is our assumption",
    edition: "2026",
    locator: "1 for a reading at a tap that is there; half of that is setting up the dryer, which every test takes",
    standing: Standing::CommonPractice,
};

/// A reading at the dryer's outlet.
pub const OUTLET: f64 = 1.0;
/// The same with a door open.
pub const DOOR: f64 = 1.0;
/// The same with the screen cleaned.
pub const SCREEN: f64 = 1.0;
/// A velocity at the outlet.
pub const VELOCITY: f64 = 1.25;
/// A tap at a joint, closed again afterwards.
pub const TAP: f64 = 1.5;
/// A reading with the flap of a wall hood held open from outdoors.
pub const FLAP: f64 = 1.5;
/// The same on a roof.
pub const ROOF: f64 = 3.5;
/// A joint opened for a reading and sealed again.
pub const OPEN_JOINT: f64 = 2.5;
/// A fitting opened and looked into.
pub const LOOK: f64 = 2.25;
