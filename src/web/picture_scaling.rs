//! A picture made small enough to be kept with the job: drawn anew, so that place and camera that its
//! file told of are gone.

use super::canvas_picture::{drawn, image_in, size};
use crate::plan::Field;
use wasm_bindgen::JsValue;
use web_sys::{File, HtmlImageElement};

/// Longer sides that are tried, px, and what JPEG leaves of the detail at each.
const SIDES: [f64; 6] = [1024.0, 800.0, 640.0, 480.0, 320.0, 160.0];
const QUALITIES: [f64; 2] = [0.75, 0.5];
/// What is see-through would come out black.
const GROUND: &str = "#ffffff";

/// The Base64 text of a JPEG of the picture in `file` that a visit can hold; none where the browser
/// cannot read it.
pub(super) async fn small_jpeg(file: &File) -> Option<String> {
    shrink(&image_in(file).await?)
}

fn shrink(image: &HtmlImageElement) -> Option<String> {
    let sizes = SIDES
        .into_iter()
        .flat_map(|side| QUALITIES.map(|quality| (side, quality)));
    for (side, quality) in sizes {
        let data = jpeg(image, side, quality)?;
        if Field::VISIT_PICTURE.holds_count(data.len()) {
            return Some(data);
        }
    }
    None
}

/// The picture's longer side at most `side` px.
fn jpeg(image: &HtmlImageElement, side: f64, quality: f64) -> Option<String> {
    let (width, height) = size(image);
    let canvas = drawn(image, (side / width.max(height)).min(1.0), Some(GROUND))?;
    let address = canvas
        .to_data_url_with_type_and_encoder_options("image/jpeg", &JsValue::from_f64(quality))
        .ok()?;
    address
        .strip_prefix("data:image/jpeg;base64,")
        .map(str::to_owned)
}
