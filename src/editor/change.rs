//! Changes of a plan. Each gives the changed plan or a refusal, and never half of one.

use crate::plan::{
    Duct, Elbow, ElementId, Field, Fitting, Input, LegState, NodeId, Override, Part, Plan, Point,
    Riser, RunPoint, ValueError, validate,
};
use crate::report::words::Refusal;
use crate::units::Length;

/// A leg shorter than this cannot be built; it keeps two corners from falling on one another.
pub(super) const SHORTEST_LEG: Length = Length::from_metres(0.05);
/// Two lengths that are closer than this are the same.
const SAME_LENGTH: Length = Length::from_metres(1e-9);

/// The plan after a change, or why there is none.
pub(super) type Changed = Result<Plan, Refusal>;

fn index(plan: &Plan, node: &NodeId) -> Result<usize, Refusal> {
    match node {
        NodeId::Outlet => Err(Refusal::NoSuchElement),
        NodeId::Point(id) => plan.run.index_of(id).ok_or(Refusal::NoSuchElement),
    }
}

/// The corner before the point at `index`.
pub(super) fn corner_before(plan: &Plan, index: usize) -> Point {
    match index.checked_sub(1) {
        None => plan.dryer.outlet(),
        Some(before) => plan.run.points[before].position,
    }
}

/// The corners beside the point called `node`.
pub(super) fn neighbours(plan: &Plan, node: &NodeId) -> Vec<Point> {
    let Ok(index) = index(plan, node) else {
        return Vec::new();
    };
    let after = plan.run.points.get(index + 1).map(|point| point.position);
    core::iter::once(corner_before(plan, index))
        .chain(after)
        .collect()
}

/// The plan itself, where every value can be.
pub(super) fn checked(plan: Plan) -> Changed {
    validate(&plan).map_err(Refusal::Value)?;
    Ok(plan)
}

/// Moves a corner.
pub(super) fn move_corner(plan: &Plan, node: &NodeId, to: Point) -> Changed {
    let index = index(plan, node)?;
    let too_near = |other: &Point| to.distance(*other) < SHORTEST_LEG;
    if neighbours(plan, node).iter().any(too_near) {
        return Err(Refusal::LegTooShort);
    }
    let mut plan = plan.clone();
    plan.run.points[index].position = to;
    checked(plan)
}

/// Makes a bend at `at` on the leg that arrives at `leg`; gives the new node too.
pub(super) fn insert_bend(plan: &Plan, leg: &NodeId, at: Point) -> Result<(Plan, NodeId), Refusal> {
    let index = index(plan, leg)?;
    let before = corner_before(plan, index);
    let after = plan.run.points[index].position;
    if at.distance(before) < SHORTEST_LEG || at.distance(after) < SHORTEST_LEG {
        return Err(Refusal::LegTooShort);
    }
    // The new bend is made like the one before it.
    let elbow = match index.checked_sub(1) {
        None => plan.run.outlet.elbow,
        Some(before) => plan.run.points[before].fitting.elbow,
    };
    let id = plan.run.free_id();
    let node = NodeId::Point(id.clone());
    let mut plan = plan.clone();
    let duct: Duct = plan.run.points[index].duct;
    plan.run.points.insert(
        index,
        RunPoint {
            id,
            position: at,
            duct,
            leg: LegState::default(),
            fitting: Fitting { elbow, riser: None },
        },
    );
    Ok((checked(plan)?, node))
}

/// Draws the next leg to `to`: from the outlet in place of the run that is there, or from its end.
pub(super) fn draw_leg(plan: &Plan, fresh: bool, to: Point) -> Changed {
    let last = plan.run.points.last();
    let from = match last {
        Some(last) if !fresh => last.position,
        _ => plan.dryer.outlet(),
    };
    if from.distance(to) < SHORTEST_LEG {
        return Err(Refusal::LegTooShort);
    }
    let elbow = match last {
        Some(last) if !fresh => last.fitting.elbow,
        _ => plan.run.outlet.elbow,
    };
    let duct = match last {
        Some(last) if !fresh => last.duct,
        _ => Duct::Rigid,
    };
    let mut plan = plan.clone();
    if fresh {
        plan.run.points.clear();
        plan.run.outlet.riser = None;
    }
    let id = plan.run.free_id();
    plan.run.points.push(RunPoint {
        id,
        position: to,
        duct,
        leg: LegState::default(),
        fitting: Fitting { elbow, riser: None },
    });
    checked(plan)
}

/// Removes a corner; the termination stays.
pub(super) fn delete_bend(plan: &Plan, node: &NodeId) -> Changed {
    let index = index(plan, node)?;
    if index + 1 == plan.run.points.len() {
        return Err(Refusal::TerminationStays);
    }
    let (before, after) = (
        corner_before(plan, index),
        plan.run.points[index + 1].position,
    );
    if before.distance(after) < SHORTEST_LEG {
        return Err(Refusal::LegTooShort);
    }
    let mut plan = plan.clone();
    plan.run.points.remove(index);
    checked(plan)
}

/// Sets a leg's length, corner to corner, along its heading; everything after it moves along.
pub(super) fn set_leg_length(plan: &Plan, node: &NodeId, length: Length) -> Changed {
    let index = index(plan, node)?;
    if length < SHORTEST_LEG {
        return Err(Refusal::LegTooShort);
    }
    let (from, to) = (corner_before(plan, index), plan.run.points[index].position);
    let heading = from.heading_to(to).ok_or(Refusal::LegTooShort)?;
    let by = length - from.distance(to);
    let mut plan = plan.clone();
    // The coordinates' last digit is no change.
    if by.abs() < SAME_LENGTH {
        return Ok(plan);
    }
    for point in &mut plan.run.points[index..] {
        point.position = point.position.toward(heading, by);
    }
    checked(plan)
}

/// Sets the rise at a node; nought takes the riser away.
pub(super) fn set_rise(plan: &Plan, node: &NodeId, rise: Length) -> Changed {
    if !Field::RISE.holds(rise.metres()) {
        return Err(Refusal::Value(ValueError::OutOfRange {
            path: "rise_m".to_owned(),
            value: rise.metres(),
            field: Field::RISE,
        }));
    }
    let mut plan = plan.clone();
    let fitting = plan.run.fitting_mut(node).ok_or(Refusal::NoSuchElement)?;
    fitting.riser = (rise != Length::ZERO).then(|| Riser {
        rise,
        elbow: fitting.riser.map_or(fitting.elbow, |riser| riser.elbow),
    });
    checked(plan)
}

/// Sets the duct of a leg and what else is known of it.
pub(super) fn set_leg(plan: &Plan, node: &NodeId, duct: Duct, leg: LegState) -> Changed {
    let index = index(plan, node)?;
    alter(plan, |plan| {
        let point = &mut plan.run.points[index];
        (point.duct, point.leg) = (duct, leg);
    })
}

/// Sets an elbow.
pub(super) fn set_elbow(plan: &Plan, element: &ElementId, elbow: Elbow) -> Changed {
    let mut plan = plan.clone();
    let fitting = plan
        .run
        .fitting_mut(&element.node)
        .ok_or(Refusal::NoSuchElement)?;
    match (element.part, &mut fitting.riser) {
        (Part::ElbowAfterRiser, Some(riser)) => riser.elbow = elbow,
        (Part::ElbowAfterRiser, None) => return Err(Refusal::NoSuchElement),
        _ => fitting.elbow = elbow,
    }
    checked(plan)
}

/// Sets a value in place of the project's own, or with none gives the project's back. The others keep
/// their order, so that a value set to what it is changes nothing.
pub(super) fn set_override(plan: &Plan, input: Input, value: Option<Override>) -> Changed {
    alter(plan, |plan| {
        let mut sets = plan.overrides.iter();
        let at = sets.position(|set| set.input == input);
        plan.overrides.retain(|set| set.input != input);
        let at = at.unwrap_or(plan.overrides.len());
        plan.overrides.splice(at..at, value);
    })
}

/// Any other change, checked.
pub(super) fn alter(plan: &Plan, change: impl FnOnce(&mut Plan)) -> Changed {
    let mut plan = plan.clone();
    change(&mut plan);
    checked(plan)
}
