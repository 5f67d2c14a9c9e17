//! A look at the handover sheet, and its way to the printer. A sheet that is open follows the plan.

use super::handover_panel::{Wishes, handover_text};
use super::paper_client::Papers;
use super::paper_protocol::PaperKind;
use super::print_sheet::{PrintedSheet, Printing};
use super::search_client::Reroutes;
use super::store::Store;
use crate::report::words::HandoverLabel;
use leptos::prelude::*;

/// What there is to see.
#[derive(Clone, PartialEq)]
enum Seen {
    Nothing,
    Waiting,
    Failed,
    Sheet { class: &'static str, html: String },
}

#[component]
pub(super) fn Preview(wishes: Wishes) -> impl IntoView {
    let store = expect_context::<Store>();
    let papers = expect_context::<Papers>();
    let printing = expect_context::<Printing>();
    let reroutes = expect_context::<Reroutes>();
    let seen = RwSignal::new(Seen::Nothing);
    let asked = StoredValue::new(0_u32);
    let make = move || {
        let (wish, number) = (wishes.now(store), asked.get_value().wrapping_add(1));
        asked.set_value(number);
        if seen.with_untracked(|seen| !matches!(seen, Seen::Sheet { .. })) {
            seen.set(Seen::Waiting);
        }
        papers.ask(store, wish, PaperKind::Sheet, move |html| {
            // One that was asked for later takes its place.
            if asked.get_value() == number {
                let class = wish.paper.class();
                seen.set(html.map_or(Seen::Failed, |html| Seen::Sheet { class, html }));
            }
        });
    };
    Effect::new(move |first: Option<()>| {
        store.plan.track();
        store.open_visit.track();
        reroutes.shown.track();
        wishes.get(store);
        let is_open = seen.with_untracked(|seen| *seen != Seen::Nothing);
        if first.is_some() && is_open {
            make();
        }
    });
    let print = move |_| {
        let wish = wishes.now(store);
        papers.ask(store, wish, PaperKind::Sheet, move |html| match html {
            Some(html) => printing.print(PrintedSheet {
                name: "handover",
                class: wish.paper.class(),
                html,
            }),
            None => seen.set(Seen::Failed),
        });
    };
    let status = move || match seen.get() {
        Seen::Waiting => handover_text(HandoverLabel::PreviewWait),
        Seen::Failed => handover_text(HandoverLabel::PreviewFailed),
        Seen::Nothing | Seen::Sheet { .. } => String::new(),
    };
    let sheet = move || match seen.get() {
        Seen::Sheet { class, html } => Some(view! {
            <div class="handover-preview" tabindex="0" role="region" aria-label=handover_text(HandoverLabel::SheetTitle)>
                <article class=class inner_html=html data-testid="handover-sheet"/>
            </div>
        }),
        _ => None,
    };
    view! {
        <p class="site-buttons">
            <button type="button" on:click=move |_| make()>{handover_text(HandoverLabel::Preview)}</button>
            <button type="button" on:click=print>{handover_text(HandoverLabel::Print)}</button>
        </p>
        <p class="fine">{handover_text(HandoverLabel::PrintHint)}</p>
        <p role="status" data-testid="handover-status">{status}</p>
        {sheet}
    }
}
