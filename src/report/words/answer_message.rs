//! What is said to other programs and at a terminal.

use crate::report::answer::{Unanswered, WishError};

/// Something said to other programs.
#[derive(Debug, Clone, Copy)]
pub enum AnswerMessage<'a> {
    /// Why a plan has no answer to what was asked.
    Unanswered(&'a Unanswered),
    /// Why it cannot be asked so.
    Wish(&'a WishError),
    /// How far the terminal tool is.
    Progress {
        /// Plans that are done.
        done: usize,
        /// Plans in all; none where that is not known yet.
        of: Option<usize>,
        /// How many of them have no answer.
        refused: usize,
    },
}
