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

/// A figure of heat and moisture whose coming about can be asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeatFormula {
    /// Air at the termination.
    AtEnd,
    /// The coldest wall.
    ColdestWall,
    /// Dew point at the dryer.
    DewPoint,
    /// Water that condenses.
    Water,
}

impl HeatFormula {
    /// Every one of them, in the order in which they are shown.
    pub const ALL: [Self; 4] = [Self::AtEnd, Self::ColdestWall, Self::DewPoint, Self::Water];

    /// What it is called.
    pub const fn label(self) -> HeatLabel {
        match self {
            Self::AtEnd => HeatLabel::AtEnd,
            Self::ColdestWall => HeatLabel::ColdestWall,
            Self::DewPoint => HeatLabel::DewPoint,
            Self::Water => HeatLabel::Water,
        }
    }
}
