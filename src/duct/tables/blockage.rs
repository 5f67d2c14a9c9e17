//! How well the loss of a blockage is known.

use crate::source::{source, uncertain};

source! {
    /// The thin orifice, and what lint is not.
    pub static SOURCE {
        title: "Idelchik, Handbook of Hydraulic Resistance, thin orifice in a straight duct",
        edition: "3rd",
        locator: "K = (1 + 0.707 sqrt(1 - a) - a)^2 / a^2, within 10 % up to a 0.6; soft lint is unlike a plate",
        standing: Published,
    }
}

uncertain! {
    /// A factor on a blockage's K.
    pub const FACTOR {
        low: 0.9,
        likely: 1.0,
        high: 1.1,
        source: SOURCE,
    }
}
