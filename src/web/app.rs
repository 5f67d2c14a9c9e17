//! The page as a whole.

use super::air_panel::AirPanel;
use super::code_panel::CodePanel;
use super::drawing::Drawing;
use super::elevation_panel::ElevationPanel;
use super::first_steps::FirstSteps;
use super::handover_panel::HandoverPanel;
use super::header::Header;
use super::heat_panel::HeatPanel;
use super::keep::{self, Opening};
use super::keep_view::KeepNotice;
use super::keys_help::KeysHelp;
use super::later::{Later, Turns};
use super::ledger::LedgerPanel;
use super::link_open::follow_address;
use super::link_send::{SendLink, SendLinkDialog};
use super::panic_report;
use super::paper_client::Papers;
use super::pressure_panel::PressurePanel;
use super::print_sheet::{PrintSheet, Printing};
use super::remarks::Remarks;
use super::reroute_panel::ReroutePanel;
use super::search_client::Reroutes;
use super::selected_sheet::SelectedSheet;
use super::shares_panel::SharesPanel;
use super::shelf::Shelf;
use super::shelf_view::ShelfDialog;
use super::side::Side;
use super::side_first::{SideCaption, SideFirst};
use super::side_head::SideHead;
use super::side_plot::SideFigures;
use super::site_panel::SitePanel;
use super::sources_panel::SourcesPanel;
use super::spoken::Spoken;
use super::store::{Diameter, Store, Version, label_text};
use super::totals::{DominantSentence, Totals};
use crate::plan::Energy;
use crate::report::words::{Caution, Label, Message};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Puts the page in place of the loading text, once it is known what was kept.
pub fn start() {
    panic_report::install();
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
    let reroutes = Reroutes::start(Memo::new(move |_| Version(store.held())));
    provide_context(reroutes);
    provide_context(store);
    provide_context(Shelf::new());
    provide_context(SendLink::new());
    provide_context(Side::start(store));
    follow_address(store);
    provide_context(Printing(RwSignal::new(None)));
    provide_context(Papers::new(reroutes));
    provide_context(Turns::start());
    view! {
        <Header/>
        <KeepNotice/>
        <Trouble/>
        <div class="sheet">
            <SideHead/>
            <SideFirst/>
            <div class="sheet-drawing">
                <FirstSteps/>
                <Totals/>
                <div class="side-caption"><SideCaption of_open=true/></div>
                <Drawing/>
                <Later turn=3><ElevationPanel/></Later>
                <DominantSentence/>
                <Later turn=3><PressurePanel/></Later>
                <Later turn=4><HeatPanel/></Later>
            </div>
            <div class="sheet-run">
                <Later turn=1><SelectedSheet/></Later>
                <Later turn=2><LedgerPanel/></Later>
                <Later turn=5><SitePanel/></Later>
            </div>
            <SideFigures/>
            <div class="sheet-site">
                <Later turn=6><ReroutePanel/></Later>
                <Later turn=7><CodePanel/></Later>
                <Later turn=8><HandoverPanel/></Later>
                <Later turn=9><AirPanel/></Later>
                <Later turn=10>
                    <Remarks/>
                    <SharesPanel/>
                    <SourcesPanel/>
                    <Cautions/>
                </Later>
            </div>
        </div>
        <Spoken/>
        <Later turn=10>
            <KeysHelp/>
            <ShelfDialog/>
            <SendLinkDialog/>
        </Later>
        <PrintSheet/>
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
