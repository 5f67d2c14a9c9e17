//! International Residential Code before 2012: 25 ft.

use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;
use crate::units::Length;

source! {
    /// The length rule.
    static LENGTH {
        title: "International Residential Code before 2012, as quoted by a sweep's page of code references",
        edition: "before 2012",
        locator: "M1502.6: 25 ft, 2.5 ft off for each 45 and 5 ft for each 90",
        standing: SecondHand,
    }
}

source! {
    /// The other rules.
    static TEXT {
        title: "International Residential Code before 2012, as quoted by a sweep's page of code references",
        edition: "before 2012",
        locator: "M1502.2 to M1502.5; section numbers moved between these editions",
        standing: SecondHand,
    }
}

source! {
    /// What is known from memory alone.
    static MEMORY {
        title: "International Residential Code before 2012, other rules on dryer exhaust",
        edition: "before 2012",
        locator: "M1502 and the label where the duct is concealed, numbers of 2009; held from memory",
        standing: Memory,
    }
}

static CLAUSES: [Clause; 19] = [
    clause(RuleTopic::Length, "M1502.6", &LENGTH),
    clause(RuleTopic::DuctMaterial, "M1502.5", &TEXT),
    clause(RuleTopic::DuctThickness, "M1502.5", &TEXT),
    clause(RuleTopic::TransitionLength, "M1502.4", &TEXT),
    clause(RuleTopic::TransitionOnePiece, "M1502.4", &TEXT),
    clause(RuleTopic::TransitionConcealed, "M1502.4", &TEXT),
    clause(RuleTopic::TransitionListing, "M1502.4", &TEXT),
    clause(RuleTopic::Supports, "M1502", &MEMORY),
    clause(RuleTopic::Joints, "M1502.5", &TEXT),
    clause(RuleTopic::Fasteners, "M1502.5", &TEXT),
    clause(RuleTopic::Label, "M1502.4.5", &MEMORY),
    clause(RuleTopic::OutdoorTermination, "M1502.2", &TEXT),
    clause(RuleTopic::OpeningDistance, "M1502.2", &TEXT),
    clause(RuleTopic::BackdraftDamper, "M1502.2", &TEXT),
    clause(RuleTopic::NoScreen, "M1502.2", &TEXT),
    clause(RuleTopic::ForbiddenOutlets, "M1502", &MEMORY),
    clause(RuleTopic::OtherDucts, "M1502", &MEMORY),
    clause(RuleTopic::GarageSeparation, "R309", &MEMORY),
    clause(RuleTopic::RatedAssemblies, "R317", &MEMORY),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::IrcBefore2012,
    length_limit: Some(Length::from_feet(25.0)),
    elbows: ElbowMethod::EachBend {
        at_45: Length::from_feet(2.5),
        at_90: Length::from_feet(5.0),
    },
    transition_limit: Some(Length::from_feet(8.0)),
    support_spacing: Some(Length::from_feet(4.0)),
    label: LabelWhen::Concealed,
    clauses: &CLAUSES,
};
