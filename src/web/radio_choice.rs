//! One of a few, each a press of its own.

use leptos::prelude::*;

#[component]
pub(super) fn RadioChoice<T: Copy + PartialEq + Send + Sync + 'static>(
    /// What its buttons have in common.
    name: &'static str,
    legend: String,
    /// Whether the legend is seen, and not heard alone.
    #[prop(optional)]
    shows_legend: bool,
    /// The choices and their names.
    choices: Vec<(T, String)>,
    chosen: Signal<T>,
    /// Takes the choice made.
    set: Callback<T>,
) -> impl IntoView {
    let buttons = choices.into_iter().map(|(choice, label)| {
        view! {
            <label>
                <input
                    type="radio"
                    name=name
                    prop:checked=move || chosen.get() == choice
                    on:change=move |_| set.run(choice)
                />
                <span>{label}</span>
            </label>
        }
    });
    view! {
        <fieldset class="choice" class:titled=shows_legend>
            <legend class:visually-hidden=!shows_legend>{legend}</legend>
            {buttons.collect_view()}
        </fieldset>
    }
}
