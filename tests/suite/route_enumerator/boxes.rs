//! What is drawn, as boxes along the sheet, and how far a leg is from one.

use super::Spot;
use elbowroom::plan::{Obstacle, Plan, Wall};

/// A drawn box by its least and greatest corner.
#[derive(Clone, Copy)]
pub(super) struct Box2(pub(super) Spot, pub(super) Spot);

/// The least distance from a segment to a box: both are convex, so it is nought or lies at an end or
/// a corner.
pub(super) fn apart(a: Spot, b: Spot, it: Box2) -> f64 {
    let Box2(least, most) = it;
    // Clip the segment to the box (Liang and Barsky).
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    let mut misses = false;
    for (from, step, low, high) in [
        (a.0, b.0 - a.0, least.0, most.0),
        (a.1, b.1 - a.1, least.1, most.1),
    ] {
        if step.abs() < 1e-12 {
            misses |= from < low || from > high;
        } else {
            let (one, other) = ((low - from) / step, (high - from) / step);
            enters = enters.max(one.min(other));
            leaves = leaves.min(one.max(other));
        }
    }
    if !misses && enters <= leaves {
        return 0.0;
    }
    let to_box = |p: Spot| {
        let x = (least.0 - p.0).max(p.0 - most.0).max(0.0);
        let y = (least.1 - p.1).max(p.1 - most.1).max(0.0);
        x.hypot(y)
    };
    let corners = [least, most, (least.0, most.1), (most.0, least.1)];
    corners
        .iter()
        .map(|corner| to_segment(*corner, a, b))
        .chain([to_box(a), to_box(b)])
        .fold(f64::INFINITY, f64::min)
}

fn to_segment(p: Spot, a: Spot, b: Spot) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let square = dx * dx + dy * dy;
    let along = if square > 0.0 {
        (((p.0 - a.0) * dx + (p.1 - a.1) * dy) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (p.0 - a.0 - along * dx).hypot(p.1 - a.1 - along * dy)
}

pub(super) fn drawn(it: &Obstacle) -> Box2 {
    Box2(
        (it.x_m, it.y_m),
        (it.x_m + it.width.metres(), it.y_m + it.depth.metres()),
    )
}

/// The dryer's body; its turn is a quarter's multiple.
pub(super) fn body(plan: &Plan) -> Box2 {
    let dryer = &plan.dryer;
    let is_across = (dryer.turned_deg / 90.0).round() % 2.0 != 0.0;
    let (wide, deep) = (dryer.width.metres() / 2.0, dryer.depth.metres() / 2.0);
    let (x, y) = if is_across {
        (deep, wide)
    } else {
        (wide, deep)
    };
    Box2(
        (dryer.x_m - x, dryer.y_m - y),
        (dryer.x_m + x, dryer.y_m + y),
    )
}

pub(super) fn wall_line(wall: &Wall) -> Box2 {
    Box2(
        (
            wall.from_x_m.min(wall.to_x_m),
            wall.from_y_m.min(wall.to_y_m),
        ),
        (
            wall.from_x_m.max(wall.to_x_m),
            wall.from_y_m.max(wall.to_y_m),
        ),
    )
}
