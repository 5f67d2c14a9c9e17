//! The worker's side: plans in, bands out.

use super::band_protocol::{Answer, PROTOCOL, Reply, Request};
use super::search_worker::SearchWorker;
use crate::system::{CompiledRun, band_detail, bands};
use gloo_timers::callback::Timeout;
use std::cell::RefCell;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

/// Listens for plans. What came earlier was held back by `worker-start.js`.
pub fn start_worker() {
    let scope: DedicatedWorkerGlobalScope = js_sys::global().unchecked_into();
    let answer = {
        let scope = scope.clone();
        let detailing = RefCell::new(None);
        let searching = SearchWorker::new(&scope);
        move |event: MessageEvent| {
            let Ok(request) = serde_wasm_bindgen::from_value::<Request>(event.data()) else {
                searching.hear(event.data());
                return;
            };
            if request.protocol != PROTOCOL {
                return;
            }
            let (run, _) = CompiledRun::of(&request.plan);
            let found = bands(&run);
            let reply = |answer: Answer| Reply {
                protocol: PROTOCOL,
                id: request.id,
                answer,
            };
            let later = found.map(|_| {
                let reply = reply(Answer::Detail(None));
                let scope = scope.clone();
                // A plan that came meanwhile goes first, and this one's answer is not wanted any more.
                Timeout::new(0, move || {
                    let answer = Answer::Detail(band_detail(&run));
                    post(&scope, &Reply { answer, ..reply });
                })
            });
            detailing.replace(later);
            post(&scope, &reply(Answer::Bands(found)));
        }
    };
    let listener = Closure::<dyn FnMut(MessageEvent)>::new(answer);
    scope.set_onmessage(Some(listener.as_ref().unchecked_ref()));
    // The worker listens for as long as it lives.
    listener.forget();
}

fn post(scope: &DedicatedWorkerGlobalScope, reply: &Reply) {
    if let Ok(value) = serde_wasm_bindgen::to_value(reply) {
        // A page that is gone wants no reply.
        let _ = scope.post_message(&value);
    }
}
