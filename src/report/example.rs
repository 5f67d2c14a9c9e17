//! The example with its words.

use super::words::{Label, Language, Message, say};
use crate::plan::{Plan, example};
use crate::units::UnitSystem;

/// The example that the page opens with, as told in English. Invented, and its note says so.
pub fn the_example() -> Plan {
    let text = |label: Label| say(Language::English, UnitSystem::Si, Message::Label(label));
    example(
        text(Label::ExampleTitle),
        text(Label::ExampleNote),
        text(Label::ExampleObstacle),
    )
}
