//! The odds of every fault from all that was read, seen and mended during a visit.

use super::cause::{Cause, CauseKind, PlacedCause, causes};
use super::evidence::{Fact, Observed, Planned, Quantity, at, facts};
use super::model::{DRAWS, Model, Setting};
use super::next_test::{Choice, choose};
use super::particle::Fault;
use super::predict::airflows;
use super::test::Suggestion;
use super::weigh::{KEPT_PRIOR, Weighed, sample, weigh};
use crate::plan::{Entry, Flow, Plan, Visit};
use serde::{Deserialize, Serialize};

/// What a visit comes to.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Diagnosis {
    /// The faults, the likeliest first. Each figure is the chance that the fault is there now, so two
    /// faults at once count for both.
    pub causes: Vec<CauseOdds>,
    /// That nothing is wrong now.
    pub nothing: f64,
    /// That nothing is wrong now that takes over a tenth of the airflow.
    pub harmless: f64,
    /// The airflow now, as a share of the clean run's: mean, 10th and 90th percentile.
    pub airflow_now: (f64, f64, f64),
    /// The same before the first repair of the visit; none where nothing was mended.
    pub airflow_before: Option<(f64, f64, f64)>,
    /// The clean run's airflow on a cycle without heat, m³/s, at the mean of all inputs.
    pub clean_airflow: f64,
    /// That two faults are there at once.
    pub two_faults: f64,
    /// Whether more tests are of little use.
    pub settled: bool,
    /// What to bear in mind.
    pub caveats: Vec<Caveat>,
    /// The test that tells the most for its effort; none where more are of little use.
    pub next: Option<Suggestion>,
    /// The test that tells the most after that one.
    pub runner_up: Option<Suggestion>,
}

/// A fault with its odds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct CauseOdds {
    /// The fault.
    pub cause: Cause,
    /// That it is there, above 0 and below 1.
    pub probability: f64,
    /// The same before anything was read, seen or mended.
    pub prior: f64,
    /// The free share of the area that it leaves: likely, 10th and 90th percentile.
    pub free_area: Option<(f64, f64, f64)>,
    /// The airflow that is left, as a share of the clean run's.
    pub airflow_left: f64,
    /// What each reading would be if this were the fault.
    pub explains: Vec<Explained>,
}

/// A reading beside what a fault would make of it, in SI (Pa, m/s).
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Explained {
    /// Index of the visit's entry.
    pub entry: usize,
    /// What was read.
    pub read: f64,
    /// What would be read.
    pub expected: f64,
}

/// What to bear in mind about a diagnosis.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Caveat {
    /// Nothing was read yet.
    NothingRead,
    /// No fault explains the readings: they contradict each other, the plan or the physics; the entry
    /// that fits worst.
    Contradiction(usize),
    /// The plan states its airflow; readings are held against the assumed blower.
    StatedAirflow,
    /// The plan has a blockage or a leak of its own, which the clean run is taken to be without.
    FaultInPlan,
    /// An entry's place is no more in the plan.
    PlaceGone(usize),
    /// A temperature that nothing is predicted for: the plan's air keeps its own, or the run was open.
    TemperatureOnly(usize),
}

/// Particles of less weight than this are not looked at further. Of the computation.
const LEAST_WEIGHT: f64 = 2e-5;
/// A fault that takes more than this share of the airflow matters. Of the computation.
const MATTERS: f64 = 0.10;
/// From this probability on a fault, or that there is none, is settled. Of the computation.
pub(super) const SETTLED: f64 = 0.90;
/// From this probability on that one of two neighbours is at fault nothing more is read: the joint
/// between them shows both. Of the computation.
const SETTLED_ON_TWO: f64 = 0.95;
/// A test that tells less than this, in bits, is not worth its while. Of the computation.
const WORTH_WHILE: f64 = 0.02;

/// What the readings, looks and repairs of `visit` say of the run of `plan`. None where the plan has
/// no run that could be diagnosed.
pub fn diagnose(plan: &Plan, visit: &Visit) -> Option<Diagnosis> {
    let mut model = Model::of(plan, DRAWS)?;
    let causes = causes(&model);
    let (facts, mended) = facts(&mut model, &causes, visit);
    let caveats = caveats(plan, visit, &facts);
    let weighed = weigh(&model, &causes, &facts, &mended);
    Some(summarise(
        &mut model, &causes, &facts, &mended, visit, weighed, caveats,
    ))
}

fn caveats(plan: &Plan, visit: &Visit, facts: &[(usize, Fact)]) -> Vec<Caveat> {
    let mut caveats = Vec::new();
    if facts.is_empty() {
        caveats.push(Caveat::NothingRead);
    }
    if matches!(plan.flow, Flow::StatedAirflow { .. }) {
        caveats.push(Caveat::StatedAirflow);
    }
    if super::clean_plan(plan) != *plan {
        caveats.push(Caveat::FaultInPlan);
    }
    for (index, entry) in visit.entries.iter().enumerate() {
        let is_used = facts.iter().any(|(used, _)| *used == index);
        match entry {
            Entry::Done(_) => {}
            _ if is_used => {}
            Entry::Reading(reading)
                if matches!(reading.measured, crate::plan::Measured::Temperature { .. }) =>
            {
                caveats.push(Caveat::TemperatureOnly(index));
            }
            _ => caveats.push(Caveat::PlaceGone(index)),
        }
    }
    caveats
}

/// The square of a chi distribution that is passed once in a thousand times, with so many readings
/// (Wilson and Hilferty's cube, Proc. Natl. Acad. Sci. 17 (1931) 684; from memory).
fn rarely_passed(readings: f64) -> f64 {
    /// Of the computation.
    const NORMAL: f64 = 3.09;
    let small = 2.0 / (9.0 * readings);
    readings * (1.0 - small + NORMAL * small.sqrt()).powi(3)
}

/// A run that is joined, on a cycle without heat.
pub(super) const JOINED: Setting = Setting {
    hot: false,
    open: None,
    flap_held: false,
    door_open: false,
};

fn summarise(
    model: &mut Model,
    causes: &[PlacedCause],
    facts: &[(usize, Fact)],
    mended: &[bool],
    visit: &Visit,
    mut weighed: Vec<Weighed>,
    mut caveats: Vec<Caveat>,
) -> Diagnosis {
    let readings: Vec<(usize, &Fact, &Planned)> = facts
        .iter()
        .filter_map(|(index, fact)| match &fact.what {
            Observed::Read(planned) => Some((*index, fact, planned)),
            Observed::Looked { .. } => None,
        })
        .collect();
    if let Some(index) = contradiction(model, &readings, &weighed) {
        caveats.push(Caveat::Contradiction(index));
    }
    let joined = at(model, JOINED, 0, Quantity::AgainstRoom);
    let clean = airflows(model, &joined, &[]);
    let is_mended = visit
        .entries
        .iter()
        .any(|entry| matches!(entry, Entry::Done(_)));
    let mut before: Vec<(f64, f64)> = Vec::new();
    for it in weighed.iter_mut().take_while(|it| it.weight > LEAST_WEIGHT) {
        it.airflow_left = share_left(&airflows(model, &joined, &it.left), &clean);
        if is_mended {
            let at_first = airflows(model, &joined, &it.particle.faults);
            before.push((share_left(&at_first, &clean), it.weight));
        }
    }
    let sum = |holds: &dyn Fn(&Weighed) -> bool| -> f64 {
        let held = weighed.iter().filter(|it| holds(it));
        held.map(|it| it.weight).sum()
    };
    let nothing = sum(&|it| it.left.is_empty());
    let harmless = sum(&|it| {
        it.left.is_empty() || (it.weight > LEAST_WEIGHT && it.airflow_left > 1.0 - MATTERS)
    });
    let two_faults = sum(&|it| it.left.len() > 1);
    let mut odds: Vec<CauseOdds> = causes
        .iter()
        .enumerate()
        .filter(|(cause, placed)| {
            // A screen that was clean at every reading is no suspect.
            placed.cause.kind != CauseKind::LintScreen
                || sum(&|it| it.left.iter().any(|fault| fault.cause == *cause)) > 0.0
        })
        .map(|(cause, placed)| {
            let with: Vec<&Weighed> = weighed
                .iter()
                .filter(|it| it.left.iter().any(|fault| fault.cause == cause))
                .collect();
            let at_first = weighed.iter().map(|it| &it.particle);
            let prior = at_first.filter(|it| it.faults.iter().any(|fault| fault.cause == cause));
            CauseOdds {
                prior: prior.map(|it| it.prior).sum(),
                ..of_cause(model, cause, placed, &with, &readings, mended)
            }
        })
        .collect();
    odds.sort_by(|one, other| other.probability.total_cmp(&one.probability));
    let most = odds.first().map_or(0.0, |first| first.probability);
    let of_two = neighbours(causes, &odds)
        .map(|two| sum(&|it| it.left.iter().any(|fault| two.contains(&fault.cause))));
    let sure = most >= SETTLED
        || nothing >= SETTLED
        || harmless >= SETTLED
        || of_two.is_some_and(|of_two| of_two >= SETTLED_ON_TWO);
    let Choice { next, runner_up } = choose(model, causes, facts, mended, visit, &weighed);
    let worth = next.as_ref().is_some_and(|next| next.bits >= WORTH_WHILE);
    let settled = !readings.is_empty() && (sure || !worth);
    Diagnosis {
        causes: odds,
        nothing,
        harmless,
        airflow_now: spread_of(airflows_left(&weighed)),
        airflow_before: is_mended.then(|| spread_of(before)),
        clean_airflow: clean.iter().sum::<f64>() / count(clean.len()),
        two_faults,
        settled,
        caveats,
        next: next.filter(|_| !settled),
        runner_up: runner_up.filter(|_| !settled),
    }
}

/// The shares of the clean airflow that are left, with their weights.
fn airflows_left(weighed: &[Weighed]) -> Vec<(f64, f64)> {
    let believed = weighed.iter().filter(|it| it.weight > LEAST_WEIGHT);
    believed.map(|it| (it.airflow_left, it.weight)).collect()
}

/// Mean, 10th and 90th percentile of weighted values.
fn spread_of(mut shares: Vec<(f64, f64)>) -> (f64, f64, f64) {
    shares.sort_by(|one, other| one.0.total_cmp(&other.0));
    let whole: f64 = shares.iter().map(|(_, weight)| weight).sum();
    let mean = shares
        .iter()
        .map(|(share, weight)| share * weight)
        .sum::<f64>()
        / whole;
    let quantile = |wanted: f64| {
        let mut before = 0.0;
        let found = shares.iter().find(|(_, weight)| {
            before += weight;
            before >= wanted * whole
        });
        found.map_or(1.0, |(share, _)| *share)
    };
    (mean, quantile(0.1), quantile(0.9))
}

/// The first two of the odds, where they are places beside one another in the run.
fn neighbours(causes: &[PlacedCause], odds: &[CauseOdds]) -> Option<[usize; 2]> {
    let index = |odds: &CauseOdds| causes.iter().position(|it| it.cause == odds.cause);
    let (one, other) = (index(odds.first()?)?, index(odds.get(1)?)?);
    let apart = causes[one].place.abs_diff(causes[other].place);
    let are_places = causes[one].cause.is_place() && causes[other].cause.is_place();
    (are_places && apart <= 1).then_some([one, other])
}

fn share_left(airflows: &[f64], clean: &[f64]) -> f64 {
    let shares = airflows.iter().zip(clean).map(|(now, clean)| now / clean);
    shares.sum::<f64>() / count(clean.len())
}

#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
const fn count(draws: usize) -> f64 {
    draws as f64
}

/// One fault's odds, from the particles `with` it, the heaviest first.
fn of_cause(
    model: &Model,
    cause: usize,
    placed: &PlacedCause,
    with: &[&Weighed],
    readings: &[(usize, &Fact, &Planned)],
    mended: &[bool],
) -> CauseOdds {
    let probability: f64 = with.iter().map(|it| it.weight).sum();
    let believed: Vec<&&Weighed> = with
        .iter()
        .take_while(|it| it.weight > LEAST_WEIGHT)
        .collect();
    let whole: f64 = believed.iter().map(|it| it.weight).sum();
    let airflow_left = if whole > 0.0 {
        let sum: f64 = believed.iter().map(|it| it.weight * it.airflow_left).sum();
        sum / whole
    } else {
        1.0
    };
    let free_area = placed.cause.is_place().then(|| free_area(cause, with));
    let explains = with.first().map_or_else(Vec::new, |best| {
        let expected = |(entry, fact, planned): &(usize, &Fact, &Planned)| {
            let faults = best.particle.faults.iter();
            let there = faults.filter(|fault| !fact.mended[fault.cause]).cloned();
            let there: Vec<Fault> = there.collect();
            let sample = sample(model, planned, &there);
            let (expected, _) = best.joint.given(&sample.values, 0.0);
            Explained {
                entry: *entry,
                read: planned.value,
                expected,
            }
        };
        readings.iter().map(expected).collect()
    });
    CauseOdds {
        cause: placed.cause.clone(),
        prior: 0.0,
        probability: if mended[cause] && with.is_empty() {
            KEPT_PRIOR
        } else {
            probability.clamp(LEAST_WEIGHT, 1.0 - LEAST_WEIGHT)
        },
        free_area,
        airflow_left,
        explains,
    }
}

/// Likely, 10th and 90th percentile of the free share of the area that a fault leaves.
fn free_area(cause: usize, with: &[&Weighed]) -> (f64, f64, f64) {
    let mut cells: Vec<((f64, f64), f64)> = with
        .iter()
        .filter_map(|it| {
            let fault = it.left.iter().find(|fault| fault.cause == cause)?;
            Some((fault.severity, it.weight))
        })
        .collect();
    cells.sort_by(|one, other| one.0.0.total_cmp(&other.0.0));
    let whole: f64 = cells.iter().map(|(_, weight)| weight).sum();
    let quantile = |share: f64| {
        let mut before = 0.0;
        for ((from, to), weight) in &cells {
            if before + weight >= share * whole && *weight > 0.0 {
                return from + (to - from) * ((share * whole - before) / weight);
            }
            before += weight;
        }
        cells.last().map_or(1.0, |((_, to), _)| *to)
    };
    (quantile(0.5), quantile(0.1), quantile(0.9))
}

/// The reading that fits worst, where not even the best set of faults explains them all.
fn contradiction(
    model: &Model,
    readings: &[(usize, &Fact, &Planned)],
    weighed: &[Weighed],
) -> Option<usize> {
    let fits = weighed
        .iter()
        .map(|it| it.joint.misfit)
        .fold(f64::INFINITY, f64::min);
    #[allow(clippy::cast_precision_loss, reason = "a few readings")]
    let count = readings.len() as f64;
    if readings.is_empty() || fits <= rarely_passed(count) {
        return None;
    }
    let best = weighed.first()?;
    let off = |(_, fact, planned): &(usize, &Fact, &Planned)| {
        let faults = best.particle.faults.iter();
        let there = faults.filter(|fault| !fact.mended[fault.cause]).cloned();
        let sample = sample(model, planned, &there.collect::<Vec<Fault>>());
        let (expected, _) = best.joint.given(&sample.values, 0.0);
        (planned.value - expected).abs() / sample.variance.sqrt()
    };
    let worst = readings
        .iter()
        .max_by(|one, other| off(one).total_cmp(&off(other)))?;
    Some(worst.0)
}
