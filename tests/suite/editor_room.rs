//! Random hands at the room: every tool, every thing, and what is done to many at once. And what turns,
//! mirrors and moves must leave alone.

use crate::editor_actions::{Step, length, number, point, reach};
use crate::example_file::example;
use crate::symmetry::same_figures;
use elbowroom::editor::{Action, Effect, NewThing, State, Tool, Turn, update};
use elbowroom::plan::{
    Axis, Dryer, Energy, Heading, Level, Obstacle, ObstacleKind, Opening, OpeningKind, OutletSide,
    Picture, PictureCoding, Plan, Point, ThingId, Wall, Zone, ZoneKind,
};
use elbowroom::report::words::Refusal;
use elbowroom::units::{Length, Temperature};
use proptest::prelude::*;
use serde_json::Value;

fn obstacle_kind() -> impl Strategy<Value = ObstacleKind> {
    let axis = prop::sample::select(vec![Axis::AlongX, Axis::AlongY]);
    let framing = (axis, length(0.05..1.0))
        .prop_map(|(members, spacing)| ObstacleKind::Framing { members, spacing });
    let plain = prop::sample::select(vec![
        ObstacleKind::ClosedArea,
        ObstacleKind::Cabinet,
        ObstacleKind::Beam,
        ObstacleKind::Stack,
    ]);
    prop_oneof![plain, framing]
}

fn zone_kind() -> impl Strategy<Value = ZoneKind> {
    prop::sample::select(vec![
        ZoneKind::Heated,
        ZoneKind::Garage,
        ZoneKind::Attic,
        ZoneKind::CrawlSpace,
        ZoneKind::Outdoors,
    ])
}

fn opening_kind() -> impl Strategy<Value = OpeningKind> {
    prop::sample::select(vec![
        OpeningKind::Window,
        OpeningKind::Door,
        OpeningKind::AirIntake,
    ])
}

fn tool() -> impl Strategy<Value = Tool> {
    prop_oneof![
        2 => Just(Tool::Pick),
        1 => Just(Tool::Place),
        2 => any::<bool>().prop_map(|outside| Tool::Wall { outside }),
        2 => opening_kind().prop_map(Tool::Opening),
        2 => obstacle_kind().prop_map(Tool::Obstacle),
        1 => zone_kind().prop_map(Tool::Zone),
        3 => Just(Tool::Run),
        1 => Just(Tool::Scale),
    ]
}

/// Things by the names that the editor gives, often ones that are not there.
fn new_thing() -> impl Strategy<Value = NewThing> {
    let id = || prop::sample::select(vec!["w1", "w2", "o1", "b1", "b2", "z1"]);
    let level = || prop::sample::select(vec![Level::CrawlSpace, Level::Room, Level::CeilingSpace]);
    let place = || (number(-5.0..5.0), number(-5.0..5.0));
    let size = || (length(0.005..4.0), length(0.005..4.0));
    let wall = (id(), place(), place(), length(0.004..0.4), any::<bool>()).prop_map(
        |(id, from, to, thickness, outside)| {
            NewThing::Wall(Wall {
                id: id.into(),
                from_x_m: from.0,
                from_y_m: from.1,
                to_x_m: to.0,
                to_y_m: to.1,
                thickness,
                outside,
            })
        },
    );
    let opening = (
        id(),
        id(),
        opening_kind(),
        length(-0.1..4.0),
        length(0.005..2.0),
    )
        .prop_map(|(id, wall, kind, offset, width)| {
            NewThing::Opening(Opening {
                id: id.into(),
                wall: wall.into(),
                kind,
                offset,
                width,
            })
        });
    let obstacle = (id(), obstacle_kind(), level(), place(), size()).prop_map(
        |(id, kind, level, (x_m, y_m), (width, depth))| {
            NewThing::Obstacle(Obstacle {
                id: id.into(),
                name: "<box>".to_owned(),
                kind,
                level,
                x_m,
                y_m,
                width,
                depth,
            })
        },
    );
    let zone = (
        id(),
        zone_kind(),
        level(),
        number(-60.0..80.0),
        place(),
        size(),
    )
        .prop_map(|(id, kind, level, degrees, (x_m, y_m), (width, depth))| {
            NewThing::Zone(Zone {
                id: id.into(),
                kind,
                level,
                temperature: Temperature::from_celsius(degrees),
                x_m,
                y_m,
                width,
                depth,
            })
        });
    let side = prop::sample::select(vec![OutletSide::Back, OutletSide::Left, OutletSide::Right]);
    let dryer = (
        place(),
        size(),
        number(-400.0..400.0),
        length(-0.1..2.0),
        side,
        any::<bool>(),
    )
        .prop_map(
            |((x_m, y_m), (width, depth), turned_deg, outlet_height, outlet_side, gas)| {
                NewThing::Dryer(Dryer {
                    x_m,
                    y_m,
                    width,
                    depth,
                    turned_deg,
                    outlet_height,
                    outlet_side,
                    stacked: gas,
                    energy: if gas { Energy::Gas } else { Energy::Electric },
                })
            },
        );
    prop_oneof![wall, opening, obstacle, zone, dryer]
}

fn picture() -> impl Strategy<Value = Option<Box<Picture>>> {
    let data = prop::sample::select(vec!["iVBORw0KGgo=", "AAAA", "", "\"onload=", "AAA"]);
    let picture = (data, number(-5.0..5.0), length(0.005..20.0)).prop_map(|(data, x_m, width)| {
        Box::new(Picture {
            coding: PictureCoding::Png,
            data_base64: data.into(),
            x_m,
            y_m: 0.5,
            width,
            depth: width * 0.75,
        })
    });
    prop::option::weighted(0.8, picture)
}

/// Anything that is done to the room, and drawing of every kind.
pub fn at_the_room() -> impl Strategy<Value = Step> {
    let headings = [Heading::RIGHT, Heading::DOWN, Heading::LEFT, Heading::UP];
    let heading = prop::option::of(prop::sample::select(headings.to_vec()));
    let turn = prop::sample::select(vec![Turn::Quarter, Turn::Mirror]);
    let index = any::<prop::sample::Index>;
    prop_oneof![
        3 => tool().prop_map(Action::TakeTool).prop_map(Step::Plain),
        4 => (point(), reach()).prop_map(|(at, reach)| Step::Plain(Action::Hover { at, reach })),
        4 => (point(), reach(), any::<bool>())
            .prop_map(|(at, reach, adds)| Step::Plain(Action::Press { at, reach, adds })),
        2 => Just(Step::Plain(Action::Release)),
        3 => Just(Step::Plain(Action::PutPoint)),
        3 => (length(-0.5..4.0), heading)
            .prop_map(|(length, heading)| Step::Plain(Action::PutLength { length, heading })),
        1 => Just(Step::Plain(Action::FinishDrawing)),
        3 => (index(), reach(), any::<bool>())
            .prop_map(|(index, reach, adds)| Step::PressOnThing(index, reach, adds)),
        4 => any::<bool>()
            .prop_map(|forward| Step::Plain(Action::SelectNextThing { forward })),
        1 => Just(Step::Plain(Action::SelectAll)),
        1 => Just(Step::Plain(Action::KeepThings)),
        2 => Just(Step::Plain(Action::Remove)),
        2 => Just(Step::Plain(Action::Copy)),
        2 => turn.prop_map(Action::Turn).prop_map(Step::Plain),
        3 => new_thing().prop_map(|new| Step::Plain(Action::SetThing(Box::new(new)))),
        2 => picture().prop_map(Action::SetPicture).prop_map(Step::Plain),
        1 => length(1.0..12.0).prop_map(Action::SetCeiling).prop_map(Step::Plain),
    ]
}

/// The example with all that a room can have.
fn furnished() -> Plan {
    let mut plan = example();
    plan.obstacles.push(Obstacle {
        id: "b2".into(),
        name: String::new(),
        kind: ObstacleKind::Framing {
            members: Axis::AlongX,
            spacing: Length::from_inches(16.0),
        },
        level: Level::CeilingSpace,
        x_m: 0.5,
        y_m: 0.25,
        width: Length::from_metres(2.0),
        depth: Length::from_metres(1.5),
    });
    plan.zones.push(Zone {
        id: "z1".into(),
        kind: ZoneKind::Garage,
        level: Level::Room,
        temperature: Temperature::from_celsius(5.0),
        x_m: 1.0,
        y_m: 1.0,
        width: Length::from_metres(1.25),
        depth: Length::from_metres(0.75),
    });
    plan.dryer.outlet_side = OutletSide::Left;
    plan
}

fn all_of(plan: Plan) -> State {
    let mut state = State::new(plan);
    update(&mut state, Action::SelectAll);
    state
}

/// Source: geometry; nothing in the physics or the code knows a compass.
#[test]
fn everything_turned_mirrored_or_moved_keeps_its_figures() {
    let (right, down) = (Length::from_inches(7.0), Length::from_inches(-3.5));
    for plan in [example(), furnished()] {
        for action in [
            Action::Turn(Turn::Quarter),
            Action::Turn(Turn::Mirror),
            Action::Nudge { right, down },
        ] {
            let mut state = all_of(plan.clone());
            let effects = update(&mut state, action.clone());
            assert_eq!(effects.len(), 1, "{action:?}");
            assert_ne!(*state.plan, plan, "{action:?}");
            same_figures(&plan, &state.plan).unwrap_or_else(|error| panic!("{action:?}: {error}"));
        }
    }
}

/// Four quarters, or a mirror's mirror, are where they began. Source: geometry; the tolerance is
/// the last digits of doubles.
#[test]
fn turns_come_round() {
    const LAST_DIGITS: f64 = 1e-12;
    let numbers = |plan: &Plan| {
        let mut found = Vec::new();
        numbers_in(&serde_json::to_value(plan).unwrap(), &mut found);
        found
    };
    for (turn, times) in [(Turn::Quarter, 4), (Turn::Mirror, 2)] {
        let plan = furnished();
        let mut state = all_of(plan.clone());
        for _ in 0..times {
            update(&mut state, Action::Turn(turn));
        }
        let (before, after) = (numbers(&plan), numbers(&state.plan));
        assert_eq!(before.len(), after.len());
        for (before, after) in before.iter().zip(&after) {
            assert!(
                (before - after).abs() < LAST_DIGITS,
                "{turn:?}: {before} became {after}"
            );
        }
    }
}

fn numbers_in(value: &Value, found: &mut Vec<f64>) {
    match value {
        Value::Array(items) => items.iter().for_each(|item| numbers_in(item, found)),
        Value::Object(fields) => fields.values().for_each(|field| numbers_in(field, found)),
        value => found.extend(value.as_f64()),
    }
}

/// A door opens to the same side of the room after its wall was mirrored: its jamb and its leaf lie
/// where the mirror puts them. Worked by hand: mirrored about x = 2, a door from 0.5 to 1.3 m of a wall
/// from (0, 0) to (4, 0) stands from x = 2.7 to 3.5 m, and still opens down the sheet.
#[test]
fn a_mirrored_door_opens_to_the_mirrored_side() {
    let mut plan = example();
    plan.walls.truncate(0);
    plan.openings.truncate(0);
    plan.walls.push(Wall {
        id: "w1".into(),
        from_x_m: 0.0,
        from_y_m: 0.0,
        to_x_m: 4.0,
        to_y_m: 0.0,
        thickness: Length::from_metres(0.1),
        outside: false,
    });
    plan.openings.push(Opening {
        id: "o1".into(),
        wall: "w1".into(),
        kind: OpeningKind::Door,
        offset: Length::from_metres(0.5),
        width: Length::from_metres(0.8),
    });
    let mut state = State::new(plan);
    let (at, reach, adds) = (Point::new(2.0, 0.0), 0.02, false);
    update(&mut state, Action::Press { at, reach, adds });
    update(&mut state, Action::Release);
    assert!(state.things.contains(&ThingId::Wall("w1".into())));
    update(&mut state, Action::Turn(Turn::Mirror));
    let wall = &state.plan.walls[0];
    assert_eq!(
        (wall.from(), wall.to()),
        (Point::new(0.0, 0.0), Point::new(4.0, 0.0))
    );
    let offset = state.plan.openings[0].offset.metres();
    assert!((offset - 2.7).abs() < 1e-12, "{offset}");
}

/// What cannot be turned by itself is told so, and stays as it is.
#[test]
fn an_opening_or_a_picture_alone_is_not_turned() {
    let mut plan = example();
    plan.picture = Some(Picture {
        coding: PictureCoding::Png,
        data_base64: "AAAA".into(),
        x_m: 0.0,
        y_m: 0.0,
        width: Length::from_metres(3.0),
        depth: Length::from_metres(2.0),
    });
    let opening = ThingId::Opening(plan.openings[0].id.clone());
    for things in [vec![], vec![opening], vec![ThingId::Picture]] {
        for turn in [Turn::Quarter, Turn::Mirror] {
            let mut state = State::new(plan.clone());
            state.things = things.iter().cloned().collect();
            let effects = update(&mut state, Action::Turn(turn));
            assert_eq!(effects, [Effect::Refuse(Refusal::NothingToTurn)]);
            assert_eq!(*state.plan, plan);
        }
    }
}
