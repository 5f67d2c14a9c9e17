//! The words of two runs side by side, of lessons and of links.

use super::store::{Store, label_text};
use crate::report::words::{Label, Message, SideLabel, SideMessage};

/// A fixed text.
pub(super) fn side_text(label: SideLabel) -> String {
    label_text(Label::Side(label))
}

/// A text with arguments.
pub(super) fn say(store: Store, message: SideMessage<'_>) -> String {
    store.say(Message::Side(message))
}
