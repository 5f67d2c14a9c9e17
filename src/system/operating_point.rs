//! Where the blower's curve and the run's loss meet.

use super::compiled::Passage;
use super::heat::{HeatProfile, HeatRun, march};
use super::input::Values;
use super::{AirAlong, Blower, CompiledRun, Draw, Driver, Evaluation};
use crate::numeric::{RootError, falling_root, root};
use crate::units::Airflow;
use serde::Serialize;

/// The airflow is found to this, m³/s: a two-thousandth of a cfm. Of the computation.
const TOLERANCE: f64 = 2e-7;
/// The least airflow that is looked at, as a share of the blower's free airflow.
/// Of the computation.
const LEAST_SHARE: f64 = 1e-4;
/// A warm riser may draw more air than the blower's free airflow, up to this many times it.
/// Of the computation.
const GREATEST_SHARE: f64 = 4.0;
/// Where the airflow is first looked for, as a share of the blower's free airflow: most runs work
/// near it. Of the computation.
const USUAL_SHARE: f64 = 0.8;

/// A run at the airflow that its driver gives it.
#[derive(Debug, Clone, PartialEq)]
pub struct OperatingPoint {
    /// The run there.
    pub evaluation: Evaluation,
    /// The blower, unless the airflow was stated.
    pub blower: Option<Blower>,
    /// Temperature and moisture along the run; none where the air keeps its temperature.
    pub heat: Option<HeatProfile>,
}

/// Why there is no operating point.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error, Serialize)]
#[error("{self:?}")]
pub enum OperatingPointError {
    /// The blower cannot lift what stands against it even at the least airflow, or all of a stated
    /// airflow leaves by leaks.
    NoAirflow,
    /// The curves do not meet below the greatest airflow that is looked at.
    OutOfRange,
}

/// The operating point of `run` with the inputs of `draw`: the airflow at which the blower's static
/// rise equals the back pressure, or the stated airflow.
pub fn operating_point(
    run: &CompiledRun,
    draw: &Draw,
) -> Result<OperatingPoint, OperatingPointError> {
    point_with(run, &run.values(draw))
}

/// The same with values that were looked up already.
pub(super) fn point_with(
    run: &CompiledRun,
    values: &Values,
) -> Result<OperatingPoint, OperatingPointError> {
    let (evaluation, blower) = point_in(run, values, &run.air(), None)?;
    let Some(heat) = &run.heat else {
        return Ok(OperatingPoint {
            evaluation,
            blower,
            heat: None,
        });
    };
    point_with_heat(run, values, heat, evaluation)
}

/// Airflow and temperatures in turn, beginning with air that keeps its temperature: cooler air is
/// denser and a little more of it flows, which hardly moves the temperatures.
fn point_with_heat(
    run: &CompiledRun,
    values: &Values,
    heat: &HeatRun,
    isothermal: Evaluation,
) -> Result<OperatingPoint, OperatingPointError> {
    /// Of the airflow: 0.002 cfm of 200. Of the computation.
    const SETTLED: f64 = 1e-5;
    const MOST_TURNS: usize = 8;
    let mut passages: Vec<Passage> = Vec::with_capacity(run.elements.len());
    let mut air = run.air();
    let mut point = (isothermal, None);
    // How much the turn before moved the airflow.
    let mut moved = f64::INFINITY;
    let mut turn = 0;
    loop {
        turn += 1;
        passages.clear();
        let at_end = point.0.airflow_at_end;
        run.each_from_end(at_end, values, &air, |_, passage| passages.push(passage));
        passages.reverse();
        let profile = march(run, heat, &passages, values);
        let before = point.0.airflow;
        point = point_in(run, values, &profile.air, Some(at_end))?;
        let moves = (point.0.airflow / before - 1.0).abs();
        // Each turn moves it by the same share of the one before: some fiftieth.
        if moves * (moves / moved).min(1.0) < SETTLED || turn == MOST_TURNS {
            let (evaluation, blower) = point;
            return Ok(OperatingPoint {
                evaluation,
                blower,
                heat: Some(profile),
            });
        }
        moved = moves;
        air = profile.air;
    }
}

/// The operating point in air that is known along the run, looked for from an airflow at the
/// termination that is `near` it.
pub(super) fn point_in(
    run: &CompiledRun,
    values: &Values,
    air: &AirAlong,
    near: Option<Airflow>,
) -> Result<(Evaluation, Option<Blower>), OperatingPointError> {
    let blower = match run.driver {
        Driver::Stated(airflow) => return Ok((at_stated(run, airflow, values, air)?, None)),
        Driver::TypicalBlower => Blower::with(values),
    };
    let free = blower.free_airflow.cubic_metres_per_second();
    let shut_off = blower.static_rise(Airflow::ZERO, run.density).pascals();
    // The unknown is the airflow at the termination: with it each leak's pressure is known.
    let mut last = None;
    let spare = |at_end: f64| {
        let evaluation = run.with(Airflow::from_cubic_metres_per_second(at_end), values, air);
        last = Some(evaluation);
        let rise = blower.static_rise(evaluation.airflow, run.density);
        (rise - evaluation.back_pressure).pascals()
    };
    let start = near.map_or(free * USUAL_SHARE, Airflow::cubic_metres_per_second);
    // Where they would meet if the run's back pressure grew by the blower's own exponent.
    let meeting = |spare: f64| {
        let share = (start / free).powf(blower.exponent);
        let back_pressure = shut_off * (1.0 - share) - spare;
        free * (1.0 + back_pressure / (share * shut_off)).powf(-1.0 / blower.exponent)
    };
    let (least, greatest) = (free * LEAST_SHARE, free * GREATEST_SHARE);
    let found = falling_root(spare, start, meeting, least, greatest, TOLERANCE);
    let at_end = found.map_err(|error| match error {
        RootError::NotBracketed { at_lower, .. } if at_lower <= 0.0 => {
            OperatingPointError::NoAirflow
        }
        _ => OperatingPointError::OutOfRange,
    })?;
    let at_end = Airflow::from_cubic_metres_per_second(at_end);
    let evaluation = last
        .filter(|evaluation| evaluation.airflow_at_end == at_end)
        .unwrap_or_else(|| run.with(at_end, values, air));
    Ok((evaluation, Some(blower)))
}

/// The run with `stated` at the dryer's outlet.
fn at_stated(
    run: &CompiledRun,
    stated: Airflow,
    values: &Values,
    air: &AirAlong,
) -> Result<Evaluation, OperatingPointError> {
    if run.is_tight() {
        return Ok(run.with(stated, values, air));
    }
    let at_end = |share: f64| run.with(stated * share, values, air);
    let spare = |share: f64| at_end(share).airflow / stated - 1.0;
    if spare(LEAST_SHARE) >= 0.0 {
        return Err(OperatingPointError::NoAirflow);
    }
    let share = root(spare, LEAST_SHARE, GREATEST_SHARE, TOLERANCE)
        .map_err(|_| OperatingPointError::OutOfRange)?;
    Ok(at_end(share))
}
