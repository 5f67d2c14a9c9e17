//! The step from one state to the next.

use super::change::{self, Changed};
use super::{Action, Effect, Gesture, Hit, State, pick, snap};
use crate::plan::{Bounds, ElementId, NodeId, Part, Plan, Point, RunPath};
use crate::report::words::{ActionName, Refusal};
use crate::units::Length;
use std::sync::Arc;

/// Takes `action` and gives what the page has to do. Any change of the plan that is not the drag
/// itself ends a drag first and puts its corner back.
pub fn update(state: &mut State, action: Action) -> Vec<Effect> {
    match action {
        Action::Press { at, reach } => press(state, at, reach),
        Action::Drag { to, reach } => drag(state, to, reach),
        Action::DragRise { node, rise, slack } => super::rise::drag(state, &node, rise, slack),
        Action::Release => return release(state),
        Action::Cancel => cancel(state),
        Action::Select(element) => state.selection = element.filter(|id| exists(state, id)),
        Action::SelectNeighbour { forward } => select_neighbour(state, forward),
        Action::Resize { width, height } => {
            state.view.resize(width, height);
        }
        Action::ShowAll => state.view.show(&Bounds::of(&state.plan)),
        Action::Pan { right, down } => state.view.pan(right, down),
        Action::Zoom { x, y, factor } => state.view.zoom(x, y, factor),
        Action::SetUnits(units) => state.units = units,
        action => return edit(state, action),
    }
    Vec::new()
}

/// The actions that change the plan in one step.
fn edit(state: &mut State, action: Action) -> Vec<Effect> {
    cancel(state);
    let plan = state.plan.clone();
    let (name, changed) = match action {
        Action::Undo | Action::Redo => return step_through_history(state, action == Action::Undo),
        Action::Open(opened) => {
            let opened = change::checked(*opened);
            let fits = opened.is_ok();
            let effects = commit(state, ActionName::OpenPlan, opened);
            if fits {
                state.selection = None;
                state.view.show(&Bounds::of(&state.plan));
            }
            return effects;
        }
        Action::InsertBend { leg, at } => {
            let at = at.or_else(|| middle_of_leg(&plan, &leg));
            let inserted = at
                .ok_or(Refusal::NoSuchElement)
                .and_then(|at| change::insert_bend(&plan, &leg, at));
            let (changed, node) = match inserted {
                Ok((plan, node)) => (Ok(plan), Some(node)),
                Err(refusal) => (Err(refusal), None),
            };
            let effects = commit(state, ActionName::InsertBend, changed);
            if let Some(node) = node {
                state.selection = Some(ElementId::new(&node, Part::Elbow));
            }
            return effects;
        }
        Action::Nudge { right, down } => return nudge(state, right, down),
        Action::DeleteBend(node) => (ActionName::DeleteBend, change::delete_bend(&plan, &node)),
        Action::SetLegLength { node, length } => (
            ActionName::SetLegLength,
            change::set_leg_length(&plan, &node, length),
        ),
        Action::SetRise { node, rise } => {
            (ActionName::SetRise, change::set_rise(&plan, &node, rise))
        }
        Action::SetElbow { element, elbow } => (
            ActionName::SetElbow,
            change::set_elbow(&plan, &element, elbow),
        ),
        Action::SetLeg { node, duct, leg } => {
            (ActionName::SetLeg, change::set_leg(&plan, &node, duct, leg))
        }
        Action::SetTermination(termination) => (
            ActionName::SetTermination,
            change::alter(&plan, |plan| plan.run.termination = termination),
        ),
        Action::SetOverride { input, value } => (
            ActionName::SetOverride,
            change::set_override(&plan, input, value),
        ),
        Action::SetBendMethod(method) => (
            ActionName::SetBendMethod,
            change::alter(&plan, |plan| plan.bend_method = method),
        ),
        Action::SetFlow(flow) => (
            ActionName::SetAir,
            change::alter(&plan, |plan| plan.flow = flow),
        ),
        Action::SetSite(site) => (
            ActionName::SetAir,
            change::alter(&plan, |plan| plan.site = site),
        ),
        Action::SetExhaust(exhaust) => (
            ActionName::SetAir,
            change::alter(&plan, |plan| plan.exhaust = exhaust),
        ),
        Action::SetCode(code) => (
            ActionName::SetCode,
            change::alter(&plan, |plan| plan.code = code),
        ),
        // The others never come here: `update` takes them.
        _ => return Vec::new(),
    };
    commit(state, name, changed)
}

/// Puts a changed plan in place, or gives the refusal. A change that changes nothing is no step.
fn commit(state: &mut State, name: ActionName, changed: Changed) -> Vec<Effect> {
    match changed {
        Err(refusal) => vec![Effect::Refuse(refusal)],
        Ok(plan) if plan == *state.plan => Vec::new(),
        Ok(plan) => {
            let before = core::mem::replace(&mut state.plan, Arc::new(plan));
            state.history.record(name, before);
            keep_selection_real(state);
            vec![Effect::Announce(name)]
        }
    }
}

fn step_through_history(state: &mut State, back: bool) -> Vec<Effect> {
    let name = if back {
        state.history.undo(&mut state.plan)
    } else {
        state.history.redo(&mut state.plan)
    };
    keep_selection_real(state);
    name.map(Effect::Announce).into_iter().collect()
}

fn press(state: &mut State, at: Point, reach: f64) {
    cancel(state);
    let before = state.plan.clone();
    let (node, name) = match pick(&state.plan, at, reach) {
        None => {
            state.selection = None;
            return;
        }
        Some(Hit::Leg(leg)) => {
            state.selection = Some(leg);
            return;
        }
        Some(Hit::Corner(node)) => {
            let last = is_last(&state.plan, &node);
            let (part, name) = if last {
                (Part::Termination, ActionName::MoveTermination)
            } else {
                (Part::Elbow, ActionName::MoveCorner)
            };
            state.selection = Some(ElementId::new(&node, part));
            (node, name)
        }
        Some(Hit::NewBend(leg)) => {
            state.selection = Some(ElementId::new(&leg, Part::Leg));
            (leg, ActionName::InsertBend)
        }
    };
    let held = match name {
        ActionName::InsertBend => middle_of_leg(&before, &node),
        _ => position(&before, &node),
    };
    let grip = held.map_or((0.0, 0.0), |held| (at.x - held.x, at.y - held.y));
    state.gesture = Some(Gesture {
        node,
        name,
        before,
        grip,
    });
}

fn drag(state: &mut State, to: Point, reach: f64) {
    let Some(gesture) = state.gesture.as_mut().filter(|held| held.moves_a_corner()) else {
        return;
    };
    let wanted = Point::new(to.x - gesture.grip.0, to.y - gesture.grip.1);
    if Arc::ptr_eq(&state.plan, &gesture.before) {
        // A hand is never quite still: a press that hardly moves only selects.
        let is_new = gesture.name == ActionName::InsertBend;
        let held = if is_new {
            middle_of_leg(&state.plan, &gesture.node)
        } else {
            position(&state.plan, &gesture.node)
        };
        let Some(held) = held.filter(|held| held.distance(wanted).metres() > reach / 4.0) else {
            return;
        };
        if is_new {
            let Ok((plan, node)) = change::insert_bend(&state.plan, &gesture.node, held) else {
                return;
            };
            state.plan = Arc::new(plan);
            state.selection = Some(ElementId::new(&node, Part::Elbow));
            gesture.node = node;
        }
    }
    let neighbours = change::neighbours(&state.plan, &gesture.node);
    let settled = snap(wanted, &neighbours, reach, state.units);
    // A place that cannot be leaves the corner where it last could.
    if let Ok(plan) = change::move_corner(&state.plan, &gesture.node, settled) {
        state.plan = Arc::new(plan);
    }
}

fn release(state: &mut State) -> Vec<Effect> {
    let Some(gesture) = state.gesture.take() else {
        return Vec::new();
    };
    if *state.plan == *gesture.before {
        state.plan = gesture.before;
        return Vec::new();
    }
    state.history.record(gesture.name, gesture.before);
    vec![Effect::Announce(gesture.name)]
}

pub(super) fn cancel(state: &mut State) {
    if let Some(gesture) = state.gesture.take() {
        state.plan = gesture.before;
        keep_selection_real(state);
    }
}

fn nudge(state: &mut State, right: Length, down: Length) -> Vec<Effect> {
    let Some(node) = state.selection.as_ref().map(|id| id.node.clone()) else {
        return Vec::new();
    };
    let Some(at) = position(&state.plan, &node) else {
        return Vec::new();
    };
    let to = Point::new(at.x + right.metres(), at.y + down.metres());
    let name = if is_last(&state.plan, &node) {
        ActionName::MoveTermination
    } else {
        ActionName::MoveCorner
    };
    let changed = change::move_corner(&state.plan, &node, to);
    commit(state, name, changed)
}

/// Steps through the elements in run order, round at the ends.
fn select_neighbour(state: &mut State, forward: bool) {
    let ids: Vec<ElementId> = RunPath::of(&state.plan)
        .pieces
        .into_iter()
        .map(|piece| piece.id)
        .collect();
    let at = state
        .selection
        .as_ref()
        .and_then(|selected| ids.iter().position(|id| id == selected));
    let next = match (at, forward) {
        (None, true) => 0,
        (None, false) => ids.len() - 1,
        (Some(at), true) => (at + 1) % ids.len(),
        (Some(at), false) => (at + ids.len() - 1) % ids.len(),
    };
    state.selection = ids.get(next).cloned();
}

fn position(plan: &Plan, node: &NodeId) -> Option<Point> {
    match node {
        NodeId::Outlet => None,
        NodeId::Point(id) => plan
            .run
            .index_of(id)
            .map(|index| plan.run.points[index].position),
    }
}

fn middle_of_leg(plan: &Plan, node: &NodeId) -> Option<Point> {
    match node {
        NodeId::Outlet => None,
        NodeId::Point(id) => plan.run.index_of(id).map(|index| {
            change::corner_before(plan, index).halfway(plan.run.points[index].position)
        }),
    }
}

fn is_last(plan: &Plan, node: &NodeId) -> bool {
    plan.run
        .points
        .last()
        .is_some_and(|point| *node == NodeId::Point(point.id.clone()))
}

/// Whether an element, or the corner that it would stand at, is in the plan.
fn exists(state: &State, id: &ElementId) -> bool {
    state.plan.run.fitting(&id.node).is_some()
}

fn keep_selection_real(state: &mut State) {
    if let Some(selected) = state.selection.take() {
        state.selection = exists(state, &selected).then_some(selected);
    }
}
