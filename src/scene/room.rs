//! The room: walls, openings, obstacles and the dryer.

use super::{Mark, Role, Shape, Step, Text};
use crate::plan::{Dryer, Heading, Obstacle, Opening, OpeningKind, Plan, Point, Wall};
use crate::units::Length;

pub(super) fn draw(plan: &Plan, marks: &mut Vec<Mark>) {
    // Outside walls run through at the corners.
    for outside in [false, true] {
        for wall in plan.walls.iter().filter(|wall| wall.outside == outside) {
            draw_wall(wall, marks);
        }
    }
    for opening in &plan.openings {
        if let Some(wall) = plan.walls.iter().find(|wall| wall.id == opening.wall) {
            draw_opening(opening, wall, marks);
        }
    }
    for obstacle in &plan.obstacles {
        draw_obstacle(obstacle, marks);
    }
    draw_dryer(&plan.dryer, marks);
}

fn mark(id: String, role: Role, shape: Shape, width: Length) -> Mark {
    Mark {
        id,
        role,
        shape,
        width,
        weight: 0.0,
        element: None,
    }
}

fn line(from: Point, to: Point) -> Shape {
    Shape::Path(vec![Step::Move(from), Step::Line(to)])
}

fn polygon(corners: [Point; 4]) -> Shape {
    let [first, rest @ ..] = corners;
    let mut steps = vec![Step::Move(first)];
    steps.extend(rest.map(Step::Line));
    steps.push(Step::Close);
    Shape::Path(steps)
}

fn draw_wall(wall: &Wall, marks: &mut Vec<Mark>) {
    let role = if wall.outside {
        Role::OutsideWall
    } else {
        Role::InsideWall
    };
    let (from, to) = (wall.from(), wall.to());
    // Walls meet at their centre lines: each end runs on by half its thickness to close the corner.
    let (from, to) = match from.heading_to(to) {
        None => (from, to),
        Some(along) => {
            let half = wall.thickness / 2.0;
            (from.toward(along, -half), to.toward(along, half))
        }
    };
    marks.push(mark(
        format!("wall:{}", wall.id),
        role,
        line(from, to),
        wall.thickness,
    ));
}

fn draw_opening(opening: &Opening, wall: &Wall, marks: &mut Vec<Mark>) {
    let Some(along) = wall.from().heading_to(wall.to()) else {
        return;
    };
    let near = wall.from().toward(along, opening.offset);
    let far = near.toward(along, opening.width);
    let half = wall.thickness / 2.0;
    let across = along.right();
    let jambs = [
        near.toward(across, -half),
        far.toward(across, -half),
        far.toward(across, half),
        near.toward(across, half),
    ];
    let id = format!("opening:{}", opening.id);
    match opening.kind {
        OpeningKind::Window => {
            marks.push(mark(id.clone(), Role::Window, polygon(jambs), Length::ZERO));
            marks.push(mark(
                format!("{id}:glass"),
                Role::Window,
                line(near, far),
                Length::ZERO,
            ));
        }
        OpeningKind::Door => {
            let leaf = near.toward(across, opening.width);
            let swing = vec![
                Step::Move(near),
                Step::Line(leaf),
                Step::Arc {
                    to: far,
                    radius: opening.width.metres(),
                    clockwise: false,
                },
            ];
            marks.push(mark(id.clone(), Role::Door, polygon(jambs), Length::ZERO));
            marks.push(mark(
                format!("{id}:leaf"),
                Role::Door,
                Shape::Path(swing),
                Length::ZERO,
            ));
        }
    }
}

fn draw_obstacle(obstacle: &Obstacle, marks: &mut Vec<Mark>) {
    let (x, y) = (obstacle.x_m, obstacle.y_m);
    let (right, foot) = (x + obstacle.width.metres(), y + obstacle.depth.metres());
    let corners = [
        Point::new(x, y),
        Point::new(right, y),
        Point::new(right, foot),
        Point::new(x, foot),
    ];
    let id = format!("obstacle:{}", obstacle.id);
    marks.push(mark(
        id.clone(),
        Role::Obstacle,
        polygon(corners),
        Length::ZERO,
    ));
    if !obstacle.name.is_empty() {
        let text = Shape::Text {
            at: corners[0].halfway(corners[2]),
            aside: None,
            text: Text::Name(obstacle.name.clone()),
        };
        marks.push(mark(format!("{id}:name"), Role::Label, text, Length::ZERO));
    }
}

fn draw_dryer(dryer: &Dryer, marks: &mut Vec<Mark>) {
    /// The drum's share of the footprint's lesser side.
    const DRUM: f64 = 0.38;
    let back: Heading = dryer.outlet_heading();
    let (half_width, half_depth) = (dryer.width / 2.0, dryer.depth / 2.0);
    let corner = |across: Length, along: Length| {
        dryer
            .centre()
            .toward(back.right(), across)
            .toward(back, along)
    };
    let outline = polygon([
        corner(-half_width, half_depth),
        corner(half_width, half_depth),
        corner(half_width, -half_depth),
        corner(-half_width, -half_depth),
    ]);
    marks.push(mark("dryer".into(), Role::Dryer, outline, Length::ZERO));
    let lesser = if dryer.width < dryer.depth {
        dryer.width
    } else {
        dryer.depth
    };
    let drum = Shape::Circle {
        centre: dryer.centre(),
        radius: lesser * DRUM,
    };
    marks.push(mark("dryer:drum".into(), Role::Dryer, drum, Length::ZERO));
    let name = Shape::Text {
        at: dryer.centre(),
        aside: None,
        text: Text::Dryer,
    };
    marks.push(mark("dryer:name".into(), Role::Label, name, Length::ZERO));
}
