//! One mark as SVG: its element here, what is written into it in `mark_ground` and `mark_screen`.

use super::mark_ground::Ground;
use super::mark_list::MarkList;
use super::mark_screen::{Around, Screen};
use super::pointer::PressedLength;
use super::store::Store;
use crate::editor::View;
use crate::plan::{ElementId, Part, ThingId};
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

/// Whether a thing about the run is selected.
fn is_thing_lit(store: Store, thing: Option<&ThingId>) -> bool {
    thing.is_some_and(|id| store.things.with(|things| things.contains(id)))
}

/// A list's marks on the drawing: those that grow with the zoom, or those that keep their size.
#[component]
pub(super) fn Layer(list: MarkList, ground: bool) -> impl IntoView {
    view! {
        <For
            each=move || list.keys.get()
            key=Clone::clone
            children=move |key| match list.mark(&key) {
                Some(mark) if ground => view! { <GroundMark mark/> }.into_any(),
                Some(mark) => view! { <ScreenMark mark/> }.into_any(),
                None => ().into_any(),
            }
        />
    }
}

/// A mark that grows with the zoom.
#[component]
pub(super) fn GroundMark(mark: RwSignal<Mark>) -> impl IntoView {
    let store = expect_context::<Store>();
    let first = mark.get_untracked();
    let element = first.element.clone();
    let hovered = element.clone();
    let thing = first.thing.clone();
    let lit =
        Memo::new(move |_| is_lit(store, element.as_ref()) || is_thing_lit(store, thing.as_ref()));
    let written = move |element: Element| {
        let mut ground = Ground::new(element);
        Effect::new(move |_| mark.with(|mark| ground.write(mark, lit.get())));
    };
    let enter = move |_| store.hovered.set(hovered.clone());
    let leave = move |_| store.hovered.set(None);
    let id = first.id;
    match first.shape {
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
pub(super) fn ScreenMark(
    mark: RwSignal<Mark>,
    /// The window on the marks; the drawing's where none is given.
    #[prop(optional)]
    view: Option<Signal<View>>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let view = view.unwrap_or(store.view.into());
    let first = mark.get_untracked();
    let element = first.element.clone();
    let lit = Memo::new(move |_| is_lit(store, element.as_ref()));
    let typed = first
        .element
        .clone()
        .filter(|id| first.role == Role::Label && matches!(id.part, Part::Leg | Part::Riser));
    let is_typed = typed.is_some();
    let written = move |element: Element| {
        let mut screen = Screen::new(element, is_typed);
        Effect::new(move |_| {
            let around = Around {
                view: view.get(),
                letter_scale: store.letter_scale.get(),
                diameter: store.diameter.get(),
                words: store.words(),
            };
            mark.with(|mark| screen.write(mark, lit.get(), &around));
        });
    };
    let id = first.id;
    match (&first.shape, &first.role) {
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
