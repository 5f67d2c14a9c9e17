//! What the page asks to have made for paper and files, and what comes back: it is made in the worker's
//! program, so that the page's own stays small.

use crate::plan::Plan;
use crate::report::handover::SheetWish;
use crate::search::Suggestion;
use serde::{Deserialize, Serialize};

/// The version of the messages; one of another is dropped.
pub(super) const PAPER_PROTOCOL: u32 = 1;

/// Something to be made.
#[derive(Serialize, Deserialize)]
pub(super) struct PaperAsk {
    /// [`PAPER_PROTOCOL`] of the sender.
    pub paper_protocol: u32,
    /// Comes back with the answer.
    pub id: u32,
    /// The plan with its pictures.
    pub plan: Plan,
    /// The visit's index; none for the newest.
    pub visit: Option<usize>,
    /// Another run beside the plan's own.
    pub other: OtherAsk,
    /// How it is wanted.
    pub wish: SheetWish,
    /// What is wanted.
    pub what: PaperKind,
}

/// Another run beside the plan's own.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
pub(super) enum OtherAsk {
    /// There is none.
    None,
    /// The plan as it was before another run was taken.
    Before(Box<Plan>),
    /// A run that is offered.
    Offered(Box<Suggestion>),
}

/// What is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(super) enum PaperKind {
    /// The handover sheet, as the inside of an element.
    Sheet,
    /// The handover sheet as one HTML file.
    SheetFile,
    /// The visit's sheet, as the inside of an element.
    Visit,
    /// The drawing as SVG.
    Drawing,
    /// The pressure line as SVG.
    Pressure,
    /// The line of temperatures as SVG.
    Heat,
    /// The ledger as CSV.
    Ledger,
    /// The cut list as CSV.
    CutList,
}

/// What was made.
#[derive(Serialize, Deserialize)]
pub(super) struct PaperAnswer {
    /// [`PAPER_PROTOCOL`] of the sender.
    pub paper_protocol: u32,
    /// The asking's id.
    pub id: u32,
    /// Its text; none where there is nothing to make.
    pub text: Option<String>,
}
