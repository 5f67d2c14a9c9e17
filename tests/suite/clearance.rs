//! Where a drawn duct has no room: each case worked by hand from the drawing's numbers.
//! Source: geometry; a 4 in duct reaches 50.8 mm from its centre line, a nominal 2 in member is
//! 38.1 mm thick (PS 20, from memory).

use crate::example_file::example;
use elbowroom::plan::{
    Axis, Clash, ClashWith, Level, Obstacle, ObstacleKind, Plan, Point, Riser, RunPath, Wall,
    blank, clashes,
};
use elbowroom::units::Length;

const MILLIMETRE: f64 = 0.001;

/// A dryer whose run goes 3 m up the sheet at x = 1 m, from y = 3 m to nought, at 0.127 m height.
fn upright() -> Plan {
    let mut plan = blank("Clearance, invented".to_owned());
    plan.dryer.x_m = 1.0;
    plan.dryer.y_m = 3.0 + plan.dryer.depth.metres() / 2.0;
    plan.run.points[0].position = Point::new(1.0, 0.0);
    plan
}

fn cuts(plan: &Plan) -> Vec<Clash> {
    clashes(plan, &RunPath::of(plan))
}

fn obstacle(kind: ObstacleKind, x_m: f64, width: f64) -> Obstacle {
    Obstacle {
        id: "b1".into(),
        name: String::new(),
        kind,
        level: Level::Room,
        x_m,
        y_m: 1.0,
        width: Length::from_metres(width),
        depth: Length::from_metres(0.5),
    }
}

fn only_cut(plan: &Plan, expected: f64) {
    let found = cuts(plan);
    assert_eq!(found.len(), 1, "{found:?}");
    let by = found[0].by.metres();
    assert!((by - expected).abs() < 1e-9, "{by} {expected}");
}

#[test]
fn the_example_has_room() {
    assert_eq!(cuts(&example()), []);
}

#[test]
fn a_cabinet_30_mm_off_is_cut_by_20_8_mm_and_one_60_mm_off_is_not() {
    let mut plan = upright();
    plan.obstacles = vec![obstacle(
        ObstacleKind::Cabinet,
        1.0 + 30.0 * MILLIMETRE,
        0.4,
    )];
    only_cut(&plan, 20.8 * MILLIMETRE);
    plan.obstacles[0].x_m = 1.0 + 60.0 * MILLIMETRE;
    assert_eq!(cuts(&plan), []);
    // Straight through it.
    plan.obstacles[0].x_m = 0.8;
    only_cut(&plan, 50.8 * MILLIMETRE);
}

#[test]
fn a_wall_is_gone_through_but_not_along() {
    let wall = |from: (f64, f64), to: (f64, f64)| Wall {
        id: "w1".into(),
        from_x_m: from.0,
        from_y_m: from.1,
        to_x_m: to.0,
        to_y_m: to.1,
        thickness: Length::from_metres(0.15),
        outside: true,
    };
    let mut plan = upright();
    plan.walls = vec![wall((0.0, 0.5), (4.0, 0.5))];
    assert_eq!(cuts(&plan), []);
    // Along it, its face 25 mm from the centre line: 50.8 - 25.
    plan.walls = vec![wall((1.1, 0.0), (1.1, 3.0))];
    only_cut(&plan, 25.8 * MILLIMETRE);
}

#[test]
fn framing_is_passed_between_its_members() {
    let framing = |members: Axis| ObstacleKind::Framing {
        members,
        spacing: Length::from_metres(0.4),
    };
    let mut plan = upright();
    // Members at x = 0.8, 1.2 m: 200 mm off on both sides.
    plan.obstacles = vec![obstacle(framing(Axis::AlongY), 0.8, 0.8)];
    assert_eq!(cuts(&plan), []);
    // At x = 0.95, 1.35 m: 50 mm off, of which the member takes 19.05.
    plan.obstacles[0].x_m = 0.95;
    only_cut(&plan, (50.8 + 19.05 - 50.0) * MILLIMETRE);
    // Across them.
    plan.obstacles = vec![obstacle(framing(Axis::AlongX), 0.8, 0.8)];
    only_cut(&plan, (50.8 + 19.05) * MILLIMETRE);
    assert_eq!(cuts(&plan)[0].with, ClashWith::Members);
}

#[test]
fn what_is_over_the_ceiling_is_in_the_way_over_the_ceiling() {
    let mut plan = upright();
    plan.obstacles = vec![obstacle(ObstacleKind::Beam, 0.8, 0.4)];
    plan.obstacles[0].level = Level::CeilingSpace;
    assert_eq!(cuts(&plan), []);
    // The same leg, lifted to 2.627 m, over a ceiling of 2.438 m.
    let elbow = plan.run.outlet.elbow;
    plan.run.outlet.riser = Some(Riser {
        rise: Length::from_metres(2.5),
        elbow,
    });
    only_cut(&plan, 50.8 * MILLIMETRE);
}
