//! The suggested run that is shown on the drawing.

use super::mark_list::MarkList;
use super::mark_view::Layer;
use super::search_client::Reroutes;
use crate::scene::ghost_marks;
use leptos::prelude::*;

#[component]
pub(super) fn GhostMarks() -> impl IntoView {
    let reroutes = expect_context::<Reroutes>();
    let marks = Memo::new(move |_| {
        let shown = reroutes.shown.get();
        let ghost = |plan: &crate::plan::Plan| ghost_marks(plan);
        shown
            .and_then(|index| reroutes.with_suggestion(index, |it| ghost(&it.plan)))
            .unwrap_or_default()
    });
    let list = MarkList::following(true, move |take| {
        marks.with(|marks| marks.iter().for_each(&mut *take));
    });
    view! { <Layer list ground=true/> }
}
