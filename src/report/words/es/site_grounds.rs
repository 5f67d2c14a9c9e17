//! Where the figures of the site readings come from, with the numbers put in.

use super::site::odds as said;
use super::source_words::title;
use crate::diagnosis::CleanReading;
use crate::duct::tables::fault_odds;
use crate::plan::{Conditions, Measured};
use crate::report::words::CleanGrounds;
use crate::units::{Airflow, Pressure, Temperature, UnitSystem, Velocity};

/// The clean run's figure beside a reading.
pub(super) fn clean(units: UnitSystem, grounds: &CleanGrounds<'_>) -> String {
    let CleanGrounds {
        reading,
        clean,
        draws,
    } = grounds;
    let airflow = units.airflow(Airflow::from_cubic_metres_per_second(clean.airflow));
    let figure = formula(units, &reading.measured, clean);
    format!(
        "{figure}; Q está donde la presión del soplador coincide con la del recorrido limpio {}: {airflow}. \
         La banda va del percentil 10 al 90 de {draws} muestras de todos los datos inciertos. La lectura \
         cuenta con un error estándar de {}: el último dígito y la tolerancia del instrumento, el lugar, y \
         lo que las fórmulas dejan fuera (supuesto).",
        conditions(&reading.conditions),
        error(units, &reading.measured, clean.error),
    )
}

fn formula(units: UnitSystem, measured: &Measured, clean: &CleanReading) -> String {
    let pressure = |pascals: f64| units.pressure(Pressure::from_pascals(pascals));
    match measured {
        Measured::StaticPressure { .. } => format!(
            "p = pérdidas corriente abajo + compuerta + tiro - cuarto - q = {} - {} = {}",
            pressure(clean.likely + clean.velocity_pressure),
            pressure(clean.velocity_pressure),
            pressure(clean.likely)
        ),
        Measured::Velocity { .. } | Measured::VelocityPressure { .. } => format!(
            "V = Q / A, con el volumen del aire en ese lugar, = {}",
            units.velocity(Velocity::from_metres_per_second(clean.likely))
        ),
        Measured::Temperature { .. } => format!(
            "El aire de escape del plano, enfriado celda por celda hacia lo que rodea al ducto: {}",
            units.temperature(Temperature::from_celsius(clean.likely))
        ),
    }
}

fn conditions(conditions: &Conditions) -> &'static str {
    match (conditions.open_joint.is_some(), conditions.heat) {
        (true, _) => "que termina en la junta abierta",
        (false, true) => "con el aire de escape del plano",
        (false, false) => "con aire del cuarto",
    }
}

fn error(units: UnitSystem, measured: &Measured, error: f64) -> String {
    match measured {
        Measured::StaticPressure { .. } => {
            units.pressure(Pressure::from_pascals(error)).to_string()
        }
        Measured::Velocity { .. } | Measured::VelocityPressure { .. } => units
            .velocity(Velocity::from_metres_per_second(error))
            .to_string(),
        Measured::Temperature { .. } => {
            let unit = units.temperature_unit();
            format!("{} {unit}", units.temperature_span(error))
        }
    }
}

/// A fault's odds.
pub(super) fn odds(before: f64, now: f64) -> String {
    format!(
        "Antes de leer nada: {}. Cada conjunto de fallas cuenta según esa probabilidad multiplicada por lo \
         bien que explica juntas todas las lecturas, inspecciones y reparaciones, con todos los datos \
         inciertos: ahora {}. Probabilidades de partida: {}.",
        said(before),
        said(now),
        title(&fault_odds::SOURCE)
    )
}

/// The airflow now.
pub(super) fn airflow(clean: &str) -> String {
    format!(
        "Cada conjunto de fallas deja una parte del flujo de aire del recorrido limpio (en un ciclo sin \
         calor {clean}, media de todos los datos); el valor es la media de esas partes según su \
         probabilidad, entre paréntesis del percentil 10 al 90."
    )
}
