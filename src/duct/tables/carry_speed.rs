//! Velocities that lint is said to be carried at.

use crate::source::source;
use crate::units::Velocity;

source! {
    /// What the trade says of dryer ducts.
    pub static SOURCE {
        title: "Common practice: lint settles in dryer ducts below about 1200 fpm",
        edition: "2026",
        locator: "no source; a remark, never a line to pass or fail",
        standing: CommonPractice,
    }
}
source! {
    /// What industrial exhaust is laid out for: told beside the other, and used in no figure.
    pub static INDUSTRIAL_SOURCE {
        title: "ACGIH, Industrial Ventilation",
        edition: "table of minimum duct velocities",
        locator: "cotton lint, 2500 fpm; no house reaches it",
        standing: Memory,
    }
}

/// Metres a second in a foot a minute. Of the computation.
const FOOT_A_MINUTE: f64 = 0.3048 / 60.0;
/// Below it lint is said to settle. Source: [`SOURCE`].
pub const COMMON_PRACTICE: Velocity = Velocity::from_metres_per_second(1200.0 * FOOT_A_MINUTE);
