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

/// Airflow that `pressure` drives through a free area, with the pressure's sign: Cd A sqrt(2 p/rho).
///
/// * `free_area`: m²; * `discharge`: Cd, about 0.6.
///
/// ```
/// use elbowroom::{duct::orifice, units::{Density, Pressure}};
/// // 100 Pa over 5 cm²: 0.6 times 5e-4 m² times 12.91 m/s (worked by hand).
/// let density = Density::from_kilograms_per_cubic_metre(1.2);
/// let leak = orifice::airflow(Pressure::from_pascals(100.0), 5e-4, 0.6, density);
/// assert!((leak.cubic_metres_per_second() - 0.003_873).abs() < 1e-6);
/// ```
pub fn airflow(pressure: Pressure, free_area: f64, discharge: f64, density: Density) -> Airflow {
    let pascals = pressure.pascals();
    let speed = (2.0 * pascals.abs() / density.kilograms_per_cubic_metre()).sqrt();
    Airflow::from_cubic_metres_per_second(discharge * free_area * speed.copysign(pascals))
}
