//! The keys of fixed texts.

use crate::plan::ValueError;

/// A fixed text of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum Label {
    ProgramName,
    Tagline,
    ExampleTitle,
    ExampleNote,
    ExampleObstacle,
    BlankTitle,
    OpenExample,
    OpenBlank,
    OpenFile,
    SaveFile,
    SaveDrawing,
    Undo,
    Redo,
    Units,
    UnitsUsCustomary,
    UnitsSi,
    Drawing,
    DrawingHint,
    DrawingKeys,
    ZoomIn,
    ZoomOut,
    ZoomFit,
    Totals,
    Airflow,
    BackPressure,
    BackPressureHint,
    Velocity,
    CodeLength,
    DevelopedLength,
    EquivalentLength,
    NoAirflowFigure,
    Likely,
    BandPending,
    BandMeaning,
    Ledger,
    LedgerInRunOrder,
    LedgerRanked,
    LedgerOrder,
    ColumnElement,
    ColumnSize,
    ColumnLoss,
    ColumnShare,
    ColumnCodeDeduction,
    ColumnRank,
    ColumnSum,
    Selected,
    NothingSelected,
    LegLength,
    LegLengthHint,
    RiseHere,
    RiseHint,
    ElbowKind,
    ElbowAfterRiserKind,
    ElbowSegmented,
    ElbowSmooth,
    ElbowRadius,
    InsertBend,
    DeleteBend,
    LossCoefficient,
    Roughness,
    SourceHeading,
    AirAndSite,
    AirDriver,
    DriverTypicalBlower,
    DriverStated,
    Altitude,
    OutdoorTemperature,
    ExhaustTemperature,
    CodeCheck,
    RuleSet,
    PathThroughFittings,
    MeasuredLength,
    Deductions,
    CodeSourceNote,
    Findings,
    Cautions,
    ScopeNote,
    PlanKept,
    Dismiss,
    Legend,
    LegendLow,
    LegendHigh,
    ShareOfLoss,
}

/// A step that can be undone, as the undo button names it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each key says what it stands for")]
pub enum ActionName {
    MoveCorner,
    MoveTermination,
    InsertBend,
    DeleteBend,
    SetLegLength,
    SetRise,
    SetElbow,
    SetAir,
    SetCode,
    OpenPlan,
}

/// Why an action was not taken; nothing was changed.
#[derive(Debug, Clone, PartialEq)]
pub enum Refusal {
    /// The run must end somewhere.
    TerminationStays,
    /// There is no such element any more.
    NoSuchElement,
    /// The leg would be shorter than can be built.
    LegTooShort,
    /// The value cannot be.
    Value(ValueError),
}

/// Cautions that stand where they belong.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(missing_docs, reason = "each key says what it stands for")]
pub enum Caution {
    LintBurns,
    OutdoorsOnly,
    GasExhaust,
    BeforeOpening,
    CodeDecides,
}
