//! Formulas with the numbers put in, which read the same in every language.

use crate::report::{ElementFigures, Figures, Totals};
use crate::system::ElementKind;
use crate::units::{Pressure, UnitSystem};

/// How an element's loss comes about; nothing where no air moves.
pub(super) fn loss(units: UnitSystem, element: &ElementFigures) -> String {
    let Some(air) = &element.air else {
        return String::new();
    };
    let loss = units.pressure(air.loss);
    let q = units.pressure(air.velocity_pressure);
    match element.element {
        ElementKind::Straight { length, .. } => format!(
            "Δp = f · L/D · q = {:.4} · {} / {} · {q} = {loss}",
            air.friction_factor,
            units.length(length),
            units.length(air.diameter),
        ),
        ElementKind::MakeUpAir { .. } => {
            format!(
                "Δp = ρ/2 · (Q / (Cd · A))² = {loss}, Cd {:.2}",
                air.coefficient.likely
            )
        }
        ElementKind::Leak { .. } => format!(
            "Q = Cd · A · √(2 Δp/ρ) = {}, Cd {:.2}",
            units.airflow(air.escaped),
            air.coefficient.likely
        ),
        _ => {
            let k = air.loss / air.velocity_pressure;
            format!("Δp = K · q = {k:.3} · {q} = {loss}")
        }
    }
}

/// How an element's physical equivalent length comes about; nothing where no air moves.
pub(super) fn equivalent_length(
    units: UnitSystem,
    element: &ElementFigures,
    totals: &Totals,
) -> String {
    let Some(air) = &element.air else {
        return String::new();
    };
    format!(
        "Lₑ = D · Δp / (f · q) = {} · {} / ({:.4} · {}) = {}",
        units.length(totals.diameter),
        units.pressure(air.loss),
        totals.friction_factor,
        units.pressure(totals.velocity_pressure),
        units.equivalent_length(air.equivalent_length)
    )
}

/// Mean velocity at the outlet.
pub(super) fn velocity(units: UnitSystem, totals: &Totals) -> String {
    format!(
        "V = Q / (π D²/4) = {} / (π · ({})²/4) = {}",
        units.airflow(totals.airflow),
        units.length(totals.diameter),
        units.velocity(totals.velocity)
    )
}

/// Velocity pressure at the outlet.
pub(super) fn velocity_pressure(units: UnitSystem, totals: &Totals) -> String {
    format!(
        "q = ρ V²/2 = {:.3} kg/m³ · ({:.2} m/s)²/2 = {:.1} Pa = {}",
        totals.density.kilograms_per_cubic_metre(),
        totals.velocity.metres_per_second(),
        totals.velocity_pressure.pascals(),
        units.pressure(totals.velocity_pressure)
    )
}

/// The sum of the elements' losses, term by term.
pub(super) fn losses(units: UnitSystem, figures: &Figures, totals: &Totals) -> String {
    let losses = figures.elements.iter().filter_map(|it| it.air.as_ref());
    let losses = losses.filter(|air| air.loss > Pressure::ZERO);
    let terms: Vec<String> = losses.map(|air| units.pressure(air.loss).figure).collect();
    format!(
        "Σ Δp = {} = {}",
        terms.join(" + "),
        units.pressure(totals.loss)
    )
}

/// The physical equivalent length of all elements.
pub(super) fn whole_equivalent_length(units: UnitSystem, totals: &Totals) -> String {
    format!(
        "Lₑ = D · Σ Δp / (f · q) = {} · {} / ({:.4} · {}) = {}",
        units.length(totals.diameter),
        units.pressure(totals.loss),
        totals.friction_factor,
        units.pressure(totals.velocity_pressure),
        units.equivalent_length(totals.equivalent_length)
    )
}

/// The measured length by the code, each elbow's deduction, and their sum.
pub(super) fn code_length(units: UnitSystem, figures: &Figures) -> String {
    let code = &figures.code;
    let deductions = figures.elements.iter().filter_map(|it| it.code_deduction);
    let terms = core::iter::once(code.measured).chain(deductions);
    let terms: Vec<String> = terms.map(|term| units.length(term).to_string()).collect();
    format!(
        "{} = {}",
        terms.join(" + "),
        units.length(code.with_deductions)
    )
}

/// A term of a sum, with its sign before it.
pub(super) fn signed(units: UnitSystem, pressure: Pressure) -> String {
    let sign = if pressure.pascals() < 0.0 { '−' } else { '+' };
    format!("{sign} {}", units.pressure(pressure.abs()))
}
