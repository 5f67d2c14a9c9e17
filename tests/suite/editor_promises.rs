//! The editor under random hands, beside a model that keeps its own account: whatever is done in
//! whatever order, in the middle of a drag too, the plan stays whole and every step can be taken
//! back.
//! Source: that undo and redo undo each other, that what is refused changes nothing and that a drag
//! is one step are the editor's own promises.

use crate::editor_actions::{KINDS, Spot, edit, kind, spot, step};
use crate::editor_model::{Outcome, Watched};
use crate::example_file::example;
use crate::random_plan::with_blower;
use crate::seeded;
use elbowroom::editor::Action;
use elbowroom::plan::{Input, Override, Point};
use proptest::prelude::*;
use std::cell::Cell;
use std::sync::Arc;

/// A tally over all cases, so that a property that never came to the point fails.
fn add(tally: &Cell<u32>, yes: bool) {
    tally.set(tally.get() + u32::from(yes));
}

#[test]
fn every_kind_of_action_in_any_order_keeps_every_promise() {
    let plans = prop_oneof![2 => Just(example()), 1 => with_blower()];
    let steps = prop::collection::vec(step(), 20..60);
    let tried: [Cell<u32>; KINDS] = [const { Cell::new(0) }; KINDS];
    let (announced, refused, broken_off) = (Cell::new(0), Cell::new(0), Cell::new(0));
    seeded::check(2000, &(plans, steps), |(plan, steps)| {
        let mut watched = Watched::new(plan);
        for step in &steps {
            let action = step.action(&watched.state);
            let dragging = watched.state.gesture.is_some();
            let outcome = watched.take(&action)?;
            add(&tried[kind(&action)], true);
            add(&announced, outcome == Outcome::Announced);
            add(&refused, outcome == Outcome::Refused);
            let ends = kind(&action) > kind(&Action::Cancel);
            add(
                &broken_off,
                dragging && ends && watched.state.gesture.is_none(),
            );
        }
        Ok(())
    });
    for (kind, tried) in tried.iter().enumerate() {
        let tried = tried.get();
        assert!(tried > 100, "kind {kind} was tried {tried} times");
    }
    for tally in [announced, refused, broken_off] {
        assert!(tally.get() > 2000, "only {}", tally.get());
    }
}

#[test]
fn undo_after_200_edits_returns_the_first_plan_and_redo_the_last() {
    let edits = prop::collection::vec(edit(), 200);
    let fewest = Cell::new(u32::MAX);
    seeded::check(60, &(with_blower(), edits), |(plan, edits)| {
        let mut watched = Watched::new(plan.clone());
        let mut announced = 0;
        for edit in &edits {
            let outcome = watched.take(&edit.action(&watched.state))?;
            announced += u32::from(outcome == Outcome::Announced);
        }
        let last = Arc::clone(&watched.state.plan);
        for _ in 0..announced {
            prop_assert_eq!(watched.take(&Action::Undo)?, Outcome::Announced);
        }
        prop_assert_eq!(&*watched.state.plan, &plan);
        prop_assert_eq!(watched.take(&Action::Undo)?, Outcome::Silent);
        for _ in 0..announced {
            prop_assert_eq!(watched.take(&Action::Redo)?, Outcome::Announced);
        }
        prop_assert_eq!(&watched.state.plan, &last);
        prop_assert_eq!(watched.take(&Action::Redo)?, Outcome::Silent);
        fewest.set(fewest.get().min(announced));
        Ok(())
    });
    let fewest = fewest.get();
    assert!(
        fewest > 40,
        "only {fewest} edits of 200 changed a plan that does nothing else"
    );
}

/// How far off a press still means a thing, and how near a line catches a corner, m: those of a
/// mouse where a pixel is 2 mm.
const PRESS_REACH: f64 = 0.024;
const SNAP_REACH: f64 = 0.016;

fn press(watched: &mut Watched, spot: Spot) -> Result<Point, TestCaseError> {
    let at = spot.point(&watched.state.plan);
    let reach = PRESS_REACH;
    prop_assert_eq!(
        watched.take(&Action::Press {
            at,
            reach,
            adds: false
        })?,
        Outcome::Silent
    );
    Ok(at)
}

fn drag(watched: &mut Watched, to: Point) -> Result<(), TestCaseError> {
    let reach = SNAP_REACH;
    prop_assert_eq!(watched.take(&Action::Drag { to, reach })?, Outcome::Silent);
    Ok(())
}

#[test]
fn a_drag_is_one_undo_step() {
    let moves = prop::collection::vec((-1.0..5.0_f64, -1.0..5.0_f64), 1..12);
    let steps = Cell::new(0);
    seeded::check(
        500,
        &(with_blower(), spot(), moves),
        |(plan, spot, moves)| {
            let mut watched = Watched::new(plan.clone());
            press(&mut watched, spot)?;
            for (x, y) in &moves {
                drag(&mut watched, Point::new(*x, *y))?;
            }
            let moved = *watched.state.plan != plan;
            let released = watched.take(&Action::Release)?;
            prop_assert_eq!(released == Outcome::Announced, moved);
            prop_assert_eq!(watched.steps(), usize::from(moved));
            watched.take(&Action::Undo)?;
            prop_assert_eq!(&*watched.state.plan, &plan);
            add(&steps, moved);
            Ok(())
        },
    );
    let steps = steps.get();
    assert!(steps > 300, "only {steps} drags moved anything");
}

/// A hand is never quite still: what moves less than a quarter of the distance at which lines catch
/// is a press, also where a corner stands off the grid.
#[test]
fn a_press_that_hardly_moves_is_no_step() {
    let least = 0.24 * SNAP_REACH;
    let tremble = prop::collection::vec((0.0..least, 0.0..core::f64::consts::TAU), 0..4);
    seeded::check(
        500,
        &(with_blower(), spot(), tremble),
        |(plan, spot, tremble)| {
            let mut watched = Watched::new(plan.clone());
            let at = press(&mut watched, spot)?;
            for (far, way) in &tremble {
                let (sine, cosine) = way.sin_cos();
                let to = Point::new(at.x + far * cosine, at.y + far * sine);
                drag(&mut watched, to)?;
                prop_assert_eq!(&*watched.state.plan, &plan);
            }
            prop_assert_eq!(watched.take(&Action::Release)?, Outcome::Silent);
            prop_assert_eq!(watched.steps(), 0);
            Ok(())
        },
    );
}

#[test]
fn the_same_edit_again_is_no_second_step() {
    let sets = |action: &Action| {
        // The others move on each time.
        !matches!(
            action,
            Action::Nudge { .. }
                | Action::InsertBend { .. }
                | Action::DeleteBend(_)
                | Action::ChangeVisit { .. }
        )
    };
    let edits = prop::collection::vec(edit(), 1..12);
    let repeated = Cell::new(0);
    seeded::check(500, &(with_blower(), edits), |(plan, edits)| {
        let mut watched = Watched::new(plan);
        for edit in &edits {
            let action = edit.action(&watched.state);
            let first = watched.take(&action)?;
            if sets(&action) && first == Outcome::Announced {
                prop_assert_eq!(watched.take(&action)?, Outcome::Silent, "{:?}", action);
                add(&repeated, true);
            }
        }
        Ok(())
    });
    let repeated = repeated.get();
    assert!(repeated > 500, "only {repeated} edits");
}

#[test]
fn an_own_value_set_to_what_it_is_is_no_step() -> Result<(), TestCaseError> {
    let mut watched = Watched::new(example());
    let set = |input: Input, likely: f64| Action::SetOverride {
        input,
        value: Some(Override {
            input,
            low: likely,
            likely,
            high: likely,
            note: String::new(),
        }),
    };
    let (first, second) = (set(Input::WallHood, 2.0), set(Input::FlapWeight, 5.0));
    prop_assert_eq!(watched.take(&first)?, Outcome::Announced);
    prop_assert_eq!(watched.take(&second)?, Outcome::Announced);
    prop_assert_eq!(watched.take(&first)?, Outcome::Silent);
    Ok(())
}

/// A file may call a point `outlet`, as the program calls the dryer's own; two marks of the drawing
/// must not come to one id for that.
#[test]
fn a_point_called_outlet_is_not_taken_for_the_dryers() -> Result<(), TestCaseError> {
    let mut plan = example();
    // A turn at the dryer's outlet, and one at the point of that name.
    let outlet = plan.dryer.outlet();
    plan.run.points[0].id = "outlet".into();
    plan.run.points[0].position = Point::new(outlet.x + 1.5, outlet.y);
    let mut watched = Watched::new(example());
    let opened = watched.take(&Action::Open(Box::new(plan)))?;
    prop_assert!(opened != Outcome::Silent);
    Ok(())
}
