//! What is asked of the search.

use crate::plan::Plan;
use crate::units::Length;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// A plan whose reroutes are wanted.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Request {
    /// The plan with its present run.
    pub plan: Plan,
    /// How to search.
    pub options: Options,
}

/// How to search.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Options {
    /// Kept free between the duct's outside and everything that it passes.
    #[serde(rename = "clearance_m")]
    pub clearance: Length,
    /// So many suggestions at most.
    pub most_suggestions: usize,
    /// A route may lose so many times what the best one loses between outlet and termination and is
    /// still looked for, because it may be better in something else.
    pub slack: f64,
    /// So many labels at most before the search gives up the claim that its best is the best.
    pub most_labels: usize,
    /// Whether the dryer's outlet may go to another of its sides.
    pub other_outlet_sides: bool,
    /// Whether the dryer may turn by quarters, or be moved, where the room has room for it.
    pub dryer_may_move: bool,
    /// Height of a cap on the roof above the floor; none where no run may go there.
    #[serde(rename = "roof_height_m")]
    pub roof_height: Option<Length>,
    /// Ids of zones that no new leg may pass.
    pub closed_zones: Vec<Arc<str>>,
}

/// A quarter of an inch between duct and obstacle. Source: [`ROUTE_SOURCE`].
///
/// [`ROUTE_SOURCE`]: crate::plan::ROUTE_SOURCE
const CLEARANCE: Length = Length::from_inches(0.25);

impl Default for Options {
    fn default() -> Self {
        Self {
            clearance: CLEARANCE,
            most_suggestions: 7,
            slack: 1.25,
            most_labels: 400_000,
            other_outlet_sides: true,
            dryer_may_move: false,
            roof_height: None,
            closed_zones: Vec::new(),
        }
    }
}
