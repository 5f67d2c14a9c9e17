//! Other runs and upgrades: start, progress, the suggestions, and what is done with one.

use super::reroute_words::{blocked, change, reasons};
use super::search_client::Reroutes;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::report::words::{Label, Message, RerouteText};
use crate::search::{Figures, Suggestion};
use crate::units::{Airflow, Length, Pressure};
use leptos::prelude::*;

#[component]
pub(super) fn ReroutePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let reroutes = expect_context::<Reroutes>();
    let say = move |text: RerouteText| store.say(Message::Reroute(&text));
    let is_running = move || reroutes.with_found(|found| !found.is_done).unwrap_or(false);
    let status = move || {
        let text = reroutes.with_found(|found| {
            if let Some(why) = found
                .blocked
                .as_ref()
                .filter(|_| found.suggestions.is_empty())
            {
                return Some(store.plan.with(|plan| blocked(plan, why)));
            }
            if found.is_done {
                let count = found.suggestions.len();
                let is_cut_short = found.progress.as_ref().is_some_and(|it| it.is_cut_short);
                return Some(if is_cut_short {
                    RerouteText::FinishedEarly(count)
                } else {
                    RerouteText::Finished(count)
                });
            }
            let progress = found.progress.as_ref()?;
            Some(RerouteText::Progress {
                done: progress.done,
                of: progress.of,
                looked_at: progress.looked_at,
            })
        });
        text.flatten().map(say)
    };
    let press = move |_| {
        if is_running() {
            reroutes.cancel();
        } else {
            reroutes.search();
        }
    };
    // Rebuilt where the list changes, not with each progress.
    let suggestions = Memo::new(move |_| {
        reroutes
            .with_found(|found| found.suggestions.clone())
            .unwrap_or_default()
    });
    view! {
        <section class="panel reroutes" aria-labelledby="reroutes-title">
            <h2 id="reroutes-title">{say(RerouteText::Heading)}</h2>
            <p class="fine">{say(RerouteText::Explanation)}</p>
            <button type="button" on:click=press data-testid="reroute-start">
                {move || say(if is_running() { RerouteText::Stop } else { RerouteText::Start })}
            </button>
            <p data-testid="reroute-status" role="status">{status}</p>
            <ol class="reroute-list">
                {move || {
                    let list = suggestions.get();
                    list.into_iter().enumerate().map(|(index, it)| one(store, index, &it)).collect_view()
                }}
            </ol>
        </section>
    }
}

/// One suggestion.
fn one(store: Store, index: usize, suggestion: &Suggestion) -> impl IntoView + use<> {
    let say = move |text: RerouteText| store.say(Message::Reroute(&text));
    let shown = expect_context::<Reroutes>().shown;
    let changes: Vec<String> = suggestion
        .changes
        .iter()
        .map(|it| say(change(it)))
        .collect();
    let reasons: Vec<String> = reasons(suggestion).into_iter().map(say).collect();
    let title = changes.join(" ");
    let is_shown = move || shown.get() == Some(index);
    let show = move |_| shown.update(|own| *own = (*own != Some(index)).then_some(index));
    let taken = Box::new((suggestion.plan.run.clone(), suggestion.plan.dryer));
    let take = move |_| store.act(Action::TakeReroute(taken.clone()));
    let heading = format!("reroute-{index}");
    let named_by = heading.clone();
    let units = store.units.get();
    let row = |name: String, figure: &dyn Fn(&Figures) -> String| {
        let (before, after) = (figure(&suggestion.before), figure(&suggestion.after));
        view! {
            <tr><th scope="row">{name}</th><td>{before}</td><td>{after}</td></tr>
        }
    };
    let rows = [
        row(label_text(Label::BackPressure), &|it| {
            units
                .pressure(Pressure::from_pascals(it.back_pressure_pa))
                .to_string()
        }),
        row(label_text(Label::Airflow), &|it| {
            let airflow = Airflow::from_cubic_metres_per_second(it.airflow_m3_per_s);
            units.airflow(airflow).to_string()
        }),
        row(label_text(Label::CodeLength), &|it| {
            units
                .length(Length::from_metres(it.code_length_m))
                .to_string()
        }),
        row(say(RerouteText::Parts), &|it| it.parts.to_string()),
    ];
    view! {
        <li data-testid="reroute" aria-labelledby=named_by>
            <p id=heading><strong>{title}</strong></p>
            <p>{reasons.join(" ")}</p>
            <table>
                <thead>
                    <tr>
                        <td></td>
                        <th scope="col">{say(RerouteText::Present)}</th>
                        <th scope="col">{say(RerouteText::Suggested)}</th>
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
            <div class="reroute-actions">
                <button type="button" aria-pressed=move || is_shown().to_string() on:click=show>
                    {say(RerouteText::Show)}
                </button>
                <button type="button" on:click=take>{say(RerouteText::Take)}</button>
            </div>
        </li>
    }
}
