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

/// Whether `id` is one that a file can hold: some letters and digits of ASCII, - and _, forty at most.
pub(super) fn is_id(id: &str) -> bool {
    const LONGEST: usize = 40;
    let plain = |letter: char| letter.is_ascii_alphanumeric() || matches!(letter, '-' | '_');
    (1..=LONGEST).contains(&id.len()) && id.chars().all(plain)
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
        write!(out, "{}:{}", self.part.key(), self.node)
    }
}

impl Part {
    /// Every part.
    pub(super) const ALL: [Self; 12] = [
        Self::Leg,
        Self::Elbow,
        Self::Riser,
        Self::ElbowAfterRiser,
        Self::AreaChange,
        Self::AreaChangeIntoRiser,
        Self::Blockage,
        Self::ConcealedElbows,
        Self::Leak,
        Self::WallBox,
        Self::Termination,
        Self::MakeUpAir,
    ];

    /// Its name in a key.
    pub(super) const fn key(self) -> &'static str {
        match self {
            Self::Leg => "leg",
            Self::Elbow => "elbow",
            Self::Riser => "riser",
            Self::ElbowAfterRiser => "elbow-after-riser",
            Self::AreaChange => "area-change",
            Self::AreaChangeIntoRiser => "area-change-into-riser",
            Self::Blockage => "blockage",
            Self::ConcealedElbows => "concealed-elbows",
            Self::Leak => "leak",
            Self::WallBox => "wall-box",
            Self::Termination => "termination",
            Self::MakeUpAir => "make-up-air",
        }
    }
}
