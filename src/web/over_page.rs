//! A dialog over the page: what it holds is built while it is open, and the focus goes back where it
//! was when it closes.

use super::store::label_text;
use crate::report::words::Label;
use leptos::prelude::*;

#[component]
pub(super) fn OverPage(
    /// Its class, and the beginning of its title's id.
    name: &'static str,
    title: Label,
    is_open: RwSignal<bool>,
    children: ChildrenFn,
) -> impl IntoView {
    let dialog = NodeRef::<leptos::html::Dialog>::new();
    Effect::new(move |_| {
        let Some(dialog) = dialog.get() else {
            return;
        };
        match (is_open.get(), dialog.open()) {
            // It is refused only where the page is being taken down.
            (true, false) => {
                let _ = dialog.show_modal();
            }
            (false, true) => dialog.close(),
            _ => {}
        }
    });
    let title_id = format!("{name}-title");
    let named_by = title_id.clone();
    view! {
        <dialog
            node_ref=dialog
            class=format!("over-page {name}")
            aria-labelledby=named_by
            on:close=move |_| is_open.set(false)
        >
            <div class="panel-head">
                <h2 id=title_id>{label_text(title)}</h2>
                <button type="button" on:click=move |_| is_open.set(false)>
                    {label_text(Label::Dismiss)}
                </button>
            </div>
            <Show when=move || is_open.get()>{children()}</Show>
        </dialog>
    }
}
