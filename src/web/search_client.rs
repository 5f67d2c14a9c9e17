//! The page's side of the search, in a worker of its own: a long search never delays the band.

use super::own_build::worker;
use super::search_protocol::{SEARCH_PROTOCOL, SearchAnswer, SearchAsk};
use super::soon::after;
use super::store::Store;
use crate::plan::Plan;
use crate::search::{Blocked, Figures, Options, Progress, Request, Suggestion};
use leptos::prelude::*;
use std::sync::Arc;
use std::time::Duration;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{MessageEvent, Worker};

/// What is known of a search.
#[derive(Clone)]
pub(super) struct Found {
    /// The plan that it is for, by its very version.
    plan: Arc<Plan>,
    id: u32,
    pub progress: Option<Progress>,
    pub present: Option<Figures>,
    pub has_present_room: bool,
    /// Whether the worker died, and a second one too.
    pub has_died: bool,
    pub suggestions: Vec<Suggestion>,
    pub is_done: bool,
    pub blocked: Option<Blocked>,
}

/// The search and what it found, small enough to be copied about.
#[derive(Clone, Copy)]
pub(super) struct Reroutes {
    store: Store,
    found: RwSignal<Option<Found>>,
    /// The suggestion that is shown on the drawing.
    pub shown: RwSignal<Option<usize>>,
    /// How to search, as it was chosen on the page.
    pub options: RwSignal<Options>,
    worker: StoredValue<Option<Worker>, LocalStorage>,
    last_id: StoredValue<u32>,
    /// How many answers came from the worker that there is.
    answers: StoredValue<u32>,
}

/// A worker that has answered before tells how it gets on many times a second: after so much silence it
/// is dead.
const DEAD_AFTER: Duration = Duration::from_millis(1500);
/// So long the program may take to load.
const LOADED_AFTER: Duration = Duration::from_secs(20);

impl Reroutes {
    /// Nothing is searched, and no worker started, until somebody asks.
    pub fn new(store: Store) -> Self {
        Self {
            store,
            found: RwSignal::new(None),
            shown: RwSignal::new(None),
            options: RwSignal::new(Options::default()),
            worker: StoredValue::new_local(None),
            last_id: StoredValue::new(0),
            answers: StoredValue::new(0),
        }
    }

    /// Lets go of what was found once it is asked for in another way, or the plan is another.
    pub fn follow(self) {
        let reroutes = self;
        Effect::new(move |_| {
            // Other wishes, another search.
            reroutes.options.track();
            if reroutes.found.with_untracked(Option::is_some) {
                reroutes.cancel();
                reroutes.found.set(None);
            }
        });
        Effect::new(move |_| {
            // What belongs to another version of the plan is no longer of use.
            let is_old = reroutes.found.with(|found| {
                let found = found.as_ref();
                found.is_some_and(|found| !Arc::ptr_eq(&found.plan, &reroutes.store.held()))
            });
            if is_old {
                reroutes.cancel();
                reroutes.found.set(None);
            }
        });
    }

    /// Looks at what was found for the plan as it is now.
    pub fn with_found<T>(self, look: impl FnOnce(&Found) -> T) -> Option<T> {
        // Not followed: what was found for another plan is let go of.
        let plan = self.store.plan_now();
        self.found.with(|found| {
            let found = found.as_ref()?;
            Arc::ptr_eq(&found.plan, &plan).then(|| look(found))
        })
    }

    /// Looks at one of the suggestions for the plan as it is now.
    pub fn with_suggestion<T>(
        self,
        index: usize,
        look: impl FnOnce(&Suggestion) -> T,
    ) -> Option<T> {
        self.with_found(|found| found.suggestions.get(index).map(look))
            .flatten()
    }

    /// Searches for the plan as it is now.
    pub fn search(self) {
        let plan = self.store.plan_now();
        let id = self.next_id();
        let mut searched = (*plan).clone();
        // Neither picture nor visits are part of the search, and they are large.
        searched.picture = None;
        searched.visits.clear();
        let request = Request {
            plan: searched,
            options: self.options.get_untracked(),
        };
        self.shown.set(None);
        self.found.set(Some(Found {
            plan,
            id,
            progress: None,
            present: None,
            has_present_room: true,
            has_died: false,
            suggestions: Vec::new(),
            is_done: false,
            blocked: None,
        }));
        self.send(id, Some(request.clone()));
        self.watch(id, request, 1);
    }

    /// Puts another worker in the place of one that has died, as often as `again` says.
    fn watch(self, id: u32, request: Request, again: u8) {
        let answers = self.answers.get_value();
        let longest = if answers == 0 {
            LOADED_AFTER
        } else {
            DEAD_AFTER
        };
        let look = move || {
            let is_waited_for = |found: &Found| found.id == id && !found.is_done;
            let waits = |found: &Option<Found>| found.as_ref().is_some_and(is_waited_for);
            if !self.found.with_untracked(waits) {
                return;
            }
            if self.answers.get_value() != answers {
                self.watch(id, request, again);
                return;
            }
            self.worker.with_value(|worker| {
                if let Some(worker) = worker {
                    worker.terminate();
                }
            });
            self.worker.set_value(None);
            self.answers.set_value(0);
            if again > 0 {
                self.send(id, Some(request.clone()));
                self.watch(id, request, again - 1);
                return;
            }
            self.found.update(|found| {
                if let Some(found) = found {
                    (found.is_done, found.has_died) = (true, true);
                }
            });
        };
        after(longest, look);
    }

    /// Stops the search; what it found stays.
    pub fn cancel(self) {
        let id = self.next_id();
        self.send(id, None);
        self.shown.set(None);
        self.found.update(|found| {
            if let Some(found) = found {
                found.id = id;
                found.is_done = true;
            }
        });
    }

    fn next_id(self) -> u32 {
        let id = self.last_id.get_value().wrapping_add(1);
        self.last_id.set_value(id);
        id
    }

    fn send(self, id: u32, request: Option<Request>) {
        if self.worker.with_value(Option::is_none) {
            if request.is_none() {
                return;
            }
            self.worker.set_value(self.listening());
        }
        let ask = SearchAsk {
            search_protocol: SEARCH_PROTOCOL,
            id,
            request,
        };
        if let Ok(value) = serde_wasm_bindgen::to_value(&ask) {
            self.worker.with_value(|worker| {
                if let Some(worker) = worker {
                    // A worker that died answers nothing, and the page goes on without.
                    let _ = worker.post_message(&value);
                }
            });
        }
    }

    fn listening(self) -> Option<Worker> {
        let worker = worker()?;
        let listener = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Ok(answer) = serde_wasm_bindgen::from_value::<SearchAnswer>(event.data()) {
                self.hear(answer);
            }
        });
        worker.set_onmessage(Some(listener.as_ref().unchecked_ref()));
        // The page listens for as long as it lives.
        listener.forget();
        Some(worker)
    }

    fn hear(self, answer: SearchAnswer) {
        self.answers
            .update_value(|answers| *answers = answers.wrapping_add(1).max(1));
        if answer.search_protocol != SEARCH_PROTOCOL || answer.id != self.last_id.get_value() {
            return;
        }
        let Some(reply) = answer.reply else { return };
        self.found.update(|found| {
            if let Some(found) = found.as_mut().filter(|found| found.id == answer.id) {
                found.progress = Some(reply.progress);
                found.present = reply.present;
                found.has_present_room = reply.has_present_room;
                found.is_done = reply.is_done;
                found.blocked = reply.blocked;
                if let Some(suggestions) = reply.suggestions {
                    found.suggestions = suggestions;
                }
            }
        });
    }
}
