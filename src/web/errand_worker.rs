//! The worker's side of the errands.

use super::errand_protocol::{Done, ERRAND_PROTOCOL, Errand, ErrandAnswer, ErrandAsk};
use crate::plan::{read_link, write_link};
use crate::report::difference_bands;
use wasm_bindgen::JsValue;
use web_sys::DedicatedWorkerGlobalScope;

/// Does what may be an errand; whether it was one.
pub(super) fn hear(scope: &DedicatedWorkerGlobalScope, message: &JsValue) -> bool {
    let Ok(ask) = serde_wasm_bindgen::from_value::<ErrandAsk>(message.clone()) else {
        return false;
    };
    if ask.errand_protocol == ERRAND_PROTOCOL {
        let answer = ErrandAnswer {
            errand_protocol: ERRAND_PROTOCOL,
            done: done(ask.errand),
        };
        if let Ok(value) = serde_wasm_bindgen::to_value(&answer) {
            // A page that is gone wants no answer.
            let _ = scope.post_message(&value);
        }
    }
    true
}

fn done(errand: Errand) -> Done {
    match errand {
        Errand::WriteLink { plan, address } => Done::Link(write_link(&plan, &address)),
        Errand::Compare { first, second } => Done::Compared(difference_bands(&first, &second)),
        Errand::ReadLink(fragment) => Done::Job(read_link(&fragment).map(Box::new)),
    }
}
