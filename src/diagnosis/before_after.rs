//! Readings taken before a repair and again after it, in pairs.

use crate::plan::{Conditions, Entry, Measured, Reading, Spot, Visit};
use serde::{Deserialize, Serialize};

/// Two readings of one thing under the same conditions, by their entries.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct BeforeAfter {
    /// The last one before the first repair.
    pub before: usize,
    /// The last one after the last repair.
    pub after: usize,
}

/// What makes two readings comparable.
#[derive(PartialEq)]
struct Subject<'a> {
    at: &'a Spot,
    quantity: u8,
    conditions: Conditions,
}

impl<'a> Subject<'a> {
    fn of(reading: &'a Reading) -> Self {
        let quantity = match &reading.measured {
            Measured::StaticPressure { against, .. } => *against as u8,
            Measured::Velocity { .. } | Measured::VelocityPressure { .. } => 2,
            Measured::Temperature { .. } => 3,
        };
        Self {
            at: &reading.at,
            quantity,
            // The screen may have been what was cleaned.
            conditions: Conditions {
                lint_screen_clean: true,
                ..reading.conditions.clone()
            },
        }
    }
}

/// The pairs of a visit, in the order of the readings after; none where nothing was mended.
pub fn before_and_after(visit: &Visit) -> Vec<BeforeAfter> {
    let is_repair = |entry: &Entry| matches!(entry, Entry::Done(_));
    let (Some(first), Some(last)) = (
        visit.entries.iter().position(is_repair),
        visit.entries.iter().rposition(is_repair),
    ) else {
        return Vec::new();
    };
    let reading = |index: usize| match &visit.entries[index] {
        Entry::Reading(reading) => Some(Subject::of(reading)),
        _ => None,
    };
    let mut pairs = Vec::new();
    for after in last + 1..visit.entries.len() {
        let Some(subject) = reading(after) else {
            continue;
        };
        let is_same = |index: &usize| reading(*index).is_some_and(|other| other == subject);
        let is_read_again = (after + 1..visit.entries.len()).any(|later| is_same(&later));
        let before = (0..first).rev().find(is_same);
        if let Some(before) = before.filter(|_| !is_read_again) {
            pairs.push(BeforeAfter { before, after });
        }
    }
    pairs
}
