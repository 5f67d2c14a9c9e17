//! What the analysis says beside its figures: for the whole run in a panel of its own, and for the
//! selected element where that is looked at.

use super::mark_view::is_lit;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::ElementId;
use crate::report::words::{Label, Message};
use leptos::prelude::*;

/// A remark: the element that it is about, and its words.
type Remark = (Option<ElementId>, String);

fn remarks(store: Store) -> Memo<Vec<Remark>> {
    Memo::new(move |_| {
        store.steady.with(|results| {
            let findings = results.figures.findings.iter();
            findings
                .map(|finding| (finding.element(), store.say(Message::Finding(finding))))
                .collect()
        })
    })
}

/// Every remark; one about an element selects it.
#[component]
pub(super) fn Remarks() -> impl IntoView {
    let store = expect_context::<Store>();
    let remarks = remarks(store);
    let list = move || {
        let remarks = remarks.get().into_iter();
        remarks
            .map(|(element, text)| match element {
                Some(element) => view! { <RemarkOn element text/> }.into_any(),
                None => view! { <li>{text}</li> }.into_any(),
            })
            .collect_view()
    };
    view! {
        <Show when=move || remarks.with(|remarks| !remarks.is_empty())>
            <section class="panel remarks" aria-labelledby="remarks-title">
                <h2 id="remarks-title">{label_text(Label::Findings)}</h2>
                <ul>{list}</ul>
            </section>
        </Show>
    }
}

#[component]
fn RemarkOn(element: ElementId, text: String) -> impl IntoView {
    let store = expect_context::<Store>();
    let key = element.to_string();
    let (looked_at, entered, selected) = (element.clone(), element.clone(), element);
    view! {
        <li
            data-remark=key
            class:lit=move || is_lit(store, Some(&looked_at))
            on:pointerenter=move |_| store.hovered.set(Some(entered.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
        >
            <button
                type="button"
                class="row-select"
                on:click=move |_| store.act(Action::Select(Some(selected.clone())))
            >
                {text}
            </button>
        </li>
    }
}

/// The remarks about one element.
#[component]
pub(super) fn RemarksOn(element: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let remarks = remarks(store);
    let list = move || {
        let remarks = remarks.get().into_iter();
        remarks
            .filter(|(about, _)| about.as_ref() == Some(&element))
            .map(|(_, text)| view! { <p class="remark">{text}</p> })
            .collect_view()
    };
    view! { {list} }
}
