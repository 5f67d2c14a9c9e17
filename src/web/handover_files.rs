//! Everything that leaves the page as a file: the sheet, drawing and plots, ledger and cut list.

use super::files::{file_name, hand_out};
use super::handover_panel::{Wishes, handover_text};
use super::paper_client::Papers;
use super::paper_protocol::PaperKind;
use super::store::Store;
use super::svg_picture::save_png;
use crate::report::words::HandoverLabel;
use leptos::prelude::*;
use leptos::task::spawn_local;

/// A file that can be saved: what is made, how it is named and what kind of file it is.
struct Saved {
    label: HandoverLabel,
    what: PaperKind,
    /// What stands in its name after the job's; none for the drawing.
    part: Option<HandoverLabel>,
    ending: &'static str,
    kind: &'static str,
}

const SVG: &str = "image/svg+xml";
const CSV: &str = "text/csv;charset=utf-8";

const FILES: [Saved; 7] = [
    Saved {
        label: HandoverLabel::SaveHtml,
        what: PaperKind::SheetFile,
        part: Some(HandoverLabel::FileSheet),
        ending: "html",
        kind: "text/html;charset=utf-8",
    },
    Saved {
        label: HandoverLabel::SaveDrawingSvg,
        what: PaperKind::Drawing,
        part: None,
        ending: "svg",
        kind: SVG,
    },
    Saved {
        label: HandoverLabel::SaveDrawingPng,
        what: PaperKind::Drawing,
        part: None,
        ending: "png",
        kind: "image/png",
    },
    Saved {
        label: HandoverLabel::SavePressureSvg,
        what: PaperKind::Pressure,
        part: Some(HandoverLabel::FilePressure),
        ending: "svg",
        kind: SVG,
    },
    Saved {
        label: HandoverLabel::SaveHeatSvg,
        what: PaperKind::Heat,
        part: Some(HandoverLabel::FileHeat),
        ending: "svg",
        kind: SVG,
    },
    Saved {
        label: HandoverLabel::SaveLedgerCsv,
        what: PaperKind::Ledger,
        part: Some(HandoverLabel::FileLedger),
        ending: "csv",
        kind: CSV,
    },
    Saved {
        label: HandoverLabel::SaveCutListCsv,
        what: PaperKind::CutList,
        part: Some(HandoverLabel::FileCutList),
        ending: "csv",
        kind: CSV,
    },
];

#[component]
pub(super) fn HandoverFiles(wishes: Wishes) -> impl IntoView {
    let store = expect_context::<Store>();
    let papers = expect_context::<Papers>();
    let status = RwSignal::new(String::new());
    let buttons = FILES.iter().map(|saved| {
        let save = move |_| {
            status.set(String::new());
            let wish = wishes.now(store);
            papers.ask(store, wish, saved.what, move |made| match made {
                Some(made) => hand_over(store, saved, made, status),
                None => status.set(handover_text(HandoverLabel::NotSaved)),
            });
        };
        view! { <button type="button" on:click=save>{handover_text(saved.label)}</button> }
    });
    view! {
        <h3>{handover_text(HandoverLabel::Files)}</h3>
        <p class="fine">{handover_text(HandoverLabel::FilesHint)}</p>
        <div class="handover-files">{buttons.collect_view()}</div>
        <p role="status" data-testid="handover-saved">{status}</p>
    }
}

fn hand_over(store: Store, saved: &'static Saved, made: String, status: RwSignal<String>) {
    let title = store.plan.with_untracked(|plan| plan.title.clone());
    let name = saved.part.map_or_else(
        || title.clone(),
        |part| format!("{title} {}", handover_text(part)),
    );
    let name = file_name(&name, saved.ending);
    if saved.ending == "png" {
        spawn_local(async move {
            if save_png(&name, &made).await.is_none() {
                status.set(handover_text(HandoverLabel::NotSaved));
            }
        });
        return;
    }
    // A browser that hands out no files shows that itself.
    let _ = hand_out(&name, saved.kind, &made);
}
