//! International Residential Code 2018, section M1502.

use super::irc_table::IRC_LENGTH_LIMIT;
use super::rule_set::{Clause, ElbowMethod, LabelWhen, RuleSet, clause};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::source;
use crate::units::Length;

source! {
    /// The length rule.
    static LENGTH {
        title: "International Residential Code, chapter 15, specified length and its table of fittings, as reproduced on plan sheets",
        edition: "2018",
        locator: "M1502.4.5.1 and its table; rows for 8 in radius at 90 deg and for 10 in radius read at second hand; section number held from memory",
        standing: SecondHand,
    }
}

source! {
    /// The other rules.
    static TEXT {
        title: "International Residential Code, chapter 15, section M1502",
        edition: "2018",
        locator: "M1502.2 to M1502.5; section numbers within it held from memory",
        standing: SecondHand,
    }
}

source! {
    /// The label.
    static LABEL {
        title: "International Residential Code, chapter 15, length identification, as quoted by a trade page",
        edition: "2018",
        locator: "M1502.4.6; equivalent length over 35 ft",
        standing: SecondHand,
    }
}

source! {
    /// What is known from memory alone.
    static MEMORY {
        title: "International Residential Code, garage openings and penetrations, rated assemblies and general exhaust",
        edition: "2018",
        locator: "R302.5, R302.4 and M1504.3, held from memory; low confidence",
        standing: Memory,
    }
}

source! {
    /// The termination's open area.
    static OPEN_AREA {
        title: "International Residential Code, chapter 15, exhaust termination outlet and passageway size",
        edition: "2018",
        locator: "M1502.3.1, read in this edition",
        standing: Published,
    }
}

static CLAUSES: [Clause; 29] = [
    clause(RuleTopic::Length, "M1502.4.5.1", &LENGTH),
    clause(RuleTopic::DuctSize, "M1502.4.1", &TEXT),
    clause(RuleTopic::DuctMaterial, "M1502.4.1", &TEXT),
    clause(RuleTopic::DuctThickness, "M1502.4.1", &TEXT),
    clause(RuleTopic::TransitionLength, "M1502.4.3", &TEXT),
    clause(RuleTopic::TransitionOnePiece, "M1502.4.3", &TEXT),
    clause(RuleTopic::TransitionConcealed, "M1502.4.3", &TEXT),
    clause(RuleTopic::TransitionListing, "M1502.4.3", &TEXT),
    clause(RuleTopic::Supports, "M1502.4.2", &TEXT),
    clause(RuleTopic::Joints, "M1502.4.2", &TEXT),
    clause(RuleTopic::Fasteners, "M1502.4.2", &TEXT),
    clause(RuleTopic::StudSpaces, "M1502.4.2", &TEXT),
    clause(RuleTopic::ShieldPlates, "M1502.5", &TEXT),
    clause(RuleTopic::Label, "M1502.4.6", &LABEL),
    clause(RuleTopic::OutdoorTermination, "M1502.3", &TEXT),
    clause(RuleTopic::OpeningDistance, "M1502.3", &TEXT),
    clause(RuleTopic::BackdraftDamper, "M1502.3", &TEXT),
    clause(RuleTopic::NoScreen, "M1502.3", &TEXT),
    clause(RuleTopic::OpenArea, "M1502.3.1", &OPEN_AREA),
    clause(RuleTopic::ForbiddenOutlets, "M1502.2", &TEXT),
    clause(RuleTopic::FireDampers, "M1502", &TEXT),
    clause(RuleTopic::PowerVentilators, "M1502.4", &TEXT),
    clause(RuleTopic::ClosetOpening, "M1502", &TEXT),
    clause(RuleTopic::OtherDucts, "M1502.2", &TEXT),
    clause(RuleTopic::UnusedDuct, "M1502.4", &TEXT),
    clause(RuleTopic::GarageSeparation, "R302.5", &MEMORY),
    clause(RuleTopic::RatedAssemblies, "R302.4", &MEMORY),
    clause(RuleTopic::IntakeDistance, "M1504.3", &MEMORY),
    clause(RuleTopic::PropertyLine, "M1504.3", &MEMORY),
];

/// The set.
pub static SET: RuleSet = RuleSet {
    id: RuleSetId::Irc2018,
    length_limit: Some(IRC_LENGTH_LIMIT),
    elbows: ElbowMethod::Table,
    transition_limit: Some(Length::from_feet(8.0)),
    support_spacing: Some(Length::from_feet(12.0)),
    label: LabelWhen::OverLimit,
    clauses: &CLAUSES,
};
