//! Words of the site readings on the page.

use super::store::Store;
use crate::diagnosis::{Cause, Test};
use crate::plan::{Entry, Measured, Spot, Visit};
use crate::report::SiteSpeaker;
use crate::report::words::{Language, Message, SiteLabel, SiteMessage, say};
use crate::units::{Shown, UnitSystem};
use leptos::prelude::*;

/// A fixed text.
pub(super) fn site_text(label: SiteLabel) -> String {
    let message = Message::Site(SiteMessage::Label(label));
    say(Language::English, UnitSystem::default(), message)
}

fn speak(store: Store, what: impl FnOnce(&SiteSpeaker<'_>) -> String) -> String {
    let units = store.units.get();
    store.steady.with(|results| {
        what(&SiteSpeaker {
            language: Language::English,
            units,
            elements: &results.figures.elements,
        })
    })
}

pub(super) fn say_cause(store: Store, cause: &Cause) -> String {
    speak(store, |speaker| speaker.cause(cause))
}

pub(super) fn say_test(store: Store, test: &Test) -> String {
    speak(store, |speaker| speaker.test(test))
}

pub(super) fn say_spot(store: Store, spot: &Spot) -> String {
    speak(store, |speaker| speaker.spot(spot))
}

/// An entry in one line, without its figure.
pub(super) fn say_entry(store: Store, entry: &Entry) -> String {
    speak(store, |speaker| speaker.entry(entry))
}

/// A visit in one line.
pub(super) fn say_visit(store: Store, number: usize, visit: &Visit) -> String {
    store.say(Message::Site(SiteMessage::Visit {
        number,
        date: &visit.date,
        entries: visit.entries.len(),
    }))
}

/// A figure of a reading, in SI, as the page shows it.
pub(super) fn shown(units: UnitSystem, measured: &Measured, value: f64) -> Shown {
    let speaker = SiteSpeaker {
        language: Language::English,
        units,
        elements: &[],
    };
    speaker.shown(measured, value)
}
