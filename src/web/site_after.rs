//! Before and after a repair: the airflow that came back, and each reading beside the one it repeats.

use super::site_figures::{clean_text, read_text};
use super::site_words::{say_entry, site_text};
use super::store::Store;
use crate::diagnosis::{BeforeAfter, Diagnosis, before_and_after};
use crate::plan::{Entry, Visit};
use crate::report::words::{Message, SiteLabel, SiteMessage};
use crate::units::Airflow;
use leptos::prelude::*;

/// What the visit's repairs came to; nothing where nothing was mended.
#[component]
pub(super) fn BeforeAndAfter(visit: Memo<Visit>) -> impl IntoView {
    let is_mended = Memo::new(move |_| {
        visit.with(|visit| {
            let mut entries = visit.entries.iter();
            entries.any(|entry| matches!(entry, Entry::Done(_)))
        })
    });
    view! {
        <Show when=move || is_mended.get()>
            <h3>{site_text(SiteLabel::AfterHeading)}</h3>
            <Restored/>
            <Pairs visit/>
        </Show>
    }
}

/// The airflow before and now, and what came back.
#[component]
fn Restored() -> impl IntoView {
    let store = expect_context::<Store>();
    move || {
        let site = store.site()?;
        let diagnosis = site.diagnosis.as_ref()?;
        let share = |(mean, low, high): (f64, f64, f64)| {
            store.say(Message::Site(SiteMessage::AirflowNow(mean, low, high)))
        };
        let before = share(diagnosis.airflow_before?);
        let now = share(diagnosis.airflow_now);
        Some(view! {
            <dl class="pairs" data-testid="restored">
                <dt>{site_text(SiteLabel::AirflowBefore)}</dt>
                <dd>{before}</dd>
                <dt>{site_text(SiteLabel::AirflowNow)}</dt>
                <dd>{now} {restored(store, diagnosis).map(|more| format!(". {more}"))}</dd>
            </dl>
        })
    }
}

/// The airflow that came back, where any did.
fn restored(store: Store, diagnosis: &Diagnosis) -> Option<String> {
    let gained = diagnosis.airflow_now.0 - diagnosis.airflow_before?.0;
    let airflow = Airflow::from_cubic_metres_per_second(gained * diagnosis.clean_airflow);
    let shown = store.units.get().airflow(airflow).to_string();
    (gained > 0.0).then(|| store.say(Message::Site(SiteMessage::Restored(&shown))))
}

/// Each reading after beside the one before.
#[component]
fn Pairs(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let pairs = Memo::new(move |_| visit.with(before_and_after));
    let row = move |pair: BeforeAfter| {
        let reading = |index: usize| {
            let entry = visit.with_untracked(|visit| visit.entries.get(index).cloned());
            match entry {
                Some(Entry::Reading(reading)) => Some((index, reading)),
                _ => None,
            }
        };
        let (before, after) = (reading(pair.before)?, reading(pair.after)?);
        let name = say_entry(store, &Entry::Reading(after.1.clone()));
        let (of_clean, of_after) = (after.clone(), after);
        Some(view! {
            <li>
                <p>{name}</p>
                <dl class="pairs">
                    <dt>{site_text(SiteLabel::ColumnBefore)}</dt>
                    <dd>{move || read_text(store, before.0, &before.1)}</dd>
                    <dt>{site_text(SiteLabel::ColumnAfter)}</dt>
                    <dd class="site-read">{move || read_text(store, of_after.0, &of_after.1)}</dd>
                    <dt>{site_text(SiteLabel::ColumnClean)}</dt>
                    <dd>{move || clean_text(store, of_clean.0, &of_clean.1)}</dd>
                </dl>
            </li>
        })
    };
    view! {
        <Show when=move || pairs.with(Vec::is_empty)>
            <p class="fine">{site_text(SiteLabel::AfterHint)}</p>
        </Show>
        <ul class="site-after">{move || pairs.get().into_iter().map(row).collect_view()}</ul>
    }
}
