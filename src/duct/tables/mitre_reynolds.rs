//! How a sharp mitre's loss grows at low Reynolds number.

use crate::source::source;

source! {
    /// The factor's table.
    pub static SOURCE {
        title: "ASHRAE Handbook, Fundamentals, duct fitting tables: rectangular mitre elbow, Reynolds number correction",
        edition: "as carried by duct handbooks",
        locator: "Kre against Re 1e4 to 1.4e5",
        standing: Published,
    }
}

/// Reynolds number and the factor on K; constant outside the rows. Source: [`SOURCE`].
pub const FACTOR: [(f64, f64); 8] = [
    (1.0e4, 1.40),
    (2.0e4, 1.26),
    (3.0e4, 1.19),
    (4.0e4, 1.14),
    (6.0e4, 1.09),
    (8.0e4, 1.06),
    (1.0e5, 1.04),
    (1.4e5, 1.00),
];
