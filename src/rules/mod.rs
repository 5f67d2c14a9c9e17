//! Code rules as facts, one file a rule set, and the findings that they give.
//!
//! Knows nothing of editing.

mod clause_findings;
mod code_check;
mod disagreement;
mod dryer_maker;
mod duct_findings;
mod elbow_deduction;
mod ifgc_614;
mod imc_504;
mod irc_2012;
mod irc_2015;
mod irc_2018;
mod irc_2021;
mod irc_before_2012;
mod irc_table;
mod length;
mod length_doubts;
mod maker_pressure;
mod openings;
mod practice;
mod rule_finding;
mod rule_set;
mod run_length;
mod termination_findings;
mod transition;
mod umc_504;
mod verdict;

pub use code_check::{CodeCheck, code_check};
pub use disagreement::{Disagreement, TwoLengths};
pub use irc_table::{IRC_LENGTH_LIMIT, IRC_LENGTH_TABLE, LengthRow, irc_deduction};
pub use length::{CodeLength, code_length};
pub use openings::{OpeningDistance, opening_distances, opening_limit, too_near};
pub use practice::{Advice, Practice};
pub use rule_finding::{Deciding, Limit, Measure, RuleFinding};
pub use rule_set::{Clause, ElbowMethod, LabelWhen, RULE_SETS, RuleSet, rule_set, rule_sources};
pub use termination_findings::DOOR_SOURCE;
pub use verdict::{Deduction, DeductionNote, Doubt, Verdict};
