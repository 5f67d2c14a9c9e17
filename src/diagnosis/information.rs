//! What a test would tell of the fault, in bits: how much less is left open of the set of causes once
//! its outcome is known.

use super::evidence::Planned;
use super::model::Model;
use super::particle::Fault;
use super::weigh::{Weighed, look_odds, sample};

/// A number for each set of causes that is still there, so that severities of one set count as one.
pub(super) fn labels(asked: &[&Weighed]) -> Vec<usize> {
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

/// Of a look into the element at `place`.
pub(super) fn bits_of_look(place: usize, asked: &[&Weighed], labels: &[usize]) -> f64 {
    let columns: Vec<[f64; 2]> = asked
        .iter()
        .map(|it| {
            let there = it
                .left
                .iter()
                .any(|fault| fault.place == place && fault.kind.is_place());
            [look_odds(there, true), look_odds(there, false)]
        })
        .collect();
    information(asked, labels, 2, |index, outcome| columns[index][outcome])
}

/// How many cells a reading's span is cut into.
const CELLS: usize = 40;

/// Of a reading.
#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a few cells"
)]
pub(super) fn bits_of_reading(
    model: &Model,
    planned: &Planned,
    asked: &[&Weighed],
    labels: &[usize],
) -> f64 {
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
