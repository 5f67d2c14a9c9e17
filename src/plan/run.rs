//! The document's run: its points, elbows, risers and termination.

use super::{NodeId, Point};
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
    /// What sits here when the run turns or rises.
    pub fitting: Fitting,
}

/// A run's point as the file has it: flat, with every unknown field refused.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PointRecord {
    id: Arc<str>,
    x_m: f64,
    y_m: f64,
    duct: Duct,
    elbow: Elbow,
    riser: Option<Riser>,
}

impl From<PointRecord> for RunPoint {
    fn from(record: PointRecord) -> Self {
        Self {
            id: record.id,
            position: Point::new(record.x_m, record.y_m),
            duct: record.duct,
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
}

/// Duct materials.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Duct {
    /// Galvanized or aluminium pipe.
    Rigid,
}

/// The end of the run.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Termination {
    /// What it is.
    pub kind: TerminationKind,
}

/// Kinds of terminations.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum TerminationKind {
    /// A hood on an outside wall with one flap.
    WallHood,
}
