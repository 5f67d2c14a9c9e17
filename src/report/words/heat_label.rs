//! The keys of the fixed texts of heat and moisture.

/// A fixed text of heat and moisture.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum HeatLabel {
    Line,
    LineMeaning,
    LineAir,
    LineWall,
    LineDewPoint,
    Wet,
    AirKeepsTemperature,
    Phase,
    PhaseHint,
    PhaseNone,
    ExhaustHumidity,
    AlongRun,
    AlongRunCools,
    AlongRunKeeps,
    Insulation,
    InsulationHint,
    Metal,
    MetalGalvanized,
    MetalAluminium,
    AtEnd,
    ColdestWall,
    DewPoint,
    Water,
    DryingTime,
}
