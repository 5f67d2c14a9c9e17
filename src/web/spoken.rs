//! What is read aloud.

use super::store::Store;
use leptos::prelude::*;

/// The live region. A text that is said twice in a row comes as a new text node each time: a reader
/// speaks what is added, and passes over a text that stays the same.
#[component]
pub(super) fn Spoken() -> impl IntoView {
    let store = expect_context::<Store>();
    let said = Memo::new(move |before: Option<&(u32, String)>| {
        let count = before.map_or(0, |(count, _)| count.wrapping_add(1));
        (count, store.announcement.get())
    });
    view! {
        <p class="visually-hidden" role="status" aria-live="polite">
            <For
                each=move || Some(said.get()).filter(|(_, text)| !text.is_empty())
                key=|(count, _)| *count
                children=|(_, text)| text
            />
        </p>
    }
}
