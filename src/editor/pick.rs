//! What a press on the drawing means.

use crate::plan::{ElementId, NodeId, Part, Plan, Point};

/// What was pressed.
#[derive(Debug, Clone, PartialEq)]
pub enum Hit {
    /// A corner or the termination.
    Corner(NodeId),
    /// The place in a leg's middle from which a new bend is pulled; the node that the leg arrives at.
    NewBend(NodeId),
    /// A leg elsewhere.
    Leg(ElementId),
}

/// What of `plan` lies within `reach` of `at`: a corner before a new bend's place before a leg, and
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
        .map(|(from, to)| distance_to_segment(at, *from, *to));
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

pub(super) fn distance_to_segment(at: Point, from: Point, to: Point) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let squared = dx * dx + dy * dy;
    let along = if squared > 0.0 {
        (((at.x - from.x) * dx + (at.y - from.y) * dy) / squared).clamp(0.0, 1.0)
    } else {
        0.0
    };
    at.distance(Point::new(from.x + along * dx, from.y + along * dy))
        .metres()
}
