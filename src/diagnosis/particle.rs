//! What the inference weighs: a set of faults, each with a severity that fills one cell of its span.

use super::cause::{CauseKind, PlacedCause};
use super::model::Model;
use crate::duct::blockage;
use crate::duct::tables::fault_odds as odds;
use std::sync::Arc;

/// A fault of a particle.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Fault {
    /// Index of its cause.
    pub cause: usize,
    pub kind: CauseKind,
    /// Where it sits; of a leak the joint before this place.
    pub place: usize,
    /// Where the fault's severity begins and ends: a free share of the area, a share of a speed, an
    /// area in m², or a K.
    pub severity: (f64, f64),
    /// K of a blockage under each draw, in velocity pressures of its own duct; of another fault none.
    pub k: Arc<[f64]>,
}

/// A set of at most two faults.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Particle {
    pub faults: Vec<Fault>,
    /// Its odds before anything is read; all together come to one.
    pub prior: f64,
}

/// Cells of a severity where it stands alone, and where there are two.
const CELLS: usize = 7;
const CELLS_OF_TWO: usize = 3;
/// Cells of what is no place of the run.
const OTHER_CELLS: usize = 4;
/// The same beside a place at fault; of a leak, how many joints.
const OTHER_CELLS_OF_TWO: usize = 2;
/// A leak sits at the first joint with these odds, else at one of the others. Of the computation.
const LEAK_AT_FIRST: f64 = 0.5;

/// Every set of faults that is weighed. `screen`: whether any reading was taken with the screen not
/// cleaned; `joints`: the places of joints at which a leak is thought of, the first one first.
pub(super) fn particles(
    model: &Model,
    causes: &[PlacedCause],
    screen: bool,
    joints: &[usize],
) -> Vec<Particle> {
    let mut particles = vec![Particle {
        faults: Vec::new(),
        prior: odds::NOTHING,
    }];
    let places: Vec<usize> = (0..causes.len())
        .filter(|cause| causes[*cause].cause.is_place())
        .collect();
    let whole: f64 = places.iter().map(|place| causes[*place].weight).sum();
    let none: Arc<[f64]> = Arc::new([]);
    let fault = |cause: usize, severity: (f64, f64)| Fault {
        cause,
        kind: causes[cause].cause.kind,
        place: causes[cause].place,
        severity,
        k: Arc::clone(&none),
    };
    let alone = blockages(model, CELLS, 0);
    let end = model.elements.len() - 1;
    for place in &places {
        let odds = odds::ONE_PLACE * causes[*place].weight / whole;
        for cell in &alone {
            particles.push(Particle {
                faults: vec![cell.at(fault(*place, cell.severity), end)],
                prior: share(odds, CELLS),
            });
        }
    }
    two_places(model, causes, &places, &fault, &mut particles);
    place_and_other(model, causes, &places, joints, &fault, &mut particles);
    for (cause, placed) in causes.iter().enumerate() {
        let (span, prior) = match placed.cause.kind {
            CauseKind::Blower => (odds::BLOWER_SPEED, odds::BLOWER),
            CauseKind::RoomStarved => (odds::ROOM_AREA, odds::ROOM),
            CauseKind::LintScreen if screen => (odds::SCREEN_K, odds::SCREEN),
            CauseKind::Leak => {
                leaks(joints, |severity, place, prior| {
                    let faults = vec![Fault {
                        place,
                        ..fault(cause, severity)
                    }];
                    particles.push(Particle { faults, prior });
                });
                continue;
            }
            _ => continue,
        };
        for severity in cells(span, OTHER_CELLS) {
            particles.push(Particle {
                faults: vec![fault(cause, severity)],
                prior: share(prior, OTHER_CELLS),
            });
        }
    }
    let whole: f64 = particles.iter().map(|particle| particle.prior).sum();
    for particle in &mut particles {
        particle.prior /= whole;
    }
    particles
}

fn two_places(
    model: &Model,
    causes: &[PlacedCause],
    places: &[usize],
    fault: &impl Fn(usize, (f64, f64)) -> Fault,
    particles: &mut Vec<Particle>,
) {
    let pairs = || {
        let after = |index: usize| places[index + 1..].iter();
        let pairs = places.iter().enumerate();
        pairs
            .flat_map(move |(index, one)| after(index).map(move |other| (*one, *other)))
            // One element is not named twice.
            .filter(|(one, other)| causes[*one].place != causes[*other].place)
    };
    let weight = |(one, other): (usize, usize)| causes[one].weight * causes[other].weight;
    let whole: f64 = pairs().map(weight).sum();
    let of_first = blockages(model, CELLS_OF_TWO, 0);
    let of_second = blockages(model, CELLS_OF_TWO, 1);
    let end = model.elements.len() - 1;
    for (one, other) in pairs() {
        let prior = odds::TWO_PLACES * weight((one, other)) / whole;
        let prior = share(prior, CELLS_OF_TWO * CELLS_OF_TWO);
        for first in &of_first {
            for second in &of_second {
                let faults = vec![
                    first.at(fault(one, first.severity), end),
                    second.at(fault(other, second.severity), end),
                ];
                particles.push(Particle { faults, prior });
            }
        }
    }
}

/// A place at fault together with what is no place: blower, leak or room.
fn place_and_other(
    model: &Model,
    causes: &[PlacedCause],
    places: &[usize],
    joints: &[usize],
    fault: &impl Fn(usize, (f64, f64)) -> Fault,
    particles: &mut Vec<Particle>,
) {
    let whole: f64 = places.iter().map(|place| causes[*place].weight).sum();
    let end = model.elements.len() - 1;
    let blocked = blockages(model, CELLS_OF_TWO, 0);
    for (cause, placed) in causes.iter().enumerate() {
        // A leak fills its whole span, at the first joint and at the middle one.
        let (odds, others): (f64, Vec<Fault>) = match placed.cause.kind {
            CauseKind::Blower => {
                let cells = cells(odds::BLOWER_SPEED, OTHER_CELLS_OF_TWO);
                let others = cells.map(|cell| fault(cause, cell)).collect();
                (odds::PLACE_AND_BLOWER, others)
            }
            CauseKind::RoomStarved => {
                let cells = cells(odds::ROOM_AREA, OTHER_CELLS_OF_TWO);
                let others = cells.map(|cell| fault(cause, cell)).collect();
                (odds::PLACE_AND_ROOM, others)
            }
            CauseKind::Leak => {
                let joints = joints.iter().take(OTHER_CELLS_OF_TWO);
                let others = joints.map(|place| Fault {
                    place: *place,
                    ..fault(cause, odds::LEAK_AREA)
                });
                (odds::PLACE_AND_LEAK, others.collect())
            }
            _ => continue,
        };
        for place in places {
            let prior = odds * causes[*place].weight / whole;
            let prior = share(prior, CELLS_OF_TWO * others.len());
            for cell in &blocked {
                for other in &others {
                    let blocked = cell.at(fault(*place, cell.severity), end);
                    particles.push(Particle {
                        faults: vec![blocked, other.clone()],
                        prior,
                    });
                }
            }
        }
    }
}

/// A cell of a blockage's severity, with its K under each draw.
struct BlockageCell {
    severity: (f64, f64),
    in_duct: Arc<[f64]>,
    at_end: Arc<[f64]>,
}

impl BlockageCell {
    /// The fault with its K; `end` is the termination's place.
    fn at(&self, mut fault: Fault, end: usize) -> Fault {
        let k = if fault.place == end {
            &self.at_end
        } else {
            &self.in_duct
        };
        fault.k = Arc::clone(k);
        fault
    }
}

/// The cells of a blockage's severity; the severities of a first and of a second one fill their cells
/// apart.
fn blockages(model: &Model, count: usize, number: usize) -> Vec<BlockageCell> {
    let draws = &model.air(false).draws;
    let each = |severity: (f64, f64), k: &dyn Fn(f64) -> f64| -> Arc<[f64]> {
        draws
            .iter()
            .map(|draw| {
                let free = severity.0 + (severity.1 - severity.0) * draw.within_cell[number];
                k(free) * draw.blockage
            })
            .collect()
    };
    cells(odds::FREE_AREA, count)
        .map(|severity| BlockageCell {
            severity,
            in_duct: each(severity, &blockage::in_duct),
            at_end: each(severity, &|free| blockage::at_end(free, 1.0) - 1.0),
        })
        .collect()
}

fn leaks(joints: &[usize], mut add: impl FnMut((f64, f64), usize, f64)) {
    for (index, place) in joints.iter().enumerate() {
        let odds = match (index, joints.len()) {
            (_, 1) => odds::LEAK,
            (0, _) => odds::LEAK * LEAK_AT_FIRST,
            (_, count) => share(odds::LEAK * (1.0 - LEAK_AT_FIRST), count - 1),
        };
        for severity in cells(odds::LEAK_AREA, OTHER_CELLS) {
            add(severity, *place, share(odds, OTHER_CELLS));
        }
    }
}

#[allow(clippy::cast_precision_loss, reason = "a few cells")]
fn share(of: f64, count: usize) -> f64 {
    of / count as f64
}

/// A span cut into cells of one width.
#[allow(clippy::cast_precision_loss, reason = "a few cells")]
fn cells((from, to): (f64, f64), count: usize) -> impl Iterator<Item = (f64, f64)> {
    let width = (to - from) / count as f64;
    (0..count).map(move |cell| {
        let start = from + width * cell as f64;
        (start, start + width)
    })
}
