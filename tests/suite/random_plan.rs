//! Random plans whose every elbow has room, and ways to change them.

use elbowroom::plan::{
    self, AlongRun, Duct, Elbow, ElbowKind, Fitting, Flow, LegState, Level, Obstacle, ObstacleKind,
    Opening, OpeningKind, Plan, Point, Riser, RunPoint, Wall, Zone, ZoneKind,
};
use elbowroom::units::{Airflow, Length, Temperature};
use proptest::prelude::*;

/// The sharpest turn drawn at a corner, deg.
const SHARPEST: f64 = 120.0;
/// The slightest turn drawn at a corner, deg; none at all is drawn too.
pub const SLIGHTEST: f64 = 10.0;
/// The shortest leg, m: twice the tangent of 120 deg at the largest radius, halved once by a new
/// bend, and some straight duct.
const SHORTEST_LEG: f64 = 1.6;
const LONGEST_LEG: f64 = 4.0;

/// A node of the run: the turn and riser at it, and the leg that leaves it.
#[derive(Debug, Clone)]
struct Node {
    turn_deg: f64,
    fitting: Fitting,
    leg_m: f64,
}

/// An elbow for 4 in duct: centre-line radius 2 (the tightest) to 8 in smooth, 4 or 6 in segmented.
pub fn elbow() -> impl Strategy<Value = Elbow> {
    prop_oneof![
        prop::sample::select(vec![2.0, 3.0, 4.0, 6.0, 8.0]).prop_map(|inches| Elbow {
            kind: ElbowKind::Smooth,
            radius: Length::from_inches(inches),
        }),
        prop::sample::select(vec![4.0, 6.0]).prop_map(|inches| Elbow {
            kind: ElbowKind::Segmented,
            radius: Length::from_inches(inches),
        }),
    ]
}

/// A turn either way, deg: often a fitting's usual angle.
pub fn turn_deg() -> impl Strategy<Value = f64> {
    let size = prop_oneof![
        2 => prop::sample::select(vec![30.0, 45.0, 60.0, 90.0, 90.0]),
        1 => SLIGHTEST..SHARPEST,
    ];
    (size, any::<bool>()).prop_map(|(size, left)| if left { -size } else { size })
}

fn riser() -> impl Strategy<Value = Option<Riser>> {
    let rise = prop_oneof![0.8..3.0_f64, -2.0..-0.8_f64];
    prop::option::weighted(
        0.25,
        (rise, elbow()).prop_map(|(rise, elbow)| Riser {
            rise: Length::from_metres(rise),
            elbow,
        }),
    )
}

fn node() -> impl Strategy<Value = Node> {
    let turn = prop_oneof![1 => Just(0.0), 4 => turn_deg()];
    (turn, elbow(), riser(), SHORTEST_LEG..LONGEST_LEG).prop_map(
        |(turn_deg, elbow, riser, leg_m)| Node {
            turn_deg,
            fitting: Fitting { elbow, riser },
            leg_m,
        },
    )
}

/// A plan of one to six legs whose airflow is `flow`'s.
fn plan_with(flow: impl Strategy<Value = Flow>) -> impl Strategy<Value = Plan> {
    let surroundings = (
        0.0..3000.0_f64,
        -20.0..35.0_f64,
        0.0..1.0_f64,
        20.0..70.0_f64,
        0.0..0.6_f64,
        any::<bool>(),
    );
    let nodes = prop::collection::vec(node(), 1..=6);
    let end = (elbow(), riser()).prop_map(|(elbow, riser)| Fitting { elbow, riser });
    let turned_deg = prop_oneof![
        prop::sample::select(vec![0.0, 90.0, 180.0, -90.0]),
        -180.0..180.0_f64
    ];
    (flow, surroundings, turned_deg, nodes, end).prop_map(
        |(flow, surroundings, turned_deg, nodes, end)| {
            let mut plan = plan::blank("Random, invented".to_owned());
            let (altitude, outdoors, outdoor_humidity, exhaust, exhaust_humidity, cools) =
                surroundings;
            plan.site.altitude = Length::from_metres(altitude);
            plan.site.outdoor_temperature = Temperature::from_celsius(outdoors);
            plan.site.outdoor_relative_humidity = outdoor_humidity;
            plan.exhaust.temperature = Temperature::from_celsius(exhaust);
            plan.exhaust.relative_humidity = exhaust_humidity;
            plan.exhaust.along_run = if cools {
                AlongRun::Cools
            } else {
                AlongRun::KeepsTemperature
            };
            plan.flow = flow;
            plan.dryer.turned_deg = turned_deg;
            furnish(&mut plan);
            draw(&mut plan, turned_deg, &nodes, end);
            plan
        },
    )
}

/// A plan that the typical blower works on.
pub fn with_blower() -> impl Strategy<Value = Plan> {
    plan_with(Just(Flow::TypicalBlower {}))
}

/// A plan at a stated airflow, turbulent in its duct.
pub fn with_stated_airflow() -> impl Strategy<Value = Plan> {
    plan_with((0.02..0.09_f64).prop_map(|airflow| Flow::StatedAirflow {
        airflow: Airflow::from_cubic_metres_per_second(airflow),
    }))
}

/// A wall with a window and a box on the floor, which must not matter to any figure, and two zones,
/// which do where the air cools.
fn furnish(plan: &mut Plan) {
    plan.walls.push(Wall {
        id: "w1".into(),
        from_x_m: -1.0,
        from_y_m: 0.2,
        to_x_m: 4.0,
        to_y_m: 0.2,
        thickness: Length::from_metres(0.14),
        outside: true,
    });
    plan.openings.push(Opening {
        id: "o1".into(),
        wall: "w1".into(),
        kind: OpeningKind::Window,
        offset: Length::from_metres(0.5),
        width: Length::from_metres(0.9),
    });
    plan.obstacles.push(Obstacle {
        id: "b1".into(),
        name: "box".to_owned(),
        kind: ObstacleKind::ClosedArea,
        level: Level::Room,
        x_m: 2.0,
        y_m: 1.0,
        width: Length::from_metres(0.7),
        depth: Length::from_metres(0.4),
    });
    for (id, kind, level, degrees, x_m) in [
        ("z1", ZoneKind::Garage, Level::Room, 3.0, -2.3),
        ("z2", ZoneKind::Attic, Level::CeilingSpace, -12.0, 0.4),
    ] {
        plan.zones.push(Zone {
            id: id.into(),
            kind,
            level,
            temperature: Temperature::from_celsius(degrees),
            x_m,
            y_m: -3.7,
            width: Length::from_metres(3.1),
            depth: Length::from_metres(4.3),
        });
    }
}

fn draw(plan: &mut Plan, turned_deg: f64, nodes: &[Node], end: Fitting) {
    let mut at = plan.dryer.outlet();
    let mut heading = turned_deg;
    plan.run.outlet = nodes[0].fitting;
    plan.run.points.clear();
    for (index, node) in nodes.iter().enumerate() {
        heading += node.turn_deg;
        let (sine, cosine) = heading.to_radians().sin_cos();
        at = Point::new(at.x + node.leg_m * sine, at.y - node.leg_m * cosine);
        plan.run.points.push(RunPoint {
            id: format!("p{}", index + 1).as_str().into(),
            position: at,
            duct: Duct::Rigid,
            leg: LegState::default(),
            fitting: nodes.get(index + 1).map_or(end, |next| next.fitting),
        });
    }
}

fn before(plan: &Plan, leg: usize) -> Point {
    match leg {
        0 => plan.dryer.outlet(),
        leg => plan.run.points[leg - 1].position,
    }
}

/// The plan with its leg `leg` longer by `more_m`; every turn stays.
pub fn lengthened(plan: &Plan, leg: usize, more_m: f64) -> Plan {
    let mut plan = plan.clone();
    let (from, to) = (before(&plan, leg), plan.run.points[leg].position);
    let length = (to.x - from.x).hypot(to.y - from.y);
    for point in &mut plan.run.points[leg..] {
        point.position.x += (to.x - from.x) / length * more_m;
        point.position.y += (to.y - from.y) / length * more_m;
    }
    plan
}

/// The plan with `elbow` put into the middle of its last leg, the rest of which turns by
/// `turn_deg`; every drawn length stays.
pub fn with_elbow(plan: &Plan, elbow: Elbow, turn_deg: f64) -> Plan {
    let mut plan = plan.clone();
    let last = plan.run.points.len() - 1;
    let (from, to) = (before(&plan, last), plan.run.points[last].position);
    let middle = Point::new(f64::midpoint(from.x, to.x), f64::midpoint(from.y, to.y));
    let (sine, cosine) = turn_deg.to_radians().sin_cos();
    let (x, y) = (to.x - middle.x, to.y - middle.y);
    plan.run.points[last].position = Point::new(
        middle.x + x * cosine - y * sine,
        middle.y + x * sine + y * cosine,
    );
    plan.run.points.insert(
        last,
        RunPoint {
            id: "new".into(),
            position: middle,
            duct: Duct::Rigid,
            leg: LegState::default(),
            fitting: Fitting { elbow, riser: None },
        },
    );
    plan
}
