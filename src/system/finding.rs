//! What is wrong or doubtful about a run, beside its figures.

use super::{LowPoint, WetStretch};
use crate::plan::{Clash, ElementId, NodeId, Part};
use crate::units::{Airflow, Length, Velocity};
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
    /// Water condenses on the wall.
    WetWall {
        /// Where, and how much.
        stretch: WetStretch,
        /// Whether some of it is below 0 °C.
        freezes: bool,
    },
    /// The run goes down and up again: water stands there.
    Dip(LowPoint),
    /// The air is slower than lint is said to be carried at; advice, common practice.
    SlowAir {
        /// The straight where it is slowest.
        element: ElementId,
        /// There.
        #[serde(rename = "velocity_m_per_s")]
        velocity: Velocity,
        /// What common practice asks for.
        #[serde(rename = "carries_m_per_s")]
        carries: Velocity,
    },
    /// The duct gets wider: less pressure lost, and slower air that lets lint settle.
    UpsizingSlows {
        /// The change of area.
        element: ElementId,
        /// In the narrower duct before it.
        #[serde(rename = "before_m_per_s")]
        before: Velocity,
        /// In the wider duct after it.
        #[serde(rename = "after_m_per_s")]
        after: Velocity,
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
            | Self::JointLeaks { element, .. }
            | Self::SlowAir { element, .. }
            | Self::UpsizingSlows { element, .. } => Some(element.clone()),
            Self::WetWall { stretch, .. } => Some(stretch.element.clone()),
            Self::Dip(low) => Some(low.element.clone()),
            Self::NoRoom(clash) => Some(clash.element.clone()),
            Self::PointsCoincide { node } => Some(ElementId::new(node, Part::Elbow)),
            Self::TransitionalFlow | Self::NoAirflow => None,
        }
    }
}
