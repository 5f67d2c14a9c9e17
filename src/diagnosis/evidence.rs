//! From what was entered to what the inference takes: each reading with its setting and its error,
//! each look, and what was mended before it.

use super::cause::PlacedCause;
use super::model::{Model, Setting};
use crate::duct::point_velocity;
use crate::duct::tables::site_reading::{COOLING_ERROR, TEMPERATURE_ERROR};
use crate::duct::tables::velocity_points::{CENTRE, CENTRE_AFTER_STRAIGHT, TAP_NEAR_BEND};
use crate::plan::{Against, Entry, Found, Measured, Pattern, Preparation, Reading, Spot, Visit};
use crate::source::Coefficient;
use crate::units::{Density, Velocity};

/// What is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Quantity {
    /// Static pressure against the room, Pa.
    AgainstRoom,
    /// Static pressure against the open air, Pa.
    AgainstOutdoors,
    /// Mean velocity, m/s.
    Velocity,
    /// Temperature of the air, deg C.
    Temperature,
}

impl Quantity {
    /// Whether it is a static pressure.
    pub const fn is_pressure(self) -> bool {
        matches!(self, Self::AgainstRoom | Self::AgainstOutdoors)
    }
}

/// A reading as the inference takes it.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Planned {
    pub setting: Setting,
    /// The setting's table in the model.
    pub table: usize,
    /// The joint before this element; the number of elements for the hood.
    pub place: usize,
    pub quantity: Quantity,
    pub screen_clean: bool,
    /// What was read.
    pub value: f64,
    /// Its standard error, in its own unit.
    pub error: f64,
    /// A further standard error as a share of the value.
    pub relative: f64,
    /// A further standard error as a share of the velocity pressure there.
    pub swirl: f64,
}

/// How far the formulas themselves may be off beside their inputs: a standard error as a share of a
/// reading. Assumption. Source: [`site_reading::SOURCE`].
const MODEL_ERROR: f64 = 0.02;
/// The same for what the formulas leave out, Pa. Assumption. Source: [`site_reading::SOURCE`].
const MODEL_ERROR_PASCALS: f64 = 0.5;
/// A gauge that was not set to nought may be off by this, Pa. Assumption.
/// Source: [`site_reading::SOURCE`].
const NOT_ZEROED: f64 = 4.0;
/// With washing in the drum the air is let through less evenly: a share of the reading. Assumption.
/// Source: [`site_reading::SOURCE`].
const DRUM_FULL: f64 = 0.06;
/// A velocity over the face of a hood. Assumption: the face is uneven.
/// Source: [`site_reading::SOURCE`].
const HOOD_ERROR: f64 = 0.10;
/// A tolerance is taken for twice the standard error. Source: [`site_reading::SOURCE`].
const TOLERANCE_IS: f64 = 2.0;

/// The place of a spot in the model.
pub(super) fn place_of(model: &Model, spot: &Spot) -> Option<usize> {
    match spot {
        Spot::Outlet => Some(0),
        Spot::Hood => Some(model.elements.len()),
        Spot::Before(element) => model.elements.iter().position(|it| it.id == *element),
    }
}

/// A reading as the inference takes it; none at a place that is no more, nor for a temperature where
/// the plan's air keeps its own or where the run was open before it.
pub(super) fn planned(model: &mut Model, reading: &Reading) -> Option<Planned> {
    let conditions = &reading.conditions;
    let open = match &conditions.open_joint {
        None => None,
        Some(spot) => Some(place_of(model, spot)?),
    };
    let setting = Setting {
        hot: conditions.heat,
        open: open.filter(|place| *place < model.elements.len()),
        flap_held: conditions.flap_held,
        door_open: conditions.door_open,
    };
    let place = place_of(model, &reading.at)?;
    // At one mass flow density goes against the volume.
    let air = model.air(setting.hot);
    let density = Density::from_kilograms_per_cubic_metre(air.density / air.at_joint(place));
    let (quantity, value, error, mut relative) = values(&reading.measured, density)?;
    if place == model.elements.len() && quantity == Quantity::Velocity {
        relative = f64::hypot(relative, HOOD_ERROR);
    }
    if quantity == Quantity::Temperature {
        let is_past = setting.open.is_some_and(|open| place > open);
        if is_past || !model.take_temperatures(setting.hot) {
            return None;
        }
    }
    let mut planned = at(model, setting, place, quantity);
    planned.screen_clean = conditions.lint_screen_clean;
    planned.value = value;
    planned.error = planned.error.hypot(error);
    planned.relative = planned.relative.hypot(relative);
    if !conditions.drum_empty {
        planned.relative = planned.relative.hypot(DRUM_FULL);
    }
    Some(planned)
}

/// A reading that is not taken yet, by an ideal gauge.
pub(super) fn at(model: &mut Model, setting: Setting, place: usize, quantity: Quantity) -> Planned {
    let swirls = quantity.is_pressure() && model.is_near_bend(place);
    let uniform = 3.0_f64.sqrt().recip();
    Planned {
        table: model.tabulate(setting),
        setting,
        place,
        quantity,
        screen_clean: true,
        value: 0.0,
        error: match quantity {
            Quantity::Velocity => 0.0,
            Quantity::Temperature => cooling_error(model, setting.hot, place),
            _ => MODEL_ERROR_PASCALS,
        },
        // A share of a temperature in deg C means nothing.
        relative: if quantity == Quantity::Temperature {
            0.0
        } else {
            MODEL_ERROR
        },
        swirl: if swirls { TAP_NEAR_BEND * uniform } else { 0.0 },
    }
}

/// The standard error of a predicted temperature, K, by how far the clean run's air cools to there.
fn cooling_error(model: &Model, hot: bool, place: usize) -> f64 {
    /// An airflow of usual size, m³/s. Of the computation.
    const USUAL: f64 = 0.04;
    let fall = model.temperatures(hot).map_or(0.0, |temperatures| {
        temperatures.at(0, USUAL, 0.0) - temperatures.at(place, USUAL, 0.0)
    });
    TEMPERATURE_ERROR.hypot(COOLING_ERROR * fall)
}

/// Quantity, value, standard error and the relative part of it.
fn values(measured: &Measured, density: Density) -> Option<(Quantity, f64, f64, f64)> {
    let error = |resolution: f64, tolerance: f64| {
        // A last digit stands for anything that is rounded to it.
        (resolution / 12.0_f64.sqrt()).hypot(tolerance / TOLERANCE_IS)
    };
    match measured {
        Measured::StaticPressure {
            pressure,
            against,
            resolution,
            tolerance,
        } => {
            let quantity = match against {
                Against::Room => Quantity::AgainstRoom,
                Against::Outdoors => Quantity::AgainstOutdoors,
            };
            let error = error(resolution.pascals(), tolerance.pascals());
            Some((quantity, pressure.pascals(), error, 0.0))
        }
        Measured::Velocity {
            points,
            pattern,
            resolution,
            tolerance,
        } => {
            let (mean, relative) = mean(points, *pattern)?;
            let error = error(
                resolution.metres_per_second(),
                tolerance.metres_per_second(),
            );
            Some((Quantity::Velocity, mean, error, relative))
        }
        Measured::VelocityPressure {
            points,
            pattern,
            resolution,
            tolerance,
        } => {
            let velocities: Vec<Velocity> = points
                .iter()
                .map(|point| point_velocity::of_pitot(*point, density))
                .collect();
            let (mean, relative) = mean(&velocities, *pattern)?;
            // dv = dq / (rho v).
            let of_pressure = error(resolution.pascals(), tolerance.pascals());
            let error = of_pressure / (density.kilograms_per_cubic_metre() * mean.max(0.5));
            Some((Quantity::Velocity, mean, error, relative))
        }
        Measured::Temperature {
            temperature,
            resolution,
            tolerance,
        } => {
            let error = error(resolution.kelvins(), tolerance.kelvins());
            Some((Quantity::Temperature, temperature.celsius(), error, 0.0))
        }
    }
}

/// The mean velocity that points stand for, m/s, and the relative error of its factor.
fn mean(points: &[Velocity], pattern: Pattern) -> Option<(f64, f64)> {
    let mean = point_velocity::mean(points)?.metres_per_second();
    let factor = match pattern {
        Pattern::CentreLineAfterStraight => &CENTRE_AFTER_STRAIGHT,
        Pattern::CentreLine => &CENTRE,
        Pattern::Traverse => return Some((mean, TRAVERSE_ERROR)),
    };
    Some((
        mean * factor.likely,
        triangular_error(factor) / factor.likely,
    ))
}

/// The standard error of a traverse as a share of the mean. Assumption: few points in a small duct.
/// Source: [`site_reading::SOURCE`].
const TRAVERSE_ERROR: f64 = 0.02;

/// The standard deviation of a triangular low, likely and high.
fn triangular_error(of: &Coefficient) -> f64 {
    let (low, likely, high) = (of.low, of.likely, of.high);
    let squares = low * low + likely * likely + high * high;
    let products = low * likely + low * high + likely * high;
    ((squares - products) / 18.0).max(0.0).sqrt()
}

/// A fact of a visit, with the causes that had been mended before it.
#[derive(Debug, Clone)]
pub(super) struct Fact {
    pub what: Observed,
    pub mended: Vec<bool>,
}

#[derive(Debug, Clone)]
pub(super) enum Observed {
    Read(Planned),
    /// A look into the element at a place, and whether something was there.
    Looked {
        place: usize,
        blocked: bool,
    },
}

/// The facts of a visit, each with the number of its entry, and what is mended at its end. Entries
/// that say nothing here (places that are no more) are left out.
pub(super) fn facts(
    model: &mut Model,
    causes: &[PlacedCause],
    visit: &Visit,
) -> (Vec<(usize, Fact)>, Vec<bool>) {
    let mut mended = vec![false; causes.len()];
    let mut facts = Vec::new();
    for (index, entry) in visit.entries.iter().enumerate() {
        let what = match entry {
            Entry::Reading(reading) => {
                let Some(mut planned) = planned(model, reading) else {
                    continue;
                };
                if planned.quantity.is_pressure()
                    && !visit.preparation.contains(&Preparation::GaugeZeroed)
                {
                    planned.error = planned.error.hypot(NOT_ZEROED);
                }
                Observed::Read(planned)
            }
            Entry::Look(look) => {
                let place = model.elements.iter().position(|it| it.id == look.at);
                let Some(place) = place else {
                    continue;
                };
                let blocked = look.found == Found::Blocked;
                Observed::Looked { place, blocked }
            }
            Entry::Done(done) => {
                for (mended, cause) in mended.iter_mut().zip(causes) {
                    *mended |= cause.cause.is_mended_by(&done.what);
                }
                continue;
            }
        };
        let mended = mended.clone();
        facts.push((index, Fact { what, mended }));
    }
    (facts, mended)
}
