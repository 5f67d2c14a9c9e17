//! Lengths that are typed while drawing, or on the drawing where they stand.

use super::focus::focus_drawing;
use super::store::{Store, label_text};
use crate::editor::{Action, Tool};
use crate::plan::{ElementId, Heading, Part, PieceKind, RunPath};
use crate::report::words::{Label, Message};
use crate::units::{Length, parse_length};
use leptos::html::Input;
use leptos::prelude::*;
use web_sys::KeyboardEvent;

/// The id of the field for the next length.
pub(super) const DRAW_LENGTH: &str = "draw-length";

/// The way that an arrow key points.
pub(super) fn heading_of(key: &str) -> Option<Heading> {
    Some(match key {
        "ArrowRight" => Heading::RIGHT,
        "ArrowDown" => Heading::DOWN,
        "ArrowLeft" => Heading::LEFT,
        "ArrowUp" => Heading::UP,
        _ => return None,
    })
}

/// A field for the length from the last point, while there is one.
#[component]
pub(super) fn NextLength() -> impl IntoView {
    let store = expect_context::<Store>();
    let shown = Memo::new(move |_| {
        let tool = store.tool.get();
        let scales = tool == Tool::Scale;
        let draws = (tool.chains() || scales) && store.with_state(|state| state.pen.is_some());
        draws.then_some(scales)
    });
    move || shown.get().map(|scales| view! { <LengthEntry scales/> })
}

#[component]
fn LengthEntry(scales: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let input = NodeRef::<Input>::new();
    let wrong = RwSignal::new(None::<String>);
    let take = move |heading: Option<Heading>| {
        let Some(input) = input.get_untracked() else {
            return;
        };
        match parse_length(&input.value(), store.units.get_untracked()) {
            Ok(length) => {
                input.set_value("");
                wrong.set(None);
                store.act(Action::PutLength { length, heading });
                focus_drawing();
            }
            Err(error) => wrong.set(Some(store.say(Message::LengthText(&error)))),
        }
    };
    let pressed = move |event: KeyboardEvent| {
        let key = event.key();
        if key == "Escape" {
            event.prevent_default();
            if let Some(input) = input.get_untracked() {
                input.set_value("");
            }
            wrong.set(None);
            focus_drawing();
        } else if key == "Enter" {
            event.prevent_default();
            take(None);
        } else if let Some(heading) = heading_of(&key)
            && !scales
        {
            event.prevent_default();
            take(Some(heading));
        }
    };
    let label = if scales {
        Label::DrawLengthScale
    } else {
        Label::DrawLength
    };
    view! {
        <div class="field draw-length">
            <label for=DRAW_LENGTH>{label_text(label)}</label>
            <input
                node_ref=input
                id=DRAW_LENGTH
                type="text"
                autocomplete="off"
                aria-describedby="draw-length-note"
                aria-invalid=move || wrong.with(Option::is_some).to_string()
                on:keydown=pressed
            />
            <p id="draw-length-note" class="field-note" role="status">
                {move || wrong.get().unwrap_or_else(|| label_text(Label::DrawLengthHint))}
            </p>
        </div>
    }
}

/// The field that opens on a leg's or a riser's length.
#[component]
pub(super) fn LengthOnDrawing() -> impl IntoView {
    let store = expect_context::<Store>();
    move || {
        let element = store.typed_on_drawing.get()?;
        Some(view! { <TypedLength element/> })
    }
}

/// The length as drawn, corner to corner, and where on the screen it stands, px.
fn drawn(store: Store, element: &ElementId) -> Option<(Length, f64, f64)> {
    store.with_state(|state| {
        let path = RunPath::of(&state.plan);
        let piece = path.pieces.iter().find(|piece| piece.id == *element)?;
        let PieceKind::Straight {
            corners: (from, to),
            ..
        } = &piece.kind
        else {
            return None;
        };
        let (x, y) = state.view.place(from.halfway(*to));
        let length = if element.part == Part::Riser {
            let fitting = state.plan.run.fitting(&element.node)?;
            fitting.riser?.rise
        } else {
            from.distance(*to)
        };
        Some((length, x, y))
    })
}

#[component]
fn TypedLength(element: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let input = NodeRef::<Input>::new();
    let wrong = RwSignal::new(false);
    let (length, x, y) = untrack(|| drawn(store, &element)).unwrap_or_default();
    Effect::new(move |_| {
        if let Some(input) = input.get() {
            // Where it cannot be focused it can still be pressed.
            let _ = input.focus();
            input.select();
        }
    });
    let close = move || {
        store.typed_on_drawing.set(None);
        focus_drawing();
    };
    let take = move || {
        let Some(input) = input.get_untracked() else {
            return;
        };
        match parse_length(&input.value(), store.units.get_untracked()) {
            Ok(length) => {
                let node = element.node.clone();
                store.act(if element.part == Part::Riser {
                    Action::SetRise { node, rise: length }
                } else {
                    Action::SetLegLength { node, length }
                });
                close();
            }
            Err(error) => {
                wrong.set(true);
                store.trouble.set(store.say(Message::LengthText(&error)));
            }
        }
    };
    let pressed = move |event: KeyboardEvent| match event.key().as_str() {
        "Enter" => {
            event.prevent_default();
            take();
        }
        "Escape" => {
            event.prevent_default();
            if wrong.get_untracked() {
                store.trouble.set(String::new());
            }
            close();
        }
        _ => {}
    };
    let shown = untrack(|| store.units.get().length(length).to_string());
    view! {
        <input
            node_ref=input
            class="length-on-drawing"
            type="text"
            autocomplete="off"
            aria-label=label_text(Label::LegLength)
            aria-invalid=move || wrong.get().to_string()
            value=shown
            style:left=format!("{x:.0}px")
            style:top=format!("{y:.0}px")
            on:keydown=pressed
            on:blur=move |_| store.typed_on_drawing.set(None)
        />
    }
}
