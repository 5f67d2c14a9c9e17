//! A floor plan's picture from a file: read here, kept in the plan, shown from there.

use super::canvas_picture::{image_at, size};
use super::file_button::{FileButton, bytes_of};
use super::rest::{Press, pressed};
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Bounds, Field, Picture, PictureCoding};
use crate::report::words::Label;
use crate::units::Length;
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use leptos::prelude::*;
use leptos::task::spawn_local;
use web_sys::File;

/// How wide a picture first lies on the plan: a house. It is scaled by a known distance then.
const FIRST_WIDTH: Length = Length::from_metres(12.0);

#[component]
pub(super) fn PictureButton() -> impl IntoView {
    let store = expect_context::<Store>();
    let chosen = Callback::new(move |file| pressed(Press::TracePicture(store, file)));
    view! {
        <FileButton
            label=fixed!(PictureOpen).to_owned()
            id="picture-file"
            accept="image/png,image/jpeg,image/webp"
            chosen
        />
    }
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
    // Base64 has four letters for each three bytes.
    if file.size() / 3.0 * 4.0 > Field::PICTURE.greatest {
        return Err(Label::PictureTooLarge);
    }
    let bytes = bytes_of(file).await.ok_or(Label::FileNotRead)?;
    let data = STANDARD.encode(&bytes);
    let source = format!("data:{};base64,{data}", coding.media_type());
    let image = image_at(&source).await.ok_or(Label::NoPicture)?;
    let (width, height) = size(&image);
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
