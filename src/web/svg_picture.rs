//! An SVG drawing as a PNG file: drawn by the browser on a canvas.

use super::files::hand_out_blob;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, CanvasRenderingContext2d, HtmlCanvasElement, HtmlImageElement, Url,
};

/// Dots for each of the drawing's own px: 192 to the inch.
const SHARPNESS: f64 = 2.0;
/// The longest side that every browser's canvas has, px.
const LONGEST_SIDE: f64 = 4096.0;

/// Saves the drawing `svg` as a PNG file; none where the browser cannot draw it.
pub(super) async fn save_png(name: &str, svg: &str) -> Option<()> {
    let options = BlobPropertyBag::new();
    options.set_type("image/svg+xml");
    let parts = js_sys::Array::of1(&JsValue::from_str(svg));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).ok()?;
    let address = Url::create_object_url_with_blob(&blob).ok()?;
    let image = HtmlImageElement::new().ok()?;
    image.set_src(&address);
    let decoded = JsFuture::from(image.decode()).await;
    let canvas = decoded.ok().and_then(|_| canvas(&image));
    // An address that cannot be given back dies with the page.
    let _ = Url::revoke_object_url(&address);
    let picture = png(&canvas?).await?;
    hand_out_blob(name, &picture).ok()
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "between 1 and 4,096"
)]
fn canvas(image: &HtmlImageElement) -> Option<HtmlCanvasElement> {
    let (width, height) = (
        f64::from(image.natural_width()),
        f64::from(image.natural_height()),
    );
    let scale = SHARPNESS.min(LONGEST_SIDE / width.max(height).max(1.0));
    let (width, height) = ((width * scale).max(1.0), (height * scale).max(1.0));
    let document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    context
        .draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height)
        .ok()?;
    Some(canvas)
}

/// The canvas's picture as a file's bytes.
async fn png(canvas: &HtmlCanvasElement) -> Option<Blob> {
    let promise = js_sys::Promise::new(&mut |resolve, _| {
        let take = Closure::once_into_js(move |blob: JsValue| {
            // What is resolved is heard below.
            let _ = resolve.call1(&JsValue::UNDEFINED, &blob);
        });
        // A canvas that gives no picture never calls back; it was drawn on just now, so it does.
        let _ = canvas.to_blob(take.unchecked_ref());
    });
    JsFuture::from(promise).await.ok()?.dyn_into().ok()
}
