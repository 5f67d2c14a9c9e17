//! Printing a part of the page by itself: an attribute at the root tells the style sheet which.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// What the style sheet knows the part by.
const PRINT: &str = "data-print";

/// Prints the part called `name` alone, then calls `after`. Whether the browser printed it or not, the
/// page is itself again then.
pub(super) fn print_part(name: &str, after: impl FnOnce() + 'static) {
    let Some(root) = document().document_element() else {
        return;
    };
    // An attribute that cannot be set leaves a print of the whole page.
    let _ = root.set_attribute(PRINT, name);
    let restore = Closure::once_into_js(move || {
        let _ = root.remove_attribute(PRINT);
        after();
    });
    let options = web_sys::AddEventListenerOptions::new();
    options.set_once(true);
    let _ = window().add_event_listener_with_callback_and_add_event_listener_options(
        "afterprint",
        restore.unchecked_ref(),
        &options,
    );
    let _ = window().print();
}
