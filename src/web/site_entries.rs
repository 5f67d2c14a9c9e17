//! What was read and done during the visit, in order, each reading beside the clean run's.

use super::site_panel::change_visit;
use super::site_words::{say_entry, shown, site_text};
use super::store::Store;
use super::totals::VerdictWord;
use crate::diagnosis::{Plausibility, against_limit, plausibility};
use crate::editor::VisitChange;
use crate::plan::{Entry, Measured, Reading, Visit};
use crate::report::words::{Message, SiteLabel, SiteMessage};
use leptos::prelude::*;

#[component]
pub(super) fn Entries(visit: Memo<Visit>) -> impl IntoView {
    let rows = move || {
        let entries = visit.with(|visit| visit.entries.clone());
        entries
            .into_iter()
            .enumerate()
            .map(|(index, entry)| view! { <EntryRow index entry/> })
            .collect_view()
    };
    let is_empty = move || visit.with(|visit| visit.entries.is_empty());
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
    let name = say_entry(store, &entry);
    let remove = format!("{} {}", site_text(SiteLabel::Remove), index + 1);
    let is_done = matches!(entry, Entry::Done(_));
    let reading = match entry {
        Entry::Reading(reading) => Some(reading),
        _ => None,
    };
    view! {
        <li class:done=is_done data-entry=index.to_string()>
            <p>{name}</p>
            {reading.map(|reading| view! { <ReadingFigures index reading/> })}
            <button
                type="button"
                class="site-remove"
                aria-label=remove
                on:click=move |_| change_visit(store, VisitChange::Remove(index))
            >
                {site_text(SiteLabel::Remove)}
            </button>
        </li>
    }
}

/// What was read, what the clean run reads with its band, and what the dryer's maker allows.
#[component]
fn ReadingFigures(index: usize, reading: Reading) -> impl IntoView {
    let store = expect_context::<Store>();
    let clean = move || {
        store
            .site()
            .and_then(|site| site.clean.get(index).copied().flatten())
    };
    let measured = reading.measured.clone();
    let is_temperature = matches!(measured, Measured::Temperature { .. });
    let plain = match &measured {
        Measured::StaticPressure { pressure, .. } => Some(pressure.pascals()),
        Measured::Temperature { temperature, .. } => Some(temperature.celsius()),
        _ => None,
    };
    let of_read = measured.clone();
    let read = move || {
        let value = plain.or_else(|| clean().map(|clean| clean.read))?;
        Some(shown(store.units.get(), &of_read, value).to_string())
    };
    let likely = move || {
        let units = store.units.get();
        let clean = clean()?;
        let band = store.say_band(clean.band, |units, value| shown(units, &measured, value));
        Some((shown(units, &measured, clean.likely).to_string(), band))
    };
    let plan = store.plan_now();
    let doubt = match plausibility(&plan, &reading) {
        Plausibility::Doubted(why) => Some(store.say(Message::Site(SiteMessage::Doubted(why)))),
        _ => None,
    };
    let of_limit = reading.clone();
    let limit = Memo::new(move |_| store.plan.with(|plan| against_limit(plan, &of_limit)));
    let limit = move || {
        limit.get().map(|it| {
            let units = store.units.get();
            let limit = units.pressure(it.limit).to_string();
            let margin = units.pressure(it.margin).to_string();
            let said = store.say(Message::Site(SiteMessage::Limit(&limit, &margin)));
            view! {
                <dt>{site_text(SiteLabel::ColumnAgainst)}</dt>
                <dd><VerdictWord verdict=Signal::derive(move || it.verdict)/> ", " {said}</dd>
            }
        })
    };
    let pending = move || {
        if is_temperature {
            String::new()
        } else {
            site_text(SiteLabel::WorkingOut)
        }
    };
    view! {
        <dl class="pairs">
            <dt>{site_text(SiteLabel::ColumnRead)}</dt>
            <dd class="site-read">{read}</dd>
            <dt>{site_text(SiteLabel::ColumnClean)}</dt>
            <dd class="site-clean">
                {move || likely().map_or_else(pending, |(likely, band)| format!("{likely} ({band})"))}
            </dd>
            {limit}
        </dl>
        {doubt.map(|doubt| view! { <p class="remark">{doubt}</p> })}
    }
}
