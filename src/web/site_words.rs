//! Words of the site readings: elements by their place in the run.

use super::store::Store;
use crate::diagnosis::{Cause, CauseKind, Test};
use crate::plan::{Done, ElementId, Entry, Look, Measured, Mended, Reading, Spot};
use crate::report::words::{Language, Message, SiteLabel, SiteMessage, say};
use crate::system::ElementKind;
use crate::units::{Pressure, Shown, Temperature, UnitSystem, Velocity};

/// A fixed text.
pub(super) fn site_text(label: SiteLabel) -> String {
    let message = Message::Site(SiteMessage::Label(label));
    say(Language::English, UnitSystem::default(), message)
}

/// An element's place in the run, from 1, and what it is.
pub(super) fn placed(store: Store, id: &ElementId) -> Option<(usize, ElementKind)> {
    store.steady.with(|results| {
        let mut elements = results.figures.elements.iter();
        let place = elements.position(|element| element.id == *id)?;
        Some((place + 1, results.figures.elements[place].element))
    })
}

fn say_at(
    store: Store,
    id: Option<&ElementId>,
    message: impl for<'a> FnOnce(Option<(usize, &'a ElementKind)>) -> SiteMessage<'a>,
) -> String
where
{
    let at = id.and_then(|id| placed(store, id));
    let at = at.as_ref().map(|(place, kind)| (*place, kind));
    store.say(Message::Site(message(at)))
}

pub(super) fn say_cause(store: Store, cause: &Cause) -> String {
    let kind = cause.kind;
    say_at(store, cause.element.as_ref(), |at| {
        SiteMessage::Cause(kind, at)
    })
}

pub(super) fn say_test(store: Store, test: &Test) -> String {
    let at = test.element().and_then(|id| placed(store, id));
    let at = at.as_ref().map(|(place, kind)| (*place, kind));
    store.say(Message::Site(SiteMessage::Test(test, at)))
}

pub(super) fn say_spot(store: Store, spot: &Spot) -> String {
    let id = match spot {
        Spot::Before(id) => Some(id),
        _ => None,
    };
    let at = id.and_then(|id| placed(store, id));
    let at = at.as_ref().map(|(place, kind)| (*place, kind));
    store.say(Message::Site(SiteMessage::Spot(spot, at)))
}

fn say_done(store: Store, done: &Done) -> String {
    let (kind, id) = match &done.what {
        Mended::LintScreen => (CauseKind::LintScreen, None),
        Mended::Blower => (CauseKind::Blower, None),
        Mended::Leak => (CauseKind::Leak, None),
        Mended::MakeUpAir => (CauseKind::RoomStarved, None),
        Mended::WholeRun => (CauseKind::Blockage, None),
        Mended::Element(id) => (CauseKind::Blockage, Some(id)),
    };
    say_at(store, id, |at| SiteMessage::Done(kind, at))
}

fn say_look(store: Store, look: &Look) -> String {
    let found = look.found;
    say_at(store, Some(&look.at), |at| SiteMessage::Look(found, at))
}

/// An entry in one line, without its figure.
pub(super) fn say_entry(store: Store, entry: &Entry) -> String {
    match entry {
        Entry::Look(look) => say_look(store, look),
        Entry::Done(done) => say_done(store, done),
        Entry::Reading(reading) => say_reading(store, reading),
    }
}

fn say_reading(store: Store, reading: &Reading) -> String {
    let what = match reading.measured {
        Measured::StaticPressure { .. } => SiteLabel::StaticPressure,
        Measured::Velocity { .. } => SiteLabel::VelocityVane,
        Measured::VelocityPressure { .. } => SiteLabel::VelocityPitot,
        Measured::Temperature { .. } => SiteLabel::Temperature,
    };
    let conditions = store.say(Message::Site(SiteMessage::Conditions(&reading.conditions)));
    let at = say_spot(store, &reading.at);
    let joint = reading.conditions.open_joint.as_ref();
    let joint = joint
        .map(|joint| say_spot(store, joint))
        .unwrap_or_default();
    let parts = [site_text(what), at, conditions, joint];
    let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    said.join(", ")
}

/// A figure of a reading, in SI, as the page shows it.
pub(super) fn shown(units: UnitSystem, measured: &Measured, value: f64) -> Shown {
    match measured {
        Measured::StaticPressure { .. } => units.pressure(Pressure::from_pascals(value)),
        Measured::Velocity { .. } | Measured::VelocityPressure { .. } => {
            units.velocity(Velocity::from_metres_per_second(value))
        }
        Measured::Temperature { .. } => units.temperature(Temperature::from_celsius(value)),
    }
}
