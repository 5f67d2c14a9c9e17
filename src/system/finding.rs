//! What is wrong or doubtful about a run, beside its figures.

use crate::plan::{Clash, ElementId, NodeId, Part};
use crate::units::{Airflow, Length};
use serde::Serialize;

/// One remark; the analysis gives its figures all the same.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Finding {
    /// The elbows at the ends of a straight need more room than it has; it counts as nought long.
    ElbowsOverlap {
        /// The straight.
        element: ElementId,
        /// By how much they overlap.
        #[serde(rename = "overlap_m")]
        overlap: Length,
    },
    /// An elbow follows another so closely that tables of single elbows do not hold: the band is
    /// wider.
    ElbowsClose {
        /// The second elbow.
        element: ElementId,
        /// The straight between them, in diameters.
        gap_diameters: f64,
    },
    /// A point lies on the corner before it and is left out.
    PointsCoincide {
        /// The point.
        node: NodeId,
    },
    /// Angle or radius lies outside what the loss formula's source covers.
    OutsideSource {
        /// The element.
        element: ElementId,
    },
    /// The duct has no room where it is drawn.
    NoRoom(Clash),
    /// Air leaves the run by a joint, or with a negative airflow comes in.
    JointLeaks {
        /// The leak.
        element: ElementId,
        /// How much.
        #[serde(rename = "escaped_m3_per_s")]
        escaped: Airflow,
    },
    /// The air is neither laminar nor turbulent here: friction is not determined.
    TransitionalFlow,
    /// The blower cannot move air through this run at all.
    NoAirflow,
}

impl Finding {
    /// The element that it is about; none where it is about the whole run.
    pub fn element(&self) -> Option<ElementId> {
        match self {
            Self::ElbowsOverlap { element, .. }
            | Self::ElbowsClose { element, .. }
            | Self::OutsideSource { element }
            | Self::JointLeaks { element, .. } => Some(element.clone()),
            Self::NoRoom(clash) => Some(clash.element.clone()),
            Self::PointsCoincide { node } => Some(ElementId::new(node, Part::Elbow)),
            Self::TransitionalFlow | Self::NoAirflow => None,
        }
    }
}
