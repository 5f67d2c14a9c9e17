//! The example with its words.

use super::words::{Label, fixed_text};
use crate::plan::{Plan, example};

/// The example that the page opens with, as told in English. Invented, and its note says so.
pub fn the_example() -> Plan {
    const TITLE: &str = fixed_text(Label::ExampleTitle);
    const NOTE: &str = fixed_text(Label::ExampleNote);
    const OBSTACLE: &str = fixed_text(Label::ExampleObstacle);
    example(TITLE.to_owned(), NOTE.to_owned(), OBSTACLE.to_owned())
}
