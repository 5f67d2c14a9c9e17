//! Tells the loader that the page is whole, what was done, and of a panic: after one the program is
//! dead, and the loader draws what is left.

use crate::report::words::ActionName;
use wasm_bindgen::JsValue;

/// The events that `boot.js` waits for.
const WHOLE: &str = "elbowroom-whole";
const PANIC: &str = "elbowroom-panic";
const DONE: &str = "elbowroom-done";

/// From now on a panic reaches the loader as an event that holds its message.
pub(super) fn install() {
    std::panic::set_hook(Box::new(|information| {
        tell(PANIC, &information.to_string());
    }));
}

/// The loader learns that every part of the page stands: what is for later can be fetched.
pub(super) fn tell_whole() {
    tell(WHOLE, "");
}

/// The loader learns which step was taken: the kind alone, and nothing that was typed or drawn.
pub(super) fn tell_done(name: ActionName) {
    tell(DONE, &format!("{name:?}"));
}

/// The loader says that the page cannot go on, and why.
pub(super) fn stop(why: &str) {
    tell(PANIC, why);
}

fn tell(event: &str, detail: &str) {
    let options = web_sys::CustomEventInit::new();
    options.set_detail(&JsValue::from_str(detail));
    if let (Some(window), Ok(event)) = (
        web_sys::window(),
        web_sys::CustomEvent::new_with_event_init_dict(event, &options),
    ) {
        // Nothing is left to do where even this fails.
        let _ = window.dispatch_event(&event);
    }
}
