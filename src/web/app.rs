//! The page as a whole.

use super::drawing::Drawing;
use super::first_steps::FirstSteps;
use super::header::Header;
use super::keep::{self, Opening};
use super::later::{Later, Turns};
use super::link_send::SendLink;
use super::panic_report;
use super::paper_client::Papers;
use super::print_sheet::Printing;
use super::rest::{Fetch, Part, comes_by};
use super::search_client::Reroutes;
use super::shelf::Shelf;
use super::side::Side;
use super::spoken::Spoken;
use super::store::{Diameter, Store, Version, label_text};
use super::totals::{DominantSentence, Totals};
use crate::report::words::Label;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Puts the page in place of the loading text, once it is known what was kept. The program's other file
/// comes by way of `fetch`.
pub fn start(fetch: Fetch) {
    panic_report::install();
    comes_by(fetch);
    keep::open_then(show);
}

fn show(opening: Opening) {
    let root = document()
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(root) = root {
        root.set_inner_html("");
        mount_to(root, move || view! { <App opening/> }).forget();
    }
}

#[component]
fn App(opening: Opening) -> impl IntoView {
    let store = Store::new(opening);
    provide_context(Diameter::of(&store));
    let reroutes = Reroutes::new(Memo::new(move |_| Version(store.held())));
    provide_context(reroutes);
    provide_context(store);
    provide_context(Shelf::new());
    provide_context(SendLink::new());
    let side = Side::start(store);
    provide_context(side);
    provide_context(Printing(RwSignal::new(None)));
    provide_context(Papers::new(reroutes));
    provide_context(Turns::start(store, reroutes, side));
    view! {
        <Header/>
        <Later turn=1 part=Part::KeepNotice/>
        <Trouble/>
        <div class="sheet">
            <Later turn=1 part=Part::SideHead/>
            <Later turn=1 part=Part::SideFirst/>
            <div class="sheet-drawing">
                <FirstSteps/>
                <Totals/>
                <div class="side-caption"><Later turn=1 part=Part::SideCaption/></div>
                <Drawing/>
                <Later turn=3 part=Part::Elevation/>
                <DominantSentence/>
                <Later turn=3 part=Part::Pressure/>
                <Later turn=4 part=Part::Heat/>
            </div>
            <div class="sheet-run">
                <Later turn=1 part=Part::Selected/>
                <Later turn=2 part=Part::Ledger/>
                <Later turn=5 part=Part::Site/>
            </div>
            <Later turn=1 part=Part::SideFigures/>
            <div class="sheet-site">
                <Later turn=6 part=Part::Reroute/>
                <Later turn=7 part=Part::Code/>
                <Later turn=8 part=Part::Handover/>
                <Later turn=9 part=Part::Air/>
                <Later turn=10 part=Part::Foot/>
            </div>
        </div>
        <Spoken/>
        <Later turn=10 part=Part::Dialogs/>
    }
}

/// What went wrong last, until it is closed.
#[component]
fn Trouble() -> impl IntoView {
    let store = expect_context::<Store>();
    view! {
        <div role="alert">
            <Show when=move || !store.trouble.with(String::is_empty)>
                <p class="trouble">
                    <span>{move || store.trouble.get()}</span>
                    <button type="button" on:click=move |_| store.trouble.set(String::new())>
                        {label_text(Label::Dismiss)}
                    </button>
                </p>
            </Show>
        </div>
    }
}
