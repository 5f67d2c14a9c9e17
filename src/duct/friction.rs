//! The Darcy friction factor of a round duct.

use crate::source::{Ranged, Reach, source};

source! {
    /// Of the friction factor.
    pub static FRICTION_SOURCE {
        title: "C. F. Colebrook, Turbulent flow in pipes, J. Inst. Civ. Engrs 11",
        edition: "1939",
        locator: "pp. 133-156; to e/D 0.05 as Moody 1944, figure 1, draws it; from Re 4000 on",
        standing: Published,
    }
}

source! {
    /// Of the bound of laminar flow.
    pub static LAMINAR_SOURCE {
        title: "D. C. Rennels & H. M. Hudson, Pipe Flow",
        edition: "2012",
        locator: "ch. 4, the customary lower bound of Reynolds numbers at which flow may turn turbulent",
        standing: Published,
    }
}

/// Below this Reynolds number flow in a duct stays laminar.
/// Source: [`LAMINAR_SOURCE`].
pub const LAMINAR_BELOW: f64 = 2040.0;
/// From this Reynolds number on the rough-wall formula holds.
/// Source: [`FRICTION_SOURCE`].
pub const TURBULENT_FROM: f64 = 4000.0;
/// The roughest wall that Colebrook's formula was drawn for.
/// Source: [`FRICTION_SOURCE`].
const ROUGHEST: f64 = 0.05;

/// Darcy friction factor f of a round duct.
///
/// * `reynolds`: Re = rho V D/mu, above 0.
/// * `relative_roughness`: roughness over inside diameter, 0..0.05; rougher is `Beyond`.
///
/// Laminar: 64/Re below 2040. Turbulent: [`colebrook`] from 4000. Between the two nothing is
/// determined: a smooth blend is given and marked `AtEdge`.
///
/// ```
/// use elbowroom::duct::friction;
/// assert_eq!(friction::factor(1000.0, 0.001).value, 0.064);
/// ```
pub fn factor(reynolds: f64, relative_roughness: f64) -> Ranged<f64> {
    let rough = if relative_roughness > ROUGHEST {
        Reach::Beyond
    } else {
        Reach::Within
    };
    if reynolds >= TURBULENT_FROM {
        return Ranged {
            value: colebrook(reynolds, relative_roughness),
            reach: rough,
        };
    }
    let laminar = 64.0 / reynolds;
    if reynolds < LAMINAR_BELOW {
        return Ranged {
            value: laminar,
            reach: rough,
        };
    }
    let along = (reynolds - LAMINAR_BELOW) / (TURBULENT_FROM - LAMINAR_BELOW);
    let turbulent_share = along * along * (3.0 - 2.0 * along);
    let turbulent = colebrook(reynolds, relative_roughness);
    Ranged {
        value: laminar + turbulent_share * (turbulent - laminar),
        reach: rough.max(Reach::AtEdge),
    }
}

/// Darcy friction factor of turbulent flow by Colebrook and White:
/// 1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f))).
///
/// Solved to 1e-9 of its value by two fourth-order steps on the equation's logarithmic form, which
/// costs two logarithms and no loop.
///
/// Range: Re 4000 and up, relative roughness 0..0.05.
/// Sources: C. F. Colebrook, J. Inst. Civ. Engrs 11 (1939) 133-156; form of the solution:
/// D. Clamond, "Efficient resolution of the Colebrook equation", Ind. Eng. Chem. Res. 48 (2009)
/// 3665-3671.
///
/// ```
/// // Re 1e5, e/D 0.001 (Moody's diagram reads 0.0222).
/// let f = elbowroom::duct::friction::colebrook(1e5, 0.001);
/// assert!((f - 0.02217).abs() < 5e-5);
/// ```
pub fn colebrook(reynolds: f64, relative_roughness: f64) -> f64 {
    /// Source: [`FRICTION_SOURCE`].
    const HALF_LN_TEN: f64 = core::f64::consts::LN_10 / 2.0;
    const ROUGH_DIVISOR: f64 = 3.7;
    const SMOOTH_FACTOR: f64 = 2.51;
    // With y = HALF_LN_TEN / sqrt(f) the equation reads ln(rough + y) + y = smooth.
    let rough = relative_roughness * reynolds * HALF_LN_TEN / (ROUGH_DIVISOR * SMOOTH_FACTOR);
    let smooth = (reynolds * HALF_LN_TEN / SMOOTH_FACTOR).ln();
    let step = |y: f64, logarithm: f64| {
        let sum = rough + y;
        let off = (logarithm + y - smooth) / (1.0 + sum);
        y - (1.0 + sum + 0.5 * off) * off * sum / (1.0 + sum + off * (1.0 + off / 3.0))
    };
    let start = smooth - 0.2;
    let y = step(start, (rough + start).ln());
    let y = step(y, (rough + y).ln());
    (HALF_LN_TEN / y).powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The promise itself: the value put back into Colebrook's equation.
    #[test]
    fn colebrook_solves_its_equation() {
        for reynolds in [4e3, 1e4, 3e4, 1e5, 1e6, 1e8] {
            for roughness in [0.0, 1e-6, 1e-4, 1e-3, 0.01, 0.05] {
                let f = colebrook(reynolds, roughness);
                let right = -2.0 * (roughness / 3.7 + 2.51 / (reynolds * f.sqrt())).log10();
                let off = (right * f.sqrt()).powi(-2) - 1.0;
                assert!(off.abs() < 2e-9, "Re {reynolds}, e/D {roughness}: {off}");
            }
        }
    }
}
