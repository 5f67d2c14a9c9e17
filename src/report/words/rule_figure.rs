//! Figures of the rules: what was measured, what it is set against, and on which side it is.

use crate::rules::{Limit, Measure, RuleFinding};
use crate::units::{Airflow, Length, Pressure, UnitSystem};

/// On which side of a limit a value is.
#[derive(Clone, Copy)]
pub(super) enum Side {
    /// Inside it.
    ToSpare,
    /// Over a greatest value.
    Over,
    /// Under a least value.
    Short,
}

/// Something measured, in its unit.
pub(super) fn measure(units: UnitSystem, measure: Measure) -> String {
    match measure {
        Measure::Length(length) => units.length(length).to_string(),
        Measure::Size(size) if size < Length::from_inches(0.5) => match units {
            UnitSystem::UsCustomary => format!("{} in", (size.inches() * 1e4).round() / 1e4),
            UnitSystem::Si => format!("{:.1} mm", size.metres() * 1000.0),
        },
        Measure::Size(size) => units.part_size(size).to_string(),
        Measure::Count(count) => count.to_string(),
        Measure::Airflow(airflow) => units.airflow(airflow).to_string(),
        Measure::Pressure(pressure) => units.pressure(pressure).to_string(),
        Measure::Area(area) => {
            let figure = (units.small_area(area) * 10.0).round() / 10.0;
            format!("{figure} {}", units.small_area_unit())
        }
    }
}

/// A rule's limit without a word beside it; empty where it has none.
pub(super) fn plain_limit(units: UnitSystem, finding: &RuleFinding) -> String {
    match finding.limit {
        Some(Limit::AtMost(it) | Limit::AtLeast(it) | Limit::Nominally(it)) => measure(units, it),
        None => String::new(),
    }
}

/// How far a value is from its limit, and on which side.
pub(super) fn margin(units: UnitSystem, margin: Measure, limit: Limit) -> (String, Side) {
    let (size, is_outside) = match margin {
        Measure::Length(it) => (Measure::Length(it.abs()), it < Length::ZERO),
        Measure::Size(it) => (Measure::Size(it.abs()), it < Length::ZERO),
        Measure::Airflow(it) => (Measure::Airflow(it.abs()), it < Airflow::ZERO),
        Measure::Pressure(it) => (Measure::Pressure(it.abs()), it < Pressure::ZERO),
        Measure::Count(_) | Measure::Area(_) => (margin, false),
    };
    let side = match (is_outside, limit) {
        (false, _) => Side::ToSpare,
        (true, Limit::AtLeast(_)) => Side::Short,
        (true, _) => Side::Over,
    };
    (measure(units, size), side)
}

/// What is left of a greatest length, or how far it is passed, and which of the two.
pub(super) fn length_margin(units: UnitSystem, length: Length, limit: Length) -> (String, Side) {
    let margin = Measure::Length(limit - length);
    self::margin(units, margin, Limit::AtMost(Measure::Length(limit)))
}

/// By which factor code and air part on a length, and whether air is the greater.
pub(super) fn parted(air: Length, code: Length) -> (f64, bool) {
    if air < code {
        (code / air, false)
    } else {
        (air / code, true)
    }
}
