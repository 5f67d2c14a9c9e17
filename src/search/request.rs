//! What a search is asked.

use crate::plan::{Elbow, Plan};
use crate::units::Length;
use serde::{Deserialize, Serialize};

/// A plan whose run is to be bettered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Request {
    /// The plan with its present run.
    pub plan: Plan,
    /// How to go about it.
    pub options: Options,
}

/// How to go about a search.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Options {
    /// Left free between the duct's outside and what it passes.
    #[serde(rename = "clearance_m")]
    pub clearance: Length,
    /// The elbow of new routes; none for that of the present run.
    pub elbow: Option<Elbow>,
    /// The most bends that a new route has.
    pub most_bends: u8,
    /// After so many partial routes from one place of the outlet the search stops, and says so: the
    /// shortest were looked at first.
    pub most_partial_routes: usize,
    /// Over how many tracks a diagonal goes at most.
    pub diagonal_tracks: usize,
    /// Whether the dryer's outlet may go to another side.
    pub other_outlet_sides: bool,
    /// Whether the dryer may turn by quarters where it has room.
    pub turned_dryer: bool,
    /// Height of a cap on the roof above the floor; none where no run may go there.
    #[serde(rename = "roof_height_m")]
    pub roof_height: Option<Length>,
    /// The lines on which new routes lie; none for those that the drawing gives.
    pub tracks: Option<Tracks>,
}

/// A quarter of an inch between duct and obstacle. Assumption. Source: [`ROUTE_SOURCE`].
const CLEARANCE: Length = Length::from_inches(0.25);

impl Default for Options {
    fn default() -> Self {
        Self {
            clearance: CLEARANCE,
            elbow: None,
            most_bends: 6,
            most_partial_routes: 2_000_000,
            diagonal_tracks: 3,
            other_outlet_sides: true,
            turned_dryer: false,
            roof_height: None,
            tracks: None,
        }
    }
}

/// The lines on which routes lie: any x with any y at any height is a station.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Tracks {
    /// Lines along y, m, rising.
    pub x_m: Vec<f64>,
    /// Lines along x, m, rising.
    pub y_m: Vec<f64>,
    /// Heights above the floor, m, rising.
    pub height_m: Vec<f64>,
}
