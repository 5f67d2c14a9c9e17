//! Why there is no answer.

use super::WishError;
use crate::plan::FileError;
use crate::report::words::{AnswerMessage, Language, Message, say};
use crate::units::UnitSystem;
use serde::Serialize;

/// What a plan lacks that it was asked about.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub enum Unanswered {
    /// It has no visit.
    NoVisit,
    /// It has visits, but none of this id.
    NoSuchVisit {
        /// The id that was asked for.
        id: String,
    },
    /// A folder holds no file that could be a plan.
    NoPlanInside,
}

/// Why there is no answer, in words and, where one field is at fault, by its path.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Refused {
    /// A sentence for a person.
    pub message: String,
    /// The field at fault, such as `run.points[2].x_m`; `.` is the whole file.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub path: Option<String>,
}

impl Refused {
    fn said(message: Message<'_>, path: Option<&str>) -> Self {
        Self {
            message: say(Language::English, UnitSystem::Si, message),
            path: path.map(str::to_owned),
        }
    }
}

impl From<&FileError> for Refused {
    fn from(error: &FileError) -> Self {
        Self::said(Message::File(error), error.path())
    }
}

impl From<&Unanswered> for Refused {
    fn from(error: &Unanswered) -> Self {
        Self::said(Message::Answer(AnswerMessage::Unanswered(error)), None)
    }
}

impl From<&WishError> for Refused {
    fn from(error: &WishError) -> Self {
        Self::said(
            Message::Answer(AnswerMessage::Wish(error)),
            Some(error.path()),
        )
    }
}
