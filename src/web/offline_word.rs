//! Whether the page opens without a network, and the offer of a newer build of it.

use super::keep::Progress;
use super::store::Store;
use leptos::prelude::*;

/// The attribute of the root element by which `offline.js` says how far it is, the event by which it
/// tells of a change, and the one that asks the newer build to take over.
const STATE: &str = "data-offline";
const CHANGED: &str = "elbowroom-offline";
const TAKE_OVER: &str = "elbowroom-take-over";

fn state() -> Option<String> {
    document().document_element()?.get_attribute(STATE)
}

/// A quiet word once everything is kept; where a newer build waits, what it waits for.
#[component]
pub(super) fn OfflineWord() -> impl IntoView {
    let store = expect_context::<Store>();
    let current = RwSignal::new(state());
    let listener = window_event_listener_untyped(CHANGED, move |_| current.set(state()));
    on_cleanup(move || listener.remove());
    // The newer build comes with a reload: not while the last change is still on its way to the store.
    let is_safe = move || {
        matches!(
            store.keeper.progress.get(),
            Progress::Untouched | Progress::Saved
        )
    };
    let take_over = move |_| {
        let sent =
            web_sys::CustomEvent::new(TAKE_OVER).and_then(|event| window().dispatch_event(&event));
        // A browser that makes no events has no newer build waiting either.
        debug_assert!(sent.is_ok());
    };
    let told = move || {
        let word = match current.get().as_deref() {
            Some("ready") => fixed!(OfflineReady),
            Some("waiting") => fixed!(OfflineWaiting),
            Some("others") => fixed!(OfflineOthers),
            _ => return None,
        };
        Some(word)
    };
    let waits = move || matches!(current.get().as_deref(), Some("waiting" | "others"));
    view! {
        <p class="fine" role="status" data-testid="offline">{told}</p>
        <Show when=waits>
            <button type="button" disabled=move || !is_safe() on:click=take_over>
                {fixed!(OfflineTakeOver)}
            </button>
        </Show>
    }
}
