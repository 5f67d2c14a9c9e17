//! The page's side of what is made for paper and files, in a worker of its own that starts with the first
//! asking.

use super::own_build::worker;
use super::paper_protocol::{
    OtherAsk, PAPER_PROTOCOL, PaperAnswer, PaperAsk, PaperKind, PaperWish,
};
use super::search_client::Reroutes;
use super::soon::after;
use super::store::Store;
use crate::plan::Plan;
use leptos::prelude::*;
use std::collections::BTreeMap;
use std::time::Duration;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{MessageEvent, Worker};

/// After so long there is no answer to come.
const LONGEST: Duration = Duration::from_secs(30);

/// What is done with an answer.
type Then = Box<dyn FnOnce(Option<String>)>;

/// What asks for sheets and files, small enough to be copied about.
#[derive(Clone, Copy)]
pub(super) struct Papers {
    reroutes: Reroutes,
    worker: StoredValue<Option<Worker>, LocalStorage>,
    waiting: StoredValue<BTreeMap<u32, Then>, LocalStorage>,
    last_id: StoredValue<u32>,
}

impl Papers {
    pub fn new(reroutes: Reroutes) -> Self {
        Self {
            reroutes,
            worker: StoredValue::new_local(None),
            waiting: StoredValue::new_local(BTreeMap::new()),
            last_id: StoredValue::new(0),
        }
    }

    /// Has something made from the plan as it is now; `then` takes its text, or none where it was not
    /// made.
    pub fn ask(
        self,
        store: Store,
        wish: PaperWish,
        what: PaperKind,
        then: impl FnOnce(Option<String>) + 'static,
    ) {
        let id = self.last_id.get_value().wrapping_add(1);
        self.last_id.set_value(id);
        let plan = store.plan_now();
        let ask = PaperAsk {
            paper_protocol: PAPER_PROTOCOL,
            id,
            visit: open_visit(store, &plan),
            other: other_run(store, self.reroutes),
            plan: (*plan).clone(),
            wish,
            what,
        };
        self.waiting.update_value(|waiting| {
            waiting.insert(id, Box::new(then));
        });
        if self.worker.with_value(Option::is_none) {
            self.worker.set_value(self.listening());
        }
        let sent = self.worker.with_value(|worker| {
            let value = serde_wasm_bindgen::to_value(&ask).ok()?;
            worker.as_ref()?.post_message(&value).ok()
        });
        if sent.is_none() {
            self.give(id, None);
            return;
        }
        let late = move || {
            let waits = self.waiting.with_value(|waiting| waiting.contains_key(&id));
            if waits {
                // One that fell silent is replaced with the next asking.
                self.drop_worker();
                self.give(id, None);
            }
        };
        after(LONGEST, late);
    }

    fn give(self, id: u32, text: Option<String>) {
        let then = self
            .waiting
            .try_update_value(|waiting| waiting.remove(&id))
            .flatten();
        if let Some(then) = then {
            then(text);
        }
    }

    fn drop_worker(self) {
        self.worker.with_value(|worker| {
            if let Some(worker) = worker {
                worker.terminate();
            }
        });
        self.worker.set_value(None);
    }

    fn listening(self) -> Option<Worker> {
        let worker = worker()?;
        let listener = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Ok(answer) = serde_wasm_bindgen::from_value::<PaperAnswer>(event.data())
                && answer.paper_protocol == PAPER_PROTOCOL
            {
                self.give(answer.id, answer.text);
            }
        });
        worker.set_onmessage(Some(listener.as_ref().unchecked_ref()));
        // The page listens for as long as it lives.
        listener.forget();
        let failed = Closure::<dyn FnMut()>::new(move || {
            self.drop_worker();
            let waiting = self.waiting.try_update_value(core::mem::take);
            for then in waiting.unwrap_or_default().into_values() {
                then(None);
            }
        });
        worker.set_onerror(Some(failed.as_ref().unchecked_ref()));
        failed.forget();
        Some(worker)
    }
}

/// The open visit's index.
fn open_visit(store: Store, plan: &Plan) -> Option<usize> {
    let open = store.open_visit.get_untracked()?;
    plan.visits.iter().position(|visit| visit.id == open)
}

/// The suggestion that is shown on the drawing; else the run that the present one was taken in place of;
/// else the best that was found.
fn other_run(store: Store, reroutes: Reroutes) -> OtherAsk {
    let offered = |index: usize| {
        untrack(|| reroutes.with_suggestion(index, |it| OtherAsk::Offered(Box::new(it.clone()))))
    };
    let shown = reroutes.shown.get_untracked().and_then(offered);
    let before = || {
        store.with_state_now(|state| {
            let before = state.history.before_reroute()?;
            Some(OtherAsk::Before(Box::new((**before).clone())))
        })
    };
    shown
        .or_else(before)
        .or_else(|| offered(0))
        .unwrap_or(OtherAsk::None)
}
