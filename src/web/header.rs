//! The head of the sheet: the job's name, files, undo and units.

use super::files;
use super::keep_view::KeepWord;
use super::store::{Store, label_text, the_example};
use crate::editor::Action;
use crate::plan::blank;
use crate::report::words::{Label, Message};
use crate::units::UnitSystem;
use leptos::prelude::*;
use web_sys::HtmlInputElement;

#[component]
pub(super) fn Header() -> impl IntoView {
    let store = expect_context::<Store>();
    let file = NodeRef::<leptos::html::Input>::new();
    let open_chosen = move |_| {
        if let Some(input) = file.get() {
            open_file_of(store, &input);
        }
    };
    view! {
        <header class="head">
            <div class="head-title">
                <h1>{label_text(Label::ProgramName)}</h1>
                <p class="head-job">{move || store.plan.with(|plan| plan.title.clone())}</p>
                <p class="fine">{move || store.plan.with(|plan| plan.note.clone())}</p>
                <KeepWord/>
            </div>
            <div class="head-tools">
                <button type="button" on:click=move |_| store.act(Action::Open(Box::new(the_example())))>
                    {label_text(Label::OpenExample)}
                </button>
                <button
                    type="button"
                    on:click=move |_| {
                        store.act(Action::Open(Box::new(blank(label_text(Label::BlankTitle)))));
                    }
                >
                    {label_text(Label::OpenBlank)}
                </button>
                <button type="button" on:click=move |_| { if let Some(input) = file.get() { input.click(); } }>
                    {label_text(Label::OpenFile)}
                </button>
                <input
                    node_ref=file
                    class="visually-hidden"
                    id="plan-file"
                    type="file"
                    accept=".json,application/json"
                    tabindex="-1"
                    aria-label=label_text(Label::OpenFile)
                    on:change=open_chosen
                />
                <button type="button" on:click=move |_| files::save_plan(store)>
                    {label_text(Label::SaveFile)}
                </button>
                <button type="button" on:click=move |_| files::save_drawing(store)>
                    {label_text(Label::SaveDrawing)}
                </button>
                <History/>
                <Units/>
            </div>
        </header>
    }
}

fn open_file_of(store: Store, input: &HtmlInputElement) {
    if let Some(chosen) = input.files().and_then(|list| list.get(0)) {
        files::open(store, chosen);
    }
    // The same file can be chosen again.
    input.set_value("");
}

#[component]
fn History() -> impl IntoView {
    let store = expect_context::<Store>();
    let undo = Memo::new(move |_| store.with_state(|state| state.history.next_undo()));
    let redo = Memo::new(move |_| store.with_state(|state| state.history.next_redo()));
    let title = move |name: Option<_>| name.map(|name| store.say(Message::ActionName(name)));
    view! {
        <button
            type="button"
            disabled=move || undo.get().is_none()
            title=move || title(undo.get())
            on:click=move |_| store.act(Action::Undo)
        >
            {label_text(Label::Undo)}
        </button>
        <button
            type="button"
            disabled=move || redo.get().is_none()
            title=move || title(redo.get())
            on:click=move |_| store.act(Action::Redo)
        >
            {label_text(Label::Redo)}
        </button>
    }
}

#[component]
fn Units() -> impl IntoView {
    let store = expect_context::<Store>();
    let choice = move |units: UnitSystem, label: Label| {
        view! {
            <label>
                <input
                    type="radio"
                    name="units"
                    prop:checked=move || store.units.get() == units
                    on:change=move |_| store.act(Action::SetUnits(units))
                />
                <span>{label_text(label)}</span>
            </label>
        }
    };
    view! {
        <fieldset class="choice">
            <legend class="visually-hidden">{label_text(Label::Units)}</legend>
            {choice(UnitSystem::UsCustomary, Label::UnitsUsCustomary)}
            {choice(UnitSystem::Si, Label::UnitsSi)}
        </fieldset>
    }
}
