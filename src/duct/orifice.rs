//! An opening between two rooms.

use crate::units::{Airflow, Density, Pressure};

/// Pressure that drives `airflow` through a free area: rho/2 (Q / (Cd A))².
///
/// * `free_area`: m²; * `discharge`: Cd, about 0.6.
///
/// ```
/// use elbowroom::{duct::orifice, units::{Airflow, Density}};
/// // 120 cfm under a door's 1/2 x 30 in undercut: about 57 Pa (worked by hand).
/// let drop = orifice::pressure_drop(
///     Airflow::from_cubic_metres_per_second(0.056_63),
///     0.009_677,
///     0.6,
///     Density::from_kilograms_per_cubic_metre(1.2),
/// );
/// assert!((drop.pascals() - 57.1).abs() < 0.1);
/// ```
pub fn pressure_drop(
    airflow: Airflow,
    free_area: f64,
    discharge: f64,
    density: Density,
) -> Pressure {
    let speed = airflow.cubic_metres_per_second() / (discharge * free_area);
    Pressure::from_pascals(density.kilograms_per_cubic_metre() / 2.0 * speed * speed)
}
