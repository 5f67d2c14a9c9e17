//! What the rules say of the duct itself, the transition duct and the supports.

use super::clause_findings::{Look, on_site};
use super::length::ROUNDING;
use super::run_length::{estimate, transition_elements};
use super::{Clause, Deciding, Limit, Measure, RuleFinding, Verdict, irc_table};
use crate::plan::{Duct, ElementId};
use crate::system::ElementKind;
use crate::units::Length;

/// Less than this past a whole number of spacings asks for no more supports: rounding.
/// Of the computation.
const DUST: f64 = 1e-9;

impl Look<'_> {
    /// The straights past the transition duct, with their duct and size.
    fn straights(&self) -> impl Iterator<Item = (&ElementId, Duct, Length)> {
        let past = transition_elements(&self.assessment.run);
        let elements = self.assessment.run.elements.iter().skip(past);
        elements.filter_map(|element| match element.kind {
            ElementKind::Straight { duct, .. } => Some((
                &element.id,
                duct,
                Length::from_metres(element.bore.diameter),
            )),
            _ => None,
        })
    }

    pub(super) fn duct_size(&self, clause: &Clause) -> RuleFinding {
        let is_flat = |duct: Duct| matches!(duct, Duct::FlatRectangular { .. });
        let round: Vec<_> = self
            .straights()
            .filter(|(_, duct, _)| !is_flat(*duct))
            .collect();
        let flat: Vec<ElementId> = self
            .straights()
            .filter(|(_, duct, _)| is_flat(*duct))
            .map(|(id, ..)| id.clone())
            .collect();
        let off = |size: Length| (size - irc_table::TABLE_DIAMETER).abs();
        let wrong = round
            .iter()
            .filter(|(.., size)| !irc_table::table_is_for(*size));
        let elements: Vec<ElementId> = wrong.map(|(id, ..)| (*id).clone()).collect();
        let worst = round
            .iter()
            .map(|(.., size)| *size)
            .max_by(|one, other| off(*one).metres().total_cmp(&off(*other).metres()));
        let finding = RuleFinding {
            verdict: Verdict::Meets,
            measured: worst.map(Measure::Size),
            limit: Some(Limit::Nominally(Measure::Size(irc_table::TABLE_DIAMETER))),
            margin: worst.map(|size| Measure::Size(size - irc_table::TABLE_DIAMETER)),
            ..on_site(clause)
        };
        if !elements.is_empty() {
            return RuleFinding {
                verdict: Verdict::DoesNotMeet,
                elements,
                ..finding
            };
        }
        match flat.first() {
            None => finding,
            Some(element) => RuleFinding {
                verdict: Verdict::CannotTell,
                deciding: Some(Deciding::RectangularDuct {
                    element: element.clone(),
                }),
                elements: flat,
                ..finding
            },
        }
    }

    pub(super) fn duct_material(&self, clause: &Clause) -> RuleFinding {
        let flexible = self.straights().filter(|(_, duct, _)| duct.is_flexible());
        let elements: Vec<ElementId> = flexible.map(|(id, ..)| id.clone()).collect();
        count_none(clause, elements)
    }

    pub(super) fn transition_length(&self, clause: &Clause) -> RuleFinding {
        let finding = on_site(clause);
        let Some(limit) = self.set.transition_limit else {
            return finding;
        };
        let [least, length, most] = self.transition.length;
        let over = |length: Length| length.metres() > limit.metres() + ROUNDING;
        let verdict = match (over(least), over(most)) {
            (true, _) => Verdict::DoesNotMeet,
            (false, false) => Verdict::Meets,
            (false, true) => Verdict::CannotTell,
        };
        let open = verdict == Verdict::CannotTell;
        let deciding = self
            .transition
            .legs
            .iter()
            .find(|id| estimate(self.plan, id).is_some());
        let drawn = deciding.and_then(|id| {
            let mut elements = self.assessment.run.elements.iter();
            elements.find(|element| element.id == *id)
        });
        RuleFinding {
            verdict,
            measured: Some(Measure::Length(length)),
            limit: Some(Limit::AtMost(Measure::Length(limit))),
            margin: Some(Measure::Length(limit - length)),
            deciding: drawn.filter(|_| open).map(|element| Deciding::Length {
                element: element.id.clone(),
                at_most: element.developed_length + (limit - length),
            }),
            elements: self.transition.legs.clone(),
            ..finding
        }
    }

    pub(super) fn transition_pieces(&self, clause: &Clause) -> RuleFinding {
        let pieces = self.transition.pieces;
        RuleFinding {
            verdict: if pieces <= 1 {
                Verdict::Meets
            } else {
                Verdict::DoesNotMeet
            },
            measured: Some(Measure::Count(pieces)),
            limit: Some(Limit::AtMost(Measure::Count(1))),
            elements: self.transition.legs.clone(),
            ..on_site(clause)
        }
    }

    pub(super) fn transition_concealed(&self, clause: &Clause) -> RuleFinding {
        count_none(clause, self.transition.concealed.clone())
    }

    /// How many supports the set's spacing asks for: whether they are there is seen on site.
    pub(super) fn supports(&self, clause: &Clause) -> RuleFinding {
        let finding = on_site(clause);
        let Some(spacing) = self.set.support_spacing else {
            return finding;
        };
        let spans = (self.lengths.developed() / spacing - DUST).ceil().max(0.0);
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "a run of at most kilometres over feet"
        )]
        let count = spans as usize;
        RuleFinding {
            measured: Some(Measure::Count(count)),
            limit: Some(Limit::AtMost(Measure::Length(spacing))),
            ..finding
        }
    }
}

/// A rule that allows none of something.
fn count_none(clause: &Clause, elements: Vec<ElementId>) -> RuleFinding {
    RuleFinding {
        verdict: if elements.is_empty() {
            Verdict::Meets
        } else {
            Verdict::DoesNotMeet
        },
        measured: Some(Measure::Count(elements.len())),
        limit: Some(Limit::AtMost(Measure::Count(0))),
        elements,
        ..on_site(clause)
    }
}
