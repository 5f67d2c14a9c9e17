//! Site readings: what is made ready, what was read and done, what it means and what to test next.

use super::later::InTurn;
use super::open_visit::{VisitList, change_visit, open_visit};
use super::site_after::BeforeAndAfter;
use super::site_entries::Entries;
use super::site_entry::{EntryForm, Form};
use super::site_odds::Odds;
use super::site_pictures::Pictures;
use super::site_sheet::PrintVisit;
use super::site_words::site_text;
use super::store::Store;
use crate::diagnosis::fit_blower;
use crate::editor::VisitChange;
use crate::plan::{Preparation, Visit};
use crate::report::words::{Message, SiteLabel, SiteMessage};
use leptos::prelude::*;

#[component]
pub(super) fn SitePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let visit = open_visit(store);
    let form = Form::new();
    view! {
        <section class="panel site" aria-labelledby="site-title">
            <h2 id="site-title">{site_text(SiteLabel::Heading)}</h2>
            <p class="fine">{site_text(SiteLabel::Hint)}</p>
            <VisitList visit/>
            <PreparationList visit/>
            <InTurn turn=15><EntryForm form visit/><Entries visit/></InTurn>
            <InTurn turn=16>
                <Odds visit form/>
                <BeforeAndAfter visit/>
                <Pictures visit/>
                <BlowerFromReadings visit/>
                <VisitFoot visit/>
                <PrintVisit/>
            </InTurn>
        </section>
    }
}

#[component]
fn PreparationList(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let ticked = Memo::new(move |_| visit.with(|visit| visit.preparation.len()));
    let lines = Preparation::ALL.map(|what| {
        let is_done = move || visit.with(|visit| visit.preparation.contains(&what));
        let tick = move |_| {
            let is_done = !is_done();
            change_visit(store, VisitChange::Prepare { what, is_done });
        };
        view! {
            <label class="check">
                <input type="checkbox" prop:checked=is_done on:change=tick/>
                <span>{store.say(Message::Site(SiteMessage::Preparation(what)))}</span>
            </label>
        }
    });
    let always = move || visit.with(|visit| visit.always_heats);
    view! {
        <fieldset class="site-ready">
            <legend>
                {site_text(SiteLabel::PreparationHeading)} " "
                <small>{move || store.say(Message::Site(SiteMessage::Prepared(ticked.get(), Preparation::ALL.len())))}</small>
            </legend>
            {lines}
            <label class="check">
                <input
                    type="checkbox"
                    prop:checked=always
                    on:change=move |_| change_visit(store, VisitChange::AlwaysHeats(!always()))
                />
                <span>{site_text(SiteLabel::AlwaysHeats)}</span>
            </label>
        </fieldset>
    }
}

/// The dryer's own blower, once two points of its curve were read.
#[component]
fn BlowerFromReadings(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let fit = Memo::new(move |_| {
        let note = site_text(SiteLabel::Heading);
        store
            .plan
            .with(|plan| visit.with(|visit| fit_blower(plan, visit, &note)))
    });
    let points = move || fit.with(|fit| fit.as_ref().map(|fit| fit.points));
    let take = move |_| {
        if let Some(fit) = fit.get_untracked() {
            change_visit(store, VisitChange::FitBlower(fit.overrides));
        }
    };
    view! {
        <Show
            when=move || points().is_some()
            fallback=|| view! { <p class="fine">{site_text(SiteLabel::FitBlowerHint)}</p> }
        >
            <p class="fine">
                {move || store.say(Message::Site(SiteMessage::BlowerPoints(points().unwrap_or_default())))}
            </p>
            <p><button type="button" on:click=take>{site_text(SiteLabel::FitBlower)}</button></p>
        </Show>
    }
}

#[component]
fn VisitFoot(visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let date = Signal::derive(move || visit.with(|visit| visit.date.clone()));
    let note = Signal::derive(move || visit.with(|visit| visit.note.clone()));
    let field = move |id: &'static str,
                      label: SiteLabel,
                      shown: Signal<String>,
                      set: fn(String) -> VisitChange| {
        let changed = move |event| change_visit(store, set(event_target_value(&event)));
        view! {
            <div class="field">
                <label for=id>{site_text(label)}</label>
                <input id=id type="text" autocomplete="off" prop:value=shown on:change=changed/>
            </div>
        }
    };
    view! {
        <div class="fields">
            {field("visit-date", SiteLabel::Date, date, VisitChange::Date)}
            {field("visit-note", SiteLabel::Note, note, VisitChange::Note)}
        </div>
        <p>
            <button type="button" on:click=move |_| change_visit(store, VisitChange::Begin)>
                {site_text(SiteLabel::NewVisit)}
            </button>
        </p>
    }
}
