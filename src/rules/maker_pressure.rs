//! The dryer maker's limit on the static pressure at the outlet, against a figure that is uncertain.

use super::{Deciding, Verdict};
use crate::numeric::root;
use crate::plan::Input;
use crate::system::{Assessment, Band, CompiledRun, Draw, INPUTS, bands, operating_point};
use crate::units::Pressure;

/// The quantiles between which an input is moved alone, as the bands have them. Of the computation.
const QUANTILES: [f64; 2] = [0.1, 0.9];
/// The turning value is found to this quantile. Of the computation.
const TOLERANCE: f64 = 1e-4;

/// The verdict on the back pressure of `assessment` against `limit`, the likely pressure, and where
/// the verdict is open what decides.
///
/// The verdict is open where the limit lies inside the band that is shown beside the figure, which
/// always holds the likely figure too. Then the input decides that moves the pressure most when it is
/// moved alone, and the value of it at which the pressure is the limit is looked for with the others
/// likely.
pub(super) fn judge(
    assessment: &Assessment,
    limit: Pressure,
) -> (Verdict, Option<Pressure>, Option<Deciding>) {
    let run = &assessment.run;
    let Some((point, _)) = &assessment.working else {
        return (Verdict::CannotTell, None, Some(Deciding::Airflow));
    };
    let likely = point.evaluation.back_pressure;
    let Some(Band { low, high }) = bands(run).map(|bands| bands.back_pressure) else {
        return (Verdict::CannotTell, Some(likely), Some(Deciding::Airflow));
    };
    if high.max(likely.pascals()) <= limit.pascals() {
        return (Verdict::Meets, Some(likely), None);
    }
    if low.min(likely.pascals()) > limit.pascals() {
        return (Verdict::DoesNotMeet, Some(likely), None);
    }
    let deciding = deciding(run, likely, limit);
    (Verdict::CannotTell, Some(likely), Some(deciding))
}

/// The input that decides, and where it turns the verdict.
fn deciding(run: &CompiledRun, likely: Pressure, limit: Pressure) -> Deciding {
    let base = middle(run);
    let moved = |input: Input, quantile: f64| {
        let mut quantiles = base;
        quantiles[input as usize] = quantile;
        pressure(run, &quantiles).unwrap_or(likely)
    };
    let width = |input: Input| {
        let [one, other] = QUANTILES.map(|quantile| moved(input, quantile));
        (one - other).abs().pascals()
    };
    let widest = Input::ALL
        .into_iter()
        .map(|input| (input, width(input)))
        .reduce(|widest, next| if next.1 > widest.1 { next } else { widest });
    let input = widest.map_or(Input::WallHood, |(input, _)| input);
    // Off the likely figure by what the middle of the elements' own inputs is off it.
    let offset = likely - pressure(run, &base).unwrap_or(likely);
    let spare = |quantile: f64| (limit - moved(input, quantile) - offset).pascals();
    let turns_at = root(spare, 0.0, 1.0, TOLERANCE)
        .ok()
        .filter(|_| input.is_settable())
        .map(|quantile| run.coefficients[input as usize].at(quantile));
    Deciding::Input { input, turns_at }
}

/// The quantiles at which every input has its likely value; half way for what is worked out for each
/// element.
fn middle(run: &CompiledRun) -> [f64; INPUTS] {
    run.coefficients.map(|coefficient| {
        let width = coefficient.high - coefficient.low;
        if width > 0.0 {
            (coefficient.likely - coefficient.low) / width
        } else {
            0.5
        }
    })
}

fn pressure(run: &CompiledRun, quantiles: &[f64; INPUTS]) -> Option<Pressure> {
    let point = operating_point(run, &Draw::at(*quantiles)).ok()?;
    Some(point.evaluation.back_pressure)
}
