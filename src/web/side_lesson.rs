//! Lessons: the project's own, fetched when one is chosen, or a trainer's from a file.

use super::file_button::{FileButton, bytes_of};
use super::own_build::build;
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
    let fold = NodeRef::<html::Details>::new();
    let chosen = Callback::new(move |file: File| {
        spawn_local(async move { take(store, side, bytes_of(&file).await) });
    });
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
                <FileButton
                    label=side_text(SideLabel::LessonFile)
                    id="lesson-file"
                    accept=".json,application/json"
                    chosen
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
