//! Where the blower's curve and the run's loss meet.

use super::input::Values;
use super::{Blower, CompiledRun, Draw, Driver, Evaluation};
use crate::numeric::root;
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

/// A run at the airflow that its driver gives it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OperatingPoint {
    /// The run there.
    pub evaluation: Evaluation,
    /// The blower, unless the airflow was stated.
    pub blower: Option<Blower>,
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
    let blower = match run.driver {
        Driver::Stated(airflow) => {
            return Ok(OperatingPoint {
                evaluation: at_stated(run, airflow, values)?,
                blower: None,
            });
        }
        Driver::TypicalBlower => Blower::with(values),
    };
    let free = blower.free_airflow.cubic_metres_per_second();
    // The unknown is the airflow at the termination: with it each leak's pressure is known.
    let spare = |at_end: f64| {
        let evaluation = run.with(Airflow::from_cubic_metres_per_second(at_end), values);
        let rise = blower.static_rise(evaluation.airflow, run.density);
        (rise - evaluation.back_pressure).pascals()
    };
    let least = free * LEAST_SHARE;
    if spare(least) <= 0.0 {
        return Err(OperatingPointError::NoAirflow);
    }
    // Almost every run works below the free airflow; only a strong draught needs the wider bracket.
    let at_end = root(spare, least, free, TOLERANCE)
        .or_else(|_| root(spare, free, free * GREATEST_SHARE, TOLERANCE))
        .map_err(|_| OperatingPointError::OutOfRange)?;
    let at_end = Airflow::from_cubic_metres_per_second(at_end);
    Ok(OperatingPoint {
        evaluation: run.with(at_end, values),
        blower: Some(blower),
    })
}

/// The run with `stated` at the dryer's outlet.
fn at_stated(
    run: &CompiledRun,
    stated: Airflow,
    values: &Values,
) -> Result<Evaluation, OperatingPointError> {
    if run.is_tight() {
        return Ok(run.with(stated, values));
    }
    let at_end = |share: f64| run.with(stated * share, values);
    let spare = |share: f64| at_end(share).airflow / stated - 1.0;
    if spare(LEAST_SHARE) >= 0.0 {
        return Err(OperatingPointError::NoAirflow);
    }
    let share = root(spare, LEAST_SHARE, GREATEST_SHARE, TOLERANCE)
        .map_err(|_| OperatingPointError::OutOfRange)?;
    Ok(at_end(share))
}
