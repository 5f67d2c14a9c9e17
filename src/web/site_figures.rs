//! A reading's figures as the page and its print show them: what was read, what the clean run reads,
//! what the dryer's maker allows.

use super::site_words::shown;
use super::store::Store;
use crate::diagnosis::{AgainstLimit, CleanReading, against_limit};
use crate::plan::{Measured, Reading};
use crate::report::words::{Message, SiteMessage};
use leptos::prelude::*;

/// The clean run's figure beside the entry with this index; none while it is worked out.
pub(super) fn clean_of(store: Store, index: usize) -> Option<CleanReading> {
    let site = store.site()?;
    site.clean.get(index).copied().flatten()
}

/// What was read; of several points what they say of the mean.
pub(super) fn read_text(store: Store, index: usize, reading: &Reading) -> Option<String> {
    let plain = match &reading.measured {
        Measured::StaticPressure { pressure, .. } => Some(pressure.pascals()),
        Measured::Temperature { temperature, .. } => Some(temperature.celsius()),
        _ => None,
    };
    let value = plain.or_else(|| clean_of(store, index).map(|clean| clean.read))?;
    Some(shown(store.units.get(), &reading.measured, value).to_string())
}

/// What the clean run reads, with its band.
pub(super) fn clean_text(store: Store, index: usize, reading: &Reading) -> Option<String> {
    let measured = &reading.measured;
    let clean = clean_of(store, index)?;
    let band = store.say_band(clean.band, |units, value| shown(units, measured, value));
    let likely = shown(store.units.get(), measured, clean.likely);
    Some(format!("{likely} ({band})"))
}

/// The reading against a limit that was typed: the verdict, and limit and margin in words.
pub(super) fn limit_text(store: Store, reading: &Reading) -> Option<(AgainstLimit, String)> {
    let found = store.plan.with(|plan| against_limit(plan, reading))?;
    let units = store.units.get();
    let limit = units.pressure(found.limit).to_string();
    let margin = units.pressure(found.margin).to_string();
    let said = store.say(Message::Site(SiteMessage::Limit(&limit, &margin)));
    Some((found, said))
}
