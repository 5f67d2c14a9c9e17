//! The laws that a plan's elbows follow: which formula, at which angle and radius.

use super::{LinearInFriction, MethodLaw, mitre, mitre_reynolds_factor, rennels};
use crate::duct::tables::segmented_elbow;
use crate::source::{Reach, source};
use crate::units::Angle;

source! {
    /// Of what the bend formulas leave open.
    pub static EXTENSION_SOURCE {
        title: "Our extension of the bend formulas to slight turns and to tight bends beyond 90 deg",
        edition: "2026",
        locator: "under 45 deg the lesser of bend and mitre, under 10 deg fading to nothing; over 90 deg with r/D under 1, 90 and the rest",
        standing: Assumption,
    }
}

/// Below this turn the loss is scaled straight down to nothing. Source: [`EXTENSION_SOURCE`].
const SLIGHT_TURN_DEGREES: f64 = 10.0;
/// The tightest smooth bend that Rennels' formula, or any other method, covers, r/D.
/// Source: [`RENNELS_SOURCE`](super::RENNELS_SOURCE).
pub(super) const TIGHTEST_RATIO: f64 = 0.5;
/// The radii, r/D, and turn that the smooth formula's sources measured. Source: [`RENNELS_SOURCE`](super::RENNELS_SOURCE).
const MEASURED_RATIO: core::ops::RangeInclusive<f64> = 0.75..=5.0;
/// The radii about r/D 1 for which the segmented elbow's estimate was made.
/// Source: [`segmented_elbow::SOURCE`].
const SEGMENTED_RATIO: core::ops::RangeInclusive<f64> = 0.9..=1.6;
/// A turn, deg, or a ratio this close to a limit of a law or a method lies on it: drawing a plan and
/// turning inches into metres leave dust in the last digits. Of the computation.
pub(super) const DUST: f64 = 1e-6;

/// One elbow's loss, ready to be evaluated at any f and Re: what depends on angle and radius alone
/// is worked out once.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ElbowLaw {
    /// A smooth elbow: the lesser of Rennels' bend and a sharp mitre of the same turn, times `scale`;
    /// after whole 90 deg turns where a tight elbow turns further than that.
    Smooth {
        /// K of the 90s before it; nought where there is none.
        quarters: TightQuarters,
        /// Rennels' K.
        bend: LinearInFriction,
        /// The mitre's K at high Reynolds number.
        mitre: f64,
        /// 1 from 10 deg, and down to 0 at none.
        scale: f64,
        /// What is left, below 10 deg, of the straight that the elbow takes the place of (its two
        /// tangents), over the diameter: no elbow loses less than that straight would.
        replaced: f64,
    },
    /// A smooth elbow by another published method.
    ByMethod(MethodLaw),
    /// A segmented elbow: a K of its own for r/D 1, turned to another radius by the ratio of
    /// Rennels' values, plus the friction of its arc.
    Segmented {
        /// Share of the 90 deg K.
        share: f64,
        /// Rennels' K of a 90 at this radius.
        at_radius: LinearInFriction,
        /// Rennels' K of a 90 at r/D 1.
        at_one: LinearInFriction,
        /// Arc length over diameter.
        arc_ratio: f64,
    },
}

/// The whole 90s of a tight smooth elbow that turns further than one.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct TightQuarters {
    /// How many.
    count: f64,
    /// Rennels' K of one.
    bend: LinearInFriction,
    /// A mitre's K of one.
    mitre: f64,
}

impl ElbowLaw {
    /// The law of a smooth elbow of `angle` (0..180 deg) and centre-line radius over inside
    /// diameter `radius_ratio`, and whether that is inside the sources' range.
    ///
    /// Rennels' formula gives more than a sharp mitre for small turns and for tight bends in rough
    /// duct. No curve is worse than the corner that it rounds, so the lesser is taken. Over 90 deg
    /// with r/D under 1 the turn is taken as 90s and the rest, marked beyond.
    ///
    /// ```
    /// use elbowroom::{duct::elbow::ElbowLaw, units::Angle};
    /// let (law, _) = ElbowLaw::smooth(Angle::from_degrees(90.0), 1.0);
    /// assert!((0.35..0.50).contains(&law.loss_coefficient(0.024, 4e4, 0.5)));
    /// ```
    pub fn smooth(angle: Angle, radius_ratio: f64) -> (Self, Reach) {
        let ratio = radius_ratio.max(TIGHTEST_RATIO);
        let mut reach = if radius_ratio < TIGHTEST_RATIO - DUST {
            Reach::Beyond
        } else if MEASURED_RATIO.contains(&radius_ratio) {
            Reach::Within
        } else {
            Reach::AtEdge
        };
        let right_angle = Angle::from_degrees(90.0);
        let mut quarters = TightQuarters::default();
        let mut rest = angle;
        if ratio < 1.0 - DUST {
            while rest.degrees() > 90.0 + DUST {
                quarters = TightQuarters {
                    count: quarters.count + 1.0,
                    bend: rennels(right_angle, ratio),
                    mitre: mitre(right_angle),
                };
                rest = rest - right_angle;
                reach = Reach::Beyond;
            }
        }
        if rest.degrees() < SLIGHT_TURN_DEGREES {
            reach = reach.max(Reach::AtEdge);
        }
        let scale = (rest.degrees() / SLIGHT_TURN_DEGREES).min(1.0);
        let law = Self::Smooth {
            quarters,
            bend: rennels(rest, ratio),
            mitre: mitre(rest),
            scale,
            replaced: (1.0 - scale) * 2.0 * (rest.radians() / 2.0).tan() * ratio,
        };
        (law, reach)
    }

    /// The law of a segmented elbow, as [`smooth`](Self::smooth) takes its arguments. 45 deg has
    /// 0.6 of the 90's K, straight between and below; over 90 deg the 90 and the rest.
    pub fn segmented(angle: Angle, radius_ratio: f64) -> (Self, Reach) {
        let ratio = radius_ratio.max(TIGHTEST_RATIO);
        let right_angle = Angle::from_degrees(90.0);
        let reach = if !SEGMENTED_RATIO.contains(&radius_ratio) {
            Reach::Beyond
        } else if angle > right_angle {
            Reach::AtEdge
        } else {
            Reach::Within
        };
        let law = Self::Segmented {
            share: segmented_share(angle.degrees()),
            at_radius: rennels(right_angle, ratio),
            at_one: rennels(right_angle, 1.0),
            arc_ratio: angle.radians() * radius_ratio,
        };
        (law, reach)
    }

    /// K, the loss of total pressure in velocity pressures, at the duct's friction factor `f` and
    /// `reynolds`. `segmented_k_90` is the K of a 90 deg segmented elbow of r/D 1; smooth elbows
    /// do not look at it.
    pub fn loss_coefficient(&self, f: f64, reynolds: f64, segmented_k_90: f64) -> f64 {
        match *self {
            Self::Smooth {
                quarters,
                bend,
                mitre,
                scale,
                replaced,
            } => {
                // At low Reynolds numbers a mitre only costs more, so most bends never ask how much.
                let lesser = |bend: f64, mitre: f64| {
                    if bend <= mitre {
                        bend
                    } else {
                        bend.min(mitre * mitre_reynolds_factor(reynolds))
                    }
                };
                let rest = scale * lesser(bend.at(f), mitre) + f * replaced;
                if quarters.count > 0.0 {
                    quarters.count * lesser(quarters.bend.at(f), quarters.mitre) + rest
                } else {
                    rest
                }
            }
            Self::ByMethod(law) => law.loss_coefficient(f, reynolds),
            Self::Segmented {
                share,
                at_radius,
                at_one,
                arc_ratio,
            } => segmented_k_90 * share * at_radius.at(f) / at_one.at(f) + f * arc_ratio,
        }
    }
}

fn segmented_share(degrees: f64) -> f64 {
    let at_45 = segmented_elbow::SHARE_AT_45;
    if degrees <= 45.0 {
        at_45 * degrees / 45.0
    } else if degrees <= 90.0 {
        at_45 + (1.0 - at_45) * (degrees - 45.0) / 45.0
    } else {
        1.0 + segmented_share(degrees - 90.0)
    }
}
