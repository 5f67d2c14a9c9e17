//! The values of the uncertain inputs: the project's own or the user's, and one choice of each.

use crate::duct::tables::{
    blockage, blower, flexible_duct, leak, make_up_air, rigid_duct, segmented_elbow, sharp_mitre,
    termination, wall_box,
};
use crate::plan::{Input, Override};
use crate::source::{Coefficient, source, uncertain};

source! {
    /// What the user sets comes from the user.
    pub static USER_SOURCE {
        title: "Set in this plan",
        edition: "as noted",
        locator: "the plan's overrides",
        standing: Assumption,
    }
}

source! {
    /// Stands for an input whose span hangs on each element, as a factor without effect.
    pub static EACH_ELEMENT_SOURCE {
        title: "Worked out for each element",
        edition: "2026",
        locator: "spread of methods, gap between elbows, or the typed estimate",
        standing: Assumption,
    }
}

uncertain! {
    const BY_ELEMENT {
        low: 1.0,
        likely: 1.0,
        high: 1.0,
        source: EACH_ELEMENT_SOURCE,
    }
}

/// How many inputs there are.
pub const INPUTS: usize = Input::WallBox as usize + 1;

/// The project's low, likely and high value of each input, in the order of [`Input`].
pub const COEFFICIENTS: [Coefficient; INPUTS] = [
    rigid_duct::ROUGHNESS,
    flexible_duct::SEMI_RIGID_ROUGHNESS,
    flexible_duct::FOIL_ROUGHNESS,
    flexible_duct::COMPRESSION,
    BY_ELEMENT,
    segmented_elbow::K_90,
    sharp_mitre::FACTOR,
    flexible_duct::BENT,
    BY_ELEMENT,
    blockage::FACTOR,
    termination::WALL_HOOD,
    termination::LOUVRED_HOOD,
    termination::ROOF_CAP,
    termination::FLAP_WEIGHT,
    make_up_air::DISCHARGE,
    BY_ELEMENT,
    blower::FREE_AIRFLOW,
    blower::SHUT_OFF_PRESSURE,
    blower::EXPONENT,
    leak::DISCHARGE,
    wall_box::K,
];

/// The coefficients of one plan: the project's, with the user's in their place.
pub fn coefficients(overrides: &[Override]) -> [Coefficient; INPUTS] {
    let mut coefficients = COEFFICIENTS;
    for set in overrides {
        coefficients[set.input as usize] = Coefficient {
            low: set.low,
            likely: set.likely,
            high: set.high,
            source: &USER_SOURCE,
        };
    }
    coefficients
}

/// One choice of every uncertain input: its likely value, or a quantile of its distribution.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draw {
    quantiles: Option<[f64; INPUTS]>,
}

impl Draw {
    /// Every input at its likely value.
    pub const LIKELY: Self = Self { quantiles: None };

    /// Every input at its own quantile, 0..1, in the order of [`Input`].
    pub const fn at(quantiles: [f64; INPUTS]) -> Self {
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
}

/// The value of every input in one draw of one run, looked up once for all its evaluations.
#[derive(Debug, Clone, Copy)]
pub(super) struct Values {
    draw: Draw,
    values: [f64; INPUTS],
}

impl Values {
    pub(super) fn of(draw: &Draw, coefficients: &[Coefficient; INPUTS]) -> Self {
        let values = match draw.quantiles {
            None => coefficients.map(|coefficient| coefficient.likely),
            Some(quantiles) => {
                let mut values = quantiles;
                for (value, coefficient) in values.iter_mut().zip(coefficients) {
                    *value = coefficient.at(*value);
                }
                values
            }
        };
        Self {
            draw: *draw,
            values,
        }
    }

    pub(super) fn get(&self, input: Input) -> f64 {
        self.values[input as usize]
    }

    /// The value of an input whose span hangs on the element.
    pub(super) fn of_element(&self, input: Input, coefficient: &Coefficient) -> f64 {
        self.draw.of(input, coefficient)
    }
}
