//! What a test on site costs, against a reading at the dryer's outlet.

use crate::source::source;

source! {
    /// What a person on site would say.
    pub static SOURCE {
        title: "Effort of each test against a reading at the outlet: common practice, no source; every figure is our assumption",
        edition: "2026",
        locator: "1 for a reading at a tap that is there; half of that is setting up the dryer, which every test takes",
        standing: CommonPractice,
    }
}

/// A reading at the dryer's outlet. Source: [`SOURCE`].
pub const OUTLET: f64 = 1.0;
/// The same with a door open. Source: [`SOURCE`].
pub const DOOR: f64 = 1.0;
/// The same with the screen cleaned. Source: [`SOURCE`].
pub const SCREEN: f64 = 1.0;
/// A velocity at the outlet. Source: [`SOURCE`].
pub const VELOCITY: f64 = 1.25;
/// A tap at a joint, closed again afterwards. Source: [`SOURCE`].
pub const TAP: f64 = 1.5;
/// A reading with the flap of a wall hood held open from outdoors. Source: [`SOURCE`].
pub const FLAP: f64 = 1.5;
/// The same on a roof. Source: [`SOURCE`].
pub const ROOF: f64 = 3.5;
/// A joint opened for a reading and sealed again. Source: [`SOURCE`].
pub const OPEN_JOINT: f64 = 2.5;
/// A fitting opened and looked into. Source: [`SOURCE`].
pub const LOOK: f64 = 2.25;
