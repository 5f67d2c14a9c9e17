//! Where the focus goes when what had it is gone.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement, SvgElement};

/// The drawing.
pub(super) const CANVAS: &str = ".drawing .canvas";

/// Gives the focus back to the drawing.
pub(super) fn focus_drawing() {
    focus_first(CANVAS);
}

/// Whether nothing has the focus: what had it is gone.
pub(super) fn is_lost() -> bool {
    let focus = document().active_element();
    focus.is_none_or(|element| element.tag_name() == "BODY")
}

/// Gives the focus to the first element of the page that `selector` means; tells whether there is one.
pub(super) fn focus_first(selector: &str) -> bool {
    let element = document().query_selector(selector).ok().flatten();
    element.as_ref().map(focus_on).is_some()
}

/// Gives the focus to `element`; one that cannot take it leaves it with the page.
pub(super) fn focus_on(element: &Element) {
    let _ = match element.dyn_ref::<HtmlElement>() {
        Some(element) => element.focus(),
        None => element
            .dyn_ref::<SvgElement>()
            .map_or(Ok(()), SvgElement::focus),
    };
}
