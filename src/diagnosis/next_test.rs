//! Which test tells the most for its effort.

use super::cause::{CauseKind, PlacedCause};
use super::evidence::{Fact, Observed, Planned, Quantity, at};
use super::model::{Model, Setting};
use super::odds::{JOINED, Weighed, is_seen, look_odds, sample};
use super::particle::Fault;
use crate::duct::tables::test_effort as effort;
use crate::plan::{ElementId, Spot, TerminationKind, Visit};
use crate::system::ElementKind;

/// Something to do on site.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Test {
    /// Read the static pressure at the dryer's outlet.
    ReadAtOutlet,
    /// Clean the lint screen, then read at the outlet.
    CleanScreen,
    /// Read at the outlet with a door or window open.
    OpenDoor,
    /// Read at the outlet with the flap held open.
    HoldFlap,
    /// Read the velocity at the outlet.
    ReadVelocity,
    /// Read the static pressure at a joint, with the run joined.
    ReadAtJoint(ElementId),
    /// Open the joint before this element, so that the run ends there, and read at the outlet.
    OpenJoint(ElementId),
    /// Take the duct off the dryer and read the velocity at its outlet.
    OpenOutlet,
    /// Open the joint beside a part and look into it.
    LookInto(ElementId),
}

/// A caution that stands at a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TestCaution {
    /// The dryer runs with a joint open: the full caution.
    JointOpen,
    /// A tap in the duct: no heat, and close it again.
    Tap,
    /// Power and gas off before a part is opened.
    PowerOff,
    /// Work at height.
    Height,
    /// A gas dryer: carbon monoxide.
    CarbonMonoxide,
}

impl Test {
    /// The spot that is read at, where one is.
    pub fn spot(&self) -> Option<Spot> {
        match self {
            Self::LookInto(_) => None,
            Self::ReadAtJoint(element) => Some(Spot::Before(element.clone())),
            _ => Some(Spot::Outlet),
        }
    }

    /// Whether the dryer runs with a joint open.
    pub const fn runs_with_joint_open(&self) -> bool {
        matches!(self, Self::OpenJoint(_) | Self::OpenOutlet)
    }

    /// Whether the dryer must run without heat for it.
    pub const fn must_be_cold(&self) -> bool {
        self.runs_with_joint_open() || matches!(self, Self::ReadAtJoint(_))
    }
}

/// A test with what it is worth.
#[derive(Debug, Clone, PartialEq)]
pub struct Suggestion {
    /// The test.
    pub test: Test,
    /// Its effort, against a reading at the outlet.
    pub effort: f64,
    /// What it tells of the fault, bits.
    pub bits: f64,
    /// What must be said beside it.
    pub cautions: Vec<TestCaution>,
}

/// The best test and the second best.
pub(super) struct Choice {
    pub next: Option<Suggestion>,
    pub runner_up: Option<Suggestion>,
}

/// Of the sets of faults, those that make up this share of the odds are asked.
const ASKED: f64 = 0.995;
/// But no more than so many.
const MOST_ASKED: usize = 140;

/// What a test would give.
enum Outcome {
    Reading(Planned),
    Look(usize),
}

/// The test that tells the most for its effort among those that can be done.
pub(super) fn choose(
    model: &mut Model,
    causes: &[PlacedCause],
    facts: &[(usize, Fact)],
    mended: &[bool],
    visit: &Visit,
    weighed: &[Weighed],
) -> Choice {
    let mut asked = Vec::new();
    let mut covered = 0.0;
    for it in weighed.iter().take(MOST_ASKED) {
        asked.push(it);
        covered += it.weight;
        if covered > ASKED {
            break;
        }
    }
    let labels = labels(&asked);
    let screen_dirty = facts.iter().rev().find_map(|(_, fact)| match &fact.what {
        Observed::Read(planned) => Some(!planned.screen_clean),
        Observed::Looked { .. } => None,
    });
    let screen_dirty = screen_dirty.unwrap_or(false)
        && causes
            .iter()
            .zip(mended)
            .any(|(cause, mended)| cause.cause.kind == CauseKind::LintScreen && !mended);
    let hot = visit.always_heats;
    let mut found: Vec<Suggestion> = Vec::new();
    for (test, weight) in candidates(model, screen_dirty, hot) {
        let outcome = outcome(model, &test, hot);
        let Some(outcome) = outcome.filter(|outcome| is_new(outcome, facts, mended)) else {
            continue;
        };
        let bits = match &outcome {
            Outcome::Reading(planned) => bits_of_reading(model, planned, &asked, &labels),
            Outcome::Look(place) => bits_of_look(*place, &asked, &labels),
        };
        found.push(Suggestion {
            cautions: cautions(model, &test),
            effort: weight,
            bits,
            test,
        });
    }
    let worth = |it: &Suggestion| it.bits / it.effort;
    found.sort_by(|one, other| worth(other).total_cmp(&worth(one)));
    let mut found = found.into_iter();
    Choice {
        next: found.next(),
        runner_up: found.next(),
    }
}

/// Every test that can be done, with its effort.
fn candidates(model: &Model, screen_dirty: bool, hot: bool) -> Vec<(Test, f64)> {
    let end = model.elements.len() - 1;
    let last = &model.elements[end];
    let termination = match last.kind {
        ElementKind::Termination { termination, .. } => termination,
        _ => TerminationKind::OpenEnd,
    };
    let at_end = if termination == TerminationKind::RoofCap {
        effort::ROOF
    } else {
        effort::FLAP
    };
    let mut tests = vec![
        (Test::ReadAtOutlet, effort::OUTLET),
        (Test::OpenDoor, effort::DOOR),
        (Test::ReadVelocity, effort::VELOCITY),
    ];
    if screen_dirty {
        tests.push((Test::CleanScreen, effort::SCREEN));
    }
    if termination != TerminationKind::OpenEnd {
        tests.push((Test::HoldFlap, at_end));
    }
    tests.push((Test::OpenOutlet, effort::OPEN_JOINT));
    for (place, element) in model.elements.iter().enumerate() {
        if model.has_joint(place) {
            tests.push((Test::ReadAtJoint(element.id.clone()), effort::TAP));
            tests.push((Test::OpenJoint(element.id.clone()), effort::OPEN_JOINT));
        }
        let can_be_seen = !matches!(
            element.kind,
            ElementKind::AreaChange { .. } | ElementKind::ConcealedElbows { .. }
        );
        if can_be_seen {
            let effort = if place == end { at_end } else { effort::LOOK };
            tests.push((Test::LookInto(element.id.clone()), effort));
        }
    }
    tests.retain(|(test, _)| !(hot && test.must_be_cold()));
    tests
}

fn outcome(model: &mut Model, test: &Test, hot: bool) -> Option<Outcome> {
    let place_of =
        |model: &Model, id: &ElementId| model.elements.iter().position(|element| element.id == *id);
    let joined = Setting { hot, ..JOINED };
    let (setting, place, quantity) = match test {
        Test::LookInto(element) => return Some(Outcome::Look(place_of(model, element)?)),
        Test::ReadAtOutlet | Test::CleanScreen => (joined, 0, Quantity::AgainstRoom),
        Test::OpenDoor => {
            let setting = Setting {
                door_open: true,
                ..joined
            };
            (setting, 0, Quantity::AgainstRoom)
        }
        Test::HoldFlap => {
            let setting = Setting {
                flap_held: true,
                ..joined
            };
            (setting, 0, Quantity::AgainstRoom)
        }
        Test::ReadVelocity => (joined, 0, Quantity::Velocity),
        Test::ReadAtJoint(element) => (joined, place_of(model, element)?, Quantity::AgainstRoom),
        Test::OpenJoint(element) => {
            let setting = Setting {
                open: place_of(model, element),
                ..joined
            };
            (setting, 0, Quantity::AgainstRoom)
        }
        Test::OpenOutlet => {
            let setting = Setting {
                open: Some(0),
                ..joined
            };
            (setting, 0, Quantity::Velocity)
        }
    };
    let mut planned = at(model, setting, place, quantity);
    if quantity == Quantity::Velocity {
        planned.relative = planned.relative.hypot(VELOCITY_ERROR);
    } else {
        planned.error = planned.error.hypot(GAUGE_ERROR);
    }
    Some(Outcome::Reading(planned))
}

/// The standard error of a gauge to come, Pa. Assumption.
const GAUGE_ERROR: f64 = 1.0;
/// The standard error of a velocity to come at the outlet, as a share. Assumption.
const VELOCITY_ERROR: f64 = 0.06;

/// Whether it was not done yet, since the last repair, under the same conditions.
fn is_new(outcome: &Outcome, facts: &[(usize, Fact)], mended: &[bool]) -> bool {
    let same = |fact: &Fact| match (outcome, &fact.what) {
        (Outcome::Reading(planned), Observed::Read(read)) => {
            planned.setting == read.setting
                && planned.place == read.place
                && planned.quantity == read.quantity
                && planned.screen_clean == read.screen_clean
        }
        (Outcome::Look(place), Observed::Looked { place: seen, .. }) => place == seen,
        _ => false,
    };
    !facts
        .iter()
        .any(|(_, fact)| fact.mended == mended && same(fact))
}

/// A number for each set of causes that is still there, so that severities of one set count as one.
fn labels(asked: &[&Weighed]) -> Vec<usize> {
    let mut sets: Vec<Vec<usize>> = Vec::new();
    asked
        .iter()
        .map(|it| {
            let set: Vec<usize> = it.left.iter().map(|fault: &Fault| fault.cause).collect();
            sets.iter()
                .position(|known| *known == set)
                .unwrap_or_else(|| {
                    sets.push(set);
                    sets.len() - 1
                })
        })
        .collect()
}

fn entropy(odds: impl Iterator<Item = f64>) -> f64 {
    odds.filter(|odds| *odds > 0.0)
        .map(|odds| -odds * odds.log2())
        .sum()
}

fn bits_of_look(place: usize, asked: &[&Weighed], labels: &[usize]) -> f64 {
    let columns: Vec<[f64; 2]> = asked
        .iter()
        .map(|it| {
            let there = it
                .left
                .iter()
                .any(|fault| fault.place == place && is_seen(fault.kind));
            [look_odds(there, true), look_odds(there, false)]
        })
        .collect();
    information(asked, labels, 2, |index, outcome| columns[index][outcome])
}

/// How many cells a reading's span is cut into.
const CELLS: usize = 40;

#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a few cells"
)]
fn bits_of_reading(model: &Model, planned: &Planned, asked: &[&Weighed], labels: &[usize]) -> f64 {
    let normals: Vec<(f64, f64)> = asked
        .iter()
        .map(|it| {
            let sample = sample(model, planned, &it.left);
            let (mean, variance) = it.joint.given(&sample.values, sample.variance);
            (mean, variance.sqrt())
        })
        .collect();
    let bounds = normals
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), it| {
            (low.min(it.0 - 2.5 * it.1), high.max(it.0 + 2.5 * it.1))
        });
    let width = (bounds.1 - bounds.0) / CELLS as f64;
    if width.is_nan() || width <= 0.0 {
        return 0.0;
    }
    let cells: Vec<[f64; CELLS]> = normals
        .iter()
        .map(|(mean, deviation)| {
            let mut cells = [0.0; CELLS];
            let cell = |value: f64| (((value - bounds.0) / width) as usize).min(CELLS - 1);
            let (first, last) = (cell(mean - 4.0 * deviation), cell(mean + 4.0 * deviation));
            let mut below = 0.0;
            for (index, mass) in cells.iter_mut().enumerate().take(last).skip(first) {
                let edge = bounds.0 + width * (index + 1) as f64;
                let until = below_normal((edge - mean) / deviation);
                *mass = until - below;
                below = until;
            }
            cells[last] = 1.0 - below;
            cells
        })
        .collect();
    information(asked, labels, CELLS, |index, outcome| cells[index][outcome])
}

/// About the share of a normal distribution below so many deviations.
fn below_normal(deviations: f64) -> f64 {
    // The logistic curve that stays within 0.01 of it.
    (1.0 + (-1.702 * deviations).exp()).recip()
}

/// What an outcome tells of the label, bits: the entropy of the outcome less that within each label.
fn information(
    asked: &[&Weighed],
    labels: &[usize],
    outcomes: usize,
    odds: impl Fn(usize, usize) -> f64,
) -> f64 {
    let count = labels.iter().max().map_or(0, |most| most + 1);
    let whole: f64 = asked.iter().map(|it| it.weight).sum();
    let mut table = vec![0.0; count * outcomes];
    for (index, it) in asked.iter().enumerate() {
        let row = &mut table[labels[index] * outcomes..][..outcomes];
        for (outcome, cell) in row.iter_mut().enumerate() {
            *cell += it.weight / whole * odds(index, outcome);
        }
    }
    let column =
        |outcome: usize| -> f64 { (0..count).map(|row| table[row * outcomes + outcome]).sum() };
    let row = |row: usize| -> f64 { table[row * outcomes..][..outcomes].iter().sum() };
    let both = entropy(table.iter().copied());
    let of_label = entropy((0..count).map(row));
    (entropy((0..outcomes).map(column)) + of_label - both).max(0.0)
}

fn cautions(model: &Model, test: &Test) -> Vec<TestCaution> {
    let mut cautions = Vec::new();
    if test.runs_with_joint_open() {
        cautions.push(TestCaution::JointOpen);
    }
    match test {
        Test::ReadAtJoint(_) => cautions.push(TestCaution::Tap),
        Test::LookInto(_) => cautions.push(TestCaution::PowerOff),
        _ => {}
    }
    let end = model.elements.last();
    let at_end = match test {
        Test::HoldFlap => true,
        Test::LookInto(element) => end.is_some_and(|end| end.id == *element),
        _ => false,
    };
    let is_roof = matches!(
        end.map(|end| end.kind),
        Some(ElementKind::Termination {
            termination: TerminationKind::RoofCap,
            ..
        })
    );
    if at_end && is_roof {
        cautions.push(TestCaution::Height);
    }
    if model.is_gas {
        cautions.push(TestCaution::CarbonMonoxide);
    }
    cautions
}
