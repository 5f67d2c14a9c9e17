//! The page's side of the worker: one request under way, and the newest plan waiting.

use super::band_protocol::{Answer, PROTOCOL, Reply, Request, SiteAnswer};
use super::own_build::worker;
use super::store::Store;
use crate::plan::Plan;
use crate::system::{BandDetail, Bands};
use js_sys::Function;
use leptos::prelude::*;
use std::cell::RefCell;
use std::rc::Rc;
use std::sync::Arc;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{MessageEvent, Worker};

/// Bands and the plan that they belong to.
#[derive(Clone)]
pub(super) struct Banded {
    pub plan: Arc<Plan>,
    /// The visit that was asked about; none for the newest.
    pub visit: Option<Arc<str>>,
    pub bands: Option<Bands>,
    /// What takes longer than they do; none while it is worked out.
    pub detail: Option<BandDetail>,
    /// What the visit comes to; none while it is worked out, or without a visit.
    pub site: Option<Arc<SiteAnswer>>,
}

/// A plan and the visit of it that is asked about; none for the newest.
type Asked = (Arc<Plan>, Option<Arc<str>>);

#[derive(Default)]
struct Client {
    /// None until something is asked, and after one has failed.
    worker: Option<Worker>,
    /// What hears a worker's answers, and of its failure.
    listeners: Option<(Function, Function)>,
    under_way: Option<(u32, Asked)>,
    waiting: Option<Asked>,
    /// Whether what is under way was asked before, of a worker that failed.
    is_again: bool,
    answered: Option<u32>,
    last_id: u32,
}

impl Client {
    fn ask(&mut self, asked: Asked) {
        self.waiting = Some(asked);
        self.is_again = false;
        self.send_next();
    }

    fn send_next(&mut self) {
        if self.under_way.is_some() {
            return;
        }
        let Some((plan, visit)) = self.waiting.take() else {
            return;
        };
        self.last_id = self.last_id.wrapping_add(1);
        let request = Request {
            protocol: PROTOCOL,
            id: self.last_id,
            plan: plan.without_pictures(),
            visit: visit.clone(),
        };
        let value = serde_wasm_bindgen::to_value(&request).ok();
        let sent = value.and_then(|value| self.worker()?.post_message(&value).ok());
        if sent.is_some() {
            self.under_way = Some((self.last_id, (plan, visit)));
        }
    }

    fn worker(&mut self) -> Option<&Worker> {
        if self.worker.is_none() {
            let new = worker()?;
            if let Some((heard, failed)) = &self.listeners {
                new.set_onmessage(Some(heard));
                new.set_onerror(Some(failed));
            }
            self.worker = Some(new);
        }
        self.worker.as_ref()
    }

    /// Another worker takes the place of one that failed, and is asked the same, once.
    fn replace(&mut self) {
        if let Some(failed) = self.worker.take() {
            failed.terminate();
        }
        let lost = self.under_way.take().map(|(_, asked)| asked);
        if self.waiting.is_none() && !self.is_again {
            self.waiting = lost;
            self.is_again = true;
        }
        self.send_next();
    }
}

/// Has a worker asked for the bands of each version of the plan. Without a worker there are no bands,
/// and the page says so by showing none.
pub(super) fn start(store: Store) {
    let client = Rc::new(RefCell::new(Client::default()));
    let (hearing, failing) = (Rc::clone(&client), Rc::clone(&client));
    let heard = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
        if let Ok(reply) = serde_wasm_bindgen::from_value::<Reply>(event.data()) {
            hear(&mut hearing.borrow_mut(), reply, store);
        }
    });
    let failed = Closure::<dyn FnMut()>::new(move || failing.borrow_mut().replace());
    // The page listens for as long as it lives.
    let listeners = (heard.into_js_value(), failed.into_js_value());
    client.borrow_mut().listeners =
        Some((listeners.0.unchecked_into(), listeners.1.unchecked_into()));
    Effect::new(move |_| {
        // The band never runs while something is dragged.
        if !store.is_dragging() {
            let asked = (store.held(), store.open_visit.get());
            client.borrow_mut().ask(asked);
        }
    });
}

fn hear(client: &mut Client, reply: Reply, store: Store) {
    if reply.protocol != PROTOCOL {
        return;
    }
    match reply.answer {
        Answer::Bands(bands) => {
            let under_way = client.under_way.take_if(|(asked, _)| *asked == reply.id);
            if let Some((id, (plan, visit))) = under_way {
                client.is_again = false;
                client.answered = Some(id);
                store.take_answer(|answer| {
                    *answer = Some(Banded {
                        plan,
                        visit,
                        bands,
                        detail: None,
                        site: None,
                    });
                });
            }
        }
        Answer::Detail(detail) if client.answered == Some(reply.id) => {
            store.take_answer(|banded| {
                if let Some(banded) = banded {
                    banded.detail = detail;
                }
            });
        }
        Answer::Site(site) if client.answered == Some(reply.id) => {
            store.take_answer(|banded| {
                if let Some(banded) = banded {
                    banded.site = Some(Arc::from(site));
                }
            });
        }
        Answer::Detail(_) | Answer::Site(_) => {}
    }
    client.send_next();
}
