//! What was done on site: the visits with their readings, looks and repairs. Values alone; what they
//! mean is worked out in `diagnosis`.

use super::{ElementId, Plan, Spot, VisitPicture};
use crate::source::source;
use crate::units::{Pressure, Temperature, TemperatureDifference, Velocity};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::sync::Arc;

/// One visit to the dryer.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Visit {
    /// Its id.
    pub id: Arc<str>,
    /// The day, as it was typed: the program knows no clock.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub date: String,
    /// Whatever was noted.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// What was made ready before the first reading.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub preparation: BTreeSet<Preparation>,
    /// Whether the dryer cannot run without heat: then no joint is opened to read.
    #[serde(default, skip_serializing_if = "super::document::is_not_so")]
    pub always_heats: bool,
    /// What was read, looked at and mended, in the order in which it was done.
    pub entries: Vec<Entry>,
    /// Pictures from before and after.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub pictures: Vec<VisitPicture>,
}

impl Plan {
    /// The visit called `id`; the newest where none is named, or where it is gone.
    pub fn visit_or_newest(&self, id: Option<&str>) -> Option<&Visit> {
        let mut visits = self.visits.iter();
        let named = id.and_then(|id| visits.find(|visit| &*visit.id == id));
        named.or_else(|| self.visits.last())
    }
}

/// One line of the list that is ticked before the first reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Preparation {
    /// The lint screen was cleaned.
    ScreenCleaned,
    /// The drum is empty.
    DrumEmpty,
    /// The dryer runs on a cycle without heat.
    NoHeatCycle,
    /// The gauge was set to nought with both sides open.
    GaugeZeroed,
}

impl Preparation {
    /// Every line, in the order of the list.
    pub const ALL: [Self; 4] = [
        Self::ScreenCleaned,
        Self::DrumEmpty,
        Self::NoHeatCycle,
        Self::GaugeZeroed,
    ];
}

/// Something done during a visit.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Entry {
    /// A gauge was read.
    Reading(Reading),
    /// A part was opened and looked into.
    Look(Look),
    /// Something was cleaned or mended.
    Done(Done),
}

/// A gauge's reading under stated conditions.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reading {
    /// Where.
    pub at: Spot,
    /// What it showed.
    pub measured: Measured,
    /// Under which conditions.
    pub conditions: Conditions,
}

/// What a gauge showed, with its resolution and how far off it may be either way.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Measured {
    /// Static pressure.
    StaticPressure {
        /// The reading.
        #[serde(rename = "pressure_pa")]
        pressure: Pressure,
        /// Where the gauge's other side is open to.
        against: Against,
        /// The gauge's last digit.
        #[serde(rename = "resolution_pa")]
        resolution: Pressure,
        /// How far off it may be.
        #[serde(rename = "tolerance_pa")]
        tolerance: Pressure,
    },
    /// Velocity by a vane or a hot wire.
    Velocity {
        /// The readings, one a point.
        #[serde(rename = "points_m_per_s")]
        points: Vec<Velocity>,
        /// Where in the duct they were taken.
        pattern: Pattern,
        /// The instrument's last digit.
        #[serde(rename = "resolution_m_per_s")]
        resolution: Velocity,
        /// How far off it may be.
        #[serde(rename = "tolerance_m_per_s")]
        tolerance: Velocity,
    },
    /// Velocity pressure by a pitot tube.
    VelocityPressure {
        /// The readings, one a point.
        #[serde(rename = "points_pa")]
        points: Vec<Pressure>,
        /// Where in the duct they were taken.
        pattern: Pattern,
        /// The gauge's last digit.
        #[serde(rename = "resolution_pa")]
        resolution: Pressure,
        /// How far off it may be.
        #[serde(rename = "tolerance_pa")]
        tolerance: Pressure,
    },
    /// Temperature of the air.
    Temperature {
        /// The reading.
        #[serde(rename = "temperature_degc")]
        temperature: Temperature,
        /// The thermometer's last digit.
        #[serde(rename = "resolution_k")]
        resolution: TemperatureDifference,
        /// How far off it may be.
        #[serde(rename = "tolerance_k")]
        tolerance: TemperatureDifference,
    },
}

source! {
    /// Of instruments whose own last digit and tolerance were not typed.
    pub static INSTRUMENT_SOURCE {
        title: "Our assumption for hand-held gauges, vanes and thermometers",
        edition: "2026",
        locator: "last digit and tolerance, until the instrument's own are typed",
        standing: Assumption,
    }
}

/// Last digit and tolerance that an instrument is taken to have until its own are typed.
impl Measured {
    /// Of a gauge, Pa. Source: [`INSTRUMENT_SOURCE`].
    pub const USUAL_PRESSURE: (f64, f64) = (1.0, 2.5);
    /// Of a vane or a hot wire, m/s. Source: [`INSTRUMENT_SOURCE`].
    pub const USUAL_VELOCITY: (f64, f64) = (0.1, 0.3);
    /// Of a thermometer, K. Source: [`INSTRUMENT_SOURCE`].
    pub const USUAL_TEMPERATURE: (f64, f64) = (0.1, 1.0);
}

/// What a pressure is read against.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Against {
    /// The room that the dryer stands in.
    Room,
    /// The open air.
    Outdoors,
}

/// Where in a duct velocities were read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Pattern {
    /// On the centre line, with ten diameters of straight before it.
    CentreLineAfterStraight,
    /// On the centre line.
    CentreLine,
    /// At the points of a traverse, or over the whole opening: their mean is the mean.
    Traverse,
}

/// The conditions of a reading.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[allow(
    clippy::struct_excessive_bools,
    reason = "each is a question with its own yes or no"
)]
#[serde(deny_unknown_fields)]
pub struct Conditions {
    /// Whether the dryer heated.
    pub heat: bool,
    /// Whether the lint screen was clean.
    pub lint_screen_clean: bool,
    /// Whether the drum was empty.
    pub drum_empty: bool,
    /// Whether the flap at the end was held open.
    pub flap_held: bool,
    /// Whether a door or window of the room stood open.
    pub door_open: bool,
    /// The joint that was open, so that the run ended there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub open_joint: Option<Spot>,
}

impl Conditions {
    /// A no-heat cycle with a clean screen, an empty drum and nothing open or held.
    pub const PLAIN: Self = Self {
        heat: false,
        lint_screen_clean: true,
        drum_empty: true,
        flap_held: false,
        door_open: false,
        open_joint: None,
    };
}

/// A look into a part.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Look {
    /// The part.
    #[serde(with = "super::element_key")]
    pub at: ElementId,
    /// What was seen.
    pub found: Found,
}

/// What a look showed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Found {
    /// Nothing in the way.
    Clear,
    /// Something in the way: lint, a crushed wall, a flap that hangs.
    Blocked,
}

/// Something cleaned or mended.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Done {
    /// What.
    pub what: super::Mended,
}

impl Visit {
    /// A visit without anything done yet.
    pub fn new(id: &str) -> Self {
        Self {
            id: id.into(),
            date: String::new(),
            note: String::new(),
            preparation: BTreeSet::new(),
            always_heats: false,
            entries: Vec::new(),
            pictures: Vec::new(),
        }
    }
}
