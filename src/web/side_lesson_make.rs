//! A lesson made of the two runs as they are: its texts are typed here, and it goes out as a file.

use super::files::{file_name, hand_out};
use super::side::Side;
use super::side_words::{say, side_text};
use super::store::Store;
use crate::plan::{Lesson, LessonText, within_bounds, write_lesson};
use crate::report::words::{SideLabel, SideMessage};
use leptos::prelude::*;

/// The texts as typed, beginning with those of the lesson that is open.
#[derive(Clone, Copy)]
struct Typed {
    title: RwSignal<String>,
    question: RwSignal<String>,
    hint: RwSignal<String>,
    answer: RwSignal<String>,
}

#[component]
pub(super) fn MakeLesson() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let empty = || RwSignal::new(String::new());
    let typed = Typed {
        title: empty(),
        question: empty(),
        hint: empty(),
        answer: empty(),
    };
    Effect::new(move |_| {
        if let Some(text) = side.lesson.get() {
            typed.title.set(text.title.clone());
            typed.question.set(text.question.clone());
            typed.hint.set(text.hint.clone());
            typed.answer.set(text.answer.clone());
        }
    });
    let wrong = RwSignal::new(String::new());
    let save = move |_| {
        let text = LessonText {
            title: typed.title.get_untracked(),
            question: typed.question.get_untracked(),
            hint: typed.hint.get_untracked(),
            answer: typed.answer.get_untracked(),
            asks: side.guess.asked(),
        };
        if let Err(error) = within_bounds(&text) {
            wrong.set(say(store, SideMessage::Lesson(&error)));
            return;
        }
        wrong.set(String::new());
        let name = file_name(&text.title, "json");
        let file = side.with_both(store, |first, second| {
            write_lesson(&Lesson {
                text,
                first: (*first.plan).clone(),
                second: (*second.plan).clone(),
            })
        });
        if let Some(file) = file {
            // A browser that hands out no files shows that itself.
            let _ = hand_out(&name, "application/json", &file);
        }
    };
    let field = |id: &'static str, label: SideLabel, text: RwSignal<String>| {
        view! {
            <div class="field">
                <label for=id>{side_text(label)}</label>
                <textarea
                    id=id
                    rows="2"
                    prop:value=move || text.get()
                    on:input=move |event| text.set(event_target_value(&event))
                />
            </div>
        }
    };
    view! {
        <details class="more">
            <summary>{side_text(SideLabel::MakeLesson)}</summary>
            <p class="fine">{side_text(SideLabel::MakeLessonHint)}</p>
            <div class="field">
                <label for="lesson-title">{side_text(SideLabel::LessonName)}</label>
                <input
                    id="lesson-title"
                    type="text"
                    prop:value=move || typed.title.get()
                    on:input=move |event| typed.title.set(event_target_value(&event))
                />
            </div>
            {field("lesson-question", SideLabel::LessonQuestion, typed.question)}
            {field("lesson-hint", SideLabel::LessonHint, typed.hint)}
            {field("lesson-answer", SideLabel::LessonAnswer, typed.answer)}
            <p class="field-note" role="alert">{move || wrong.get()}</p>
            <div class="more-buttons">
                <button type="button" on:click=save>{side_text(SideLabel::LessonSave)}</button>
            </div>
        </details>
    }
}
