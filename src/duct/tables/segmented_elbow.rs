//! Segmented (gored, adjustable) elbows.

use crate::source::{source, uncertain};

source! {
    /// Our estimate from handbook rows for larger ducts.
    pub static SOURCE {
        title: "Our estimate for 4 in gored elbows; handbook rows for larger duct (0.33 to 0.42, from memory) read low at this size",
        edition: "2026",
        locator: "90 deg, r/D 1, four or five pieces; friction of the arc is extra",
        standing: Assumption,
    }
}

uncertain! {
    /// K of a 90 deg segmented elbow of r/D 1, without its arc's friction.
    pub const K_90 {
        low: 0.40,
        likely: 0.50,
        high: 0.70,
        source: SOURCE,
    }
}

/// Share of the 90 deg K that a 45 deg elbow has. Source: [`SOURCE`].
pub const SHARE_AT_45: f64 = 0.6;
