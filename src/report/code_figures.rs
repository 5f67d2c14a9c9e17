//! The code check's figures, as the page, the terminal tool and every file read them.

use crate::plan::RuleSetId;
use crate::rules::{
    Advice, CodeCheck, CodeLength, Deciding, Disagreement, Doubt, RuleFinding, Verdict,
};
use crate::source::Source;
use crate::units::Length;
use serde::Serialize;

/// The length that a code counts.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CodeFigures {
    /// The rule set.
    pub rule_set: RuleSetId,
    /// The section of the limit.
    pub section: &'static str,
    /// Where the limit was read.
    pub source: &'static Source,
    /// How the path through fittings was read.
    pub path_through_fittings_counts: bool,
    /// Length without deductions.
    #[serde(rename = "measured_length_m")]
    pub measured: Length,
    /// Sum of deductions.
    #[serde(rename = "deductions_m")]
    pub deductions: Length,
    /// Length and deductions, set against the limit.
    #[serde(rename = "length_with_deductions_m")]
    pub with_deductions: Length,
    /// With every estimate at its shortest and the fewest concealed elbows.
    #[serde(rename = "least_length_m")]
    pub least: Length,
    /// With every estimate at its longest and the most concealed elbows.
    #[serde(rename = "most_length_m")]
    pub most: Length,
    /// The limit; none where the dryer maker's was not typed.
    #[serde(rename = "limit_m", skip_serializing_if = "Option::is_none")]
    pub limit: Option<Length>,
    /// Limit less length.
    #[serde(rename = "margin_m", skip_serializing_if = "Option::is_none")]
    pub margin: Option<Length>,
    /// The verdict.
    pub verdict: Verdict,
    /// What keeps it open.
    pub doubts: Vec<Doubt>,
    /// What would settle it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub deciding: Option<Deciding>,
}

impl CodeFigures {
    /// Of a code length.
    pub fn of(code: &CodeLength) -> Self {
        Self {
            rule_set: code.rule_set,
            section: code.section,
            source: code.source,
            path_through_fittings_counts: code.path_through_fittings_counts,
            measured: code.measured,
            deductions: code.with_deductions - code.measured,
            with_deductions: code.with_deductions,
            least: code.least,
            most: code.most,
            limit: code.limit,
            margin: code.margin,
            verdict: code.verdict,
            doubts: code.doubts.clone(),
            deciding: code.deciding.clone(),
        }
    }
}

/// The whole code check.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CheckFigures {
    /// What each rule of the chosen set says.
    pub findings: Vec<RuleFinding>,
    /// The sections that speak of what a plan of one run does not hold, with their sources.
    pub not_covered: Vec<(&'static str, &'static Source)>,
    /// The length by every set, each in both readings of the path through fittings: it counts, and it
    /// does not.
    pub side_by_side: Vec<[CodeFigures; 2]>,
    /// Code against air; none where no air moves.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub disagreement: Option<Disagreement>,
    /// What the trade does.
    pub advice: Vec<Advice>,
    /// The equivalent length on the permanent label; none where none is asked for.
    #[serde(rename = "label_length_m", skip_serializing_if = "Option::is_none")]
    pub label: Option<Length>,
}

impl CheckFigures {
    /// Of a code check.
    pub fn of(check: CodeCheck) -> Self {
        let sections = check.not_covered.iter();
        Self {
            not_covered: sections
                .map(|clause| (clause.section, clause.source))
                .collect(),
            side_by_side: check
                .side_by_side
                .iter()
                .map(|readings| readings.each_ref().map(CodeFigures::of))
                .collect(),
            findings: check.findings,
            disagreement: check.disagreement,
            advice: check.advice.to_vec(),
            label: check.label,
        }
    }
}
