//! The worker's side: plans in, bands out.

use super::band_protocol::{PROTOCOL, Reply, Request};
use crate::system::{CompiledRun, bands};
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{DedicatedWorkerGlobalScope, MessageEvent};

/// Listens for plans. What came earlier was held back by `worker-start.js`.
pub fn start_worker() {
    let scope: DedicatedWorkerGlobalScope = js_sys::global().unchecked_into();
    let answer = {
        let scope = scope.clone();
        move |event: MessageEvent| {
            let Ok(request) = serde_wasm_bindgen::from_value::<Request>(event.data()) else {
                return;
            };
            if request.protocol != PROTOCOL {
                return;
            }
            let (run, _) = CompiledRun::of(&request.plan);
            post(
                &scope,
                &Reply {
                    protocol: PROTOCOL,
                    id: request.id,
                    bands: bands(&run),
                },
            );
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
