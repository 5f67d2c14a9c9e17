//! Fields in which people type a length or a number, or choose one of a list.

use super::store::{Store, label_text};
use crate::report::words::{Label, Message};
use crate::units::{Length, UnitSystem, parse_length, parse_number};
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

/// A field for a length. What is not understood stays in the field beside its message; nothing
/// changes until it is.
#[component]
pub(super) fn LengthField(
    id: &'static str,
    label: Label,
    #[prop(optional, into)] hint: Option<Label>,
    /// The length now, as it is shown.
    shown: Signal<String>,
    /// Takes an understood length.
    set: Callback<Length>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let parse = move |text: &str| {
        parse_length(text, store.units.get_untracked())
            .map_err(|error| store.say(Message::LengthText(&error)))
            .map(|length| set.run(length))
    };
    view! { <Field id label=label_text(label) hint=hint.map(label_text) shown take=Callback::new(move |text: String| parse(&text).err())/> }
}

/// A field for a plain number, with a unit after its name where that does not give it.
#[component]
pub(super) fn NumberField(
    id: &'static str,
    label: Label,
    #[prop(optional, into)] hint: Option<Label>,
    /// The number's unit in each system.
    #[prop(optional)]
    unit: Option<fn(UnitSystem) -> &'static str>,
    /// The number now, as it is shown.
    shown: Signal<String>,
    /// Takes a number.
    set: Callback<f64>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let parse = move |text: String| match parse_number(&text) {
        Some(number) => {
            set.run(number);
            None
        }
        None => Some(store.say(Message::NotANumber { text: &text })),
    };
    let labelled = move || match unit {
        None => label_text(label),
        Some(unit) => format!("{} ({})", label_text(label), unit(store.units.get())),
    };
    view! { <Field id label=Signal::derive(labelled) hint=hint.map(label_text) shown take=Callback::new(parse)/> }
}

/// A field for a count of things; what is too many is refused by the plan's limits.
#[component]
pub(super) fn CountField(
    id: &'static str,
    label: Label,
    /// The count now, as it is shown.
    shown: Signal<String>,
    /// Takes a count.
    set: Callback<u8>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let parse = move |text: String| match text.trim().parse::<u32>() {
        Ok(count) => {
            // The greatest there is lies far beyond every limit.
            set.run(u8::try_from(count).unwrap_or(u8::MAX));
            None
        }
        Err(_) => Some(store.say(Message::NotACount { text: &text })),
    };
    view! { <Field id label=label_text(label) hint=None shown take=Callback::new(parse)/> }
}

/// A field for a length that may be unknown: empty for none.
#[component]
pub(super) fn MaybeLengthField(
    id: &'static str,
    label: Label,
    hint: Label,
    /// The length now, as it is shown; empty for none.
    shown: Signal<String>,
    /// Takes an understood length, or none.
    set: Callback<Option<Length>>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let parse = move |text: &str| {
        if text.trim().is_empty() {
            set.run(None);
            return Ok(());
        }
        parse_length(text, store.units.get_untracked())
            .map_err(|error| store.say(Message::LengthText(&error)))
            .map(|length| set.run(Some(length)))
    };
    view! { <Field id label=label_text(label) hint=Some(label_text(hint)) shown take=Callback::new(move |text: String| parse(&text).err())/> }
}

/// A field for a plain number that may be unknown: empty for none.
#[component]
pub(super) fn MaybeNumberField(
    id: &'static str,
    label: Label,
    hint: Label,
    /// The number's unit in each system.
    unit: fn(UnitSystem) -> &'static str,
    /// The number now, as it is shown; empty for none.
    shown: Signal<String>,
    /// Takes a number, or none.
    set: Callback<Option<f64>>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let parse = move |text: String| {
        if text.trim().is_empty() {
            set.run(None);
            return None;
        }
        match parse_number(&text) {
            Some(number) => {
                set.run(Some(number));
                None
            }
            None => Some(store.say(Message::NotANumber { text: &text })),
        }
    };
    let labelled = move || format!("{} ({})", label_text(label), unit(store.units.get()));
    view! { <Field id label=Signal::derive(labelled) hint=Some(label_text(hint)) shown take=Callback::new(parse)/> }
}

/// A field for a free text.
#[component]
pub(super) fn TextField(
    id: &'static str,
    label: Label,
    /// The text now.
    shown: Signal<String>,
    /// Takes the text.
    set: Callback<String>,
) -> impl IntoView {
    let take = move |text: String| {
        set.run(text);
        None
    };
    view! { <Field id label=label_text(label) hint=None shown take=Callback::new(take)/> }
}

#[component]
fn Field(
    id: &'static str,
    #[prop(into)] label: Signal<String>,
    hint: Option<String>,
    shown: Signal<String>,
    /// Takes what was typed; gives what is wrong with it.
    take: Callback<String, Option<String>>,
) -> impl IntoView {
    let wrong = RwSignal::new(None::<String>);
    let input = NodeRef::<leptos::html::Input>::new();
    // The field follows the plan, unless something wrong stands in it to be mended.
    Effect::new(move |_| {
        let shown = shown.get();
        if let Some(input) = input.get() {
            input.set_value(&shown);
            wrong.set(None);
        }
    });
    let changed = move |_| {
        let Some(input) = input.get() else {
            return;
        };
        let fault = take.run(input.value());
        if fault.is_none() {
            // A value that was refused, or one that changes nothing, shows the plan's again.
            input.set_value(&shown.get_untracked());
        }
        wrong.set(fault);
    };
    let described = format!("{id}-note");
    view! {
        <div class="field">
            <label for=id>{label}</label>
            <input
                node_ref=input
                id=id
                type="text"
                autocomplete="off"
                inputmode="text"
                aria-describedby=described.clone()
                aria-invalid=move || wrong.with(Option::is_some).to_string()
                on:change=changed
            />
            <p id=described class="field-note" role="status">
                {move || wrong.get().or_else(|| hint.clone())}
            </p>
        </div>
    }
}

/// A list to choose one of; each choice has a value of its own in the page.
#[component]
pub(super) fn ChoiceField<T: Copy + Send + Sync + 'static>(
    id: &'static str,
    label: Label,
    /// Each choice: its value in the page, its name, and what it stands for.
    choices: Vec<(&'static str, Label, T)>,
    /// Whether a choice is the present one.
    is_chosen: Callback<T, bool>,
    /// Takes the choice made.
    set: Callback<T>,
) -> impl IntoView {
    let options = choices
        .iter()
        .map(|(value, label, choice)| {
            let (value, label, choice) = (*value, *label, *choice);
            view! {
                <option value=value prop:selected=move || is_chosen.run(choice)>
                    {label_text(label)}
                </option>
            }
        })
        .collect_view();
    let changed = move |event: web_sys::Event| {
        let list = event
            .target()
            .and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let value = list.map(|list| list.value());
        let chosen = choices
            .iter()
            .find(|(name, ..)| Some(*name) == value.as_deref());
        if let Some((_, _, choice)) = chosen {
            set.run(*choice);
        }
    };
    view! {
        <div class="field">
            <label for=id>{label_text(label)}</label>
            <select id=id on:change=changed>{options}</select>
        </div>
    }
}
