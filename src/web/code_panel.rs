//! The code check: the length rule, its reading and its verdict.

use super::store::{Store, label_text};
use super::totals::VerdictWord;
use crate::editor::Action;
use crate::plan::CodeChoice;
use crate::report::CodeFigures;
use crate::report::words::{Label, Message};
use leptos::prelude::*;

#[component]
pub(super) fn CodePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let of_code = move |text: &dyn Fn(&CodeFigures) -> String| {
        store.steady.with(|results| text(&results.figures.code))
    };
    let units = move || store.units.get();
    let verdict = Signal::derive(move || store.steady.with(|results| results.figures.code.verdict));
    let counts = move || {
        store
            .plan
            .with(|plan| plan.code.path_through_fittings_counts)
    };
    let set_counts = move |_| {
        let code = store.plan.with_untracked(|plan| plan.code);
        store.act(Action::SetCode(CodeChoice {
            path_through_fittings_counts: !code.path_through_fittings_counts,
            ..code
        }));
    };
    let doubts = move || {
        store.steady.with(|results| {
            let doubts = results.figures.code.doubts.iter();
            doubts
                .map(|doubt| view! { <li>{store.say(Message::Doubt(*doubt))}</li> })
                .collect_view()
        })
    };
    view! {
        <section class="panel code" aria-labelledby="code-title">
            <h2 id="code-title">{label_text(Label::CodeCheck)}</h2>
            <p class="code-verdict" data-testid="code-verdict">
                <VerdictWord verdict/> ": "
                {move || of_code(&|code| store.say(Message::CodeLength {
                    length: code.with_deductions,
                    limit: code.limit,
                    margin: code.margin,
                }))}
            </p>
            <ul>{doubts}</ul>
            <dl class="pairs">
                <dt>{label_text(Label::RuleSet)}</dt>
                <dd>{move || of_code(&|code| store.say(Message::RuleSet(code.rule_set)))}</dd>
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
        </section>
    }
}
