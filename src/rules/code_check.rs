//! The whole code check of a plan: every rule of the chosen set, and all sets' length side by side.

use super::clause_findings::Look;
use super::run_length::RunLength;
use super::{
    Advice, Clause, CodeLength, Disagreement, RULE_SETS, RuleFinding, dryer_maker, practice,
    rule_set,
};
use crate::plan::{Plan, RuleSetId, RuleTopic};
use crate::system::Assessment;
use crate::units::Length;

/// Everything that the rules say of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct CodeCheck {
    /// The length by the chosen set in the chosen reading.
    pub length: CodeLength,
    /// The chosen set's findings in its order, and the dryer maker's where limits were typed.
    pub findings: Vec<RuleFinding>,
    /// What the set speaks of that a plan of one run does not hold.
    pub not_covered: Vec<&'static Clause>,
    /// The length by every set: where the path through fittings counts, and where it does not.
    pub side_by_side: Vec<[CodeLength; 2]>,
    /// Code against air; none where no air moves.
    pub disagreement: Option<Disagreement>,
    /// What the trade does.
    pub advice: &'static [Advice],
    /// What the permanent label has to say; none where none is asked for as far as the plan shows.
    pub label: Option<Length>,
}

/// Checks `plan`, whose assessment is given, against its rule set.
pub fn code_check(plan: &Plan, assessment: &Assessment) -> CodeCheck {
    let set = rule_set(plan.code.rule_set);
    let maker = &plan.code.maker;
    let lengths = RunLength::of(plan, &assessment.run, &assessment.findings);
    let length = lengths.by(set, maker, plan.code.path_through_fittings_counts);
    let look = Look::at(plan, assessment, set, &lengths, &length);
    let own = set.clauses.iter();
    // Beside a code, the maker's limits are told as far as they were typed.
    let is_beside = set.id != RuleSetId::DryerMaker;
    let beside = dryer_maker::CLAUSES.iter().filter(|clause| {
        is_beside && (clause.topic != RuleTopic::MakerLength || maker.length.is_some())
    });
    let findings: Vec<RuleFinding> = own
        .chain(beside)
        .flat_map(|clause| look.findings(clause))
        .collect();
    let is_labelled = findings
        .iter()
        .any(|finding| finding.topic == RuleTopic::Label);
    let not_covered = set.clauses.iter();
    CodeCheck {
        label: is_labelled.then_some(length.with_deductions),
        findings,
        not_covered: not_covered
            .filter(|clause| clause.topic == RuleTopic::SharedShaft)
            .collect(),
        side_by_side: RULE_SETS
            .iter()
            .map(|set| [true, false].map(|counts| lengths.by(set, maker, counts)))
            .collect(),
        disagreement: assessment
            .working
            .as_ref()
            .map(|(_, ledger)| Disagreement::of(ledger, &length)),
        advice: &practice::ADVICE,
        length,
    }
}
