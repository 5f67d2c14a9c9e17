//! The job in the page's own address: opened as one that is not kept yet, and taken out of the address.

use super::errand_client::run;
use super::errand_protocol::{Done, Errand};
use super::side_words::side_text;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::is_link;
use crate::report::words::{Label, Message, SideLabel, SideMessage};
use leptos::prelude::*;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::spawn_local;

/// Opens the job in the address, now and whenever another comes there.
pub(super) fn follow_address(store: Store) {
    take(store);
    let changed = window_event_listener(leptos::ev::hashchange, move |_| take(store));
    on_cleanup(move || changed.remove());
}

/// The page's address without what stands behind its `#`.
pub(super) fn own_address() -> String {
    let address = window().location().href().unwrap_or_default();
    let own = address.split('#').next().unwrap_or_default();
    own.to_owned()
}

fn take(store: Store) {
    let fragment = window().location().hash().unwrap_or_default();
    let fragment = fragment.trim_start_matches('#').to_owned();
    if !is_link(&fragment) {
        return;
    }
    // A reload must open what was made of the job since, not the job in the link again. An address that
    // cannot be changed opens it again.
    let _ = window().history().and_then(|history| {
        history.replace_state_with_url(&JsValue::NULL, "", Some(&own_address()))
    });
    spawn_local(async move {
        let why = match run(Errand::ReadLink(fragment)).await {
            Some(Done::Job(Ok(plan))) => {
                store.keeper.opens_as_it_comes();
                store.act(Action::Open(plan));
                return;
            }
            Some(Done::Job(Err(error))) => store.say(Message::Side(SideMessage::Link(&error))),
            _ => side_text(SideLabel::LinkNotOpened),
        };
        store
            .trouble
            .set(format!("{why} {}", label_text(Label::PlanKept)));
    });
}
