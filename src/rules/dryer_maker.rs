//! The dryer maker's own limits, as the user typed them. A set of its own; beside a code its clauses are
//! told too, for codes may let the maker's instructions govern.

use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;

source! {
    /// The maker's limits.
    pub static TYPED {
        title: "The dryer maker's installation instructions, as typed into this plan",
        edition: "as typed",
        locator: "length, deductions and back pressure of this plan",
        standing: Typed,
    }
}

/// Its two limits.
pub(super) static CLAUSES: [Clause; 2] = [
    clause(RuleTopic::MakerLength, "instructions", &TYPED),
    clause(RuleTopic::MakerBackPressure, "instructions", &TYPED),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::DryerMaker,
    length_limit: None,
    elbows: ElbowMethod::Typed,
    transition_limit: None,
    support_spacing: None,
    label: LabelWhen::NotNamed,
    clauses: &CLAUSES,
};
