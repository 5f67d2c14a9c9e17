//! The code check: the rule set, its reading, the verdict on the length, and what hangs on them.

use super::code_findings::{CodeFindings, DecidingText};
use super::code_label_card::LabelCard;
use super::code_maker::MakerFields;
use super::code_tables::CodeTables;
use super::store::{Store, label_text};
use super::totals::VerdictWord;
use crate::editor::Action;
use crate::plan::CodeChoice;
use crate::report::CodeFigures;
use crate::report::words::{Label, Message, TotalFormula};
use crate::rules::RULE_SETS;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

/// Changes the plan's choice of code.
pub(super) fn set_code(store: Store, change: impl FnOnce(&mut CodeChoice)) {
    let mut code = store.plan_now().code.clone();
    change(&mut code);
    store.act(Action::SetCode(code));
}

#[component]
pub(super) fn CodePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let of_code = move |text: &dyn Fn(&CodeFigures) -> String| {
        store.steady.with(|results| text(&results.figures.code))
    };
    let units = move || store.units.get();
    let verdict = Signal::derive(move || store.steady.with(|results| results.figures.code.verdict));
    let deciding = Memo::new(move |_| {
        store
            .steady
            .with(|results| results.figures.code.deciding.clone())
    });
    let counts = move || {
        store
            .plan
            .with(|plan| plan.code.path_through_fittings_counts)
    };
    let set_counts = move |_| {
        set_code(store, |code| {
            code.path_through_fittings_counts = !code.path_through_fittings_counts;
        });
    };
    view! {
        <section class="panel code" aria-labelledby="code-title">
            <h2 id="code-title">{label_text(Label::CodeCheck)}</h2>
            <RuleSetField/>
            <p class="code-verdict" data-testid="code-verdict">
                <VerdictWord verdict/> ": "
                {move || of_code(&|code| store.say(Message::CodeLength {
                    length: code.with_deductions,
                    limit: code.limit,
                }))}
            </p>
            <DecidingText deciding/>
            <p class="fine formula" data-testid="code-formula">
                {move || store.steady.with(|results| {
                    store.say(Message::TotalFormula(&results.figures, TotalFormula::CodeLength))
                })}
            </p>
            <p class="fine">
                {move || of_code(&|code| store.say(Message::CodeLengthSpan {
                    least: code.least,
                    most: code.most,
                }))}
            </p>
            <dl class="pairs">
                <dt>{label_text(Label::MeasuredLength)}</dt>
                <dd>{move || of_code(&|code| units().length(code.measured).to_string())}</dd>
                <dt>{label_text(Label::Deductions)}</dt>
                <dd>{move || of_code(&|code| units().length(code.deductions).to_string())}</dd>
            </dl>
            <label class="check">
                <input type="checkbox" prop:checked=counts on:change=set_counts/>
                <span>{label_text(Label::PathThroughFittings)}</span>
            </label>
            <p class="fine">{label_text(Label::CodeSourceNote)}</p>
            <MakerFields/>
            <CodeFindings/>
            <CodeTables/>
            <LabelCard/>
        </section>
    }
}

/// The rule sets to choose from.
#[component]
fn RuleSetField() -> impl IntoView {
    let store = expect_context::<Store>();
    let chosen = Memo::new(move |_| store.plan.with(|plan| plan.code.rule_set));
    let options = RULE_SETS
        .iter()
        .enumerate()
        .map(|(index, set)| {
            let id = set.id;
            view! {
                <option value=index.to_string() prop:selected=move || chosen.get() == id>
                    {store.say(Message::RuleSet(id))}
                </option>
            }
        })
        .collect_view();
    let changed = move |event: web_sys::Event| {
        let list = event
            .target()
            .and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let index = list.and_then(|list| list.value().parse::<usize>().ok());
        if let Some(set) = index.and_then(|index| RULE_SETS.get(index)) {
            set_code(store, |code| code.rule_set = set.id);
        }
    };
    view! {
        <div class="field">
            <label for="rule-set">{label_text(Label::RuleSet)}</label>
            <select id="rule-set" on:change=changed>{options}</select>
        </div>
    }
}
