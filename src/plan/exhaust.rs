//! The document's exhaust air: its state at the outlet, the phase of the cycle, and whether it cools.

use crate::units::Temperature;
use serde::{Deserialize, Serialize};

/// The exhaust air at the dryer's outlet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Exhaust {
    /// Its temperature.
    #[serde(rename = "temperature_degc")]
    pub temperature: Temperature,
    /// Its relative humidity, 0..1.
    pub relative_humidity: f64,
    /// The phase of the drying cycle that the two are of; none where they are of no phase.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub phase: Option<Phase>,
    /// What becomes of its temperature in the duct.
    #[serde(default, skip_serializing_if = "AlongRun::is_default")]
    pub along_run: AlongRun,
}

/// A phase of a drying cycle.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Phase {
    /// Drum and load get warm.
    WarmUp,
    /// Water leaves the load as fast as heat comes.
    Drying,
    /// The load is nearly dry and the air gets hot.
    EndOfDrying,
    /// Heat is off at the end.
    CoolDown,
    /// A cycle without heat, on which pressure and airflow are read.
    NoHeat,
}

impl Phase {
    /// All of them, in the order of a cycle.
    pub const ALL: [Self; 5] = [
        Self::WarmUp,
        Self::Drying,
        Self::EndOfDrying,
        Self::CoolDown,
        Self::NoHeat,
    ];
}

/// What becomes of the air's temperature on its way.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum AlongRun {
    /// It keeps the temperature that it leaves the dryer with, as if the duct let no heat out.
    #[default]
    KeepsTemperature,
    /// The duct's surroundings cool or warm it.
    Cools,
}

impl AlongRun {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    fn is_default(&self) -> bool {
        *self == Self::default()
    }
}
