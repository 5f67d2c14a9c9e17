//! The keys of what is said about readings on site.

use crate::diagnosis::{CauseKind, Caveat, CleanReading, Objection, Test, TestCaution};
use crate::plan::{Conditions, Found, Pattern, Preparation, Reading, Spot, Taken};
use crate::system::ElementKind;

/// A fixed text of the site readings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum SiteLabel {
    Heading,
    Hint,
    PreparationHeading,
    AlwaysHeats,
    EntryHeading,
    Quantity,
    StaticPressure,
    VelocityVane,
    VelocityPitot,
    Temperature,
    At,
    Value,
    ValueHint,
    ValuesHint,
    Pattern,
    AgainstOutdoors,
    Conditions,
    Heat,
    ScreenNotClean,
    DrumNotEmpty,
    FlapHeld,
    DoorOpen,
    OpenJoint,
    NoJointOpen,
    Add,
    EntriesHeading,
    ColumnRead,
    ColumnClean,
    ColumnAgainst,
    NothingYet,
    Remove,
    OddsHeading,
    OddsHint,
    NothingWrong,
    NothingThatMatters,
    AirflowNow,
    WouldRead,
    Mended,
    NextHeading,
    RunnerUp,
    Settled,
    EnterReading,
    FoundClear,
    FoundBlocked,
    FitBlower,
    FitBlowerHint,
    NewVisit,
    Date,
    Note,
    WorkingOut,
    LikelyPlaces,
    VisitsHeading,
    EarlierVisit,
    AfterHeading,
    AfterHint,
    ColumnBefore,
    ColumnAfter,
    AirflowBefore,
    PicturesHeading,
    PicturesHint,
    AddBefore,
    AddAfter,
    PictureUnreadable,
    Print,
    PrintHint,
    PrintNumber,
    PrintEntry,
    PrintRank,
    PrintFault,
    PrintOdds,
    PrintFreeArea,
    PrintAirflow,
    PrintSettled,
    PrintFoot,
    Done,
    NotDone,
}

/// An element by its place in the run and what it is.
pub type Placed<'a> = (usize, &'a ElementKind);

/// What the clean run's figure beside a reading rests on.
#[derive(Debug, Clone, Copy)]
pub struct CleanGrounds<'a> {
    /// The reading.
    pub reading: &'a Reading,
    /// The figure, its standard error and the reading's own conditions.
    pub clean: &'a CleanReading,
    /// From how many draws its band is read.
    pub draws: usize,
}

/// Something said about readings on site.
#[derive(Debug, Clone, Copy)]
pub enum SiteMessage<'a> {
    /// A fixed text.
    Label(SiteLabel),
    /// A line of the preparation.
    Preparation(Preparation),
    /// A fault at its place.
    Cause(CauseKind, Option<Placed<'a>>),
    /// A test, with the element that it names.
    Test(&'a Test, Option<Placed<'a>>),
    /// A caution at a test.
    Caution(TestCaution),
    /// What to bear in mind.
    Caveat(Caveat),
    /// Why a reading is refused.
    Refused(Objection),
    /// Why a reading is doubted.
    Doubted(Objection),
    /// A probability in a word and a figure.
    Odds(f64),
    /// The share of its area that a fault leaves free: likely, low, high.
    FreeArea(f64, f64, f64),
    /// The share of the airflow that is left.
    AirflowLeft(f64),
    /// The airflow now as a share of the clean run's: mean, low, high.
    AirflowNow(f64, f64, f64),
    /// A place to read at, with the element that begins there.
    Spot(&'a Spot, Option<Placed<'a>>),
    /// What is out of the usual in a reading's conditions; empty for nothing.
    Conditions(&'a Conditions),
    /// Where velocities were read.
    Pattern(Pattern),
    /// What a look showed.
    Look(Found, Option<Placed<'a>>),
    /// Something was mended; none for the whole run.
    Done(CauseKind, Option<Placed<'a>>),
    /// How many of the preparation's lines are ticked.
    Prepared(usize, usize),
    /// So many points of the blower's curve were read.
    BlowerPoints(usize),
    /// What a fault would make of a reading: as read, as expected.
    WouldRead(&'a str, &'a str),
    /// What a verdict stands against: the limit and the margin, as shown.
    Limit(&'a str, &'a str),
    /// A visit in one line.
    Visit {
        /// Its number, from 1.
        number: usize,
        /// Its date, as typed.
        date: &'a str,
        /// How many entries it has.
        entries: usize,
    },
    /// A picture by when it was taken and its number, from 1.
    Picture(Taken, usize),
    /// The airflow that a repair gave back, as shown.
    Restored(&'a str),
    /// Where the clean run's figure beside a reading comes from.
    CleanGrounds(CleanGrounds<'a>),
    /// Where a fault's odds come from: before anything was read, and now.
    OddsGrounds(f64, f64),
    /// Where the airflow now comes from, with the clean run's as shown.
    AirflowGrounds(&'a str),
    /// What a test takes and tells.
    Worth {
        /// Its effort.
        effort: f64,
        /// What it tells on average, bits: so often it halves the doubt.
        bits: f64,
    },
}
