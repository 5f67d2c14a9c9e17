//! The selected element's panel. Where the page is narrow it is a sheet from below, which is there
//! only while something is selected; the drawing stays in use above it.

use super::focus::{CANVAS, focus_drawing, focus_on};
use super::selected_panel::SelectedPanel;
use super::soon::next_frame;
use super::store::{Store, label_text};
use crate::editor::{Action, Tool};
use crate::report::words::Label;
use leptos::prelude::*;
use std::collections::BTreeSet;
use std::sync::Arc;
use wasm_bindgen::JsCast;
use web_sys::{Element, FocusEvent, HtmlElement};

/// Room left about what is brought into sight, px.
const ROOM: f64 = 12.0;
const ELEVATION: &str = ".elevation-canvas";

#[component]
pub(super) fn SelectedSheet() -> impl IntoView {
    let store = expect_context::<Store>();
    let sheet = NodeRef::<leptos::html::Div>::new();
    let close = NodeRef::<leptos::html::Button>::new();
    let came_from = StoredValue::new_local(None::<Element>);
    let open = is_open(store);
    // The close button shows only where the panel is a sheet.
    let is_sheet = move || {
        close
            .get_untracked()
            .is_some_and(|close| close.offset_width() > 0)
    };
    Effect::new(move |_| {
        // Followed for every new selection, but not while a press may still become a drag.
        let selected = store.selection.get().is_some() || !store.things.with(BTreeSet::is_empty);
        if selected && open.get() && !store.is_dragging() {
            // By the next frame the sheet stands in its full height and the marks are lit.
            next_frame(move || {
                if let Some(sheet) = sheet.get_untracked().filter(|_| is_sheet()) {
                    scroll_clear_of(&sheet);
                }
            });
        }
    });
    let let_go = move || {
        let focus = document().active_element();
        let inside = sheet
            .get_untracked()
            .is_some_and(|sheet| sheet.contains(focus.as_deref()));
        store.act(Action::Select(None));
        if inside {
            give_back_focus(came_from.get_value());
        }
    };
    let escape = window_event_listener(leptos::ev::keydown, move |event| {
        // A dialog over the page takes the key for itself.
        let dialog = document().query_selector("dialog[open]").ok().flatten();
        let free = !event.default_prevented() && dialog.is_none();
        if event.key() == "Escape" && free && open.get_untracked() && is_sheet() {
            event.prevent_default();
            let_go();
        }
    });
    on_cleanup(move || escape.remove());
    let entered = move |event: FocusEvent| {
        let before = event
            .related_target()
            .and_then(|before| before.dyn_into::<Element>().ok());
        let outside = before.filter(|before| {
            sheet
                .get_untracked()
                .is_none_or(|sheet| !sheet.contains(Some(before)))
        });
        if outside.is_some() {
            came_from.set_value(outside);
        }
    };
    view! {
        <div node_ref=sheet class="selected-sheet" class:open=move || open.get() on:focusin=entered>
            <button
                node_ref=close
                type="button"
                class="sheet-close"
                aria-label=label_text(Label::CloseSelected)
                on:click=move |_| let_go()
            >
                {label_text(Label::Dismiss)}
            </button>
            <SelectedPanel/>
        </div>
    }
}

/// Whether the sheet is there. It keeps out of the way of a corner that is being dragged, and a
/// press that may become such a drag changes nothing yet.
fn is_open(store: Store) -> Memo<bool> {
    Memo::new(move |before: Option<&bool>| {
        if !store.is_dragging() {
            // With a drawing tool in hand the drawing is wanted whole.
            let picks = store.tool.get() == Tool::Pick;
            return picks
                && (store.selection.get().is_some() || !store.things.with(BTreeSet::is_empty));
        }
        // Once out of the way it stays there until the hand lets go.
        before.copied().unwrap_or(false)
            && store.with_state(|state| {
                let gesture = state.gesture.as_ref();
                gesture.is_none_or(|gesture| Arc::ptr_eq(&gesture.before, &state.plan))
            })
    })
}

/// Scrolls what was selected out from under the sheet, as far as the page goes.
fn scroll_clear_of(sheet: &HtmlElement) {
    let height = window().inner_height().ok();
    let Some(height) = height.and_then(|height| height.as_f64()) else {
        return;
    };
    let covered = height - f64::from(sheet.offset_height());
    let free = (strip_foot() + ROOM, covered - ROOM);
    let focus = document().active_element();
    let is_on = |canvas| {
        let focus = focus.as_ref();
        focus.is_some_and(|focus| focus.matches(canvas).unwrap_or(false))
    };
    // A drawing that is out of sight altogether is left there: the ledger's row was pressed.
    let marks = if is_on(ELEVATION) {
        lit_marks(ELEVATION)
    } else {
        let on_drawing = is_on(CANVAS);
        lit_marks(CANVAS).filter(|(top, foot)| on_drawing || (*foot > 0.0 && *top < height))
    };
    let rows = focus
        .filter(|focus| !sheet.contains(Some(focus)))
        .map(|row| row.get_bounding_client_rect())
        .map(|row| (row.top(), row.bottom()));
    if let Some((top, foot)) = marks.or(rows) {
        // To the middle of the free part, so that its neighbours can be pressed next; what is taller
        // shows its top.
        let middle = f64::midpoint(top, foot) - f64::midpoint(free.0, free.1);
        let by = if top < free.0 || foot > free.1 {
            middle.min(top - free.0)
        } else {
            0.0
        };
        window().scroll_by_with_x_and_y(0.0, by);
    }
}

/// Where the strip of totals ends that stays in view.
fn strip_foot() -> f64 {
    let strip = document().query_selector(".totals").ok().flatten();
    strip
        .filter(|strip| {
            let style = window().get_computed_style(strip).ok().flatten();
            let position = style.and_then(|style| style.get_property_value("position").ok());
            position.as_deref() == Some("sticky")
        })
        .map_or(0.0, |strip| strip.get_bounding_client_rect().height())
}

/// From where to where the selected element's marks stand in a drawing's window.
fn lit_marks(canvas: &str) -> Option<(f64, f64)> {
    let canvas = document().query_selector(canvas).ok().flatten()?;
    let window = canvas.get_bounding_client_rect();
    let lit = canvas.query_selector_all(".lit").ok()?;
    let marks = (0..lit.length()).filter_map(|index| lit.item(index)?.dyn_into::<Element>().ok());
    let spans = marks.map(|mark| mark.get_bounding_client_rect());
    let spans = spans.filter(|span| span.width() + span.height() > 0.0);
    let spans = spans.map(|span| {
        (
            span.top().clamp(window.top(), window.bottom()),
            span.bottom().clamp(window.top(), window.bottom()),
        )
    });
    spans.reduce(|(top, foot), (other_top, other_foot)| (top.min(other_top), foot.max(other_foot)))
}

/// Puts the focus where it was before it came into the sheet, or else on the drawing.
fn give_back_focus(came_from: Option<Element>) {
    match came_from.filter(|element| element.is_connected()) {
        Some(there) => focus_on(&there),
        None => focus_drawing(),
    }
}
