//! What a press on the drawing does.

use crate::plan::{ObstacleKind, OpeningKind, ZoneKind};

/// The tool in hand.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub enum Tool {
    /// Selects and drags what is there.
    #[default]
    Pick,
    /// Puts what is selected where the next press is.
    Place,
    /// Draws walls, one from the end of the other.
    Wall {
        /// Whether outdoors is on their other side.
        outside: bool,
    },
    /// Puts an opening into the wall that is pressed.
    Opening(OpeningKind),
    /// Draws an obstacle from corner to corner.
    Obstacle(ObstacleKind),
    /// Draws a zone from corner to corner.
    Zone(ZoneKind),
    /// Draws the run from the dryer's outlet, leg by leg.
    Run,
    /// Measures a distance on the picture whose true length is typed next.
    Scale,
}

impl Tool {
    /// Whether it draws from one point to another.
    pub const fn has_pen(self) -> bool {
        matches!(
            self,
            Self::Wall { .. } | Self::Obstacle(_) | Self::Zone(_) | Self::Run | Self::Scale
        )
    }

    /// Whether each line that it draws begins where the last one ended.
    pub const fn chains(self) -> bool {
        matches!(self, Self::Wall { .. } | Self::Run)
    }
}

/// What is being drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pen {
    /// Where it begins.
    pub from: crate::plan::Point,
    /// Where it would end.
    pub to: crate::plan::Point,
    /// Whether the press that began it is still down.
    pub begins: bool,
    /// Whether its second point is set and its length is waited for.
    pub set: bool,
    /// Whether a run begins with it, in place of the one that is there.
    pub fresh: bool,
}

impl Pen {
    /// A pen put down at a point.
    pub const fn at(from: crate::plan::Point) -> Self {
        Self {
            from,
            to: from,
            begins: false,
            set: false,
            fresh: false,
        }
    }
}
