//! What the elbows of a run take off its length, one after another, by a set's own method.

use super::irc_table::{self, IRC_LENGTH_TABLE, SAME_ANGLE};
use super::{Deduction, DeductionNote, Doubt, ElbowMethod};
use crate::plan::{ElbowKind, MakerLimits};
use crate::units::{Angle, Length};

/// How many elbows of 90 deg a limit may have in it. Source: clause [`RuleTopic::Length`].
const INCLUDED: f64 = 2.0;

/// A deduction at its least, likely and greatest.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Span {
    pub least: Length,
    pub likely: Length,
    pub most: Length,
}

impl Span {
    fn exactly(length: Length) -> Self {
        Self {
            least: length,
            likely: length,
            most: length,
        }
    }
}

/// Goes along a run and gives each elbow's deduction.
pub(super) struct Deductor {
    method: ElbowMethod,
    maker: MakerLimits,
    /// How many of 90 deg came before: least, likely and most.
    right_angles: [f64; 3],
}

impl Deductor {
    pub(super) fn new(method: ElbowMethod, maker: &MakerLimits) -> Self {
        Self {
            method,
            maker: *maker,
            right_angles: [0.0; 3],
        }
    }

    /// The deduction of the next elbow, and what is in doubt about it.
    pub(super) fn elbow(
        &mut self,
        kind: ElbowKind,
        angle: Angle,
        radius: Length,
    ) -> (Span, Vec<DeductionNote>, Option<Doubt>) {
        match self.method {
            ElbowMethod::Table => {
                let Deduction { length, notes } = irc_table::irc_deduction(kind, angle, radius);
                let short = notes.contains(&DeductionNote::AtLeast);
                let doubt = short.then_some(Doubt::RadiusBelowTable);
                (Span::exactly(length), notes, doubt)
            }
            ElbowMethod::EachBend { at_45, at_90 } => {
                each_bend(angle, Some(at_45), Some(at_90), Doubt::AngleNotNamed)
            }
            ElbowMethod::Typed => {
                let MakerLimits { at_45, at_90, .. } = self.maker;
                each_bend(angle, at_45, at_90, Doubt::MakerElbowNotTyped)
            }
            ElbowMethod::TwoIncluded { beyond } => {
                let quarters = (angle.degrees() / 90.0).round();
                let is_whole = (angle.degrees() - quarters * 90.0).abs() <= SAME_ANGLE;
                let whole = if is_whole {
                    quarters
                } else {
                    (angle.degrees() / 90.0).floor()
                };
                let span = self.beyond_two(beyond, [whole; 3]);
                let mut notes = Vec::new();
                if whole > 0.0 && span.likely == Length::ZERO {
                    notes.push(DeductionNote::InTheLimit);
                }
                if !is_whole {
                    notes.push(DeductionNote::NotNamed);
                }
                (span, notes, (!is_whole).then_some(Doubt::AngleNotNamed))
            }
        }
    }

    /// The deduction of the next concealed elbows of 90 deg, whose radius nobody knows: the table's
    /// greatest.
    pub(super) fn concealed(&mut self, least: u8, most: u8) -> (Span, Option<Doubt>) {
        let (least, most) = (f64::from(least), f64::from(most));
        let counts = [least, f64::midpoint(least, most), most];
        let (each, doubt) = match self.method {
            ElbowMethod::Table => (IRC_LENGTH_TABLE[0].at_90, None),
            ElbowMethod::EachBend { at_90, .. } => (at_90, None),
            ElbowMethod::TwoIncluded { beyond } => return (self.beyond_two(beyond, counts), None),
            ElbowMethod::Typed => match self.maker.at_90 {
                Some(at_90) => (at_90, None),
                None => (Length::ZERO, Some(Doubt::MakerElbowNotTyped)),
            },
        };
        let [least, likely, most] = counts.map(|count| each * count);
        let span = Span {
            least,
            likely,
            most,
        };
        (span, doubt)
    }

    /// What `more` elbows of 90 deg take off beyond the two that the limit has in it.
    fn beyond_two(&mut self, beyond: Length, more: [f64; 3]) -> Span {
        let mut taken = [Length::ZERO; 3];
        for ((before, more), taken) in self.right_angles.iter_mut().zip(more).zip(&mut taken) {
            let over = |count: f64| (count - INCLUDED).max(0.0);
            *taken = beyond * (over(*before + more) - over(*before));
            *before += more;
        }
        let [least, likely, most] = taken;
        Span {
            least,
            likely,
            most,
        }
    }
}

/// So much for each bend: another angle takes the next larger, over 90 deg 90 and the rest. What is
/// not given counts as nothing, with the doubt `missing`.
fn each_bend(
    angle: Angle,
    at_45: Option<Length>,
    at_90: Option<Length>,
    missing: Doubt,
) -> (Span, Vec<DeductionNote>, Option<Doubt>) {
    let mut notes = Vec::new();
    let mut rest = angle.degrees();
    let mut sum = Length::ZERO;
    let mut is_missing = false;
    if rest > 90.0 + SAME_ANGLE {
        notes.push(DeductionNote::OverNinety);
    }
    while rest > SAME_ANGLE {
        let (column, deduction) = if rest <= 45.0 + SAME_ANGLE {
            (45.0, at_45)
        } else {
            (90.0, at_90)
        };
        if rest < column - SAME_ANGLE {
            notes.push(DeductionNote::NextLargerAngle);
        }
        is_missing |= deduction.is_none();
        sum += deduction.unwrap_or(Length::ZERO);
        rest -= column;
    }
    if is_missing {
        notes.push(DeductionNote::NotNamed);
    }
    (Span::exactly(sum), notes, is_missing.then_some(missing))
}
