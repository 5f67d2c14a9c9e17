//! The dryer moved a little: into line with what comes after an offset, or nearer to where its
//! transition duct ends.

use super::change::Change;
use super::dryer_place::has_room;
use super::offset::PARALLEL;
use super::upgrade::Upgraded;
use crate::plan::{Heading, LegState, Plan};
use crate::units::Length;

/// Every plan with the dryer moved that the room has room for.
pub(super) fn moved(plan: &Plan) -> Vec<Upgraded> {
    into_line(plan).into_iter().chain(nearer(plan)).collect()
}

fn shifted(plan: &Plan, way: Heading, by: Length) -> Option<Plan> {
    let mut changed = plan.clone();
    let centre = plan.dryer.centre().toward(way, by);
    (changed.dryer.x_m, changed.dryer.y_m) = (centre.x, centre.y);
    has_room(plan, &changed).then_some(changed)
}

/// Where the first two corners lead aside and back, the dryer moved aside instead.
fn into_line(plan: &Plan) -> Option<Upgraded> {
    let [first, second, third, ..] = &plan.run.points[..] else {
        return None;
    };
    let out = plan.dryer.outlet_heading();
    let leaves = plan.dryer.outlet().heading_to(first.position)?;
    let after = second.position.heading_to(third.position)?;
    let along = |way: Heading| out.cross(way).abs() < PARALLEL && out.turn_to(way).degrees() < 90.0;
    let has_riser = first.fitting.riser.is_some() || second.fitting.riser.is_some();
    // What is known of the first leg does not hold of a longer one.
    let is_alike = first.leg == LegState::default() && first.duct == third.duct;
    if !along(leaves) || !along(after) || has_riser || !is_alike {
        return None;
    }
    let side = out.right();
    let (from, to) = (first.position, second.position);
    let off = (to.x - from.x) * side.x + (to.y - from.y) * side.y;
    let way = if off < 0.0 { side.back() } else { side };
    let by = Length::from_metres(off.abs());
    let mut changed = shifted(plan, way, by)?;
    changed.run.points.drain(..2);
    Some((Change::MoveDryer { by }, changed))
}

/// The dryer nearer to the end of its flexible first leg, as near as there is room.
fn nearer(plan: &Plan) -> Option<Upgraded> {
    /// Of the leg's length; the first that has room is taken. Of the computation.
    const SHARES: [f64; 5] = [0.9, 0.75, 0.5, 0.35, 0.2];
    let first = plan.run.points.first()?;
    let out = plan.dryer.outlet_heading();
    let leaves = plan.dryer.outlet().heading_to(first.position)?;
    let is_straight = out.turn_to(leaves).degrees() < 1.0 && plan.run.outlet.riser.is_none();
    if !first.duct.is_flexible() || !is_straight {
        return None;
    }
    let length = plan.dryer.outlet().distance(first.position);
    SHARES.iter().find_map(|share| {
        let by = length * *share;
        let changed = shifted(plan, out, by)?;
        // Less than its elbow's tangent is left, then it is too near.
        let is_long = changed.dryer.outlet().distance(first.position) > first.fitting.elbow.radius;
        is_long.then_some((Change::ShorterTransition { by }, changed))
    })
}
