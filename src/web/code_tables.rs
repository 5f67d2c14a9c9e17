//! The rule sets side by side, and code against air. The tables are there only while they are
//! unfolded: nothing of them is written while something is dragged above them.

use super::code_findings::weak_standing;
use super::code_panel::set_code;
use super::store::{Store, code_text, label_text};
use super::totals::VerdictWord;
use crate::editor::Action;
use crate::report::CodeFigures;
use crate::report::words::{CodeLabel, Label, Message};
use crate::rules::{Disagreement, TwoLengths};
use crate::system::ElementKind;
use crate::units::Length;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

#[component]
pub(super) fn CodeTables() -> impl IntoView {
    view! {
        <Folded heading=CodeLabel::SideBySide name="side-by-side" content=|| view! { <SideBySide/> }.into_any()/>
        <Folded heading=CodeLabel::CodeAgainstAir name="code-against-air" content=|| view! { <CodeAgainstAir/> }.into_any()/>
    }
}

/// A part whose content is made only while it is open.
#[component]
fn Folded(heading: CodeLabel, name: &'static str, content: fn() -> AnyView) -> impl IntoView {
    let open = RwSignal::new(false);
    let toggled = move |event: web_sys::ToggleEvent| {
        let details = event
            .target()
            .and_then(|it| it.dyn_into::<web_sys::Element>().ok());
        open.set(details.is_some_and(|details| details.has_attribute("open")));
    };
    view! {
        <details class="more" data-testid=name on:toggle=toggled>
            <summary>{code_text(heading)}</summary>
            <Show when=move || open.get()>{content()}</Show>
        </details>
    }
}

fn column(label: CodeLabel) -> impl IntoView {
    view! { <th scope="col">{code_text(label)}</th> }
}

#[component]
fn SideBySide() -> impl IntoView {
    let store = expect_context::<Store>();
    let readings = Memo::new(move |_| {
        store.steady.with(|results| {
            let sets = results.figures.code_check.side_by_side.iter();
            sets.flatten().cloned().collect::<Vec<_>>()
        })
    });
    let rows = move || {
        readings
            .get()
            .into_iter()
            .map(|reading| view! { <Reading reading/> })
            .collect_view()
    };
    view! {
        <p class="fine">{code_text(CodeLabel::SideBySideHint)}</p>
        <div class="table-scroll">
            <table class="rule-sets">
                <thead>
                    <tr>
                        {column(CodeLabel::ColumnRuleSet)}
                        {column(CodeLabel::ColumnPath)}
                        {column(CodeLabel::ColumnMeasured)}
                        {column(CodeLabel::ColumnDeductions)}
                        {column(CodeLabel::ColumnTotal)}
                        {column(CodeLabel::ColumnLimit)}
                        {column(CodeLabel::ColumnMargin)}
                        {column(CodeLabel::ColumnVerdict)}
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}

#[component]
fn Reading(reading: CodeFigures) -> impl IntoView {
    let store = expect_context::<Store>();
    let counts = reading.path_through_fittings_counts;
    let set = reading.rule_set;
    let is_chosen = move || {
        store.plan.with(|plan| {
            plan.code.rule_set == set && plan.code.path_through_fittings_counts == counts
        })
    };
    let length = move |length: Length| store.units.get().length(length).to_string();
    let limit = move || {
        reading
            .limit
            .map_or_else(|| code_text(CodeLabel::NotTyped), length)
    };
    let margin = move || {
        reading
            .margin
            .map(|margin| store.units.get().length(margin).to_string())
    };
    let path = if counts {
        CodeLabel::PathCounts
    } else {
        CodeLabel::PathLeftOut
    };
    let standing = weak_standing(store, reading.source);
    let verdict = reading.verdict;
    let choose = move |_| {
        set_code(store, |code| {
            code.rule_set = set;
            code.path_through_fittings_counts = counts;
        });
    };
    view! {
        <tr class:chosen=is_chosen>
            <th scope="row">
                <button
                    type="button"
                    class="row-select"
                    aria-pressed=move || is_chosen().to_string()
                    on:click=choose
                >
                    <span>{store.say(Message::RuleSet(set))}</span>
                    {move || is_chosen().then(|| view! { <small>{code_text(CodeLabel::Chosen)}</small> })}
                    <small>{reading.section} {standing}</small>
                </button>
            </th>
            <td>{code_text(path)}</td>
            <td class="figure">{move || length(reading.measured)}</td>
            <td class="figure">{move || length(reading.deductions)}</td>
            <td class="figure">{move || length(reading.with_deductions)}</td>
            <td class="figure">{limit}</td>
            <td class="figure">{margin}</td>
            <td><VerdictWord verdict=Signal::derive(move || verdict)/></td>
        </tr>
    }
}

#[component]
fn CodeAgainstAir() -> impl IntoView {
    let store = expect_context::<Store>();
    let found = Memo::new(move |_| {
        store.steady.with(|results| {
            let disagreement = results.figures.code_check.disagreement.clone()?;
            let kinds = results.figures.elements.iter().map(|it| it.element);
            Some((disagreement, kinds.collect::<Vec<_>>()))
        })
    });
    move || {
        // A component says what it says once: in other units it is made anew.
        store.units.track();
        match found.get() {
            None => view! { <p>{label_text(Label::NoAirflowFigure)}</p> }.into_any(),
            Some((found, kinds)) => view! { <Against found kinds/> }.into_any(),
        }
    }
}

#[component]
fn Against(found: Disagreement, kinds: Vec<ElementKind>) -> impl IntoView {
    let store = expect_context::<Store>();
    let units = store.units.get();
    let length = move |length: Length| units.equivalent_length(length).to_string();
    let kind_of = |it: &TwoLengths| {
        let place = found.elements.iter().position(|other| other == it);
        place.and_then(|place| kinds.get(place))
    };
    let most = found.most.as_ref().and_then(|id| {
        let it = found.element(id)?;
        Some((kind_of(it)?, it.air, it.code?))
    });
    let uncounted = found.uncounted.as_ref().and_then(|id| {
        let it = found.element(id)?;
        Some((kind_of(it)?, it.air))
    });
    let sentence = store.say(Message::Disagreement {
        air: found.air,
        code: found.code,
        most,
        uncounted,
    });
    let times = move |factor: Option<f64>| factor.map(|factor| store.say(Message::Times(factor)));
    let whole = (found.code > Length::ZERO).then(|| found.air / found.code);
    let rows = found
        .elements
        .iter()
        .zip(&kinds)
        .map(|(it, kind)| {
            let code = it
                .code
                .map_or_else(|| code_text(CodeLabel::NotCounted), length);
            let (factor, id) = (it.factor(), it.element.clone());
            view! {
                <tr>
                    <th scope="row">
                        <button
                            type="button"
                            class="row-select"
                            on:click=move |_| store.act(Action::Select(Some(id.clone())))
                        >
                            {store.say(Message::Element(kind))}
                            <small>{store.say(Message::ElementSize(kind))}</small>
                        </button>
                    </th>
                    <td class="figure">{length(it.air)}</td>
                    <td class="figure">{code}</td>
                    <td class="figure">{times(factor)}</td>
                </tr>
            }
        })
        .collect_view();
    view! {
        <p class="fine">{code_text(CodeLabel::CodeAgainstAirHint)}</p>
        <p data-testid="disagreement">{sentence}</p>
        <div class="table-scroll">
            <table>
                <thead>
                    <tr>
                        <th scope="col">{label_text(Label::ColumnElement)}</th>
                        {column(CodeLabel::ColumnAir)}
                        {column(CodeLabel::ColumnCode)}
                        {column(CodeLabel::ColumnTimes)}
                    </tr>
                </thead>
                <tbody>{rows}</tbody>
                <tfoot>
                    <tr>
                        <th scope="row">{code_text(CodeLabel::WholeRun)}</th>
                        <td class="figure">{length(found.air)}</td>
                        <td class="figure">{length(found.code)}</td>
                        <td class="figure">{times(whole)}</td>
                    </tr>
                </tfoot>
            </table>
        </div>
    }
}
