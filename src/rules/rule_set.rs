//! What a rule set is, and the list of all of them.

use super::termination_findings::DOOR_SOURCE;
use super::{
    dryer_maker, ifgc_614, imc_504, irc_2012, irc_2015, irc_2018, irc_2021, irc_before_2012,
    practice, umc_504,
};
use crate::plan::{RuleSetId, RuleTopic};
use crate::source::Source;
use crate::units::Length;

/// A rule set as facts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RuleSet {
    /// Which.
    pub id: RuleSetId,
    /// The limit on the exhaust duct's length; none where it is typed.
    pub length_limit: Option<Length>,
    /// What elbows take off it.
    pub elbows: ElbowMethod,
    /// The longest transition duct.
    pub transition_limit: Option<Length>,
    /// The greatest spacing of supports.
    pub support_spacing: Option<Length>,
    /// When the permanent label is asked for.
    pub label: LabelWhen,
    /// Its rules in the order in which they are told; the first is on the length.
    pub clauses: &'static [Clause],
}

/// How a rule set deducts elbows from its length. Methods never mix.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum ElbowMethod {
    /// By the table of radii and angles.
    Table,
    /// So much for each bend, whatever its radius.
    EachBend {
        /// For 45 deg.
        at_45: Length,
        /// For 90 deg.
        at_90: Length,
    },
    /// Two of 90 deg are in the limit; so much for each one more. Nothing is said of 45 deg.
    TwoIncluded {
        /// For each further 90 deg.
        beyond: Length,
    },
    /// As the dryer's maker says and the user typed.
    Typed,
}

/// When a permanent label must give the equivalent length.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LabelWhen {
    /// Where the equivalent length is over 35 ft.
    OverLimit,
    /// Wherever the duct is concealed.
    Concealed,
    /// The text says nothing of it.
    NotNamed,
}

/// One rule of a set: what it is about, its section, and where it was read.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clause {
    /// What it is about.
    pub topic: RuleTopic,
    /// Its section.
    pub section: &'static str,
    /// Where it was read.
    pub source: &'static Source,
}

/// A clause.
pub(super) const fn clause(
    topic: RuleTopic,
    section: &'static str,
    source: &'static Source,
) -> Clause {
    Clause {
        topic,
        section,
        source,
    }
}

impl RuleSet {
    /// The set's rule on the length.
    pub fn length_clause(&self) -> &'static Clause {
        &self.clauses[0]
    }
}

/// Every rule set, the newest edition first.
pub static RULE_SETS: [&RuleSet; 9] = [
    &irc_2021::SET,
    &irc_2018::SET,
    &irc_2015::SET,
    &irc_2012::SET,
    &irc_before_2012::SET,
    &imc_504::SET,
    &ifgc_614::SET,
    &umc_504::SET,
    &dryer_maker::SET,
];

/// The rule set called `id`.
pub fn rule_set(id: RuleSetId) -> &'static RuleSet {
    match id {
        RuleSetId::Irc2021 => &irc_2021::SET,
        RuleSetId::Irc2018 => &irc_2018::SET,
        RuleSetId::Irc2015 => &irc_2015::SET,
        RuleSetId::Irc2012 => &irc_2012::SET,
        RuleSetId::IrcBefore2012 => &irc_before_2012::SET,
        RuleSetId::Imc504 => &imc_504::SET,
        RuleSetId::Ifgc614 => &ifgc_614::SET,
        RuleSetId::Umc504 => &umc_504::SET,
        RuleSetId::DryerMaker => &dryer_maker::SET,
    }
}

/// Where every rule of every set, and every piece of advice, was read.
pub fn rule_sources() -> impl Iterator<Item = &'static Source> {
    let clauses = RULE_SETS.iter().flat_map(|set| set.clauses.iter());
    let of_clauses = clauses.map(|clause| clause.source);
    of_clauses
        .chain(practice::ADVICE.iter().map(|advice| advice.source))
        .chain([&DOOR_SOURCE])
}
