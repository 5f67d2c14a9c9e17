//! A picture made small enough to be kept with the job: drawn anew, so that place and camera that its
//! file told of are gone.

use crate::plan::Field;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{CanvasRenderingContext2d, File, HtmlCanvasElement, HtmlImageElement, Url};

/// Longer sides that are tried, px, and what JPEG leaves of the detail at each.
const SIDES: [f64; 6] = [1024.0, 800.0, 640.0, 480.0, 320.0, 160.0];
const QUALITIES: [f64; 2] = [0.75, 0.5];

/// The Base64 text of a JPEG of the picture in `file` that a visit can hold; none where the browser
/// cannot read it.
pub(super) async fn small_jpeg(file: &File) -> Option<String> {
    let address = Url::create_object_url_with_blob(file).ok()?;
    let image = HtmlImageElement::new().ok()?;
    image.set_src(&address);
    let decoded = JsFuture::from(image.decode()).await;
    let small = decoded.ok().and_then(|_| shrink(&image));
    // An address that cannot be given back dies with the page.
    let _ = Url::revoke_object_url(&address);
    small
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
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 1 and 1,024"
)]
fn jpeg(image: &HtmlImageElement, side: f64, quality: f64) -> Option<String> {
    let (width, height) = (
        f64::from(image.natural_width()),
        f64::from(image.natural_height()),
    );
    let scale = (side / width.max(height)).min(1.0);
    let (width, height) = ((width * scale).max(1.0), (height * scale).max(1.0));
    let document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    // What is see-through would come out black.
    context.set_fill_style_str("#ffffff");
    context.fill_rect(0.0, 0.0, width, height);
    context
        .draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height)
        .ok()?;
    let address = canvas
        .to_data_url_with_type_and_encoder_options("image/jpeg", &JsValue::from_f64(quality))
        .ok()?;
    address
        .strip_prefix("data:image/jpeg;base64,")
        .map(str::to_owned)
}
