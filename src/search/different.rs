//! Whether two plans' runs are really different, and how much of one is not in the other.

use crate::plan::{Bend, Elbow, Piece, PieceKind, Plan, Point, RunPath};
use crate::units::Length;

/// Ends and legs farther apart than this, m, are elsewhere: 6 in. Of the computation.
const ELSEWHERE: f64 = 0.1524;
/// So much of the length has to be elsewhere. Of the computation.
const SHARE: f64 = 0.25;
/// Looked at every so many m along the run. Of the computation.
const STEP: f64 = 0.05;
/// Places and angles nearer than this are the same, m or rad. Of the computation.
const SAME: f64 = 1e-6;

/// Whether a person would call them two routes: another end, another sequence of turns or other elbows
/// in it, or a quarter of the length more than 6 in away. Which of several turns have the better elbow
/// makes no other route.
pub(super) fn are_different(one: &Plan, other: &Plan) -> bool {
    let (first, second) = (RunPath::of(one), RunPath::of(other));
    let bends = |path: &RunPath| -> Vec<Bend> { each_bend(&path.pieces).copied().collect() };
    let (own, its) = (bends(&first), bends(&second));
    let turns_alike = |(own, its): (&Bend, &Bend)| {
        (own.angle.degrees() - its.angle.degrees()).abs() < 1.0
            && own.before.is_none() == its.before.is_none()
            && own.is_upward == its.is_upward
    };
    let count = |bends: &[Bend], elbow: &Elbow| {
        let alike = bends.iter().filter(|bend| bend.elbow == *elbow);
        alike.count()
    };
    let has_other_elbows = own
        .iter()
        .any(|bend| count(&own, &bend.elbow) != count(&its, &bend.elbow));
    first.end.0.distance(second.end.0).metres() > ELSEWHERE
        || own.len() != its.len()
        || !own.iter().zip(&its).all(turns_alike)
        || has_other_elbows
        || share_elsewhere(&first, &second) >= SHARE
}

fn share_elsewhere(path: &RunPath, other: &RunPath) -> f64 {
    let (mut looked_at, mut elsewhere) = (0.0, 0.0);
    for (from, to, height) in legs(path) {
        let mut along = STEP / 2.0;
        let length = from.distance(to).metres();
        while let Some(heading) = from.heading_to(to).filter(|_| along < length) {
            let at = from.toward(heading, Length::from_metres(along));
            let near = legs(other).any(|(from, to, its)| {
                at.distance_to_segment(from, to)
                    .metres()
                    .hypot(its - height)
                    <= ELSEWHERE
            });
            looked_at += 1.0;
            elsewhere += f64::from(u8::from(!near));
            along += STEP;
        }
    }
    if looked_at > 0.0 {
        elsewhere / looked_at
    } else {
        0.0
    }
}

/// The level legs from corner to corner, with their heights, m.
fn legs(path: &RunPath) -> impl Iterator<Item = (Point, Point, f64)> + '_ {
    path.pieces.iter().filter_map(|piece| match piece.kind {
        PieceKind::Straight { corners, .. } => Some((corners.0, corners.1, piece.height.metres())),
        _ => None,
    })
}

fn each_bend(pieces: &[Piece]) -> impl Iterator<Item = &Bend> {
    pieces.iter().filter_map(|piece| match &piece.kind {
        PieceKind::Bend(bend) => Some(bend),
        _ => None,
    })
}

/// How many straights and elbows of `plan` are not in `present` as they are.
pub(super) fn rebuilt(plan: &Plan, present: &Plan) -> usize {
    let (path, before) = (RunPath::of(plan), RunPath::of(present));
    let is_there = |piece: &&Piece| {
        !before.pieces.iter().any(|other| {
            let same_height = (piece.height - other.height).metres().abs() < SAME;
            same_height
                && match (&piece.kind, &other.kind) {
                    (
                        PieceKind::Straight { ends, duct, .. },
                        PieceKind::Straight {
                            ends: its_ends,
                            duct: its_duct,
                            ..
                        },
                    ) => same(*ends, *its_ends) && duct == its_duct,
                    (PieceKind::Bend(own), PieceKind::Bend(its)) => {
                        own.corner.distance(its.corner).metres() < SAME
                            && own.elbow == its.elbow
                            && (own.angle.radians() - its.angle.radians()).abs() < SAME
                    }
                    (PieceKind::Termination, PieceKind::Termination) => {
                        path.end.0.distance(before.end.0).metres() < SAME
                    }
                    _ => false,
                }
        })
    };
    path.pieces.iter().filter(is_there).count()
}

fn same(own: (Point, Point), its: (Point, Point)) -> bool {
    own.0.distance(its.0).metres() < SAME && own.1.distance(its.1).metres() < SAME
}
