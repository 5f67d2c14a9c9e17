//! The few suggestions out of many: none that another is no worse than in everything, and all really
//! different.

use super::suggestion::Candidate;
use crate::plan::{PieceKind, RunPath};

/// The most suggestions.
pub(super) const MOST: usize = 7;
/// A gain of less than this, Pa, is none. Of the computation.
const LEAST_GAIN: f64 = 0.01;

/// The best of `candidates` against `present`, the least back pressure first.
pub(super) fn choose<'a>(present: &Candidate, candidates: &'a [Candidate]) -> Vec<&'a Candidate> {
    let gains = |it: &&Candidate| {
        it.faults <= present.faults
            && it.figures.back_pressure_pa < present.figures.back_pressure_pa - LEAST_GAIN
    };
    let mut better: Vec<&Candidate> = candidates.iter().filter(gains).collect();
    better.sort_by(|one, other| {
        let (one, other) = (&one.figures, &other.figures);
        one.back_pressure_pa
            .total_cmp(&other.back_pressure_pa)
            .then(one.parts.cmp(&other.parts))
    });
    let mut chosen: Vec<&Candidate> = Vec::new();
    for candidate in better {
        if chosen.len() == MOST {
            break;
        }
        let is_new = chosen
            .iter()
            .all(|own| !is_no_worse(own, candidate) && is_different(own, candidate));
        if is_new {
            chosen.push(candidate);
        }
    }
    chosen
}

/// What of the present run is given up: all of it by a new route, else so many upgrades.
fn effort(it: &Candidate) -> usize {
    use super::Change::{NewRoute, OutletSide, TurnDryer};
    let each = it.changes.iter().map(|change| match change {
        NewRoute { .. } => 10,
        OutletSide(_) | TurnDryer(_) => 5,
        _ => 1,
    });
    each.sum()
}

fn is_no_worse(one: &Candidate, other: &Candidate) -> bool {
    let (a, b) = (&one.figures, &other.figures);
    a.back_pressure_pa <= b.back_pressure_pa
        && a.code_length_m <= b.code_length_m + 1e-9
        && a.parts <= b.parts
        && effort(one) <= effort(other)
}

/// Another wall, or another sequence of bends.
fn is_different(one: &Candidate, other: &Candidate) -> bool {
    one.changes.first() != other.changes.first() || sequence(one) != sequence(other)
}

/// Each bend by the ways that the air comes and goes, in eighths of a turn, and its elbow.
fn sequence(it: &Candidate) -> Vec<(i8, i8, bool, String)> {
    #[allow(clippy::cast_possible_truncation, reason = "at most four")]
    let eighth = |heading: Option<crate::plan::Heading>| {
        heading.map_or(9, |heading| {
            (heading.y.atan2(heading.x) / std::f64::consts::FRAC_PI_4).round() as i8
        })
    };
    let path = RunPath::of(&it.plan);
    let bends = path.pieces.iter().filter_map(|piece| match &piece.kind {
        PieceKind::Bend(bend) => Some((
            eighth(bend.before),
            eighth(bend.after),
            bend.is_upward,
            format!("{:?}", bend.elbow),
        )),
        _ => None,
    });
    bends.collect()
}
