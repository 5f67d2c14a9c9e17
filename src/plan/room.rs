//! The document's room: walls, openings, what stands in the way, zones and a picture to trace.

use super::Point;
use crate::units::{Length, Temperature};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

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

/// A window, a door or an air intake in a wall.
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
    /// An opening by which the building draws air.
    AirIntake,
}

/// Something that takes up room.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Obstacle {
    /// Its id.
    pub id: Arc<str>,
    /// What it is called.
    pub name: String,
    /// What it is.
    #[serde(default, skip_serializing_if = "ObstacleKind::is_default")]
    pub kind: ObstacleKind,
    /// The level that it is on.
    #[serde(default, skip_serializing_if = "Level::is_default")]
    pub level: Level,
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

impl Obstacle {
    /// Where the centre lines of framing's members lie across them, m; the first is at its edge.
    /// Empty for what is no framing.
    pub fn members(&self) -> Vec<f64> {
        /// More members than this are not told one from another.
        const MOST: usize = 200;
        /// The last digit of a sum is no reason to lose a member, m. Of the computation.
        const ROUNDING: f64 = 1e-9;
        let ObstacleKind::Framing { members, spacing } = self.kind else {
            return Vec::new();
        };
        let (start, across) = match members {
            Axis::AlongX => (self.y_m, self.depth.metres()),
            Axis::AlongY => (self.x_m, self.width.metres()),
        };
        let mut found = Vec::new();
        let mut at = start;
        while at <= start + across + ROUNDING && found.len() < MOST {
            found.push(at);
            at += spacing.metres();
        }
        found
    }
}

/// Kinds of obstacles.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum ObstacleKind {
    /// A place that no run may pass.
    #[default]
    ClosedArea,
    /// A cabinet.
    Cabinet,
    /// A beam.
    Beam,
    /// A plumbing stack or another pipe.
    Stack,
    /// Studs or joists: a run may pass between two of them, never across.
    Framing {
        /// The way that the members run.
        members: Axis,
        /// From centre to centre of two members.
        #[serde(rename = "spacing_m")]
        spacing: Length,
    },
}

impl ObstacleKind {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    fn is_default(&self) -> bool {
        *self == Self::default()
    }
}

/// A direction along one of the sheet's sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Axis {
    /// To the right of the sheet.
    AlongX,
    /// Toward the foot of the sheet.
    AlongY,
}

impl Axis {
    /// The other one.
    pub const fn turned(self) -> Self {
        match self {
            Self::AlongX => Self::AlongY,
            Self::AlongY => Self::AlongX,
        }
    }
}

/// The levels of a house that a run passes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// Under the floor.
    CrawlSpace,
    /// The room, from floor to ceiling.
    #[default]
    Room,
    /// Over the ceiling.
    CeilingSpace,
}

impl Level {
    #[allow(clippy::trivially_copy_pass_by_ref, reason = "serde asks for it")]
    fn is_default(&self) -> bool {
        *self == Self::default()
    }
}

/// A part of the sheet with a temperature of its own.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Zone {
    /// Its id.
    pub id: Arc<str>,
    /// What it is.
    pub kind: ZoneKind,
    /// The level that it is on.
    #[serde(default, skip_serializing_if = "Level::is_default")]
    pub level: Level,
    /// Its air's temperature.
    #[serde(rename = "temperature_degc")]
    pub temperature: Temperature,
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

/// Kinds of zones.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ZoneKind {
    /// Heated rooms.
    Heated,
    /// A garage.
    Garage,
    /// An attic.
    Attic,
    /// A crawl space.
    CrawlSpace,
    /// Outdoors.
    Outdoors,
}

/// A floor plan's picture under the drawing, to trace over.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Picture {
    /// How it is coded.
    pub coding: PictureCoding,
    /// Its bytes in Base64 (RFC 4648, section 4).
    pub data_base64: Arc<str>,
    /// Its top left corner, m.
    pub x_m: f64,
    /// Its top left corner, m.
    pub y_m: f64,
    /// How wide it lies on the plan.
    #[serde(rename = "width_m")]
    pub width: Length,
    /// How deep it lies on the plan.
    #[serde(rename = "depth_m")]
    pub depth: Length,
}

/// Codings of pictures that every browser shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PictureCoding {
    /// PNG.
    Png,
    /// JPEG.
    Jpeg,
    /// WebP.
    Webp,
}

impl PictureCoding {
    /// Its media type.
    pub const fn media_type(self) -> &'static str {
        match self {
            Self::Png => "image/png",
            Self::Jpeg => "image/jpeg",
            Self::Webp => "image/webp",
        }
    }
}
