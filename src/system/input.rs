//! The uncertain inputs of a run, and one choice of a value for each.

use crate::duct::tables::{blower, rigid_duct, segmented_elbow, wall_hood};
use crate::source::Coefficient;
use serde::{Deserialize, Serialize};

/// An uncertain input. One draw of it is shared by all the elements that use it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Input {
    /// Wall roughness of rigid duct, m.
    RigidRoughness,
    /// Which published method smooth elbows follow, as a factor on Rennels' K.
    SmoothElbow,
    /// K of a 90 deg segmented elbow of r/D 1.
    SegmentedElbow,
    /// K of the wall hood.
    WallHood,
    /// Pressure that lifts the flap, Pa.
    FlapWeight,
    /// The blower's airflow at no back pressure, m³/s.
    BlowerFreeAirflow,
    /// The blower's static rise at no airflow, Pa.
    BlowerShutOffPressure,
    /// The exponent of the blower's curve.
    BlowerExponent,
}

impl Input {
    /// All of them, in the order of a [`Draw`].
    pub const ALL: [Self; 8] = [
        Self::RigidRoughness,
        Self::SmoothElbow,
        Self::SegmentedElbow,
        Self::WallHood,
        Self::FlapWeight,
        Self::BlowerFreeAirflow,
        Self::BlowerShutOffPressure,
        Self::BlowerExponent,
    ];

    /// Its low, likely and high value with their source; none for [`Input::SmoothElbow`], whose
    /// span hangs on each elbow's angle and radius.
    pub const fn coefficient(self) -> Option<&'static Coefficient> {
        Some(match self {
            Self::RigidRoughness => &rigid_duct::ROUGHNESS,
            Self::SmoothElbow => return None,
            Self::SegmentedElbow => &segmented_elbow::K_90,
            Self::WallHood => &wall_hood::K,
            Self::FlapWeight => &wall_hood::FLAP_WEIGHT,
            Self::BlowerFreeAirflow => &blower::FREE_AIRFLOW,
            Self::BlowerShutOffPressure => &blower::SHUT_OFF_PRESSURE,
            Self::BlowerExponent => &blower::EXPONENT,
        })
    }
}

/// One choice of every uncertain input: its likely value, or a quantile of its distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draw {
    quantiles: Option<[f64; Input::ALL.len()]>,
}

impl Draw {
    /// Every input at its likely value.
    pub const LIKELY: Self = Self { quantiles: None };

    /// Every input at its own quantile, 0..1, in the order of [`Input::ALL`].
    pub const fn at(quantiles: [f64; Input::ALL.len()]) -> Self {
        Self {
            quantiles: Some(quantiles),
        }
    }

    /// The value of a triangular `low`, `likely`, `high` that this draw has for `input`.
    pub fn of(&self, input: Input, coefficient: &Coefficient) -> f64 {
        match self.quantiles {
            None => coefficient.likely,
            Some(quantiles) => coefficient.at(quantiles[input as usize]),
        }
    }

    /// The value of `input` from its own coefficient; 1, a factor without effect, where it has none.
    pub fn value(&self, input: Input) -> f64 {
        input
            .coefficient()
            .map_or(1.0, |coefficient| self.of(input, coefficient))
    }
}
