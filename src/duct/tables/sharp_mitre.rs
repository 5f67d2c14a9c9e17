//! How well a sharp mitre's loss is known.

use crate::source::{source, uncertain};

source! {
    /// The formula and the spread about it.
    pub static SOURCE {
        title: "Rennels & Hudson, Pipe Flow, mitre bends; Reynolds factor of ASHRAE's rectangular mitre",
        edition: "1st, 2012",
        locator: "ch. 15; a 90 of 1.2, believed from 0.97 to 1.6",
        standing: Published,
    }
}

uncertain! {
    /// A factor on a sharp mitre's K.
    pub const FACTOR {
        low: 0.97 / 1.2,
        likely: 1.0,
        high: 1.6 / 1.2,
        source: SOURCE,
    }
}
