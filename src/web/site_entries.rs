//! What was read and done during the visit, in order, each reading beside the clean run's.

use super::focus::focus_first;
use super::grounds::{GroundsName, GroundsText};
use super::open_visit::change_visit;
use super::site_figures::{clean_of, clean_text, limit_text, read_text};
use super::site_words::{say_entry, site_text};
use super::soon::next_frame;
use super::store::Store;
use super::totals::VerdictWord;
use crate::diagnosis::{CLEAN_DRAWS, Plausibility, plausibility};
use crate::editor::VisitChange;
use crate::plan::{Entry, Reading, Visit};
use crate::report::words::{CleanGrounds, Message, SiteLabel, SiteMessage};
use leptos::prelude::*;
use std::iter::once;

#[component]
pub(super) fn Entries(visit: Memo<Visit>) -> impl IntoView {
    // Made anew where an entry is, not where something else of the visit is: what was unfolded stays so.
    let entries = Memo::new(move |_| visit.with(|visit| visit.entries.clone()));
    let rows = move || {
        entries
            .get()
            .into_iter()
            .enumerate()
            .map(|(index, entry)| view! { <EntryRow index entry/> })
            .collect_view()
    };
    let is_empty = move || entries.with(Vec::is_empty);
    view! {
        <h3>{site_text(SiteLabel::EntriesHeading)}</h3>
        <Show when=is_empty>
            <p class="fine">{site_text(SiteLabel::NothingYet)}</p>
        </Show>
        <ol class="site-entries">{rows}</ol>
    }
}

#[component]
fn EntryRow(index: usize, entry: Entry) -> impl IntoView {
    let store = expect_context::<Store>();
    let named = entry.clone();
    let name = move || say_entry(store, &named);
    let remove = format!("{} {}", site_text(SiteLabel::Remove), index + 1);
    let is_done = matches!(entry, Entry::Done(_));
    let reading = match entry {
        Entry::Reading(reading) => Some(reading),
        _ => None,
    };
    let remove_it = move |_| {
        change_visit(store, VisitChange::Remove(index));
        // The button goes with its entry: the next one's has the focus then, or the one before's.
        next_frame(move || {
            let near = [Some(index), index.checked_sub(1)].into_iter().flatten();
            let near = near.map(|index| format!("[data-entry='{index}'] .site-remove"));
            let first_field = once("#site-quantity".to_owned());
            near.chain(first_field).any(|place| focus_first(&place));
        });
    };
    view! {
        <li class:done=is_done data-entry=index.to_string()>
            <p>{name}</p>
            {reading.map(|reading| view! { <ReadingFigures index reading/> })}
            <button
                type="button"
                class="site-remove"
                aria-label=remove
                on:click=remove_it
            >
                {site_text(SiteLabel::Remove)}
            </button>
        </li>
    }
}

/// What was read, what the clean run reads with its band and where that comes from, and what the
/// dryer's maker allows.
#[component]
fn ReadingFigures(index: usize, reading: Reading) -> impl IntoView {
    let store = expect_context::<Store>();
    let open = RwSignal::new(false);
    let id = format!("site-grounds-{index}");
    let of_doubt = reading.clone();
    let doubt = move || match store.plan.with(|plan| plausibility(plan, &of_doubt)) {
        Plausibility::Doubted(why) => {
            let why = store.say(Message::Site(SiteMessage::Doubted(why)));
            Some(view! { <p class="remark">{why}</p> })
        }
        _ => None,
    };
    let of_read = reading.clone();
    let read = move || read_text(store, index, &of_read);
    let of_clean = reading.clone();
    // Where it is worked out and there is none, nothing is predicted for such a reading.
    let pending = move || {
        let is_known = store.site().is_some();
        (!is_known).then(|| site_text(SiteLabel::WorkingOut))
    };
    let clean = move || clean_text(store, index, &of_clean).or_else(pending);
    let of_limit = reading.clone();
    let limit = move || {
        limit_text(store, &of_limit).map(|(found, said)| {
            view! {
                <dt>{site_text(SiteLabel::ColumnAgainst)}</dt>
                <dd><VerdictWord verdict=Signal::derive(move || found.verdict)/> ", " {said}</dd>
            }
        })
    };
    let grounds = move || {
        clean_of(store, index).map_or_else(String::new, |clean| {
            store.say(Message::Site(SiteMessage::CleanGrounds(CleanGrounds {
                reading: &reading,
                clean: &clean,
                draws: CLEAN_DRAWS,
            })))
        })
    };
    view! {
        <dl class="pairs">
            <dt>{site_text(SiteLabel::ColumnRead)}</dt>
            <dd class="site-read">{read}</dd>
            <dt>
                <GroundsName name=site_text(SiteLabel::ColumnClean) id=id.clone() open/>
            </dt>
            <dd class="site-clean">{clean}</dd>
            {limit}
        </dl>
        <GroundsText id open text=grounds/>
        {doubt}
    }
}
