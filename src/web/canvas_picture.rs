//! Pictures on a canvas of the browser.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, HtmlImageElement, Url};

/// The picture at an address; none where the browser cannot show it.
pub(super) async fn image_at(address: &str) -> Option<HtmlImageElement> {
    let image = HtmlImageElement::new().ok()?;
    image.set_src(address);
    JsFuture::from(image.decode()).await.ok()?;
    (image.natural_width() > 0 && image.natural_height() > 0).then_some(image)
}

/// The picture in a file.
pub(super) async fn image_in(file: &Blob) -> Option<HtmlImageElement> {
    let address = Url::create_object_url_with_blob(file).ok()?;
    let image = image_at(&address).await;
    // An address that cannot be given back dies with the page.
    let _ = Url::revoke_object_url(&address);
    image
}

/// How large a picture is, px.
pub(super) fn size(image: &HtmlImageElement) -> (f64, f64) {
    (
        f64::from(image.natural_width()),
        f64::from(image.natural_height()),
    )
}

/// A picture drawn anew, so many times as large, on a ground of its own where one is given.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "from 1 to what the callers bound it by, a few thousand"
)]
pub(super) fn drawn(
    image: &HtmlImageElement,
    times: f64,
    ground: Option<&str>,
) -> Option<HtmlCanvasElement> {
    let (width, height) = size(image);
    let (width, height) = ((width * times).max(1.0), (height * times).max(1.0));
    let document = web_sys::window()?.document()?;
    let canvas: HtmlCanvasElement = document.create_element("canvas").ok()?.dyn_into().ok()?;
    canvas.set_width(width as u32);
    canvas.set_height(height as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    if let Some(ground) = ground {
        context.set_fill_style_str(ground);
        context.fill_rect(0.0, 0.0, width, height);
    }
    context
        .draw_image_with_html_image_element_and_dw_and_dh(image, 0.0, 0.0, width, height)
        .ok()?;
    Some(canvas)
}
