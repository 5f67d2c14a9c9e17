//! Hoods and caps, each with the exit in it.

use crate::source::{source, uncertain};

source! {
    /// No open figure was found for any hood.
    pub static SOURCE {
        title: "Our assumption for a 4 in termination that moves freely; no open measurement was found",
        edition: "2026",
        locator: "K on the duct's velocity pressure, the exit's one velocity pressure included",
        standing: Assumption,
    }
}

uncertain! {
    /// K of a wall hood with its flap free.
    pub const WALL_HOOD {
        low: 1.5,
        likely: 2.0,
        high: 3.0,
        source: SOURCE,
    }
}

uncertain! {
    /// K of a louvred hood.
    pub const LOUVRED_HOOD {
        low: 2.0,
        likely: 3.0,
        high: 5.0,
        source: SOURCE,
    }
}

uncertain! {
    /// K of a roof cap.
    pub const ROOF_CAP {
        low: 1.5,
        likely: 2.5,
        high: 4.0,
        source: SOURCE,
    }
}

uncertain! {
    /// The pressure that lifts a wall hood's flap, Pa.
    pub const FLAP_WEIGHT {
        low: 0.0,
        likely: 5.0,
        high: 15.0,
        source: SOURCE,
    }
}

source! {
    /// A bare end loses the jet's one velocity pressure and nothing else.
    pub static OPEN_END_SOURCE {
        title: "Loss of a free jet: its whole velocity pressure, once",
        edition: "Borda and Carnot",
        locator: "sudden expansion into the open, (1 - 0)^2",
        standing: Published,
    }
}
