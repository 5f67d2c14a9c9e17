//! Changes of what was done on site. Where no visit is named they are of the newest, which is begun
//! where there is none.

use super::change::{Changed, alter};
use crate::plan::{Entry, Override, Plan, Preparation, Visit, VisitPicture};
use crate::report::words::{ActionName, Refusal};

/// A change of a visit.
#[derive(Debug, Clone, PartialEq)]
pub enum VisitChange {
    /// Begin another visit.
    Begin,
    /// Tick, or untick, a line of the preparation.
    Prepare {
        /// The line.
        what: Preparation,
        /// Whether it is done.
        is_done: bool,
    },
    /// Say whether the dryer cannot run without heat.
    AlwaysHeats(bool),
    /// Note the day.
    Date(String),
    /// Note something.
    Note(String),
    /// Add what was read, seen or mended.
    Add(Entry),
    /// Remove the entry with this index.
    Remove(usize),
    /// Add a picture.
    AddPicture(VisitPicture),
    /// Remove the picture with this index.
    RemovePicture(usize),
    /// Take the blower from the readings.
    FitBlower(Vec<Override>),
}

/// The step's name and the changed plan.
pub(super) fn change(
    plan: &Plan,
    visit: Option<&str>,
    change: VisitChange,
) -> (ActionName, Changed) {
    let name = match &change {
        VisitChange::Begin => ActionName::BeginVisit,
        VisitChange::Prepare { .. } | VisitChange::AlwaysHeats(_) => ActionName::PrepareVisit,
        VisitChange::Date(_) | VisitChange::Note(_) => ActionName::NoteVisit,
        VisitChange::Add(Entry::Reading(_)) => ActionName::AddReading,
        VisitChange::Add(Entry::Look(_)) => ActionName::AddLook,
        VisitChange::Add(Entry::Done(_)) => ActionName::AddRepair,
        VisitChange::Remove(_) => ActionName::RemoveEntry,
        VisitChange::AddPicture(_) => ActionName::AddPicture,
        VisitChange::RemovePicture(_) => ActionName::RemovePicture,
        VisitChange::FitBlower(_) => ActionName::FitBlower,
    };
    (name, changed(plan, visit, change))
}

fn changed(plan: &Plan, visit: Option<&str>, change: VisitChange) -> Changed {
    let index = match visit {
        None => plan.visits.len().saturating_sub(1),
        Some(id) => {
            let mut visits = plan.visits.iter();
            let found = visits.position(|visit| &*visit.id == id);
            found.ok_or(Refusal::NoSuchElement)?
        }
    };
    let visit = plan.visits.get(index);
    let has =
        |count: fn(&Visit) -> usize, index: usize| visit.is_some_and(|visit| index < count(visit));
    match &change {
        VisitChange::Remove(entry) if !has(|visit| visit.entries.len(), *entry) => {
            return Err(Refusal::NoSuchElement);
        }
        VisitChange::RemovePicture(picture) if !has(|visit| visit.pictures.len(), *picture) => {
            return Err(Refusal::NoSuchElement);
        }
        _ => {}
    }
    alter(plan, |plan| match change {
        VisitChange::Begin => begin(plan),
        VisitChange::FitBlower(sets) => {
            for set in sets {
                plan.overrides.retain(|old| old.input != set.input);
                plan.overrides.push(set);
            }
        }
        change => {
            if plan.visits.is_empty() {
                begin(plan);
            }
            if let Some(visit) = plan.visits.get_mut(index) {
                of_visit(visit, change);
            }
        }
    })
}

fn of_visit(visit: &mut Visit, change: VisitChange) {
    match change {
        VisitChange::Prepare { what, is_done } => {
            if is_done {
                visit.preparation.insert(what);
            } else {
                visit.preparation.remove(&what);
            }
        }
        VisitChange::AlwaysHeats(always) => visit.always_heats = always,
        VisitChange::Date(date) => visit.date = date,
        VisitChange::Note(note) => visit.note = note,
        VisitChange::Add(entry) => visit.entries.push(entry),
        VisitChange::Remove(index) => {
            visit.entries.remove(index);
        }
        VisitChange::AddPicture(picture) => visit.pictures.push(picture),
        VisitChange::RemovePicture(index) => {
            visit.pictures.remove(index);
        }
        VisitChange::Begin | VisitChange::FitBlower(_) => {}
    }
}

/// Begins a visit under the first of `v1`, `v2` and so on that none has.
fn begin(plan: &mut Plan) {
    let free = (1..=plan.visits.len() + 1)
        .map(|number| format!("v{number}"))
        .find(|id| plan.visits.iter().all(|visit| &*visit.id != id));
    plan.visits.push(Visit::new(&free.unwrap_or_default()));
}
