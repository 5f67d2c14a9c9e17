//! International Fuel Gas Code, section 614: gas dryers.

use super::irc_table::IRC_LENGTH_LIMIT;
use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;
use crate::units::Length;

source! {
    /// The length rule.
    static LENGTH {
        title: "International Fuel Gas Code, section 614, specified length and its table of fittings",
        edition: "2018 numbering",
        locator: "614: 35 ft with the same table; rows for 8 in radius at 90 deg and for 10 in radius read at second hand",
        standing: Published,
    }
}

source! {
    /// The other rules.
    static TEXT {
        title: "International Fuel Gas Code, section 614, as a state adopted it",
        edition: "2018",
        locator: "614.4 to 614.7",
        standing: Published,
    }
}

source! {
    /// What is known from memory alone.
    static MEMORY {
        title: "International Fuel Gas Code, section 614",
        edition: "2018",
        locator: "614.8: size, support, transition duct and label; held from memory to say what the mechanical code says",
        standing: Memory,
    }
}

static CLAUSES: [Clause; 19] = [
    clause(RuleTopic::Length, "614", &LENGTH),
    clause(RuleTopic::DuctSize, "614.8", &MEMORY),
    clause(RuleTopic::DuctMaterial, "614.8", &MEMORY),
    clause(RuleTopic::DuctThickness, "614.8", &MEMORY),
    clause(RuleTopic::TransitionLength, "614.8", &MEMORY),
    clause(RuleTopic::TransitionOnePiece, "614.8", &MEMORY),
    clause(RuleTopic::TransitionConcealed, "614.8", &MEMORY),
    clause(RuleTopic::TransitionListing, "614.8", &MEMORY),
    clause(RuleTopic::Supports, "614.8", &MEMORY),
    clause(RuleTopic::Fasteners, "614.4", &TEXT),
    clause(RuleTopic::ShieldPlates, "614.7", &TEXT),
    clause(RuleTopic::Label, "614.8", &MEMORY),
    clause(RuleTopic::OutdoorTermination, "614.4", &TEXT),
    clause(RuleTopic::BackdraftDamper, "614.4", &TEXT),
    clause(RuleTopic::NoScreen, "614.4", &TEXT),
    clause(RuleTopic::ForbiddenOutlets, "614.4", &TEXT),
    clause(RuleTopic::PowerVentilators, "614.5", &TEXT),
    clause(RuleTopic::ClosetOpening, "614.6", &TEXT),
    clause(RuleTopic::OtherDucts, "614.4", &TEXT),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::Ifgc614,
    length_limit: Some(IRC_LENGTH_LIMIT),
    elbows: ElbowMethod::Table,
    transition_limit: Some(Length::from_feet(8.0)),
    support_spacing: Some(Length::from_feet(4.0)),
    label: LabelWhen::OverLimit,
    clauses: &CLAUSES,
};
