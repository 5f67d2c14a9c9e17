//! International Mechanical Code, section 504.

use super::irc_table::IRC_LENGTH_LIMIT;
use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;
use crate::units::Length;

source! {
    /// The length rule.
    static LENGTH {
        title: "International Mechanical Code, section 504, specified length and its table of fittings",
        edition: "current numbering",
        locator: "504.9.4.1; the table's rows for 8 in radius at 90 deg and for 10 in radius read at second hand",
        standing: Published,
    }
}

source! {
    /// The other rules.
    static TEXT {
        title: "International Mechanical Code, section 504",
        edition: "current numbering",
        locator: "504.1 to 504.11; subsections as numbered in it",
        standing: Published,
    }
}

source! {
    /// The label.
    static LABEL {
        title: "International Mechanical Code, section 504, length identification, as quoted by a trade page",
        edition: "2015 numbering",
        locator: "504.8.5: equivalent length over 35 ft",
        standing: SecondHand,
    }
}

source! {
    /// What was read at second hand.
    static SECOND_HAND {
        title: "International Mechanical Code, section 504",
        edition: "current numbering",
        locator: "504.3: clean-out at each vertical riser, read at second hand",
        standing: SecondHand,
    }
}

source! {
    /// What is known from memory alone.
    static MEMORY {
        title: "International Mechanical Code, section 501, general exhaust",
        edition: "current numbering",
        locator: "501.3.1: intakes 10 ft, property line 3 ft; low confidence",
        standing: Memory,
    }
}

static CLAUSES: [Clause; 30] = [
    clause(RuleTopic::Length, "504.9.4.1", &LENGTH),
    clause(RuleTopic::DuctSize, "504", &TEXT),
    clause(RuleTopic::DuctMaterial, "504", &TEXT),
    clause(RuleTopic::DuctThickness, "504", &TEXT),
    clause(RuleTopic::TransitionLength, "504", &TEXT),
    clause(RuleTopic::TransitionOnePiece, "504", &TEXT),
    clause(RuleTopic::TransitionConcealed, "504", &TEXT),
    clause(RuleTopic::TransitionListing, "504", &TEXT),
    clause(RuleTopic::Supports, "504", &TEXT),
    clause(RuleTopic::Joints, "504", &TEXT),
    clause(RuleTopic::Fasteners, "504", &TEXT),
    clause(RuleTopic::StudSpaces, "504", &TEXT),
    clause(RuleTopic::ShieldPlates, "504", &TEXT),
    clause(RuleTopic::Label, "504.8.5", &LABEL),
    clause(RuleTopic::OutdoorTermination, "504", &TEXT),
    clause(RuleTopic::OpeningDistance, "504", &TEXT),
    clause(RuleTopic::BackdraftDamper, "504", &TEXT),
    clause(RuleTopic::NoScreen, "504", &TEXT),
    clause(RuleTopic::ForbiddenOutlets, "504", &TEXT),
    clause(RuleTopic::FireDampers, "504", &TEXT),
    clause(RuleTopic::PowerVentilators, "504", &TEXT),
    clause(RuleTopic::MakeUpAir, "504", &TEXT),
    clause(RuleTopic::ClosetOpening, "504", &TEXT),
    clause(RuleTopic::OtherDucts, "504", &TEXT),
    clause(RuleTopic::RatedAssemblies, "504", &TEXT),
    clause(RuleTopic::UnusedDuct, "504", &TEXT),
    clause(RuleTopic::CleanOut, "504.3", &SECOND_HAND),
    clause(RuleTopic::SharedShaft, "504.11", &TEXT),
    clause(RuleTopic::IntakeDistance, "501.3.1", &MEMORY),
    clause(RuleTopic::PropertyLine, "501.3.1", &MEMORY),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::Imc504,
    length_limit: Some(IRC_LENGTH_LIMIT),
    elbows: ElbowMethod::Table,
    transition_limit: Some(Length::from_feet(8.0)),
    support_spacing: Some(Length::from_feet(4.0)),
    label: LabelWhen::OverLimit,
    clauses: &CLAUSES,
};
