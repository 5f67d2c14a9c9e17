//! The shortest runs with a cost for each turn, against networkx.
//! Source: `tests/reference/turn_costs.py` (networkx 3.4.2, Dijkstra on an expanded graph).

use crate::random_room::{metres, obstacle, room};
use crate::reference::rows;
use elbowroom::plan::{Elbow, ElbowKind, Fitting, Level, PieceKind, Plan, Point, RunPath};
use elbowroom::search::{Candidate, Options, Request, Search};
use elbowroom::units::Length;

/// Of airflow: the lengths of the set are sums of sixteenths of an inch, exact in binary; metres and
/// the operating point's own tolerance of 2e-7 m³/s in 0.06 stay well below this.
const TOLERANCE: f64 = 1e-9;

type Row = (usize, [f64; 4], u8, [f64; 12], [Option<f64>; 5]);

fn plan_of(row: &Row) -> Plan {
    let [width, depth, x, y] = row.1;
    let mut plan = room(width, depth, [true, row.2 == 1, false, false], (x, y));
    for (index, it) in row.3.chunks(4).enumerate() {
        let id = format!("b{index}");
        plan.obstacles
            .push(obstacle(&id, Level::Room, (it[0], it[1]), (it[2], it[3])));
    }
    let elbow = Elbow {
        kind: ElbowKind::Segmented,
        radius: Length::from_inches(3.0),
    };
    plan.run.outlet = Fitting { elbow, riser: None };
    plan.run.points[0].fitting = plan.run.outlet;
    plan.run.points[0].position = Point::new(metres(x), metres(-6.0));
    plan
}

/// A staircase of so many quarter turns and so many inches, in a room without anything: at likely
/// inputs nothing else of a route matters.
fn staircase(plan: &Plan, turns: usize, inches: f64) -> Plan {
    let mut plan = plan.clone();
    plan.walls.clear();
    plan.obstacles.clear();
    let mut at = plan.dryer.outlet();
    let spare = inches - 6.0 * f64::from(u32::try_from(turns).unwrap());
    let first = plan.run.points[0].clone();
    plan.run.points.clear();
    for leg in 0..=turns {
        let own = if turns == 0 {
            inches
        } else if leg == 0 {
            3.0 + spare
        } else if leg == turns {
            3.0
        } else {
            6.0
        };
        if leg % 2 == 0 {
            at.y -= metres(own);
        } else {
            at.x += metres(own);
        }
        let mut point = first.clone();
        point.id = format!("p{leg}").as_str().into();
        point.position = at;
        plan.run.points.push(point);
    }
    plan
}

fn has_quarters_alone(plan: &Plan) -> bool {
    let path = RunPath::of(plan);
    path.pieces.iter().all(|piece| match piece.kind {
        PieceKind::Bend(bend) => (bend.angle.degrees() - 90.0).abs() < 1.0,
        _ => true,
    })
}

#[test]
fn the_best_route_is_the_shortest_with_turn_costs_by_networkx() {
    let rows: Vec<Row> = rows("turn_costs.csv", 50);
    for row in &rows {
        let plan = plan_of(row);
        let options = Options {
            clearance: Length::from_inches(1.0),
            slack: 2.0,
            ..Options::default()
        };
        let mut search = Search::new(Request {
            plan: plan.clone(),
            options,
        });
        let proven = loop {
            let reply = search.advance(5_000);
            if reply.is_done {
                break reply.progress.is_proven;
            }
        };
        assert!(proven, "plan {}", row.0);
        let routes = search.present_routes();
        let own = routes
            .iter()
            .find(|it| has_quarters_alone(&it.plan))
            .unwrap();
        let lengths = row.4.iter().enumerate();
        let best = lengths
            .filter_map(|(turns, length)| Candidate::of(staircase(&plan, turns, (*length)?)))
            .min_by(|one, other| one.figures.order(&other.figures))
            .unwrap();
        let ratio = own.figures.airflow / best.figures.airflow;
        assert!(
            (ratio - 1.0).abs() < TOLERANCE,
            "plan {}: {ratio}, {:?} for {:?}",
            row.0,
            own.plan
                .run
                .points
                .iter()
                .map(|it| it.position)
                .collect::<Vec<_>>(),
            row.4
        );
    }
}
