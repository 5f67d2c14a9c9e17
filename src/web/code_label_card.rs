//! The permanent label with the equivalent length, as a card that can be printed by itself.

use super::print_part::print_part;
use super::store::{Store, code_text, label_text};
use crate::report::words::{CodeLabel, Label, Message};
use leptos::prelude::*;

#[component]
pub(super) fn LabelCard() -> impl IntoView {
    let store = expect_context::<Store>();
    let is_asked = move || {
        store
            .steady
            .with(|results| results.figures.code_check.label.is_some())
    };
    let asked = move || {
        code_text(if is_asked() {
            CodeLabel::LabelAsked
        } else {
            CodeLabel::LabelNotAsked
        })
    };
    let length = move || {
        let length = store
            .steady
            .with(|results| results.figures.code.with_deductions);
        store.units.get().length(length).to_string()
    };
    let set = move || {
        store.steady.with(|results| {
            let code = &results.figures.code;
            format!(
                "{}, {}",
                store.say(Message::RuleSet(code.rule_set)),
                code.section
            )
        })
    };
    let counts = move || {
        store
            .plan
            .with(|plan| plan.code.path_through_fittings_counts)
            .then(|| label_text(Label::PathThroughFittings))
    };
    view! {
        <details class="more">
            <summary>{code_text(CodeLabel::LabelHeading)}</summary>
            <p class="fine">{asked}</p>
            <div class="label-card">
                <p class="label-card-title">{code_text(CodeLabel::LabelCardTitle)}</p>
                <p class="label-card-length">
                    {code_text(CodeLabel::LabelCardLength)} ": " <strong>{length}</strong>
                </p>
                <p>{code_text(CodeLabel::LabelCardBy)} " " {set} ". " {counts}</p>
                <p>{code_text(CodeLabel::LabelCardPlace)}</p>
            </div>
            <button type="button" on:click=move |_| print_part("label", || {})>{code_text(CodeLabel::LabelPrint)}</button>
        </details>
    }
}
