//! What is done a little later. Nothing of it is ever called off, so the browser's handles are let go.

use leptos::prelude::{request_animation_frame, set_timeout};
use std::time::Duration;

/// Right before the next frame is painted.
pub(super) fn next_frame(act: impl FnOnce() + 'static) {
    let _ = request_animation_frame(act);
}

/// Once what was changed just now stands laid out: right before the frame after the next.
pub(super) fn once_laid_out(act: impl FnOnce() + 'static) {
    next_frame(move || next_frame(act));
}

/// After `pause`.
pub(super) fn after(pause: Duration, act: impl FnOnce() + 'static) {
    let _ = set_timeout(act, pause);
}
