//! The run unrolled: its legs laid out in one line from the outlet, height upright.

use crate::plan::{Heading, NodeId, Part, PieceKind, Plan, Point, RunPath};
use crate::units::Length;

/// Along the unrolled run, away from the dryer.
pub(super) const ALONG: Heading = Heading::RIGHT;
/// Upward on the elevation.
pub(super) const UP: Heading = Heading::UP;

/// A corner of the run, or its outlet or end, as the elevation has it.
pub(super) struct Corner {
    pub node: NodeId,
    /// From the outlet, corner to corner along the legs.
    pub along: Length,
    /// Height above the floor at which the air arrives.
    pub arrives: Length,
    /// Height above the floor at which it leaves, above or below a riser.
    pub leaves: Length,
}

/// The run's path with the elevation's coordinates in place of the sheet's: x along the legs, y
/// downward from the floor, so that a height is a negative y.
pub(super) struct Unrolled {
    pub path: RunPath,
    /// The outlet, every corner and the end, in run order.
    pub corners: Vec<Corner>,
}

impl Unrolled {
    /// Unrolls the run of `plan`.
    pub fn of(plan: &Plan) -> Self {
        let mut path = RunPath::of(plan);
        let outlet_height = plan.dryer.outlet_height;
        let mut corners = vec![Corner {
            node: NodeId::Outlet,
            along: Length::ZERO,
            arrives: outlet_height,
            leaves: outlet_height,
        }];
        shrink_crowded_bends(&mut path);
        let tangents: Vec<Length> = path
            .pieces
            .iter()
            .map(|piece| match &piece.kind {
                PieceKind::Bend(bend) => bend.tangent(),
                _ => Length::ZERO,
            })
            .collect();
        // Heights where the air enters each piece: only a riser leaves at another than it enters.
        let heights: Vec<Length> = path.pieces.iter().map(|piece| piece.height).collect();
        let height = |index: usize| heights.get(index).copied();
        let (mut along, mut end) = (Length::ZERO, ALONG);
        for (index, piece) in path.pieces.iter_mut().enumerate() {
            let at = point(along, piece.height);
            let before = index.checked_sub(1);
            match &mut piece.kind {
                PieceKind::Straight {
                    corners: drawn,
                    ends,
                    ..
                } => {
                    let first = before.map_or(Length::ZERO, |before| tangents[before]);
                    let last = tangents.get(index + 1).copied().unwrap_or(Length::ZERO);
                    let leaves = height(index + 1).unwrap_or(piece.height);
                    let heading = if piece.id.part == Part::Riser {
                        if let Some(corner) = corners.last_mut() {
                            corner.leaves = leaves;
                        }
                        vertical(leaves - piece.height)
                    } else {
                        along += drawn.0.distance(drawn.1);
                        corners.push(Corner {
                            node: piece.id.node.clone(),
                            along,
                            arrives: leaves,
                            leaves,
                        });
                        ALONG
                    };
                    let to = point(along, leaves);
                    *drawn = (at, to);
                    *ends = (at.toward(heading, first), to.toward(heading, -last));
                    end = heading;
                }
                PieceKind::Bend(bend) => {
                    // The riser comes next where the air leaves vertically, else it came before.
                    let riser = if bend.after.is_none() {
                        Some(index + 1)
                    } else {
                        before
                    };
                    let rise = riser.and_then(|riser| Some(height(riser + 1)? - height(riser)?));
                    let vertical = vertical(rise.unwrap_or(Length::ZERO));
                    bend.corner = at;
                    bend.before = Some(bend.before.map_or(vertical, |_| ALONG));
                    bend.after = Some(bend.after.map_or(vertical, |_| ALONG));
                }
                PieceKind::Termination => path.end = (at, Some(end)),
            }
        }
        Self { path, corners }
    }
}

/// A place on the elevation.
pub(super) fn point(along: Length, height: Length) -> Point {
    Point::new(along.metres(), -height.metres())
}

fn vertical(rise: Length) -> Heading {
    if rise < Length::ZERO { UP.back() } else { UP }
}

/// Two bends that need more room than their riser has are drawn as tight as the riser is high, so
/// that the duct shows as one line while a rise is pulled out of nothing. The analysis says that
/// they overlap.
fn shrink_crowded_bends(path: &mut RunPath) {
    for index in 0..path.pieces.len() {
        let piece = &path.pieces[index];
        let PieceKind::Straight { overlap, .. } = piece.kind else {
            continue;
        };
        if piece.id.part != Part::Riser || overlap == Length::ZERO {
            continue;
        }
        let next = path
            .pieces
            .get(index + 1)
            .map_or(piece.height, |next| next.height);
        let rise = (next - piece.height).abs();
        let share = rise / (rise + overlap);
        for beside in [index.wrapping_sub(1), index + 1] {
            if let Some(PieceKind::Bend(bend)) =
                path.pieces.get_mut(beside).map(|piece| &mut piece.kind)
            {
                bend.elbow.radius = bend.elbow.radius * share;
            }
        }
    }
}
