//! Lessons: the project's own, fetched when one is chosen, or a trainer's from a file.

use super::band_client::build;
use super::side::Side;
use super::side_words::{say, side_text};
use super::store::{Store, label_text};
use crate::plan::{Lesson, read_lesson};
use crate::report::words::{Label, SideLabel, SideMessage};
use leptos::html;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{File, Response};

/// The project's own: the name of each file and of each lesson.
const OWN: [(&str, SideLabel); 6] = [
    ("one-elbow-more", SideLabel::LessonOneElbow),
    ("sharp-or-long-radius", SideLabel::LessonSharpOrLong),
    ("flex-pushed-together", SideLabel::LessonPushedTogether),
    ("same-code-length", SideLabel::LessonSameCodeLength),
    ("hot-and-cold", SideLabel::LessonHotOrCold),
    ("blocked-flap", SideLabel::LessonBlockedFlap),
];

/// The question, and what helps; the answer once the figures are shown.
#[component]
pub(super) fn LessonQuestion() -> impl IntoView {
    let side = expect_context::<Side>();
    let text = move || {
        let text = side.lesson.get()?;
        let hint = (!text.hint.is_empty()).then(|| {
            view! {
                <details class="more">
                    <summary>{side_text(SideLabel::Hint)}</summary>
                    <p>{text.hint.clone()}</p>
                </details>
            }
        });
        let said = text.answer.clone();
        let is_said = move || side.guess.is_answered();
        let answer = (!text.answer.is_empty()).then(|| {
            view! {
                <div role="status">
                    <Show when=is_said>
                        <h4>{side_text(SideLabel::Answer)}</h4>
                        <p class="side-answer">{said.clone()}</p>
                    </Show>
                </div>
            }
        });
        Some(view! {
            <div class="side-lesson">
                <h3>{text.title.clone()}</h3>
                <p class="side-question">{text.question.clone()}</p>
                {hint}
                {answer}
            </div>
        })
    };
    view! { {text} }
}

/// The lessons to choose from.
#[component]
pub(super) fn Lessons() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let file = NodeRef::<html::Input>::new();
    let fold = NodeRef::<html::Details>::new();
    let chosen = move |_| {
        if let Some(input) = file.get() {
            if let Some(chosen) = input.files().and_then(|list| list.get(0)) {
                spawn_local(async move { take(store, side, bytes_of_file(&chosen).await) });
            }
            // The same file can be chosen again.
            input.set_value("");
        }
    };
    let own = OWN.map(|(name, label)| {
        let fetched = move |_| {
            // The question needs the room.
            if let Some(fold) = fold.get() {
                let _ = fold.remove_attribute("open");
            }
            spawn_local(async move { take(store, side, bytes_of_own(name).await) });
        };
        view! { <button type="button" on:click=fetched>{side_text(label)}</button> }
    });
    view! {
        <details node_ref=fold class="more">
            <summary>{side_text(SideLabel::Lessons)}</summary>
            <div class="more-buttons">
                {own}
                <button
                    type="button"
                    on:click=move |_| { if let Some(input) = file.get() { input.click(); } }
                >
                    {side_text(SideLabel::LessonFile)}
                </button>
                <input
                    node_ref=file
                    id="lesson-file"
                    class="visually-hidden"
                    type="file"
                    accept=".json,application/json"
                    tabindex="-1"
                    aria-label=side_text(SideLabel::LessonFile)
                    on:change=chosen
                />
            </div>
        </details>
    }
}

/// Sets a lesson's two runs side by side, or says why not.
fn take(store: Store, side: Side, bytes: Option<Vec<u8>>) {
    let read = bytes.map(|bytes| read_lesson(&bytes));
    let why = match read {
        Some(Ok(Lesson {
            text,
            first,
            second,
        })) => {
            side.take_lesson(store, first, second, text);
            return;
        }
        Some(Err(error)) => say(store, SideMessage::Lesson(&error)),
        None => side_text(SideLabel::LessonFailed),
    };
    side.said
        .set(format!("{why} {}", label_text(Label::PlanKept)));
}

async fn bytes_of_file(file: &File) -> Option<Vec<u8>> {
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    Some(js_sys::Uint8Array::new(&buffer).to_vec())
}

async fn bytes_of_own(name: &str) -> Option<Vec<u8>> {
    let address = format!("./{}/lessons/{name}.json", build()?);
    let response = JsFuture::from(window().fetch_with_str(&address))
        .await
        .ok()?;
    let response: Response = response.dyn_into().ok()?;
    if !response.ok() {
        return None;
    }
    let buffer = JsFuture::from(response.array_buffer().ok()?).await.ok()?;
    Some(js_sys::Uint8Array::new(&buffer).to_vec())
}
