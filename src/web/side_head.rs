//! The head of the two runs: what is set beside what, what a class is asked, and what differs.

use super::keep_store::Stored;
use super::rest::{Press, pressed};
use super::shelf::{Entry, Shelf};
use super::side::Side;
use super::side_differences::SideDifferences;
use super::side_guess::SideGuess;
use super::side_lesson::{LessonQuestion, Lessons};
use super::side_lesson_make::MakeLesson;
use super::side_words::side_text;
use super::store::Store;
use crate::report::words::SideLabel;
use leptos::prelude::*;

/// The button that sets two runs side by side.
#[component]
pub(super) fn SideButton() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    view! {
        <button
            type="button"
            class="toggle"
            aria-pressed=move || side.is_open.get().to_string()
            on:click=move |_| pressed(Press::SideBySide(side, store))
        >
            {fixed!(Side::SideLabel::Heading)}
        </button>
    }
}

#[component]
pub(super) fn SideHead() -> impl IntoView {
    let side = expect_context::<Side>();
    view! {
        <Show when=move || side.is_open.get()>
            <Head/>
        </Show>
    }
}

#[component]
fn Head() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    view! {
        <section class="panel side-head" aria-labelledby="side-title">
            <div class="panel-head">
                <h2 id="side-title">{side_text(SideLabel::Heading)}</h2>
                <div class="more-buttons">
                    <FullScreen/>
                    <button type="button" on:click=move |_| side.end(store)>
                        {side_text(SideLabel::End)}
                    </button>
                </div>
            </div>
            <p role="status" class="side-said">{move || side.said.get()}</p>
            <LessonQuestion/>
            <div class="side-parts">
                <SideGuess/>
                <SideDifferences/>
                <div class="side-sources">
                    <h3>{side_text(SideLabel::FirstFrom)}</h3>
                    <button type="button" on:click=move |_| side.copy(store)>
                        {side_text(SideLabel::CopyOfThis)}
                    </button>
                    <KeptJobs/>
                    <Lessons/>
                    <MakeLesson/>
                </div>
            </div>
        </section>
    }
}

/// The kept jobs, looked for when they are unfolded.
#[component]
fn KeptJobs() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let shelf = expect_context::<Shelf>();
    let list = move || {
        let entries = shelf.entries.get().unwrap_or_default();
        let one = |entry: Entry| {
            let (Stored::Job(record), Some(plan)) = (entry.stored, entry.plan) else {
                return None;
            };
            let is_open = store.keeper.key().as_ref() == Some(&entry.key);
            let title = plan.title.clone();
            let take = move |_| {
                side.take_kept(store, entry.key.clone(), record.clone(), (*plan).clone());
            };
            let button = view! {
                <button type="button" on:click=take>{title}</button>
            };
            (!is_open).then_some(button)
        };
        entries.into_iter().filter_map(one).collect_view()
    };
    view! {
        <details class="more" on:toggle=move |_| shelf.look()>
            <summary>{side_text(SideLabel::KeptJobs)}</summary>
            <div class="more-buttons">{list}</div>
        </details>
    }
}

/// The whole screen for the page, where the browser gives it.
#[component]
fn FullScreen() -> impl IntoView {
    let is_full = RwSignal::new(document().fullscreen_element().is_some());
    let changed = window_event_listener_untyped("fullscreenchange", move |_| {
        is_full.set(document().fullscreen_element().is_some());
    });
    on_cleanup(move || changed.remove());
    let turn = move |_| {
        if document().fullscreen_element().is_some() {
            document().exit_fullscreen();
        } else if let Some(root) = document().document_element() {
            // A browser that gives none leaves the page as it is.
            let _ = root.request_fullscreen();
        }
    };
    document().fullscreen_enabled().then(|| {
        view! {
            <button
                type="button"
                class="toggle"
                aria-pressed=move || is_full.get().to_string()
                on:click=turn
            >
                {side_text(SideLabel::FullScreen)}
            </button>
        }
    })
}
