//! Whether the open job is kept: a quiet word in the head of the sheet, and what to do where it is not.

use super::files::{self, hand_out};
use super::keep::{NotKept, Progress, Unreadable};
use super::store::{Store, label_text};
use crate::report::words::{Label, Message};
use leptos::prelude::*;

/// What is stored may be no plan, so it has no title to be named by.
const STORED_FILE: &str = "stored-plan.json";

/// Saving, saved or not kept, in a word.
#[component]
pub(super) fn KeepWord() -> impl IntoView {
    let store = expect_context::<Store>();
    let word = Memo::new(move |_| match store.keeper.progress.get() {
        Progress::NotKept(_) => Label::KeepNotKept,
        _ if store.keeper.untouched.get() => Label::KeepUntouched,
        Progress::Saving => Label::KeepSaving,
        Progress::Saved => Label::KeepSaved,
    });
    // What is read aloud leaves out the moment of saving: else it would speak after every change.
    let settled = Memo::new(move |before: Option<&Label>| match (word.get(), before) {
        (Label::KeepSaving, Some(before)) => *before,
        (Label::KeepSaving, None) => Label::KeepSaved,
        (word, _) => word,
    });
    view! {
        <p class="fine">
            <span aria-hidden="true" data-testid="keep-word">{move || label_text(word.get())}</span>
            <span class="visually-hidden" role="status">{move || label_text(settled.get())}</span>
        </p>
    }
}

/// Why changes are not kept, and the ways to keep them all the same.
#[component]
pub(super) fn KeepNotice() -> impl IntoView {
    let store = expect_context::<Store>();
    let not_kept = Memo::new(move |_| match store.keeper.progress.get() {
        Progress::NotKept(why) => Some(why),
        _ => None,
    });
    let notice = move |why| {
        let replaces = matches!(why, NotKept::Elsewhere | NotKept::Unreadable);
        let readable = move || store.keeper.unreadable.with(Option::is_none);
        view! {
            <div class="trouble panel-head">
                <span>{move || reason(store, why)}</span>
                <span class="more-buttons">
                    <button type="button" on:click=move |_| files::save_plan(store)>
                        {label_text(Label::SaveFile)}
                    </button>
                    <button type="button" hidden=readable on:click=move |_| download_stored(store)>
                        {label_text(Label::KeepDownloadStored)}
                    </button>
                    <button
                        type="button"
                        hidden=!replaces
                        on:click=move |_| store.keeper.keep_instead(store.plan_now())
                    >
                        {label_text(Label::KeepInstead)}
                    </button>
                </span>
            </div>
        }
        .into_any()
    };
    view! { <div role="status">{move || not_kept.get().map(notice)}</div> }
}

fn reason(store: Store, why: NotKept) -> String {
    label_text(match why {
        NotKept::Refused => Label::KeepRefused,
        NotKept::NoAnswer => Label::KeepNoAnswer,
        NotKept::Full => Label::KeepFull,
        NotKept::Failed => Label::KeepFailed,
        NotKept::Elsewhere => Label::KeepElsewhere,
        NotKept::Unreadable => return unreadable_reason(store),
    })
}

fn unreadable_reason(store: Store) -> String {
    let what = store.keeper.unreadable.with(|unreadable| {
        let error = unreadable.as_ref().and_then(|found| found.error.as_ref());
        match error {
            Some(error) => store.say(Message::File(error)),
            None => label_text(Label::KeepNoRecord),
        }
    });
    let (found, stays) = (
        label_text(Label::KeepUnreadable),
        label_text(Label::KeepUnreadableStays),
    );
    format!("{found} {what} {stays}")
}

fn download_stored(store: Store) {
    store.keeper.unreadable.with_untracked(|unreadable| {
        if let Some(Unreadable { text, .. }) = unreadable {
            // A browser that hands out no files shows that itself.
            let _ = hand_out(STORED_FILE, "application/json", text);
        }
    });
}
