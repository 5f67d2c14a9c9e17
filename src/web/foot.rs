//! The foot of the page: what is doubtful about the run, where the uncertainty comes from, the sources
//! and the cautions.

use super::remarks::Remarks;
use super::shares_panel::SharesPanel;
use super::sources_panel::SourcesPanel;
use super::store::{Store, label_text};
use crate::plan::Energy;
use crate::report::words::{Caution, Label, Message};
use leptos::prelude::*;

#[component]
pub(super) fn Foot() -> impl IntoView {
    view! {
        <Remarks/>
        <SharesPanel/>
        <SourcesPanel/>
        <Cautions/>
    }
}

#[component]
fn Cautions() -> impl IntoView {
    let store = expect_context::<Store>();
    let cautions = move || {
        let gas = store.plan.with(|plan| plan.dryer.energy == Energy::Gas);
        Caution::standing(gas)
            .map(|caution| view! { <li>{store.say(Message::Caution(caution))}</li> })
            .collect_view()
    };
    view! {
        <section class="panel cautions" aria-labelledby="cautions-title">
            <h2 id="cautions-title">{label_text(Label::Cautions)}</h2>
            <ul>{cautions}</ul>
            <p class="fine">{label_text(Label::ScopeNote)}</p>
        </section>
    }
}
