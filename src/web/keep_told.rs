//! The loader is handed the job as it is stored, since it outlives the program.

use super::files::file_name;
use super::keep_store::object;
use crate::plan::Plan;
use leptos::prelude::window;

/// The event with which `boot.js` learns what it can hand out once the program is dead.
const KEPT_EVENT: &str = "elbowroom-kept";

/// Hands the stored file to the loader.
pub(super) fn tell_kept(plan: &Plan, text: &str) {
    let name = file_name(&plan.title, "json");
    let options = web_sys::CustomEventInit::new();
    options.set_detail(&object([("name", name.into()), ("text", text.into())]));
    if let Ok(event) = web_sys::CustomEvent::new_with_event_init_dict(KEPT_EVENT, &options) {
        // The loader listens for as long as the page lives.
        let _ = window().dispatch_event(&event);
    }
}
