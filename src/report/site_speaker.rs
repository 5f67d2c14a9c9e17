//! Readings, looks, repairs, faults and tests in words: elements by their place in the run.

use super::ElementFigures;
use super::words::{Language, Message, SiteLabel, SiteMessage, say};
use crate::diagnosis::{Cause, CauseKind, Test};
use crate::plan::{Done, ElementId, Entry, Look, Measured, Mended, Reading, Spot};
use crate::system::ElementKind;
use crate::units::{Pressure, Shown, Temperature, UnitSystem, Velocity};

/// Says what a visit holds, in one language and one system of units, about one run.
#[derive(Debug, Clone, Copy)]
pub struct SiteSpeaker<'a> {
    /// The language.
    pub language: Language,
    /// The units.
    pub units: UnitSystem,
    /// The run's elements, in the order in which the air meets them.
    pub elements: &'a [ElementFigures],
}

impl SiteSpeaker<'_> {
    /// Any message about readings.
    pub fn say(&self, message: SiteMessage<'_>) -> String {
        say(self.language, self.units, Message::Site(message))
    }

    /// A fixed text.
    pub fn label(&self, label: SiteLabel) -> String {
        self.say(SiteMessage::Label(label))
    }

    /// An element's place in the run, from 1, and what it is.
    pub fn placed(&self, id: &ElementId) -> Option<(usize, &ElementKind)> {
        let place = self.elements.iter().position(|element| element.id == *id)?;
        Some((place + 1, &self.elements[place].element))
    }

    /// A fault.
    pub fn cause(&self, cause: &Cause) -> String {
        let at = cause.element.as_ref().and_then(|id| self.placed(id));
        self.say(SiteMessage::Cause(cause.kind, at))
    }

    /// A test.
    pub fn test(&self, test: &Test) -> String {
        let at = test.element().and_then(|id| self.placed(id));
        self.say(SiteMessage::Test(test, at))
    }

    /// A place to read at.
    pub fn spot(&self, spot: &Spot) -> String {
        let at = match spot {
            Spot::Before(id) => self.placed(id),
            _ => None,
        };
        self.say(SiteMessage::Spot(spot, at))
    }

    /// An entry in one line, without its figure.
    pub fn entry(&self, entry: &Entry) -> String {
        match entry {
            Entry::Look(Look { at, found }) => self.say(SiteMessage::Look(*found, self.placed(at))),
            Entry::Done(done) => self.done(done),
            Entry::Reading(reading) => self.reading(reading),
        }
    }

    fn done(&self, done: &Done) -> String {
        let (kind, id) = match &done.what {
            Mended::LintScreen => (CauseKind::LintScreen, None),
            Mended::Blower => (CauseKind::Blower, None),
            Mended::Leak => (CauseKind::Leak, None),
            Mended::MakeUpAir => (CauseKind::RoomStarved, None),
            Mended::WholeRun => (CauseKind::Blockage, None),
            Mended::Element(id) => (CauseKind::Blockage, Some(id)),
        };
        let at = id.and_then(|id| self.placed(id));
        self.say(SiteMessage::Done(kind, at))
    }

    fn reading(&self, reading: &Reading) -> String {
        let what = match reading.measured {
            Measured::StaticPressure { .. } => SiteLabel::StaticPressure,
            Measured::Velocity { .. } => SiteLabel::VelocityVane,
            Measured::VelocityPressure { .. } => SiteLabel::VelocityPitot,
            Measured::Temperature { .. } => SiteLabel::Temperature,
        };
        let conditions = self.say(SiteMessage::Conditions(&reading.conditions));
        let joint = reading.conditions.open_joint.as_ref();
        let joint = joint.map_or_else(String::new, |joint| self.spot(joint));
        let parts = [self.label(what), self.spot(&reading.at), conditions, joint];
        let said: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        said.join(", ")
    }

    /// A figure of a reading, in SI, as it is shown.
    pub fn shown(&self, measured: &Measured, value: f64) -> Shown {
        let units = self.units;
        match measured {
            Measured::StaticPressure { .. } => units.pressure(Pressure::from_pascals(value)),
            Measured::Velocity { .. } | Measured::VelocityPressure { .. } => {
                units.velocity(Velocity::from_metres_per_second(value))
            }
            Measured::Temperature { .. } => units.temperature(Temperature::from_celsius(value)),
        }
    }
}
