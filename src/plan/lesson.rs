//! A lesson: two runs, a question about the second, a hint and an answer, in a file of its own that a
//! trainer can make and hand on.

use super::file::{File, FileError, from_value, parsed};
use super::{Field, Plan};
use serde::{Deserialize, Serialize};
use serde_json::Value;

const FORMAT: &str = "elbowroom-lesson";
const VERSION: u64 = 1;
/// Two plans with a picture each and their texts, bytes.
const LARGEST_FILE: usize = 9 << 20;

/// A figure of a run that can be asked about, and stands in a table of two runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// Airflow at the dryer's outlet.
    Airflow,
    /// Static pressure at the dryer's outlet.
    BackPressure,
    /// Mean velocity in the duct.
    Velocity,
    /// Sum of the elements' losses.
    Loss,
    /// What the weight of the air in the rise adds.
    Draught,
    /// Straights and arcs together.
    DevelopedLength,
    /// Physical equivalent length of all elements.
    EquivalentLength,
    /// Length by the code, deductions added.
    CodeLength,
}

impl Quantity {
    /// All of them, in the order of the table.
    pub const ALL: [Self; 8] = [
        Self::Airflow,
        Self::BackPressure,
        Self::Velocity,
        Self::Loss,
        Self::Draught,
        Self::DevelopedLength,
        Self::EquivalentLength,
        Self::CodeLength,
    ];
}

/// Two runs and what a class is asked about them.
#[derive(Debug, Clone, PartialEq)]
pub struct Lesson {
    /// Its texts and what is asked.
    pub text: LessonText,
    /// The run that is shown with its figures.
    pub first: Plan,
    /// The run that is asked about.
    pub second: Plan,
}

/// What a lesson says.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct LessonText {
    /// Its name.
    pub title: String,
    /// What the class is asked.
    pub question: String,
    /// What helps to think; may be empty.
    pub hint: String,
    /// What is said once the figures are shown; may be empty.
    pub answer: String,
    /// The figure of the second run that is guessed.
    pub asks: Quantity,
}

/// A text of a lesson.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LessonPart {
    /// Its name.
    Title,
    /// Its question.
    Question,
    /// Its hint.
    Hint,
    /// Its answer.
    Answer,
}

/// Why a lesson could not be read. The open plan stays as it is.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum LessonError {
    /// JSON, but it does not say that it is a lesson.
    NotALesson,
    /// The file as a whole.
    File(FileError),
    /// One of its texts has too few letters or too many.
    Text {
        /// Which.
        text: LessonPart,
        /// What it has.
        letters: usize,
        /// What it may have.
        field: Field,
    },
    /// Its first run.
    First(FileError),
    /// Its second run.
    Second(FileError),
}

/// Reads a lesson from the bytes of its file.
///
/// # Errors
///
/// A [`LessonError`] for anything else.
///
/// ```
/// use elbowroom::plan::{Lesson, LessonText, Quantity, blank, read_lesson, write_lesson};
/// let lesson = Lesson {
///     text: LessonText {
///         title: "Nothing changed".into(),
///         question: "What is the airflow of the second run?".into(),
///         hint: String::new(),
///         answer: "That of the first.".into(),
///         asks: Quantity::Airflow,
///     },
///     first: blank("First".into()),
///     second: blank("Second".into()),
/// };
/// assert_eq!(read_lesson(write_lesson(&lesson).as_bytes()), Ok(lesson));
/// ```
pub fn read_lesson(bytes: &[u8]) -> Result<Lesson, LessonError> {
    let mut value = parsed(bytes, LARGEST_FILE).map_err(LessonError::File)?;
    let head = value.as_object_mut().ok_or(LessonError::NotALesson)?;
    if head.remove("format").as_ref().and_then(Value::as_str) != Some(FORMAT) {
        return Err(LessonError::NotALesson);
    }
    match head.remove("version") {
        Some(version) if version.as_u64() == Some(VERSION) => {}
        found => {
            let unknown = FileError::unknown_version(found.as_ref(), VERSION);
            return Err(LessonError::File(unknown));
        }
    }
    // What is not there is no plan.
    let first = head.remove("first").unwrap_or_default();
    let second = head.remove("second").unwrap_or_default();
    let text = FileError::in_field(value).map_err(LessonError::File)?;
    within_bounds(&text)?;
    Ok(Lesson {
        text,
        first: from_value(first).map_err(LessonError::First)?,
        second: from_value(second).map_err(LessonError::Second)?,
    })
}

/// The lesson as the text of its file.
pub fn write_lesson(lesson: &Lesson) -> String {
    #[derive(Serialize)]
    struct LessonFile<'a> {
        format: &'static str,
        version: u64,
        #[serde(flatten)]
        text: &'a LessonText,
        first: File<'a>,
        second: File<'a>,
    }
    let file = LessonFile {
        format: FORMAT,
        version: VERSION,
        text: &lesson.text,
        first: File::of(&lesson.first),
        second: File::of(&lesson.second),
    };
    // As with a plan: an empty text would be refused on reading.
    let mut text = serde_json::to_string_pretty(&file).unwrap_or_default();
    text.push('\n');
    text
}

/// Whether each of a lesson's texts has as many letters as it may.
///
/// # Errors
///
/// The first that has not.
#[allow(clippy::cast_precision_loss, reason = "a few thousand letters")]
pub fn within_bounds(text: &LessonText) -> Result<(), LessonError> {
    let texts = [
        (LessonPart::Title, &text.title, Field::LESSON_NAME),
        (LessonPart::Question, &text.question, Field::LESSON_QUESTION),
        (LessonPart::Hint, &text.hint, Field::LESSON_TEXT),
        (LessonPart::Answer, &text.answer, Field::LESSON_TEXT),
    ];
    for (text, written, field) in texts {
        let letters = written.chars().count();
        if !field.holds(letters as f64) {
            return Err(LessonError::Text {
                text,
                letters,
                field,
            });
        }
    }
    Ok(())
}
