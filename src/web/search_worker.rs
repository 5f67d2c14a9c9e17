//! The worker's side of the search: a few milliseconds of work, then a look at what came meanwhile.

use super::search_protocol::{SEARCH_PROTOCOL, SearchAnswer, SearchAsk};
use crate::search::{Reply, Search};
use std::cell::{Cell, RefCell};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DedicatedWorkerGlobalScope, MessageChannel, MessagePort};

/// The worker looks at its messages so often, ms.
const SLICE: f64 = 8.0;
/// Partial routes between two looks at the clock.
const BUDGET: usize = 250;

type UnderWay = Rc<RefCell<Option<(u32, Search)>>>;

/// What works on one search at a time.
pub(super) struct SearchWorker {
    scope: DedicatedWorkerGlobalScope,
    under_way: UnderWay,
    /// A message here comes back after those that came meanwhile.
    again: Option<MessagePort>,
    /// Whether one such message is on its way.
    is_ticking: Rc<Cell<bool>>,
}

impl SearchWorker {
    pub fn new(scope: &DedicatedWorkerGlobalScope) -> Self {
        let under_way = UnderWay::default();
        let is_ticking = Rc::new(Cell::new(false));
        let again = MessageChannel::new().ok().map(|channel| {
            let (port, again) = (channel.port1(), channel.port2());
            let (stepped, scope, next) = (Rc::clone(&under_way), scope.clone(), again.clone());
            let ticking = Rc::clone(&is_ticking);
            let listener = Closure::<dyn FnMut()>::new(move || {
                let is_more = step(&scope, &stepped);
                ticking.set(is_more);
                if is_more {
                    let _ = next.post_message(&JsValue::NULL);
                }
            });
            port.set_onmessage(Some(listener.as_ref().unchecked_ref()));
            // The worker listens for as long as it lives.
            listener.forget();
            again
        });
        Self {
            scope: scope.clone(),
            under_way,
            again,
            is_ticking,
        }
    }

    /// Takes what may be a wish for a search.
    pub fn hear(&self, message: JsValue) {
        let Ok(ask) = serde_wasm_bindgen::from_value::<SearchAsk>(message) else {
            return;
        };
        if ask.search_protocol != SEARCH_PROTOCOL {
            return;
        }
        let next = ask.request.map(|request| (ask.id, Search::new(request)));
        let starts = next.is_some();
        self.under_way.replace(next);
        if !starts {
            post(&self.scope, ask.id, None);
        } else if !self.is_ticking.replace(true)
            && let Some(again) = &self.again
        {
            let _ = again.post_message(&JsValue::NULL);
        }
    }
}

/// One slice of work; whether more is to come.
fn step(scope: &DedicatedWorkerGlobalScope, under_way: &UnderWay) -> bool {
    let mut place = under_way.borrow_mut();
    let Some((id, search)) = place.as_mut() else {
        return false;
    };
    let start = js_sys::Date::now();
    let reply = loop {
        let reply = search.advance(BUDGET);
        let is_late = js_sys::Date::now() - start >= SLICE;
        if reply.is_done || reply.suggestions.is_some() || is_late {
            break reply;
        }
    };
    let is_done = reply.is_done;
    post(scope, *id, Some(reply));
    if is_done {
        *place = None;
    }
    !is_done
}

fn post(scope: &DedicatedWorkerGlobalScope, id: u32, reply: Option<Reply>) {
    let answer = SearchAnswer {
        search_protocol: SEARCH_PROTOCOL,
        id,
        reply,
    };
    if let Ok(value) = serde_wasm_bindgen::to_value(&answer) {
        // A page that is gone wants no reply.
        let _ = scope.post_message(&value);
    }
}
