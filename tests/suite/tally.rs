//! Counts comparisons and keeps every one that misses, so that one run names them all.

use core::fmt::{Debug, Display};

/// How many misses are printed; the rest are counted.
const PRINTED: usize = 25;

pub struct Tally {
    subject: &'static str,
    checked: usize,
    misses: Vec<String>,
}

impl Tally {
    pub fn new(subject: &'static str) -> Self {
        Self {
            subject,
            checked: 0,
            misses: Vec::new(),
        }
    }

    /// `found` within `tolerance` of `expected`, as a share of it.
    pub fn relative(&mut self, label: impl Display, found: f64, expected: f64, tolerance: f64) {
        self.within(label, found, expected, tolerance * expected.abs());
    }

    /// `found` within `allowed` of `expected`, in their own unit.
    pub fn within(&mut self, label: impl Display, found: f64, expected: f64, allowed: f64) {
        let off = (found - expected).abs();
        let right = off <= allowed;
        self.note(right, || {
            format!("{label}: found {found}, expected {expected}, off {off:e}, allowed {allowed:e}")
        });
    }

    pub fn equal<T: PartialEq + Debug>(&mut self, label: impl Display, found: &T, expected: &T) {
        self.note(found == expected, || {
            format!("{label}: found {found:?}, expected {expected:?}")
        });
    }

    pub fn holds(&mut self, label: impl Display, right: bool) {
        self.note(right, || label.to_string());
    }

    fn note(&mut self, right: bool, miss: impl FnOnce() -> String) {
        self.checked += 1;
        if !right {
            self.misses.push(miss());
        }
    }

    /// Fails where anything missed, or where fewer than `least` comparisons were made: a set that
    /// was lost must not pass.
    pub fn finish(self, least: usize) {
        let Self {
            subject,
            checked,
            misses,
        } = self;
        assert!(
            misses.is_empty(),
            "{subject}: {} of {checked} missed\n{}",
            misses.len(),
            misses[..misses.len().min(PRINTED)].join("\n")
        );
        assert!(
            checked >= least,
            "{subject}: {checked} comparisons, at least {least} are wanted"
        );
    }
}

#[test]
#[should_panic(expected = "1 of 2 missed")]
fn a_miss_fails() {
    let mut tally = Tally::new("the tally");
    tally.relative("right", 1.0, 1.0, 0.0);
    tally.within("wrong", f64::NAN, 1.0, 1e9);
    tally.finish(1);
}

#[test]
#[should_panic(expected = "at least 2 are wanted")]
fn too_few_comparisons_fail() {
    let mut tally = Tally::new("the tally");
    tally.holds("right", true);
    tally.finish(2);
}
