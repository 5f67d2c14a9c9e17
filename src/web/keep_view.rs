//! Whether the open job is kept: a quiet word in the head of the sheet, and what to do where it is not.

use super::files::{self, hand_out};
use super::focus::{focus_drawing, is_lost};
use super::keep::{NotKept, Progress, Unreadable};
use super::keep_store::{JobStore, Stored};
use super::shelf::shelf_text;
use super::soon::next_frame;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::read;
use crate::report::words::{Label, Message, ShelfLabel};
use leptos::prelude::*;
use wasm_bindgen_futures::spawn_local;

/// Saving, saved or not kept, in a word.
#[component]
pub(super) fn KeepWord() -> impl IntoView {
    let store = expect_context::<Store>();
    let word = move || match store.keeper.progress.get() {
        Progress::Untouched => fixed!(KeepUntouched),
        Progress::Saving => fixed!(KeepSaving),
        Progress::Saved => fixed!(KeepSaved),
        Progress::NotKept(_) => fixed!(KeepNotKept),
    };
    // What is read aloud leaves out the moment of saving: else it would speak after every change.
    let settled = Memo::new(move |before: Option<&&'static str>| {
        let is_saving = store.keeper.progress.get() == Progress::Saving;
        before.copied().filter(|_| is_saving).unwrap_or_else(word)
    });
    view! {
        <p class="fine">
            <span aria-hidden="true" data-testid="keep-word">{word}</span>
            <span class="visually-hidden" role="status">{move || settled.get()}</span>
        </p>
    }
}

/// Why changes are not kept, and the ways to keep them all the same.
#[component]
pub(super) fn KeepNotice() -> impl IntoView {
    let store = expect_context::<Store>();
    // Its buttons go with it, once what one of them set going has been done.
    let pressed = RwSignal::new(false);
    Effect::new(move |_| {
        let is_there = matches!(store.keeper.progress.get(), Progress::NotKept(_));
        if !is_there && pressed.get_untracked() {
            pressed.set(false);
            // By then it is gone. Whoever has gone on to something else keeps the focus there.
            next_frame(|| {
                if is_lost() {
                    focus_drawing();
                }
            });
        }
    });
    let notice = move || match store.keeper.progress.get() {
        Progress::NotKept(why) => Some(notice(store, why, pressed)),
        _ => None,
    };
    view! { <div role="status">{notice}</div> }
}

fn notice(store: Store, why: NotKept, pressed: RwSignal<bool>) -> impl IntoView {
    let press = move |set_going: fn(Store)| {
        pressed.set(true);
        set_going(store);
    };
    let unreadable = store.keeper.unreadable();
    let replaces = matches!(why, NotKept::Elsewhere | NotKept::Unreadable);
    view! {
        <div class="trouble panel-head">
            <span>{reason(store, why, unreadable.as_ref())}</span>
            <span class="more-buttons">
                <button type="button" on:click=move |_| files::save_plan(store)>
                    {label_text(Label::SaveFile)}
                </button>
                <button
                    type="button"
                    hidden=unreadable.is_none()
                    on:click=move |_| download_stored(unreadable.as_ref())
                >
                    {label_text(Label::KeepDownloadStored)}
                </button>
                <button
                    type="button"
                    hidden=why != NotKept::Elsewhere
                    on:click=move |_| press(|store| store.keeper.keep_as_another(store.plan_now()))
                >
                    {shelf_text(ShelfLabel::KeepBoth)}
                </button>
                <button
                    type="button"
                    hidden=why != NotKept::Elsewhere
                    on:click=move |_| press(open_other)
                >
                    {shelf_text(ShelfLabel::OpenOther)}
                </button>
                <button
                    type="button"
                    hidden=!replaces
                    on:click=move |_| press(|store| store.keeper.keep_instead(store.plan_now()))
                >
                    {label_text(Label::KeepInstead)}
                </button>
            </span>
        </div>
    }
}

fn reason(store: Store, why: NotKept, unreadable: Option<&Unreadable>) -> String {
    label_text(match why {
        NotKept::Refused => Label::KeepRefused,
        NotKept::NoAnswer => Label::KeepNoAnswer,
        NotKept::Full => Label::KeepFull,
        NotKept::Failed => Label::KeepFailed,
        NotKept::Elsewhere => Label::KeepElsewhere,
        NotKept::Unreadable => {
            let what = match unreadable.and_then(|found| found.error.as_ref()) {
                Some(error) => store.say(Message::File(error)),
                None => label_text(Label::KeepNoRecord),
            };
            let found = label_text(Label::KeepUnreadable);
            return format!("{found} {what} {}", label_text(Label::KeepUnreadableStays));
        }
    })
}

fn download_stored(unreadable: Option<&Unreadable>) {
    if let Some(Unreadable { text, .. }) = unreadable {
        // A browser that hands out no files shows that itself.
        let _ = hand_out(files::STORED_FILE, "application/json", text);
    }
}

/// Opens what another tab stored for the open job; what was here stays a step of undo.
fn open_other(store: Store) {
    let Some(key) = store.keeper.key() else {
        return;
    };
    spawn_local(async move {
        let stored = async { JobStore::open().await?.read(&key).await };
        let Ok(Stored::Job(record)) = stored.await else {
            store.trouble.set(shelf_text(ShelfLabel::StorageFailed));
            return;
        };
        match read(record.text.as_bytes()) {
            Ok(plan) => {
                store.keeper.opens_next(key, record);
                store.act(Action::Open(Box::new(plan)));
            }
            Err(error) => {
                let what = store.say(Message::File(&error));
                store
                    .trouble
                    .set(format!("{what} {}", label_text(Label::PlanKept)));
            }
        }
    });
}
