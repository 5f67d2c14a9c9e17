//! The core's part of a pointer move: the editor's step, the figures and the marks of the new plan.

use crate::twenty;
use elbowroom::editor::{Action, State, update};
use elbowroom::plan::Point;
use elbowroom::report::{Figures, figures};
use elbowroom::scene::{Mark, scene};
use std::f64::consts::TAU;

/// Where the corner that is dragged stands in `twenty.json`.
const CORNER: Point = Point { x: 5.4, y: 4.2 };
/// The circle that it is dragged round, clear of every line that would catch it: m.
const CENTRE: Point = Point { x: 6.0, y: 4.9 };
const RADIUS: f64 = 0.3;
/// A move of 3 cm, as a hand makes it in a frame.
const MOVES_ROUND: u32 = 63;
/// How near a line catches the corner at the page's usual zoom, m.
const REACH: f64 = 0.1;

/// A drag under way.
pub struct CornerDrag {
    state: State,
    moves: u32,
}

impl CornerDrag {
    /// The corner pressed.
    pub fn begin() -> Self {
        let mut state = State::new(twenty::plan());
        update(
            &mut state,
            Action::Press {
                at: CORNER,
                reach: REACH,
                adds: false,
            },
        );
        assert!(state.gesture.is_some(), "the corner is under the pointer");
        Self { state, moves: 0 }
    }

    /// The next move, and all that is worked out from it.
    pub fn next(&mut self) -> (Figures, Vec<Mark>) {
        self.moves = (self.moves + 1) % MOVES_ROUND;
        let angle = TAU * f64::from(self.moves) / f64::from(MOVES_ROUND);
        let to = Point::new(
            CENTRE.x + RADIUS * angle.cos(),
            CENTRE.y + RADIUS * angle.sin(),
        );
        update(&mut self.state, Action::Drag { to, reach: REACH });
        let (figures, assessment) = figures(&self.state.plan);
        let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
        let marks = scene(&self.state.plan, ledger);
        (figures, marks)
    }
}
