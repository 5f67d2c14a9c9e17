//! The page's side of the errands: a worker is started for each and ended once it has answered.

use super::errand_protocol::{Done, ERRAND_PROTOCOL, Errand, ErrandAnswer, ErrandAsk};
use super::own_build::worker;
use js_sys::{Function, Promise};
use leptos::prelude::window;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::MessageEvent;

/// So long a worker may take to load and to answer, ms.
const LONGEST_WAIT: i32 = 20_000;

/// What comes of `errand`; none where no worker answers.
pub(super) async fn run(errand: Errand) -> Option<Done> {
    let ask = ErrandAsk {
        errand_protocol: ERRAND_PROTOCOL,
        errand,
    };
    let ask = serde_wasm_bindgen::to_value(&ask).ok()?;
    let worker = worker()?;
    let answered = Promise::new(&mut |heard: Function, failed: Function| {
        worker.set_onmessage(Some(&heard));
        worker.set_onerror(Some(&failed));
        // Where there is no clock to be had, the wait has no end, and nothing else does.
        let _ =
            window().set_timeout_with_callback_and_timeout_and_arguments_0(&failed, LONGEST_WAIT);
    });
    let heard = match worker.post_message(&ask) {
        Ok(()) => JsFuture::from(answered).await.ok(),
        Err(_) => None,
    };
    worker.terminate();
    let message: MessageEvent = heard?.dyn_into().ok()?;
    let answer: ErrandAnswer = serde_wasm_bindgen::from_value(message.data()).ok()?;
    (answer.errand_protocol == ERRAND_PROTOCOL).then_some(answer.done)
}
