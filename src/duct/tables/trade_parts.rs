//! What pipe and its small parts are sold and joined as.

use crate::source::source;
use crate::units::Length;

source! {
    /// What a supply house sells and an installer does with it.
    pub static SOURCE {
        title: "Stock lengths of round metal pipe, crimped ends, tape and clamps: common practice, no source",
        edition: "2026",
        locator: "2, 3, 5 and 10 ft pipe; a male end of 1 1/2 in; tape once round a joint and a quarter more; a clamp an end of flexible duct",
        standing: CommonPractice,
    }
}

/// The lengths that pipe is bought in, the crimped end counted in them. Source: [`SOURCE`].
pub const STOCK_LENGTHS: [Length; 4] = [
    Length::from_feet(2.0),
    Length::from_feet(3.0),
    Length::from_feet(5.0),
    Length::from_feet(10.0),
];
/// How far a crimped end goes into the next part. Source: [`SOURCE`].
pub const CRIMPED_END: Length = Length::from_inches(1.5);
/// Tape for a joint, as so many times round the duct. Source: [`SOURCE`].
pub const TAPE_TURNS: f64 = 1.25;
