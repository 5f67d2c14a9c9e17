//! The part of a plot that an element takes up: lit with it, and selects it.

use super::mark_view::is_lit;
use super::store::Store;
use crate::editor::Action;
use crate::plan::ElementId;
use crate::scene::{PLOT_FOOT as FOOT, PLOT_HEIGHT as HEIGHT, PLOT_TOP as TOP};
use leptos::prelude::*;

#[component]
pub(super) fn PlotSpan(
    id: ElementId,
    /// From where to where it goes.
    span: Memo<(f64, f64)>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let key = id.to_string();
    let (entered, selected) = (id.clone(), id.clone());
    let lit = Memo::new(move |_| is_lit(store, Some(&id)));
    view! {
        <rect
            class="plot-span"
            class:lit=lit
            data-span=key
            x=move || span.get().0
            y=TOP
            width=move || span.get().1 - span.get().0
            height=HEIGHT - FOOT - TOP
            on:pointerenter=move |_| store.hovered.set(Some(entered.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
            on:click=move |_| store.act(Action::Select(Some(selected.clone())))
        />
    }
}
