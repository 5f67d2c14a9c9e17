//! Keys that act while the drawing is focused, and only then.

use super::store::Store;
use crate::editor::Action;
use crate::plan::{NodeId, Part};
use crate::units::{Length, UnitSystem};
use leptos::prelude::Set;
use web_sys::KeyboardEvent;

/// Takes a key pressed on the drawing.
pub(super) fn pressed(store: Store, event: &KeyboardEvent) {
    let with_command = event.ctrl_key() || event.meta_key();
    if event.key() == "?" {
        event.prevent_default();
        return store.shows_keys.set(true);
    }
    let Some(action) = action(store, &event.key(), event.shift_key(), with_command) else {
        return;
    };
    event.prevent_default();
    store.act(action);
}

fn action(store: Store, key: &str, shift: bool, command: bool) -> Option<Action> {
    if command {
        return match (key.to_lowercase().as_str(), shift) {
            ("z", false) => Some(Action::Undo),
            ("z", true) | ("y", false) => Some(Action::Redo),
            _ => None,
        };
    }
    let step = step(store, shift);
    let nudge = |right: Length, down: Length| Some(Action::Nudge { right, down });
    match key {
        "ArrowLeft" => nudge(-step, Length::ZERO),
        "ArrowRight" => nudge(step, Length::ZERO),
        "ArrowUp" => nudge(Length::ZERO, -step),
        "ArrowDown" => nudge(Length::ZERO, step),
        "n" | "N" => Some(Action::SelectNeighbour { forward: true }),
        "p" | "P" => Some(Action::SelectNeighbour { forward: false }),
        "b" | "B" => selected(store, |part| part == Part::Leg)
            .map(|leg| Action::InsertBend { leg, at: None }),
        "Delete" | "Backspace" => selected(store, |part| part != Part::Leg).map(Action::DeleteBend),
        "Escape" => Some(Action::Select(None)),
        "+" | "=" => Some(zoom(store, 1.25)),
        "-" => Some(zoom(store, 0.8)),
        "0" => Some(Action::ShowAll),
        _ => None,
    }
}

fn selected(store: Store, fits: impl Fn(Part) -> bool) -> Option<NodeId> {
    store.with_state_now(|state| {
        let selected = state.selection.as_ref()?;
        fits(selected.part).then(|| selected.node.clone())
    })
}

/// Zooms about the middle of the drawing.
pub(super) fn zoom(store: Store, factor: f64) -> Action {
    let (width, height) = store.with_state_now(|state| state.view.size);
    Action::Zoom {
        x: width / 2.0,
        y: height / 2.0,
        factor,
    }
}

/// An inch or a centimetre; with Shift a foot or ten centimetres.
fn step(store: Store, far: bool) -> Length {
    match (store.with_state_now(|state| state.units), far) {
        (UnitSystem::UsCustomary, false) => Length::from_inches(1.0),
        (UnitSystem::UsCustomary, true) => Length::from_feet(1.0),
        (UnitSystem::Si, false) => Length::from_metres(0.01),
        (UnitSystem::Si, true) => Length::from_metres(0.1),
    }
}
