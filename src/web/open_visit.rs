//! The visit that is shown and changed: the newest, or an earlier one that was opened.

use super::site_words::{say_visit, site_text};
use super::store::Store;
use crate::editor::{Action, VisitChange};
use crate::plan::Visit;
use crate::report::words::SiteLabel;
use leptos::prelude::*;
use std::sync::Arc;

/// Changes the open visit.
pub(super) fn change_visit(store: Store, change: VisitChange) {
    let plan = store.plan_now();
    let open = store.open_visit.get_untracked();
    let visit = open.filter(|id| plan.visits.iter().any(|visit| visit.id == *id));
    if change == VisitChange::Begin {
        store.open_visit.set(None);
    }
    let change = Box::new(change);
    store.act(Action::ChangeVisit { visit, change });
}

/// The open visit; an empty one where there is none.
pub(super) fn open_visit(store: Store) -> Memo<Visit> {
    Memo::new(move |_| {
        let open = store.open_visit.get();
        store.plan.with(|plan| {
            let visit = plan.visit_or_newest(open.as_deref()).cloned();
            visit.unwrap_or_else(|| Visit::new(""))
        })
    })
}

/// A line of the list: id, and what it is called.
type Line = (Arc<str>, String);

/// Every visit of the job, the newest first, to be opened by a press.
#[component]
pub(super) fn VisitList(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let lines: Memo<Vec<Line>> = Memo::new(move |_| {
        store.plan.with(|plan| {
            let visits = plan.visits.iter().enumerate().rev();
            visits
                .map(|(index, visit)| (Arc::clone(&visit.id), say_visit(store, index + 1, visit)))
                .collect()
        })
    });
    let several = move || lines.with(|lines| lines.len() > 1);
    let is_earlier = move || {
        lines.with(|lines| {
            let newest = lines.first();
            newest.is_some_and(|(id, _)| visit.with(|visit| visit.id != *id))
        })
    };
    let line = move |(id, name): Line| {
        let (shown, opened) = (Arc::clone(&id), id);
        let is_open = move || visit.with(|visit| visit.id == shown);
        view! {
            <li>
                <button
                    type="button"
                    class="row-select"
                    aria-current=move || is_open().then_some("true")
                    on:click=move |_| store.open_visit.set(Some(Arc::clone(&opened)))
                >
                    {name}
                </button>
            </li>
        }
    };
    view! {
        <Show when=several>
            <h3>{site_text(SiteLabel::VisitsHeading)}</h3>
            <ol class="site-visits">{move || lines.get().into_iter().map(line).collect_view()}</ol>
            <Show when=is_earlier>
                <p class="remark">{site_text(SiteLabel::EarlierVisit)}</p>
            </Show>
        </Show>
    }
}
