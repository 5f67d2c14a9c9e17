//! How well duct insulation holds heat.

use crate::source::{source, uncertain};

source! {
    /// No product is meant.
    pub static SOURCE {
        title: "Our assumption for dry mineral or glass wool wrap, not squeezed",
        edition: "2026",
        locator: "conductivity near room temperature; a wrap pulled tight or wet holds less heat",
        standing: Assumption,
    }
}

uncertain! {
    /// Conductivity, W/(m K).
    pub const CONDUCTIVITY {
        low: 0.035,
        likely: 0.040,
        high: 0.050,
        source: SOURCE,
    }
}
