//! The blower of a full-size dryer.

use crate::source::{source, uncertain};

source! {
    /// No open curve was found for any dryer's blower.
    pub static SOURCE {
        title: "Our assumption for the blower of a full-size dryer; no open curve was found",
        edition: "2026",
        locator: "static rise p = p0 (rho/1.2) (1 - (Q/Q0)^n); puts a short clean run at 106 to 177 cfm and 0.24 to 0.64 in. w.c.",
        standing: Assumption,
    }
}

uncertain! {
    /// Airflow at no back pressure, m³/s.
    pub const FREE_AIRFLOW {
        low: 0.066,
        likely: 0.080,
        high: 0.100,
        source: SOURCE,
    }
}

uncertain! {
    /// Static rise at no airflow and density 1.2 kg/m³, Pa.
    pub const SHUT_OFF_PRESSURE {
        low: 200.0,
        likely: 320.0,
        high: 500.0,
        source: SOURCE,
    }
}

uncertain! {
    /// Exponent n of the curve.
    pub const EXPONENT {
        low: 1.5,
        likely: 2.0,
        high: 2.5,
        source: SOURCE,
    }
}

source! {
    /// Of the density that fan curves are stated at.
    pub static STANDARD_AIR_SOURCE {
        title: "ISO 5801, Fans, performance testing using standardized airways",
        edition: "2017",
        locator: "standard air, 1.2 kg/m³ (from memory)",
        standing: Memory,
    }
}

/// The density that fan curves are stated at, kg/m³.
/// Source: [`STANDARD_AIR_SOURCE`].
pub const STANDARD_DENSITY: f64 = 1.2;
