//! The termination: what it is and how freely it opens.

use super::field::{ChoiceField, NumberField};
use super::store::Store;
use crate::editor::Action;
use crate::plan::{Termination, TerminationKind};
use crate::report::words::Label;
use leptos::prelude::*;

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
    let is_chosen = Callback::new(move |kind| termination.get().kind == kind);
    let set = Callback::new(move |kind| {
        let kept = store.plan_now().run.termination;
        store.act(Action::SetTermination(Termination { kind, ..kept }));
    });
    let free = Signal::derive(move || format!("{:.0}", termination.get().free_area * 100.0));
    let set_free = Callback::new(move |percent: f64| {
        let kept = store.plan_now().run.termination;
        let free_area = percent / 100.0;
        store.act(Action::SetTermination(Termination { free_area, ..kept }));
    });
    view! {
        <ChoiceField id="termination-kind" label=Label::TerminationKind choices=KINDS.to_vec() is_chosen set/>
        <NumberField id="termination-free" label=Label::TerminationFreeArea shown=free set=set_free/>
    }
}
