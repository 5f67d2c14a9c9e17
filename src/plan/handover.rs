//! What a person types for the handover sheet: free texts, and the stock that pipe is cut from.

use crate::units::Length;
use serde::{Deserialize, Serialize};

/// The texts of the handover sheet and the lengths that pipe is bought in. The program knows no clock
/// and no names: date and names are as they were typed.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Handover {
    /// The day.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Whom the sheet is for.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub made_for: String,
    /// Who made it.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub made_by: String,
    /// Whatever is to be said beside the figures.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub remarks: String,
    /// The lengths that pipe is bought in; none for those that the trade usually has.
    #[serde(rename = "stock_lengths_m", skip_serializing_if = "Vec::is_empty")]
    pub stock_lengths: Vec<Length>,
}

impl Handover {
    pub(super) fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}
