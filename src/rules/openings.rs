//! How far the termination is from each opening into the building, on the plan.

use super::{RuleSet, rule_set};
use crate::plan::{Opening, OpeningKind, Plan, Point, RuleTopic, RunPath, Wall};
use crate::units::Length;
use serde::Serialize;
use std::sync::Arc;

/// From openings into the building. Source: clause [`RuleTopic::OpeningDistance`].
pub(super) const OPENING_LIMIT: Length = Length::from_feet(3.0);
/// From air intakes. Source: clause [`RuleTopic::IntakeDistance`].
pub(super) const INTAKE_LIMIT: Length = Length::from_feet(10.0);
/// A distance short of the limit by less than this, m, keeps it. Of the computation.
const ROUNDING: f64 = 1e-9;

/// The termination's distance from one opening, level on the plan: the true one is never shorter.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct OpeningDistance {
    /// The opening's id.
    pub opening: Arc<str>,
    /// What it is.
    pub kind: OpeningKind,
    /// How far.
    #[serde(rename = "distance_m")]
    pub distance: Length,
    /// Where the run ends.
    #[serde(skip)]
    pub from: Point,
    /// The opening's nearest edge.
    #[serde(skip)]
    pub to: Point,
}

impl OpeningDistance {
    /// Whether it keeps `limit`.
    pub fn keeps(&self, limit: Length) -> bool {
        self.distance.metres() >= limit.metres() - ROUNDING
    }
}

/// The termination's distance from every opening in an outside wall, in the order of the plan.
pub fn opening_distances(plan: &Plan, path: &RunPath) -> Vec<OpeningDistance> {
    let (from, _) = path.end;
    let measured = plan.openings.iter().filter_map(|opening| {
        let wall = plan.walls.iter().find(|wall| wall.id == opening.wall)?;
        let to = nearest(opening, wall, from).filter(|_| wall.outside)?;
        Some(OpeningDistance {
            opening: opening.id.clone(),
            kind: opening.kind,
            distance: from.distance(to),
            from,
            to,
        })
    });
    measured.collect()
}

/// The distances that are under what the plan's rule set asks for, to be drawn.
pub fn too_near(plan: &Plan, path: &RunPath) -> Vec<OpeningDistance> {
    let set = rule_set(plan.code.rule_set);
    let mut near = opening_distances(plan, path);
    near.retain(|distance| {
        let limit = opening_limit(set, distance.kind);
        limit.is_some_and(|limit| !distance.keeps(limit))
    });
    near
}

/// What a set asks for before an opening of a kind, the greater where two rules do; none where it
/// asks for nothing.
pub fn opening_limit(set: &RuleSet, kind: OpeningKind) -> Option<Length> {
    let has = |topic| set.clauses.iter().any(|clause| clause.topic == topic);
    if kind == OpeningKind::AirIntake && has(RuleTopic::IntakeDistance) {
        return Some(INTAKE_LIMIT);
    }
    has(RuleTopic::OpeningDistance).then_some(OPENING_LIMIT)
}

/// The point of an opening, through all the wall's thickness, that is nearest to `point`; none in a
/// wall without length.
fn nearest(opening: &Opening, wall: &Wall, point: Point) -> Option<Point> {
    let along = wall.from().heading_to(wall.to())?;
    let across = along.right();
    let (right, down) = (point.x - wall.from_x_m, point.y - wall.from_y_m);
    let near = opening.offset.metres();
    let far = near + opening.width.metres();
    let half = wall.thickness.metres() / 2.0;
    let at = (right * along.x + down * along.y).clamp(near, far);
    let aside = (right * across.x + down * across.y).clamp(-half, half);
    let on_line = wall.from().toward(along, Length::from_metres(at));
    Some(on_line.toward(across, Length::from_metres(aside)))
}
