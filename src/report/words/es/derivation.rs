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
        TotalFormula::Airflow => "Flujo de aire",
        TotalFormula::Velocity => "Velocidad",
        TotalFormula::VelocityPressure => "Presión de velocidad en la salida",
        TotalFormula::Loss => "Suma de las pérdidas",
        TotalFormula::Draught => "Tiro de la subida",
        TotalFormula::BackPressure => "Contrapresión",
        TotalFormula::EquivalentLength => "Longitud equivalente",
        TotalFormula::CodeLength => "Longitud según el código",
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
            "p = pérdidas + tiro − presión de la casa − q = {} {} {} − {q} = {}",
            units.pressure(totals.loss),
            formula::signed(units, totals.stack),
            formula::signed(units, -totals.house_pressure),
            units.pressure(totals.back_pressure)
        ),
        TotalFormula::Airflow => totals.blower.map_or_else(
            || format!("Q es un dato indicado: {}", units.airflow(totals.airflow)),
            |blower| {
                format!(
                    "Q está donde la presión del soplador p₀ · ρ/1.2 · (1 − (Q/Q₀)ⁿ) iguala la \
                     contrapresión: p₀ {}, Q₀ {} y n {:.2} dan {}",
                    units.pressure(blower.shut_off_pressure),
                    units.airflow(blower.free_airflow),
                    blower.exponent,
                    units.airflow(totals.airflow)
                )
            },
        ),
        TotalFormula::Loss => formula::losses(units, figures, totals),
        TotalFormula::Draught => format!(
            "−g · Δz · (ρ exterior − ρ ducto) = −9.807 m/s² · {:.2} m · ({:.3} − {:.3}) kg/m³ = {:.1} Pa \
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
        let _ = write!(text, "; límite {}, {spare}", units.length(limit));
    }
    let path = if code.path_through_fittings_counts {
        "los tramos rectos y el trayecto por los accesorios"
    } else {
        "solo los tramos rectos"
    };
    let _ = write!(
        text,
        ". Primero {path} después del ducto de transición; luego la deducción de cada codo."
    );
    text
}

/// How a band comes about.
pub(super) fn band(samples: usize) -> String {
    format!(
        "La banda va del percentil 10 al 90 de {samples} cálculos de este plano. En cada uno, todo dato \
         incierto tiene un valor entre su mínimo y su máximo, más a menudo uno probable (distribución \
         triangular, secuencia fija de Sobol), el mismo para todos los elementos que dependen de él."
    )
}

/// From where to where a code length may lie.
pub(super) fn span(units: UnitSystem, least: Length, most: Length) -> String {
    if most > least {
        format!(
            "De {} a {}, con cada trecho estimado u oculto en su mínimo y en su máximo",
            units.length(least),
            units.length(most)
        )
    } else {
        "Ninguna longitud de esta suma es estimada.".to_owned()
    }
}

/// What the physics rests on that is not published, as a sentence; nothing where all of it is.
pub(super) fn unpublished(grounds: &[(Subject, Standing)]) -> String {
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
            "Sin medición publicada que lo respalde: {}.",
            told.join(", ")
        )
    }
}

pub(super) const fn subject(subject: Subject) -> &'static str {
    match subject {
        Subject::TradeParts => "Largos comerciales, extremos engarzados y cinta",
        Subject::AirDensity => "Densidad del aire",
        Subject::AirViscosity => "Viscosidad del aire",
        Subject::Gravity => "Peso del aire en un tramo vertical",
        Subject::AirConductivity => "Conductividad del aire",
        Subject::AirEnthalpy => "Calor en el aire húmedo",
        Subject::InsideHeat => "Calor hacia la pared del ducto",
        Subject::OutsideHeat => "Calor hacia el aire quieto alrededor",
        Subject::Radiation => "Calor por radiación",
        Subject::Condensation => "Agua en la pared",
        Subject::Emissivity => "Emisividad del ducto y del forro",
        Subject::Insulation => "Aislamiento",
        Subject::Surroundings => "Temperatura alrededor del ducto",
        Subject::CyclePhase => "Fases de un ciclo",
        Subject::CarrySpeed => "Velocidad que arrastra la pelusa",
        Subject::Saturation => "Humedad del aire",
        Subject::Altitude => "Presión del aire según la altitud",
        Subject::Friction => "Fricción",
        Subject::RigidDuct => "Ducto rígido",
        Subject::SemiRigidDuct => "Ducto semirrígido",
        Subject::FoilDuct => "Ducto flexible de aluminio",
        Subject::BentFlexible => "Ducto flexible doblado a mano",
        Subject::SmoothElbow => "Codo liso",
        Subject::SegmentedElbow => "Codo segmentado",
        Subject::SharpMitre => "Codo a inglete",
        Subject::MitreReynolds => "Codo a inglete con números de Reynolds bajos",
        Subject::CloseElbows => "Codos muy juntos",
        Subject::AreaChange => "Cambio de área",
        Subject::Blockage => "Obstrucción, compuerta atascada",
        Subject::Leak => "Junta con fuga",
        Subject::WallBox => "Caja empotrada en la pared",
        Subject::Termination => "Campanas y sombrerete",
        Subject::OpenEnd => "Extremo abierto",
        Subject::MakeUpAir => "Aire de reposición",
        Subject::Blower => "Soplador",
        Subject::Framing => "Montantes y viguetas",
        Subject::Ceiling => "Techo",
        Subject::VelocityPoints => "Puntos de un barrido",
        Subject::CentreLine => "Línea central frente a velocidad media",
        Subject::NewRoutes => "Espacio que guardan los recorridos nuevos",
        Subject::SiteReading => "Lecturas en el sitio",
        Subject::Instruments => "Manómetros, anemómetros y termómetros",
        Subject::FaultOdds => "Probabilidad de cada falla",
        Subject::TestEffort => "Esfuerzo de cada prueba en el sitio",
        Subject::EachElement => "Calculado para cada elemento",
        Subject::User => "Fijado en el plano",
    }
}
