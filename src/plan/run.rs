//! The document's run: its points, elbows, risers and termination.

use super::document::is_not_so;
use super::{Insulation, Metal, NodeId, Point};
use crate::units::Length;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// The exhaust run, from the dryer's outlet through its points to the termination at the last.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Run {
    /// Inside diameter.
    #[serde(rename = "diameter_m")]
    pub diameter: Length,
    /// What sits at the outlet when the run turns or rises there.
    pub outlet: Fitting,
    /// The corners, the last of which is the termination.
    pub points: Vec<RunPoint>,
    /// What ends it.
    pub termination: Termination,
}

impl Run {
    /// The index of the point called `id`.
    pub fn index_of(&self, id: &str) -> Option<usize> {
        self.points.iter().position(|point| &*point.id == id)
    }

    /// What sits at `node`.
    pub fn fitting(&self, node: &NodeId) -> Option<&Fitting> {
        match node {
            NodeId::Outlet => Some(&self.outlet),
            NodeId::Point(id) => self.index_of(id).map(|index| &self.points[index].fitting),
        }
    }

    /// What sits at `node`, to be changed.
    pub fn fitting_mut(&mut self, node: &NodeId) -> Option<&mut Fitting> {
        match node {
            NodeId::Outlet => Some(&mut self.outlet),
            NodeId::Point(id) => self
                .index_of(id)
                .map(|index| &mut self.points[index].fitting),
        }
    }

    /// The first of `p1`, `p2` and so on that no point has: of one more than there are, one is free.
    pub fn free_id(&self) -> Arc<str> {
        (1..=self.points.len() + 1)
            .map(|number| format!("p{number}"))
            .find(|id| self.index_of(id).is_none())
            .unwrap_or_default()
            .into()
    }

    /// The point whose leg lends its duct to a riser at the point with this index, none at the dryer's
    /// outlet: the leg that arrives; at the outlet and past a recessed wall box the one that leaves, if
    /// any does.
    pub fn duct_of_riser(&self, index: Option<usize>) -> Option<&RunPoint> {
        let Some(index) = index else {
            return self.points.first();
        };
        let point = self.points.get(index)?;
        if point.leg.ends_in_wall_box {
            self.points.get(index + 1)
        } else {
            Some(point)
        }
    }
}

/// A corner of the run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(from = "PointRecord", into = "PointRecord")]
pub struct RunPoint {
    /// Its id.
    pub id: Arc<str>,
    /// Where it is.
    pub position: Point,
    /// The duct of the leg that arrives here.
    pub duct: Duct,
    /// What else is known of that leg.
    pub leg: LegState,
    /// What sits here when the run turns or rises.
    pub fitting: Fitting,
}

/// What else is known, or only guessed, of a leg. Most legs have none of it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct LegState {
    /// Its own inside diameter, where it is not the run's.
    pub diameter: Option<Length>,
    /// How far off its drawn length may be.
    pub estimate: Option<Estimate>,
    /// Elbows that are hidden in it; makes the leg a concealed stretch.
    pub concealed: Option<ConcealedElbows>,
    /// Free share of the duct's area at a blockage in it, above 0 to 1.
    pub blockage_free_area: Option<f64>,
    /// Free area of a leak at the joint where it begins, m².
    pub leak_free_area_m2: Option<f64>,
    /// Whether it ends in a recessed wall box, where the transition duct meets the duct in the wall.
    pub ends_in_wall_box: bool,
    /// What is wrapped about it.
    pub insulation: Option<Insulation>,
    /// What it is made of where it is rigid; flexible duct is aluminium.
    pub metal: Metal,
}

/// How far off a drawn length may be.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Estimate {
    /// Shorter by at most this.
    #[serde(rename = "less_m")]
    pub less: Length,
    /// Longer by at most this.
    #[serde(rename = "more_m")]
    pub more: Length,
}

/// Elbows of 90 deg in a stretch that nobody can see.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ConcealedElbows {
    /// At least so many.
    pub least: u8,
    /// At most so many.
    pub most: u8,
}

/// A run's point as the file has it: flat, with every unknown field refused. What a leg does not
/// have is left out.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PointRecord {
    id: Arc<str>,
    x_m: f64,
    y_m: f64,
    duct: Duct,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    diameter_m: Option<Length>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    estimate: Option<Estimate>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    concealed_elbows: Option<ConcealedElbows>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    blockage_free_area: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    leak_free_area_m2: Option<f64>,
    #[serde(default, skip_serializing_if = "is_not_so")]
    ends_in_wall_box: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    insulation: Option<Insulation>,
    #[serde(default, skip_serializing_if = "Metal::is_default")]
    metal: Metal,
    elbow: Elbow,
    riser: Option<Riser>,
}

impl From<PointRecord> for RunPoint {
    fn from(record: PointRecord) -> Self {
        Self {
            id: record.id,
            position: Point::new(record.x_m, record.y_m),
            duct: record.duct,
            leg: LegState {
                diameter: record.diameter_m,
                estimate: record.estimate,
                concealed: record.concealed_elbows,
                blockage_free_area: record.blockage_free_area,
                leak_free_area_m2: record.leak_free_area_m2,
                ends_in_wall_box: record.ends_in_wall_box,
                insulation: record.insulation,
                metal: record.metal,
            },
            fitting: Fitting {
                elbow: record.elbow,
                riser: record.riser,
            },
        }
    }
}

impl From<RunPoint> for PointRecord {
    fn from(point: RunPoint) -> Self {
        Self {
            id: point.id,
            x_m: point.position.x,
            y_m: point.position.y,
            duct: point.duct,
            diameter_m: point.leg.diameter,
            estimate: point.leg.estimate,
            concealed_elbows: point.leg.concealed,
            blockage_free_area: point.leg.blockage_free_area,
            leak_free_area_m2: point.leg.leak_free_area_m2,
            ends_in_wall_box: point.leg.ends_in_wall_box,
            insulation: point.leg.insulation,
            metal: point.leg.metal,
            elbow: point.fitting.elbow,
            riser: point.fitting.riser,
        }
    }
}

/// The elbow at a node and the riser on it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Fitting {
    /// The elbow in the plan, or into the riser.
    pub elbow: Elbow,
    /// The vertical leg, if one stands here.
    pub riser: Option<Riser>,
}

/// A vertical leg.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Riser {
    /// Upward; a drop is negative.
    #[serde(rename = "rise_m")]
    pub rise: Length,
    /// The elbow that leaves it.
    pub elbow: Elbow,
}

/// An elbow. Its angle comes from the drawing.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Elbow {
    /// How it is made.
    pub kind: ElbowKind,
    /// To the centre line.
    #[serde(rename = "centre_line_radius_m")]
    pub radius: Length,
}

/// How an elbow is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ElbowKind {
    /// One smooth curve.
    Smooth,
    /// Gored or adjustable: straight pieces at an angle.
    Segmented,
    /// Two ends cut at an angle, with no curve; its radius says nothing.
    SharpMitre,
    /// No fitting: flexible duct bent by hand.
    BentFlexible,
}

/// Duct materials and shapes.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Duct {
    /// Galvanized or aluminium pipe.
    Rigid,
    /// Corrugated metal that keeps its shape.
    SemiRigid {
        /// How much it is pushed back, in percent short of its full stretch.
        short_of_full_stretch_percent: f64,
    },
    /// Foil on a wire: a transition duct only.
    Foil {
        /// How much it is pushed together, in percent short of its full stretch.
        short_of_full_stretch_percent: f64,
    },
    /// Flat rectangular metal duct, as it fits behind a dryer.
    FlatRectangular {
        /// Inside, the long way.
        #[serde(rename = "width_m")]
        width: Length,
        /// Inside, the short way.
        #[serde(rename = "depth_m")]
        depth: Length,
    },
}

impl Duct {
    /// Whether it is bent by hand.
    pub const fn is_flexible(self) -> bool {
        matches!(self, Self::SemiRigid { .. } | Self::Foil { .. })
    }
}

/// The end of the run.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Termination {
    /// What it is.
    pub kind: TerminationKind,
    /// Free share of its opening, above 0 to 1: less where its flap is stuck or lint sits in it.
    #[serde(default = "wholly", skip_serializing_if = "is_whole")]
    pub free_area: f64,
}

impl Termination {
    /// A clean one of a kind.
    pub const fn clean(kind: TerminationKind) -> Self {
        Self {
            kind,
            free_area: 1.0,
        }
    }
}

fn wholly() -> f64 {
    1.0
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
#[allow(
    clippy::float_cmp,
    reason = "left out only where it is the default itself"
)]
fn is_whole(share: &f64) -> bool {
    *share == 1.0
}

/// Kinds of terminations.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TerminationKind {
    /// A hood on an outside wall with one flap.
    WallHood,
    /// A hood with several louvres.
    LouvredHood,
    /// A cap on the roof.
    RoofCap,
    /// The bare end of the duct, as when a joint is opened to read there. No code allows it.
    OpenEnd,
}
