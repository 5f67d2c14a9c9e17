//! The labels: those to be looked at next, best first, and those that stand at each state.

use super::label::Label;
use core::cmp::Ordering;
use std::collections::BinaryHeap;

/// An entry of the queue.
struct Waiting {
    /// No run through this label loses less, Pa.
    bound: f64,
    label: u32,
}

impl PartialEq for Waiting {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}
impl Eq for Waiting {}
impl PartialOrd for Waiting {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Waiting {
    /// The greatest is the one with the least bound; of two, the one that came first.
    fn cmp(&self, other: &Self) -> Ordering {
        let by_bound = other.bound.total_cmp(&self.bound);
        by_bound.then(other.label.cmp(&self.label))
    }
}

/// No label.
const NONE: u32 = u32::MAX;

/// Labels by state, and the queue.
pub(super) struct Frontier {
    labels: Vec<Label>,
    is_beaten: Vec<bool>,
    queue: BinaryHeap<Waiting>,
    /// The last label that came to each state, or [`NONE`].
    last: Vec<u32>,
    /// The label that came to the same state before each label, or [`NONE`].
    earlier: Vec<u32>,
}

impl Frontier {
    /// With no label at any of so many states.
    pub(super) fn new(states: usize) -> Self {
        Self {
            labels: Vec::new(),
            is_beaten: Vec::new(),
            queue: BinaryHeap::new(),
            last: vec![NONE; states],
            earlier: Vec::new(),
        }
    }

    pub(super) fn label(&self, index: u32) -> &Label {
        &self.labels[index as usize]
    }

    pub(super) fn states(&self) -> usize {
        self.last.len()
    }

    pub(super) fn count(&self) -> usize {
        self.labels.len()
    }

    /// Takes a label in, unless one that stands at its state is no worse; it may beat others there.
    pub(super) fn offer(&mut self, state: usize, label: Label, bound: f64) {
        let first = self.last[state];
        let mut standing = first;
        while standing != NONE {
            let index = standing as usize;
            if !self.is_beaten[index] && self.labels[index].is_no_worse_than(&label) {
                return;
            }
            standing = self.earlier[index];
        }
        let Ok(own) = u32::try_from(self.labels.len()) else {
            return;
        };
        standing = first;
        while standing != NONE {
            let index = standing as usize;
            self.is_beaten[index] |= label.is_no_worse_than(&self.labels[index]);
            standing = self.earlier[index];
        }
        self.labels.push(label);
        self.is_beaten.push(false);
        self.earlier.push(first);
        self.last[state] = own;
        self.queue.push(Waiting { bound, label: own });
    }

    /// The label with the least bound and that bound; none where all were looked at.
    pub(super) fn next(&mut self) -> Option<(u32, f64)> {
        loop {
            let Waiting { bound, label } = self.queue.pop()?;
            if !self.is_beaten[label as usize] {
                return Some((label, bound));
            }
        }
    }
}
