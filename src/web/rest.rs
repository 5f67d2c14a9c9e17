//! What the first look at the page does not need: the program's other file, fetched once the drawing
//! stands. Only what is named here can be reached from the first file, and only through [`rest`].

use super::air_panel::AirPanel;
use super::asked::AskedAnswer;
use super::band_client;
use super::code_panel::CodePanel;
use super::draft_view::DraftMarks;
use super::draw_length::{LengthOnDrawing, NextLength};
use super::elevation_panel::ElevationPanel;
use super::files;
use super::foot::Foot;
use super::ghost_view::GhostMarks;
use super::handover_panel::HandoverPanel;
use super::heat_panel::HeatPanel;
use super::keep_told::tell_kept;
use super::keep_view::KeepNotice;
use super::keys_help::KeysHelp;
use super::later::built;
use super::ledger::LedgerPanel;
use super::link_open::follow_address;
use super::link_send::{SendLink, SendLinkDialog};
use super::panic_report;
use super::picture;
use super::pressure_panel::PressurePanel;
use super::print_sheet::PrintSheet;
use super::reroute_panel::ReroutePanel;
use super::search_client::Reroutes;
use super::selected_sheet::SelectedSheet;
use super::shelf::Shelf;
use super::shelf_view::ShelfDialog;
use super::side::Side;
use super::side_first::{SideCaption, SideFirst};
use super::side_head::SideHead;
use super::side_plot::SideFigures;
use super::site_marks::SuspectMarks;
use super::site_panel::SitePanel;
use super::store::Store;
use crate::plan::{FileError, Plan, read, write};
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::pin::Pin;
use std::sync::OnceLock;
use web_sys::File;

/// A part of the page.
#[derive(Clone, Copy)]
pub(super) enum Part {
    KeepNotice,
    AskedAnswer,
    TypedLength,
    /// The field for the next length while drawing.
    NextLength,
    /// What is being drawn, as it grows with the zoom.
    Draft,
    DraftOver,
    SideHead,
    SideFirst,
    SideCaption,
    SideFigures,
    GhostMarks,
    /// The rings, which grow with the zoom.
    SuspectRings,
    SuspectLetters,
    Elevation,
    Pressure,
    Heat,
    Selected,
    Ledger,
    Site,
    Reroute,
    Code,
    Handover,
    Air,
    Foot,
    Dialogs,
}

/// What a press in the head of the sheet starts.
pub(super) enum Press {
    OpenFile(Store, File),
    TracePicture(Store, File),
    SavePlan(Store),
    SaveDrawing(Store),
    ShowJobs(Shelf),
    SendLink(SendLink, Store),
    SideBySide(Side, Store),
}

/// The ways into the other file.
pub struct Rest {
    /// Builds a part where it is called.
    pub(super) build: fn(Part) -> AnyView,
    /// Begins what goes on for as long as the page lives.
    pub(super) begin: fn(Store, Reroutes, Side),
    pub(super) press: fn(Press),
    pub(super) read: fn(&[u8]) -> Result<Plan, FileError>,
    pub(super) write: fn(&Plan) -> String,
    pub(super) tell_kept: fn(&Plan, &str),
}

/// All that is in the other file. Whoever names it carries that file's code.
pub static REST: Rest = Rest {
    build,
    begin,
    press,
    read,
    write,
    tell_kept,
};

/// Fetches the other file; none where it cannot be had.
pub type Fetch = fn() -> Pin<Box<dyn Future<Output = Option<&'static Rest>>>>;

static FETCH: OnceLock<Fetch> = OnceLock::new();

/// From now on the other file comes by way of `fetch`.
pub(super) fn comes_by(fetch: Fetch) {
    // The page starts once.
    let _ = FETCH.set(fetch);
}

/// The pauses before further attempts to fetch it, ms.
const PAUSES_MS: [u32; 3] = [300, 1_000, 3_000];

/// The other file, once it is there. Where it cannot be had the page stops and says so: half a program
/// would lose what is drawn with it.
pub(super) async fn rest() -> &'static Rest {
    if let Some(fetch) = FETCH.get() {
        if let Some(rest) = fetch().await {
            return rest;
        }
        for pause in PAUSES_MS {
            TimeoutFuture::new(pause).await;
            if let Some(rest) = fetch().await {
                return rest;
            }
        }
    }
    panic_report::stop(fixed!(NotFetched));
    core::future::pending().await
}

/// Does what a press asks for, as soon as all that it may show stands.
pub(super) fn pressed(what: Press) {
    spawn_local(async move {
        built().await;
        (rest().await.press)(what);
    });
}

fn build(part: Part) -> AnyView {
    match part {
        Part::KeepNotice => view! { <KeepNotice/> }.into_any(),
        Part::AskedAnswer => view! { <AskedAnswer/> }.into_any(),
        Part::TypedLength => view! { <LengthOnDrawing/> }.into_any(),
        Part::NextLength => view! { <NextLength/> }.into_any(),
        Part::Draft => view! { <DraftMarks ground=true/> }.into_any(),
        Part::DraftOver => view! { <DraftMarks ground=false/> }.into_any(),
        Part::SideHead => view! { <SideHead/> }.into_any(),
        Part::SideFirst => view! { <SideFirst/> }.into_any(),
        Part::SideCaption => view! { <SideCaption of_open=true/> }.into_any(),
        Part::SideFigures => view! { <SideFigures/> }.into_any(),
        Part::GhostMarks => view! { <GhostMarks/> }.into_any(),
        Part::SuspectRings => view! { <SuspectMarks ground=true/> }.into_any(),
        Part::SuspectLetters => view! { <SuspectMarks ground=false/> }.into_any(),
        Part::Elevation => view! { <ElevationPanel/> }.into_any(),
        Part::Pressure => view! { <PressurePanel/> }.into_any(),
        Part::Heat => view! { <HeatPanel/> }.into_any(),
        Part::Selected => view! { <SelectedSheet/> }.into_any(),
        Part::Ledger => view! { <LedgerPanel/> }.into_any(),
        Part::Site => view! { <SitePanel/> }.into_any(),
        Part::Reroute => view! { <ReroutePanel/> }.into_any(),
        Part::Code => view! { <CodePanel/> }.into_any(),
        Part::Handover => view! { <HandoverPanel/> }.into_any(),
        Part::Air => view! { <AirPanel/> }.into_any(),
        Part::Foot => view! { <Foot/> }.into_any(),
        Part::Dialogs => view! {
            <KeysHelp/>
            <ShelfDialog/>
            <SendLinkDialog/>
            <PrintSheet/>
        }
        .into_any(),
    }
}

fn begin(store: Store, reroutes: Reroutes, side: Side) {
    band_client::start(store);
    reroutes.follow();
    side.bands.follow(store, side);
    follow_address(store);
}

fn press(what: Press) {
    match what {
        Press::OpenFile(store, file) => files::open(store, file),
        Press::TracePicture(store, file) => picture::trace(store, file),
        Press::SavePlan(store) => files::save_plan(store),
        Press::SaveDrawing(store) => files::save_drawing(store),
        Press::ShowJobs(shelf) => shelf.open(),
        Press::SendLink(link, store) => link.open(store),
        Press::SideBySide(side, store) => side.turn(store),
    }
}
