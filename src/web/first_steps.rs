//! Three short steps for somebody who is here for the first time, folded away in one line until it is
//! asked for, and gone for good once it is closed.

use super::focus::focus_drawing;
use super::own_build::build;
use super::store::Store;
use leptos::prelude::*;

/// What the browser remembers the closing by; no part of any job.
const CLOSED: &str = "elbowroom-first-steps";

fn was_closed() -> bool {
    let storage = window().local_storage().ok().flatten();
    storage.is_some_and(|storage| matches!(storage.get_item(CLOSED), Ok(Some(_))))
}

#[component]
pub(super) fn FirstSteps() -> impl IntoView {
    let store = expect_context::<Store>();
    let closed = RwSignal::new(was_closed());
    let close = move |_| {
        closed.set(true);
        focus_drawing();
        if let Ok(Some(storage)) = window().local_storage() {
            // A browser that keeps nothing shows it again next time.
            let _ = storage.set_item(CLOSED, "closed");
        }
    };
    // Only before the first change: later the line would be in the way of what is being done.
    let is_first = move || store.steps.get()[0].is_none();
    view! {
        <Show when=move || !closed.get() && is_first()>
            <details class="first-steps">
                <summary>{fixed!(FirstSteps)}</summary>
                <ol>
                    <li>{fixed!(FirstStepDrag)}</li>
                    <li>{fixed!(FirstStepRank)}</li>
                    <li>{fixed!(FirstStepReroute)}</li>
                </ol>
                <p>
                    <GuideLink/>
                    <button type="button" on:click=close>{fixed!(FirstStepsClose)}</button>
                </p>
            </details>
        </Show>
    }
}

/// The way to the guide: a page of its own, which the first visit need not wait for.
#[component]
pub(super) fn GuideLink() -> impl IntoView {
    build().map(|build| {
        view! {
            <a class="button" href=format!("{build}/guide.html") target="_blank">
                {fixed!(Guide)}
            </a>
        }
    })
}
