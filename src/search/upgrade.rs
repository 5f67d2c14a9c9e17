//! Upgrades of the run as it is: each changes one thing, and two can go together.

use super::Change;
use crate::plan::{
    Duct, Elbow, ElbowKind, ElementId, Fitting, LegState, NodeId, Part, PieceKind, Plan, Point,
    RunPath, RunPoint,
};
use crate::units::Length;

/// A long radius is so many diameters: common practice, no source. Source: [`ROUTE_SOURCE`].
const LONG_RADIUS: f64 = 1.5;
/// How far off a corner two 45s may sit, in. Source: [`ROUTE_SOURCE`].
const OFF_CORNER: [f64; 4] = [6.0, 9.0, 12.0, 18.0];
/// A turn this near to a right angle is one, deg. Of the computation.
const ABOUT_RIGHT: f64 = 2.0;

/// The elbow that a run in rigid duct is laid with: its first that is made for it.
pub(super) fn rigid_elbow(plan: &Plan) -> Elbow {
    let path = RunPath::of(plan);
    let mut bends = path.pieces.iter().filter_map(|piece| match &piece.kind {
        PieceKind::Bend(bend) => Some(bend.elbow),
        _ => None,
    });
    let is_rigid = |elbow: &Elbow| matches!(elbow.kind, ElbowKind::Smooth | ElbowKind::Segmented);
    bends.find(is_rigid).unwrap_or(Elbow {
        kind: ElbowKind::Segmented,
        radius: plan.run.diameter,
    })
}

/// Every upgrade that `plan` has a place for, each with the plan that it makes.
pub(super) fn upgrades(plan: &Plan) -> Vec<(Change, Plan)> {
    let mut made = Vec::new();
    let path = RunPath::of(plan);
    for piece in &path.pieces {
        let id = &piece.id;
        match &piece.kind {
            PieceKind::Bend(bend) => {
                let radius = plan.run.diameter * LONG_RADIUS;
                let elbow = Elbow {
                    kind: ElbowKind::Smooth,
                    radius,
                };
                let is_longer = bend.elbow.kind != ElbowKind::Smooth || bend.elbow.radius < radius;
                if is_longer && bend.elbow.kind != ElbowKind::BentFlexible {
                    let element = id.clone();
                    made.extend(
                        with_elbow(plan, id, elbow)
                            .map(|plan| (Change::LongRadius { element, radius }, plan)),
                    );
                }
                let is_right = (bend.angle.degrees() - 90.0).abs() < ABOUT_RIGHT;
                if is_right && bend.before.is_some() && bend.after.is_some() {
                    for off in OFF_CORNER.map(Length::from_inches) {
                        let element = id.clone();
                        made.extend(
                            two_forty_fives(plan, id, off)
                                .map(|plan| (Change::TwoFortyFives { element, off }, plan)),
                        );
                    }
                }
            }
            PieceKind::Straight { duct, .. } if duct.is_flexible() && id.part == Part::Leg => {
                let element = id.clone();
                made.extend(
                    rigid(plan, id).map(|plan| (Change::RigidForFlexible { element }, plan)),
                );
            }
            _ => {}
        }
    }
    for index in 0..plan.run.points.len() {
        made.extend(drop_offset(plan, index));
    }
    made
}

fn with_elbow(plan: &Plan, id: &ElementId, elbow: Elbow) -> Option<Plan> {
    let mut made = plan.clone();
    let fitting = made.run.fitting_mut(&id.node)?;
    match (id.part, &mut fitting.riser) {
        (Part::ElbowAfterRiser, Some(riser)) => riser.elbow = elbow,
        _ => fitting.elbow = elbow,
    }
    Some(made)
}

fn two_forty_fives(plan: &Plan, id: &ElementId, off: Length) -> Option<Plan> {
    let NodeId::Point(name) = &id.node else {
        return None;
    };
    let index = plan.run.index_of(name)?;
    let next = plan.run.points.get(index + 1)?;
    let corner = &plan.run.points[index];
    if corner.fitting.riser.is_some() || corner.fitting.elbow.kind == ElbowKind::BentFlexible {
        return None;
    }
    let before = if index == 0 {
        plan.dryer.outlet()
    } else {
        plan.run.points[index - 1].position
    };
    let (back, ahead) = (
        corner.position.heading_to(before)?,
        corner.position.heading_to(next.position)?,
    );
    let far = |to: Point| corner.position.distance(to) > off;
    if !far(before) || !far(next.position) {
        return None;
    }
    let fitting = Fitting {
        elbow: match corner.fitting.elbow.kind {
            ElbowKind::SharpMitre => Elbow {
                kind: ElbowKind::Segmented,
                radius: plan.run.diameter,
            },
            _ => corner.fitting.elbow,
        },
        riser: None,
    };
    let second = RunPoint {
        id: free_name(plan),
        position: corner.position.toward(ahead, off),
        duct: next.duct,
        leg: LegState {
            diameter: next.leg.diameter,
            ..LegState::default()
        },
        fitting,
    };
    let mut made = plan.clone();
    made.run.points[index].position = corner.position.toward(back, off);
    made.run.points[index].fitting = fitting;
    made.run.points.insert(index + 1, second);
    Some(made)
}

fn free_name(plan: &Plan) -> std::sync::Arc<str> {
    let mut number = plan.run.points.len() + 1;
    loop {
        let name = format!("r{number}");
        if plan.run.index_of(&name).is_none() {
            return name.into();
        }
        number += 1;
    }
}

/// The leg in rigid duct, and the bends of flexible duct at its ends as elbows.
fn rigid(plan: &Plan, id: &ElementId) -> Option<Plan> {
    let NodeId::Point(name) = &id.node else {
        return None;
    };
    let index = plan.run.index_of(name)?;
    // The transition duct moves with the dryer: it stays flexible.
    if index == 0 && plan.run.points.len() > 1 {
        return None;
    }
    let elbow = rigid_elbow(plan);
    let mut made = plan.clone();
    made.run.points[index].duct = Duct::Rigid;
    let ends = [index.checked_sub(1), Some(index)];
    for at in ends.into_iter().flatten() {
        let fitting = &mut made.run.points[at].fitting;
        if fitting.elbow.kind == ElbowKind::BentFlexible {
            fitting.elbow = elbow;
        }
    }
    Some(made)
}

/// Leaves out the corner at `index` and the one after it, where the second turns back what the first
/// turned; the corner after them moves over by as much, so that only the leg past it changes length.
fn drop_offset(plan: &Plan, index: usize) -> Option<(Change, Plan)> {
    let points = &plan.run.points;
    let (first, second, third) = (
        points.get(index)?,
        points.get(index + 1)?,
        points.get(index + 2)?,
    );
    let before = if index == 0 {
        plan.dryer.outlet()
    } else {
        points[index - 1].position
    };
    let ways = (
        before.heading_to(first.position)?,
        first.position.heading_to(second.position)?,
        second.position.heading_to(third.position)?,
    );
    if ways.0.turn_to(ways.2).degrees() > ABOUT_RIGHT
        || ways.0.turn_to(ways.1).degrees() < ABOUT_RIGHT
        || first.fitting.riser.is_some()
        || second.fitting.riser.is_some()
    {
        return None;
    }
    let aside = (second.position.x - first.position.x) * ways.0.right().x
        + (second.position.y - first.position.y) * ways.0.right().y;
    let moved = third
        .position
        .toward(ways.0.right(), Length::from_metres(-aside));
    let moves_hood = index + 3 == points.len();
    // What follows must lie along the way that the corner moves.
    if let Some(fourth) = points.get(index + 3) {
        let (old, new) = (
            third.position.heading_to(fourth.position)?,
            moved.heading_to(fourth.position)?,
        );
        if old.turn_to(new).degrees() > ABOUT_RIGHT {
            return None;
        }
    }
    let change = Change::DropOffset {
        element: ElementId::new(&NodeId::Point(first.id.clone()), Part::Elbow),
        aside: Length::from_metres(aside.abs()),
        moves_hood,
    };
    let mut made = plan.clone();
    made.run.points[index + 2].position = moved;
    made.run.points.drain(index..index + 2);
    Some((change, made))
}
