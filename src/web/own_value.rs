//! A value that the user sets in place of the project's own.

use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Input, Override};
use crate::report::words::{Label, Message};
use crate::system::COEFFICIENTS;
use crate::units::parse_number;
use leptos::prelude::*;

#[component]
pub(super) fn OwnValue(input: Input) -> impl IntoView {
    let store = expect_context::<Store>();
    let set = Memo::new(move |_| {
        store.plan.with(|plan| {
            plan.overrides
                .iter()
                .find(|set| set.input == input)
                .cloned()
        })
    });
    let ours = COEFFICIENTS[input as usize];
    let start = move |of_set: fn(&Override) -> f64, of_ours: f64| {
        set.with(|set| set.as_ref().map_or(of_ours, of_set))
            .to_string()
    };
    let low = NodeRef::<leptos::html::Input>::new();
    let likely = NodeRef::<leptos::html::Input>::new();
    let high = NodeRef::<leptos::html::Input>::new();
    let note = NodeRef::<leptos::html::Input>::new();
    let text = |field: NodeRef<leptos::html::Input>| {
        field.get().map_or_else(String::new, |field| field.value())
    };
    let used = move |_| {
        let mut numbers = [0.0; 3];
        for (number, field) in numbers.iter_mut().zip([low, likely, high]) {
            let typed = text(field);
            let Some(value) = parse_number(&typed) else {
                let message = Message::NotANumber { text: &typed };
                store.trouble.set(store.say(message));
                return;
            };
            *number = value;
        }
        let [low, likely, high] = numbers;
        let value = Some(Override {
            input,
            low,
            likely,
            high,
            note: text(note),
        });
        store.act(Action::SetOverride { input, value });
    };
    let given_back = move |_| store.act(Action::SetOverride { input, value: None });
    let field =
        |id: &'static str, label: Label, node: NodeRef<leptos::html::Input>, value: String| {
            view! {
                <div class="field">
                    <label for=id>{label_text(label)}</label>
                    <input node_ref=node id=id type="text" autocomplete="off" value=value/>
                </div>
            }
        };
    view! {
        <details class="more">
            <summary>{label_text(Label::SetOwnValue)}</summary>
            {move || {
                let noted = set.with(|set| set.as_ref().map_or_else(String::new, |set| set.note.clone()));
                view! {
                    <div class="fields">
                        {field("own-low", Label::OwnLow, low, start(|set| set.low, ours.low))}
                        {field("own-likely", Label::OwnLikely, likely, start(|set| set.likely, ours.likely))}
                        {field("own-high", Label::OwnHigh, high, start(|set| set.high, ours.high))}
                        {field("own-note", Label::OwnNote, note, noted)}
                    </div>
                }
            }}
            <div class="more-buttons">
                <button type="button" on:click=used>{label_text(Label::OwnUse)}</button>
                <button type="button" disabled=move || set.with(Option::is_none) on:click=given_back>
                    {label_text(Label::OwnTakeBack)}
                </button>
            </div>
        </details>
    }
}
