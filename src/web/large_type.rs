//! Large type for a back row: a class on the page's root, which every size of the style sheets hangs
//! on. Kept for the visit only.

use super::soon::once_laid_out;
use super::store::Store;
use crate::editor::Action;
use leptos::prelude::*;

#[component]
pub(super) fn LargeType() -> impl IntoView {
    let store = expect_context::<Store>();
    let large = RwSignal::new(false);
    Effect::new(move |_| {
        if let Some(root) = document().document_element() {
            // A class of plain letters is never refused.
            let _ = root.class_list().toggle_with_force("large", large.get());
        }
        measure(store);
    });
    // The style sheets ask for larger letters on a wide screen too.
    let resized = window_event_listener(leptos::ev::resize, move |_| measure(store));
    on_cleanup(move || resized.remove());
    let pressed = move |_| {
        large.update(|large| *large = !*large);
        // The drawing has its new size a frame later.
        once_laid_out(move || store.act(Action::ShowAll));
    };
    view! {
        <button
            type="button"
            class="toggle"
            aria-pressed=move || large.get().to_string()
            on:click=pressed
        >
            {fixed!(LargeType)}
        </button>
    }
}

/// Reads from the style sheets how large the drawing's letters are, so that they stand clear of
/// what they name.
fn measure(store: Store) {
    let root = document().document_element();
    let style = root.and_then(|root| window().get_computed_style(&root).ok().flatten());
    let scale = style.and_then(|style| style.get_property_value("--letter-scale").ok());
    // The browser's own reading of numbers: Rust's weighs some ten kilobytes of tables.
    let scale = scale.map(|scale| js_sys::parse_float(&scale));
    let before = store.letter_scale.get_untracked();
    // What is no number differs from nothing.
    if let Some(scale) = scale.filter(|scale| (scale - before).abs() > f64::EPSILON) {
        store.letter_scale.set(scale);
    }
}
