//! The length rule: measured length and deductions against the limit.

use super::elbow_deduction::Deductor;
use super::length_doubts::{Doubts, Uncertain};
use super::run_length::{Counted, RunLength};
use super::{Deciding, Deduction, Doubt, RuleSet, Verdict, rule_set};
use crate::plan::{ElementId, MakerLimits, Plan, RuleSetId};
use crate::source::Source;
use crate::system::{CompiledRun, Finding};
use crate::units::Length;

/// A length over the limit by less than this, m, keeps it: far below a sixteenth of an inch.
/// Of the computation.
pub(super) const ROUNDING: f64 = 1e-9;

/// The length of a run as a rule set counts it.
#[derive(Debug, Clone, PartialEq)]
pub struct CodeLength {
    /// The rule set.
    pub rule_set: RuleSetId,
    /// The section that the limit stands in.
    pub section: &'static str,
    /// Where the limit was read.
    pub source: &'static Source,
    /// Whether the path through fittings was counted.
    pub path_through_fittings_counts: bool,
    /// Straights, and the arcs where they count.
    pub measured: Length,
    /// Each elbow's deduction, in run order.
    pub deductions: Vec<(ElementId, Deduction)>,
    /// What each element that is counted adds to the length, path and deduction, in run order.
    pub counted: Vec<(ElementId, Length)>,
    /// Measured length and all deductions together: what is set against the limit.
    pub with_deductions: Length,
    /// The same with every estimate at its shortest and the fewest concealed elbows.
    pub least: Length,
    /// The same with every estimate at its longest and the most concealed elbows.
    pub most: Length,
    /// The limit; none where the dryer maker's was not typed.
    pub limit: Option<Length>,
    /// Limit less length; negative when over.
    pub margin: Option<Length>,
    /// The verdict.
    pub verdict: Verdict,
    /// What keeps it open.
    pub doubts: Vec<Doubt>,
    /// Where it is open: the input that decides, and what would settle it.
    pub deciding: Option<Deciding>,
}

impl CodeLength {
    /// The deduction of the element called `id`.
    pub fn deduction(&self, id: &ElementId) -> Option<&Deduction> {
        self.deductions
            .iter()
            .find_map(|(element, deduction)| (element == id).then_some(deduction))
    }

    /// What the element called `id` adds to the length; none where it is not counted.
    pub fn counted(&self, id: &ElementId) -> Option<Length> {
        let mut counted = self.counted.iter();
        counted.find_map(|(element, length)| (element == id).then_some(*length))
    }
}

/// The code length of `plan` by its own rule set and reading; its compiled run and findings are given.
pub fn code_length(plan: &Plan, run: &CompiledRun, findings: &[Finding]) -> CodeLength {
    let code = &plan.code;
    RunLength::of(plan, run, findings).by(
        rule_set(code.rule_set),
        &code.maker,
        code.path_through_fittings_counts,
    )
}

impl RunLength {
    /// The length by `set`, with the maker's values where it goes by them. `counts` is whether the
    /// path through fittings is length too.
    ///
    /// A doubt leaves the verdict open only where it could change it: a run that is over the limit
    /// with the least deductions does not meet it in any case.
    pub(super) fn by(&self, set: &RuleSet, maker: &MakerLimits, counts: bool) -> CodeLength {
        let mut deductor = Deductor::new(set.elbows, maker);
        let mut doubts = Doubts::of(self, set.elbows);
        let (mut measured, mut deducted) = (Length::ZERO, Length::ZERO);
        let (mut deductions, mut counted) = (Vec::new(), Vec::new());
        for (id, item) in &self.counted {
            let mut path = Length::ZERO;
            let mut deduction = Length::ZERO;
            match *item {
                Counted::Straight { length, estimate } => {
                    path = length;
                    if let Some(estimate) = estimate {
                        doubts.span(id, Uncertain::Length(length), estimate.less, estimate.more);
                    }
                }
                Counted::Elbow {
                    angle,
                    elbow,
                    radius,
                    arc,
                } => {
                    if counts {
                        path = arc;
                    }
                    let (span, notes, doubt) = deductor.elbow(elbow, angle, radius);
                    // A span of its own comes from concealed elbows before it.
                    doubts.span(
                        id,
                        Uncertain::Nothing,
                        span.likely - span.least,
                        span.most - span.likely,
                    );
                    doubts.add(doubt, id);
                    deduction = span.likely;
                    let length = span.likely;
                    deductions.push((id.clone(), Deduction { length, notes }));
                }
                Counted::ConcealedElbows { least, most } => {
                    let (span, doubt) = deductor.concealed(least, most);
                    let uncertain = if least < most {
                        Uncertain::Elbows
                    } else {
                        Uncertain::Nothing
                    };
                    doubts.span(
                        id,
                        uncertain,
                        span.likely - span.least,
                        span.most - span.likely,
                    );
                    doubts.add(doubt, id);
                    deduction = span.likely;
                    let length = span.likely;
                    let notes = Vec::new();
                    deductions.push((id.clone(), Deduction { length, notes }));
                }
            }
            measured += path;
            deducted += deduction;
            counted.push((id.clone(), path + deduction));
        }
        let with_deductions = measured + deducted;
        let limit = match set.id {
            RuleSetId::DryerMaker => maker.length,
            _ => set.length_limit,
        };
        let (least, most) = doubts.ends(with_deductions);
        let (verdict, mut deciding) = doubts.settle(with_deductions, limit);
        if let (Some(Deciding::Elbows { element, at_most }), Some(limit)) = (&mut deciding, limit) {
            *at_most = self.most_elbows(element, limit, |run| run.total(set, maker, counts));
        }
        CodeLength {
            rule_set: set.id,
            section: set.length_clause().section,
            source: set.length_clause().source,
            path_through_fittings_counts: counts,
            measured,
            deductions,
            counted,
            with_deductions,
            least,
            most,
            limit,
            margin: limit.map(|limit| limit - with_deductions),
            verdict,
            doubts: doubts.kinds(),
            deciding,
        }
    }

    /// The length with the likely values alone.
    fn total(&self, set: &RuleSet, maker: &MakerLimits, counts: bool) -> Length {
        let mut deductor = Deductor::new(set.elbows, maker);
        let lengths = self.counted.iter().map(|(_, item)| match *item {
            Counted::Straight { length, .. } => length,
            Counted::Elbow {
                angle,
                elbow,
                radius,
                arc,
            } => {
                let path = if counts { arc } else { Length::ZERO };
                path + deductor.elbow(elbow, angle, radius).0.likely
            }
            Counted::ConcealedElbows { least, most } => deductor.concealed(least, most).0.likely,
        });
        lengths.sum()
    }

    /// The greatest number of elbows concealed at `element` with which `total` keeps `limit`; none where
    /// not even the least keeps it.
    fn most_elbows(
        &self,
        element: &ElementId,
        limit: Length,
        total: impl Fn(&Self) -> Length,
    ) -> Option<u8> {
        let mut run = self.clone();
        let place = run.counted.iter().position(|(id, _)| id == element)?;
        let Counted::ConcealedElbows { least, most } = run.counted[place].1 else {
            return None;
        };
        (least..=most).rev().find(|count| {
            run.counted[place].1 = Counted::ConcealedElbows {
                least: *count,
                most: *count,
            };
            total(&run).metres() <= limit.metres() + ROUNDING
        })
    }
}
