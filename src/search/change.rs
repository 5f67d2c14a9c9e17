//! What a suggestion changes: message keys with their arguments.

use crate::plan::OutletSide;
use crate::units::{Angle, Length};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// What a suggestion changes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Change {
    /// Another way through the room, in rigid duct, to a wall by its id or with none to the roof.
    NewRoute {
        /// The wall.
        wall: Option<Arc<str>>,
        /// How far the end moves.
        #[serde(rename = "end_moves_m")]
        end_moves: Length,
    },
    /// The outlet at another side of the dryer.
    OutletSide {
        /// The side.
        side: OutletSide,
    },
    /// The dryer turned clockwise about its middle.
    TurnDryer {
        /// By so much.
        #[serde(rename = "turn_rad")]
        turn: Angle,
    },
    /// The dryer moved aside, so that two elbows go.
    MoveDryer {
        /// By so much.
        #[serde(rename = "by_m")]
        by: Length,
    },
    /// The dryer moved the way that its outlet faces, so that its transition duct is shorter.
    ShorterTransition {
        /// By so much.
        #[serde(rename = "by_m")]
        by: Length,
    },
    /// Smooth elbows of a long radius for others.
    LongRadius {
        /// Which, counted from the dryer.
        bends: Vec<usize>,
        /// Their radius.
        #[serde(rename = "radius_m")]
        radius: Length,
    },
    /// Two elbows of 45 deg for one of 90.
    TwoFortyFives {
        /// Which, counted from the dryer.
        bends: Vec<usize>,
        /// From the old corner to each of the new ones; of several the shortest.
        #[serde(rename = "off_m")]
        off: Length,
    },
    /// Rigid duct for flexible.
    Rigid {
        /// Which legs, counted from the dryer.
        legs: Vec<usize>,
    },
    /// Two elbows that lead aside and back left out; what follows moves over.
    DropOffset {
        /// The first of the two, counted from the dryer.
        bend: usize,
        /// How far the run led aside.
        #[serde(rename = "aside_m")]
        aside: Length,
        /// Whether the hood moves along its wall.
        moves_hood: bool,
    },
    /// A needless corner left out.
    DropCorner {
        /// Which bend, counted from the dryer.
        bend: usize,
    },
}
