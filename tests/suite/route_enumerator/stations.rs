//! The stations of a plan: where a corner of a route may lie, along the sheet and in height.

use super::boxes::{Box2, body, drawn};
use super::{FROM_OPENINGS, NEAR, Small};
use elbowroom::plan::{Level, OpeningKind, Plan};
use std::cell::RefCell;

impl Small {
    pub fn of(plan: &Plan, clearance: f64) -> Self {
        let elbow = plan.run.outlet.elbow;
        let reach = plan.run.diameter.metres() / 2.0 + clearance;
        let radius = elbow.radius.metres();
        let round = if radius > reach {
            radius - (radius - reach) / 2.0_f64.sqrt()
        } else {
            reach
        };
        let (mut xs, mut ys) = (Vec::new(), Vec::new());
        let outlet = plan.dryer.outlet();
        let way = plan.dryer.outlet_heading();
        let first = (outlet.x + radius * way.x, outlet.y + radius * way.y);
        xs.extend([
            outlet.x,
            first.0,
            first.0 - 2.0 * radius,
            first.0 + 2.0 * radius,
        ]);
        ys.extend([
            outlet.y,
            first.1,
            first.1 - 2.0 * radius,
            first.1 + 2.0 * radius,
        ]);
        let mut beside = |Box2(least, most): Box2| {
            for off in [reach, round] {
                xs.extend([least.0 - off, most.0 + off]);
                ys.extend([least.1 - off, most.1 + off]);
            }
        };
        beside(body(plan));
        plan.obstacles.iter().for_each(|it| beside(drawn(it)));
        for wall in &plan.walls {
            let half = wall.thickness.metres() / 2.0;
            if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                ys.extend([wall.from_y_m - half - reach, wall.from_y_m + half + reach]);
                if !wall.outside {
                    for off in [reach + half, round + half] {
                        xs.extend([wall.from_x_m.min(wall.to_x_m) - off]);
                        xs.extend([wall.from_x_m.max(wall.to_x_m) + off]);
                    }
                }
            } else {
                xs.extend([wall.from_x_m - half - reach, wall.from_x_m + half + reach]);
                if !wall.outside {
                    for off in [reach + half, round + half] {
                        ys.extend([wall.from_y_m.min(wall.to_y_m) - off]);
                        ys.extend([wall.from_y_m.max(wall.to_y_m) + off]);
                    }
                }
            }
        }
        for opening in &plan.openings {
            assert_ne!(opening.kind, OpeningKind::AirIntake);
            let wall = plan
                .walls
                .iter()
                .find(|wall| wall.id == opening.wall)
                .unwrap();
            let near = opening.offset.metres() - FROM_OPENINGS;
            let far = opening.offset.metres() + opening.width.metres() + FROM_OPENINGS;
            let (dx, dy) = (
                (wall.to_x_m - wall.from_x_m).signum(),
                (wall.to_y_m - wall.from_y_m).signum(),
            );
            if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                xs.extend([wall.from_x_m + dx * near, wall.from_x_m + dx * far]);
            } else {
                ys.extend([wall.from_y_m + dy * near, wall.from_y_m + dy * far]);
            }
        }
        for point in &plan.run.points {
            xs.push(point.position.x);
            ys.push(point.position.y);
        }
        let mut heights = heights(plan, reach);
        for list in [&mut xs, &mut ys, &mut heights] {
            list.sort_by(f64::total_cmp);
            list.dedup_by(|next, kept| *next - *kept < NEAR);
        }
        Self {
            plan: plan.clone(),
            elbow,
            reach,
            xs,
            ys,
            heights,
            seen: RefCell::default(),
        }
    }
}

/// The outlet's height, those of the present run's legs, and just over the ceiling where something is
/// there.
fn heights(plan: &Plan, reach: f64) -> Vec<f64> {
    let mut heights = vec![plan.dryer.outlet_height.metres()];
    let mut height = heights[0] + plan.run.outlet.riser.map_or(0.0, |it| it.rise.metres());
    heights.push(height);
    for (index, point) in plan.run.points.iter().enumerate() {
        height += point.fitting.riser.map_or(0.0, |it| it.rise.metres());
        if index + 1 < plan.run.points.len() {
            heights.push(height);
        }
    }
    let over = plan
        .obstacles
        .iter()
        .any(|it| it.level == Level::CeilingSpace);
    let ceiling = plan.ceiling_height.metres();
    if over && !heights.iter().any(|height| *height > ceiling) {
        heights.push(ceiling + reach);
    }
    heights
}
