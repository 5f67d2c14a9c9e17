//! The keys of the code check's fixed texts.

/// A fixed text of the code check.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum CodeLabel {
    FindingsHeading,
    OnSiteHeading,
    OnSiteHint,
    ShowOnDrawing,
    SourceHeading,
    SideBySide,
    SideBySideHint,
    ColumnRuleSet,
    ColumnPath,
    ColumnMeasured,
    ColumnDeductions,
    ColumnTotal,
    ColumnLimit,
    ColumnMargin,
    ColumnVerdict,
    PathCounts,
    PathLeftOut,
    Chosen,
    CodeAgainstAir,
    CodeAgainstAirHint,
    ColumnAir,
    ColumnCode,
    ColumnTimes,
    NotCounted,
    WholeRun,
    MakerHeading,
    MakerHint,
    NotTyped,
    AdviceHeading,
    LabelHeading,
    LabelAsked,
    LabelNotAsked,
    LabelCardTitle,
    LabelCardLength,
    LabelCardBy,
    LabelCardPlace,
    LabelPrint,
    NotCovered,
}
