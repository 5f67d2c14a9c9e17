//! How much insulation keeps the wall dry.

use super::HeatProfile;
use crate::duct::tables::insulation::CONDUCTIVITY;
use crate::numeric::root;
use crate::plan::{AlongRun, Field, Insulation, Plan};
use crate::system::{CompiledRun, Draw, operating_point};
use crate::units::Temperature;
use serde::Serialize;

/// What insulation can do against a wet wall.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum InsulationUpgrade {
    /// No wall is wet as it is.
    AlreadyDry,
    /// So much about the whole run, with what it has, and no wall is wet.
    Resistance {
        /// m² K/W.
        resistance_m2_k_per_w: f64,
    },
    /// Not even the most that a plan can hold.
    NotByInsulation,
    /// Nothing can be said: no air moves, or the plan's air keeps its temperature.
    Unknown,
}

/// The least insulation about every leg of `plan` that leaves no wall wet, the operating point solved
/// anew with each; a leg that has more keeps it. Found to 0.002 m² K/W (R 0.01).
pub fn insulation_that_dries(plan: &Plan) -> InsulationUpgrade {
    /// Of the computation.
    const TOLERANCE: f64 = 0.002;
    if plan.exhaust.along_run == AlongRun::KeepsTemperature {
        return InsulationUpgrade::Unknown;
    }
    match profile(plan) {
        None => return InsulationUpgrade::Unknown,
        Some((profile, _)) if profile.water() <= 0.0 => return InsulationUpgrade::AlreadyDry,
        Some(_) => {}
    }
    let most = Field::INSULATION_RESISTANCE.greatest;
    let least = Field::INSULATION_RESISTANCE.least;
    let spare = |resistance: f64| driest(&insulated(plan, resistance)).unwrap_or(f64::NAN);
    if spare(least) >= 0.0 {
        return InsulationUpgrade::Resistance {
            resistance_m2_k_per_w: least,
        };
    }
    match root(spare, least, most, TOLERANCE) {
        Ok(found) => InsulationUpgrade::Resistance {
            // Past the root by the promise, so that the answer dries.
            resistance_m2_k_per_w: (found + TOLERANCE).min(most),
        },
        Err(_) => InsulationUpgrade::NotByInsulation,
    }
}

/// `plan` with at least so much insulation, m² K/W, about every leg.
pub fn insulated(plan: &Plan, resistance: f64) -> Plan {
    let mut plan = plan.clone();
    for point in &mut plan.run.points {
        let has = point.leg.insulation.map_or(0.0, insulation_resistance);
        if has < resistance {
            point.leg.insulation = Some(Insulation::Resistance(resistance));
        }
    }
    plan
}

/// What insulation resists, m² K/W, one given by its thickness through its assumed conductivity.
pub fn insulation_resistance(insulation: Insulation) -> f64 {
    match insulation {
        Insulation::Resistance(resistance) => resistance,
        Insulation::Thickness(thickness) => thickness.metres() / CONDUCTIVITY.likely,
    }
}

/// By how much the coldest wall lies over the dew point of the air that leaves the dryer, K, less what
/// it is to have to spare; below nought where it is wet. None where no air moves.
fn driest(plan: &Plan) -> Option<f64> {
    /// More than the march's own steps leave open. Of the computation.
    const TO_SPARE_KELVINS: f64 = 0.02;
    let (profile, dew_point) = profile(plan)?;
    let (wall, _) = profile.coldest_wall()?;
    Some((wall - dew_point).kelvins() - TO_SPARE_KELVINS)
}

fn profile(plan: &Plan) -> Option<(HeatProfile, Temperature)> {
    let (run, _) = CompiledRun::of(plan);
    let dew_point = run.dew_point()?;
    let point = operating_point(&run, &Draw::LIKELY).ok()?;
    Some((point.heat?, dew_point))
}
