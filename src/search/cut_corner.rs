//! Two elbows of 45 deg for one of 90: the corner is cut.

use super::change::Change;
use super::legal::is_legal;
use super::request::Options;
use super::upgrade::{Upgraded, number_at};
use crate::plan::{
    Elbow, ElbowKind, Fitting, LegState, NodeId, Part, PieceKind, Plan, RunPath, RunPoint,
};
use crate::units::Length;

/// A corner is cut by these shares of the longest cut that its legs hold, the first that is clear.
/// Of the computation.
const CUTS: [f64; 6] = [1.0, 0.75, 0.5, 0.35, 0.2, 0.1];
/// Turns this near to 90 deg are one. Of the computation.
const SAME_TURN: f64 = 0.5;

/// Each level corner of 90 deg cut alone, and all that can be at once.
pub(super) fn cut_corners(plan: &Plan, options: &Options) -> Vec<Upgraded> {
    let last = plan.run.points.len().saturating_sub(1);
    let path = RunPath::of(plan);
    let mut found = Vec::new();
    let (mut all, mut bends, mut shortest) = (plan.clone(), Vec::new(), f64::INFINITY);
    // From the end back, so that a cut moves no corner that is still to come.
    for index in (0..last).rev() {
        let (Some(bend), Some((off, alone))) =
            (number_at(plan, &path, index), cut(plan, index, options))
        else {
            continue;
        };
        let bends_alone = vec![bend];
        let change = Change::TwoFortyFives {
            bends: bends_alone,
            off,
        };
        found.push((change, alone));
        if let Some((off, more)) = cut(&all, index, options) {
            all = more;
            bends.insert(0, bend);
            shortest = shortest.min(off.metres());
        }
    }
    if bends.len() > 1 {
        let off = Length::from_metres(shortest);
        found.push((Change::TwoFortyFives { bends, off }, all));
    }
    found
}

/// The corner at the point `index` cut as far as its legs and the room allow.
fn cut(plan: &Plan, index: usize, options: &Options) -> Option<(Length, Plan)> {
    let points = &plan.run.points;
    let own = points.get(index)?;
    let next = points.get(index + 1)?.position;
    let kind = own.fitting.elbow.kind;
    if own.fitting.riser.is_some() || own.leg.ends_in_wall_box || kind == ElbowKind::BentFlexible {
        return None;
    }
    let before = match index {
        0 => plan.dryer.outlet(),
        _ => points[index - 1].position,
    };
    let arrives = before.heading_to(own.position)?;
    let leaves = own.position.heading_to(next)?;
    if (arrives.turn_to(leaves).degrees() - 90.0).abs() > SAME_TURN {
        return None;
    }
    // Two mitres of 45 deg are no better than what can be bought.
    let elbow = if kind == ElbowKind::SharpMitre {
        Elbow {
            kind: ElbowKind::Segmented,
            radius: plan.run.diameter,
        }
    } else {
        own.fitting.elbow
    };
    let fitting = Fitting { elbow, riser: None };
    let at_45 = elbow.radius.metres() * (core::f64::consts::PI / 8.0).tan();
    let spare = spare_legs(plan, index)? + own.fitting.elbow.radius.metres() - at_45;
    // The leg between the two holds their tangents.
    let least = core::f64::consts::SQRT_2 * at_45;
    let mut tries: Vec<f64> = CUTS.iter().map(|share| share * spare).collect();
    tries.push(least);
    tries.retain(|cut| (least..=spare).contains(cut));
    tries.into_iter().find_map(|cut| {
        let cut = Length::from_metres(cut);
        let mut changed = plan.clone();
        changed.run.points[index].position = own.position.toward(arrives, -cut);
        changed.run.points[index].fitting = fitting;
        let second = RunPoint {
            id: plan.run.free_id(),
            position: own.position.toward(leaves, cut),
            duct: points[index + 1].duct,
            leg: LegState {
                diameter: points[index + 1].leg.diameter,
                ..LegState::default()
            },
            fitting,
        };
        changed.run.points.insert(index + 1, second);
        is_legal(&changed, options).then_some((cut, changed))
    })
}

/// What the fittings leave of the shorter of the two legs at the point `index`, m.
fn spare_legs(plan: &Plan, index: usize) -> Option<f64> {
    let path = RunPath::of(plan);
    let leg = |index: usize| {
        let node = NodeId::Point(plan.run.points.get(index)?.id.clone());
        path.pieces.iter().find_map(|piece| match piece.kind {
            PieceKind::Straight { length, .. }
                if piece.id.part == Part::Leg && piece.id.node == node =>
            {
                Some(length.metres())
            }
            _ => None,
        })
    };
    Some(leg(index)?.min(leg(index + 1)?))
}
