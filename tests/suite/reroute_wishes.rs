//! What a search is allowed besides routes from the outlet as it is: the roof, a moved or turned dryer,
//! zones to keep out of, walls that stand askew. Each case is worked by hand; houses are invented.

use crate::random_room::{metres, obstacle, room, wall};
use crate::reroutes::{can_be_built, searched};
use elbowroom::plan::{
    Duct, Level, OutletSide, Plan, Point, RunPath, TerminationKind, Zone, ZoneKind,
};
use elbowroom::search::{Change, Options, Suggestion};
use elbowroom::units::{Length, Temperature};

fn found(plan: &Plan, options: Options) -> Vec<Suggestion> {
    let (_, reply) = searched(plan, options);
    reply.suggestions.unwrap()
}

/// A leg of rigid duct and what follows it, in inches.
fn run_by(plan: &mut Plan, spots: &[(f64, f64)]) {
    let end = plan.run.points[0].clone();
    let spots = spots.iter().enumerate();
    let points = spots.map(|(index, (x, y))| {
        let mut point = end.clone();
        point.id = format!("p{index}").as_str().into();
        point.position = Point::new(metres(*x), metres(*y));
        point.duct = Duct::Rigid;
        point
    });
    plan.run.points = points.collect();
}

/// No wall of this room leads outdoors: the way out is up, and there alone where it is allowed.
#[test]
fn a_cap_on_the_roof_is_offered_where_it_is_allowed() {
    let mut plan = room(120.0, 120.0, [false; 4], (40.0, 70.0));
    run_by(&mut plan, &[(40.0, 50.0), (80.0, 50.0), (80.0, -6.0)]);
    let (_, reply) = searched(&plan, Options::default());
    assert!(reply.blocked.unwrap().has_no_way_out);
    let roof = Length::from_feet(12.0);
    let options = Options {
        roof_height: Some(roof),
        ..Options::default()
    };
    let (search, reply) = searched(&plan, options);
    assert!(reply.progress.is_proven);
    let best = search.present_routes()[0].plan.clone();
    assert_eq!(best.run.termination.kind, TerminationKind::RoofCap);
    let path = RunPath::of(&best);
    assert!(path.end.1.is_none());
    let height = best.dryer.outlet_height + path.rise;
    assert!((height - roof).metres().abs() < 1e-9);
    assert_eq!(best.run.points.len(), 1);
    assert!(can_be_built(&best));
}

/// The step aside goes where the dryer moves 12 in to the right; a box there leaves no room for it.
#[test]
fn the_dryer_moves_into_line_where_the_room_has_room_for_it() {
    let mut plan = room(144.0, 120.0, [true, false, false, false], (40.0, 70.0));
    run_by(
        &mut plan,
        &[(40.0, 50.0), (52.0, 50.0), (52.0, 20.0), (52.0, -6.0)],
    );
    plan.run.points.remove(2);
    let options = Options {
        dryer_may_move: true,
        other_outlet_sides: false,
        ..Options::default()
    };
    let moved = |found: &[Suggestion]| {
        let mut changes = found.iter().flat_map(|it| &it.changes);
        changes.any(|it| matches!(it, Change::MoveDryer { by } if (by.metres() - metres(12.0)).abs() < 1e-9))
    };
    // A window over the dryer keeps a straight way out from where it stands away.
    plan.openings.push(elbowroom::plan::Opening {
        id: "o1".into(),
        wall: "w1".into(),
        kind: elbowroom::plan::OpeningKind::Window,
        offset: Length::from_inches(0.0),
        width: Length::from_inches(16.0),
    });
    let all = found(&plan, options.clone());
    assert!(moved(&all), "{all:#?}");
    assert!(all.iter().all(|it| can_be_built(&it.taken_in(&plan))));
    plan.obstacles = vec![obstacle("b1", Level::Room, (60.0, 75.0), (20.0, 20.0))];
    assert!(!moved(&found(&plan, options.clone())));
    let stays = Options {
        dryer_may_move: false,
        ..options
    };
    let all = found(&plan, stays);
    assert!(all.iter().all(|it| it.dryer == plan.dryer));
}

/// A transition duct of foil, 30 in long: the dryer moves nearer, and the duct is shorter by as much.
#[test]
fn a_long_transition_duct_is_made_shorter() {
    let mut plan = room(144.0, 120.0, [true, false, false, false], (40.0, 70.0));
    run_by(&mut plan, &[(40.0, 40.0), (40.0, -6.0)]);
    plan.run.points[0].duct = Duct::Foil {
        short_of_full_stretch_percent: 15.0,
    };
    let options = Options {
        dryer_may_move: true,
        ..Options::default()
    };
    let all = found(&plan, options);
    let shorter = all.iter().find_map(|it| {
        let by = it.changes.iter().find_map(|change| match change {
            Change::ShorterTransition { by } => Some(*by),
            _ => None,
        })?;
        Some((it, by))
    });
    let (it, by) = shorter.unwrap();
    assert!(by.metres() > metres(15.0));
    let moved = plan.dryer.centre().distance(it.dryer.centre());
    assert!((moved - by).metres().abs() < 1e-9);
    assert!(can_be_built(&it.taken_in(&plan)));
}

/// A long radius is one and a half diameters to the centre line: 6 in for a 4 in duct. Source: what the
/// trade calls a long-radius elbow.
#[test]
fn a_long_radius_is_one_and_a_half_diameters() {
    let mut plan = room(144.0, 120.0, [false, true, false, false], (40.0, 70.0));
    run_by(&mut plan, &[(40.0, 40.0), (150.0, 40.0)]);
    let mut offered = 0;
    for it in found(&plan, Options::default()) {
        for change in &it.changes {
            if let Change::LongRadius { bends, radius } = change {
                offered += 1;
                assert!((radius.inches() - 6.0).abs() < 1e-9, "{radius:?}");
                let taken = it.taken_in(&plan);
                let long = taken.run.points.iter().map(|point| point.fitting.elbow);
                let long = long.filter(|elbow| elbow.radius == *radius);
                assert!(long.count() >= bends.len());
            }
        }
    }
    assert!(offered > 0);
}

/// The only outside wall is to the left of a dryer with its back to the top: turned a quarter back it
/// blows straight out.
#[test]
fn a_turned_dryer_blows_straight_out() {
    let mut plan = room(144.0, 120.0, [false, false, false, true], (60.0, 60.0));
    run_by(&mut plan, &[(60.0, 40.0), (-6.0, 40.0)]);
    let options = Options {
        dryer_may_move: true,
        other_outlet_sides: false,
        ..Options::default()
    };
    let all = found(&plan, options);
    let turned = all.iter().find(|it| {
        let mut changes = it.changes.iter();
        changes.any(|change| matches!(change, Change::TurnDryer { turn } if (turn.degrees() - 270.0).abs() < 1e-6))
    });
    let turned = turned.unwrap();
    assert_eq!(turned.figures.bends, 0);
    assert!(can_be_built(&turned.taken_in(&plan)));
    // From its left side it does so too, where that is allowed.
    let all = found(&plan, Options::default());
    assert!(
        all.iter()
            .any(|it| it.dryer.outlet_side == OutletSide::Left && it.figures.bends == 0)
    );
}

/// The short way leads through the garage; closed, no leg passes it.
#[test]
fn no_leg_passes_a_closed_zone() {
    let mut plan = room(144.0, 120.0, [true, false, false, false], (40.0, 70.0));
    run_by(&mut plan, &[(40.0, 50.0), (100.0, 50.0), (100.0, -6.0)]);
    plan.zones.push(Zone {
        id: "z1".into(),
        kind: ZoneKind::Garage,
        level: Level::Room,
        temperature: Temperature::from_celsius(5.0),
        x_m: metres(20.0),
        y_m: metres(3.0),
        width: Length::from_inches(40.0),
        depth: Length::from_inches(30.0),
    });
    let passes = |it: &Suggestion| {
        let path = RunPath::of(&it.taken_in(&plan));
        path.pieces.iter().any(|piece| match piece.kind {
            elbowroom::plan::PieceKind::Straight { ends: (a, b), .. } => (0..=200).any(|step| {
                let share = f64::from(step) / 200.0;
                let at = Point::new(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share);
                plan.zones[0].covers(at)
            }),
            _ => false,
        })
    };
    let open = found(&plan, Options::default());
    assert!(open.iter().any(passes));
    let closed = Options {
        closed_zones: vec!["z1".into()],
        ..Options::default()
    };
    let closed = found(&plan, closed);
    assert!(!closed.is_empty() && !closed.iter().any(passes));
}

/// A wall cut off at 45 deg is left square to it, and a wall at any other angle is kept clear of.
#[test]
fn a_wall_at_45_degrees_is_left_square_to_it() {
    let mut plan = room(120.0, 120.0, [false; 4], (60.0, 90.0));
    run_by(&mut plan, &[(60.0, 40.0), (20.0, 40.0), (20.0, -6.0)]);
    plan.walls
        .push(wall("w5", (-30.0, 60.0), (60.0, -30.0), true));
    let (search, reply) = searched(&plan, Options::default());
    let best = search.present_routes().first().unwrap();
    assert!(reply.progress.is_proven);
    let (end, faces) = RunPath::of(&best.plan).end;
    let faces = faces.unwrap();
    let diagonal = 0.5_f64.sqrt();
    assert!((faces.x + diagonal).abs() < 1e-9 && (faces.y + diagonal).abs() < 1e-9);
    let off = end.distance_to_segment(plan.walls[4].from(), plan.walls[4].to());
    assert!((off.metres() - metres(3.0)).abs() < 1e-9);
    assert!(can_be_built(&best.plan));
    // Two 45s of a 90, or one 45: whatever it is, it turns by 45 in all.
    assert_eq!(best.figures.bends, 1);
    plan.walls[4].to_x_m += metres(10.0);
    let (_, reply) = searched(&plan, Options::default());
    assert!(reply.blocked.unwrap().has_no_way_out);
}
