//! Thermal conductivity of dry air, of water vapour, and of their mixture.

use super::viscosity;
use crate::source::source;
use crate::units::Temperature;

source! {
    /// Of the conductivity of moist air.
    pub static CONDUCTIVITY_SOURCE {
        title: "U.S. Standard Atmosphere; IAPWS R15-11; E. A. Mason and S. C. Saxena, Physics of Fluids 1",
        edition: "1976; 2011; 1958",
        locator: "Standard Atmosphere eq. 53; R15-11 eq. 16 and table 1; Mason & Saxena p. 361, on Wilke's interaction",
        standing: Memory,
    }
}

/// Dry air, W/(m K): 2.64638e-3 T^1.5 / (T + 245.4 × 10^(-12/T)).
/// Source: U.S. Standard Atmosphere 1976, eq. 53. Range: 100..1000 K.
fn of_dry_air(kelvins: f64) -> f64 {
    2.646_38e-3 * kelvins.powf(1.5) / (kelvins + 245.4 * 10.0_f64.powf(-12.0 / kelvins))
}

/// Water vapour in the dilute limit, W/(m K): 1e-3 sqrt(T*) / sum `L_i` / T*^i, T* = T / 647.096.
/// Source: IAPWS R15-11 (2011), eq. 16 and table 1. Range: to 900 °C at low pressure.
fn of_water_vapour(kelvins: f64) -> f64 {
    let reduced = kelvins / 647.096;
    let sum = 2.443_221e-3
        + (1.323_095e-2
            + (6.770_357e-3 + (-3.454_586e-3 + 4.096_266e-4 / reduced) / reduced) / reduced)
            / reduced;
    1e-3 * reduced.sqrt() / sum
}

/// Conductivity of moist air, W/(m K), whose vapour holds the mole share `vapour_share` (0..1).
///
/// Within 2 % of the moist-air formulation in CoolProp at 0..75 °C.
pub(super) fn of_moist_air(temperature: Temperature, vapour_share: f64) -> f64 {
    let kelvins = temperature.kelvins();
    let [on_air, on_vapour] = viscosity::interactions(kelvins);
    let dry_share = 1.0 - vapour_share;
    dry_share * of_dry_air(kelvins) / (dry_share + vapour_share * on_air)
        + vapour_share * of_water_vapour(kelvins) / (vapour_share + dry_share * on_vapour)
}
