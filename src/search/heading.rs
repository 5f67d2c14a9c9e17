//! The eight ways that a leg may go on the sheet.

use crate::plan::Heading;

/// How many there are.
pub(super) const HEADINGS: usize = 8;

/// One of the eight, clockwise from the right of the sheet; even ones lie along its sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Way(pub u8);

impl Way {
    pub(super) fn all() -> impl Iterator<Item = Self> {
        (0_u8..8).map(Self)
    }

    /// The steps along x and y: -1, 0 or 1.
    pub(super) fn steps(self) -> (i32, i32) {
        [
            (1, 0),
            (1, 1),
            (0, 1),
            (-1, 1),
            (-1, 0),
            (-1, -1),
            (0, -1),
            (1, -1),
        ][usize::from(self.0 % 8)]
    }

    pub(super) fn is_diagonal(self) -> bool {
        self.0 % 2 == 1
    }

    pub(super) fn heading(self) -> Heading {
        let (x, y) = self.steps();
        let length = f64::from(x).hypot(f64::from(y));
        Heading {
            x: f64::from(x) / length,
            y: f64::from(y) / length,
        }
    }

    /// The way that `heading` is, to a hundredth of a degree; none between two of them.
    pub(super) fn of(heading: Heading) -> Option<Self> {
        Self::all().find(|way| way.heading().turn_to(heading).degrees() < 0.01)
    }

    /// The ways that an elbow of 45 or 90 deg leads to; with each, whether it is a 90.
    pub(super) fn turns(self) -> [(Self, bool); 4] {
        let turned = |by: u8| Self((self.0 + by) % 8);
        [
            (turned(1), false),
            (turned(7), false),
            (turned(2), true),
            (turned(6), true),
        ]
    }
}
