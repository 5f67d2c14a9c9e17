//! The published methods for smooth bends side by side, and the choice of one.

use super::law::{DUST, TIGHTEST_RATIO};
use super::{ElbowLaw, LinearInFriction, Miller, RENNELS_SOURCE, idelchik, ito};
use crate::duct::tables::{miller_bend, segmented_elbow};
use crate::source::{Reach, Source, source};
use crate::units::Angle;

/// The state at which the spread of methods is taken: 120 cfm in clean 4 in duct.
/// Of the computation.
const TYPICAL_REYNOLDS: f64 = 4.3e4;
const TYPICAL_FRICTION: f64 = 0.025;

/// A published method for smooth bends.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Method {
    /// Rennels and Hudson 2012: covers every turn and r/D from 0.5; the project's own choice.
    Rennels,
    /// Miller 1990: 10..180 deg, r/D 0.75..4.
    Miller,
    /// Ito 1960: 45..180 deg, r/D 1 to 9.8.
    Ito,
    /// Idelchik's diagram 6-1.
    Idelchik,
}

source! {
    /// Ito's source.
    pub static ITO_SOURCE {
        title: "Ito, Pressure losses in smooth pipe bends, J. Basic Eng. 82, 131-140; as given by Blevins and in the `fluids` library",
        edition: "1960",
        locator: "smooth pipe, Re 2e4 to 4e5",
        standing: Published,
    }
}

source! {
    /// Idelchik's source.
    pub static IDELCHIK_SOURCE {
        title: "Idelchik, Handbook of Hydraulic Resistance",
        edition: "3rd",
        locator: "diagram 6-1, without its factors for roughness and low Re",
        standing: Memory,
    }
}

impl Method {
    /// All of them, the project's own choice first.
    pub const ALL: [Self; 4] = [Self::Rennels, Self::Miller, Self::Ito, Self::Idelchik];

    /// Where it is from.
    pub fn source(self) -> &'static Source {
        match self {
            Self::Rennels => &RENNELS_SOURCE,
            Self::Miller => &miller_bend::SOURCE,
            Self::Ito => &ITO_SOURCE,
            Self::Idelchik => &IDELCHIK_SOURCE,
        }
    }

    /// Whether it covers a turn and r/D.
    pub fn covers(self, angle: Angle, radius_ratio: f64) -> bool {
        let degrees = angle.degrees();
        match self {
            Self::Rennels => radius_ratio >= TIGHTEST_RATIO - DUST,
            Self::Miller => degrees >= 10.0 && (0.75 - DUST..=4.0 + DUST).contains(&radius_ratio),
            Self::Ito => degrees >= 45.0 - DUST && (1.0 - DUST..9.85).contains(&radius_ratio),
            Self::Idelchik => (TIGHTEST_RATIO - DUST..=4.0 + DUST).contains(&radius_ratio),
        }
    }

    /// The law of a smooth elbow by this method; where it does not cover the elbow, Rennels' at the
    /// edge.
    pub fn law(self, angle: Angle, radius_ratio: f64) -> (ElbowLaw, Reach) {
        let (rennels, reach) = ElbowLaw::smooth(angle, radius_ratio);
        if !self.covers(angle, radius_ratio) {
            return (rennels, reach.max(Reach::AtEdge));
        }
        let law = match self {
            Self::Rennels => return (rennels, reach),
            Self::Miller => MethodLaw::Miller(Miller::of(angle, radius_ratio)),
            Self::Ito => MethodLaw::Ito {
                angle,
                radius_ratio,
            },
            Self::Idelchik => MethodLaw::Idelchik(idelchik(angle, radius_ratio)),
        };
        (ElbowLaw::ByMethod(law), Reach::Within)
    }
}

/// A smooth elbow by a method other than Rennels'.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum MethodLaw {
    /// Miller's chart.
    Miller(Miller),
    /// Ito's formula.
    Ito {
        /// The turn.
        angle: Angle,
        /// r/D.
        radius_ratio: f64,
    },
    /// Idelchik's diagram.
    Idelchik(LinearInFriction),
}

impl MethodLaw {
    /// K at the duct's friction factor `f` and `reynolds`.
    pub fn loss_coefficient(&self, f: f64, reynolds: f64) -> f64 {
        match self {
            Self::Miller(miller) => miller.at(f, reynolds),
            Self::Ito {
                angle,
                radius_ratio,
            } => ito(*angle, *radius_ratio, reynolds),
            Self::Idelchik(k) => k.at(f),
        }
    }
}

/// K of a smooth elbow by every method, in the order of [`Method::ALL`], at `f` and `reynolds`; none
/// where a method does not cover it.
///
/// ```
/// use elbowroom::{duct::elbow::side_by_side, units::Angle};
/// let methods = side_by_side(Angle::from_degrees(90.0), 1.0, 0.025, 4.3e4);
/// assert!(methods.iter().all(|k| k.is_some_and(|k| (0.2..0.6).contains(&k))));
/// ```
pub fn side_by_side(angle: Angle, radius_ratio: f64, f: f64, reynolds: f64) -> [Option<f64>; 4] {
    Method::ALL.map(|method| {
        method.covers(angle, radius_ratio).then(|| {
            let (law, _) = method.law(angle, radius_ratio);
            let k_90 = segmented_elbow::K_90.likely;
            law.loss_coefficient(f, reynolds, k_90)
        })
    })
}

/// How far the published methods lie from `chosen` at this elbow, as factors on its K: the least and
/// the greatest of all that cover it, taken at 120 cfm in clean 4 in duct. The band of a smooth
/// elbow.
///
/// ```
/// use elbowroom::{duct::elbow::{Method, spread_of_methods}, units::Angle};
/// let (low, high) = spread_of_methods(Method::Rennels, Angle::from_degrees(90.0), 1.0);
/// assert!(low <= 1.0 && high >= 1.0);
/// ```
pub fn spread_of_methods(chosen: Method, angle: Angle, radius_ratio: f64) -> (f64, f64) {
    let (law, _) = chosen.law(angle, radius_ratio);
    let k_90 = segmented_elbow::K_90.likely;
    let likely = law.loss_coefficient(TYPICAL_FRICTION, TYPICAL_REYNOLDS, k_90);
    if likely <= 0.0 {
        return (1.0, 1.0);
    }
    side_by_side(angle, radius_ratio, TYPICAL_FRICTION, TYPICAL_REYNOLDS)
        .into_iter()
        .flatten()
        .map(|k| k / likely)
        .fold((1.0, 1.0), |(low, high), factor| {
            (factor.min(low), factor.max(high))
        })
}
