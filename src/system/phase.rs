//! The air of a phase of the drying cycle.

use crate::duct::tables::cycle_phase;
use crate::plan::{Exhaust, Phase};
use crate::units::Temperature;

/// `exhaust` with the assumed air of `phase` in it.
pub fn exhaust_in(phase: Phase, exhaust: Exhaust) -> Exhaust {
    let air = match phase {
        Phase::WarmUp => cycle_phase::WARM_UP,
        Phase::Drying => cycle_phase::DRYING,
        Phase::EndOfDrying => cycle_phase::END_OF_DRYING,
        Phase::CoolDown => cycle_phase::COOL_DOWN,
        Phase::NoHeat => cycle_phase::NO_HEAT,
    };
    Exhaust {
        temperature: Temperature::from_celsius(air.celsius),
        relative_humidity: air.relative_humidity,
        phase: Some(phase),
        ..exhaust
    }
}
