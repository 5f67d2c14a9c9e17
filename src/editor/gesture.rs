//! A press that goes on: one transaction that names what it holds by id.

use crate::plan::{NodeId, Plan, ThingId};
use crate::report::words::ActionName;
use std::sync::Arc;

/// A press on the drawing, from its start to its release.
#[derive(Debug, Clone, PartialEq)]
pub struct Gesture {
    /// What is dragged.
    pub held: Held,
    /// The step that it will be.
    pub name: ActionName,
    /// The plan before it.
    pub before: Arc<Plan>,
    /// From what is held to where it was pressed, m: it does not jump under the finger.
    pub grip: (f64, f64),
}

/// What a press holds.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Held {
    /// A corner of the run, or its termination.
    Corner(NodeId),
    /// The place in a leg's middle from which a bend is pulled; the node that the leg arrives at.
    NewBend(NodeId),
    /// The rise at a node, in the elevation.
    Rise(NodeId),
    /// The things that are selected.
    Things,
    /// An end of a wall, with the walls that meet there.
    WallEnd {
        /// The wall.
        wall: ThingId,
        /// Whether it is the end that it starts at.
        start: bool,
    },
    /// A corner of an obstacle, a zone or the picture: 0 to 3, clockwise from the top left.
    BoxCorner {
        /// Whose.
        thing: ThingId,
        /// Which.
        corner: u8,
    },
}
