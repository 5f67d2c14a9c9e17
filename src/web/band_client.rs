//! The page's side of the worker: one request under way, and the newest plan waiting.

use super::band_protocol::{Answer, PROTOCOL, Reply, Request, SiteAnswer};
use super::own_build::worker;
use super::store::Store;
use crate::plan::Plan;
use crate::system::{BandDetail, Bands};
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

struct Client {
    worker: Worker,
    under_way: Option<(u32, Asked)>,
    waiting: Option<Asked>,
    answered: Option<u32>,
    last_id: u32,
}

impl Client {
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
        let sent = serde_wasm_bindgen::to_value(&request)
            .is_ok_and(|value| self.worker.post_message(&value).is_ok());
        if sent {
            self.under_way = Some((self.last_id, (plan, visit)));
        }
    }
}

/// Starts the worker and has it asked for the bands of each version of the plan. Without a worker
/// there are no bands, and the page says so by showing none.
pub(super) fn start(store: Store) {
    let set_answer = store.banded();
    let client = worker().map(|worker| {
        let client = Rc::new(RefCell::new(Client {
            worker: worker.clone(),
            under_way: None,
            waiting: None,
            answered: None,
            last_id: 0,
        }));
        let heard = Rc::clone(&client);
        let listener = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            if let Ok(reply) = serde_wasm_bindgen::from_value::<Reply>(event.data()) {
                hear(&mut heard.borrow_mut(), reply, set_answer);
            }
        });
        worker.set_onmessage(Some(listener.as_ref().unchecked_ref()));
        // The page listens for as long as it lives.
        listener.forget();
        client
    });
    Effect::new(move |_| {
        let asked = (store.held(), store.open_visit().get());
        // The band never runs while something is dragged.
        if store.is_dragging() {
            return;
        }
        if let Some(client) = &client {
            let mut client = client.borrow_mut();
            client.waiting = Some(asked);
            client.send_next();
        }
    });
}

fn hear(client: &mut Client, reply: Reply, answer: RwSignal<Option<Banded>, LocalStorage>) {
    if reply.protocol != PROTOCOL {
        return;
    }
    match reply.answer {
        Answer::Bands(bands) => {
            let under_way = client.under_way.take_if(|(asked, _)| *asked == reply.id);
            if let Some((id, (plan, visit))) = under_way {
                client.answered = Some(id);
                answer.set(Some(Banded {
                    plan,
                    visit,
                    bands,
                    detail: None,
                    site: None,
                }));
            }
        }
        Answer::Detail(detail) if client.answered == Some(reply.id) => {
            answer.update(|banded| {
                if let Some(banded) = banded {
                    banded.detail = detail;
                }
            });
        }
        Answer::Site(site) if client.answered == Some(reply.id) => {
            answer.update(|banded| {
                if let Some(banded) = banded {
                    banded.site = Some(Arc::from(site));
                }
            });
        }
        Answer::Detail(_) | Answer::Site(_) => {}
    }
    client.send_next();
}
