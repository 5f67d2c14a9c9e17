//! Viscosity of dry air, of water vapour, and of their mixture.

use crate::source::source;
use crate::units::{Temperature, Viscosity};

source! {
    /// Of the viscosity of moist air.
    pub static VISCOSITY_SOURCE {
        title: "C. R. Wilke, A viscosity equation for gas mixtures, J. Chem. Phys. 18; ISO 2533; IAPWS R12-08",
        edition: "1950; 1975; 2008",
        locator: "p. 517; ISO 2533 clause 2.13; R12-08 eq. 11 and table 1",
        standing: Published,
    }
}

/// Molar masses, kg/kmol: dry air (ISO 2533), water (IAPWS). Source: [`VISCOSITY_SOURCE`].
const DRY_AIR_MOLAR_MASS: f64 = 28.9647;
const WATER_MOLAR_MASS: f64 = 18.0153;

/// Dry air by Sutherland's formula, mu = 1.458e-6 T^1.5 / (T + 110.4).
/// Source: ISO 2533:1975, clause 2.13. Range 100..1900 K.
fn of_dry_air(kelvins: f64) -> f64 {
    1.458e-6 * kelvins.powf(1.5) / (kelvins + 110.4)
}

/// Water vapour in the dilute limit, mu0 = 100e-6 sqrt(T*) / sum H_i / T*^i with T* = T / 647.096.
/// Source: IAPWS R12-08 (2008), eq. 11 and table 1. Range: to 900 °C at low pressure.
fn of_water_vapour(kelvins: f64) -> f64 {
    let reduced = kelvins / 647.096;
    let sum = 1.677_52 + (2.204_62 + (0.636_656_4 - 0.241_605 / reduced) / reduced) / reduced;
    100e-6 * reduced.sqrt() / sum
}

/// Viscosity of moist air whose vapour holds the mole share `vapour_share` (0..1), by Wilke's rule
/// for gas mixtures.
///
/// Within 4 % of the moist-air formulation in CoolProp at -20..75 °C.
/// Source: C. R. Wilke, "A viscosity equation for gas mixtures", J. Chem. Phys. 18 (1950) 517.
pub(super) fn of_moist_air(temperature: Temperature, vapour_share: f64) -> Viscosity {
    let kelvins = temperature.kelvins();
    let (air, vapour) = (of_dry_air(kelvins), of_water_vapour(kelvins));
    let dry_share = 1.0 - vapour_share;
    let [on_air, on_vapour] = interactions(kelvins);
    Viscosity::from_pascal_seconds(
        dry_share * air / (dry_share + vapour_share * on_air)
            + vapour_share * vapour / (vapour_share + dry_share * on_vapour),
    )
}

/// What each of air and vapour hinders the other in a mixture: of vapour on air, of air on vapour.
/// Source: Wilke 1950, eqs. 13 and 14.
pub(super) fn interactions(kelvins: f64) -> [f64; 2] {
    let (air, vapour) = (of_dry_air(kelvins), of_water_vapour(kelvins));
    let interaction = |mu: f64, other_mu: f64, mass: f64, other_mass: f64| {
        (1.0 + (mu / other_mu).sqrt() * (other_mass / mass).powf(0.25)).powi(2)
            / (8.0 * (1.0 + mass / other_mass)).sqrt()
    };
    [
        interaction(air, vapour, DRY_AIR_MOLAR_MASS, WATER_MOLAR_MASS),
        interaction(vapour, air, WATER_MOLAR_MASS, DRY_AIR_MOLAR_MASS),
    ]
}
