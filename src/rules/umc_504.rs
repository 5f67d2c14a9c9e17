//! Uniform Mechanical Code and California Mechanical Code, section 504.

use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;
use crate::units::Length;

source! {
    /// The length rule.
    static LENGTH {
        title: "Uniform Mechanical Code and California Mechanical Code, section 504, length limitation, as quoted in a code forum",
        edition: "numbering of an older edition",
        locator: "504.3.1.2: 14 ft with two 90s, 2 ft for each further 90; no 45 is named",
        standing: SecondHand,
    }
}

source! {
    /// The other rules.
    static TEXT {
        title: "Uniform Mechanical Code and California Mechanical Code, section 504, as quoted in code forums",
        edition: "numbering of an older edition",
        locator: "504.3.1 and 504.3.1.1",
        standing: SecondHand,
    }
}

source! {
    /// What is known from memory alone.
    static MEMORY {
        title: "Uniform Mechanical Code, general exhaust and passing through",
        edition: "current",
        locator: "502.2, held from memory; low confidence",
        standing: Memory,
    }
}

static CLAUSES: [Clause; 19] = [
    clause(RuleTopic::Length, "504.3.1.2", &LENGTH),
    clause(RuleTopic::DuctSize, "504.3.1", &TEXT),
    clause(RuleTopic::DuctMaterial, "504.3.1.1", &TEXT),
    clause(RuleTopic::TransitionLength, "504.3.1.1", &TEXT),
    clause(RuleTopic::TransitionConcealed, "504.3.1.1", &TEXT),
    clause(RuleTopic::TransitionListing, "504.3.1.1", &TEXT),
    clause(RuleTopic::Fasteners, "504.3.1", &TEXT),
    clause(RuleTopic::OutdoorTermination, "504.3.1", &TEXT),
    clause(RuleTopic::BackdraftDamper, "504.3.1", &TEXT),
    clause(RuleTopic::NoScreen, "504.3.1", &TEXT),
    clause(RuleTopic::ForbiddenOutlets, "504.3.1", &TEXT),
    clause(RuleTopic::ClosetOpening, "504.3.1", &TEXT),
    clause(RuleTopic::OtherDucts, "504.3.1", &TEXT),
    clause(RuleTopic::GarageSeparation, "504", &MEMORY),
    clause(RuleTopic::RatedAssemblies, "504", &MEMORY),
    clause(RuleTopic::StudSpaces, "504", &MEMORY),
    clause(RuleTopic::UnusedDuct, "504", &MEMORY),
    clause(RuleTopic::IntakeDistance, "502.2", &MEMORY),
    clause(RuleTopic::PropertyLine, "502.2", &MEMORY),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::Umc504,
    length_limit: Some(Length::from_feet(14.0)),
    elbows: ElbowMethod::TwoIncluded {
        beyond: Length::from_feet(2.0),
    },
    transition_limit: Some(Length::from_feet(6.0)),
    support_spacing: None,
    label: LabelWhen::NotNamed,
    clauses: &CLAUSES,
};
