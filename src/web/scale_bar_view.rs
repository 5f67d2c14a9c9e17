//! A bar of a round length, to read a drawing by.

use super::store::Store;
use crate::editor::View;
use crate::scene::scale_bar;
use leptos::prelude::*;

#[component]
pub(super) fn ScaleBar(
    /// The drawing's window.
    view: Signal<View>,
    /// Where the bar begins, px.
    at: Signal<(f64, f64)>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let length = Memo::new(move |_| scale_bar(store.units.get(), view.get().metres_per_pixel));
    let width = move || length.get().metres() / view.get().metres_per_pixel;
    let bar = move || format!("M0 -4V4M0 0H{:.2}M{:.2} -4V4", width(), width());
    let place = move || format!("translate({:.1} {:.1})", at.get().0, at.get().1);
    view! {
        <g class="scale-bar" transform=place>
            <path d=bar/>
            <text x=move || width() + 6.0 y="4">{move || store.units.get().length(length.get()).to_string()}</text>
        </g>
    }
}
