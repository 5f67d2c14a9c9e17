//! What stands in the way, each kind with a look of its own.

use super::room::{line, mark, rectangle};
use super::{Mark, Role, Shape, Text};
use crate::plan::{Axis, Heading, Level, Obstacle, ObstacleKind, Point, ThingId};
use crate::units::Length;

pub(super) fn draw(obstacle: &Obstacle, marks: &mut Vec<Mark>) {
    let thing = ThingId::Obstacle(obstacle.id.clone());
    let corner = Point::new(obstacle.x_m, obstacle.y_m);
    let outline = rectangle(corner, obstacle.width, obstacle.depth);
    let role = if obstacle.level == Level::Room {
        Role::Obstacle
    } else {
        Role::ObstacleElsewhere
    };
    let middle = Point::new(
        corner.x + obstacle.width.metres() / 2.0,
        corner.y + obstacle.depth.metres() / 2.0,
    );
    let mut add = |part: &str, role: Role, shape: Shape| {
        marks.push(mark(&thing, part, role, shape, Length::ZERO));
    };
    add("", role.clone(), outline);
    match obstacle.kind {
        ObstacleKind::ClosedArea | ObstacleKind::Cabinet => {}
        ObstacleKind::Stack => {
            let lesser = if obstacle.width < obstacle.depth {
                obstacle.width
            } else {
                obstacle.depth
            };
            let pipe = Shape::Circle {
                centre: middle,
                radius: lesser * 0.4,
            };
            add(":pipe", role, pipe);
        }
        ObstacleKind::Beam => {
            let (width, depth) = (obstacle.width.metres(), obstacle.depth.metres());
            let along = if width > depth {
                line(
                    Point::new(corner.x, middle.y),
                    Point::new(corner.x + width, middle.y),
                )
            } else {
                line(
                    Point::new(middle.x, corner.y),
                    Point::new(middle.x, corner.y + depth),
                )
            };
            add(":centre", role, along);
        }
        ObstacleKind::Framing { members, .. } => {
            for (index, at) in obstacle.members().into_iter().enumerate() {
                let (width, depth) = (obstacle.width.metres(), obstacle.depth.metres());
                let shape = match members {
                    Axis::AlongX => {
                        line(Point::new(corner.x, at), Point::new(corner.x + width, at))
                    }
                    Axis::AlongY => {
                        line(Point::new(at, corner.y), Point::new(at, corner.y + depth))
                    }
                };
                add(&format!(":member{index}"), Role::Framing, shape);
            }
        }
    }
    let text = if obstacle.name.is_empty() {
        Text::Obstacle(obstacle.kind)
    } else {
        Text::Name(obstacle.name.clone())
    };
    // What a run may cross is named at its foot, clear of the run's lengths and of a zone's name.
    let is_crossed = match obstacle.kind {
        ObstacleKind::Framing { .. } => true,
        ObstacleKind::Beam => obstacle.depth > obstacle.width,
        _ => false,
    };
    let foot = Point::new(middle.x, corner.y + obstacle.depth.metres());
    let (at, aside) = if is_crossed {
        (foot, Some(Heading::UP))
    } else {
        (middle, None)
    };
    let name = Shape::Text { at, aside, text };
    add(":name", Role::Label, name);
}
