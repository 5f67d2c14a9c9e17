//! How strongly surfaces radiate.

use crate::source::{Coefficient, source};

source! {
    /// Handbook ranges, not looked up.
    pub static SOURCE {
        title: "Handbook ranges of total emissivity near room temperature",
        edition: "various",
        locator: "aluminium and galvanized sheet, clean to dulled; woven or plastic jackets",
        standing: Memory,
    }
}

const fn remembered(low: f64, likely: f64, high: f64) -> Coefficient {
    Coefficient {
        low,
        likely,
        high,
        source: &SOURCE,
    }
}

/// Of aluminium duct, foil and semi-rigid among it.
pub const ALUMINIUM: Coefficient = remembered(0.05, 0.1, 0.2);
/// Of galvanized duct.
pub const GALVANIZED: Coefficient = remembered(0.2, 0.25, 0.6);
/// Of what insulation is covered with; a fresh foil facing radiates far less.
pub const JACKET: Coefficient = remembered(0.1, 0.9, 0.95);
