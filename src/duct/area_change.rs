//! Sudden changes of a duct's area.

use crate::source::source;

source! {
    /// The two classic forms.
    pub static SOURCE {
        title: "Borda and Carnot's sudden expansion; sudden contraction by 0.5 (1 - A2/A1)",
        edition: "as handbooks give it",
        locator: "sharp-edged, flow filling the duct on both sides",
        standing: Published,
    }
}

/// Loss of total pressure in a sudden expansion from `upstream` to the larger `downstream` area, in
/// velocity pressures of the **upstream** duct: (1 - A1/A2)².
///
/// ```
/// // Twice the area: a quarter of the velocity pressure.
/// assert_eq!(elbowroom::duct::area_change::expansion(1.0, 2.0), 0.25);
/// ```
pub fn expansion(upstream: f64, downstream: f64) -> f64 {
    (1.0 - upstream / downstream).powi(2)
}

/// Loss of total pressure in a sudden contraction from `upstream` to the smaller `downstream` area,
/// in velocity pressures of the **downstream** duct: 0.5 (1 - A2/A1).
///
/// ```
/// assert_eq!(elbowroom::duct::area_change::contraction(2.0, 1.0), 0.25);
/// ```
pub fn contraction(upstream: f64, downstream: f64) -> f64 {
    0.5 * (1.0 - downstream / upstream)
}
