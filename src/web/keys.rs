//! Keys that act while the drawing is focused, and only then.

use super::draw_length::DRAW_LENGTH;
use super::store::Store;
use crate::editor::{Action, Tool, Turn};
use crate::plan::{ElementId, NodeId, ObstacleKind, OpeningKind, Part, ZoneKind};
use crate::units::{Length, UnitSystem};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, KeyboardEvent};

/// Takes a key pressed on the drawing.
pub(super) fn pressed(store: Store, event: &KeyboardEvent) {
    let with_command = event.ctrl_key() || event.meta_key();
    let key = event.key();
    if key == "?" {
        event.prevent_default();
        return store.shows_keys.set(true);
    }
    if !with_command && types_a_length(store, &key) {
        // The key goes on into the field that has the focus now.
        return;
    }
    if !with_command && matches!(key.as_str(), "l" | "L") {
        event.prevent_default();
        store.typed_on_drawing.set(selected_length(store));
        return;
    }
    let Some(action) = action(store, &key, event.shift_key(), with_command) else {
        return;
    };
    event.prevent_default();
    store.act(action);
}

/// Moves the focus into the field for the next length where a number begins.
fn types_a_length(store: Store, key: &str) -> bool {
    let begins =
        key.len() == 1 && key.starts_with(|sign: char| sign.is_ascii_digit() || sign == '.');
    let field = begins
        .then(|| document().get_element_by_id(DRAW_LENGTH))
        .flatten()
        .and_then(|field| field.dyn_into::<HtmlElement>().ok());
    let waits = store.with_state_now(|state| state.pen.is_some());
    waits && field.is_some_and(|field| field.focus().is_ok())
}

/// The selected leg or riser.
fn selected_length(store: Store) -> Option<ElementId> {
    store
        .with_state_now(|state| state.selection.clone())
        .filter(|id| matches!(id.part, Part::Leg | Part::Riser))
}

fn action(store: Store, key: &str, shift: bool, command: bool) -> Option<Action> {
    if command {
        return match (key.to_ascii_lowercase().as_str(), shift) {
            ("a", false) => Some(Action::SelectAll),
            _ => history(key, shift),
        };
    }
    let step = step(store, shift);
    let nudge = |right: Length, down: Length| Some(Action::Nudge { right, down });
    match key {
        "ArrowLeft" => return nudge(-step, Length::ZERO),
        "ArrowRight" => return nudge(step, Length::ZERO),
        "ArrowUp" => return nudge(Length::ZERO, -step),
        "ArrowDown" => return nudge(Length::ZERO, step),
        "+" | "=" => return Some(zoom(store, 1.25)),
        "-" => return Some(zoom(store, 0.8)),
        _ => {}
    }
    if let Some(tool) = tool(key) {
        return Some(Action::TakeTool(tool));
    }
    let draws = store.with_state_now(|state| state.tool != Tool::Pick);
    match (key, draws) {
        ("Enter", true) => Some(Action::PutPoint),
        ("Escape", true) => Some(Action::FinishDrawing),
        ("Escape", false) => Some(let_go(store)),
        ("n" | "N", _) => Some(Action::SelectNeighbour { forward: true }),
        ("p" | "P", _) => Some(Action::SelectNeighbour { forward: false }),
        ("t" | "T", _) => Some(Action::SelectNextThing { forward: !shift }),
        ("x" | "X", _) => Some(Action::KeepThings),
        ("b" | "B", false) => selected_leg(store).map(|leg| Action::InsertBend { leg, at: None }),
        ("c" | "C", false) => Some(Action::Copy),
        ("m" | "M", false) => Some(Action::Turn(Turn::Mirror)),
        ("q" | "Q", false) => Some(Action::Turn(Turn::Quarter)),
        ("Delete" | "Backspace", false) => Some(Action::Remove),
        ("0", false) => Some(Action::ShowAll),
        _ => None,
    }
}

/// What a key does to the history while Ctrl is held.
pub(super) fn history(key: &str, shift: bool) -> Option<Action> {
    match (key.to_ascii_lowercase().as_str(), shift) {
        ("z", false) => Some(Action::Undo),
        ("z", true) | ("y", false) => Some(Action::Redo),
        _ => None,
    }
}

/// The tool that a key takes in hand.
fn tool(key: &str) -> Option<Tool> {
    Some(match key.to_ascii_lowercase().as_str() {
        "r" => Tool::Run,
        "w" => Tool::Wall { outside: true },
        "i" => Tool::Wall { outside: false },
        "g" => Tool::Opening(OpeningKind::Window),
        "d" => Tool::Opening(OpeningKind::Door),
        "a" => Tool::Opening(OpeningKind::AirIntake),
        "o" => Tool::Obstacle(ObstacleKind::ClosedArea),
        "z" => Tool::Zone(ZoneKind::Heated),
        _ => return None,
    })
}

/// A drag that goes on is taken back; else what is selected is let go.
fn let_go(store: Store) -> Action {
    if store.with_state_now(|state| state.gesture.is_some()) {
        Action::Cancel
    } else {
        Action::Select(None)
    }
}

fn selected_leg(store: Store) -> Option<NodeId> {
    store.with_state_now(|state| {
        let selected = state.selection.as_ref()?;
        (selected.part == Part::Leg).then(|| selected.node.clone())
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
pub(super) fn step(store: Store, far: bool) -> Length {
    match (store.with_state_now(|state| state.units), far) {
        (UnitSystem::UsCustomary, false) => Length::from_inches(1.0),
        (UnitSystem::UsCustomary, true) => Length::from_feet(1.0),
        (UnitSystem::Si, false) => Length::from_metres(0.01),
        (UnitSystem::Si, true) => Length::from_metres(0.1),
    }
}
