//! The worker's side: plans in, bands out.

use super::band_protocol::{Answer, PROTOCOL, Reply, Request, SiteAnswer};
use super::errand_worker;
use super::paper_protocol::PaperAsk;
use super::paper_worker::answer;
use super::search_worker::SearchWorker;
use crate::diagnosis::visit_meaning;
use crate::plan::Plan;
use crate::system::{CompiledRun, band_detail, bands};
use gloo_timers::callback::Timeout;
use serde::Serialize;
use std::cell::RefCell;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

/// Listens for plans. What came earlier was held back by `worker-start.js`.
pub fn start_worker() {
    let scope: DedicatedWorkerGlobalScope = js_sys::global().unchecked_into();
    let hears = {
        let scope = scope.clone();
        let waiting = RefCell::new((None, None));
        let searching = SearchWorker::new(&scope);
        move |event: MessageEvent| {
            let Ok(request) = serde_wasm_bindgen::from_value::<Request>(event.data()) else {
                if !errand_worker::hear(&scope, &event.data()) {
                    hear_other(&scope, &searching, event.data());
                }
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
            post(&scope, &reply(Answer::Bands(found)));
            // A plan that came meanwhile goes first, and this one's answers are not wanted any more.
            let later = |answer: Box<dyn FnOnce() -> Answer>| {
                let reply = reply(Answer::Detail(None));
                let scope = scope.clone();
                Timeout::new(0, move || {
                    let answer = answer();
                    post(&scope, &Reply { answer, ..reply });
                })
            };
            let detail = found.map(|_| later(Box::new(move || Answer::Detail(band_detail(&run)))));
            let site = (!request.plan.visits.is_empty()).then(|| {
                let (plan, visit) = (request.plan.clone(), request.visit.clone());
                let of_visit = move || site(&plan, visit.as_deref());
                later(Box::new(move || Answer::Site(Box::new(of_visit()))))
            });
            waiting.replace((detail, site));
        }
    };
    let listener = Closure::<dyn FnMut(MessageEvent)>::new(hears);
    scope.set_onmessage(Some(listener.as_ref().unchecked_ref()));
    // The worker listens for as long as it lives.
    listener.forget();
}

/// What a visit comes to; the newest where none is named.
fn site(plan: &Plan, visit: Option<&str>) -> SiteAnswer {
    let nothing = || SiteAnswer {
        diagnosis: None,
        clean: Vec::new(),
    };
    plan.visit_or_newest(visit)
        .map_or_else(nothing, |visit| visit_meaning(plan, visit))
}

/// What is no plan: something to be made for paper, or a wish for a search.
fn hear_other(scope: &DedicatedWorkerGlobalScope, searching: &SearchWorker, message: JsValue) {
    match serde_wasm_bindgen::from_value::<PaperAsk>(message.clone()) {
        Ok(ask) => {
            if let Some(answer) = answer(ask) {
                post(scope, &answer);
            }
        }
        Err(_) => searching.hear(message),
    }
}

fn post(scope: &DedicatedWorkerGlobalScope, reply: &impl Serialize) {
    if let Ok(value) = serde_wasm_bindgen::to_value(reply) {
        // A page that is gone wants no reply.
        let _ = scope.post_message(&value);
    }
}
