//! What waits for the hand to rest: ledger, elevation and the other tables follow a drag as the drawing
//! does while frames are quick. Once a frame was slow they follow when the hand rests.

use super::store::{Results, Version};
use gloo_timers::callback::Timeout;
use leptos::prelude::*;

/// A frame that takes longer than this, ms, from its start to after its painting, is slow: 60 in a
/// second would leave 16.7.
const SLOW: f64 = 12.0;
/// A frame without the tables that takes less than this, ms, leaves room for them.
const QUICK: f64 = 5.0;
/// A hand that has not moved for this long, ms, rests.
const REST: u32 = 80;

/// The newest results that the tables show.
#[derive(Clone, Copy)]
pub(super) struct Steady {
    shown: RwSignal<Version<Results>>,
    pace: StoredValue<Pace, LocalStorage>,
}

#[derive(Default)]
struct Pace {
    /// Whether frames are slow: since one was, and until one is quick.
    is_slow: bool,
    /// Waits for the hand to rest.
    rest: Option<Timeout>,
}

impl Steady {
    pub fn new(results: Memo<Version<Results>>, dragging: Memo<bool>) -> Self {
        let steady = Self {
            shown: RwSignal::new(results.get_untracked()),
            pace: StoredValue::new_local(Pace::default()),
        };
        Effect::new(move |_| {
            let newest = results.get();
            let dragging = dragging.get();
            let waits = steady.pace.try_update_value(|pace| {
                pace.rest = None;
                dragging && pace.is_slow
            });
            if waits == Some(true) {
                let rest = Timeout::new(REST, move || steady.show(newest));
                steady.pace.update_value(|pace| pace.rest = Some(rest));
            } else {
                steady.show(newest);
            }
        });
        steady
    }

    /// Looks at the results and follows them.
    pub fn with<T>(self, look: impl FnOnce(&Results) -> T) -> T {
        self.shown.with(|shown| look(shown))
    }

    fn show(self, newest: Version<Results>) {
        if self.shown.with_untracked(|shown| *shown != newest) {
            self.shown.set(newest);
        }
    }

    /// Watches how long the frame takes that has just begun.
    pub fn watch_frame(self) {
        let begun = now();
        // The next task comes after the frame is painted.
        Timeout::new(0, move || {
            let took = now() - begun;
            self.pace.update_value(|pace| {
                pace.is_slow = took > if pace.is_slow { QUICK } else { SLOW };
            });
        })
        .forget();
    }
}

/// Milliseconds since the page was opened.
fn now() -> f64 {
    window().performance().map_or(0.0, |clock| clock.now())
}
