//! What the page asks to have made for paper and files, and what comes back: it is made in the worker's
//! program, so that the page's own stays small.

use crate::plan::Plan;
use crate::report::Paper;
use crate::report::handover::SheetReading;
use crate::search::Suggestion;
use crate::units::UnitSystem;
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
    pub wish: PaperWish,
    /// What is wanted.
    pub what: PaperKind,
}

/// How it is wanted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(super) struct PaperWish {
    /// Whom it is for.
    pub reading: SheetReading,
    /// The paper.
    pub paper: Paper,
    /// The language.
    pub language: PaperLanguage,
    /// The units.
    pub units: UnitSystem,
}

/// A language that a sheet can be had in, by name alone: the page's program has no words of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub(super) enum PaperLanguage {
    English,
    Spanish,
}

impl PaperLanguage {
    /// Every one.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// Its tag after BCP 47.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }
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
