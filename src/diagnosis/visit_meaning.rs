//! All that a visit comes to.

use super::{CleanReading, Diagnosis, clean_readings, diagnose};
use crate::plan::{Entry, Plan, Reading, Visit};
use serde::{Deserialize, Serialize};

/// What a visit comes to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct VisitMeaning {
    /// The odds and the next test; none where the run cannot be diagnosed.
    pub diagnosis: Option<Diagnosis>,
    /// What a clean run would read, one an entry; none for what is no reading.
    pub clean: Vec<Option<CleanReading>>,
}

/// What `visit` of `plan` comes to.
pub fn visit_meaning(plan: &Plan, visit: &Visit) -> VisitMeaning {
    let reading = |entry: &Entry| match entry {
        Entry::Reading(reading) => Some(reading.clone()),
        _ => None,
    };
    let readings: Vec<Option<Reading>> = visit.entries.iter().map(reading).collect();
    let read: Vec<&Reading> = readings.iter().flatten().collect();
    let mut clean = clean_readings(plan, &read).into_iter();
    VisitMeaning {
        clean: readings
            .iter()
            .map(|reading| reading.as_ref().and_then(|_| clean.next().flatten()))
            .collect(),
        diagnosis: diagnose(plan, visit),
    }
}
