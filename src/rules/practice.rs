//! What the trade does though no code asks for it: advice, never a verdict.

use crate::source::{Source, source};
use serde::Serialize;

source! {
    static PRACTICE {
        title: "Common practice, as a state guide on weatherization has it too",
        edition: "not dated",
        locator: "outlet over grade, insulation in unheated spaces, fall toward the outlet",
        standing: CommonPractice,
    }
}

/// A piece of advice.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Advice {
    /// What.
    pub practice: Practice,
    /// Where it comes from.
    pub source: &'static Source,
}

/// What the trade does.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Practice {
    /// The outlet stands 12 in over grade.
    OverGrade,
    /// Insulation of R-8 in unheated spaces.
    Insulation,
    /// A fall toward the outlet, and no dips.
    Fall,
}

/// All advice.
pub static ADVICE: [Advice; 3] = [
    Advice {
        practice: Practice::OverGrade,
        source: &PRACTICE,
    },
    Advice {
        practice: Practice::Insulation,
        source: &PRACTICE,
    },
    Advice {
        practice: Practice::Fall,
        source: &PRACTICE,
    },
];
