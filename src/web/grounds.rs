//! Where a figure comes from: asked by a press on its name, answered below it.

use super::store::label_text;
use crate::report::words::Label;
use leptos::prelude::*;

/// The name of a figure, to be pressed.
#[component]
pub(super) fn GroundsName(name: String, id: String, open: RwSignal<bool>) -> impl IntoView {
    view! {
        <button
            type="button"
            class="ask"
            title=label_text(Label::WhereFrom)
            aria-expanded=move || open.get().to_string()
            aria-controls=id
            on:click=move |_| open.update(|open| *open = !*open)
        >
            {name}
        </button>
    }
}

/// The answer; it takes no room until it is asked for.
#[component]
pub(super) fn GroundsText(
    id: String,
    open: RwSignal<bool>,
    text: impl Fn() -> String + Send + Sync + 'static,
) -> impl IntoView {
    let text = move || open.get().then(&text);
    view! {
        <p id=id class="grounds fine">{text}</p>
    }
}
