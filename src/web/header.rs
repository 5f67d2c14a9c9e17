//! The head of the sheet: the job's name, undo, files, units and how the page is shown. Where it is
//! narrow, what is rarely used folds away behind one button.

use super::file_button::FileButton;
use super::first_steps::GuideLink;
use super::keep_view::KeepWord;
use super::large_type::LargeType;
use super::link_send::SendLinkButton;
use super::offline_word::OfflineWord;
use super::radio_choice::RadioChoice;
use super::rest::{Press, pressed};
use super::shelf_view::ShelfButton;
use super::side::Side;
use super::side_head::SideButton;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::blank;
use crate::report::the_example;
use crate::report::words::{ActionName, Label, Message};
use crate::units::UnitSystem;
use leptos::prelude::*;

#[component]
pub(super) fn Header() -> impl IntoView {
    let store = expect_context::<Store>();
    let unfolded = RwSignal::new(false);
    let side = expect_context::<Side>();
    Effect::new(move |_| {
        // What was unfolded to set two runs side by side would push them down.
        if side.is_open.get() {
            unfolded.set(false);
        }
    });
    view! {
        <header class="head" class:unfolded=move || unfolded.get()>
            <div class="head-title">
                <h1>{label_text(Label::ProgramName)}</h1>
                <p class="head-job">{move || store.plan.with(|plan| plan.title.clone())}</p>
            </div>
            <p class="fine head-note">{move || store.plan.with(|plan| plan.note.clone())}</p>
            <div class="head-keep"><KeepWord/><OfflineWord/></div>
            <div class="head-tools">
                <div class="head-steps">
                    <History/>
                    <button
                        type="button"
                        class="toggle head-more"
                        aria-controls="head-files"
                        aria-expanded=move || unfolded.get().to_string()
                        on:click=move |_| unfolded.update(|unfolded| *unfolded = !*unfolded)
                    >
                        {label_text(Label::More)}
                    </button>
                </div>
                <div class="head-files" id="head-files">
                    <Files/>
                    <Units/>
                    <SideButton/>
                    <LargeType/>
                    <button
                        type="button"
                        aria-haspopup="dialog"
                        on:click=move |_| store.shows_keys.set(true)
                    >
                        {label_text(Label::Keys)}
                    </button>
                    <GuideLink/>
                    <Steps/>
                </div>
            </div>
        </header>
    }
}

#[component]
fn Files() -> impl IntoView {
    let store = expect_context::<Store>();
    let chosen = Callback::new(move |file| pressed(Press::OpenFile(store, file)));
    view! {
        <ShelfButton/>
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
        <FileButton label=label_text(Label::OpenFile) id="plan-file" accept=".json,application/json" chosen/>
        <button type="button" on:click=move |_| pressed(Press::SavePlan(store))>
            {label_text(Label::SaveFile)}
        </button>
        <SendLinkButton/>
        <button type="button" on:click=move |_| pressed(Press::SaveDrawing(store))>
            {label_text(Label::SaveDrawing)}
        </button>
    }
}

/// The steps that undo and redo would take, by name.
fn next_steps(store: Store) -> (Memo<Option<ActionName>>, Memo<Option<ActionName>>) {
    (
        Memo::new(move |_| store.with_state(|state| state.history.next_undo())),
        Memo::new(move |_| store.with_state(|state| state.history.next_redo())),
    )
}

#[component]
fn History() -> impl IntoView {
    let store = expect_context::<Store>();
    let (undo, redo) = next_steps(store);
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

/// What the two buttons' titles say, for hands that cannot hover.
#[component]
fn Steps() -> impl IntoView {
    let store = expect_context::<Store>();
    let (undo, redo) = next_steps(store);
    let step = move |label: Label, name: Option<_>| {
        let name = store.say(Message::ActionName(name?));
        Some(format!("{}: {name}", label_text(label)))
    };
    view! {
        <p class="fine head-step-names" aria-hidden="true">
            <span>{move || step(Label::Undo, undo.get())}</span>
            <span>{move || step(Label::Redo, redo.get())}</span>
        </p>
    }
}

#[component]
fn Units() -> impl IntoView {
    let store = expect_context::<Store>();
    let choices = vec![
        (UnitSystem::UsCustomary, label_text(Label::UnitsUsCustomary)),
        (UnitSystem::Si, label_text(Label::UnitsSi)),
    ];
    let set = Callback::new(move |units| store.act(Action::SetUnits(units)));
    view! {
        <RadioChoice name="units" legend=label_text(Label::Units) choices chosen=store.units.into() set/>
    }
}
