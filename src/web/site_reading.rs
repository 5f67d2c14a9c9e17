//! From what was typed to a reading in SI.

use super::site_entry::Form;
use crate::plan::{Against, Measured, Reading};
use crate::report::words::SiteLabel;
use crate::units::{Pressure, TemperatureDifference, UnitSystem, Velocity, parse_number};
use leptos::prelude::*;

/// What can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Quantity {
    StaticPressure,
    Velocity,
    VelocityPressure,
    Temperature,
}

impl Quantity {
    pub const ALL: [Self; 4] = [
        Self::StaticPressure,
        Self::Velocity,
        Self::VelocityPressure,
        Self::Temperature,
    ];

    pub const fn key(self) -> &'static str {
        match self {
            Self::StaticPressure => "static",
            Self::Velocity => "velocity",
            Self::VelocityPressure => "pitot",
            Self::Temperature => "temperature",
        }
    }

    pub const fn label(self) -> SiteLabel {
        match self {
            Self::StaticPressure => SiteLabel::StaticPressure,
            Self::Velocity => SiteLabel::VelocityVane,
            Self::VelocityPressure => SiteLabel::VelocityPitot,
            Self::Temperature => SiteLabel::Temperature,
        }
    }

    pub const fn usual_error(self) -> (f64, f64) {
        match self {
            Self::StaticPressure | Self::VelocityPressure => Measured::USUAL_PRESSURE,
            Self::Velocity => Measured::USUAL_VELOCITY,
            Self::Temperature => Measured::USUAL_TEMPERATURE,
        }
    }

    pub fn unit(self, units: UnitSystem) -> &'static str {
        match self {
            Self::StaticPressure | Self::VelocityPressure => units.pressure_unit(),
            Self::Velocity => units.velocity(Velocity::ZERO).unit,
            Self::Temperature => units.temperature_unit(),
        }
    }

    /// An error in SI as the page shows it.
    pub fn error_shown(self, units: UnitSystem, error: f64) -> String {
        match self {
            Self::StaticPressure | Self::VelocityPressure => {
                units.pressure(Pressure::from_pascals(error)).figure
            }
            Self::Velocity => {
                units
                    .velocity(Velocity::from_metres_per_second(error))
                    .figure
            }
            Self::Temperature => units.temperature_span(error),
        }
    }

    /// An error in SI from a figure of the page.
    pub fn error_from(self, units: UnitSystem, figure: f64) -> f64 {
        match self {
            Self::StaticPressure | Self::VelocityPressure => units.pressure_from(figure).pascals(),
            Self::Velocity => units.velocity_from(figure).metres_per_second(),
            Self::Temperature => units.temperature_span_from(figure),
        }
    }
}

/// The reading that the form holds; what is no number where there is one.
pub(super) fn typed_reading(form: Form, units: UnitSystem) -> Result<Reading, String> {
    let text = form.text.get_untracked();
    let figures = figures(&text)?;
    let first = figures[0];
    let (resolution, tolerance) = (
        form.resolution.get_untracked(),
        form.tolerance.get_untracked(),
    );
    let pascals = Pressure::from_pascals;
    let pattern = form.pattern.get_untracked();
    let measured = match form.quantity.get_untracked() {
        Quantity::StaticPressure => Measured::StaticPressure {
            pressure: units.pressure_from(first),
            against: if form.outdoors.get_untracked() {
                Against::Outdoors
            } else {
                Against::Room
            },
            resolution: pascals(resolution),
            tolerance: pascals(tolerance),
        },
        Quantity::Velocity => Measured::Velocity {
            points: figures
                .into_iter()
                .map(|figure| units.velocity_from(figure))
                .collect(),
            pattern,
            resolution: Velocity::from_metres_per_second(resolution),
            tolerance: Velocity::from_metres_per_second(tolerance),
        },
        Quantity::VelocityPressure => Measured::VelocityPressure {
            points: figures
                .into_iter()
                .map(|figure| units.pressure_from(figure))
                .collect(),
            pattern,
            resolution: pascals(resolution),
            tolerance: pascals(tolerance),
        },
        Quantity::Temperature => Measured::Temperature {
            temperature: units.temperature_from(first),
            resolution: TemperatureDifference::from_kelvins(resolution),
            tolerance: TemperatureDifference::from_kelvins(tolerance),
        },
    };
    Ok(Reading {
        at: form.at.get_untracked(),
        measured,
        conditions: form.conditions.get_untracked(),
    })
}

/// One figure or several, as people type them; the text that is none.
fn figures(text: &str) -> Result<Vec<f64>, String> {
    let parts = text.split([' ', ';', '\t']).filter(|part| !part.is_empty());
    let figures: Vec<f64> = parts
        .map(|part| parse_number(part).ok_or_else(|| part.to_owned()))
        .collect::<Result<_, _>>()?;
    if figures.is_empty() {
        return Err(text.to_owned());
    }
    Ok(figures)
}
