//! A press that goes on: one transaction that names its corner by id.

use crate::plan::{NodeId, Plan};
use crate::report::words::ActionName;
use std::sync::Arc;

/// A press on the drawing, from its start to its release.
#[derive(Debug, Clone, PartialEq)]
pub struct Gesture {
    /// The corner that is dragged.
    pub node: NodeId,
    /// The step that it will be.
    pub name: ActionName,
    /// The plan before it.
    pub before: Arc<Plan>,
    /// From the corner to where it was pressed, m: the corner does not jump under the finger.
    pub grip: (f64, f64),
}

impl Gesture {
    /// Whether it moves a corner on the plan; the other kind changes a rise.
    pub fn moves_a_corner(&self) -> bool {
        self.name != ActionName::SetRise
    }
}
