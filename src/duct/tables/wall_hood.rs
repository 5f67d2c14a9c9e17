//! The wall hood, with the exit in it.

use crate::source::{Coefficient, Source, Standing};

/// No open figure was found for any hood.
pub static SOURCE: Source = Source {
    title: "Our assumption for a 4 in wall hood with a free flap; no open measurement was found",
    edition: "2026",
    locator: "K on the duct's velocity pressure, the exit's one velocity pressure included",
    standing: Standing::Assumption,
};

/// K of the hood with its flap free, the exit included.
pub const K: Coefficient = Coefficient {
    low: 1.5,
    likely: 2.0,
    high: 3.0,
    source: &SOURCE,
};

/// The pressure that lifts the flap, Pa.
pub const FLAP_WEIGHT: Coefficient = Coefficient {
    low: 0.0,
    likely: 5.0,
    high: 15.0,
    source: &SOURCE,
};
