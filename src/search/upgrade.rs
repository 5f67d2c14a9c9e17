//! What can be changed of a run without another way through the room.

use super::change::Change;
use super::legal::is_legal;
use super::request::Options;
use super::route::usual_elbow;
use super::{cut_corner, long_radius, move_dryer, offset};
use crate::plan::{Duct, ElbowKind, ElementId, Part, PieceKind, Plan, RunPath};

/// A plan after one change.
pub(super) type Upgraded = (Change, Plan);

/// What an upgrade does, in the order in which they are tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    Offsets,
    Corners,
    Rigid,
    MovedDryer,
    LongRadius,
    TwoFortyFives,
}

impl Kind {
    pub(super) const ALL: [Self; 6] = [
        Self::Offsets,
        Self::Corners,
        Self::Rigid,
        Self::MovedDryer,
        Self::LongRadius,
        Self::TwoFortyFives,
    ];

    /// Every legal plan that one change of this kind makes of `plan`.
    pub(super) fn upgrades(self, plan: &Plan, options: &Options) -> Vec<Upgraded> {
        let mut found = match self {
            Self::Offsets => offset::dropped(plan),
            Self::Corners => offset::without_a_point(plan),
            Self::Rigid => rigid(plan),
            Self::MovedDryer if options.dryer_may_move => move_dryer::moved(plan),
            Self::MovedDryer => Vec::new(),
            // These look for what is legal themselves.
            Self::LongRadius => return long_radius::long_radius(plan, options),
            Self::TwoFortyFives => return cut_corner::cut_corners(plan, options),
        };
        found.retain(|(_, plan)| is_legal(plan, options));
        found
    }
}

/// The number of a bend, counted from the dryer from one on; none where there is none of that name.
pub(super) fn number_of_bend(path: &RunPath, id: &ElementId) -> Option<usize> {
    let bends = path.pieces.iter();
    let mut bends = bends.filter(|piece| matches!(piece.kind, PieceKind::Bend(_)));
    bends.position(|piece| piece.id == *id).map(|at| at + 1)
}

/// The number of the bend at the point with this index.
pub(super) fn number_at(plan: &Plan, path: &RunPath, index: usize) -> Option<usize> {
    let id = plan.run.points.get(index)?.id.clone();
    let id = ElementId::new(&crate::plan::NodeId::Point(id), Part::Elbow);
    number_of_bend(path, &id)
}

/// Rigid duct for flexible: past the transition duct, which moves with the dryer, and from end to end.
fn rigid(plan: &Plan) -> Vec<Upgraded> {
    let points = &plan.run.points;
    let flexible: Vec<usize> = (0..points.len())
        .filter(|index| points[*index].duct.is_flexible())
        .collect();
    let is_transition = |index: &usize| *index == 0 && points.len() > 1;
    let past: Vec<usize> = flexible
        .iter()
        .copied()
        .filter(|it| !is_transition(it))
        .collect();
    let mut choices = vec![past];
    if choices[0] != flexible {
        choices.push(flexible);
    }
    let choices = choices.into_iter().filter(|legs| !legs.is_empty());
    choices.map(|legs| in_rigid_duct(plan, &legs)).collect()
}

/// These legs in rigid duct, and the bends of flexible duct at their ends as elbows.
fn in_rigid_duct(plan: &Plan, legs: &[usize]) -> Upgraded {
    let mut changed = plan.clone();
    let bought = usual_elbow(&plan.run);
    for index in legs {
        let point = &mut changed.run.points[*index];
        point.duct = Duct::Rigid;
        let fitting = &mut point.fitting;
        if fitting.elbow.kind == ElbowKind::BentFlexible {
            fitting.elbow = bought;
        }
        if let Some(riser) = &mut fitting.riser
            && riser.elbow.kind == ElbowKind::BentFlexible
        {
            riser.elbow = bought;
        }
        let before = match index.checked_sub(1) {
            Some(before) => &mut changed.run.points[before].fitting,
            None => &mut changed.run.outlet,
        };
        if before.riser.is_none() && before.elbow.kind == ElbowKind::BentFlexible {
            before.elbow = bought;
        }
    }
    let legs = legs.iter().map(|index| index + 1).collect();
    (Change::Rigid { legs }, changed)
}
