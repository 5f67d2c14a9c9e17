//! What a press on the drawing means.

use super::Held;
use crate::plan::{ElementId, NodeId, Part, Plan, Point, Thing, ThingId};
use crate::units::Length;

/// What was pressed.
#[derive(Debug, Clone, PartialEq)]
pub enum Hit {
    /// A corner or the termination.
    Corner(NodeId),
    /// The place in a leg's middle from which a new bend is pulled; the node that the leg arrives at.
    NewBend(NodeId),
    /// A leg elsewhere.
    Leg(ElementId),
    /// A handle of a selected thing.
    Handle(Held, Point),
    /// A thing about the run.
    Thing(ThingId),
}

/// The handles of a thing that alone is selected: a wall's ends, or the corners of what is
/// rectangular.
pub fn handles(plan: &Plan, thing: &ThingId) -> Vec<(Held, Point)> {
    let corners = |x: f64, y: f64, width: Length, depth: Length| {
        let (right, foot) = (x + width.metres(), y + depth.metres());
        [(x, y), (right, y), (right, foot), (x, foot)]
            .into_iter()
            .zip(0_u8..)
            .map(|((x, y), corner)| {
                let thing = thing.clone();
                (Held::BoxCorner { thing, corner }, Point::new(x, y))
            })
            .collect()
    };
    match plan.thing(thing) {
        Some(Thing::Wall(wall)) => [(true, wall.from()), (false, wall.to())]
            .map(|(start, at)| {
                let wall = thing.clone();
                (Held::WallEnd { wall, start }, at)
            })
            .into(),
        Some(Thing::Obstacle(it)) => corners(it.x_m, it.y_m, it.width, it.depth),
        Some(Thing::Zone(it)) => corners(it.x_m, it.y_m, it.width, it.depth),
        Some(Thing::Picture(it)) => corners(it.x_m, it.y_m, it.width, it.depth),
        _ => Vec::new(),
    }
}

/// The thing about the run at `at`: an opening before an obstacle before the dryer before a wall
/// before a zone's edge before the picture.
pub fn pick_thing(plan: &Plan, at: Point, reach: f64) -> Option<ThingId> {
    let inside = |x: f64, y: f64, width: Length, depth: Length| {
        (x..=x + width.metres()).contains(&at.x) && (y..=y + depth.metres()).contains(&at.y)
    };
    let opening = plan.openings.iter().find(|opening| {
        let wall = plan.walls.iter().find(|wall| wall.id == opening.wall);
        wall.and_then(|wall| {
            let along = wall.from().heading_to(wall.to())?;
            let near = wall.from().toward(along, opening.offset);
            let far = near.toward(along, opening.width);
            let half = wall.thickness.metres() / 2.0;
            Some(at.distance_to_segment(near, far).metres() <= half.max(reach))
        })
        .unwrap_or(false)
    });
    if let Some(opening) = opening {
        return Some(ThingId::Opening(opening.id.clone()));
    }
    let obstacles = plan.obstacles.iter().rev();
    if let Some(it) = obstacles
        .clone()
        .find(|it| inside(it.x_m, it.y_m, it.width, it.depth))
    {
        return Some(ThingId::Obstacle(it.id.clone()));
    }
    if is_on_dryer(plan, at) {
        return Some(ThingId::Dryer);
    }
    let walls = plan.walls.iter().map(|wall| {
        let off = at.distance_to_segment(wall.from(), wall.to()).metres();
        (wall, off - wall.thickness.metres() / 2.0)
    });
    if let Some((wall, _)) = walls
        .filter(|(_, off)| *off <= reach / 2.0)
        .min_by(|a, b| a.1.total_cmp(&b.1))
    {
        return Some(ThingId::Wall(wall.id.clone()));
    }
    let on_edge = |x: f64, y: f64, width: Length, depth: Length| {
        let (right, foot) = (x + width.metres(), y + depth.metres());
        let corners = [
            Point::new(x, y),
            Point::new(right, y),
            Point::new(right, foot),
            Point::new(x, foot),
        ];
        (0..4).any(|side| {
            at.distance_to_segment(corners[side], corners[(side + 1) % 4])
                .metres()
                <= reach
        })
    };
    if let Some(zone) = plan
        .zones
        .iter()
        .find(|it| on_edge(it.x_m, it.y_m, it.width, it.depth))
    {
        return Some(ThingId::Zone(zone.id.clone()));
    }
    let picture = plan.picture.as_ref()?;
    on_edge(picture.x_m, picture.y_m, picture.width, picture.depth).then_some(ThingId::Picture)
}

fn is_on_dryer(plan: &Plan, at: Point) -> bool {
    let dryer = &plan.dryer;
    let back = dryer.back_heading();
    let (dx, dy) = (at.x - dryer.x_m, at.y - dryer.y_m);
    let along = dx * back.x + dy * back.y;
    let across = dx * back.right().x + dy * back.right().y;
    along.abs() <= dryer.depth.metres() / 2.0 && across.abs() <= dryer.width.metres() / 2.0
}

/// What of the run lies within `reach` of `at`: a corner before a new bend's place before a leg, and
/// of each kind the nearest.
pub fn pick(plan: &Plan, at: Point, reach: f64) -> Option<Hit> {
    let node = |index: usize| NodeId::Point(plan.run.points[index].id.clone());
    let nearest = |distances: Vec<f64>| {
        distances
            .into_iter()
            .enumerate()
            .filter(|(_, distance)| *distance <= reach)
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .map(|(index, _)| index)
    };
    let legs = legs(plan);
    let corners = plan
        .run
        .points
        .iter()
        .map(|point| point.position.distance(at).metres());
    if let Some(index) = nearest(corners.collect()) {
        return Some(Hit::Corner(node(index)));
    }
    let middles = legs
        .iter()
        .map(|(from, to)| from.halfway(*to).distance(at).metres());
    if let Some(index) = nearest(middles.collect()) {
        return Some(Hit::NewBend(node(index)));
    }
    let lines = legs
        .iter()
        .map(|(from, to)| at.distance_to_segment(*from, *to).metres());
    nearest(lines.collect()).map(|index| Hit::Leg(ElementId::new(&node(index), Part::Leg)))
}

/// The two corners of every leg, in run order.
fn legs(plan: &Plan) -> Vec<(Point, Point)> {
    let mut before = plan.dryer.outlet();
    plan.run
        .points
        .iter()
        .map(|point| {
            (
                core::mem::replace(&mut before, point.position),
                point.position,
            )
        })
        .collect()
}
