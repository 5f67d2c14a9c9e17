//! Fixed texts about two runs side by side, lessons and links.

use crate::report::words::SideLabel;

pub(super) const fn side_label(key: SideLabel) -> &'static str {
    match key {
        SideLabel::Heading => "Side by side",
        SideLabel::End => "End side by side",
        SideLabel::First => "First run",
        SideLabel::Second => "Second run",
        SideLabel::ChangedHere => "changes are made here",
        SideLabel::ChangeThis => "Change this one",
        SideLabel::Beside => "Take it beside the present run",
        SideLabel::FirstFrom => "Set beside it",
        SideLabel::CopyOfThis => "A copy of this run",
        SideLabel::KeptJobs => "A kept job",
        SideLabel::Lessons => "A lesson",
        SideLabel::LessonFile => "Open a lesson's file",
        SideLabel::LessonFailed => {
            "The lesson could not be fetched. Once the page says Ready offline, lessons open without a network."
        }
        SideLabel::FullScreen => "Full screen",
        SideLabel::Differences => "What differs",
        SideLabel::NothingDiffersHint => {
            "Change one thing: press an elbow on the drawing and choose another kind for it."
        }
        SideLabel::More => "and more",
        SideLabel::Figures => "Both runs in figures, at likely values",
        SideLabel::ColumnFigure => "Figure",
        SideLabel::ColumnDifference => "Second less first",
        SideLabel::NotThere => "not there",
        SideLabel::Hidden => "hidden",
        SideLabel::Pressures => "Pressure line of both, on one scale",
        SideLabel::GuessFirst => "Guess first",
        SideLabel::GuessHint => {
            "The second run's figures are hidden until a guess is in. Several may guess."
        }
        SideLabel::GuessWhat => "What is guessed, of the second run",
        SideLabel::GuessField => "Guess",
        SideLabel::GuessAdd => "Add the guess",
        SideLabel::GuessShow => "Show the figures",
        SideLabel::GuessAgain => "Hide them and guess again",
        SideLabel::GuessNone => "No guess is in yet.",
        SideLabel::GuessTakeOut => "Take out",
        SideLabel::GuessList => "Guesses",
        SideLabel::Hint => "A hint",
        SideLabel::Answer | SideLabel::LessonAnswer => "Answer",
        SideLabel::MakeLesson => "Make a lesson of these two",
        SideLabel::MakeLessonHint => {
            "The file holds both runs as they are now, with their pictures, and these texts. Anybody with this page can open it."
        }
        SideLabel::LessonName => "Name of the lesson",
        SideLabel::LessonQuestion => "Question",
        SideLabel::LessonHint => "Hint",
        SideLabel::LessonSave => "Save the lesson as a file",
        SideLabel::LessonOneElbow => "One elbow more",
        SideLabel::LessonSharpOrLong => "Sharp or long radius",
        SideLabel::LessonPushedTogether => "Flexible duct pushed together",
        SideLabel::LessonSameCodeLength => "The same code length",
        SideLabel::LessonHotOrCold => "Hot air and cold air",
        SideLabel::LessonBlockedFlap => "A flap that sticks",
        SideLabel::LinkSend => "Send as a link",
        SideLabel::LinkMeaning => {
            "The link holds the whole job as it is now, readings and notes too. Whoever has it can open the job; no server holds it. Later changes need a new link."
        }
        SideLabel::LinkPicturesStay => {
            "Pictures are too large for a link and are left out of it. A file has them."
        }
        SideLabel::LinkMaking => "The link is being made.",
        SideLabel::LinkField => "The link",
        SideLabel::LinkCopy => "Copy the link",
        SideLabel::LinkCopied => "The link is copied.",
        SideLabel::LinkNotCopied => {
            "This browser did not let the page copy it: the link is selected, copy it from there."
        }
        SideLabel::LinkShare => "Hand on",
        SideLabel::LinkNoAnswer => "The link could not be made. Save a file instead.",
        SideLabel::LinkNotOpened => {
            "The job in the link could not be unfolded. Reload the page and open the link again, or ask for the file."
        }
    }
}
