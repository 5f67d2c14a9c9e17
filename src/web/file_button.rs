//! A button that has a file chosen, and what stands in the file.

use leptos::html;
use leptos::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::File;

#[component]
pub(super) fn FileButton(
    label: String,
    /// The id of the browser's own field, which stands out of sight.
    id: &'static str,
    /// The kinds of file that are offered.
    accept: &'static str,
    /// Takes the chosen file.
    chosen: Callback<File>,
) -> impl IntoView {
    let input = NodeRef::<html::Input>::new();
    let name = label.clone();
    let press = move |_| {
        if let Some(input) = input.get_untracked() {
            input.click();
        }
    };
    let changed = move |_| {
        let Some(input) = input.get_untracked() else {
            return;
        };
        if let Some(file) = input.files().and_then(|files| files.get(0)) {
            chosen.run(file);
        }
        // The same file can be chosen again.
        input.set_value("");
    };
    view! {
        <button type="button" on:click=press>{label}</button>
        <input
            node_ref=input
            class="visually-hidden"
            id=id
            type="file"
            accept=accept
            tabindex="-1"
            aria-label=name
            on:change=changed
        />
    }
}

/// What stands in a file; none where the browser cannot read it any more.
pub(super) async fn bytes_of(file: &File) -> Option<Vec<u8>> {
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    Some(js_sys::Uint8Array::new(&buffer).to_vec())
}
