//! Keys that act while the elevation is focused, and only then.

use super::keys;
use super::store::Store;
use crate::editor::{Action, rise_at, stepped_rise};
use crate::plan::Part;
use web_sys::KeyboardEvent;

/// Takes a key pressed on the elevation.
pub(super) fn pressed(store: Store, event: &KeyboardEvent) {
    let with_command = event.ctrl_key() || event.meta_key();
    let action = if with_command {
        keys::history(&event.key(), event.shift_key())
    } else {
        action(store, &event.key(), event.shift_key())
    };
    if let Some(action) = action {
        event.prevent_default();
        store.act(action);
    }
}

fn action(store: Store, key: &str, shift: bool) -> Option<Action> {
    match key {
        "n" | "N" => Some(Action::SelectNeighbour { forward: true }),
        "p" | "P" => Some(Action::SelectNeighbour { forward: false }),
        "PageUp" => raise(store, shift, 1.0),
        "PageDown" => raise(store, shift, -1.0),
        "Escape" => Some(Action::Select(None)),
        _ => None,
    }
}

/// A step up or down at the selected corner. A leg is no corner: there the key stays the page's.
fn raise(store: Store, far: bool, way: f64) -> Option<Action> {
    let step = keys::step(store, far) * way;
    store.with_state_now(|state| {
        let selected = state.selection.as_ref().filter(|id| id.part != Part::Leg)?;
        Some(Action::SetRise {
            node: selected.node.clone(),
            rise: stepped_rise(rise_at(&state.plan, &selected.node), step),
        })
    })
}
