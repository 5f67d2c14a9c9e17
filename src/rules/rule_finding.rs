//! What one rule says of a plan.

use super::{Doubt, OpeningDistance, Verdict};
use crate::plan::{ElementId, Input, RuleTopic};
use crate::source::Source;
use crate::units::{Airflow, Length, Pressure};
use serde::Serialize;

/// One rule's finding.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RuleFinding {
    /// What the rule is about.
    pub topic: RuleTopic,
    /// Its section.
    pub section: &'static str,
    /// The verdict.
    pub verdict: Verdict,
    /// What was measured on the plan, where something was.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub measured: Option<Measure>,
    /// What it is set against.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit: Option<Limit>,
    /// How far inside the limit it is; negative where it is outside.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin: Option<Measure>,
    /// Where the verdict is open: the input that decides, and what would settle it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub deciding: Option<Deciding>,
    /// The elements that it is about; none for the whole run.
    pub elements: Vec<ElementId>,
    /// The opening that the termination was measured from.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub opening: Option<OpeningDistance>,
    /// Where the rule was read.
    pub source: &'static Source,
}

/// Something measured.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub enum Measure {
    /// A length.
    #[serde(rename = "length_m")]
    Length(Length),
    /// A duct's or a hole's size.
    #[serde(rename = "size_m")]
    Size(Length),
    /// So many.
    #[serde(rename = "count")]
    Count(usize),
    /// An airflow.
    #[serde(rename = "airflow_m3_per_s")]
    Airflow(Airflow),
    /// A pressure.
    #[serde(rename = "pressure_pa")]
    Pressure(Pressure),
    /// An area.
    #[serde(rename = "area_m2")]
    Area(f64),
}

/// What a measured value is set against.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Limit {
    /// It may be so much.
    AtMost(Measure),
    /// It must be so much.
    AtLeast(Measure),
    /// It must be just this.
    Nominally(Measure),
}

/// The input that decides an open verdict, and what would settle it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Deciding {
    /// The length of a stretch that is only estimated: the rule is kept up to this.
    Length {
        /// The stretch.
        element: ElementId,
        /// The length at which the verdict turns; below nought where no length would do.
        #[serde(rename = "at_most_m")]
        at_most: Length,
    },
    /// How many elbows are concealed: the rule is kept up to this many; none where the least that
    /// there are is too many.
    Elbows {
        /// The stretch.
        element: ElementId,
        /// How many.
        #[serde(skip_serializing_if = "Option::is_none")]
        at_most: Option<u8>,
    },
    /// What some elbows take off, which the rule set does not give: it is kept up to this for each.
    ElbowDeduction {
        /// Why it is not given.
        doubt: Doubt,
        /// The first of them.
        element: ElementId,
        /// How many there are.
        elbows: usize,
        /// For each.
        #[serde(rename = "at_most_m")]
        at_most: Length,
    },
    /// A part that has to be changed before the rule can be applied.
    Part {
        /// What is wrong with it.
        doubt: Doubt,
        /// The part.
        element: ElementId,
    },
    /// The dryer maker's length, which was not typed.
    MakerLength,
    /// The opening's height: its nearest edge must be so much over or under the termination.
    OpeningHeight {
        /// By so much.
        #[serde(rename = "differs_by_m")]
        differs_by: Length,
    },
    /// A rectangular duct, for which the text gives no size.
    RectangularDuct {
        /// The duct.
        element: ElementId,
    },
    /// An uncertain input of the analysis.
    Input {
        /// Which.
        input: Input,
        /// The value at which the verdict turns with the others likely, in the input's own unit; none
        /// where it alone cannot turn it.
        #[serde(skip_serializing_if = "Option::is_none")]
        turns_at: Option<f64>,
    },
    /// No air moves as drawn.
    Airflow,
}

impl Deciding {
    /// The element that decides, where it is one.
    pub fn element(&self) -> Option<&ElementId> {
        match self {
            Self::Length { element, .. }
            | Self::Elbows { element, .. }
            | Self::ElbowDeduction { element, .. }
            | Self::Part { element, .. }
            | Self::RectangularDuct { element } => Some(element),
            Self::MakerLength | Self::OpeningHeight { .. } | Self::Input { .. } | Self::Airflow => {
                None
            }
        }
    }
}
