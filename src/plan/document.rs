//! The document itself. Field names in the file carry their unit.

use super::{Heading, NodeId, Point};
use crate::units::{Airflow, Angle, Length, Temperature};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Everything that a person drew or typed about one job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Plan {
    /// The job's name.
    pub title: String,
    /// Whatever was noted.
    pub note: String,
    /// Where the house stands.
    pub site: Site,
    /// The air that the dryer sends out.
    pub exhaust: Exhaust,
    /// What moves the air.
    pub flow: Flow,
    /// The code to check against.
    pub code: CodeChoice,
    /// Walls of the room.
    pub walls: Vec<Wall>,
    /// Windows and doors in the walls.
    pub openings: Vec<Opening>,
    /// What stands in the way.
    pub obstacles: Vec<Obstacle>,
    /// The dryer.
    pub dryer: Dryer,
    /// Its exhaust run.
    pub run: Run,
}

/// The house's surroundings.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Site {
    /// Height above sea level.
    #[serde(rename = "altitude_m")]
    pub altitude: Length,
    /// Outdoor air's temperature.
    #[serde(rename = "outdoor_temperature_degc", with = "celsius")]
    pub outdoor_temperature: Temperature,
    /// Outdoor air's relative humidity, 0..1.
    pub outdoor_relative_humidity: f64,
}

/// The exhaust air at the dryer's outlet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Exhaust {
    /// Its temperature.
    #[serde(rename = "temperature_degc", with = "celsius")]
    pub temperature: Temperature,
    /// Its relative humidity, 0..1.
    pub relative_humidity: f64,
}

/// What sets the airflow.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case", deny_unknown_fields)]
pub enum Flow {
    /// The assumed blower of a full-size dryer.
    TypicalBlower {},
    /// An airflow that the user states, whatever it takes.
    StatedAirflow {
        /// At the outlet's temperature and pressure.
        #[serde(rename = "airflow_m3_per_s")]
        airflow: Airflow,
    },
}

/// The rule set and how it is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CodeChoice {
    /// Which rules apply; the user picks, nothing is guessed from a place.
    pub rule_set: RuleSetId,
    /// Whether the path through a fitting counts as length beside its deduction.
    pub path_through_fittings_counts: bool,
}

/// The rule sets that can be picked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RuleSetId {
    /// International Residential Code 2021.
    Irc2021,
}

/// A straight wall by its centre line.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Wall {
    /// Its id.
    pub id: Arc<str>,
    /// Start, m.
    pub from_x_m: f64,
    /// Start, m.
    pub from_y_m: f64,
    /// End, m.
    pub to_x_m: f64,
    /// End, m.
    pub to_y_m: f64,
    /// Its thickness.
    #[serde(rename = "thickness_m")]
    pub thickness: Length,
    /// Whether outdoors is on its other side.
    pub outside: bool,
}

impl Wall {
    /// Where it starts.
    pub fn from(&self) -> Point {
        Point::new(self.from_x_m, self.from_y_m)
    }
    /// Where it ends.
    pub fn to(&self) -> Point {
        Point::new(self.to_x_m, self.to_y_m)
    }
}

/// A window or door in a wall.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Opening {
    /// Its id.
    pub id: Arc<str>,
    /// The wall that it is in.
    pub wall: Arc<str>,
    /// What it is.
    pub kind: OpeningKind,
    /// From the wall's start to the opening's near side.
    #[serde(rename = "offset_m")]
    pub offset: Length,
    /// Along the wall.
    #[serde(rename = "width_m")]
    pub width: Length,
}

/// Kinds of openings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OpeningKind {
    /// A window.
    Window,
    /// A door.
    Door,
}

/// Something that takes up room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Obstacle {
    /// Its id.
    pub id: Arc<str>,
    /// What it is called.
    pub name: String,
    /// The corner with the least x and y, m.
    pub x_m: f64,
    /// The corner with the least x and y, m.
    pub y_m: f64,
    /// Along x.
    #[serde(rename = "width_m")]
    pub width: Length,
    /// Along y.
    #[serde(rename = "depth_m")]
    pub depth: Length,
}

/// The dryer on the floor.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Dryer {
    /// Centre of its footprint, m.
    pub x_m: f64,
    /// Centre of its footprint, m.
    pub y_m: f64,
    /// Across its back.
    #[serde(rename = "width_m")]
    pub width: Length,
    /// Front to back.
    #[serde(rename = "depth_m")]
    pub depth: Length,
    /// Clockwise turn on the floor; at none the outlet faces the top of the sheet.
    #[serde(rename = "turned_deg", with = "degrees")]
    pub turned: Angle,
    /// Outlet's centre above the floor.
    #[serde(rename = "outlet_height_m")]
    pub outlet_height: Length,
    /// Changes cautions only, never a figure or a verdict.
    pub energy: Energy,
}

impl Dryer {
    /// The centre of the footprint.
    pub fn centre(&self) -> Point {
        Point::new(self.x_m, self.y_m)
    }
    /// The way the outlet faces.
    pub fn outlet_heading(&self) -> Heading {
        Heading::clockwise_from_top(self.turned)
    }
    /// The outlet: the middle of the back.
    pub fn outlet(&self) -> Point {
        self.centre()
            .toward(self.outlet_heading(), self.depth / 2.0)
    }
}

/// How the dryer heats.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Energy {
    /// By electricity.
    Electric,
    /// By gas: its exhaust carries combustion products.
    Gas,
}

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

mod celsius {
    //! A temperature as degrees Celsius in the file.
    use crate::units::Temperature;
    use serde::{Deserialize, Deserializer, Serializer};

    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    pub fn serialize<S: Serializer>(value: &Temperature, to: S) -> Result<S::Ok, S::Error> {
        // Kelvins and back leave dust in the last digits; a tenth of a microdegree is finer than
        // anything typed, and makes reading and writing a round trip.
        to.serialize_f64((value.celsius() * 1e7).round() / 1e7)
    }
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Temperature, D::Error> {
        f64::deserialize(from).map(Temperature::from_celsius)
    }
}

mod degrees {
    //! An angle as degrees in the file.
    use crate::units::Angle;
    use serde::{Deserialize, Deserializer, Serializer};

    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    pub fn serialize<S: Serializer>(value: &Angle, to: S) -> Result<S::Ok, S::Error> {
        to.serialize_f64((value.degrees() * 1e9).round() / 1e9)
    }
    pub fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<Angle, D::Error> {
        f64::deserialize(from).map(Angle::from_degrees)
    }
}
