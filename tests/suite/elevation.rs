//! The elevation: what it draws of a run from the side, and a rise dragged on it.
//! Source: geometry. What is expected is worked out below from the plan's points and rises alone,
//! without the project's own path.

use crate::example_file::example;
use crate::random_plan::{with_blower, with_stated_airflow};
use crate::seeded;
use crate::symmetry::{Move, moves};
use crate::tally::Tally;
use elbowroom::editor::{Action, Effect, State, pick_mark, rise_at, stepped_rise, update};
use elbowroom::plan::{ElementId, NodeId, Part, Plan, Point};
use elbowroom::report::words::ActionName;
use elbowroom::scene::{Elevation, Mark, Role, Shape, Step, Text, elevation};
use elbowroom::system::assess;
use elbowroom::units::{Length, UnitSystem};
use proptest::prelude::*;
use std::cell::Cell;

/// Rounding of coordinates in doubles, m.
const TOLERANCE: f64 = 1e-9;
const CASES: u32 = 200;

fn drawn(plan: &Plan) -> Elevation {
    let assessment = assess(plan);
    elevation(plan, assessment.working.as_ref().map(|(_, ledger)| ledger))
}

fn find<'a>(elevation: &'a Elevation, id: &str) -> Option<&'a Mark> {
    let id = format!("elevation:{id}");
    elevation.marks.iter().find(|mark| mark.id == id)
}

/// The places that a mark's outline runs through.
fn places(mark: &Mark) -> Vec<Point> {
    match &mark.shape {
        Shape::Path(steps) => steps
            .iter()
            .filter_map(|step| match step {
                Step::Move(at) | Step::Line(at) | Step::Arc { to: at, .. } => Some(*at),
                Step::Close => None,
            })
            .collect(),
        Shape::Circle { centre: at, .. }
        | Shape::Dot(at)
        | Shape::Text { at, .. }
        | Shape::Picture { corner: at, .. } => vec![*at],
    }
}

/// The outlet and every point: how far along, and the height above the floor past its riser.
fn expected_corners(plan: &Plan) -> Vec<(NodeId, f64, f64)> {
    let rise = |riser: Option<elbowroom::plan::Riser>| riser.map_or(0.0, |it| it.rise.metres());
    let mut at = plan.dryer.outlet();
    let (mut along, mut height) = (0.0, plan.dryer.outlet_height.metres());
    height += rise(plan.run.outlet.riser);
    let mut corners = vec![(NodeId::Outlet, along, height)];
    for point in &plan.run.points {
        let (dx, dy) = (point.position.x - at.x, point.position.y - at.y);
        along += (dx * dx + dy * dy).sqrt();
        height += rise(point.fitting.riser);
        at = point.position;
        corners.push((NodeId::Point(point.id.clone()), along, height));
    }
    corners
}

/// Handles stand at the sums of legs and of rises; casings join without a gap from the outlet to the
/// termination; every leg lies at the height at which the rises before it leave it.
fn stands_where_it_should(plan: &Plan) -> Result<(), TestCaseError> {
    let side = drawn(plan);
    let corners = expected_corners(plan);
    let near = |found: f64, expected: f64| (found - expected).abs() < TOLERANCE;
    for (node, along, height) in &corners {
        let handle = find(&side, &format!("corner:{node}"));
        let at = handle.map(|mark| places(mark)[0]).unwrap_or_default();
        prop_assert!(near(at.x, *along) && near(-at.y, *height), "{node}: {at:?}");
    }
    let handles = side.marks.iter();
    let handles = handles.filter(|mark| matches!(mark.role, Role::Corner(_)));
    prop_assert_eq!(handles.count(), corners.len());
    for pair in corners.windows(2) {
        let [(_, from, level), (node, to, _)] = pair else {
            continue;
        };
        // A leg's casing stays between its corners and at its level.
        let leg = find(&side, &format!("casing:leg:{node}"));
        for at in leg.map(places).unwrap_or_default() {
            prop_assert!(near(-at.y, *level), "{node}: {at:?}, level {level}");
            prop_assert!(at.x > from - TOLERANCE && at.x < to + TOLERANCE);
        }
        let dimension = find(&side, &format!("dimension:leg:{node}")).unwrap();
        let ends = places(dimension);
        prop_assert!(near(ends[0].x, *from) && near(ends[1].x, *to));
        let label = find(&side, &format!("length:leg:{node}")).unwrap();
        let Shape::Text {
            text: Text::LegLength(length),
            ..
        } = &label.shape
        else {
            return Err(TestCaseError::fail("no length"));
        };
        prop_assert!(near(length.metres(), to - from));
    }
    // The casings from the outlet on: each begins where the one before it ends.
    let mut pen = Point::new(0.0, -plan.dryer.outlet_height.metres());
    for casing in side.marks.iter().filter(|mark| mark.role == Role::Casing) {
        if casing.element.as_ref().map(|id| id.part) == Some(Part::Termination) {
            continue;
        }
        let places = places(casing);
        // A bend at the outlet itself has no straight before it: its tangent reaches back.
        let first = places[0];
        if pen.x > 0.0 {
            prop_assert!(
                pen.distance(first).metres() < TOLERANCE,
                "{}: a gap",
                casing.id
            );
        }
        pen = places[places.len() - 1];
    }
    let (_, along, height) = &corners[corners.len() - 1];
    prop_assert!(near(pen.x, *along) && near(-pen.y, *height), "{pen:?}");
    Ok(())
}

#[test]
fn corners_stand_at_the_sums_of_legs_and_rises() {
    seeded::check(CASES, &with_blower(), |plan| stands_where_it_should(&plan));
    stands_where_it_should(&example()).unwrap();
}

#[test]
fn the_example_is_as_long_as_its_legs_and_ends_at_the_height_of_its_rise() {
    let mut tally = Tally::new("the example from the side");
    let plan = example();
    let corners = expected_corners(&plan);
    let side = drawn(&plan);
    // 58 in up from an outlet at 5 in: both stand in the example.
    let inch = 0.0254;
    let (_, along, height) = &corners[corners.len() - 1];
    tally.within("height", *height, (58.0 + 5.0) * inch, TOLERANCE);
    let bar = find(&side, "dimension:height:termination").unwrap();
    let places = places(bar);
    tally.within("from the floor", places[0].y, 0.0, TOLERANCE);
    tally.within("to the end", -places[1].y, *height, TOLERANCE);
    let text = |id: &str| match &find(&side, id).unwrap().shape {
        Shape::Text { text, .. } => text.clone(),
        other => panic!("{other:?}"),
    };
    match (
        text("height:outlet"),
        text("height:termination"),
        text("length:riser:p1"),
    ) {
        (Text::Height(outlet), Text::Height(end), Text::Rise(rise)) => {
            tally.within("outlet", outlet.metres(), 5.0 * inch, TOLERANCE);
            tally.within("termination", end.metres(), 63.0 * inch, TOLERANCE);
            tally.within("rise", rise.metres(), 58.0 * inch, TOLERANCE);
        }
        other => panic!("{other:?}"),
    }
    let last = find(&side, "corner:p4").unwrap();
    let Shape::Dot(at) = last.shape else {
        panic!("{last:?}")
    };
    tally.within("length", at.x, *along, TOLERANCE);
    tally.finish(7);
}

#[test]
fn a_run_without_rises_is_level() {
    seeded::check(CASES, &with_stated_airflow(), |mut plan| {
        plan.run.outlet.riser = None;
        for point in &mut plan.run.points {
            point.fitting.riser = None;
        }
        let level = -plan.dryer.outlet_height.metres();
        let hood = |mark: &Mark| {
            let part = mark.element.as_ref().map(|element| element.part);
            part == Some(Part::Termination)
        };
        for mark in drawn(&plan).marks {
            let is_duct = matches!(mark.role, Role::Casing | Role::Bore | Role::Core);
            if (is_duct && !hood(&mark)) || matches!(mark.role, Role::Corner(_)) {
                for at in places(&mark) {
                    prop_assert!((at.y - level).abs() < TOLERANCE, "{mark:?}");
                }
            }
        }
        Ok(())
    });
}

#[test]
fn a_drop_goes_down() {
    let mut plan = example();
    plan.run.points[0].fitting.riser.as_mut().unwrap().rise = Length::from_metres(-0.6);
    let side = drawn(&plan);
    let riser = places(find(&side, "casing:riser:p1").unwrap());
    assert!(riser[1].y > riser[0].y, "{riser:?}");
    stands_where_it_should(&plan).unwrap();
    // And at the run's end the hood faces down.
    let mut plan = example();
    let last = plan.run.points.len() - 1;
    let fitting = &mut plan.run.points[last].fitting;
    fitting.riser = Some(elbowroom::plan::Riser {
        rise: Length::from_metres(-0.6),
        elbow: fitting.elbow,
    });
    let side = drawn(&plan);
    let end = places(find(&side, "corner:p4").unwrap())[0];
    let hood = places(find(&side, "casing:termination:p4").unwrap());
    let middle = hood.iter().map(|at| at.y).sum::<f64>() / 4.0;
    assert!(middle > end.y, "{hood:?} above {end:?}");
}

/// The moves of the sheet are those of the symmetry tests. Ranks are left out: of two elements that
/// cost the same, rounding decides which comes first.
fn stays(plan: &Plan, by: Move) -> Result<(), TestCaseError> {
    let marks = |plan: &Plan| {
        let mut marks = drawn(plan).marks;
        marks.retain(|mark| mark.role != Role::Rank);
        marks
    };
    let (before, after) = (marks(plan), marks(&by.plan(plan)));
    prop_assert_eq!(before.len(), after.len());
    for (mark, moved) in before.iter().zip(&after) {
        prop_assert_eq!(&mark.id, &moved.id);
        prop_assert_eq!(&mark.role, &moved.role);
        prop_assert!((mark.weight - moved.weight).abs() < TOLERANCE);
        prop_assert!((mark.width - moved.width).metres().abs() < TOLERANCE);
        let (mark_places, moved_places) = (places(mark), places(moved));
        prop_assert_eq!(mark_places.len(), moved_places.len());
        for (one, other) in mark_places.iter().zip(&moved_places) {
            prop_assert!(one.distance(*other).metres() < TOLERANCE, "{}", mark.id);
        }
    }
    Ok(())
}

#[test]
fn a_moved_plan_has_the_same_elevation() {
    let values = (with_blower(), moves());
    seeded::check(CASES, &values, |(plan, by)| stays(&plan, by));
}

/// Every element with a length has a duct; every row of the ledger that stands at a node of the run
/// has a mark of its own or the duct of its leg.
#[test]
fn every_element_with_a_length_shows() {
    let shown = Cell::new(0);
    seeded::check(CASES, &with_blower(), |plan| {
        let assessment = assess(&plan);
        let side = drawn(&plan);
        for element in &assessment.run.elements {
            let is_drawn = |mark: &Mark| mark.element.as_ref() == Some(&element.id);
            if element.developed_length > Length::ZERO {
                prop_assert!(
                    side.marks.iter().any(is_drawn),
                    "{} is not there",
                    element.id
                );
                shown.set(shown.get() + 1);
            }
        }
        Ok(())
    });
    assert!(shown.get() > 1000, "only {}", shown.get());
}

fn drag(state: &mut State, node: &NodeId, inches: f64) -> Vec<Effect> {
    let action = Action::DragRise {
        node: node.clone(),
        rise: Length::from_inches(inches),
        slack: Length::from_metres(0.01),
    };
    update(state, action)
}

#[test]
fn a_dragged_rise_is_one_step_on_whole_inches_or_centimetres() {
    for (units, grid) in [(UnitSystem::UsCustomary, 0.0254), (UnitSystem::Si, 0.01)] {
        for node in [
            NodeId::Outlet,
            NodeId::Point("p1".into()),
            NodeId::Point("p4".into()),
        ] {
            let mut state = State::new(example());
            update(&mut state, Action::SetUnits(units));
            let before = state.plan.clone();
            let held = rise_at(&before, &node).inches();
            for inches in [held + 0.3, held + 3.3, 0.0, -11.4, 40.7] {
                assert_eq!(drag(&mut state, &node, inches), []);
                let rise = rise_at(&state.plan, &node).metres();
                if (inches - held).abs() > 1.0 {
                    let steps = rise / grid;
                    assert!((steps - steps.round()).abs() < 1e-6, "{rise}");
                    assert!((rise - inches * 0.0254).abs() <= grid / 2.0 + TOLERANCE);
                }
                assert_eq!(state.history.next_undo(), None);
            }
            let dragged = state.plan.clone();
            assert_eq!(
                update(&mut state, Action::Release),
                [Effect::Announce(ActionName::SetRise)]
            );
            assert_eq!(state.history.next_undo(), Some(ActionName::SetRise));
            update(&mut state, Action::Undo);
            assert_eq!(state.plan, before);
            assert_eq!(state.history.next_undo(), None);
            update(&mut state, Action::Redo);
            assert_eq!(state.plan, dragged);
        }
    }
}

#[test]
fn a_rise_pulled_out_and_back_or_hardly_pulled_is_no_step() {
    let node = NodeId::Point("p1".into());
    let mut state = State::new(example());
    let before = state.plan.clone();
    // Within the slack: 58.2 in for 58 in.
    drag(&mut state, &node, 58.2);
    assert!(state.gesture.is_none());
    for inches in [70.0, 0.0, 58.2] {
        drag(&mut state, &node, inches);
    }
    assert_eq!(update(&mut state, Action::Release), []);
    assert_eq!(state.plan, before);
    // Taken back in the middle.
    drag(&mut state, &node, 0.0);
    assert!(state.plan.run.points[0].fitting.riser.is_none());
    update(&mut state, Action::Cancel);
    assert_eq!(state.plan, before);
    assert_eq!(state.history.next_undo(), None);
    // A drag on the plan does not take hold of a rise.
    drag(&mut state, &node, 30.0);
    let raised = state.plan.clone();
    let (to, reach) = (Point::new(9.0, 9.0), 0.01);
    update(&mut state, Action::Drag { to, reach });
    assert_eq!(state.plan, raised);
}

#[test]
fn a_rise_pulled_down_to_nought_and_up_again_keeps_its_elbow() {
    let node = NodeId::Point("p1".into());
    let mut plan = example();
    let mark_of_it = Length::from_metres(0.123);
    plan.run.points[0]
        .fitting
        .riser
        .as_mut()
        .unwrap()
        .elbow
        .radius = mark_of_it;
    let mut state = State::new(plan);
    drag(&mut state, &node, 0.0);
    drag(&mut state, &node, 20.0);
    update(&mut state, Action::Release);
    let riser = state.plan.run.points[0].fitting.riser.unwrap();
    assert_eq!(riser.elbow.radius, mark_of_it);
}

#[test]
fn as_many_steps_down_as_up_end_at_nought() {
    for step in [0.0254, 0.3048, 0.01, 0.1].map(Length::from_metres) {
        for steps in 1..=40 {
            let mut rise = Length::ZERO;
            for _ in 0..steps {
                rise = stepped_rise(rise, step);
            }
            for _ in 0..steps {
                rise = stepped_rise(rise, -step);
            }
            assert_eq!(rise, Length::ZERO, "{steps} of {step:?}");
        }
    }
}

#[test]
fn a_press_finds_the_handle_before_the_duct_and_nothing_far_off() {
    let side = drawn(&example());
    let handle = places(find(&side, "corner:p2").unwrap())[0];
    let role = |at: Point| pick_mark(&side.marks, at, 0.1).map(|mark| mark.role.clone());
    assert_eq!(
        role(Point::new(handle.x, handle.y + 0.05)),
        Some(Role::Corner(NodeId::Point("p2".into())))
    );
    let leg = places(find(&side, "casing:leg:p4").unwrap());
    let on_leg = leg[0].halfway(leg[1]);
    let found = pick_mark(&side.marks, Point::new(on_leg.x, on_leg.y + 0.05), 0.1);
    let element = ElementId::new(&NodeId::Point("p4".into()), Part::Leg);
    assert_eq!(found.and_then(|mark| mark.element.clone()), Some(element));
    assert_eq!(role(Point::new(on_leg.x, on_leg.y + 0.2)), None);
}
