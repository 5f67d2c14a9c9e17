//! Where the figures of the site readings come from, with the numbers put in.

use super::site::odds as said;
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
        "{figure}; Q is where the blower's rise meets the clean run {}: {airflow}. The band is the 10th \
         to 90th percentile of {draws} draws of all uncertain inputs. The reading counts with a \
         standard error of {}: the instrument's last digit and tolerance, the place, and what the \
         formulas leave out (assumption).",
        conditions(&reading.conditions),
        error(units, &reading.measured, clean.error),
    )
}

fn formula(units: UnitSystem, measured: &Measured, clean: &CleanReading) -> String {
    let pressure = |pascals: f64| units.pressure(Pressure::from_pascals(pascals));
    match measured {
        Measured::StaticPressure { .. } => format!(
            "p = losses beyond + flap + draught - room - q = {} - {} = {}",
            pressure(clean.likely + clean.velocity_pressure),
            pressure(clean.velocity_pressure),
            pressure(clean.likely)
        ),
        Measured::Velocity { .. } | Measured::VelocityPressure { .. } => format!(
            "V = Q / A, with the air's volume at the place, = {}",
            units.velocity(Velocity::from_metres_per_second(clean.likely))
        ),
        Measured::Temperature { .. } => format!(
            "The exhaust of the plan, cooled cell by cell toward what lies around the duct: {}",
            units.temperature(Temperature::from_celsius(clean.likely))
        ),
    }
}

fn conditions(conditions: &Conditions) -> &'static str {
    match (conditions.open_joint.is_some(), conditions.heat) {
        (true, _) => "that ends at the open joint",
        (false, true) => "with the plan's exhaust air",
        (false, false) => "with air of the room",
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
        "Before anything was read: {}. Each set of faults counts by those odds times how well it \
         explains every reading, look and repair together, over all uncertain inputs: now {}. Starting \
         odds: {}.",
        said(before),
        said(now),
        fault_odds::SOURCE.title
    )
}

/// The airflow now.
pub(super) fn airflow(clean: &str) -> String {
    format!(
        "Every set of faults leaves a share of the clean run's airflow (on a cycle without heat {clean}, \
         mean of all inputs); the figure is the mean of these by their odds, in brackets the 10th to \
         90th percentile."
    )
}
