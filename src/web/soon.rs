//! What is done a little later. Nothing of it is ever called off: the framework's own ways would let go
//! of it with the component that asked, and what is to be done then may be just that it is gone.

use gloo_timers::callback::Timeout;
use leptos::prelude::window;
use std::time::Duration;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;

/// Right before the next frame is painted.
pub(super) fn next_frame(act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(act);
    // A browser that refuses shows nothing at all.
    let _ = window().request_animation_frame(act.unchecked_ref());
}

/// Once what was changed just now stands laid out: right before the frame after the next.
pub(super) fn once_laid_out(act: impl FnOnce() + 'static) {
    next_frame(move || next_frame(act));
}

/// After `pause`.
pub(super) fn after(pause: Duration, act: impl FnOnce() + 'static) {
    let pause = u32::try_from(pause.as_millis()).unwrap_or(u32::MAX);
    Timeout::new(pause, act).forget();
}
