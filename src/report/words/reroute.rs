//! The keys of what is said of suggested runs.

use crate::plan::{OutletSide, ZoneKind};
use crate::units::{Airflow, Angle, Length, Pressure};

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
    /// What searches has died.
    NoAnswer,
    /// It is over, with so many suggestions.
    Finished(usize),
    /// It stopped before all was looked at, with so many suggestions.
    FinishedEarly(usize),
    /// The best new route was proved to be the best on the lines of the search; whether the plan's air
    /// cools on its way, which the proof leaves out.
    Proven {
        /// Whether it does.
        cools: bool,
    },
    /// The present run has no room where it is drawn.
    PresentHasNoRoom,
    /// A choice: the outlet may go to another side.
    AllowOtherSides,
    /// A choice: the dryer may be moved and turned.
    AllowMovedDryer,
    /// A choice: no leg may pass this zone.
    CloseZone(ZoneKind),
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
    /// The run is laid anew.
    NewRoute {
        /// Through a wall, or with false through the roof.
        through_wall: bool,
        /// How far its end moves.
        end_moves: Length,
    },
    /// The outlet goes to another side.
    OutletSide(OutletSide),
    /// The dryer is turned clockwise.
    TurnDryer(Angle),
    /// The dryer is moved aside.
    MoveDryer(Length),
    /// The dryer is moved so that the transition duct is shorter.
    ShorterTransition(Length),
    /// Bends get a longer radius.
    LongRadius {
        /// Their numbers, counted from the dryer.
        bends: Vec<usize>,
        /// The radius.
        radius: Length,
    },
    /// Two 45s for a 90.
    TwoFortyFives {
        /// The numbers of the bends, counted from the dryer.
        bends: Vec<usize>,
        /// How far off the corner.
        off: Length,
    },
    /// Rigid for flexible duct, by the legs' numbers.
    Rigid(Vec<usize>),
    /// A step aside is left out.
    DropOffset {
        /// The number of its first bend.
        bend: usize,
        /// How far it led.
        aside: Length,
        /// Whether the hood moves along its wall.
        moves_hood: bool,
    },
    /// A corner is left out, by its number.
    DropCorner(usize),
    /// Why it helps.
    Why {
        /// Bends before and after.
        bends: (usize, usize),
        /// Straights and arcs before and after.
        length: (Length, Length),
    },
    /// The band of what the back pressure falls by, and whether the gain is larger than its doubt.
    Gain {
        /// 10th and 90th percentile.
        band: (Pressure, Pressure),
        /// Whether it is larger than its doubt.
        is_larger_than_its_doubt: bool,
    },
    /// The back pressure rises by so much; the code length falls.
    ShorterByCode {
        /// 10th and 90th percentile of the rise.
        band: (Pressure, Pressure),
        /// The code length falls by so much.
        shorter: Length,
    },
    /// No other route: why, what stands in the way, and without what the best would open.
    Blocked {
        /// Whether there is no wall to go out through.
        has_no_way_out: bool,
        /// Names.
        by: Vec<String>,
        /// The one, and the airflow of the route that it would open.
        opens: Option<(String, Airflow)>,
    },
}
