//! What the tabs of one browser tell each other of the jobs that they store.

use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{BroadcastChannel, MessageEvent};

const CHANNEL: &str = "elbowroom-jobs";

/// Tells of stored jobs, and hears of them. A browser without such channels tells nothing: two tabs
/// are then noticed when the second one stores.
pub(super) struct KeepNews {
    channel: Option<BroadcastChannel>,
    /// Called by the browser for as long as it is kept.
    _hears: Option<Closure<dyn FnMut(MessageEvent)>>,
}

impl KeepNews {
    /// Tells nothing.
    pub const fn silent() -> Self {
        Self {
            channel: None,
            _hears: None,
        }
    }

    /// Calls `heard` with the key of each job that another tab stores.
    pub fn start(heard: impl Fn(&str) + 'static) -> Self {
        let Ok(channel) = BroadcastChannel::new(CHANNEL) else {
            return Self::silent();
        };
        let hears = Closure::new(move |event: MessageEvent| {
            if let Some(key) = event.data().as_string() {
                heard(&key);
            }
        });
        channel.set_onmessage(Some(hears.as_ref().unchecked_ref()));
        Self {
            channel: Some(channel),
            _hears: Some(hears),
        }
    }

    /// The job of `key` was stored here.
    pub fn tell(&self, key: &str) {
        if let Some(channel) = &self.channel {
            // Nobody listens: nothing to be told.
            let _ = channel.post_message(&key.into());
        }
    }
}
