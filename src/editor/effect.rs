//! What the page has to do after an action.

use crate::report::words::{ActionName, Refusal};

/// Something for the page to do.
#[derive(Debug, Clone, PartialEq)]
pub enum Effect {
    /// A change is finished: read the new totals aloud.
    Announce(ActionName),
    /// Say why nothing was changed.
    Refuse(Refusal),
}
