//! Tells the loader of a panic: after one the program is dead, and the loader draws what is left.

use wasm_bindgen::JsValue;

/// The event that `boot.js` waits for.
const EVENT: &str = "elbowroom-panic";

/// From now on a panic reaches the loader as an event that holds its message.
pub(super) fn install() {
    std::panic::set_hook(Box::new(|information| {
        let options = web_sys::CustomEventInit::new();
        options.set_detail(&JsValue::from_str(&information.to_string()));
        if let (Some(window), Ok(event)) = (
            web_sys::window(),
            web_sys::CustomEvent::new_with_event_init_dict(EVENT, &options),
        ) {
            // Nothing is left to do where even this fails.
            let _ = window.dispatch_event(&event);
        }
    }));
}
