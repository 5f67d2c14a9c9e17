//! A floor plan's picture from a file: read here, kept in the plan, shown from there.

use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Bounds, Picture, PictureCoding};
use crate::report::words::Label;
use crate::units::Length;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;
use web_sys::{File, HtmlImageElement, HtmlInputElement};

/// The largest picture, bytes: its Base64 is a third longer and must fit into a plan's file.
const LARGEST: f64 = 1_499_000.0;
/// How wide a picture first lies on the plan: a house. It is scaled by a known distance then.
const FIRST_WIDTH: Length = Length::from_metres(12.0);

#[component]
pub(super) fn PictureButton() -> impl IntoView {
    let store = expect_context::<Store>();
    let file = NodeRef::<leptos::html::Input>::new();
    view! {
        <button type="button" on:click=move |_| { if let Some(input) = file.get() { input.click(); } }>
            {label_text(Label::PictureOpen)}
        </button>
        <input
            node_ref=file
            class="visually-hidden"
            id="picture-file"
            type="file"
            accept="image/png,image/jpeg,image/webp"
            tabindex="-1"
            aria-label=label_text(Label::PictureOpen)
            on:change=move |_| { if let Some(input) = file.get() { chosen(store, &input); } }
        />
    }
}

fn chosen(store: Store, input: &HtmlInputElement) {
    if let Some(file) = input.files().and_then(|list| list.get(0)) {
        spawn_local(async move {
            match read(store, &file).await {
                Some(picture) => {
                    store.act(Action::SetPicture(Some(Box::new(picture))));
                    store.act(Action::ShowAll);
                }
                None => store.trouble.set(label_text(Label::PictureTooLarge)),
            }
        });
    }
    // The same file can be chosen again.
    input.set_value("");
}

async fn read(store: Store, file: &File) -> Option<Picture> {
    let coding = match file.type_().as_str() {
        "image/png" => PictureCoding::Png,
        "image/jpeg" => PictureCoding::Jpeg,
        "image/webp" => PictureCoding::Webp,
        _ => return None,
    };
    if file.size() > LARGEST {
        return None;
    }
    let buffer = JsFuture::from(file.array_buffer()).await.ok()?;
    let bytes = js_sys::Uint8Array::new(&buffer).to_vec();
    let data = STANDARD.encode(&bytes);
    // The browser says how large it is; what it cannot show is no picture.
    let image = HtmlImageElement::new().ok()?;
    image.set_src(&format!("data:{};base64,{data}", coding.media_type()));
    JsFuture::from(image.decode()).await.ok()?;
    let (width, height) = (
        f64::from(image.natural_width()),
        f64::from(image.natural_height()),
    );
    if width < 1.0 || height < 1.0 {
        return None;
    }
    let corner = store.plan.with_untracked(|plan| Bounds::of(plan).least);
    Some(Picture {
        coding,
        data_base64: data.into(),
        x_m: corner.x,
        y_m: corner.y,
        width: FIRST_WIDTH,
        depth: FIRST_WIDTH * (height / width),
    })
}
