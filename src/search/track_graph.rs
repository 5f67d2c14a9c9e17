//! The lines on which new routes lie: beside obstacles and walls by the duct's reach, along framing's
//! bays, through the dryer's outlet, past openings and along the present run.

use super::request::{Options, Tracks};
use crate::plan::{Axis, HALF_MEMBER, Level, ObstacleKind, Plan, Point, RunPath};
use crate::rules::{INTAKE_LIMIT, OPENING_LIMIT};

/// Lines closer than this, m, are one. Of the computation.
const SAME: f64 = 1e-6;
/// Half a framing bay of 16 in, m: a run over the ceiling or under the floor lies so far off it.
/// Common practice, no source. Source: [`ROUTE_SOURCE`].
const OFF_FLOOR: f64 = 0.2;

/// The tracks that the drawing of `plan` gives for elbows whose tangent is `tangent`, m.
pub(super) fn tracks(plan: &Plan, options: &Options, tangent: f64) -> Tracks {
    let mut found = Tracks::default();
    let reach = plan.run.diameter.metres() / 2.0 + options.clearance.metres();
    let outlet = plan.dryer.outlet();
    let out = plan.dryer.outlet_heading();
    for step in [0.0, reach.max(tangent), 2.0 * tangent] {
        found.x_m.push(outlet.x + out.x * step);
        found.y_m.push(outlet.y + out.y * step);
    }
    let mut levels = vec![Level::Room];
    for obstacle in &plan.obstacles {
        levels.push(obstacle.level);
        let across = (obstacle.x_m, obstacle.x_m + obstacle.width.metres());
        let down = (obstacle.y_m, obstacle.y_m + obstacle.depth.metres());
        let (mut aside_x, mut aside_y) = (reach, reach);
        if let ObstacleKind::Framing { members, .. } = obstacle.kind {
            let lines = obstacle.members();
            let bays = lines.windows(2).map(|pair| f64::midpoint(pair[0], pair[1]));
            match members {
                Axis::AlongX => found.y_m.extend(bays),
                Axis::AlongY => found.x_m.extend(bays),
            }
            aside_x += HALF_MEMBER;
            aside_y += HALF_MEMBER;
        }
        found.x_m.extend([across.0 - aside_x, across.1 + aside_x]);
        found.y_m.extend([down.0 - aside_y, down.1 + aside_y]);
    }
    for wall in &plan.walls {
        let aside = reach + wall.thickness.metres() / 2.0;
        if (wall.from_x_m - wall.to_x_m).abs() < SAME {
            found
                .x_m
                .extend([wall.from_x_m - aside, wall.from_x_m + aside]);
        }
        if (wall.from_y_m - wall.to_y_m).abs() < SAME {
            found
                .y_m
                .extend([wall.from_y_m - aside, wall.from_y_m + aside]);
        }
    }
    past_openings(plan, &mut found);
    let path = RunPath::of(plan);
    for point in &plan.run.points {
        found.x_m.push(point.position.x);
        found.y_m.push(point.position.y);
    }
    found.height_m.push(plan.dryer.outlet_height.metres());
    found
        .height_m
        .extend(path.pieces.iter().map(|piece| piece.height.metres()));
    if levels.contains(&Level::CeilingSpace) {
        found
            .height_m
            .push(plan.ceiling_height.metres() + OFF_FLOOR);
    }
    if levels.contains(&Level::CrawlSpace) {
        found.height_m.push(-OFF_FLOOR);
    }
    let (left, right) = extent(plan, |wall| [wall.from_x_m, wall.to_x_m]);
    let (top, foot) = extent(plan, |wall| [wall.from_y_m, wall.to_y_m]);
    found.x_m.retain(|x| (left..=right).contains(x));
    found.y_m.retain(|y| (top..=foot).contains(y));
    for list in [&mut found.x_m, &mut found.y_m, &mut found.height_m] {
        list.sort_by(f64::total_cmp);
        list.dedup_by(|one, other| (*one - *other).abs() < SAME);
    }
    found
}

fn extent(plan: &Plan, ends: fn(&crate::plan::Wall) -> [f64; 2]) -> (f64, f64) {
    plan.walls
        .iter()
        .flat_map(ends)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), at| {
            (least.min(at), most.max(at))
        })
}

/// Where a hood keeps just off an opening, by each distance that a rule set may ask for.
fn past_openings(plan: &Plan, found: &mut Tracks) {
    for opening in &plan.openings {
        let wall = plan.walls.iter().find(|wall| wall.id == opening.wall);
        let Some(wall) = wall.filter(|wall| wall.outside) else {
            continue;
        };
        let Some(along) = wall.from().heading_to(wall.to()) else {
            continue;
        };
        for limit in [OPENING_LIMIT, INTAKE_LIMIT] {
            let before = opening.offset - limit;
            let after = opening.offset + opening.width + limit;
            for at in [before, after] {
                let place = wall.from().toward(along, at);
                if along.x.abs() > along.y.abs() {
                    found.x_m.push(place.x);
                } else {
                    found.y_m.push(place.y);
                }
            }
        }
    }
}

/// From each crossing, row by row, straight to the nearest outside wall, m; nought where there is none.
pub(super) fn distances_to_go(plan: &Plan, tracks: &Tracks) -> Vec<f64> {
    let walls = || plan.walls.iter().filter(|wall| wall.outside);
    let nearest = |at: Point| {
        let distances = walls().map(|wall| {
            let (from, to) = (wall.from(), wall.to());
            let (across, down) = (to.x - from.x, to.y - from.y);
            let squared = (across * across + down * down).max(f64::MIN_POSITIVE);
            let along = ((at.x - from.x) * across + (at.y - from.y) * down) / squared;
            let along = along.clamp(0.0, 1.0);
            (at.x - from.x - along * across).hypot(at.y - from.y - along * down)
        });
        distances.fold(f64::INFINITY, f64::min)
    };
    let rows = tracks.y_m.iter();
    let crossings = rows.flat_map(|y| tracks.x_m.iter().map(|x| Point::new(*x, *y)));
    let all = crossings.map(nearest);
    all.map(|distance| if distance.is_finite() { distance } else { 0.0 })
        .collect()
}
