//! Smooth elbows of a long radius for others.

use super::change::Change;
use super::legal::is_legal;
use super::request::Options;
use super::upgrade::{Upgraded, number_of_bend};
use crate::plan::{Elbow, ElbowKind, ElementId, Part, PieceKind, Plan, RunPath};
use crate::units::Length;

/// A long radius, in diameters to the centre line. Common practice, no source. Source: [`ROUTE_SOURCE`].
///
/// [`ROUTE_SOURCE`]: crate::plan::ROUTE_SOURCE
const LONG_RADIUS: f64 = 1.5;

/// Each elbow that has room for a long radius with one, and all of them at once.
pub(super) fn long_radius(plan: &Plan, options: &Options) -> Vec<Upgraded> {
    let path = RunPath::of(plan);
    let radius = plan.run.diameter * LONG_RADIUS;
    let bends: Vec<ElementId> = path
        .pieces
        .iter()
        .filter(
            |piece| matches!(piece.kind, PieceKind::Bend(bend) if is_shorter(&bend.elbow, radius)),
        )
        .map(|piece| piece.id.clone())
        .collect();
    let mut found = Vec::new();
    let (mut all, mut numbers) = (plan.clone(), Vec::new());
    for id in &bends {
        let Some(number) = number_of_bend(&path, id) else {
            continue;
        };
        let alone = with(plan, id, radius).filter(|plan| is_legal(plan, options));
        let Some(alone) = alone else {
            continue;
        };
        // What has room alone may have none beside another.
        let more = with(&all, id, radius).filter(|plan| is_legal(plan, options));
        if let Some(more) = more {
            all = more;
            numbers.push(number);
        }
        let bends = vec![number];
        found.push((Change::LongRadius { bends, radius }, alone));
    }
    if numbers.len() > 1 {
        let change = Change::LongRadius {
            bends: numbers,
            radius,
        };
        found.push((change, all));
    }
    found
}

fn is_shorter(own: &Elbow, radius: Length) -> bool {
    own.kind != ElbowKind::BentFlexible && (own.kind != ElbowKind::Smooth || own.radius < radius)
}

fn with(plan: &Plan, id: &ElementId, radius: Length) -> Option<Plan> {
    let elbow = Elbow {
        kind: ElbowKind::Smooth,
        radius,
    };
    let mut changed = plan.clone();
    let fitting = changed.run.fitting_mut(&id.node)?;
    match (id.part, &mut fitting.riser) {
        (Part::ElbowAfterRiser, Some(riser)) => riser.elbow = elbow,
        _ => fitting.elbow = elbow,
    }
    Some(changed)
}
