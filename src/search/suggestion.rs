//! What is suggested: few, really different, none beaten in everything by another.

use super::change::Change;
use super::different::are_different;
use super::ranked::ranked;
use super::{Candidate, Figures, Gain};
use crate::plan::{Dryer, Plan, Run, RunPath};
use crate::units::Airflow;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// A run to be taken in place of the present one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Suggestion {
    /// The run.
    pub run: Run,
    /// The dryer, which it may want elsewhere.
    pub dryer: Dryer,
    /// What it changes.
    pub changes: Vec<Change>,
    /// Its figures.
    pub figures: Figures,
    /// What it gains; none where no air moves at present.
    pub gain: Option<Gain>,
    /// Straights and elbows that are not there at present.
    pub rebuilt: usize,
}

impl Suggestion {
    /// `plan` with this run and this dryer.
    #[must_use]
    pub fn taken_in(&self, plan: &Plan) -> Plan {
        Plan {
            run: self.run.clone(),
            dryer: self.dryer,
            ..plan.clone()
        }
    }
}

/// Why no new run reaches a place where it may end.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Blocked {
    /// Whether no wall is drawn through which a run could leave, and none may leave by the roof.
    pub has_no_way_out: bool,
    /// Ids of the obstacles that stood in the way, most often first.
    pub by: Vec<Arc<str>>,
    /// The obstacle without which the best route opens, and the airflow that it opens, m³/s.
    pub opens: Option<(Arc<str>, Airflow)>,
}

/// A candidate with what it changes.
pub(super) struct Changed {
    pub changes: Vec<Change>,
    pub candidate: Candidate,
    /// Straights and elbows that are not there at present.
    pub rebuilt: usize,
    /// What it gains, once that was asked for.
    pub gain: Option<Gain>,
}

/// That `other` has a new route: through which wall of the present plan it goes, if through one, and how
/// far its end moves.
pub(super) fn new_route(present: &Plan, other: &Plan) -> Change {
    let (before, after) = (RunPath::of(present), RunPath::of(other));
    let (end, faces) = after.end;
    let walls = present.walls.iter().filter(|wall| wall.outside);
    let off = |wall: &crate::plan::Wall| {
        end.distance_to_segment(wall.from(), wall.to()).metres() - wall.thickness.metres() / 2.0
    };
    let nearest = walls.min_by(|one, other| off(one).total_cmp(&off(other)));
    Change::NewRoute {
        wall: faces.and(nearest).map(|wall| wall.id.clone()),
        end_moves: before.end.0.distance(end),
    }
}

/// The places in `found` of the best that are really different, the one with the most airflow first:
/// none of them is beaten in everything by another, and each is better than the present run in airflow
/// or in code length, unless that run cannot be built.
pub(super) fn choose(
    present: Option<&Candidate>,
    plan: &Plan,
    has_present_room: bool,
    found: &[Changed],
    most: usize,
) -> Vec<usize> {
    let figures = |index: usize| &found[index].candidate.figures;
    let beats_present = |index: &usize| {
        let Some(present) = present.filter(|_| has_present_room) else {
            return true;
        };
        let own = figures(*index);
        own.order(&present.figures).is_lt() && own.differ(&present.figures)
            || own.code_length < present.figures.code_length
    };
    let left = (0..found.len()).filter(beats_present);
    let left = ranked(left, &|one, other| {
        let by_air = figures(one).order(figures(other));
        by_air.then(figures(one).parts.cmp(&figures(other).parts))
    });
    // A dryer whose outlet cannot go elsewhere must not lose its other suggestions.
    let stands_for = |one: usize, other: usize| {
        let (own, its) = (
            found[one].candidate.plan.dryer,
            found[other].candidate.plan.dryer,
        );
        own == plan.dryer || own == its
    };
    let is_no_worse = |one: usize, other: usize| {
        let (own, its) = (figures(one), figures(other));
        stands_for(one, other)
            && own.order(its).is_le()
            && own.code_length <= its.code_length
            && own.parts <= its.parts
            && found[one].rebuilt <= found[other].rebuilt
    };
    // They lie best first: of two that are alike in everything the first stays.
    let is_beaten = |place: usize| {
        let own = left[place];
        left.iter().enumerate().any(|(at, other)| {
            at != place && is_no_worse(*other, own) && (at < place || !is_no_worse(own, *other))
        })
    };
    let mut chosen: Vec<usize> = Vec::new();
    for (place, own) in left.iter().copied().enumerate() {
        if chosen.len() == most {
            break;
        }
        let is_new = |taken: &usize| {
            are_different(&found[*taken].candidate.plan, &found[own].candidate.plan)
        };
        if !is_beaten(place) && chosen.iter().all(is_new) {
            chosen.push(own);
        }
    }
    chosen
}
