//! Which test tells the most for its effort.

use super::cause::{CauseKind, PlacedCause};
use super::evidence::{Fact, Observed, Planned, Quantity, at};
use super::information::{bits_of_look, bits_of_reading, labels};
use super::model::{Model, Setting};
use super::odds::JOINED;
use super::test::{Suggestion, Test, TestCaution};
use super::weigh::Weighed;
use crate::duct::tables::test_effort as effort;
use crate::plan::{ElementId, TerminationKind, Visit};
use crate::system::ElementKind;

/// The best test and the second best.
pub(super) struct Choice {
    pub next: Option<Suggestion>,
    pub runner_up: Option<Suggestion>,
}

/// Of the sets of faults, those that make up this share of the odds are asked. Of the computation.
const ASKED: f64 = 0.985;
/// But no more than so many.
const MOST_ASKED: usize = 90;

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

/// The standard error of a gauge to come, Pa. Assumption. Source: [`site_reading::SOURCE`].
const GAUGE_ERROR: f64 = 1.0;
/// The standard error of a velocity to come at the outlet, as a share. Assumption.
/// Source: [`site_reading::SOURCE`].
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
