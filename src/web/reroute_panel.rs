//! Other runs and upgrades: start, progress, the suggestions, and what is done with one.

use super::focus::focus_first;
use super::reroute_options::RerouteOptions;
use super::search_client::{Found, Reroutes};
use super::side::Side;
use super::side_words::side_text;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{AlongRun, Plan};
use crate::report::reroute_words::{blocked, change, reasons};
use crate::report::words::{Label, Message, RerouteText, SideLabel};
use crate::search::{Figures, Suggestion};
use crate::system::{InsulationUpgrade, insulated, insulation_that_dries};
use leptos::prelude::*;

/// The button that starts a search.
const START: &str = ".reroutes > button";

#[component]
pub(super) fn ReroutePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let reroutes = expect_context::<Reroutes>();
    let say = move |text: RerouteText| store.say(Message::Reroute(&text));
    let is_running = move || reroutes.with_found(|found| !found.is_done).unwrap_or(false);
    let status = move || {
        let texts = reroutes.with_found(|found| store.plan.with(|plan| status_texts(plan, found)));
        let texts: Vec<String> = texts.unwrap_or_default().into_iter().map(say).collect();
        texts.join(" ")
    };
    let press = move |_| {
        if is_running() {
            reroutes.cancel();
        } else {
            // What is selected would lie over the suggestions on a phone.
            store.act(Action::Select(None));
            reroutes.search();
        }
    };
    // Rebuilt where the list changes, not with each progress.
    let suggestions = Memo::new(move |_| {
        reroutes
            .with_found(|found| Some((found.present?, found.suggestions.clone())))
            .flatten()
    });
    view! {
        <section class="panel reroutes" aria-labelledby="reroutes-title">
            <h2 id="reroutes-title">{say(RerouteText::Heading)}</h2>
            <p class="fine">{say(RerouteText::Explanation)}</p>
            <RerouteOptions/>
            <button type="button" on:click=press data-testid="reroute-start">
                {move || say(if is_running() { RerouteText::Stop } else { RerouteText::Start })}
            </button>
            <p data-testid="reroute-status" role="status">{status}</p>
            <ol class="reroute-list">
                {move || {
                    suggestions.get().map(|(present, list)| {
                        let list = list.into_iter().enumerate();
                        list.map(|(index, it)| one(store, index, &present, &it)).collect_view()
                    })
                }}
            </ol>
            <Insulation/>
        </section>
    }
}

/// What keeps the wall of the present run dry, where it is wet: another thing than less loss, so it
/// stands after the list.
#[component]
fn Insulation() -> impl IntoView {
    let store = expect_context::<Store>();
    let reroutes = expect_context::<Reroutes>();
    let is_done = Memo::new(move |_| reroutes.with_found(|found| found.is_done) == Some(true));
    let upgrade = move || {
        let plan = store.plan.get();
        let upgrade = is_done.get().then(|| insulation_that_dries(&plan));
        let Some(
            upgrade @ InsulationUpgrade::Resistance {
                resistance_m2_k_per_w,
            },
        ) = upgrade
        else {
            return None;
        };
        let take = move |_| {
            let insulated = insulated(&plan, resistance_m2_k_per_w);
            let taken = Box::new((insulated.run, insulated.dryer));
            store.act(Action::TakeReroute(taken));
        };
        Some(view! {
            <div data-testid="reroute-insulation">
                <p>{store.say(Message::InsulationUpgrade(&upgrade))}</p>
                <div class="reroute-actions">
                    <button type="button" on:click=take>
                        {store.say(Message::Reroute(&RerouteText::Take))}
                    </button>
                </div>
            </div>
        })
    };
    view! { {upgrade} }
}

/// How far the search for `plan` is, or what came of it.
fn status_texts(plan: &Plan, found: &Found) -> Vec<RerouteText> {
    if found.has_died {
        return vec![RerouteText::NoAnswer];
    }
    let count = found.suggestions.len();
    if let Some(why) = found.blocked.as_ref().filter(|_| count == 0) {
        return vec![blocked(plan, why)];
    }
    let progress = found.progress.as_ref();
    if !found.is_done {
        let text = progress.map(|progress| RerouteText::Progress {
            done: progress.done,
            of: progress.of,
            looked_at: progress.looked_at,
        });
        return text.into_iter().collect();
    }
    let is_cut_short = progress.is_some_and(|it| it.is_cut_short);
    let mut texts = vec![if is_cut_short {
        RerouteText::FinishedEarly(count)
    } else {
        RerouteText::Finished(count)
    }];
    if !found.has_present_room {
        texts.push(RerouteText::PresentHasNoRoom);
    }
    if progress.is_some_and(|it| it.is_proven) {
        texts.push(RerouteText::Proven {
            cools: plan.exhaust.along_run == AlongRun::Cools,
        });
    }
    texts
}

/// One suggestion over the present run.
fn one(
    store: Store,
    index: usize,
    present: &Figures,
    suggestion: &Suggestion,
) -> impl IntoView + use<> {
    let say = move |text: RerouteText| store.say(Message::Reroute(&text));
    let shown = expect_context::<Reroutes>().shown;
    let changes: Vec<String> = suggestion
        .changes
        .iter()
        .map(|it| say(change(it)))
        .collect();
    let reasons: Vec<String> = reasons(present, suggestion).into_iter().map(say).collect();
    let title = changes.join(" ");
    let is_shown = move || shown.get() == Some(index);
    let show = move |_| {
        shown.update(|own| *own = (*own != Some(index)).then_some(index));
        if is_shown() {
            bring_drawing_into_view();
        }
    };
    let taken = Box::new((suggestion.run.clone(), suggestion.dryer));
    let beside = taken.clone();
    let take = move |_| {
        store.act(Action::TakeReroute(taken.clone()));
        // The suggestions are of the run before, and gone.
        focus_first(START);
    };
    let side = expect_context::<Side>();
    let take_beside = move |_| {
        side.copy(store);
        store.act(Action::TakeReroute(beside.clone()));
        side.begin(store);
    };
    let heading = format!("reroute-{index}");
    let named_by = heading.clone();
    let units = store.units.get();
    let row = |name: String, figure: &dyn Fn(&Figures) -> String| {
        let (before, after) = (figure(present), figure(&suggestion.figures));
        view! {
            <tr><th scope="row">{name}</th><td>{before}</td><td>{after}</td></tr>
        }
    };
    let rows = [
        row(label_text(Label::BackPressure), &|it| {
            units.pressure(it.back_pressure).to_string()
        }),
        row(label_text(Label::Airflow), &|it| {
            units.airflow(it.airflow).to_string()
        }),
        row(label_text(Label::CodeLength), &|it| {
            units.length(it.code_length).to_string()
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
                <button type="button" on:click=take_beside>{side_text(SideLabel::Beside)}</button>
            </div>
        </li>
    }
}

/// A suggestion is drawn where its panel may have pushed the drawing out of sight.
fn bring_drawing_into_view() {
    let options = web_sys::ScrollIntoViewOptions::new();
    options.set_block(web_sys::ScrollLogicalPosition::Nearest);
    if let Ok(Some(drawing)) = document().query_selector(".canvas") {
        drawing.scroll_into_view_with_scroll_into_view_options(&options);
    }
}
