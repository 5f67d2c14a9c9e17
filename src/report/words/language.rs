//! The languages that there are words for.

use super::{Message, en, es};
use crate::units::UnitSystem;

/// A language that there are words for.
///
/// English is carried by every program, since the page speaks it. Any other comes with its words, so
/// that a program carries those languages alone that it names: the page asks for a sheet in Spanish
/// by its tag and has no Spanish words of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// American English.
    #[default]
    English,
    /// Another language.
    Translated(&'static Translation),
}

/// The words of a language other than English.
#[derive(Debug)]
pub struct Translation {
    /// Its tag after BCP 47, as HTML's `lang` takes it.
    tag: &'static str,
    /// Whether somebody whose first language it is has still to read it through.
    awaits_review: bool,
    /// Its words.
    text: fn(UnitSystem, Message<'_>) -> String,
}

impl Translation {
    /// `message` in this language.
    pub(super) fn text(&self, units: UnitSystem, message: Message<'_>) -> String {
        (self.text)(units, message)
    }
}

static SPANISH: Translation = Translation {
    tag: "es",
    awaits_review: true,
    text: es::text,
};

impl PartialEq for Translation {
    fn eq(&self, other: &Self) -> bool {
        self.tag == other.tag
    }
}

impl Eq for Translation {}

impl Language {
    /// Spanish as the trade speaks it in Mexico and the United States.
    pub const SPANISH: Self = Self::Translated(&SPANISH);

    /// Every language; a program that names this carries the words of all.
    pub const ALL: [Self; 2] = [Self::English, Self::SPANISH];

    /// Its tag after BCP 47, as HTML's `lang` takes it.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Translated(translation) => translation.tag,
        }
    }

    /// The language of a tag; a program that calls this carries the words of all.
    pub fn of_tag(tag: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|language| language.tag() == tag)
    }

    /// Whether somebody whose first language it is has still to read it through.
    pub const fn awaits_review(self) -> bool {
        match self {
            Self::English => false,
            Self::Translated(translation) => translation.awaits_review,
        }
    }
}

/// `message` in `language`, with figures in `units`.
pub fn say(language: Language, units: UnitSystem, message: Message<'_>) -> String {
    match language {
        Language::English => en::text(units, message),
        Language::Translated(translation) => translation.text(units, message),
    }
}
