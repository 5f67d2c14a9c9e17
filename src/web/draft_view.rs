//! What lies over the plan while it is drawn on: the draft, the lines that it has settled on, the
//! handles of what is selected, and the keys' cursor.

use super::mark_list::{MarkList, Zoom};
use super::mark_view::Layer;
use super::store::Store;
use crate::editor::{Tool, cursor, handles};
use crate::scene::{Mark, Role, Shape, draft_marks};
use crate::units::Length;
use leptos::prelude::*;

/// The marks of the draft and the handles: those that grow with the zoom, or those that keep their
/// size.
#[component]
pub(super) fn DraftMarks(ground: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let draft = Memo::new(move |_| {
        let draft = store.draft.get();
        let mut marks = store
            .guides
            .with(|guides| draft_marks(draft.as_ref(), guides));
        let only = store
            .things
            .with(|things| things.first().filter(|_| things.len() == 1).cloned());
        if let (Some(thing), Tool::Pick) = (only, store.tool.get()) {
            let held = handles(&store.held(), &thing);
            marks.extend(held.into_iter().enumerate().map(|(index, (_, at))| Mark {
                id: format!("handle:{index}"),
                role: Role::Handle,
                shape: Shape::Dot(at),
                width: Length::ZERO,
                weight: 0.0,
                element: None,
                thing: None,
            }));
        }
        marks
    });
    let list = MarkList::following(store, Zoom::on_drawing(store, ground), move |take| {
        draft.with(|marks| marks.iter().for_each(&mut *take));
    });
    view! { <Layer list/> }
}

/// A cross where the keys would set the next point.
#[component]
pub(super) fn Cursor() -> impl IntoView {
    let store = expect_context::<Store>();
    let place = move || {
        let draws = store.tool.get() != Tool::Pick;
        draws.then(|| store.with_state(|state| state.view.place(cursor(state))))
    };
    move || {
        place().map(|(x, y)| {
            view! {
                <path
                    class="keys-cursor"
                    transform=format!("translate({x:.1} {y:.1})")
                    d="M-12 0H-3M3 0H12M0 -12V-3M0 3V12"
                />
            }
        })
    }
}
