//! Cases of the search that are worked by hand.

use crate::search_exhaustive::{outside_walls, searched, stopped_up};
use elbowroom::plan::{self, Level, Obstacle, ObstacleKind, Plan, Point, RunPath, RunPoint};
use elbowroom::search::{Options, Request, Search};
use elbowroom::units::Length;

fn inches(value: f64) -> f64 {
    Length::from_inches(value).metres()
}

fn closed(id: &str, x_m: f64, y_m: f64, width: f64, depth: f64) -> Obstacle {
    Obstacle {
        id: id.into(),
        name: String::new(),
        kind: ObstacleKind::ClosedArea,
        level: Level::Room,
        x_m,
        y_m,
        width: Length::from_metres(width),
        depth: Length::from_metres(depth),
    }
}

/// A room cut in two from side to side but for a gap of `gap`, m; the only wall without a window
/// before it lies past the gap. A 4 in duct with 1/4 in on both sides asks for 4-1/2 in.
fn with_gap(gap: f64) -> Plan {
    let mut plan = plan::blank("Gap, invented".to_owned());
    outside_walls(&mut plan, 4.0, 5.0);
    plan.dryer.x_m = 1.2;
    plan.dryer.y_m = 3.6;
    for index in 1..4 {
        // Side and near walls are not outdoors.
        plan.walls[index].outside = false;
    }
    let (left, right) = (-1.0, 5.0);
    let middle = 2.3;
    let obstacles = [
        closed("left", left, 1.0, middle - gap / 2.0 - left, 0.8),
        closed(
            "right",
            middle + gap / 2.0,
            1.0,
            right - middle - gap / 2.0,
            0.8,
        ),
    ];
    plan.obstacles = obstacles.to_vec();
    plan.run.points = vec![stopped_up(Point::new(1.2, -0.0762))];
    plan
}

#[test]
fn a_gap_half_an_inch_wider_is_found_and_half_an_inch_narrower_is_refused() {
    let options = Options {
        other_outlet_sides: false,
        ..Options::default()
    };
    let routes = |plan: &Plan| {
        let found = searched(plan, &options);
        found
            .into_iter()
            .filter(|it| {
                it.after.bends > 0 && plan::clashes(&it.plan, &RunPath::of(&it.plan)).is_empty()
            })
            .count()
    };
    assert!(routes(&with_gap(inches(4.5 + 0.5))) > 0);
    assert_eq!(routes(&with_gap(inches(4.5 - 0.5))), 0);
}

/// What blocks a narrow gap is named, and which of the two opens a way.
#[test]
fn no_route_says_what_blocks_it() {
    let plan = with_gap(inches(4.0));
    let options = Options {
        other_outlet_sides: false,
        ..Options::default()
    };
    let mut search = Search::new(Request { plan, options });
    let blocked = loop {
        let reply = search.advance(10_000);
        if reply.is_done {
            break reply.blocked.unwrap();
        }
    };
    assert!(blocked.by.iter().any(|id| &**id == "left"), "{blocked:?}");
    // The outlet stands before the left one.
    assert_eq!(&*blocked.opens.unwrap().0, "left");
}

/// Twelve bends round an invented laundry, two of which lead aside and back for nothing.
#[test]
fn the_first_suggestion_removes_at_least_the_two_needless_bends() {
    let mut plan = plan::blank("Laundry of twelve bends, invented".to_owned());
    outside_walls(&mut plan, 7.0, 6.0);
    plan.dryer.x_m = 1.0;
    plan.dryer.y_m = 5.0;
    let corners = [
        (1.0, 4.0),
        (1.8, 4.0),
        (1.8, 3.2),
        (2.6, 3.2),
        (2.6, 4.2),
        (3.4, 4.2),
        (3.4, 3.4),
        (4.2, 3.4),
        (4.2, 2.6),
        (5.0, 2.6),
        (5.0, 1.8),
        (5.8, 1.8),
        (5.8, -0.0762),
    ];
    let fitting = plan.run.outlet;
    plan.run.points = corners
        .iter()
        .enumerate()
        .map(|(index, (x, y))| RunPoint {
            id: format!("p{index}").into(),
            position: Point::new(*x, *y),
            duct: plan::Duct::Rigid,
            leg: plan::LegState::default(),
            fitting,
        })
        .collect();
    let found = searched(&plan, &Options::default());
    let first = &found[0];
    assert_eq!(first.before.bends, 12);
    assert!(first.after.bends <= 10, "{:?}", first.after);
    assert!(first.after.back_pressure_pa < first.before.back_pressure_pa);
    assert!(first.gain_is_larger_than_its_doubt());
    let mut search = Search::new(Request {
        plan,
        options: Options::default(),
    });
    let sooner = search.advance(1).suggestions.unwrap();
    assert!(sooner[0].after.back_pressure_pa < sooner[0].before.back_pressure_pa);
    assert!(plan::clashes(&sooner[0].plan, &RunPath::of(&sooner[0].plan)).is_empty());
}
