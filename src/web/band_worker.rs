//! The worker's side: plans in, bands out.

use super::band_protocol::{Answer, PROTOCOL, Reply, Request, SiteAnswer};
use super::open_visit::visit_of;
use super::search_worker::SearchWorker;
use crate::diagnosis::visit_meaning;
use crate::plan::Plan;
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
        let waiting = RefCell::new((None, None));
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
    let listener = Closure::<dyn FnMut(MessageEvent)>::new(answer);
    scope.set_onmessage(Some(listener.as_ref().unchecked_ref()));
    // The worker listens for as long as it lives.
    listener.forget();
}

/// What a visit comes to; the newest where none is named.
fn site(plan: &Plan, visit: Option<&str>) -> SiteAnswer {
    let Some(visit) = visit_of(plan, visit) else {
        return SiteAnswer {
            diagnosis: None,
            clean: Vec::new(),
        };
    };
    visit_meaning(plan, visit)
}

fn post(scope: &DedicatedWorkerGlobalScope, reply: &Reply) {
    if let Ok(value) = serde_wasm_bindgen::to_value(reply) {
        // A page that is gone wants no reply.
        let _ = scope.post_message(&value);
    }
}
