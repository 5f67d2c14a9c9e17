//! Other places and turns of the dryer, and whether the room has room for it there.

use super::blocker::{Blocker, on_level};
use super::request::Options;
use crate::plan::{LEAST_CUT, Level, OutletSide, Plan, Point, segment_distance};
use crate::units::Angle;

/// What is done with a dryer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Placed {
    /// Its outlet is at another side.
    Side(OutletSide),
    /// It is turned clockwise.
    Turned(Angle),
}

/// The plans with the dryer's outlet elsewhere that `options` allow and the room has room for.
pub(super) fn other_outlets(plan: &Plan, options: &Options) -> Vec<(Placed, Plan)> {
    let sides = [OutletSide::Back, OutletSide::Left, OutletSide::Right];
    let own = plan.dryer.outlet_side;
    let sides = sides
        .into_iter()
        .filter(|side| options.other_outlet_sides && *side != own);
    let side = |side: OutletSide| {
        let mut other = plan.clone();
        other.dryer.outlet_side = side;
        (Placed::Side(side), other)
    };
    let mut found: Vec<(Placed, Plan)> = sides.map(side).collect();
    if options.dryer_may_move {
        let turns = [90.0, 180.0, 270.0].map(Angle::from_degrees);
        let turned = turns.into_iter().map(|turn| {
            let mut other = plan.clone();
            other.dryer.turned_deg = (other.dryer.turned_deg + turn.degrees()) % 360.0;
            (Placed::Turned(turn), other)
        });
        found.extend(turned.filter(|(_, other)| has_room(plan, other)));
    }
    found
}

/// Whether the dryer of `other` stands in nothing that it does not stand in at present, and in the same
/// room.
pub(super) fn has_room(present: &Plan, other: &Plan) -> bool {
    let stays_inside = !present.walls.iter().any(|wall| {
        let (before, after) = (present.dryer.centre(), other.dryer.centre());
        segment_distance(before, after, wall.from(), wall.to()) <= 0.0
    });
    let before = stood_in(present);
    stays_inside && stood_in(other).iter().all(|it| before.contains(it))
}

/// What a dryer's body stands in: walls by their place, and obstacles by theirs, after them.
fn stood_in(plan: &Plan) -> Vec<usize> {
    let mut dryer = plan.dryer;
    let less = LEAST_CUT * 2.0;
    (dryer.width, dryer.depth) = (dryer.width - less, dryer.depth - less);
    let body = Blocker::of_dryer(&dryer);
    let walls =
        plan.walls.iter().enumerate().filter(|(_, wall)| {
            body.is_nearer(wall.from(), wall.to(), wall.thickness.metres() / 2.0)
        });
    let mut found: Vec<usize> = walls.map(|(index, _)| index).collect();
    let meets = |shape: &Blocker| {
        /// What touches is no farther apart than this, m. Of the computation.
        const TOUCHES: f64 = 1e-9;
        let about = |one: &Blocker, other: &Blocker| {
            let mut sides = other.sides().into_iter();
            sides.any(|(from, to): (Point, Point)| one.is_nearer(from, to, TOUCHES))
        };
        about(&body, shape) || about(shape, &body)
    };
    let obstacles = on_level(&plan.obstacles, Level::Room);
    let met = obstacles.filter(|(_, shape)| meets(shape));
    found.extend(met.filter_map(|(owner, _)| Some(owner? + plan.walls.len())));
    found
}
