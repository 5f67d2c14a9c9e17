//! Vapour to a wet wall.

use crate::source::source;

source! {
    /// Of condensation out of moist air.
    pub static CONDENSATION_SOURCE {
        title: "ASHRAE Handbook, Fundamentals, mass transfer: Lewis' analogy of heat and vapour",
        edition: "2017",
        locator: "ch. 6: h/(hm cp) = Le^(2/3), with Le about 0.85 for vapour in air",
        standing: Memory,
    }
}

/// Lewis number of water vapour in air to the power of two thirds: 0.85^(2/3).
/// Source: [`CONDENSATION_SOURCE`].
const LEWIS_TO_TWO_THIRDS: f64 = 0.897_317_1;

/// Vapour that goes to a wet wall, kg/(s m²) for each kg/kg that the air's humidity ratio lies over
/// that of saturated air at the wall: h / (cp Le^(2/3)).
///
/// * `heat_transfer_coefficient`: h, W/(m² K); * `heat_capacity`: cp, J/(K kg of dry air).
///
/// Range: humidity ratios to about 0.1. The film of water's own resistance and the drift of the
/// condensing vapour are left out.
///
/// ```
/// use elbowroom::duct::heat_transfer::mass_transfer_coefficient;
/// // Worked by hand: 25 W/(m² K) over 1045 J/(kg K) times 0.8973.
/// assert!((mass_transfer_coefficient(25.0, 1045.0) - 0.026_66).abs() < 1e-5);
/// ```
pub const fn mass_transfer_coefficient(heat_transfer_coefficient: f64, heat_capacity: f64) -> f64 {
    heat_transfer_coefficient / (heat_capacity * LEWIS_TO_TWO_THIRDS)
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_power_is_what_it_says() {
        assert!((super::LEWIS_TO_TWO_THIRDS - 0.85_f64.powf(2.0 / 3.0)).abs() < 1e-6);
    }
}
