//! A plan with its figures at its own operating point.

use crate::plan::{Plan, RunPath};
use crate::rules::code_length;
use crate::system::{CompiledRun, Draw, ElementKind, operating_point};
use crate::units::{Airflow, Length, Pressure};
use serde::{Deserialize, Serialize};

/// A run's figures at likely inputs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Figures {
    /// Airflow that the dryer sends out.
    #[serde(rename = "airflow_m3_per_s")]
    pub airflow: Airflow,
    /// Back pressure.
    #[serde(rename = "back_pressure_pa")]
    pub back_pressure: Pressure,
    /// Length as the plan's rule set counts it.
    #[serde(rename = "code_length_m")]
    pub code_length: Length,
    /// Straights and arcs.
    #[serde(rename = "developed_length_m")]
    pub developed_length: Length,
    /// Straights and elbows.
    pub parts: usize,
    /// Elbows.
    pub bends: usize,
}

impl Figures {
    /// Less airflow is worse; at a stated airflow, more back pressure.
    pub fn order(&self, other: &Self) -> core::cmp::Ordering {
        let own = self.airflow.cubic_metres_per_second();
        let its = other.airflow.cubic_metres_per_second();
        let pressures = (self.back_pressure.pascals(), other.back_pressure.pascals());
        its.total_cmp(&own)
            .then(pressures.0.total_cmp(&pressures.1))
    }

    /// Whether airflow or back pressure differ by more than the last digits.
    pub(super) fn differ(&self, other: &Self) -> bool {
        /// A share. Of the computation.
        const SAME: f64 = 1e-9;
        let share = (self.back_pressure - other.back_pressure) / other.back_pressure;
        share.abs() > SAME || (self.airflow / other.airflow - 1.0).abs() > SAME
    }
}

/// A plan worked out in full.
#[derive(Debug, Clone, PartialEq)]
pub struct Candidate {
    /// The whole plan.
    pub plan: Plan,
    /// Its figures.
    pub figures: Figures,
}

impl Candidate {
    /// The figures of `plan`; none where no air moves.
    pub fn of(plan: Plan) -> Option<Self> {
        let (run, findings) = CompiledRun::of(&plan);
        let point = operating_point(&run, &Draw::LIKELY).ok()?.evaluation;
        let count = |is: fn(&ElementKind) -> bool| {
            let elements = run.elements.iter();
            elements.filter(|element| is(&element.kind)).count()
        };
        let bends = count(|kind| matches!(kind, ElementKind::Elbow { .. }));
        let straights = count(
            |kind| matches!(kind, ElementKind::Straight { length, .. } if *length > Length::ZERO),
        );
        let figures = Figures {
            airflow: point.airflow,
            back_pressure: point.back_pressure,
            code_length: code_length(&plan, &run, &findings).with_deductions,
            developed_length: RunPath::of(&plan).developed_length(),
            parts: straights + bends,
            bends,
        };
        Some(Self { plan, figures })
    }
}
