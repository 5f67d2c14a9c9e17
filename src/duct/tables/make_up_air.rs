//! The opening through which a room draws its air.

use crate::source::{source, uncertain};

source! {
    /// A sharp-edged opening.
    pub static SOURCE {
        title: "Orifice law with the discharge coefficient of a sharp-edged opening or a door's undercut",
        edition: "as handbooks give it",
        locator: "Cd 0.6, believed from 0.5 to 0.7",
        standing: Published,
    }
}

uncertain! {
    /// Discharge coefficient.
    pub const DISCHARGE {
        low: 0.5,
        likely: 0.6,
        high: 0.7,
        source: SOURCE,
    }
}
