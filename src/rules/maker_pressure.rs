//! The dryer maker's limit on the static pressure at the outlet, against a figure that is uncertain.

use super::{Deciding, Verdict};
use crate::numeric::root;
use crate::plan::Input;
use crate::system::{Assessment, COEFFICIENTS, CompiledRun, Draw, INPUTS, operating_point};
use crate::units::Pressure;

/// An uncertain input is believed between these quantiles, as the page's bands are.
/// Of the computation.
const QUANTILES: (f64, f64) = (0.1, 0.9);
/// The turning value is found to this quantile. Of the computation.
const TOLERANCE: f64 = 1e-4;
/// Every uncertain input in the order of its number.
const ALL: [Input; INPUTS] = [
    Input::RigidRoughness,
    Input::SemiRigidRoughness,
    Input::FoilRoughness,
    Input::FlexibleCompression,
    Input::SmoothElbow,
    Input::SegmentedElbow,
    Input::SharpMitre,
    Input::BentFlexible,
    Input::CloseElbows,
    Input::Blockage,
    Input::WallHood,
    Input::LouvredHood,
    Input::RoofCap,
    Input::FlapWeight,
    Input::MakeUpDischarge,
    Input::Estimates,
    Input::BlowerFreeAirflow,
    Input::BlowerShutOffPressure,
    Input::BlowerExponent,
    Input::LeakDischarge,
    Input::WallBox,
];
const _: () = assert!(ALL.len() == COEFFICIENTS.len());

/// The verdict on the back pressure of `assessment` against `limit`, the likely pressure, and where
/// the verdict is open what decides.
///
/// Each input is moved alone from its 10th to its 90th percentile; the spans are independent, so
/// their squares add. Where the limit lies inside, the widest span decides, and the value of its input
/// at which the pressure is the limit is looked for with the others in their middle.
pub(super) fn judge(
    assessment: &Assessment,
    limit: Pressure,
) -> (Verdict, Option<Pressure>, Option<Deciding>) {
    let run = &assessment.run;
    let Some((point, _)) = &assessment.working else {
        return (Verdict::CannotTell, None, Some(Deciding::Airflow));
    };
    let likely = point.evaluation.back_pressure;
    let base = middle(run);
    let Some(centre) = pressure(run, &base) else {
        return (Verdict::CannotTell, Some(likely), Some(Deciding::Airflow));
    };
    let (mut up, mut down) = (0.0, 0.0);
    let mut widest = (0.0, Input::WallHood);
    for input in ALL {
        let moved = [QUANTILES.0, QUANTILES.1].map(|quantile| {
            let mut quantiles = base;
            quantiles[input as usize] = quantile;
            pressure(run, &quantiles).map_or(0.0, |moved| (moved - centre).pascals())
        });
        let [one, other] = moved;
        let (rise, fall) = (one.max(other).max(0.0), one.min(other).min(0.0));
        up += rise * rise;
        down += fall * fall;
        if rise - fall > widest.0 {
            widest = (rise - fall, input);
        }
    }
    let (least, most) = (
        likely - Pressure::from_pascals(down.sqrt()),
        likely + Pressure::from_pascals(up.sqrt()),
    );
    if most <= limit {
        return (Verdict::Meets, Some(likely), None);
    }
    if least > limit {
        return (Verdict::DoesNotMeet, Some(likely), None);
    }
    let input = widest.1;
    let spare = |quantile: f64| {
        let mut quantiles = base;
        quantiles[input as usize] = quantile;
        let moved = pressure(run, &quantiles).map_or(centre, |moved| moved);
        (limit - (likely + (moved - centre))).pascals()
    };
    let turns_at = root(spare, 0.0, 1.0, TOLERANCE)
        .ok()
        .filter(|_| input.is_settable())
        .map(|quantile| run.coefficients[input as usize].at(quantile));
    let deciding = Deciding::Input { input, turns_at };
    (Verdict::CannotTell, Some(likely), Some(deciding))
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
