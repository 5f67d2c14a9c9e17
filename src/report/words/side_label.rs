//! The keys of what is said about two runs side by side, about lessons and about links.

use crate::plan::{Difference, LessonError, LinkError, Part, Quantity};
use crate::report::GuessSpread;

/// A fixed text about two runs side by side, lessons or links.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[allow(
    missing_docs,
    reason = "each key says what it stands for; the words are in the language files"
)]
pub enum SideLabel {
    Heading,
    End,
    First,
    Second,
    ChangedHere,
    ChangeThis,
    Beside,
    FirstFrom,
    CopyOfThis,
    KeptJobs,
    Lessons,
    LessonFile,
    LessonFailed,
    FullScreen,
    Differences,
    NothingDiffersHint,
    More,
    Figures,
    ColumnFigure,
    ColumnDifference,
    NotThere,
    Hidden,
    Pressures,
    GuessFirst,
    GuessHint,
    GuessWhat,
    GuessField,
    GuessAdd,
    GuessShow,
    GuessAgain,
    GuessNone,
    GuessTakeOut,
    GuessList,
    Hint,
    Answer,
    MakeLesson,
    MakeLessonHint,
    LessonName,
    LessonQuestion,
    LessonHint,
    LessonAnswer,
    LessonSave,
    LessonOneElbow,
    LessonSharpOrLong,
    LessonPushedTogether,
    LessonSameCodeLength,
    LessonHotOrCold,
    LessonBlockedFlap,
    LinkSend,
    LinkMeaning,
    LinkPicturesStay,
    LinkMaking,
    LinkField,
    LinkCopy,
    LinkCopied,
    LinkNotCopied,
    LinkShare,
    LinkNoAnswer,
    LinkNotOpened,
}

/// Something about two runs side by side, lessons or links.
#[derive(Debug, Clone, Copy)]
pub enum SideMessage<'a> {
    /// A figure by its name.
    Quantity(Quantity),
    /// How many things differ, and what that means for a class.
    DifferenceCount(usize),
    /// One thing that differs.
    Difference(&'a Difference),
    /// So many elements are the same in both runs.
    SameElements(usize),
    /// A difference as shown and as a share of the first run's figure; none where that says nothing.
    More {
        /// As shown, without a sign.
        shown: &'a str,
        /// Whether the second has more.
        is_more: bool,
        /// In hundredths of the first, without a sign; none where that is nought.
        percent: Option<f64>,
    },
    /// From where to where a difference lies, as shown.
    MoreBand(&'a str),
    /// Where an element stands: its part, and the corner that it is at or leads to, 0 for the outlet.
    Place {
        /// Which part.
        part: Part,
        /// Which corner.
        corner: usize,
    },
    /// How guesses spread and where the figure lies; all as shown.
    Guesses {
        /// The counts.
        spread: &'a GuessSpread,
        /// The least.
        least: &'a str,
        /// The one in the middle.
        median: &'a str,
        /// The greatest.
        greatest: &'a str,
        /// The figure itself.
        figure: &'a str,
    },
    /// So many letters are in a link.
    LinkLetters(usize),
    /// Why there is no link, or no job in one.
    Link(&'a LinkError),
    /// Why a lesson could not be read.
    Lesson(&'a LessonError),
}
