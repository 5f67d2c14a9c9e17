//! What keeps a length rule open, and which input would settle it.

use super::irc_table::IRC_LENGTH_TABLE;
use super::length::ROUNDING;
use super::run_length::RunLength;
use super::{Deciding, Doubt, ElbowMethod, Verdict};
use crate::plan::ElementId;
use crate::units::Length;

/// What of an element is uncertain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Uncertain {
    /// A length that was drawn so and only estimated.
    Length(Length),
    /// A number of concealed elbows.
    Elbows,
    /// Nothing of its own.
    Nothing,
}

/// Gathered while the run is walked.
pub(super) struct Doubts {
    found: Vec<(Doubt, ElementId)>,
    no_limit: bool,
    spans: Vec<(ElementId, Uncertain, Length, Length)>,
    estimated: bool,
}

impl Doubts {
    pub(super) fn of(run: &RunLength, method: ElbowMethod) -> Self {
        let mut doubts = Self {
            found: Vec::new(),
            no_limit: false,
            spans: Vec::new(),
            estimated: false,
        };
        let mut add = |doubt: Doubt, element: &Option<ElementId>| {
            if let Some(element) = element {
                doubts.add(Some(doubt), element);
            }
        };
        add(Doubt::FlexibleInRun, &run.flexible);
        if method == ElbowMethod::Table {
            add(Doubt::DiameterNotInTable, &run.other_size);
        }
        add(Doubt::ElbowsOverlap, &run.overlap);
        doubts
    }

    pub(super) fn add(&mut self, doubt: Option<Doubt>, element: &ElementId) {
        if let Some(doubt) = doubt {
            self.found.push((doubt, element.clone()));
        }
    }

    pub(super) fn span(
        &mut self,
        element: &ElementId,
        what: Uncertain,
        less: Length,
        more: Length,
    ) {
        if what == Uncertain::Elbows || less > Length::ZERO || more > Length::ZERO {
            self.spans.push((element.clone(), what, less, more));
        }
    }

    /// The doubts, each once.
    pub(super) fn kinds(&self) -> Vec<Doubt> {
        let mut kinds = Vec::new();
        for (doubt, _) in &self.found {
            if !kinds.contains(doubt) {
                kinds.push(*doubt);
            }
        }
        if self.estimated {
            kinds.push(Doubt::EstimatedLength);
        }
        if self.no_limit {
            kinds.push(Doubt::LimitNotTyped);
        }
        kinds
    }

    /// `length` with everything estimated at its least, and at its most.
    pub(super) fn ends(&self, length: Length) -> (Length, Length) {
        let less: Length = self.spans.iter().map(|(_, _, less, _)| *less).sum();
        let more: Length = self.spans.iter().map(|(_, _, _, more)| *more).sum();
        (length - less, length + more)
    }

    /// The verdict on `length` against `limit`, and where it is open what decides.
    pub(super) fn settle(
        &mut self,
        length: Length,
        limit: Option<Length>,
    ) -> (Verdict, Option<Deciding>) {
        let Some(limit) = limit else {
            self.no_limit = true;
            return (Verdict::CannotTell, Some(Deciding::MakerLength));
        };
        let over = |length: Length| length.metres() > limit.metres() + ROUNDING;
        let (least, most) = self.ends(length);
        self.estimated = over(least) != over(most);
        // What is only understated can make the length greater, never less.
        let understated = |doubt: Doubt| {
            matches!(
                doubt,
                Doubt::RadiusBelowTable | Doubt::AngleNotNamed | Doubt::MakerElbowNotTyped
            )
        };
        let only_understated = self.found.iter().all(|(doubt, _)| understated(*doubt));
        if over(least) && only_understated {
            return (Verdict::DoesNotMeet, None);
        }
        if self.found.is_empty() && !self.estimated {
            return (Verdict::Meets, None);
        }
        let margin = limit - length;
        let deciding = match self.found.first() {
            None => self.estimate(margin),
            Some((doubt, element)) if understated(*doubt) => {
                let count = self
                    .found
                    .iter()
                    .filter(|(other, _)| other == doubt)
                    .count();
                let counted_at = if *doubt == Doubt::RadiusBelowTable {
                    IRC_LENGTH_TABLE[0].at_90
                } else {
                    Length::ZERO
                };
                #[allow(clippy::cast_precision_loss, reason = "a count of elbows")]
                let share = margin / count as f64;
                Some(Deciding::ElbowDeduction {
                    doubt: *doubt,
                    element: element.clone(),
                    elbows: count,
                    at_most: counted_at + share,
                })
            }
            Some((doubt, element)) => Some(Deciding::Part {
                doubt: *doubt,
                element: element.clone(),
            }),
        };
        (Verdict::CannotTell, deciding)
    }

    /// The estimate with the widest span, and the value at which the verdict turns with the others as
    /// they are drawn.
    fn estimate(&self, margin: Length) -> Option<Deciding> {
        let own = self
            .spans
            .iter()
            .filter(|(_, what, ..)| *what != Uncertain::Nothing);
        let widest = own.max_by(|(_, _, less, more), (_, _, other_less, other_more)| {
            let (width, other) = (*less + *more, *other_less + *other_more);
            width.metres().total_cmp(&other.metres())
        });
        let (element, what, ..) = widest?;
        Some(match *what {
            Uncertain::Length(drawn) => Deciding::Length {
                element: element.clone(),
                at_most: drawn + margin,
            },
            // How many are too many hangs on the elbows after them too: whoever knows the run fills it
            // in.
            Uncertain::Elbows => Deciding::Elbows {
                element: element.clone(),
                at_most: None,
            },
            Uncertain::Nothing => return None,
        })
    }
}
