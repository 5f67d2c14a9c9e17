//! What is said to other programs and at a terminal.

use crate::report::answer::{Unanswered, WishError};
use crate::report::words::AnswerMessage;

pub(super) fn answer(message: AnswerMessage<'_>) -> String {
    match message {
        AnswerMessage::Unanswered(error) => unanswered(error),
        AnswerMessage::Wish(error) => wish(error),
        AnswerMessage::Progress { done, of, refused } => progress(done, of, refused),
    }
}

fn unanswered(error: &Unanswered) -> String {
    match error {
        Unanswered::NoVisit => "The plan has no visit with readings.".to_owned(),
        Unanswered::NoSuchVisit { id } => format!("The plan has no visit called “{id}”."),
        Unanswered::NoPlanInside => {
            "The folder holds no file whose name ends in .json or .jsonl.".to_owned()
        }
    }
}

fn wish(error: &WishError) -> String {
    match error {
        WishError::Field { path, detail } => format!("At {path}: {detail}."),
        WishError::OutOfRange {
            path,
            value,
            least,
            greatest,
        } => format!("{path} is {value}; it can be from {least} to {greatest}."),
    }
}

fn progress(done: usize, of: Option<usize>, refused: usize) -> String {
    let all = of.map_or_else(String::new, |of| format!(" of {of}"));
    let without = match refused {
        0 => String::new(),
        some => format!(", {some} without an answer"),
    };
    format!("{done}{all} plans{without}")
}
