//! The names of a run's elements, which stay the same while the run is dragged about.

use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Where the run turns, rises or ends: the dryer's outlet, or a drawn point by its id.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum NodeId {
    /// The dryer's outlet.
    Outlet,
    /// A point of the run.
    Point(Arc<str>),
}

/// The part of the run at a node.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Part {
    /// The straight that arrives at the node.
    Leg,
    /// The elbow at the node, or the lower one of a riser.
    Elbow,
    /// The vertical straight.
    Riser,
    /// The elbow that leaves the riser.
    ElbowAfterRiser,
    /// A change of the duct's size where the leg begins.
    AreaChange,
    /// A change of the duct's size where the riser begins.
    AreaChangeIntoRiser,
    /// A blockage in the leg.
    Blockage,
    /// Elbows hidden in the leg.
    ConcealedElbows,
    /// A leak at the joint where the leg begins.
    Leak,
    /// The recessed wall box that the leg ends in.
    WallBox,
    /// The hood or cap at the run's end.
    Termination,
    /// The opening through which the room draws its air; stands at the outlet.
    MakeUpAir,
}

/// One element of the run.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
pub struct ElementId {
    /// The node it belongs to.
    pub node: NodeId,
    /// Which part it is there.
    pub part: Part,
}

impl ElementId {
    /// The element `part` at `node`.
    pub fn new(node: &NodeId, part: Part) -> Self {
        Self {
            node: node.clone(),
            part,
        }
    }
}

impl core::fmt::Display for NodeId {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            // No point can be called so: ids have letters, digits, - and _ alone.
            Self::Outlet => out.write_str("@outlet"),
            Self::Point(id) => out.write_str(id),
        }
    }
}

impl core::fmt::Display for ElementId {
    /// A key such as `leg:p3`, unique in a plan and fit for an attribute.
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let part = match self.part {
            Part::Leg => "leg",
            Part::Elbow => "elbow",
            Part::Riser => "riser",
            Part::ElbowAfterRiser => "elbow-after-riser",
            Part::AreaChange => "area-change",
            Part::AreaChangeIntoRiser => "area-change-into-riser",
            Part::Blockage => "blockage",
            Part::ConcealedElbows => "concealed-elbows",
            Part::Leak => "leak",
            Part::WallBox => "wall-box",
            Part::Termination => "termination",
            Part::MakeUpAir => "make-up-air",
        };
        write!(out, "{part}:{}", self.node)
    }
}
