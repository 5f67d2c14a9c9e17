//! What the readings mean: faults by their odds, and the test that tells the most next.

use super::band_protocol::SiteAnswer;
use super::grounds::{GroundsName, GroundsText};
use super::open_visit::change_visit;
use super::site_entry::Form;
use super::site_words::{say_cause, say_test, shown, site_text};
use super::store::Store;
use crate::diagnosis::{CauseOdds, Diagnosis, Suggestion};
use crate::editor::{Action, VisitChange};
use crate::plan::{Done, Entry, Found, Look, Visit};
use crate::report::words::{Message, SiteLabel, SiteMessage};
use crate::units::Airflow;
use leptos::prelude::*;
use std::sync::Arc;

/// How many faults are listed, and the odds below which none is.
const LISTED: usize = 5;
const LEAST_LISTED: f64 = 0.01;

#[component]
pub(super) fn Odds(visit: Memo<Visit>, form: Form) -> impl IntoView {
    let store = expect_context::<Store>();
    let site: Memo<Option<Arc<SiteAnswer>>> = Memo::new(move |_| store.site());
    let begun = move || store.plan.with(|plan| !plan.visits.is_empty());
    let heat = move || visit.with_untracked(|visit| visit.always_heats);
    let found = move || {
        // A component says what it says once: in other units it is made anew.
        store.units.track();
        let site = site.get()?;
        let diagnosis = site.diagnosis.clone()?;
        Some(view! {
            <NextTest diagnosis=diagnosis.clone() form heat=heat()/>
            <List diagnosis visit/>
        })
    };
    view! {
        <div class="site-odds" aria-live="polite">
            <Show when=move || begun() && site.with(Option::is_none)>
                <p class="fine">{site_text(SiteLabel::WorkingOut)}</p>
            </Show>
            {found}
        </div>
    }
}

#[component]
fn NextTest(diagnosis: Diagnosis, form: Form, heat: bool) -> impl IntoView {
    let caveats = diagnosis.caveats.clone();
    let store = expect_context::<Store>();
    let caveats = caveats
        .into_iter()
        .map(|caveat| {
            let said = store.say(Message::Site(SiteMessage::Caveat(caveat)));
            view! { <p class="remark">{said}</p> }
        })
        .collect_view();
    view! {
        {caveats}
        <h3>{site_text(SiteLabel::NextHeading)}</h3>
        {diagnosis.settled.then(|| view! { <p data-testid="settled">{site_text(SiteLabel::Settled)}</p> })}
        {diagnosis.next.map(|next| view! { <TestCard suggestion=next form heat first=true/> })}
        {diagnosis.runner_up.map(|next| view! { <TestCard suggestion=next form heat first=false/> })}
    }
}

#[component]
fn TestCard(suggestion: Suggestion, form: Form, heat: bool, first: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let Suggestion {
        test,
        effort,
        bits,
        cautions,
    } = suggestion;
    let said = say_test(store, &test);
    let cautions = cautions
        .into_iter()
        .map(|caution| {
            let said = store.say(Message::Site(SiteMessage::Caution(caution)));
            view! { <li>{said}</li> }
        })
        .collect_view();
    let worth = store.say(Message::Site(SiteMessage::Worth { effort, bits }));
    let looked = test.element().cloned().filter(|_| test.spot().is_none());
    let buttons = match looked {
        Some(at) => {
            let look = move |found: Found, label: SiteLabel| {
                let at = at.clone();
                let add = move |_| {
                    let at = at.clone();
                    let look = Entry::Look(Look { at, found });
                    change_visit(store, VisitChange::Add(look));
                };
                view! { <button type="button" on:click=add>{site_text(label)}</button> }
            };
            view! {
                {look(Found::Clear, SiteLabel::FoundClear)}
                {look(Found::Blocked, SiteLabel::FoundBlocked)}
            }
            .into_any()
        }
        None => view! {
            <button type="button" on:click=move |_| form.make_ready(&test, heat)>
                {site_text(SiteLabel::EnterReading)}
            </button>
        }
        .into_any(),
    };
    let or = (!first).then(|| format!("{}: ", site_text(SiteLabel::RunnerUp)));
    let id = if first { "next" } else { "runner-up" };
    view! {
        <div class="site-test" class:first=first data-testid=id>
            <p class="site-test-name">{or} {said}</p>
            <ul class="site-cautions">{cautions}</ul>
            <p class="site-buttons">{buttons}</p>
            <p class="fine">{worth}</p>
        </div>
    }
}

#[component]
fn List(diagnosis: Diagnosis, visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let odds = move |odds: f64| store.say(Message::Site(SiteMessage::Odds(odds)));
    let (mean, low, high) = diagnosis.airflow_now;
    let open = RwSignal::new(false);
    let clean = Airflow::from_cubic_metres_per_second(diagnosis.clean_airflow);
    let airflow_grounds = move || {
        let clean = store.units.get().airflow(clean).to_string();
        store.say(Message::Site(SiteMessage::AirflowGrounds(&clean)))
    };
    let faults = diagnosis
        .causes
        .iter()
        .filter(|cause| cause.probability >= LEAST_LISTED)
        .take(LISTED)
        .cloned()
        .enumerate()
        .map(|(index, cause)| view! { <Fault index cause visit/> })
        .collect_view();
    view! {
        <h3>{site_text(SiteLabel::OddsHeading)}</h3>
        <p class="fine">{site_text(SiteLabel::OddsHint)}</p>
        <dl class="pairs" data-testid="nothing">
            <dt>{site_text(SiteLabel::NothingWrong)}</dt>
            <dd>{odds(diagnosis.nothing)}</dd>
            <dt>{site_text(SiteLabel::NothingThatMatters)}</dt>
            <dd>{odds(diagnosis.harmless)}</dd>
            <dt>
                <GroundsName name=site_text(SiteLabel::AirflowNow) id="site-grounds-airflow".to_owned() open/>
            </dt>
            <dd>{store.say(Message::Site(SiteMessage::AirflowNow(mean, low, high)))}</dd>
        </dl>
        <GroundsText id="site-grounds-airflow".to_owned() open text=airflow_grounds/>
        <ol class="site-faults">{faults}</ol>
        <p class="fine">{site_text(SiteLabel::LikelyPlaces)}</p>
    }
}

#[component]
fn Fault(index: usize, cause: CauseOdds, visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let name = say_cause(store, &cause.cause);
    let said = store.say(Message::Site(SiteMessage::Odds(cause.probability)));
    let open = RwSignal::new(false);
    let id = format!("site-grounds-odds-{index}");
    let (before, now) = (cause.prior, cause.probability);
    let grounds = move || store.say(Message::Site(SiteMessage::OddsGrounds(before, now)));
    let free = cause.free_area.map(|(likely, low, high)| {
        let free = store.say(Message::Site(SiteMessage::FreeArea(likely, low, high)));
        view! { <li>{free}</li> }
    });
    let left = store.say(Message::Site(SiteMessage::AirflowLeft(cause.airflow_left)));
    let explains = cause
        .explains
        .iter()
        .filter_map(|explained| {
            let entry = visit.with_untracked(|visit| visit.entries.get(explained.entry).cloned());
            let Some(Entry::Reading(reading)) = entry else {
                return None;
            };
            let figure =
                |value: f64| shown(store.units.get(), &reading.measured, value).to_string();
            let (read, expected) = (figure(explained.read), figure(explained.expected));
            let said = store.say(Message::Site(SiteMessage::WouldRead(&read, &expected)));
            let number = explained.entry + 1;
            Some(view! { <li>{number} ". " {said}</li> })
        })
        .collect_view();
    let mended = cause.cause.mended();
    let mend = move |_| {
        let what = mended.clone();
        change_visit(store, VisitChange::Add(Entry::Done(Done { what })));
    };
    let element = cause.cause.element.clone();
    let select = move |_| store.act(Action::Select(element.clone()));
    let width = (cause.probability * 100.0).to_string();
    view! {
        <li>
            <p>
                <button type="button" class="row-select" on:click=select>{name}</button>
            </p>
            <p class="site-chance">
                <svg class="site-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
                    <rect class="site-bar-all" width="100" height="6"/>
                    <rect class="site-bar-part" width=width height="6"/>
                </svg>
                <GroundsName name=said id=id.clone() open/>
            </p>
            <GroundsText id open text=grounds/>
            <ul class="fine">
                {free}
                <li>{left}</li>
            </ul>
            <details class="more">
                <summary>{site_text(SiteLabel::WouldRead)}</summary>
                <ul class="fine">{explains}</ul>
            </details>
            <p><button type="button" on:click=mend>{site_text(SiteLabel::Mended)}</button></p>
        </li>
    }
}
