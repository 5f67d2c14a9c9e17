//! The suggested run that is shown on the drawing.

use super::mark_list::{MarkList, Zoom};
use super::mark_view::Layer;
use super::search_client::Reroutes;
use super::store::Store;
use crate::scene::ghost_marks;
use crate::search::Suggestion;
use leptos::prelude::*;

#[component]
pub(super) fn GhostMarks() -> impl IntoView {
    let reroutes = expect_context::<Reroutes>();
    let store = expect_context::<Store>();
    let marks = Memo::new(move |_| {
        let shown = reroutes.shown.get();
        let plan = store.plan;
        let ghost = |it: &Suggestion| plan.with(|plan| ghost_marks(&it.taken_in(plan)));
        shown
            .and_then(|index| reroutes.with_suggestion(index, ghost))
            .unwrap_or_default()
    });
    let list = MarkList::following(store, Zoom::Grows, move |take| {
        marks.with(|marks| marks.iter().for_each(&mut *take));
    });
    view! { <Layer list/> }
}
