//! The blower of a full-size dryer.

use crate::source::{Coefficient, Source, Standing};

/// No open curve was found for any dryer's blower.
pub static SOURCE: Source = Source {
    title: "Our assumption for the blower of a full-size dryer; no open curve was found",
    edition: "2026",
    locator: "static rise p = p0 (rho/1.2) (1 - (Q/Q0)^n); puts a short clean run at 106 to 177 cfm and 0.24 to 0.64 in. w.c.",
    standing: Standing::Assumption,
};

/// Airflow at no back pressure, m³/s.
pub const FREE_AIRFLOW: Coefficient = Coefficient {
    low: 0.066,
    likely: 0.080,
    high: 0.100,
    source: &SOURCE,
};

/// Static rise at no airflow and density 1.2 kg/m³, Pa.
pub const SHUT_OFF_PRESSURE: Coefficient = Coefficient {
    low: 200.0,
    likely: 320.0,
    high: 500.0,
    source: &SOURCE,
};

/// Exponent n of the curve.
pub const EXPONENT: Coefficient = Coefficient {
    low: 1.5,
    likely: 2.0,
    high: 2.5,
    source: &SOURCE,
};

/// The density that fan curves are stated at, kg/m³. Source: ISO 5801, standard air.
pub const STANDARD_DENSITY: f64 = 1.2;
