//! What a rule says of a run.

use crate::units::Length;
use serde::Serialize;

/// A rule's verdict; shown only beside the measured value, the limit and the margin.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// The measured value keeps the limit.
    Meets,
    /// It does not.
    DoesNotMeet,
    /// The rule's text or the plan leaves it open.
    CannotTell,
    /// A drawing does not show it: somebody has to look.
    CheckOnSite,
}

/// What keeps a verdict open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Doubt {
    /// An elbow's radius is under 4 in, for which the table has no row.
    RadiusBelowTable,
    /// The duct is not 4 in, the only size that the table is for.
    DiameterNotInTable,
    /// Flexible duct past the transition: the table has no row for it, and it is not allowed there.
    FlexibleInRun,
    /// A length or a number of elbows is only estimated, and the limit lies within the estimate.
    EstimatedLength,
    /// The length rests on elbows that overlap as drawn.
    ElbowsOverlap,
    /// The rule set names no deduction for an elbow of this angle; it is counted as nothing.
    AngleNotNamed,
    /// The dryer maker's deduction for an elbow was not typed; it is counted as nothing.
    MakerElbowNotTyped,
    /// The dryer maker's length was not typed.
    LimitNotTyped,
}

/// How an elbow was matched with the table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum DeductionNote {
    /// Its radius has no row: the next smaller one was taken.
    NextSmallerRadius,
    /// Its angle has no column: the next larger one was taken.
    NextLargerAngle,
    /// It turns more than 90 deg: a 90 and the rest were taken.
    OverNinety,
    /// Its radius is under the table's least: at least this much.
    AtLeast,
    /// It is one of the two that the limit has in it.
    InTheLimit,
    /// The set names nothing for it: at least nothing.
    NotNamed,
}

/// What a fitting takes off the length that is allowed.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Deduction {
    /// The deduction.
    #[serde(rename = "deduction_m")]
    pub length: Length,
    /// How the table was read, where it was not read straight off.
    pub notes: Vec<DeductionNote>,
}
