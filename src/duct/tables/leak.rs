//! The gap of a joint that leaks.

use crate::source::{source, uncertain};

source! {
    /// A gap in thin metal is a sharp-edged opening; how ragged it is nobody measures.
    pub static SOURCE {
        title: "Orifice law with the discharge coefficient of a sharp-edged opening; no figure for a dryer joint was found",
        edition: "2026",
        locator: "Cd 0.6, believed from 0.4 to 0.8; the gap's area is the user's",
        standing: Assumption,
    }
}

uncertain! {
    /// Discharge coefficient.
    pub const DISCHARGE {
        low: 0.4,
        likely: 0.6,
        high: 0.8,
        source: SOURCE,
    }
}
