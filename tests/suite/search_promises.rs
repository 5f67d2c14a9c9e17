//! What every suggestion promises, on random larger plans: no obstacle crossed, clearance and
//! termination rule kept, and a gain that the full model gives too.

use crate::route_enumerator::Enumerator;
use crate::search_exhaustive::{Random, outside_walls, searched};
use elbowroom::plan::{
    self, Level, Obstacle, ObstacleKind, Opening, OpeningKind, Plan, Point, RunPath,
};
use elbowroom::rules::too_near;
use elbowroom::search::{Change, Options};
use elbowroom::system::{Finding, assess};
use elbowroom::units::Length;

const OBSTACLES: usize = 8;

fn larger(random: &mut Random) -> Plan {
    let mut plan = plan::blank("Larger, invented".to_owned());
    let (across, down) = (random.between(5.0, 9.0), random.between(4.0, 8.0));
    outside_walls(&mut plan, across, down);
    plan.dryer.x_m = random.between(1.0, across - 1.0);
    plan.dryer.y_m = random.between(2.0, down - 0.6);
    for index in 0..OBSTACLES {
        plan.obstacles.push(Obstacle {
            id: format!("b{index}").into(),
            name: String::new(),
            kind: if random.share() < 0.5 {
                ObstacleKind::ClosedArea
            } else {
                ObstacleKind::Beam
            },
            level: if random.share() < 0.3 {
                Level::CeilingSpace
            } else {
                Level::Room
            },
            x_m: random.between(0.0, across - 0.5),
            y_m: random.between(0.0, down - 0.5),
            width: Length::from_metres(random.between(0.1, 1.2)),
            depth: Length::from_metres(random.between(0.1, 1.2)),
        });
    }
    plan.openings.push(Opening {
        id: "o1".into(),
        wall: "w0".into(),
        kind: OpeningKind::Window,
        offset: Length::from_metres(random.between(0.1, 3.0)),
        width: Length::from_metres(0.9),
    });
    // A present run with a step aside, drawn without a look at the room.
    let outlet = plan.dryer.outlet();
    let aside = if outlet.x > across / 2.0 { -0.8 } else { 0.8 };
    let middle = outlet.y / 2.0;
    let mut points = Vec::new();
    for (x, y) in [
        (outlet.x, middle),
        (outlet.x + aside, middle),
        (outlet.x + aside, -0.0762),
    ] {
        let mut point = plan.run.points[0].clone();
        point.id = format!("p{}", points.len()).into();
        point.position = Point::new(x, y);
        points.push(point);
    }
    plan.run.points = points;
    plan
}

fn faults(plan: &Plan) -> usize {
    let findings = assess(plan).findings;
    let no_room = findings
        .iter()
        .filter(|finding| matches!(finding, Finding::NoRoom(_) | Finding::ElbowsOverlap { .. }));
    no_room.count() + too_near(plan, &RunPath::of(plan)).len()
}

#[test]
fn no_suggestion_breaks_what_it_promises() {
    let full = std::env::var("ELBOWROOM_FULL").is_ok_and(|value| value == "1");
    let plans = if full { 2_000 } else { 15 };
    let mut random = Random(0x0fed_cba9_8765_4321);
    let mut suggestions = 0;
    let mut routes = 0;
    for number in 0..plans {
        let plan = larger(&mut random);
        let options = Options {
            most_bends: 4,
            diagonal_tracks: 1,
            ..Options::default()
        };
        let before = faults(&plan);
        for suggestion in searched(&plan, &options) {
            suggestions += 1;
            let is_route = matches!(suggestion.changes[0], Change::NewRoute { .. });
            routes += usize::from(is_route);
            let after = faults(&suggestion.plan);
            assert!(
                if is_route {
                    after == 0
                } else {
                    after <= before
                },
                "plan {number}: {after} faults after {before}: {:?}",
                suggestion.changes
            );
            if is_route {
                let judge = Enumerator::judge(&suggestion.plan, &options);
                assert!(
                    judge.has_room_for_run(),
                    "plan {number}: {:?}",
                    suggestion.plan.run
                );
            }
            let pressure = |plan: &Plan| {
                assess(plan)
                    .working
                    .unwrap()
                    .0
                    .evaluation
                    .back_pressure
                    .pascals()
            };
            let (old, new) = (pressure(&plan), pressure(&suggestion.plan));
            assert!(new < old, "plan {number}: {new} after {old}");
            assert!((suggestion.after.back_pressure_pa - new).abs() < 1e-9);
            assert!((suggestion.before.back_pressure_pa - old).abs() < 1e-9);
        }
    }
    println!("{suggestions} suggestions, {routes} of them new routes");
    assert!(routes * 2 >= plans, "{routes} routes on {plans} plans");
}
