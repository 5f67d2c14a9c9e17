//! Plan files and drawings in and out of the page.

use super::file_button::bytes_of;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{read, write};
use crate::report::drawing_svg;
use crate::report::words::{Label, Language, Message};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Blob, BlobPropertyBag, File, HtmlAnchorElement, Url};

/// What is stored may be no plan, so it has no title to be named by.
pub(super) const STORED_FILE: &str = "stored-plan.json";

/// Reads `file` and opens its plan, or says why not.
pub(super) fn open(store: Store, file: File) {
    spawn_local(async move {
        let what = match bytes_of(&file).await.map(|bytes| read(&bytes)) {
            Some(Ok(plan)) => return store.act(Action::Open(Box::new(plan))),
            Some(Err(error)) => store.say(Message::File(&error)),
            None => label_text(Label::FileNotRead),
        };
        store
            .trouble
            .set(format!("{what} {}", label_text(Label::PlanKept)));
    });
}

/// Hands the plan's file to the browser's downloads.
pub(super) fn save_plan(store: Store) {
    let (name, text) = store
        .plan
        .with_untracked(|plan| (file_name(&plan.title, "json"), write(plan)));
    // A browser that hands out no files shows that itself.
    let _ = hand_out(&name, "application/json", &text);
}

/// Hands the drawing to the browser's downloads.
pub(super) fn save_drawing(store: Store) {
    let units = store.units.get_untracked();
    let (name, text) = store.results.with_untracked(|results| {
        let ledger = results
            .assessment
            .working
            .as_ref()
            .map(|(_, ledger)| ledger);
        store.plan.with_untracked(|plan| {
            let name = file_name(&plan.title, "svg");
            (name, drawing_svg(plan, ledger, Language::English, units))
        })
    });
    let _ = hand_out(&name, "image/svg+xml", &text);
}

/// A file name of plain letters from the job's title.
pub(super) fn file_name(title: &str, ending: &str) -> String {
    const LONGEST: usize = 60;
    let plain: String = title
        .chars()
        .map(|letter| {
            if letter.is_alphanumeric() {
                letter
            } else {
                '-'
            }
        })
        .take(LONGEST)
        .collect();
    let plain = plain
        .split('-')
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join("-")
        .to_lowercase();
    let plain = if plain.is_empty() {
        "plan"
    } else {
        plain.as_str()
    };
    format!("{plain}.{ending}")
}

/// Hands a text as a file to the browser's downloads.
pub(super) fn hand_out(name: &str, kind: &str, text: &str) -> Result<(), JsValue> {
    hand_out_blob(name, &text_blob(kind, text)?)
}

/// A text as a file of its kind.
pub(super) fn text_blob(kind: &str, text: &str) -> Result<Blob, JsValue> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    Blob::new_with_str_sequence_and_options(&parts, &options)
}

/// Hands a file to the browser's downloads.
pub(super) fn hand_out_blob(name: &str, blob: &Blob) -> Result<(), JsValue> {
    let address = Url::create_object_url_with_blob(blob)?;
    let link: HtmlAnchorElement = document().create_element("a")?.unchecked_into();
    link.set_href(&address);
    link.set_download(name);
    link.click();
    Url::revoke_object_url(&address)
}
