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
use super::store::Store;
use crate::editor::Action;
use crate::plan::blank;
use crate::report::the_example;
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
                <h1>{fixed!(ProgramName)}</h1>
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
                        {fixed!(More)}
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
                        {fixed!(Keys)}
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
            {fixed!(OpenExample)}
        </button>
        <button
            type="button"
            on:click=move |_| {
                store.act(Action::Open(Box::new(blank(fixed!(BlankTitle).to_owned()))));
            }
        >
            {fixed!(OpenBlank)}
        </button>
        <FileButton label=fixed!(OpenFile).to_owned() id="plan-file" accept=".json,application/json" chosen/>
        <button type="button" on:click=move |_| pressed(Press::SavePlan(store))>
            {fixed!(SaveFile)}
        </button>
        <SendLinkButton/>
        <button type="button" on:click=move |_| pressed(Press::SaveDrawing(store))>
            {fixed!(SaveDrawing)}
        </button>
    }
}

#[component]
fn History() -> impl IntoView {
    let store = expect_context::<Store>();
    let steps = store.steps;
    let title = move |name: Option<_>| name.map(|name| store.words().action_name(name));
    view! {
        <button
            type="button"
            disabled=move || steps.get()[0].is_none()
            title=move || title(steps.get()[0])
            on:click=move |_| store.act(Action::Undo)
        >
            {fixed!(Undo)}
        </button>
        <button
            type="button"
            disabled=move || steps.get()[1].is_none()
            title=move || title(steps.get()[1])
            on:click=move |_| store.act(Action::Redo)
        >
            {fixed!(Redo)}
        </button>
    }
}

/// What the two buttons' titles say, for hands that cannot hover.
#[component]
fn Steps() -> impl IntoView {
    let store = expect_context::<Store>();
    let steps = store.steps;
    let step = move |label: &str, name: Option<_>| {
        let name = store.words().action_name(name?);
        Some(format!("{label}: {name}"))
    };
    view! {
        <p class="fine head-step-names" aria-hidden="true">
            <span>{move || step(fixed!(Undo), steps.get()[0])}</span>
            <span>{move || step(fixed!(Redo), steps.get()[1])}</span>
        </p>
    }
}

#[component]
fn Units() -> impl IntoView {
    let store = expect_context::<Store>();
    let choices = vec![
        (UnitSystem::UsCustomary, fixed!(UnitsUsCustomary).to_owned()),
        (UnitSystem::Si, fixed!(UnitsSi).to_owned()),
    ];
    let set = Callback::new(move |units| store.act(Action::SetUnits(units)));
    view! {
        <RadioChoice name="units" legend=fixed!(Units).to_owned() choices chosen=store.units.into() set/>
    }
}
