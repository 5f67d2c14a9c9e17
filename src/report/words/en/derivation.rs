//! Figures as formulas with the numbers put in.

use crate::report::words::TotalFormula;
use crate::report::{ElementFigures, Totals};
use crate::system::{ElementKind, Subject};
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

/// How a total comes about.
pub(super) fn total(units: UnitSystem, totals: &Totals, which: TotalFormula) -> String {
    let q = units.pressure(totals.velocity_pressure);
    match which {
        TotalFormula::Velocity => format!(
            "V = Q / (π D²/4) = {} / (π · ({})²/4) = {}",
            units.airflow(totals.airflow),
            units.length(totals.diameter),
            units.velocity(totals.velocity)
        ),
        TotalFormula::VelocityPressure => format!(
            "q = ρ V²/2 = {:.3} kg/m³ · ({:.2} m/s)²/2 = {:.1} Pa = {q}",
            totals.density.kilograms_per_cubic_metre(),
            totals.velocity.metres_per_second(),
            totals.velocity_pressure.pascals()
        ),
        TotalFormula::BackPressure => format!(
            "p = losses + draught − house pressure − q = {} {} {} − {q} = {}",
            units.pressure(totals.loss),
            signed(units, totals.stack),
            signed(units, -totals.house_pressure),
            units.pressure(totals.back_pressure)
        ),
        TotalFormula::Airflow => totals.blower.map_or_else(
            || format!("Q is stated: {}", units.airflow(totals.airflow)),
            |blower| {
                format!(
                    "Q is where the blower's rise p₀ · ρ/1.2 · (1 − (Q/Q₀)ⁿ) equals the back \
                     pressure: p₀ {}, Q₀ {} and n {:.2} give {}",
                    units.pressure(blower.shut_off_pressure),
                    units.airflow(blower.free_airflow),
                    blower.exponent,
                    units.airflow(totals.airflow)
                )
            },
        ),
    }
}

fn signed(units: UnitSystem, pressure: Pressure) -> String {
    let sign = if pressure.pascals() < 0.0 { '−' } else { '+' };
    format!("{sign} {}", units.pressure(pressure.abs()))
}

pub(super) const fn subject(subject: Subject) -> &'static str {
    match subject {
        Subject::AirDensity => "Density of the air",
        Subject::AirViscosity => "Viscosity of the air",
        Subject::Saturation => "Moisture in the air",
        Subject::Altitude => "Air pressure by altitude",
        Subject::Friction => "Friction",
        Subject::RigidDuct => "Rigid duct",
        Subject::SemiRigidDuct => "Semi-rigid duct",
        Subject::FoilDuct => "Foil duct",
        Subject::BentFlexible => "Flexible duct bent by hand",
        Subject::SmoothElbow => "Smooth elbow",
        Subject::SegmentedElbow => "Segmented elbow",
        Subject::SharpMitre => "Sharp mitre",
        Subject::MitreReynolds => "Sharp mitre at low Reynolds numbers",
        Subject::CloseElbows => "Elbows close together",
        Subject::AreaChange => "Change of area",
        Subject::Blockage => "Blockage, stuck flap",
        Subject::Leak => "Leaking joint",
        Subject::WallBox => "Recessed wall box",
        Subject::Termination => "Hoods and cap",
        Subject::OpenEnd => "Open end",
        Subject::MakeUpAir => "Make-up air",
        Subject::Blower => "Blower",
        Subject::VelocityPoints => "Points of a traverse",
        Subject::CentreLine => "Centre line against mean velocity",
        Subject::FaultOdds => "Odds of each fault",
        Subject::TestEffort => "Effort of each test on site",
        Subject::EachElement => "Worked out for each element",
        Subject::User => "Set in the plan",
    }
}
