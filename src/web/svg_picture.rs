//! An SVG drawing as a PNG file: drawn by the browser on a canvas.

use super::canvas_picture::{drawn, image_in, size};
use super::files::{hand_out_blob, text_blob};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, HtmlCanvasElement};

/// Dots for each of the drawing's own px: 192 to the inch.
const SHARPNESS: f64 = 2.0;
/// The longest side that every browser's canvas has, px.
const LONGEST_SIDE: f64 = 4096.0;

/// Saves the drawing `svg` as a PNG file; none where the browser cannot draw it.
pub(super) async fn save_png(name: &str, svg: &str) -> Option<()> {
    let file = text_blob("image/svg+xml", svg).ok()?;
    let image = image_in(&file).await?;
    let (width, height) = size(&image);
    let times = SHARPNESS.min(LONGEST_SIDE / width.max(height));
    let picture = png(&drawn(&image, times, None)?).await?;
    hand_out_blob(name, &picture).ok()
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
