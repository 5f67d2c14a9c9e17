//! What holds a leg's heat: the metal that it is made of and what is wrapped about it.

use crate::units::Length;
use serde::{Deserialize, Serialize};

/// Insulation about a leg.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub enum Insulation {
    /// By how thick it is.
    #[serde(rename = "thickness_m")]
    Thickness(Length),
    /// By its resistance, m² K/W: an R-value in h ft² °F/Btu over 5.678.
    #[serde(rename = "resistance_m2_k_per_w")]
    Resistance(f64),
}

/// What rigid duct is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Metal {
    /// Galvanized steel.
    #[default]
    Galvanized,
    /// Aluminium.
    Aluminium,
}

impl Metal {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    pub(super) fn is_default(&self) -> bool {
        *self == Self::default()
    }
}
