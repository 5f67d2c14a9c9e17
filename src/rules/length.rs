//! The length rule: measured length and deductions against the limit.

use super::{Deduction, DeductionNote, Doubt, IRC_LENGTH_TABLE, Verdict, irc};
use crate::plan::{ElbowKind, ElementId, Estimate, NodeId, Part, Plan, RuleSetId};
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
    let mut span = (Length::ZERO, Length::ZERO);
    let mut deductions = Vec::new();
    let mut doubts = Vec::new();
    let mut doubt = |doubt: Doubt| {
        if !doubts.contains(&doubt) {
            doubts.push(doubt);
        }
    };
    for element in run.elements.iter().skip(transition_elements(run)) {
        match element.kind {
            ElementKind::Straight { length, duct } => {
                measured += length;
                if duct.is_flexible() {
                    doubt(Doubt::FlexibleInRun);
                }
                if !irc::table_is_for(Length::from_metres(element.bore.diameter)) {
                    doubt(Doubt::DiameterNotInTable);
                }
                if let Some(estimate) = estimate(plan, &element.id) {
                    span.0 += estimate.less;
                    span.1 += estimate.more;
                }
            }
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
                if deduction.notes.contains(&DeductionNote::AtLeast) {
                    doubt(Doubt::RadiusBelowTable);
                }
                deductions.push((element.id.clone(), deduction));
            }
            ElementKind::ConcealedElbows { least, most } => {
                let right_angle = IRC_LENGTH_TABLE[0].at_90;
                let likely = f64::midpoint(f64::from(least), f64::from(most));
                span.0 += right_angle * (likely - f64::from(least));
                span.1 += right_angle * (f64::from(most) - likely);
                let length = right_angle * likely;
                deductions.push((
                    element.id.clone(),
                    Deduction {
                        length,
                        notes: Vec::new(),
                    },
                ));
            }
            ElementKind::AreaChange { .. }
            | ElementKind::Blockage { .. }
            | ElementKind::Leak { .. }
            | ElementKind::WallBox
            | ElementKind::Termination { .. }
            | ElementKind::MakeUpAir { .. } => {}
        }
    }
    if findings
        .iter()
        .any(|finding| matches!(finding, Finding::ElbowsOverlap { .. }))
    {
        doubt(Doubt::ElbowsOverlap);
    }
    let (section, limit) = match plan.code.rule_set {
        RuleSetId::Irc2021 => ("M1502.4.6.1", irc::IRC_LENGTH_LIMIT),
    };
    let with_deductions = measured
        + deductions
            .iter()
            .map(|(_, deduction)| deduction.length)
            .sum();
    let over = |length: Length| length.metres() > limit.metres() + ROUNDING;
    let (least, most) = (with_deductions - span.0, with_deductions + span.1);
    if over(least) != over(most) {
        doubts.push(Doubt::EstimatedLength);
    }
    // What is only understated can make the length greater, never less.
    let only_understated = doubts.iter().all(|doubt| *doubt == Doubt::RadiusBelowTable);
    let verdict = match (over(least), doubts.is_empty()) {
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

/// How many elements at the run's head are its transition duct, which the length leaves out: the
/// flexible legs from the dryer's outlet on, and the bends made of them. A recessed wall box ends it.
fn transition_elements(run: &CompiledRun) -> usize {
    let mut transition = 0;
    for (index, element) in run.elements.iter().enumerate() {
        match element.kind {
            ElementKind::Straight { duct, .. } if duct.is_flexible() => transition = index + 1,
            ElementKind::Elbow {
                elbow: ElbowKind::BentFlexible,
                ..
            } if index == transition => {
                transition = index + 1;
            }
            ElementKind::Straight { .. }
            | ElementKind::WallBox
            | ElementKind::Termination { .. } => break,
            _ => {}
        }
    }
    transition
}

fn estimate(plan: &Plan, id: &ElementId) -> Option<Estimate> {
    let NodeId::Point(point) = &id.node else {
        return None;
    };
    let index = plan.run.index_of(point)?;
    (id.part == Part::Leg)
        .then(|| plan.run.points[index].leg.estimate)
        .flatten()
}
