//! An offset of a run: two corners that lead it aside and on the way that it had.

use super::change::Change;
use super::upgrade::{Upgraded, number_at};
use crate::plan::{Fitting, PieceKind, Plan, Point, RunPath};
use crate::units::Length;

/// Legs lie along one another where the sine of their turn is less than this. Of the computation.
pub(super) const PARALLEL: f64 = 1e-3;

/// Every plan in which one offset is dropped: what comes after moves aside, as far as the next leg
/// that lies along the offset, or as far as the end.
pub(super) fn dropped(plan: &Plan) -> Vec<Upgraded> {
    let points = &plan.run.points;
    let last = points.len().saturating_sub(1);
    (0..last.saturating_sub(1))
        .filter_map(|first| drop_at(plan, first))
        .collect()
}

/// Drops the offset whose corners are the points `first` and `first + 1`.
fn drop_at(plan: &Plan, first: usize) -> Option<Upgraded> {
    let points = &plan.run.points;
    let has_riser = |fitting: &Fitting| fitting.riser.is_some();
    if has_riser(&points[first].fitting) || has_riser(&points[first + 1].fitting) {
        return None;
    }
    let before = match first {
        0 => plan.dryer.outlet(),
        _ => points[first - 1].position,
    };
    let at = |index: usize| points[index].position;
    let heading = before.heading_to(at(first))?;
    let after = at(first + 1).heading_to(at(first + 2))?;
    let goes_on = heading.turn_to(after).degrees() < 90.0;
    if heading.cross(after).abs() > PARALLEL || !goes_on {
        return None;
    }
    let side = heading.right();
    let aside = heading.cross(at(first).heading_to(at(first + 1))?)
        * at(first).distance(at(first + 1)).metres();
    let moved = |point: Point| point.toward(side, Length::from_metres(-aside));
    let mut changed = plan.clone();
    changed.run.points[first + 2].position = moved(at(first + 2));
    if let Some(next) = points.get(first + 3) {
        let on = at(first + 2).heading_to(next.position)?;
        if side.cross(on).abs() > PARALLEL {
            return None;
        }
    }
    changed.run.points.drain(first..first + 2);
    let change = Change::DropOffset {
        bend: number_at(plan, &RunPath::of(plan), first)?,
        aside: Length::from_metres(aside.abs()),
        moves_hood: first + 3 == points.len(),
    };
    Some((change, changed))
}

/// Every plan in which one corner without a riser is left out, where what is left turns by nothing,
/// by 45 or by 90 deg.
pub(super) fn without_a_point(plan: &Plan) -> Vec<Upgraded> {
    let last = plan.run.points.len().saturating_sub(1);
    let path = RunPath::of(plan);
    let indices = (0..last).filter(|index| plan.run.points[*index].fitting.riser.is_none());
    let plans = indices.filter_map(|index| {
        let bend = number_at(plan, &path, index)?;
        let mut changed = plan.clone();
        changed.run.points.remove(index);
        Some((Change::DropCorner { bend }, changed))
    });
    plans.filter(|(_, plan)| turns_by_eighths(plan)).collect()
}

fn turns_by_eighths(plan: &Plan) -> bool {
    let path = RunPath::of(plan);
    path.pieces.iter().all(|piece| match piece.kind {
        PieceKind::Bend(bend) => {
            let turn = bend.angle.degrees();
            [45.0, 90.0].iter().any(|usual| (turn - usual).abs() < 1.0)
        }
        _ => true,
    })
}
