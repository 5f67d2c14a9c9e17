//! Things turned by a quarter or mirrored, about their common middle.

use super::change::{Changed, checked};
use super::snap::{along, as_exact_as, exact};
use crate::plan::{ObstacleKind, OutletSide, Plan, Point, ThingId};
use crate::report::words::Refusal;
use crate::units::Length;
use std::collections::BTreeSet;

/// How things are put another way round.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Turn {
    /// A quarter turn clockwise on the sheet.
    Quarter,
    /// Left and right change places.
    Mirror,
}

impl Turn {
    fn point(self, point: Point, about: Point) -> Point {
        let (dx, dy) = (point.x - about.x, point.y - about.y);
        let (dx, dy) = match self {
            Self::Quarter => (-dy, dx),
            Self::Mirror => (-dx, dy),
        };
        let (x, y) = (about.x + dx, about.y + dy);
        match self {
            Self::Quarter => Point::new(as_exact_as(point.y, x), as_exact_as(point.x, y)),
            Self::Mirror => Point::new(as_exact_as(point.x, x), as_exact_as(point.y, y)),
        }
    }

    /// A rectangle's new corner with the least x and y, and its new sides.
    fn rectangle(self, rectangle: Rectangle, about: Point) -> Rectangle {
        let Rectangle {
            corner,
            width,
            depth,
        } = rectangle;
        let far = Point::new(corner.x + width.metres(), corner.y + depth.metres());
        let (one, other) = (self.point(corner, about), self.point(far, about));
        let (width, depth) = match self {
            Self::Quarter => (depth, width),
            Self::Mirror => (width, depth),
        };
        Rectangle {
            corner: Point::new(one.x.min(other.x), one.y.min(other.y)),
            width,
            depth,
        }
    }
}

#[derive(Clone, Copy)]
struct Rectangle {
    corner: Point,
    width: Length,
    depth: Length,
}

/// Turns things about the middle of the rectangle that holds them. The picture stays: a floor plan is
/// turned before it is opened. An opening goes with its wall.
pub(super) fn turn(plan: &Plan, things: &BTreeSet<ThingId>, turn: Turn) -> Changed {
    let stays = |id: &ThingId| matches!(id, ThingId::Picture | ThingId::Opening(_));
    if things.iter().all(stays) {
        return Err(Refusal::NothingToTurn);
    }
    let about = super::change_things::middle(plan, things).ok_or(Refusal::NothingToTurn)?;
    // Figures are exact where the middle itself is.
    let about = Point::new(exact(about.x), exact(about.y));
    let mut turned = plan.clone();
    walls(&mut turned, things, turn, about);
    for obstacle in &mut turned.obstacles {
        if !things.contains(&ThingId::Obstacle(obstacle.id.clone())) {
            continue;
        }
        let new = turn.rectangle(
            Rectangle {
                corner: Point::new(obstacle.x_m, obstacle.y_m),
                width: obstacle.width,
                depth: obstacle.depth,
            },
            about,
        );
        (obstacle.x_m, obstacle.y_m) = (new.corner.x, new.corner.y);
        (obstacle.width, obstacle.depth) = (new.width, new.depth);
        if let (ObstacleKind::Framing { members, .. }, Turn::Quarter) = (&mut obstacle.kind, turn) {
            *members = members.turned();
        }
    }
    for zone in &mut turned.zones {
        if !things.contains(&ThingId::Zone(zone.id.clone())) {
            continue;
        }
        let new = turn.rectangle(
            Rectangle {
                corner: Point::new(zone.x_m, zone.y_m),
                width: zone.width,
                depth: zone.depth,
            },
            about,
        );
        (zone.x_m, zone.y_m) = (new.corner.x, new.corner.y);
        (zone.width, zone.depth) = (new.width, new.depth);
    }
    if things.contains(&ThingId::Dryer) {
        let dryer = &mut turned.dryer;
        let centre = turn.point(dryer.centre(), about);
        (dryer.x_m, dryer.y_m) = (centre.x, centre.y);
        match turn {
            Turn::Quarter => dryer.turned_deg = half_turn_at_most(dryer.turned_deg + 90.0),
            Turn::Mirror => {
                dryer.turned_deg = half_turn_at_most(-dryer.turned_deg);
                dryer.outlet_side = match dryer.outlet_side {
                    OutletSide::Back => OutletSide::Back,
                    OutletSide::Left => OutletSide::Right,
                    OutletSide::Right => OutletSide::Left,
                };
            }
        }
    }
    if things.contains(&ThingId::Run) {
        for point in &mut turned.run.points {
            point.position = turn.point(point.position, about);
        }
    }
    checked(turned)
}

fn walls(plan: &mut Plan, things: &BTreeSet<ThingId>, turn: Turn, about: Point) {
    for wall in &mut plan.walls {
        if !things.contains(&ThingId::Wall(wall.id.clone())) {
            continue;
        }
        let length = along(wall, wall.from()).map_or(0.0, |(.., length)| length);
        let (mut from, mut to) = (turn.point(wall.from(), about), turn.point(wall.to(), about));
        if turn == Turn::Mirror {
            // A door opens to the right of its wall's direction: run backward, it opens to the
            // mirrored side.
            core::mem::swap(&mut from, &mut to);
            for opening in plan.openings.iter_mut().filter(|it| it.wall == wall.id) {
                let offset = length - opening.offset.metres() - opening.width.metres();
                let offset = as_exact_as(opening.offset.metres(), offset.max(0.0));
                opening.offset = Length::from_metres(offset);
            }
        }
        (wall.from_x_m, wall.from_y_m) = (from.x, from.y);
        (wall.to_x_m, wall.to_y_m) = (to.x, to.y);
    }
}

/// The same turn between minus and plus 180 deg.
fn half_turn_at_most(degrees: f64) -> f64 {
    // One name for each turn: a half turn is plus 180.
    180.0 - (180.0 - degrees).rem_euclid(360.0)
}
