//! The keys of what is said on the handover sheet, in the cut list and in the files that leave the page.

use crate::report::cut_list::{PartKind, PipePiece};
use crate::units::Length;

/// A fixed text of the handover sheet, its panel and its files.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum HandoverLabel {
    Heading,
    Hint,
    ReadBy,
    Customer,
    Trade,
    Language,
    Paper,
    Letter,
    A4,
    Date,
    MadeFor,
    MadeBy,
    Remarks,
    Stock,
    StockHint,
    TextsHint,
    Preview,
    PreviewWait,
    PreviewFailed,
    Print,
    PrintHint,
    SaveHtml,
    SaveDrawingSvg,
    SaveDrawingPng,
    SavePressureSvg,
    SaveHeatSvg,
    SaveLedgerCsv,
    SaveCutListCsv,
    Files,
    FilesHint,
    NotSaved,
    SheetTitle,
    DrawingHeading,
    DrawingName,
    FoundHeading,
    FiguresHeading,
    ColumnFigure,
    ColumnClean,
    ColumnBand,
    ColumnBefore,
    ColumnAfter,
    ColumnOffered,
    TakenNote,
    OfferedNote,
    PredictedNote,
    CodeHeading,
    ColumnSection,
    ColumnRule,
    ColumnVerdict,
    ColumnMeasured,
    OnSiteHeading,
    Seen,
    NotSeen,
    StepsHeading,
    NothingToDo,
    LedgerHeading,
    ColumnNumber,
    ColumnLength,
    ColumnLossLow,
    ColumnLossHigh,
    PartsHeading,
    ColumnPart,
    ColumnPartSize,
    ColumnCount,
    ColumnPartLength,
    CutsHeading,
    ColumnStock,
    ColumnCuts,
    ColumnLeft,
    TooLong,
    PipeNotKnown,
    SourcesHeading,
    BandMeaning,
    SignHeading,
    Signature,
    CsvPart,
    CsvCut,
    CsvKind,
    CsvFromPart,
    AlongTheRun,
    FileLedger,
    FileCutList,
    FilePressure,
    FileHeat,
    FileSheet,
}

/// Something said on the handover sheet.
#[derive(Debug, Clone, Copy)]
pub enum HandoverMessage<'a> {
    /// A fixed text.
    Label(HandoverLabel),
    /// A part by its name.
    Part(&'a PartKind),
    /// How large a part is; empty where its name says all.
    PartSize(&'a PartKind),
    /// What a clean run moves, as shown.
    CleanRun {
        /// Airflow.
        airflow: &'a str,
        /// Back pressure.
        back_pressure: &'a str,
    },
    /// The scale of a drawing, one to so many, and how to print it.
    Scale(u32),
    /// A piece of pipe by the straight that it is for, and its cut length.
    Cut(&'a PipePiece),
    /// How cut lengths are counted.
    Allowance {
        /// What of a cut length goes into the next part.
        crimped_end: Length,
    },
    /// What is bought, what of it is used, and how near that is to the least.
    Waste {
        /// Bought.
        bought: Length,
        /// Cut.
        used: Length,
        /// At most so much over the least that could be bought; none where nothing less could.
        over_least: Option<Length>,
    },
    /// A rule that is not kept, to be put right: its topic, its section, and what it asks and was measured,
    /// as said.
    PutRight(&'a str, &'a str, &'a str),
    /// A rule that cannot be told, to be settled.
    Settle(&'a str, &'a str),
    /// So many rules have to be looked at on site.
    LookOnSite(usize),
    /// A run to be taken in place of this one, as said.
    ChangeRun(&'a str),
    /// A fault that is likely, with its odds, as said.
    Likely(&'a str, &'a str),
    /// What the run moves now, of the clean run's airflow, as said.
    MovesNow(&'a str),
    /// Nothing is wrong, with its odds, as said.
    NothingWrong(&'a str),
    /// How many findings of the code check there are, and by which rules, as said.
    CodeFound(&'a str, &'a str),
}
