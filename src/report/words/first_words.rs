//! What a first look at a run says, a way for each message: a program that says these alone carries
//! their words and no others.

use super::language::Language;
use super::{ActionName, Label, Message, Refusal, en};
use crate::report::Figures;
use crate::rules::Verdict;
use crate::scene::Text;
use crate::source::Standing;
use crate::system::Subject;
use crate::units::UnitSystem;

/// A fixed text in English, the page's language. Where it is a constant of the program that names it,
/// no other text comes along.
pub const fn fixed_text(label: Label) -> &'static str {
    en::label(label)
}

/// The words of a first look in a language, with figures in some units.
#[derive(Debug, Clone, Copy)]
pub struct FirstWords {
    /// The language.
    pub language: Language,
    /// The units.
    pub units: UnitSystem,
}

impl FirstWords {
    /// [`Message::ActionName`].
    pub fn action_name(self, name: ActionName) -> String {
        self.tell(Message::ActionName(name), |_| {
            en::action_name(name).to_owned()
        })
    }

    /// [`Message::Refusal`].
    pub fn refusal(self, why: &Refusal) -> String {
        self.tell(Message::Refusal(why), |units| en::refusal(units, why))
    }

    /// [`Message::Drawing`].
    pub fn drawing(self, text: &Text) -> String {
        self.tell(Message::Drawing(text), |units| en::drawing(units, text))
    }

    /// [`Message::Verdict`].
    pub fn verdict(self, verdict: Verdict) -> String {
        self.tell(Message::Verdict(verdict), |_| {
            en::verdict(verdict).to_owned()
        })
    }

    /// [`Message::Unpublished`].
    pub fn unpublished(self, grounds: &[(Subject, Standing)]) -> String {
        self.tell(Message::Unpublished(grounds), |_| en::unpublished(grounds))
    }

    /// [`Message::Band`].
    pub fn band(self, low: &str, high: &str) -> String {
        self.tell(Message::Band { low, high }, |_| en::band(low, high))
    }

    /// [`Message::NewTotals`].
    pub fn new_totals(self, airflow: &str, back_pressure: &str) -> String {
        let message = Message::NewTotals {
            airflow,
            back_pressure,
        };
        self.tell(message, |_| en::new_totals(airflow, back_pressure))
    }

    /// [`Message::Dominant`] of the element of `rank`, if there is one.
    pub fn dominant(self, figures: &Figures, rank: usize) -> Option<String> {
        let message = Message::dominant(figures, rank)?;
        let Message::Dominant {
            element,
            share,
            equivalent_length,
            code_deduction,
            ..
        } = message
        else {
            return None;
        };
        Some(self.tell(message, |units| {
            en::dominant(
                units,
                rank,
                *element,
                share,
                equivalent_length,
                code_deduction,
            )
        }))
    }

    fn tell(self, message: Message<'_>, english: impl FnOnce(UnitSystem) -> String) -> String {
        match self.language {
            Language::English => english(self.units),
            Language::Translated(translation) => translation.text(self.units, message),
        }
    }
}
