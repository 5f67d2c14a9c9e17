//! Code rules as facts, one file a rule set, and the findings that they give.
//!
//! Knows nothing of editing.

mod irc;
mod length;
mod verdict;

pub use irc::{IRC_2021_SOURCE, IRC_LENGTH_LIMIT, IRC_LENGTH_TABLE, LengthRow, irc_deduction};
pub use length::{CodeLength, code_length};
pub use verdict::{Deduction, DeductionNote, Doubt, Verdict};
