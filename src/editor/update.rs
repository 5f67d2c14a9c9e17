//! The step from one state to the next.

use super::change::{self, Changed};
use super::{
    Action, Effect, State, Tool, Turn, change_things as things, change_visits, drag, draw, turn,
};
use crate::plan::{ElementId, NodeId, Part, Plan, Point, RunPath, ThingId, validate};
use crate::report::words::{ActionName, Refusal};
use crate::units::Length;
use std::sync::Arc;

/// Takes `action` and gives what the page has to do. Any change of the plan that is not the drag
/// itself ends a drag first and puts its corner back.
pub fn update(state: &mut State, action: Action) -> Vec<Effect> {
    match action {
        Action::Press { at, reach, .. } if state.tool != Tool::Pick => {
            drag::cancel(state);
            return draw::press(state, at, reach);
        }
        Action::Press { at, reach, adds } => drag::press(state, at, reach, adds),
        Action::Drag { to, reach } if state.tool != Tool::Pick => draw::hover(state, to, reach),
        Action::Drag { to, reach } => drag::drag(state, to, reach),
        Action::DragRise { node, rise, slack } => super::rise::drag(state, &node, rise, slack),
        Action::Hover { at, reach } => draw::hover(state, at, reach),
        // What is dragged in the elevation is let go with any tool in hand.
        Action::Release if state.gesture.is_some() => return drag::release(state),
        Action::Release => return draw::release(state),
        Action::Cancel => {
            draw::cancel(state);
            drag::cancel(state);
        }
        Action::TakeTool(tool) => {
            drag::cancel(state);
            draw::take_tool(state, tool);
        }
        Action::PutPoint => {
            drag::cancel(state);
            return draw::put_at_cursor(state);
        }
        Action::PutLength { length, heading } => {
            drag::cancel(state);
            return draw::put_length(state, length, heading);
        }
        Action::FinishDrawing => draw::finish(state),
        Action::Select(element) => {
            let element = element.filter(|id| exists(state, id));
            state.select(element);
        }
        Action::SelectNextThing { forward } => select_next_thing(state, forward),
        Action::KeepThings => state.kept.clone_from(&state.things),
        Action::SelectAll => {
            state.selection = None;
            state.things = state.plan.things().into_iter().collect();
        }
        Action::SelectNeighbour { forward } => select_neighbour(state, forward),
        Action::Resize { width, height } => {
            state.view.resize(width, height);
        }
        Action::ShowAll => state.view.show_plan(&state.plan),
        Action::Pan { right, down } => state.view.pan(right, down),
        Action::Zoom { x, y, factor } => state.view.zoom(x, y, factor),
        Action::SetUnits(units) => state.units = units,
        action => return edit(state, action),
    }
    Vec::new()
}

/// The actions that change the plan in one step.
fn edit(state: &mut State, action: Action) -> Vec<Effect> {
    drag::cancel(state);
    let plan = state.plan.clone();
    let (name, changed) = match action {
        Action::Undo | Action::Redo => return step_through_history(state, action == Action::Undo),
        Action::Open(opened) => {
            let opened = change::checked(*opened);
            let fits = opened.is_ok();
            let effects = commit(state, ActionName::OpenPlan, opened);
            if fits {
                state.select(None);
                draw::take_tool(state, Tool::Pick);
                state.view.show_plan(&state.plan);
            }
            return effects;
        }
        Action::Exchange(plan) => return exchange(state, plan),
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
                state.select(Some(ElementId::new(&node, Part::Elbow)));
            }
            return effects;
        }
        Action::Nudge { right, down } => return nudge(state, right, down),
        Action::Remove => return remove(state),
        Action::Copy => {
            let copied = things::copy(&plan, &state.things);
            let (changed, names) = match copied {
                Ok((plan, names)) => (Ok(plan), Some(names)),
                Err(refusal) => (Err(refusal), None),
            };
            let effects = commit(state, ActionName::CopyThings, changed);
            if let Some(names) = names {
                state.things = names;
            }
            return effects;
        }
        Action::Turn(turn) => {
            let name = match turn {
                Turn::Quarter => ActionName::TurnThings,
                Turn::Mirror => ActionName::MirrorThings,
            };
            (name, turn::turn(&plan, &state.things, turn))
        }
        action => {
            let Some(change) = one_change(&plan, action) else {
                return Vec::new();
            };
            change
        }
    };
    commit(state, name, changed)
}

/// The actions that change one thing and leave the rest of the editor alone; none for the others.
fn one_change(plan: &Plan, action: Action) -> Option<(ActionName, Changed)> {
    Some(match action {
        Action::SetThing(new) => (ActionName::SetThing, things::set(plan, *new)),
        Action::SetPicture(picture) => (
            ActionName::SetPicture,
            change::alter(plan, |plan| plan.picture = picture.map(|it| *it)),
        ),
        Action::SetCeiling(height) => (
            ActionName::SetThing,
            change::alter(plan, |plan| plan.ceiling_height = height),
        ),
        Action::TakeReroute(taken) => (
            ActionName::TakeReroute,
            change::alter(plan, |plan| (plan.run, plan.dryer) = *taken),
        ),
        Action::DeleteBend(node) => (ActionName::DeleteBend, change::delete_bend(plan, &node)),
        Action::SetLegLength { node, length } => (
            ActionName::SetLegLength,
            change::set_leg_length(plan, &node, length),
        ),
        Action::SetRise { node, rise } => {
            (ActionName::SetRise, change::set_rise(plan, &node, rise))
        }
        Action::SetElbow { element, elbow } => (
            ActionName::SetElbow,
            change::set_elbow(plan, &element, elbow),
        ),
        Action::SetLeg { node, duct, leg } => {
            (ActionName::SetLeg, change::set_leg(plan, &node, duct, leg))
        }
        Action::SetTermination(termination) => (
            ActionName::SetTermination,
            change::alter(plan, |plan| plan.run.termination = termination),
        ),
        Action::SetOverride { input, value } => (
            ActionName::SetOverride,
            change::set_override(plan, input, value),
        ),
        Action::SetBendMethod(method) => (
            ActionName::SetBendMethod,
            change::alter(plan, |plan| plan.bend_method = method),
        ),
        Action::SetFlow(flow) => (
            ActionName::SetAir,
            change::alter(plan, |plan| plan.flow = flow),
        ),
        Action::SetTitle { title, note } => (
            ActionName::SetTitle,
            change::alter(plan, |plan| {
                plan.title = title;
                plan.note = note;
            }),
        ),
        Action::SetHandover(handover) => (
            ActionName::SetHandover,
            change::alter(plan, |plan| plan.handover = *handover),
        ),
        Action::SetSite(site) => (
            ActionName::SetAir,
            change::alter(plan, |plan| plan.site = site),
        ),
        Action::SetExhaust(exhaust) => (
            ActionName::SetAir,
            change::alter(plan, |plan| plan.exhaust = exhaust),
        ),
        Action::SetCode(code) => (
            ActionName::SetCode,
            change::alter(plan, |plan| plan.code = code),
        ),
        Action::ChangeVisit { visit, change } => {
            change_visits::change(plan, visit.as_deref(), *change)
        }
        _ => return None,
    })
}

/// Puts a changed plan in place, or gives the refusal. A change that changes nothing is no step.
pub(super) fn commit(state: &mut State, name: ActionName, changed: Changed) -> Vec<Effect> {
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

/// Opens the very plan, shared rather than copied, so that it is known again.
fn exchange(state: &mut State, plan: Arc<Plan>) -> Vec<Effect> {
    if Arc::ptr_eq(&state.plan, &plan) {
        return Vec::new();
    }
    if let Err(error) = validate(&plan) {
        return vec![Effect::Refuse(Refusal::Value(error))];
    }
    let before = core::mem::replace(&mut state.plan, plan);
    state.history.record(ActionName::OpenPlan, before);
    draw::take_tool(state, Tool::Pick);
    keep_selection_real(state);
    vec![Effect::Announce(ActionName::OpenPlan)]
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

fn nudge(state: &mut State, right: Length, down: Length) -> Vec<Effect> {
    if state.tool != Tool::Pick {
        draw::move_cursor(state, right, down);
        return Vec::new();
    }
    if !state.things.is_empty() {
        let changed = things::shift(&state.plan, &state.things, right.metres(), down.metres());
        return commit(state, ActionName::MoveThings, changed);
    }
    let Some(node) = state.selection.as_ref().map(|id| id.node.clone()) else {
        return Vec::new();
    };
    let Some(at) = position(&state.plan, &node) else {
        return Vec::new();
    };
    let to = Point::new(at.x + right.metres(), at.y + down.metres());
    let name = name_of_move(&state.plan, &node);
    let changed = change::move_corner(&state.plan, &node, to);
    commit(state, name, changed)
}

/// Removes the selected corner, or the selected things.
fn remove(state: &mut State) -> Vec<Effect> {
    if !state.things.is_empty() {
        let changed = things::remove(&state.plan, &state.things);
        return commit(state, ActionName::RemoveThings, changed);
    }
    match &state.selection {
        Some(id) if id.part != Part::Leg => {
            let changed = change::delete_bend(&state.plan, &id.node);
            commit(state, ActionName::DeleteBend, changed)
        }
        _ => Vec::new(),
    }
}

/// Steps through the things about the run, round at the ends; those that are kept stay selected.
fn select_next_thing(state: &mut State, forward: bool) {
    let all = state.plan.things();
    let mut kept = core::mem::take(&mut state.kept);
    kept.retain(|id| state.things.contains(id));
    let selected = |id: &ThingId| state.things.contains(id);
    let stands = |id: &ThingId| selected(id) && !kept.contains(id);
    // From the thing that was stepped to last, or beyond what is kept.
    let at = all.iter().position(stands).or_else(|| {
        if forward {
            all.iter().rposition(selected)
        } else {
            all.iter().position(selected)
        }
    });
    let next = match (at, forward) {
        (None, true) => 0,
        (None, false) => all.len() - 1,
        (Some(at), true) => (at + 1) % all.len(),
        (Some(at), false) => (at + all.len() - 1) % all.len(),
    };
    if let Some(thing) = all.into_iter().nth(next) {
        state.select_thing(thing);
        state.things.extend(kept.iter().cloned());
        state.kept = kept;
    }
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
    state.select(ids.get(next).cloned());
}

pub(super) fn position(plan: &Plan, node: &NodeId) -> Option<Point> {
    match node {
        NodeId::Outlet => None,
        NodeId::Point(id) => plan
            .run
            .index_of(id)
            .map(|index| plan.run.points[index].position),
    }
}

pub(super) fn middle_of_leg(plan: &Plan, node: &NodeId) -> Option<Point> {
    match node {
        NodeId::Outlet => None,
        NodeId::Point(id) => plan.run.index_of(id).map(|index| {
            change::corner_before(plan, index).halfway(plan.run.points[index].position)
        }),
    }
}

/// What moving a corner is called.
pub(super) fn name_of_move(plan: &Plan, node: &NodeId) -> ActionName {
    if is_last(plan, node) {
        ActionName::MoveTermination
    } else {
        ActionName::MoveCorner
    }
}

pub(super) fn is_last(plan: &Plan, node: &NodeId) -> bool {
    plan.run
        .points
        .last()
        .is_some_and(|point| *node == NodeId::Point(point.id.clone()))
}

/// Whether an element, or the corner that it would stand at, is in the plan.
fn exists(state: &State, id: &ElementId) -> bool {
    state.plan.run.fitting(&id.node).is_some()
}

pub(super) fn keep_selection_real(state: &mut State) {
    let plan = Arc::clone(&state.plan);
    state.things.retain(|thing| plan.thing(thing).is_some());
    if let Some(selected) = state.selection.take() {
        state.selection = exists(state, &selected).then_some(selected);
    }
}
