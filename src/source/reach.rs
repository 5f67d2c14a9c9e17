//! Whether a value lies inside the range that its source covers.

use serde::Serialize;

/// Where an input stands against the range of the formula that it went into.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Default)]
#[serde(rename_all = "snake_case")]
pub enum Reach {
    /// Inside the source's range.
    #[default]
    Within,
    /// At its rim, or carried a little past what was measured.
    AtEdge,
    /// Outside: the figure is a guess in the formula's shape.
    Beyond,
}

/// A value and where its inputs stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ranged<T> {
    /// The value.
    pub value: T,
    /// Where its inputs stand.
    pub reach: Reach,
}
