//! The keys of what is said of suggested runs.

use crate::plan::OutletSide;
use crate::units::{Length, Pressure};

/// A text about suggested runs.
#[derive(Debug, Clone, PartialEq)]
pub enum RerouteText {
    /// The panel's heading.
    Heading,
    /// What the search does.
    Explanation,
    /// Start it.
    Start,
    /// Stop it.
    Stop,
    /// How far it is.
    Progress {
        /// Stages done.
        done: usize,
        /// Of so many.
        of: usize,
        /// Partial routes looked at.
        looked_at: usize,
    },
    /// It is over, with so many suggestions.
    Finished(usize),
    /// It stopped before all was looked at, with so many suggestions.
    FinishedEarly(usize),
    /// Show it on the drawing.
    Show,
    /// Put it in place.
    Take,
    /// A column of figures.
    Present,
    /// A column of figures.
    Suggested,
    /// A row of figures.
    Parts,
    /// The run is laid anew, through a wall or with false through the roof.
    NewRoute(bool),
    /// The outlet goes to another side.
    OutletSide(OutletSide),
    /// The dryer is turned, deg clockwise.
    TurnDryer(f64),
    /// An elbow gets a longer radius.
    LongRadius(Length),
    /// Two 45s for a 90, so far off the corner.
    TwoFortyFives(Length),
    /// Rigid for flexible duct.
    RigidForFlexible,
    /// A step aside is left out.
    DropOffset {
        /// How far it led.
        aside: Length,
        /// Whether the hood moves along its wall.
        moves_hood: bool,
    },
    /// Why it helps.
    Why {
        /// Bends before and after.
        bends: (usize, usize),
        /// Straights and arcs before and after.
        length: (Length, Length),
    },
    /// The gain's band, and whether it is larger than its doubt.
    Gain {
        /// 10th and 90th percentile.
        band: (Pressure, Pressure),
        /// Whether it is larger than its doubt.
        is_larger_than_its_doubt: bool,
    },
    /// No other route, what stands in the way, and without what the best would open.
    Blocked {
        /// Names.
        by: Vec<String>,
        /// The one, and the back pressure of the route that it would open.
        opens: Option<(String, Pressure)>,
    },
}
