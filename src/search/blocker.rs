//! What a duct must keep clear of, as shapes with four corners.

use crate::plan::{
    Axis, Dryer, HALF_MEMBER, Level, Obstacle, ObstacleKind, Point, Zone, segment_distance,
};
use crate::units::Length;
use std::sync::Arc;

/// A shape with four corners in order.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Blocker {
    corners: [Point; 4],
    least: Point,
    greatest: Point,
}

impl Blocker {
    fn new(corners: [Point; 4]) -> Self {
        let mut blocker = Self {
            corners,
            least: corners[0],
            greatest: corners[0],
        };
        for corner in corners {
            blocker.least.x = blocker.least.x.min(corner.x);
            blocker.least.y = blocker.least.y.min(corner.y);
            blocker.greatest.x = blocker.greatest.x.max(corner.x);
            blocker.greatest.y = blocker.greatest.y.max(corner.y);
        }
        blocker
    }

    fn rectangle(x: f64, y: f64, width: f64, depth: f64) -> Self {
        Self::new([
            Point::new(x, y),
            Point::new(x + width, y),
            Point::new(x + width, y + depth),
            Point::new(x, y + depth),
        ])
    }

    /// The shapes of an obstacle: its own, or one for each member of framing.
    pub(super) fn of_obstacle(obstacle: &Obstacle) -> Vec<Self> {
        let (x, y) = (obstacle.x_m, obstacle.y_m);
        let (width, depth) = (obstacle.width.metres(), obstacle.depth.metres());
        let ObstacleKind::Framing { members, .. } = obstacle.kind else {
            return vec![Self::rectangle(x, y, width, depth)];
        };
        let thick = 2.0 * HALF_MEMBER;
        let member = |at: f64| match members {
            Axis::AlongX => {
                Self::rectangle(x - HALF_MEMBER, at - HALF_MEMBER, width + thick, thick)
            }
            Axis::AlongY => {
                Self::rectangle(at - HALF_MEMBER, y - HALF_MEMBER, thick, depth + thick)
            }
        };
        obstacle.members().into_iter().map(member).collect()
    }

    /// The dryer's own body.
    pub(super) fn of_dryer(dryer: &Dryer) -> Self {
        let back = dryer.back_heading();
        let (deep, wide) = (dryer.depth / 2.0, dryer.width / 2.0);
        let corner = |ahead: Length, aside: Length| {
            let middle = dryer.centre().toward(back, ahead);
            middle.toward(back.right(), aside)
        };
        Self::new([
            corner(deep, -wide),
            corner(deep, wide),
            corner(-deep, wide),
            corner(-deep, -wide),
        ])
    }

    /// The shape's four sides.
    pub(super) fn sides(&self) -> [(Point, Point); 4] {
        let at = |side: usize| self.corners[side % 4];
        core::array::from_fn(|side| (at(side), at(side + 1)))
    }

    /// Whether the segment from `a` to `b` comes nearer than `reach`, m.
    pub(super) fn is_nearer(&self, a: Point, b: Point, reach: f64) -> bool {
        let apart = a.x.min(b.x) - self.greatest.x >= reach
            || self.least.x - a.x.max(b.x) >= reach
            || a.y.min(b.y) - self.greatest.y >= reach
            || self.least.y - a.y.max(b.y) >= reach;
        !apart && self.distance(a, b) < reach
    }

    fn distance(&self, a: Point, b: Point) -> f64 {
        if self.holds(a) || self.holds(b) {
            return 0.0;
        }
        (0..4)
            .map(|side| segment_distance(a, b, self.corners[side], self.corners[(side + 1) % 4]))
            .fold(f64::INFINITY, f64::min)
    }

    fn holds(&self, point: Point) -> bool {
        let sides = (0..4).map(|side| {
            let (from, to) = (self.corners[side], self.corners[(side + 1) % 4]);
            (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x)
        });
        sides.clone().all(|side| side >= 0.0) || sides.into_iter().all(|side| side <= 0.0)
    }
}

/// The obstacles' shapes on one level, each with its obstacle's place in the plan.
pub(super) fn on_level(
    obstacles: &[Obstacle],
    level: Level,
) -> impl Iterator<Item = (Option<usize>, Blocker)> + '_ {
    let there = obstacles.iter().enumerate();
    let there = there.filter(move |(_, obstacle)| obstacle.level == level);
    there.flat_map(|(index, obstacle)| {
        let shapes = Blocker::of_obstacle(obstacle).into_iter();
        shapes.map(move |shape| (Some(index), shape))
    })
}

/// The shapes on one level of those zones whose ids are among `closed`.
pub(super) fn in_zones(zones: &[Zone], closed: &[Arc<str>], level: Level) -> Vec<Blocker> {
    let there = zones
        .iter()
        .filter(|zone| zone.level == level && closed.contains(&zone.id));
    let shape = |zone: &Zone| {
        Blocker::rectangle(zone.x_m, zone.y_m, zone.width.metres(), zone.depth.metres())
    };
    there.map(shape).collect()
}
