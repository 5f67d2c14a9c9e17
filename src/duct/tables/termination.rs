//! Hoods and caps, each with the exit in it.

use crate::source::{Coefficient, Source, Standing};

/// No open figure was found for any hood.
pub static SOURCE: Source = Source {
    title: "Our assumption for a 4 in termination that moves freely; no open measurement was found",
    edition: "2026",
    locator: "K on the duct's velocity pressure, the exit's one velocity pressure included",
    standing: Standing::Assumption,
};

const fn assumed(low: f64, likely: f64, high: f64) -> Coefficient {
    Coefficient {
        low,
        likely,
        high,
        source: &SOURCE,
    }
}

/// K of a wall hood with its flap free.
pub const WALL_HOOD: Coefficient = assumed(1.5, 2.0, 3.0);
/// K of a louvred hood.
pub const LOUVRED_HOOD: Coefficient = assumed(2.0, 3.0, 5.0);
/// K of a roof cap.
pub const ROOF_CAP: Coefficient = assumed(1.5, 2.5, 4.0);
/// The pressure that lifts a wall hood's flap, Pa.
pub const FLAP_WEIGHT: Coefficient = assumed(0.0, 5.0, 15.0);

/// A bare end loses the jet's one velocity pressure and nothing else.
pub static OPEN_END_SOURCE: Source = Source {
    title: "Loss of a free jet: its whole velocity pressure, once",
    edition: "Borda and Carnot",
    locator: "sudden expansion into the open, (1 - 0)^2",
    standing: Standing::Published,
};

/// K of a bare end.
pub const OPEN_END: Coefficient = Coefficient {
    low: 1.0,
    likely: 1.0,
    high: 1.0,
    source: &OPEN_END_SOURCE,
};
