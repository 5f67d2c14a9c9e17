//! From the air to the duct's wall.

use crate::source::source;

source! {
    /// Of the heat transfer inside a duct.
    pub static INSIDE_SOURCE {
        title: "V. Gnielinski, New equations for heat and mass transfer in turbulent pipe and channel flow, Int. Chem. Eng. 16",
        edition: "1976",
        locator: "pp. 359-368; 3.66 for laminar flow at one wall temperature; straight between 2300 and 4000 as in his paper of 2013",
        standing: Published,
    }
}

/// Up to this Reynolds number the flow is laminar for heat. Source: [`INSIDE_SOURCE`].
const LAMINAR_TO: f64 = 2300.0;
/// From this Reynolds number on Gnielinski's formula holds by itself. Source: [`INSIDE_SOURCE`].
pub const FULLY_TURBULENT: f64 = 4000.0;
/// Nusselt number of developed laminar flow with a wall of one temperature.
/// Source: [`INSIDE_SOURCE`].
const LAMINAR_NUSSELT: f64 = 3.66;

/// Beyond this friction factor the formula's denominator nears nought and turns negative: no more heat
/// is taken from a wall that is rougher still.
/// Of the computation.
const GREATEST_FRICTION: f64 = 0.5;

/// Nusselt number h D/k inside a duct:
/// (f/8)(Re - 1000) Pr / (1 + 12.7 sqrt(f/8) (Pr^(2/3) - 1)) from Re 4000, 3.66 to 2300, straight
/// between the two.
///
/// * `reynolds`: Re on the hydraulic diameter, to 5e6.
/// * `prandtl`: Pr of the air, 0.5..2000.
/// * `friction_factor`: the duct's Darcy f at a Reynolds number; taken to 0.5 at most.
///
/// Known to be off: the entrance of a duct and the stretch behind a bend give more heat than this
/// (some 10 % over the first 20 diameters); on rough walls f raises it a little too much.
/// Source: Gnielinski 1976.
///
/// ```
/// use elbowroom::duct::{friction::colebrook, heat_transfer::nusselt};
/// // Worked by hand: Re 40,000, Pr 0.71, smooth wall, f 0.02194.
/// let found = nusselt(40_000.0, 0.71, |reynolds| colebrook(reynolds, 0.0));
/// assert!((found - 87.9).abs() < 0.1, "{found}");
/// assert_eq!(nusselt(1500.0, 0.71, |_| 0.04), 3.66);
/// ```
pub fn nusselt(reynolds: f64, prandtl: f64, friction_factor: impl Fn(f64) -> f64) -> f64 {
    if reynolds <= LAMINAR_TO {
        return LAMINAR_NUSSELT;
    }
    let turbulent = |reynolds: f64| {
        let eighth = friction_factor(reynolds).min(GREATEST_FRICTION) / 8.0;
        let two_thirds = (prandtl * prandtl).cbrt();
        eighth * (reynolds - 1000.0) * prandtl / (1.0 + 12.7 * eighth.sqrt() * (two_thirds - 1.0))
    };
    if reynolds >= FULLY_TURBULENT {
        return turbulent(reynolds);
    }
    let share = (reynolds - LAMINAR_TO) / (FULLY_TURBULENT - LAMINAR_TO);
    LAMINAR_NUSSELT + share * (turbulent(FULLY_TURBULENT) - LAMINAR_NUSSELT)
}
