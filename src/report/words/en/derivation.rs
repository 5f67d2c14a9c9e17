//! Figures as formulas with the numbers put in.

use super::code::spare;
use super::label;
use crate::report::Figures;
use crate::report::words::rule_figure::length_margin;
use crate::report::words::{Label, TotalFormula, formula};
use crate::source::Standing;
use crate::system::Subject;
use crate::units::{Length, UnitSystem};
use std::fmt::Write;

/// A total by its name.
pub(super) const fn name(which: TotalFormula) -> &'static str {
    match which {
        TotalFormula::Airflow => "Airflow",
        TotalFormula::Velocity => "Velocity",
        TotalFormula::VelocityPressure => "Velocity pressure at the outlet",
        TotalFormula::Loss => "Sum of losses",
        TotalFormula::Draught => "Draught of the rise",
        TotalFormula::BackPressure => "Back pressure",
        TotalFormula::EquivalentLength => "Equivalent length",
        TotalFormula::CodeLength => "Code length",
    }
}

/// How a total comes about.
pub(super) fn total(units: UnitSystem, figures: &Figures, which: TotalFormula) -> String {
    let Some(totals) = &figures.totals else {
        return match which {
            TotalFormula::CodeLength => code_length(units, figures),
            _ => label(Label::NoAirflowFigure).to_owned(),
        };
    };
    let q = units.pressure(totals.velocity_pressure);
    match which {
        TotalFormula::Velocity => formula::velocity(units, totals),
        TotalFormula::VelocityPressure => formula::velocity_pressure(units, totals),
        TotalFormula::BackPressure => format!(
            "p = losses + draught − house pressure − q = {} {} {} − {q} = {}",
            units.pressure(totals.loss),
            formula::signed(units, totals.stack),
            formula::signed(units, -totals.house_pressure),
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
        TotalFormula::Loss => formula::losses(units, figures, totals),
        TotalFormula::Draught => format!(
            "−g · Δz · (ρ outdoors − ρ duct) = −9.807 m/s² · {:.2} m · ({:.3} − {:.3}) kg/m³ = {:.1} Pa \
             = {}",
            totals.rise.metres(),
            totals.outdoor_density.kilograms_per_cubic_metre(),
            totals.density.kilograms_per_cubic_metre(),
            totals.stack.pascals(),
            units.pressure(totals.stack)
        ),
        TotalFormula::EquivalentLength => formula::whole_equivalent_length(units, totals),
        TotalFormula::CodeLength => code_length(units, figures),
    }
}

/// Measured length, each elbow's deduction, and what is left to the limit.
fn code_length(units: UnitSystem, figures: &Figures) -> String {
    let code = &figures.code;
    let mut text = formula::code_length(units, figures);
    if let Some(limit) = code.limit {
        let spare = spare(length_margin(units, code.with_deductions, limit));
        // Writing into a string cannot fail.
        let _ = write!(text, "; limit {}, {spare}", units.length(limit));
    }
    let path = if code.path_through_fittings_counts {
        "straights and the path through fittings"
    } else {
        "straights alone"
    };
    let _ = write!(
        text,
        ". First {path} past the transition duct, then each elbow's deduction."
    );
    text
}

/// How a band comes about.
pub(super) fn band(samples: usize) -> String {
    format!(
        "The band reaches from the 10th to the 90th percentile of {samples} runs of this plan. In each \
         of them every uncertain input has a value between its least and its greatest, a likely one \
         more often (triangular distribution, fixed Sobol sequence), the same for all elements that \
         rest on it."
    )
}

/// From where to where a code length may lie.
pub(super) fn span(units: UnitSystem, least: Length, most: Length) -> String {
    if most > least {
        format!(
            "{} to {} with every estimated or concealed stretch at its least and at its most",
            units.length(least),
            units.length(most)
        )
    } else {
        "No length in it is estimated.".to_owned()
    }
}

/// What the physics rests on that is not published, as a sentence; nothing where all of it is.
pub(in crate::report::words) fn unpublished(grounds: &[(Subject, Standing)]) -> String {
    let told = grounds.iter().map(|(subject, standing)| {
        format!(
            "{} ({})",
            self::subject(*subject),
            super::standing(*standing)
        )
    });
    let told: Vec<String> = told.collect();
    if told.is_empty() {
        String::new()
    } else {
        format!(
            "No published measurement stands behind: {}.",
            told.join(", ")
        )
    }
}

pub(super) const fn subject(subject: Subject) -> &'static str {
    match subject {
        Subject::AirDensity => "Density of the air",
        Subject::AirViscosity => "Viscosity of the air",
        Subject::Gravity => "Weight of the air in a riser",
        Subject::AirConductivity => "Conductivity of the air",
        Subject::AirEnthalpy => "Heat in moist air",
        Subject::InsideHeat => "Heat to the duct's wall",
        Subject::OutsideHeat => "Heat to still air around",
        Subject::Radiation => "Heat by radiation",
        Subject::Condensation => "Water on the wall",
        Subject::Emissivity => "Emissivity of duct and wrap",
        Subject::Insulation => "Insulation",
        Subject::Surroundings => "Temperature about the duct",
        Subject::CyclePhase => "Phases of a cycle",
        Subject::CarrySpeed => "Velocity that carries lint",
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
        Subject::Framing => "Studs and joists",
        Subject::Ceiling => "Ceiling",
        Subject::VelocityPoints => "Points of a traverse",
        Subject::CentreLine => "Centre line against mean velocity",
        Subject::NewRoutes => "Room that new routes keep",
        Subject::SiteReading => "Readings on site",
        Subject::Instruments => "Gauges, vanes and thermometers",
        Subject::FaultOdds => "Odds of each fault",
        Subject::TestEffort => "Effort of each test on site",
        Subject::TradeParts => "Stock lengths, crimped ends and tape",
        Subject::EachElement => "Worked out for each element",
        Subject::User => "Set in the plan",
    }
}
