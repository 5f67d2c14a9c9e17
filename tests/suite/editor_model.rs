//! What must hold after every action on the editor, and a second, plain account of its history:
//! two stacks of whole plans.

use crate::editor_actions::kind;
use elbowroom::editor::{Action, Effect, Held, State, update};
use elbowroom::plan::{Plan, RunPath, read, validate, write};
use elbowroom::report::figures;
use elbowroom::scene::{elevation, scene};
use proptest::prelude::*;
use serde_json::Value;
use std::collections::BTreeSet;
use std::sync::Arc;

/// The editor beside what it should have done.
pub struct Watched {
    pub state: State,
    /// The plan that is left when a press is taken back.
    settled: Arc<Plan>,
    undo: Vec<Arc<Plan>>,
    redo: Vec<Arc<Plan>>,
}

/// What an action did.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    Announced,
    Refused,
    Silent,
}

impl Watched {
    pub fn new(plan: Plan) -> Self {
        let state = State::new(plan);
        Self {
            settled: Arc::clone(&state.plan),
            state,
            undo: Vec::new(),
            redo: Vec::new(),
        }
    }

    /// How many steps can be taken back.
    pub fn steps(&self) -> usize {
        self.undo.len()
    }

    /// Takes `action` and checks everything.
    pub fn take(&mut self, action: &Action) -> Result<Outcome, TestCaseError> {
        let drawn = Arc::clone(&self.state.plan);
        let effects = update(&mut self.state, action.clone());
        let outcome = match effects.as_slice() {
            [] => Outcome::Silent,
            [Effect::Announce(_)] => Outcome::Announced,
            [Effect::Refuse(_)] => Outcome::Refused,
            more => return Err(TestCaseError::fail(format!("{more:?}"))),
        };
        if outcome == Outcome::Announced {
            self.step_taken(action)?;
        }
        // Outside a press, what is not announced changed nothing; in one, the plan before it waits.
        if self.state.gesture.is_none() {
            prop_assert!(same(&self.state.plan, &self.settled), "changed in silence");
        }
        self.press_can_be_taken_back()?;
        self.undo_then_redo_is_identity()?;
        self.selection_is_real()?;
        view_is_sound(&self.state)?;
        if !Arc::ptr_eq(&drawn, &self.state.plan) {
            plan_is_sound(&self.state.plan)?;
        }
        Ok(outcome)
    }

    fn step_taken(&mut self, action: &Action) -> Result<(), TestCaseError> {
        let now = Arc::clone(&self.state.plan);
        let before = core::mem::replace(&mut self.settled, Arc::clone(&now));
        // One of two plans that look the same may be another job.
        let changes_places = matches!(action, Action::Exchange(_));
        prop_assert!(
            changes_places || !same(&now, &before),
            "a step that changed nothing"
        );
        let expected = if kind(action) == kind(&Action::Undo) {
            self.redo.push(before);
            self.undo.pop()
        } else if kind(action) == kind(&Action::Redo) {
            self.undo.push(before);
            self.redo.pop()
        } else {
            self.undo.push(before);
            self.redo.clear();
            return Ok(());
        };
        let expected = expected.is_some_and(|expected| same(&now, &expected));
        prop_assert!(expected, "another plan came back");
        Ok(())
    }

    fn press_can_be_taken_back(&self) -> Result<(), TestCaseError> {
        let mut taken_back = self.state.clone();
        let effects = update(&mut taken_back, Action::Cancel);
        prop_assert!(effects.is_empty());
        prop_assert!(taken_back.gesture.is_none());
        prop_assert!(same(&taken_back.plan, &self.settled), "not taken back");
        Ok(())
    }

    /// And the buttons offer exactly what there is.
    fn undo_then_redo_is_identity(&self) -> Result<(), TestCaseError> {
        let history = &self.state.history;
        prop_assert_eq!(history.next_undo().is_some(), !self.undo.is_empty());
        prop_assert_eq!(history.next_redo().is_some(), !self.redo.is_empty());
        for (there, back, waiting) in [
            (Action::Undo, Action::Redo, self.undo.last()),
            (Action::Redo, Action::Undo, self.redo.last()),
        ] {
            let mut state = self.state.clone();
            let effects = update(&mut state, there);
            prop_assert_eq!(effects.len(), usize::from(waiting.is_some()));
            let waiting = waiting.unwrap_or(&self.settled);
            prop_assert!(same(&state.plan, waiting), "another plan came back");
            if !effects.is_empty() {
                update(&mut state, back);
            }
            prop_assert!(same(&state.plan, &self.settled), "not the plan it was");
            prop_assert_eq!(state.history.next_undo(), history.next_undo());
            prop_assert_eq!(state.history.next_redo(), history.next_redo());
        }
        Ok(())
    }

    /// The corner of the selected element stands in the plan, and the pressed one too.
    fn selection_is_real(&self) -> Result<(), TestCaseError> {
        let run = &self.state.plan.run;
        if let Some(selected) = &self.state.selection {
            prop_assert!(run.fitting(&selected.node).is_some(), "{selected} is gone");
        }
        if let Some(Held::Corner(node) | Held::NewBend(node)) =
            self.state.gesture.as_ref().map(|gesture| &gesture.held)
        {
            prop_assert!(run.fitting(node).is_some());
        }
        for thing in &self.state.things {
            prop_assert!(self.state.plan.thing(thing).is_some(), "{thing} is gone");
        }
        prop_assert!(self.state.things.is_empty() || self.state.selection.is_none());
        Ok(())
    }
}

/// Whether two plans are equal; the very same one always is.
fn same(one: &Arc<Plan>, other: &Arc<Plan>) -> bool {
    Arc::ptr_eq(one, other) || one == other
}

fn view_is_sound(state: &State) -> Result<(), TestCaseError> {
    let view = &state.view;
    let numbers = [view.origin.x, view.origin.y, view.size.0, view.size.1];
    prop_assert!(numbers.iter().all(|number| number.is_finite()), "{view:?}");
    prop_assert!(view.size.0 > 0.0 && view.size.1 > 0.0, "{view:?}");
    let scale = view.metres_per_pixel;
    prop_assert!(scale > 0.0 && scale.is_finite(), "{view:?}");
    Ok(())
}

/// The plan can be kept and shown: valid, the same after a trip through its file, with figures and
/// a drawing.
fn plan_is_sound(plan: &Plan) -> Result<(), TestCaseError> {
    prop_assert_eq!(validate(plan), Ok(()));
    let text = write(plan);
    let again = read(text.as_bytes());
    prop_assert_eq!(again.as_ref(), Ok(plan), "written as {}", text);

    let (figures, assessment) = figures(plan);
    let mut missing = Vec::new();
    nulls(&serde_json::to_value(&figures).unwrap(), "", &mut missing);
    // JSON has no sign for infinite and not-a-number: they would be null as well.
    missing.retain(|path| !may_be_missing(path, figures.totals.is_some()));
    prop_assert!(missing.is_empty(), "not finite: {missing:?}");

    let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
    let mut ids = BTreeSet::new();
    for mark in scene(plan, ledger) {
        prop_assert!((0.0..=1.0).contains(&mark.weight), "{mark:?}");
        prop_assert!(mark.width.is_finite(), "{mark:?}");
        prop_assert!(ids.insert(mark.id.clone()), "two marks are {}", mark.id);
    }
    let side = elevation(plan, ledger);
    let (width, height) = side.bounds.size();
    prop_assert!(width.is_finite() && height.is_finite(), "{:?}", side.bounds);
    for mark in side.marks {
        prop_assert!((0.0..=1.0).contains(&mark.weight), "{mark:?}");
        prop_assert!(ids.insert(mark.id.clone()), "two marks are {}", mark.id);
    }
    let pieces = RunPath::of(plan).pieces;
    let names: BTreeSet<_> = pieces.iter().map(|piece| piece.id.to_string()).collect();
    prop_assert_eq!(names.len(), pieces.len());
    Ok(())
}

fn nulls(value: &Value, path: &str, found: &mut Vec<String>) {
    match value {
        Value::Null => found.push(path.to_owned()),
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                nulls(item, &format!("{path}/{index}"), found);
            }
        }
        Value::Object(fields) => {
            for (name, field) in fields {
                nulls(field, &format!("{path}/{name}"), found);
            }
        }
        _ => {}
    }
}

/// Whether a figure is one that there may be none of: what the code has no row for, what a method
/// does not cover, and where no air moves all that hangs on air.
fn may_be_missing(path: &str, air_moves: bool) -> bool {
    let no_air = path == "/totals" || path.ends_with("/air");
    let no_method = path.contains("/methods/") && path.ends_with("/1");
    path.ends_with("/code_deduction_m") || no_method || (no_air && !air_moves)
}
