//! The document as a whole, and of its parts the site, what moves the air, and the dryer. Field names in
//! the file carry their unit.

use super::{
    CodeChoice, Exhaust, Handover, Heading, Obstacle, Opening, Override, Picture, Point, Run,
    Visit, Wall, Zone,
};
use crate::source::source;
use crate::units::{Airflow, Angle, Length, Pressure, Temperature};
use serde::{Deserialize, Serialize};

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
    /// Parts of the sheet with a temperature of their own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub zones: Vec<Zone>,
    /// The room's ceiling above its floor; the ceiling space begins there.
    #[serde(
        rename = "ceiling_height_m",
        default = "common_ceiling",
        skip_serializing_if = "is_common_ceiling"
    )]
    pub ceiling_height: Length,
    /// A floor plan's picture to trace over.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub picture: Option<Picture>,
    /// The dryer.
    pub dryer: Dryer,
    /// Its exhaust run.
    pub run: Run,
    /// What was read and done on site, the newest visit last.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub visits: Vec<Visit>,
    /// What is typed for the handover sheet.
    #[serde(
        default,
        skip_serializing_if = "Handover::is_empty",
        deserialize_with = "super::only_object::read"
    )]
    pub handover: Handover,
}

impl Plan {
    /// The plan without its pictures, which are large and tell nothing of the air.
    #[must_use]
    pub fn without_pictures(&self) -> Self {
        let mut plan = self.clone();
        plan.picture = None;
        for visit in &mut plan.visits {
            visit.pictures.clear();
        }
        plan
    }

    /// Whether any picture is in it.
    pub fn has_pictures(&self) -> bool {
        self.picture.is_some() || self.visits.iter().any(|visit| !visit.pictures.is_empty())
    }
}

source! {
    /// Of the ceiling that a plan starts with.
    pub static CEILING_SOURCE {
        title: "Common practice, no source",
        edition: "not dated",
        locator: "a ceiling of 8 ft, until the plan gives its own",
        standing: CommonPractice,
    }
}

/// A ceiling of 8 ft. Source: [`CEILING_SOURCE`].
pub(super) const COMMON_CEILING: Length = Length::from_feet(8.0);

const fn common_ceiling() -> Length {
    COMMON_CEILING
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
fn is_common_ceiling(height: &Length) -> bool {
    *height == COMMON_CEILING
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
    /// Clockwise turn on the floor; at none its back faces the top of the sheet.
    pub turned_deg: f64,
    /// Outlet's centre above the floor.
    #[serde(rename = "outlet_height_m")]
    pub outlet_height: Length,
    /// The side that the outlet is on.
    #[serde(default, skip_serializing_if = "OutletSide::is_default")]
    pub outlet_side: OutletSide,
    /// Whether it stands on the washer.
    #[serde(default, skip_serializing_if = "is_not_so")]
    pub stacked: bool,
    /// Changes cautions only, never a figure or a verdict.
    pub energy: Energy,
}

impl Dryer {
    /// The centre of the footprint.
    pub fn centre(&self) -> Point {
        Point::new(self.x_m, self.y_m)
    }
    /// The way its back faces.
    pub fn back_heading(&self) -> Heading {
        Heading::clockwise_from_top(Angle::from_degrees(self.turned_deg))
    }
    /// The way the outlet faces.
    pub fn outlet_heading(&self) -> Heading {
        let back = self.back_heading();
        match self.outlet_side {
            OutletSide::Back => back,
            OutletSide::Left => back.right().back(),
            OutletSide::Right => back.right(),
        }
    }
    /// The outlet: the middle of its side.
    pub fn outlet(&self) -> Point {
        let out = match self.outlet_side {
            OutletSide::Back => self.depth,
            OutletSide::Left | OutletSide::Right => self.width,
        };
        self.centre().toward(self.outlet_heading(), out / 2.0)
    }
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
pub(super) fn is_not_so(it: &bool) -> bool {
    !it
}

/// The side of a dryer that its outlet is on, as its back is looked at from the front.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum OutletSide {
    /// Its back.
    #[default]
    Back,
    /// Its left side.
    Left,
    /// Its right side.
    Right,
}

impl OutletSide {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    fn is_default(&self) -> bool {
        *self == Self::default()
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
