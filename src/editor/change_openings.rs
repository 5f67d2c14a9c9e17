//! Openings put into walls and held there.

use super::change::{Changed, alter};
use super::change_things::{Added, MEETING, free_id};
use super::snap::{along, exact, on_grid};
use crate::plan::{Opening, OpeningKind, Plan, Point, ThingId, Wall};
use crate::report::words::Refusal;
use crate::units::{Length, UnitSystem};

/// Puts an opening of a common width into the nearest wall within `reach` of `at`, m, on the grid of
/// `grid_reach`.
pub(super) fn add_opening(
    plan: &Plan,
    kind: OpeningKind,
    at: Point,
    (reach, grid_reach): (f64, f64),
    units: UnitSystem,
) -> Added {
    // Common practice, no source.
    let width = match kind {
        OpeningKind::Window => Length::from_inches(36.0),
        OpeningKind::Door => Length::from_inches(32.0),
        OpeningKind::AirIntake => Length::from_inches(8.0),
    };
    let near = |wall: &Wall| {
        let (direction, from_start, length) = along(wall, at)?;
        let foot = wall.from().toward(
            direction,
            Length::from_metres(from_start.clamp(0.0, length)),
        );
        Some((foot.distance(at).metres(), from_start, length))
    };
    let walls = plan.walls.iter();
    let nearest = walls
        .filter_map(|wall| near(wall).map(|place| (wall, place)))
        .filter(|(_, (distance, ..))| *distance <= reach)
        .min_by(|a, b| a.1.0.total_cmp(&b.1.0));
    let (wall, (_, from_start, length)) = nearest.ok_or(Refusal::NoWallHere)?;
    let width = width.metres().min(length);
    let offset = on_grid(from_start - width / 2.0, units, grid_reach).clamp(0.0, length - width);
    let id = free_id("o", plan.openings.iter().map(|opening| &opening.id));
    let opening = Opening {
        id: id.clone(),
        wall: wall.id.clone(),
        kind,
        offset: Length::from_metres(exact(offset)),
        width: Length::from_metres(exact(width)),
    };
    let plan = alter(plan, |plan| plan.openings.push(opening))?;
    Ok((plan, ThingId::Opening(id)))
}

/// The plan after a change, where no opening has come to reach past the end of its wall by it.
pub(super) fn openings_held(before: &Plan, after: Plan) -> Changed {
    let past_end = |plan: &Plan| {
        let openings = plan.openings.iter().filter(|opening| {
            let mut walls = plan.walls.iter();
            let wall = walls.find(|wall| wall.id == opening.wall);
            let length = wall.map(|wall| wall.from().distance(wall.to()));
            length.is_some_and(|length| opening.offset + opening.width > length + MEETING)
        });
        openings.count()
    };
    if past_end(&after) > past_end(before) {
        return Err(Refusal::OpeningPastWall);
    }
    Ok(after)
}
