//! What leaves a drag its frames: ledger, elevation and the other tables follow the drawing between
//! frames, while there is time for it, and otherwise when the hand rests.

use super::results::{Results, Version};
use gloo_timers::callback::Timeout;
use leptos::prelude::*;
use leptos::task::{spawn_local, tick};
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::IdleDeadline;

/// A hand that has not moved from one look to the next, so many ms later, rests.
const REST: u32 = 60;
/// Between two frames at 60 in a second there is never more idle time, ms.
const MOST_IDLE: f64 = 16.0;

/// The newest results that the tables show.
#[derive(Clone, Copy)]
pub(super) struct Steady {
    shown: RwSignal<Version<Results>>,
    pace: StoredValue<Pace, LocalStorage>,
}

struct Pace {
    /// The results as the hand has them.
    newest: RwSignal<Version<Results>>,
    /// Runs when the browser has nothing to do before the next frame.
    idle: Option<Closure<dyn FnMut(IdleDeadline)>>,
    /// Whether such a time was asked for and has not come yet.
    waits: bool,
    /// How long the tables took last, ms.
    took: f64,
    /// Whether the hand has moved since it was looked at last.
    moved: bool,
    /// Waits for the hand to rest.
    rest: Option<Timeout>,
}

impl Steady {
    pub fn new(results: RwSignal<Version<Results>>, dragging: RwSignal<bool>) -> Self {
        let steady = Self {
            shown: RwSignal::new(results.get_untracked()),
            pace: StoredValue::new_local(Pace {
                newest: results,
                idle: None,
                waits: false,
                // Until they were timed once, they wait for the hand to rest.
                took: MOST_IDLE,
                moved: false,
                rest: None,
            }),
        };
        let idle = Closure::new(move |deadline: IdleDeadline| steady.follow(&deadline));
        steady.pace.update_value(|pace| pace.idle = Some(idle));
        Effect::new(move |_| {
            results.track();
            if dragging.get() {
                steady.pace.update_value(|pace| pace.moved = true);
                steady.wait_for_rest();
                steady.ask_for_idle_time();
            } else {
                steady.pace.update_value(|pace| pace.rest = None);
                steady.show();
            }
        });
        steady
    }

    /// Looks at the results and follows them.
    pub fn with<T>(self, look: impl FnOnce(&Results) -> T) -> T {
        self.shown.with(|shown| look(shown))
    }

    fn show(self) {
        let newest = self.pace.with_value(|pace| pace.newest).get_untracked();
        if self.shown.with_untracked(|shown| *shown == newest) {
            return;
        }
        let begun = now();
        self.shown.set(newest);
        spawn_local(async move {
            // The tables are written by then. Laid out here too, they leave the next frame only
            // their paint.
            tick().await;
            let _ = document().body().map(|body| body.offset_height());
            self.pace.update_value(|pace| pace.took = now() - begun);
        });
    }

    /// Looks in a while whether the hand rests. One look is under way at a time: a drag moves too often
    /// for a timer each, and even for a look at the clock.
    fn wait_for_rest(self) {
        self.pace.update_value(|pace| {
            if pace.rest.is_none() {
                pace.rest = Some(Timeout::new(REST, move || self.look_for_rest()));
            }
        });
    }

    fn look_for_rest(self) {
        let moved = self.pace.try_update_value(|pace| {
            pace.rest = None;
            core::mem::take(&mut pace.moved)
        });
        if moved == Some(true) {
            self.wait_for_rest();
        } else {
            self.show();
        }
    }

    fn ask_for_idle_time(self) {
        self.pace.update_value(|pace| {
            if let (false, true, Some(idle)) = (pace.waits, pace.took < MOST_IDLE, &pace.idle) {
                // Some browsers have no idle time to give: the tables wait for the hand to rest.
                pace.waits = window()
                    .request_idle_callback(idle.as_ref().unchecked_ref())
                    .is_ok();
            }
        });
    }

    /// Shows the newest results, if there is time for them before the next frame.
    fn follow(self, deadline: &IdleDeadline) {
        let left = deadline.time_remaining();
        let has_time = self.pace.try_update_value(|pace| {
            pace.waits = false;
            pace.took < left
        });
        if has_time == Some(true) {
            self.show();
        }
    }
}

/// Milliseconds since the page was opened.
fn now() -> f64 {
    window().performance().map_or(0.0, |clock| clock.now())
}
