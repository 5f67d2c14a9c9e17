//! One mark as SVG: its element here, what is written into it in `mark_ground` and `mark_screen`.

use super::mark_ground::Ground;
use super::mark_list::{MarkList, Writer, Zoom};
use super::mark_screen::Screen;
use super::pointer::PressedLength;
use super::store::Store;
use crate::plan::{ElementId, Part};
use crate::scene::{Mark, Role, Shape, Text};
use leptos::prelude::*;
use web_sys::Element;

/// Whether an element is selected or under the pointer.
pub(super) fn is_lit(store: Store, element: Option<&ElementId>) -> bool {
    element.is_some_and(|id| {
        store
            .selection
            .with(|selected| selected.as_ref() == Some(id))
            || store.hovered.with(|hovered| hovered.as_ref() == Some(id))
    })
}

/// A list's marks on the drawing.
#[component]
pub(super) fn Layer(list: MarkList) -> impl IntoView {
    view! {
        <For
            each=move || list.keys.get()
            key=Clone::clone
            children=move |key| list.waiting(&key).map(|mark| view! { <OneMark list mark/> })
        />
    }
}

/// One mark of a list.
#[component]
pub(super) fn OneMark(list: MarkList, mark: Mark) -> impl IntoView {
    match list.zoom {
        Zoom::Grows => view! { <GroundMark list mark/> }.into_any(),
        Zoom::Keeps(_) => view! { <ScreenMark list mark/> }.into_any(),
    }
}

/// A mark that grows with the zoom.
#[component]
fn GroundMark(list: MarkList, mark: Mark) -> impl IntoView {
    let store = list.store;
    let hovered = mark.element;
    let id = mark.id.clone();
    let written = move |element: Element| list.show(&id, Writer::Ground(Ground::new(element)));
    let enter = move |_| store.hovered.set(hovered.clone());
    let leave = move |_| store.hovered.set(None);
    let id = mark.id;
    match mark.shape {
        Shape::Circle { .. } => view! {
            <circle data-mark=id use:written on:pointerenter=enter on:pointerleave=leave/>
        }
        .into_any(),
        Shape::Picture { coding, data, .. } => view! {
            <image
                data-mark=id
                href=format!("data:{};base64,{data}", coding.media_type())
                preserveAspectRatio="none"
                use:written
            />
        }
        .into_any(),
        _ => view! { <path data-mark=id use:written on:pointerenter=enter on:pointerleave=leave/> }
            .into_any(),
    }
}

/// A mark that keeps its size on the screen.
#[component]
fn ScreenMark(list: MarkList, mark: Mark) -> impl IntoView {
    let typed = mark
        .element
        .filter(|id| mark.role == Role::Label && matches!(id.part, Part::Leg | Part::Riser));
    let is_typed = typed.is_some();
    let id = mark.id.clone();
    let written = move |element: Element| {
        list.show(&id, Writer::Screen(Screen::new(element, is_typed)));
    };
    let id = mark.id;
    match (&mark.shape, &mark.role) {
        (Shape::Dot(_), Role::NewBend { .. }) => {
            view! { <g data-mark=id use:written><path d="M0 -6L6 0L0 6L-6 0Z"/></g> }.into_any()
        }
        (Shape::Dot(_), _) => view! { <g data-mark=id use:written><circle r="7"/></g> }.into_any(),
        (
            Shape::Text {
                text: Text::Rank(_),
                ..
            },
            _,
        ) => view! { <g data-mark=id use:written><circle r="10"/><text y="4.5"></text></g> }
            .into_any(),
        _ => {
            // The drawing takes the press on a length too: a corner under it goes first.
            let pressed = use_context::<PressedLength>();
            let press = move |_| {
                if let (Some(PressedLength(pressed)), Some(element)) = (pressed, &typed) {
                    pressed.set_value(Some(element.clone()));
                }
            };
            view! { <g data-mark=id use:written on:pointerdown=press><text y="4"></text></g> }
                .into_any()
        }
    }
}
