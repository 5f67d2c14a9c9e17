//! Points and headings on the sheet.

use crate::units::{Angle, Length};

/// A point of the plan: x to the right of the sheet, y toward its foot.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Point {
    /// To the right, m.
    pub x: f64,
    /// Toward the foot of the sheet, m.
    pub y: f64,
}

impl Point {
    /// A point from its two coordinates, m.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The distance to `other`.
    pub fn distance(self, other: Self) -> Length {
        Length::from_metres((other.x - self.x).hypot(other.y - self.y))
    }

    /// The point `distance` away along `heading`.
    pub fn toward(self, heading: Heading, distance: Length) -> Self {
        Self::new(
            self.x + heading.x * distance.metres(),
            self.y + heading.y * distance.metres(),
        )
    }

    /// The point halfway to `other`.
    pub fn halfway(self, other: Self) -> Self {
        Self::new(
            f64::midpoint(self.x, other.x),
            f64::midpoint(self.y, other.y),
        )
    }

    /// The least distance to the segment between two points.
    pub fn distance_to_segment(self, from: Self, to: Self) -> Length {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let squared = dx * dx + dy * dy;
        let along = if squared > 0.0 {
            (((self.x - from.x) * dx + (self.y - from.y) * dy) / squared).clamp(0.0, 1.0)
        } else {
            0.0
        };
        let (off_x, off_y) = (from.x + along * dx - self.x, from.y + along * dy - self.y);
        // Not `hypot`: it guards against lengths that no plan has, at ten times the price, and a
        // drag asks for thousands of these.
        Length::from_metres((off_x * off_x + off_y * off_y).sqrt())
    }

    /// The heading to `other`; none where the two points are one.
    pub fn heading_to(self, other: Self) -> Option<Heading> {
        /// Closer than this, m, two points give no heading. Of the computation.
        const SAME_POINT: f64 = 1e-9;
        let (dx, dy) = (other.x - self.x, other.y - self.y);
        let distance = dx.hypot(dy);
        (distance > SAME_POINT).then(|| Heading {
            x: dx / distance,
            y: dy / distance,
        })
    }
}

/// A direction in the plane, as a vector of length one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heading {
    /// Share to the right.
    pub x: f64,
    /// Share toward the foot of the sheet.
    pub y: f64,
}

impl Heading {
    /// To the right of the sheet.
    pub const RIGHT: Self = Self { x: 1.0, y: 0.0 };
    /// Toward the foot of the sheet.
    pub const DOWN: Self = Self { x: 0.0, y: 1.0 };
    /// To the left of the sheet.
    pub const LEFT: Self = Self { x: -1.0, y: 0.0 };
    /// Toward the top of the sheet.
    pub const UP: Self = Self { x: 0.0, y: -1.0 };

    /// The heading `turned` clockwise (as seen on the sheet) from the top of the sheet.
    pub fn clockwise_from_top(turned: Angle) -> Self {
        let (sine, cosine) = turned.radians().sin_cos();
        Self {
            x: sine,
            y: -cosine,
        }
    }

    /// The turn from this heading to `other`, 0..180 deg, whichever way round.
    pub fn turn_to(self, other: Self) -> Angle {
        Angle::from_radians(self.cross(other).abs().atan2(self.dot(other)))
    }

    /// The heading a quarter turn clockwise.
    pub fn right(self) -> Self {
        Self {
            x: -self.y,
            y: self.x,
        }
    }

    /// The opposite heading.
    pub fn back(self) -> Self {
        Self {
            x: -self.x,
            y: -self.y,
        }
    }

    /// Positive when `other` lies clockwise of this heading.
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }
}
