//! The length rule: measured length and deductions against the limit.

use super::{Deduction, DeductionNote, Doubt, Verdict, irc};
use crate::plan::{ElementId, Plan, RuleSetId};
use crate::system::{CompiledRun, ElementKind, Finding};
use crate::units::Length;

/// A length over the limit by less than this, m, keeps it: far below a sixteenth of an inch.
const ROUNDING: f64 = 1e-9;

/// The length of a run as the chosen rule set counts it.
#[derive(Debug, Clone, PartialEq)]
pub struct CodeLength {
    /// The rule set.
    pub rule_set: RuleSetId,
    /// The section that the limit stands in.
    pub section: &'static str,
    /// Whether the path through fittings was counted.
    pub path_through_fittings_counts: bool,
    /// Straights, and the arcs where they count.
    pub measured: Length,
    /// Each elbow's deduction, in run order.
    pub deductions: Vec<(ElementId, Deduction)>,
    /// Measured length and all deductions together: what is set against the limit.
    pub with_deductions: Length,
    /// The limit.
    pub limit: Length,
    /// Limit less length; negative when over.
    pub margin: Length,
    /// The verdict.
    pub verdict: Verdict,
    /// What keeps it open.
    pub doubts: Vec<Doubt>,
}

impl CodeLength {
    /// The deduction of the element called `id`.
    pub fn deduction(&self, id: &ElementId) -> Option<&Deduction> {
        self.deductions
            .iter()
            .find_map(|(element, deduction)| (element == id).then_some(deduction))
    }
}

/// The code length of `plan`, whose compiled run and findings are given.
///
/// A doubt leaves the verdict open only where it could change it: a run that is over the limit with
/// the least deductions does not meet it in any case.
pub fn code_length(plan: &Plan, run: &CompiledRun, findings: &[Finding]) -> CodeLength {
    let counts = plan.code.path_through_fittings_counts;
    let mut measured = Length::ZERO;
    let mut deductions = Vec::new();
    for element in &run.elements {
        match element.kind {
            ElementKind::Straight { length, .. } => measured += length,
            ElementKind::Elbow {
                angle,
                elbow,
                radius,
            } => {
                if counts {
                    measured += element.developed_length;
                }
                let deduction = match plan.code.rule_set {
                    RuleSetId::Irc2021 => irc::irc_deduction(elbow, angle, radius),
                };
                deductions.push((element.id.clone(), deduction));
            }
            ElementKind::Termination { .. } => {}
        }
    }
    let (section, limit) = match plan.code.rule_set {
        RuleSetId::Irc2021 => ("M1502.4.6.1", irc::IRC_LENGTH_LIMIT),
    };
    let with_deductions = measured
        + deductions
            .iter()
            .map(|(_, deduction)| deduction.length)
            .sum();
    let mut doubts = Vec::new();
    let at_least =
        |(_, deduction): &(_, Deduction)| deduction.notes.contains(&DeductionNote::AtLeast);
    if deductions.iter().any(at_least) {
        doubts.push(Doubt::RadiusBelowTable);
    }
    if !irc::table_is_for(run.diameter) {
        doubts.push(Doubt::DiameterNotInTable);
    }
    if findings
        .iter()
        .any(|finding| matches!(finding, Finding::ElbowsOverlap { .. }))
    {
        doubts.push(Doubt::ElbowsOverlap);
    }
    let over = with_deductions.metres() > limit.metres() + ROUNDING;
    let only_understated = doubts.iter().all(|doubt| *doubt == Doubt::RadiusBelowTable);
    let verdict = match (over, doubts.is_empty()) {
        (true, _) if only_understated => Verdict::DoesNotMeet,
        (false, true) => Verdict::Meets,
        _ => Verdict::CannotTell,
    };
    CodeLength {
        rule_set: plan.code.rule_set,
        section,
        path_through_fittings_counts: counts,
        measured,
        deductions,
        with_deductions,
        limit,
        margin: limit - with_deductions,
        verdict,
        doubts,
    }
}
