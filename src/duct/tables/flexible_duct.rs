//! Flexible duct: corrugated semi-rigid metal, and foil on a wire.

use crate::source::{source, uncertain};

source! {
    /// The range for metallic flexible duct.
    pub static SEMI_RIGID_SOURCE {
        title: "Duct handbooks, roughness categories: flexible duct, metallic, fully extended",
        edition: "current",
        locator: "rough category, 1.2 to 3.0 mm (range from memory)",
        standing: Memory,
    }
}

uncertain! {
    /// Roughness of semi-rigid corrugated metal at full stretch, m.
    pub const SEMI_RIGID_ROUGHNESS {
        low: 1.2e-3,
        likely: 1.6e-3,
        high: 3.0e-3,
        source: SEMI_RIGID_SOURCE,
    }
}

source! {
    /// Measurements of pushed-together flexible duct.
    pub static FOIL_SOURCE {
        title: "Abushakra, Walker & Sherman, Compression effects on pressure loss in flexible HVAC ducts; with Culp 2011",
        edition: "2004",
        locator: "plastic core, 6 to 10 in; carried to 4 in by us",
        standing: Published,
    }
}

uncertain! {
    /// Roughness of foil duct at full stretch, m.
    pub const FOIL_ROUGHNESS {
        low: 0.9e-3,
        likely: 0.9e-3,
        high: 2.1e-3,
        source: FOIL_SOURCE,
    }
}

uncertain! {
    /// How well the effect of pushing together is known, as a factor on it.
    pub const COMPRESSION {
        low: 0.6,
        likely: 1.0,
        high: 1.4,
        source: FOIL_SOURCE,
    }
}

/// Factor on the friction of flexible duct that is `percent` short of its full stretch:
/// 1 + 0.58 c exp(-4.96 D), D the inside diameter in m.
///
/// * `percent`: c, 0..30; to 45 at the edge, beyond that a guess.
/// * `diameter_metres`: measured at 0.15 to 0.25 m; 0.1 m is carried over.
///
/// Source: [`FOIL_SOURCE`].
///
/// ```
/// // 15 % short in 4 in duct: 1 + 8.7 exp(-0.504), worked by hand.
/// let factor = elbowroom::duct::tables::flexible_duct::compression_factor(15.0, 0.1016);
/// assert!((factor - 6.256).abs() < 0.001);
/// ```
pub fn compression_factor(percent: f64, diameter_metres: f64) -> f64 {
    1.0 + 0.58 * percent * (-4.96 * diameter_metres).exp()
}

source! {
    /// Our guess for bends in flexible duct.
    pub static BENT_SOURCE {
        title: "Rennels & Hudson's smooth bend with the rough wall's friction factor: calculated, not measured",
        edition: "2026",
        locator: "about 0.67 at r/D 1 and 0.45 at 1.5",
        standing: Assumption,
    }
}

uncertain! {
    /// A factor on the K of a bend in flexible duct.
    pub const BENT {
        low: 0.7,
        likely: 1.0,
        high: 1.3,
        source: BENT_SOURCE,
    }
}
