//! An element of a compiled run.

use super::bore::Bore;
use super::law::Law;
use crate::plan::{Duct, ElbowKind, ElementId, Input, TerminationKind};
use crate::source::Reach;
use crate::units::{Angle, Length};
use serde::Serialize;

/// What an element of the run is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ElementKind {
    /// A straight.
    Straight {
        /// Between its fittings.
        #[serde(rename = "length_m")]
        length: Length,
        /// Its material.
        duct: Duct,
    },
    /// An elbow.
    Elbow {
        /// Its turn.
        #[serde(rename = "angle_rad")]
        angle: Angle,
        /// How it is made.
        elbow: ElbowKind,
        /// To the centre line.
        #[serde(rename = "centre_line_radius_m")]
        radius: Length,
    },
    /// A sudden change of area.
    AreaChange {
        /// Downstream area over upstream area.
        area_ratio: f64,
    },
    /// A blockage in a leg.
    Blockage {
        /// Free share of the area.
        free_area: f64,
    },
    /// A joint that leaks.
    Leak {
        /// m².
        free_area_m2: f64,
    },
    /// A recessed wall box.
    WallBox,
    /// Elbows of 90 deg that nobody can see.
    ConcealedElbows {
        /// At least so many.
        least: u8,
        /// At most so many.
        most: u8,
    },
    /// The hood or cap at the end.
    Termination {
        /// What it is.
        termination: TerminationKind,
        /// Free share of its opening.
        free_area: f64,
    },
    /// The opening through which the room draws its air.
    MakeUpAir {
        /// m².
        free_area_m2: f64,
    },
}

impl ElementKind {
    /// The input that its coefficient is and that a user may set; none where it is worked out for
    /// each element.
    pub const fn own_input(&self) -> Option<Input> {
        match self {
            Self::Straight { duct, .. } => Some(match duct {
                Duct::Rigid | Duct::FlatRectangular { .. } => Input::RigidRoughness,
                Duct::SemiRigid { .. } => Input::SemiRigidRoughness,
                Duct::Foil { .. } => Input::FoilRoughness,
            }),
            Self::Elbow {
                elbow: ElbowKind::Segmented,
                ..
            }
            | Self::ConcealedElbows { .. } => Some(Input::SegmentedElbow),
            Self::Elbow {
                elbow: ElbowKind::SharpMitre,
                ..
            } => Some(Input::SharpMitre),
            Self::Elbow {
                elbow: ElbowKind::BentFlexible,
                ..
            } => Some(Input::BentFlexible),
            Self::Elbow {
                elbow: ElbowKind::Smooth,
                ..
            }
            | Self::AreaChange { .. } => None,
            Self::Blockage { .. } => Some(Input::Blockage),
            Self::Leak { .. } => Some(Input::LeakDischarge),
            Self::WallBox => Some(Input::WallBox),
            Self::Termination { termination, .. } => match termination {
                TerminationKind::WallHood => Some(Input::WallHood),
                TerminationKind::LouvredHood => Some(Input::LouvredHood),
                TerminationKind::RoofCap => Some(Input::RoofCap),
                TerminationKind::OpenEnd => None,
            },
            Self::MakeUpAir { .. } => Some(Input::MakeUpDischarge),
        }
    }
}

/// An element of a compiled run.
#[derive(Debug, Clone, PartialEq)]
pub struct CompiledElement {
    /// Its name.
    pub id: ElementId,
    /// What it is.
    pub kind: ElementKind,
    /// Straight or arc along the centre line.
    pub developed_length: Length,
    /// How much higher the air leaves it than it came in.
    pub rise: Length,
    /// Whether what it is made of is inside the source's range.
    pub reach: Reach,
    /// The duct that it sits in.
    pub bore: Bore,
    pub(super) law: Law,
}
