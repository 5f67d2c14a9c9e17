//! The search's best route against every route there is, on random small plans.

use crate::route_enumerator::Enumerator;
use elbowroom::plan::{
    self, Axis, Duct, Elbow, ElbowKind, LegState, Level, Obstacle, ObstacleKind, Opening,
    OpeningKind, Plan, Point, RunPoint, Wall,
};
use elbowroom::search::{Options, Request, Search, Suggestion, Tracks};
use elbowroom::system::assess;
use elbowroom::units::Length;

/// Rooms are this long each way, m.
const ROOM: f64 = 5.0;
/// Of the best back pressure, as a share: the promise.
const PROMISE: f64 = 1e-9;

/// A sequence of its own (Marsaglia's xorshift, 64 bits).
pub struct Random(pub u64);

impl Random {
    pub fn share(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        #[allow(clippy::cast_precision_loss, reason = "53 bits")]
        let share = (self.0 >> 11) as f64 / (1_u64 << 53) as f64;
        share
    }
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }
}

pub fn outside_walls(plan: &mut Plan, across: f64, down: f64) {
    let corners = [(0.0, 0.0), (across, 0.0), (across, down), (0.0, down)];
    for side in 0..4 {
        let (from, to) = (corners[side], corners[(side + 1) % 4]);
        plan.walls.push(Wall {
            id: format!("w{side}").into(),
            from_x_m: from.0,
            from_y_m: from.1,
            to_x_m: to.0,
            to_y_m: to.1,
            thickness: Length::from_inches(6.0),
            outside: true,
        });
    }
}

/// A present run that is so stopped up that any clean one betters it.
pub fn stopped_up(at: Point) -> RunPoint {
    RunPoint {
        id: "p1".into(),
        position: at,
        duct: Duct::Rigid,
        leg: LegState {
            blockage_free_area: Some(0.08),
            ..LegState::default()
        },
        fitting: plan::blank(String::new()).run.outlet,
    }
}

fn lines(random: &mut Random) -> Vec<f64> {
    let mut at = 0.25;
    let mut lines = Vec::new();
    for _ in 0..6 {
        lines.push(at);
        at += random.between(0.3, 0.95);
    }
    lines
}

fn small(random: &mut Random) -> (Plan, Options) {
    let mut plan = plan::blank("Small, invented".to_owned());
    outside_walls(&mut plan, ROOM + 0.4, ROOM + 0.4);
    let (across, down) = (lines(random), lines(random));
    let pick = |random: &mut Random| if random.share() < 0.5 { 2 } else { 3 };
    let outlet = Point::new(across[pick(random)], down[pick(random)]);
    plan.dryer.x_m = outlet.x;
    plan.dryer.y_m = outlet.y + plan.dryer.depth.metres() / 2.0;
    while plan.obstacles.len() < 3 {
        let number = plan.obstacles.len();
        let is_over = number == 2 || random.share() < 0.3;
        let kind = if number == 2 && random.share() < 0.5 {
            ObstacleKind::Framing {
                members: if random.share() < 0.5 {
                    Axis::AlongX
                } else {
                    Axis::AlongY
                },
                spacing: Length::from_inches(16.0),
            }
        } else {
            ObstacleKind::ClosedArea
        };
        let obstacle = Obstacle {
            id: format!("b{number}").into(),
            name: String::new(),
            kind,
            level: if is_over {
                Level::CeilingSpace
            } else {
                Level::Room
            },
            x_m: random.between(0.2, 4.2),
            y_m: random.between(0.2, 4.2),
            width: Length::from_metres(random.between(0.2, 0.6)),
            depth: Length::from_metres(random.between(0.2, 0.6)),
        };
        plan.obstacles.push(obstacle);
    }
    plan.openings.push(Opening {
        id: "o1".into(),
        wall: "w0".into(),
        kind: if random.share() < 0.7 {
            OpeningKind::Window
        } else {
            OpeningKind::Door
        },
        offset: Length::from_metres(random.between(0.1, 4.0)),
        width: Length::from_metres(0.8),
    });
    plan.run.points = vec![stopped_up(Point::new(outlet.x, -0.0762))];
    let options = Options {
        elbow: Some(Elbow {
            kind: if random.share() < 0.5 {
                ElbowKind::Segmented
            } else {
                ElbowKind::Smooth
            },
            radius: Length::from_inches(if random.share() < 0.5 { 4.0 } else { 6.0 }),
        }),
        most_bends: 5,
        diagonal_tracks: 3,
        other_outlet_sides: false,
        tracks: Some(Tracks {
            x_m: across,
            y_m: down,
            height_m: vec![
                plan.dryer.outlet_height.metres(),
                plan.ceiling_height.metres() + 0.3,
            ],
        }),
        ..Options::default()
    };
    (plan, options)
}

pub fn searched(plan: &Plan, options: &Options) -> Vec<Suggestion> {
    let mut search = Search::new(Request {
        plan: plan.clone(),
        options: options.clone(),
    });
    loop {
        if search.advance(10_000).is_done {
            return search.suggestions();
        }
    }
}

#[test]
fn the_best_route_is_the_best_of_all() {
    let full = std::env::var("ELBOWROOM_FULL").is_ok_and(|value| value == "1");
    let plans = if full { 500 } else { 20 };
    let mut random = Random(0x1234_5678_9abc_def1);
    let mut counts = Vec::new();
    let mut without = 0;
    for number in 0..plans {
        let (plan, options) = small(&mut random);
        let mut all = Enumerator {
            plan: &plan,
            tracks: options.tracks.as_ref().unwrap(),
            elbow: options.elbow.unwrap(),
            most_bends: usize::from(options.most_bends),
            diagonal_tracks: options.diagonal_tracks,
            reach: plan.run.diameter.metres() / 2.0 + options.clearance.metres(),
            routes: Vec::new(),
        };
        all.run();
        counts.push(all.routes.len());
        let pressures = all.routes.iter().filter_map(|route| {
            let (point, _) = assess(&all.plan_with(route)).working?;
            Some(point.evaluation.back_pressure.pascals())
        });
        let best = pressures.min_by(f64::total_cmp);
        let found = searched(&plan, &options);
        let found = found.first().map(|it| it.after.back_pressure_pa);
        match (found, best) {
            (None, None) => without += 1,
            (Some(found), Some(best)) => assert!(
                (found - best).abs() <= PROMISE * best.abs(),
                "plan {number}: found {found}, best of {} is {best}",
                all.routes.len()
            ),
            other => panic!("plan {number}: {other:?} of {}", all.routes.len()),
        }
    }
    counts.sort_unstable();
    let median = counts[counts.len() / 2];
    println!("{plans} plans, median of {median} routes, {without} without any");
    assert!(median >= 1_000, "a median of {median} routes");
    assert!(without * 4 < plans, "{without} of {plans} without a route");
}
