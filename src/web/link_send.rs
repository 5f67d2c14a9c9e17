//! The open job as a link: made when it is asked for, copied at once where the browser lets it, and
//! otherwise there to be copied by hand.

use super::errand_client::run;
use super::errand_protocol::{Done, Errand};
use super::files;
use super::link_open::own_address;
use super::over_page::OverPage;
use super::rest::{Press, pressed};
use super::side_words::{say, side_text};
use super::store::{Store, label_text};
use crate::plan::LinkError;
use crate::report::words::{Label, SideLabel, SideMessage};
use js_sys::{Function, Reflect};
use leptos::html;
use leptos::prelude::*;
use leptos::task::tick;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// What came of the link that was asked for.
#[derive(Clone, PartialEq)]
enum Made {
    Link(String),
    Refused(LinkError),
    NoAnswer,
}

/// The link that is shown.
#[derive(Clone, Copy)]
pub(super) struct SendLink {
    is_open: RwSignal<bool>,
    /// None while it is being made.
    made: RwSignal<Option<Made>>,
    /// What became of the last press.
    said: RwSignal<Option<SideLabel>>,
    field: NodeRef<html::Textarea>,
}

impl SendLink {
    pub fn new() -> Self {
        Self {
            is_open: RwSignal::new(false),
            made: RwSignal::new(None),
            said: RwSignal::new(None),
            field: NodeRef::new(),
        }
    }

    /// Makes the link and shows it.
    pub fn open(self, store: Store) {
        self.made.set(None);
        self.said.set(None);
        self.is_open.set(true);
        let errand = Errand::WriteLink {
            plan: Box::new(store.plan_now().without_pictures()),
            address: own_address(),
        };
        spawn_local(async move {
            let made = match run(errand).await {
                Some(Done::Link(Ok(link))) => Made::Link(link),
                Some(Done::Link(Err(error))) => Made::Refused(error),
                _ => Made::NoAnswer,
            };
            let link = match &made {
                Made::Link(link) => Some(link.clone()),
                _ => None,
            };
            self.made.set(Some(made));
            if let Some(link) = link {
                self.copy(&link).await;
            }
        });
    }

    async fn copy(self, link: &str) {
        let copied = copied(link).await.is_some();
        // By then the field is there.
        tick().await;
        if let Some(field) = self.field.get_untracked().filter(|_| !copied) {
            let _ = field.focus();
            field.select();
        }
        self.said.set(Some(if copied {
            SideLabel::LinkCopied
        } else {
            SideLabel::LinkNotCopied
        }));
    }
}

/// Puts `link` where a paste takes it from; none where the browser does not let the page.
async fn copied(link: &str) -> Option<()> {
    let navigator = window().navigator();
    // There is none where the page did not come by https.
    let there = Reflect::get(&navigator, &"clipboard".into()).ok()?;
    if there.is_undefined() {
        return None;
    }
    JsFuture::from(navigator.clipboard().write_text(link))
        .await
        .ok()?;
    Some(())
}

/// The browser's own way to hand an address to another program, where it has one.
fn hand_on() -> Option<Function> {
    let share = Reflect::get(&window().navigator(), &"share".into()).ok()?;
    share.dyn_into().ok()
}

/// The button that makes the link.
#[component]
pub(super) fn SendLinkButton() -> impl IntoView {
    let store = expect_context::<Store>();
    let send = expect_context::<SendLink>();
    view! {
        <button type="button" aria-haspopup="dialog" on:click=move |_| pressed(Press::SendLink(send, store))>
            {fixed!(Side::SideLabel::LinkSend)}
        </button>
    }
}

/// The link, and what can be done with it.
#[component]
pub(super) fn SendLinkDialog() -> impl IntoView {
    let store = expect_context::<Store>();
    let send = expect_context::<SendLink>();
    let content = move || match send.made.get() {
        None => view! { <p role="status">{side_text(SideLabel::LinkMaking)}</p> }.into_any(),
        Some(Made::Link(link)) => view! { <Link link/> }.into_any(),
        Some(Made::Refused(error)) => {
            view! { <Refused why=say(store, SideMessage::Link(&error))/> }.into_any()
        }
        Some(Made::NoAnswer) => {
            view! { <Refused why=side_text(SideLabel::LinkNoAnswer)/> }.into_any()
        }
    };
    view! {
        <OverPage name="send-link" title=Label::Side(SideLabel::LinkSend) is_open=send.is_open>
            {content}
            <p class="fine">{side_text(SideLabel::LinkMeaning)}</p>
            {move || store.plan.with(|plan| plan.has_pictures()).then(|| view! {
                <p class="fine">{side_text(SideLabel::LinkPicturesStay)}</p>
            })}
        </OverPage>
    }
}

#[component]
fn Link(link: String) -> impl IntoView {
    let store = expect_context::<Store>();
    let send = expect_context::<SendLink>();
    let letters = link.chars().count();
    let link = StoredValue::new(link);
    let copy = move |_| {
        spawn_local(async move {
            send.copy(&link.get_value()).await;
        });
    };
    let share = hand_on().map(|share| {
        let handed = move |_| {
            let what = super::keep_store::object([
                ("title", JsValue::from_str(&store.plan_now().title)),
                ("url", JsValue::from_str(&link.get_value())),
            ]);
            // Whoever thinks better of it hands nothing on.
            let _ = share.call1(&window().navigator(), &what);
        };
        view! {
            <button type="button" on:click=handed>{side_text(SideLabel::LinkShare)}</button>
        }
    });
    view! {
        <div class="field">
            <label for="send-link-field">{side_text(SideLabel::LinkField)}</label>
            <textarea
                node_ref=send.field
                id="send-link-field"
                rows="3"
                readonly
                prop:value=link.get_value()
                on:focus=move |_| if let Some(field) = send.field.get_untracked() { field.select() }
            />
        </div>
        <div class="more-buttons">
            <button type="button" on:click=copy>{side_text(SideLabel::LinkCopy)}</button>
            {share}
        </div>
        <p role="status">{move || send.said.get().map(side_text)}</p>
        <p class="fine">{say(store, SideMessage::LinkLetters(letters))}</p>
    }
}

/// Why there is no link, and the file in its place.
#[component]
fn Refused(why: String) -> impl IntoView {
    let store = expect_context::<Store>();
    view! {
        <p role="alert">{why}</p>
        <div class="more-buttons">
            <button type="button" on:click=move |_| files::save_plan(store)>
                {label_text(Label::SaveFile)}
            </button>
        </div>
    }
}
