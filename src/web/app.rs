//! The page as a whole.

use super::drawing::Drawing;
use super::first_steps::FirstSteps;
use super::focus::focus_drawing;
use super::header::Header;
use super::keep::{self, Opening};
use super::later::{InTurn, Later, Turns};
use super::link_send::SendLink;
use super::panic_report;
use super::paper_client::Papers;
use super::print_sheet::Printing;
use super::rest::{Fetch, Part, comes_by};
use super::search_client::Reroutes;
use super::shelf::Shelf;
use super::side::Side;
use super::spoken::Spoken;
use super::store::Store;
use super::totals::{DominantSentence, Totals};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Puts the page in place of the loading text, once it is known what was kept. The program's other file
/// comes by way of `fetch`.
pub fn start(fetch: Fetch) {
    panic_report::install();
    comes_by(fetch);
    keep::open_then(show);
}

/// The class of the page while it is built out of sight.
const RISING: &str = "rising";

fn show(opening: Opening) {
    let root = document()
        .get_element_by_id("app")
        .and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(root) = root {
        let (placeholders, page) = (root.children(), root.clone());
        let placeholders: Vec<_> = (0..placeholders.length())
            .filter_map(|index| placeholders.item(index))
            .collect();
        // A class of plain letters is never refused.
        let _ = root.class_list().add_1(RISING);
        let shown = move || {
            placeholders.iter().for_each(web_sys::Element::remove);
            let _ = page.class_list().remove_1(RISING);
        };
        mount_to(root, move || view! { <App opening shown/> }).forget();
    }
}

#[component]
fn App(opening: Opening, shown: impl FnOnce() + 'static) -> impl IntoView {
    let store = Store::new(opening);
    let reroutes = Reroutes::new(store);
    provide_context(reroutes);
    provide_context(store);
    provide_context(Shelf::new());
    provide_context(SendLink::new());
    let side = Side::start(store);
    provide_context(side);
    provide_context(Printing(RwSignal::new(None)));
    provide_context(Papers::new(reroutes));
    let turns = Turns::new();
    provide_context(turns);
    turns.start(store, reroutes, side, shown);
    view! {
        <InTurn turn=1><Header/></InTurn>
        <Later turn=6 part=Part::KeepNotice/>
        <Trouble/>
        <div class="sheet">
            <Later turn=8 part=Part::SideHead/>
            <Later turn=8 part=Part::SideFirst/>
            <div class="sheet-drawing">
                <InTurn turn=2><FirstSteps/><Totals/></InTurn>
                <div class="side-caption"><Later turn=8 part=Part::SideCaption/></div>
                <InTurn turn=3><Drawing/></InTurn>
                <Later turn=11 part=Part::Elevation/>
                <InTurn turn=2><DominantSentence/></InTurn>
                <Later turn=12 part=Part::Pressure/>
                <Later turn=13 part=Part::Heat/>
            </div>
            <div class="sheet-run">
                <Later turn=7 part=Part::Selected/>
                <Later turn=9 part=Part::Ledger/>
                <Later turn=14 part=Part::Site/>
            </div>
            <Later turn=8 part=Part::SideFigures/>
            <div class="sheet-site">
                <Later turn=17 part=Part::Reroute/>
                <Later turn=18 part=Part::Code/>
                <Later turn=19 part=Part::Handover/>
                <Later turn=20 part=Part::Air/>
                <Later turn=21 part=Part::Foot/>
            </div>
        </div>
        <Spoken/>
        <Later turn=22 part=Part::Dialogs/>
    }
}

/// What went wrong last, until it is closed.
#[component]
fn Trouble() -> impl IntoView {
    let store = expect_context::<Store>();
    // The button goes with what it closes.
    let close = move |_| {
        store.trouble.set(String::new());
        focus_drawing();
    };
    view! {
        <div role="alert">
            <Show when=move || !store.trouble.with(String::is_empty)>
                <p class="trouble">
                    <span>{move || store.trouble.get()}</span>
                    <button type="button" on:click=close>
                        {fixed!(Dismiss)}
                    </button>
                </p>
            </Show>
        </div>
    }
}
