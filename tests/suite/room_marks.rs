//! The marks of the room stay where the plan keeps the same room, so that a drag need not draw it anew.
//! Source: the marks themselves, drawn before and after each change.

use elbowroom::plan::{Level, Plan, Zone, ZoneKind};
use elbowroom::report::the_example;
use elbowroom::scene::{is_same_room, room_marks, run_marks, scene};
use elbowroom::units::{Length, Temperature};

type Change = (&'static str, fn(&mut Plan));

const OF_THE_ROOM: [Change; 5] = [
    ("a wall", |plan| {
        plan.walls[0].thickness = Length::from_metres(0.2);
    }),
    ("an opening", |plan| {
        plan.openings.pop();
    }),
    ("an obstacle", |plan| plan.obstacles[0].name.push('x')),
    ("the dryer", |plan| plan.dryer.turned_deg += 90.0),
    ("a zone", |plan| {
        plan.zones.push(Zone {
            id: "z1".into(),
            kind: ZoneKind::Garage,
            level: Level::default(),
            temperature: Temperature::from_celsius(5.0),
            x_m: 0.0,
            y_m: 0.0,
            width: Length::from_metres(1.0),
            depth: Length::from_metres(1.0),
        });
    }),
];

const OF_ALL_ELSE: [Change; 4] = [
    ("a corner", |plan| plan.run.points[1].position.x += 0.1),
    ("the run's diameter", |plan| {
        plan.run.diameter = Length::from_inches(5.0);
    }),
    ("the title", |plan| plan.title.push('x')),
    ("the ceiling", |plan| {
        plan.ceiling_height = Length::from_metres(2.5);
    }),
];

#[test]
fn a_change_of_the_room_is_another_room_and_no_other_change_is() {
    let before = the_example();
    for (what, change) in OF_THE_ROOM {
        let mut after = before.clone();
        change(&mut after);
        assert!(!is_same_room(&before, &after), "{what}");
        assert_ne!(room_marks(&before), room_marks(&after), "{what}");
    }
    for (what, change) in OF_ALL_ELSE {
        let mut after = before.clone();
        change(&mut after);
        assert!(is_same_room(&before, &after), "{what}");
        assert_eq!(room_marks(&before), room_marks(&after), "{what}");
    }
}

#[test]
fn a_scene_is_the_room_with_the_run_over_it() {
    let plan = the_example();
    let marks = [room_marks(&plan), run_marks(&plan, None)].concat();
    assert_eq!(scene(&plan, None), marks);
}
