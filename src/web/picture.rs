//! A floor plan's picture from a file: read here, kept in the plan, shown from there.

use super::rest::{Press, pressed};
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
            {fixed!(PictureOpen)}
        </button>
        <input
            node_ref=file
            class="visually-hidden"
            id="picture-file"
            type="file"
            accept="image/png,image/jpeg,image/webp"
            tabindex="-1"
            aria-label=fixed!(PictureOpen)
            on:change=move |_| { if let Some(input) = file.get() { chosen(store, &input); } }
        />
    }
}

fn chosen(store: Store, input: &HtmlInputElement) {
    if let Some(file) = input.files().and_then(|list| list.get(0)) {
        pressed(Press::TracePicture(store, file));
    }
    // The same file can be chosen again.
    input.set_value("");
}

/// Lays the picture in `file` under the plan, or says why not.
pub(super) fn trace(store: Store, file: File) {
    spawn_local(async move {
        match read(store, &file).await {
            Ok(picture) => {
                store.act(Action::SetPicture(Some(Box::new(picture))));
                store.act(Action::ShowAll);
            }
            Err(why) => store.trouble.set(format!(
                "{} {}",
                label_text(why),
                label_text(Label::PlanKept)
            )),
        }
    });
}

/// The picture in a file, or what to say where there is none.
async fn read(store: Store, file: &File) -> Result<Picture, Label> {
    let coding = match file.type_().as_str() {
        "image/png" => PictureCoding::Png,
        "image/jpeg" => PictureCoding::Jpeg,
        "image/webp" => PictureCoding::Webp,
        _ => return Err(Label::NoPicture),
    };
    if file.size() > LARGEST {
        return Err(Label::PictureTooLarge);
    }
    let buffer = JsFuture::from(file.array_buffer()).await;
    let bytes = js_sys::Uint8Array::new(&buffer.map_err(|_| Label::NoPicture)?).to_vec();
    let data = STANDARD.encode(&bytes);
    let source = format!("data:{};base64,{data}", coding.media_type());
    let (width, height) = size(&source).await.ok_or(Label::NoPicture)?;
    let corner = store.plan.with_untracked(|plan| Bounds::of(plan).least);
    Ok(Picture {
        coding,
        data_base64: data.into(),
        x_m: corner.x,
        y_m: corner.y,
        width: FIRST_WIDTH,
        depth: FIRST_WIDTH * (height / width),
    })
}

/// How large the browser finds a picture, px; what it cannot show is no picture.
async fn size(source: &str) -> Option<(f64, f64)> {
    let image = HtmlImageElement::new().ok()?;
    image.set_src(source);
    JsFuture::from(image.decode()).await.ok()?;
    let (width, height) = (image.natural_width(), image.natural_height());
    (width > 0 && height > 0).then(|| (f64::from(width), f64::from(height)))
}
