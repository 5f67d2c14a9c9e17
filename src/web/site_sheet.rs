//! The open visit on paper: made when it is to be printed, and gone afterwards.

use super::open_visit::visit_of;
use super::print_part::print_part;
use super::site_words::site_text;
use super::store::Store;
use crate::report::words::{Language, SiteLabel};
use crate::report::{VisitSheet, sheet_html, visit_sheet};
use leptos::prelude::*;

/// Whether the visit's sheet is there to be printed.
#[derive(Clone, Copy)]
pub(super) struct Printing(pub RwSignal<bool>);

/// The button that prints the open visit.
#[component]
pub(super) fn PrintVisit() -> impl IntoView {
    let Printing(printing) = expect_context();
    let print = move |_| {
        printing.set(true);
        // The sheet stands from the next frame on.
        request_animation_frame(move || print_part("visit", move || printing.set(false)));
    };
    view! {
        <p class="site-buttons">
            <button type="button" on:click=print>{site_text(SiteLabel::Print)}</button>
            <span class="fine">{site_text(SiteLabel::PrintHint)}</span>
        </p>
    }
}

/// The paper; nothing while nothing is printed.
#[component]
pub(super) fn VisitPaper() -> impl IntoView {
    let store = expect_context::<Store>();
    let Printing(printing) = expect_context();
    move || {
        let text = printing.get().then(|| paper(store))?;
        Some(view! { <article class="print-sheet" inner_html=text/> })
    }
}

fn paper(store: Store) -> String {
    let (site, open) = (store.site(), store.open_visit().get());
    store.results.with(|results| {
        let plan = &results.plan;
        let Some(visit) = visit_of(plan, open.as_deref()) else {
            return String::new();
        };
        let index = plan.visits.iter().position(|other| other.id == visit.id);
        sheet_html(&visit_sheet(&VisitSheet {
            plan,
            figures: &results.figures,
            visit: index.unwrap_or_default(),
            diagnosis: site.as_ref().and_then(|site| site.diagnosis.as_ref()),
            clean: site.as_ref().map_or(&[], |site| &site.clean),
            language: Language::English,
            units: store.units.get(),
        }))
    })
}
