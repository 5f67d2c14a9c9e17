//! The termination: what it is and how freely it opens.

use super::field::NumberField;
use super::leg_fields::no_unit;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Termination, TerminationKind};
use crate::report::words::Label;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

const KINDS: [(&str, Label, TerminationKind); 4] = [
    (
        "wall_hood",
        Label::TerminationWallHood,
        TerminationKind::WallHood,
    ),
    (
        "louvred_hood",
        Label::TerminationLouvredHood,
        TerminationKind::LouvredHood,
    ),
    (
        "roof_cap",
        Label::TerminationRoofCap,
        TerminationKind::RoofCap,
    ),
    (
        "open_end",
        Label::TerminationOpenEnd,
        TerminationKind::OpenEnd,
    ),
];

#[component]
pub(super) fn TerminationFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let termination = Memo::new(move |_| store.plan.with(|plan| plan.run.termination));
    let options = KINDS.map(|(value, label, kind)| {
        view! {
            <option value=value prop:selected=move || termination.get().kind == kind>
                {label_text(label)}
            </option>
        }
    });
    let chosen = move |event: web_sys::Event| {
        let list = event
            .target()
            .and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let value = list.map(|list| list.value());
        if let Some((_, _, kind)) = KINDS
            .iter()
            .find(|(name, ..)| Some(*name) == value.as_deref())
        {
            let kept = termination.get_untracked();
            store.act(Action::SetTermination(Termination {
                kind: *kind,
                ..kept
            }));
        }
    };
    let free = Signal::derive(move || format!("{:.0}", termination.get().free_area * 100.0));
    let set_free = Callback::new(move |percent: f64| {
        let kept = termination.get_untracked();
        let free_area = percent / 100.0;
        store.act(Action::SetTermination(Termination { free_area, ..kept }));
    });
    view! {
        <div class="field">
            <label for="termination-kind">{label_text(Label::TerminationKind)}</label>
            <select id="termination-kind" on:change=chosen>{options}</select>
        </div>
        <NumberField id="termination-free" label=Label::TerminationFreeArea unit=no_unit shown=free set=set_free/>
    }
}
