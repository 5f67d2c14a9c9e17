//! The document but for its run: site, air, code, room and dryer. Field names in the file carry their
//! unit.

use super::{Heading, Override, Point, Run};
use crate::units::{Airflow, Angle, Length, Pressure, Temperature};
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
    /// The method for smooth elbows.
    #[serde(default, skip_serializing_if = "BendMethod::is_default")]
    pub bend_method: BendMethod,
    /// Values that the user sets in place of the project's own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub overrides: Vec<Override>,
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
    #[serde(rename = "outdoor_temperature_degc")]
    pub outdoor_temperature: Temperature,
    /// Outdoor air's relative humidity, 0..1.
    pub outdoor_relative_humidity: f64,
    /// The house's pressure less the outdoors'; below nought where other fans draw it down.
    #[serde(
        rename = "house_pressure_pa",
        default,
        skip_serializing_if = "is_nought"
    )]
    pub house_pressure: Pressure,
    /// Free area through which the room draws its air from the house; none where the room is open.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub make_up_free_area_m2: Option<f64>,
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
fn is_nought(pressure: &Pressure) -> bool {
    *pressure == Pressure::ZERO
}

/// The exhaust air at the dryer's outlet.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Exhaust {
    /// Its temperature.
    #[serde(rename = "temperature_degc")]
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

/// A published method for the loss of smooth elbows, by its author.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum BendMethod {
    /// Rennels and Hudson.
    #[default]
    Rennels,
    /// Miller.
    Miller,
    /// Ito.
    Ito,
    /// Idelchik.
    Idelchik,
}

impl BendMethod {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    fn is_default(&self) -> bool {
        *self == Self::default()
    }
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
    #[serde(rename = "irc_2021")]
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
    pub turned_deg: f64,
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
        Heading::clockwise_from_top(Angle::from_degrees(self.turned_deg))
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
