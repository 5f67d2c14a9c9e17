//! What a run gains over the present one, and how sure that is.

use super::Candidate;
use crate::plan::{Flow, Plan};
use crate::system::{Band, CompiledRun, Drawn};
use crate::units::{Airflow, Length, Pressure};
use serde::{Deserialize, Serialize};

/// A gain over the present run; what is negative is a loss.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Gain {
    /// More airflow.
    #[serde(rename = "airflow_m3_per_s")]
    pub airflow: Airflow,
    /// Less back pressure.
    #[serde(rename = "back_pressure_pa")]
    pub back_pressure: Pressure,
    /// Less code length.
    #[serde(rename = "code_length_m")]
    pub code_length: Length,
    /// Fewer parts.
    pub parts: i32,
    /// How sure it is; none where a drawn blower moves no air.
    pub doubt: Option<Doubt>,
}

/// The bands of a gain, both runs at the same draws of every uncertain input.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Doubt {
    /// Of the gain in airflow, m³/s.
    pub airflow: Band,
    /// Of the gain in back pressure, Pa.
    pub back_pressure: Band,
    /// Whether the gain in airflow, at a stated airflow that in back pressure, is above nought at the
    /// low end of its band.
    pub is_below_gain: bool,
}

impl Gain {
    /// What `other` gains over `present`, whose draws are given.
    pub(super) fn of(present: &Candidate, drawn: Option<&Drawn>, other: &Candidate) -> Self {
        let count = |parts: usize| i32::try_from(parts).unwrap_or(i32::MAX);
        let doubt = drawn.zip(drawn_of(&other.plan)).map(|(before, after)| {
            let (airflow, more) = after.over(before);
            let back_pressure = Band {
                low: -more.high,
                high: -more.low,
            };
            let least = match other.plan.flow {
                Flow::TypicalBlower {} => airflow.low,
                Flow::StatedAirflow { .. } => back_pressure.low,
            };
            Doubt {
                airflow,
                back_pressure,
                is_below_gain: least > 0.0,
            }
        });
        let (before, after) = (&present.figures, &other.figures);
        Self {
            airflow: after.airflow - before.airflow,
            back_pressure: before.back_pressure - after.back_pressure,
            code_length: before.code_length - after.code_length,
            parts: count(before.parts) - count(after.parts),
            doubt,
        }
    }
}

/// The draws of the run of `plan`.
pub(super) fn drawn_of(plan: &Plan) -> Option<Drawn> {
    Drawn::of(&CompiledRun::of(plan).0)
}
