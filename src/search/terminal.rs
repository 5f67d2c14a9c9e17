//! Where a run may end: through an outside wall, square to it, or up through the roof.

use super::heading::Way;
use crate::plan::{Plan, Point, RunPath, Wall};
use crate::rules::too_near;
use crate::units::Length;

/// What a run ends in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum End {
    /// A wall, by its place in the plan.
    Wall(usize),
    /// The roof.
    Roof,
}

/// An end of a run: on the outer face of a wall, or under a cap.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Terminal {
    pub point: Point,
    pub end: End,
}

/// A wall is along a side of the sheet where it strays less than this from it, m.
/// Of the computation.
const STRAIGHT: f64 = 1e-6;

/// Whether a wall lies along x; none where it lies askew or has no length.
pub(super) fn along_x(wall: &Wall) -> Option<bool> {
    let (dx, dy) = (wall.to_x_m - wall.from_x_m, wall.to_y_m - wall.from_y_m);
    match (dx.abs() > STRAIGHT, dy.abs() > STRAIGHT) {
        (true, false) => Some(true),
        (false, true) => Some(false),
        _ => None,
    }
}

/// Whether a way is square to a wall.
pub(super) fn is_square(way: Way, wall: &Wall) -> bool {
    /// The cosine of the angle between the two. Of the computation.
    const SQUARE: f64 = 1e-6;
    let own = way.heading();
    let along = wall.from().heading_to(wall.to());
    along.is_some_and(|along| (own.x * along.x + own.y * along.y).abs() < SQUARE)
}

/// Whether one of the eight ways is square to an outside wall.
pub(super) fn can_be_left_by(wall: &Wall) -> bool {
    wall.outside && Way::all().any(|way| is_square(way, wall))
}

/// The end that a leg from `from` comes to on `way`, at the first outside wall ahead of it that lies
/// square to it; none where no end is allowed there. `reach` is kept from the wall's own ends.
pub(super) fn ahead(
    plan: &Plan,
    from: Point,
    way: Way,
    height: Length,
    reach: f64,
) -> Option<Terminal> {
    let own = way.heading();
    let walls = plan.walls.iter().enumerate();
    let ahead = walls
        .filter(|(_, wall)| wall.outside && is_square(way, wall))
        .filter_map(|(index, wall)| {
            let along = wall.from().heading_to(wall.to())?;
            let (right, down) = (wall.from_x_m - from.x, wall.from_y_m - from.y);
            let distance = right * own.x + down * own.y;
            let at = -(right * along.x + down * along.y);
            let length = wall.from().distance(wall.to()).metres();
            let holds = (reach..=length - reach).contains(&at);
            (holds && distance > 0.0).then_some((distance, index, wall))
        });
    let (distance, index, wall) = ahead.min_by(|one, other| one.0.total_cmp(&other.0))?;
    let length = Length::from_metres(distance) + wall.thickness / 2.0;
    let point = from.toward(own, length);
    let is_here = !plan.is_indoors(point, height) && is_off_openings(plan, point);
    is_here.then_some(Terminal {
        point,
        end: End::Wall(index),
    })
}

/// Whether a run may end where the path of `plan` does: far enough from openings, and in no drawn
/// space of the building unless it goes up through the roof.
pub(super) fn is_allowed(plan: &Plan, path: &RunPath) -> bool {
    let (point, faces) = path.end;
    let height = plan.dryer.outlet_height + path.rise;
    (faces.is_none() || !plan.is_indoors(point, height)) && too_near(plan, path).is_empty()
}

/// Whether an end at `point` is far enough from every opening.
pub(super) fn is_off_openings(plan: &Plan, point: Point) -> bool {
    let end = RunPath {
        pieces: Vec::new(),
        rise: Length::ZERO,
        end: (point, None),
        coinciding: Vec::new(),
    };
    too_near(plan, &end).is_empty()
}
