//! The room: picture, zones, walls, openings, obstacles and the dryer.

use super::obstacle;
use super::{Mark, Role, Shape, Step, Text};
use crate::plan::{
    Dryer, Heading, Opening, OpeningKind, Picture, Plan, Point, ThingId, Wall, Zone,
};
use crate::units::Length;

/// Whether the two plans' rooms are drawn alike: the same in all that [`draw`] looks at.
pub fn is_same_room(plan: &Plan, other: &Plan) -> bool {
    plan.walls == other.walls
        && plan.openings == other.openings
        && plan.obstacles == other.obstacles
        && plan.zones == other.zones
        && plan.picture == other.picture
        && plan.dryer == other.dryer
}

pub(super) fn draw(plan: &Plan, marks: &mut Vec<Mark>) {
    if let Some(picture) = &plan.picture {
        draw_picture(picture, marks);
    }
    for zone in &plan.zones {
        draw_zone(zone, marks);
    }
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
        obstacle::draw(obstacle, marks);
    }
    draw_dryer(&plan.dryer, marks);
    draw_dimensions(&plan.walls, marks);
}

/// The whole room over its walls, along the top and down the left side.
fn draw_dimensions(walls: &[Wall], marks: &mut Vec<Mark>) {
    let mut span: Option<(Point, Point)> = None;
    for wall in walls {
        let half = wall.thickness.metres() / 2.0;
        let (from, to) = (wall.from(), wall.to());
        let upright = (from.x - to.x).abs() < (from.y - to.y).abs();
        // A wall is thick across its length alone.
        let (beside_x, beside_y) = if upright { (half, 0.0) } else { (0.0, half) };
        for point in [from, to] {
            let (least, greatest) = span.get_or_insert((point, point));
            least.x = least.x.min(point.x - beside_x);
            least.y = least.y.min(point.y - beside_y);
            greatest.x = greatest.x.max(point.x + beside_x);
            greatest.y = greatest.y.max(point.y + beside_y);
        }
    }
    let Some((least, greatest)) = span else {
        return;
    };
    let sides = [
        (
            "across",
            greatest.x - least.x,
            least.halfway(Point::new(greatest.x, least.y)),
            Heading::UP,
        ),
        (
            "down",
            greatest.y - least.y,
            least.halfway(Point::new(least.x, greatest.y)),
            Heading::LEFT,
        ),
    ];
    for (name, length, at, aside) in sides {
        if length > 0.0 {
            let shape = Shape::Text {
                at,
                aside: Some(aside),
                text: Text::Size(Length::from_metres(length)),
            };
            marks.push(Mark {
                id: format!("room:{name}"),
                role: Role::Size,
                shape,
                width: Length::ZERO,
                weight: 0.0,
                element: None,
                thing: None,
            });
        }
    }
}

pub(super) fn mark(thing: &ThingId, part: &str, role: Role, shape: Shape, width: Length) -> Mark {
    Mark {
        id: format!("{thing}{part}"),
        role,
        shape,
        width,
        weight: 0.0,
        element: None,
        thing: Some(thing.clone()),
    }
}

pub(super) fn line(from: Point, to: Point) -> Shape {
    Shape::Path(vec![Step::Move(from), Step::Line(to)])
}

pub(super) fn polygon(corners: [Point; 4]) -> Shape {
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
    let thing = ThingId::Wall(wall.id.clone());
    marks.push(mark(&thing, "", role, line(from, to), wall.thickness));
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
    let thing = ThingId::Opening(opening.id.clone());
    let mut add = |part: &str, role: Role, shape: Shape| {
        marks.push(mark(&thing, part, role, shape, Length::ZERO));
    };
    match opening.kind {
        OpeningKind::Window => {
            add("", Role::Window, polygon(jambs));
            add(":glass", Role::Window, line(near, far));
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
            add("", Role::Door, polygon(jambs));
            add(":leaf", Role::Door, Shape::Path(swing));
        }
        OpeningKind::AirIntake => {
            /// Louvres across the opening.
            const LOUVRES: u32 = 4;
            let louvres = (1..LOUVRES).flat_map(|louvre| {
                let at = near.toward(
                    along,
                    opening.width * (f64::from(louvre) / f64::from(LOUVRES)),
                );
                [
                    Step::Move(at.toward(across, -half)),
                    Step::Line(at.toward(across, half)),
                ]
            });
            let louvres = Shape::Path(louvres.collect());
            add("", Role::AirIntake, polygon(jambs));
            add(":louvres", Role::AirIntake, louvres);
        }
    }
}

fn draw_picture(picture: &Picture, marks: &mut Vec<Mark>) {
    let shape = Shape::Picture {
        corner: Point::new(picture.x_m, picture.y_m),
        width: picture.width,
        depth: picture.depth,
        coding: picture.coding,
        data: picture.data_base64.clone(),
    };
    let thing = ThingId::Picture;
    marks.push(mark(&thing, "", Role::Picture, shape, Length::ZERO));
}

fn draw_zone(zone: &Zone, marks: &mut Vec<Mark>) {
    let thing = ThingId::Zone(zone.id.clone());
    let outline = rectangle(Point::new(zone.x_m, zone.y_m), zone.width, zone.depth);
    marks.push(mark(&thing, "", Role::Zone, outline, Length::ZERO));
    let text = Shape::Text {
        at: Point::new(zone.x_m + zone.width.metres() / 2.0, zone.y_m),
        aside: Some(Heading::DOWN),
        text: Text::Zone(zone.kind, zone.temperature),
    };
    marks.push(mark(&thing, ":name", Role::Label, text, Length::ZERO));
}

/// A rectangle along the sheet's sides.
pub(super) fn rectangle(corner: Point, width: Length, depth: Length) -> Shape {
    let (x, y) = (corner.x, corner.y);
    let (right, foot) = (x + width.metres(), y + depth.metres());
    polygon([
        Point::new(x, y),
        Point::new(right, y),
        Point::new(right, foot),
        Point::new(x, foot),
    ])
}

fn draw_dryer(dryer: &Dryer, marks: &mut Vec<Mark>) {
    /// The drum's share of the footprint's lesser side.
    const DRUM: f64 = 0.38;
    let back: Heading = dryer.back_heading();
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
    let thing = ThingId::Dryer;
    marks.push(mark(&thing, "", Role::Dryer, outline, Length::ZERO));
    let lesser = if dryer.width < dryer.depth {
        dryer.width
    } else {
        dryer.depth
    };
    let drum = Shape::Circle {
        centre: dryer.centre(),
        radius: lesser * DRUM,
    };
    marks.push(mark(&thing, ":drum", Role::Dryer, drum, Length::ZERO));
    let name = Shape::Text {
        at: dryer.centre(),
        aside: None,
        text: Text::Dryer,
    };
    marks.push(mark(&thing, ":name", Role::Label, name, Length::ZERO));
}
