//! Wall roughness of rigid metal duct.

use crate::source::{source, uncertain};

source! {
    /// The measurements of metal duct that handbooks tabulate together.
    pub static ROUGHNESS_SOURCE {
        title: "Griggs et al., friction of galvanized round duct; with Hutchinson 1953 and Wright 1945, as tabulated in duct handbooks",
        edition: "1987",
        locator: "roughness categories for metal duct: galvanized or aluminium, longitudinal seam, slip joints",
        standing: Published,
    }
}

uncertain! {
    /// Absolute roughness of galvanized or aluminium rigid duct, m.
    pub const ROUGHNESS {
        low: 0.05e-3,
        likely: 0.09e-3,
        high: 0.15e-3,
        source: ROUGHNESS_SOURCE,
    }
}
