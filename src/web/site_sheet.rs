//! The button that prints the open visit.

use super::paper_client::Papers;
use super::paper_protocol::{PaperKind, PaperLanguage, PaperWish};
use super::print_sheet::{PrintedSheet, Printing};
use super::site_words::site_text;
use super::store::{Store, label_text};
use crate::report::Paper;
use crate::report::handover::SheetReading;
use crate::report::words::{HandoverLabel, Label, SiteLabel};
use leptos::prelude::*;

#[component]
pub(super) fn PrintVisit() -> impl IntoView {
    let store = expect_context::<Store>();
    let papers = expect_context::<Papers>();
    let printing = expect_context::<Printing>();
    let print = move |_| {
        let wish = PaperWish {
            reading: SheetReading::Trade,
            paper: Paper::default(),
            language: PaperLanguage::English,
            units: store.units.get_untracked(),
        };
        papers.ask(store, wish, PaperKind::Visit, move |html| {
            let Some(html) = html else {
                let text = label_text(Label::Handover(HandoverLabel::PreviewFailed));
                store.trouble.set(text);
                return;
            };
            printing.print(PrintedSheet {
                name: "visit",
                class: "paper",
                html,
            });
        });
    };
    view! {
        <p class="site-buttons">
            <button type="button" on:click=print>{site_text(SiteLabel::Print)}</button>
            <span class="fine">{site_text(SiteLabel::PrintHint)}</span>
        </p>
    }
}
