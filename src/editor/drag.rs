//! Presses with nothing but a hand: what they select, and what they drag.

use super::update::{is_last, keep_selection_real, middle_of_leg, position};
use super::{
    Catch, Effect, Gesture, Held, Hit, State, Tool, change, change_things as things, handles, pick,
    pick_thing, snap,
};
use crate::plan::{ElementId, NodeId, Part, Point, ThingId};
use crate::report::words::ActionName;
use std::sync::Arc;

pub(super) fn press(state: &mut State, at: Point, reach: f64, adds: bool) {
    cancel(state);
    let Some(hit) = hit(state, at, reach) else {
        if !adds {
            state.select(None);
        }
        return;
    };
    let (held, name, from) = match hit {
        Hit::Leg(leg) => {
            state.select(Some(leg));
            return;
        }
        Hit::Corner(node) => {
            let last = is_last(&state.plan, &node);
            let (part, name) = if last {
                (Part::Termination, ActionName::MoveTermination)
            } else {
                (Part::Elbow, ActionName::MoveCorner)
            };
            state.select(Some(ElementId::new(&node, part)));
            let from = position(&state.plan, &node);
            (Held::Corner(node), name, from)
        }
        Hit::NewBend(leg) => {
            state.select(Some(ElementId::new(&leg, Part::Leg)));
            let from = middle_of_leg(&state.plan, &leg);
            (Held::NewBend(leg), ActionName::InsertBend, from)
        }
        Hit::Handle(held, from) => (held, ActionName::SetThing, Some(from)),
        Hit::Thing(thing) => {
            if adds || !state.things.contains(&thing) {
                select_thing(state, thing, adds);
            }
            (Held::Things, ActionName::MoveThings, Some(at))
        }
    };
    let grip = from.map_or((0.0, 0.0), |from| (at.x - from.x, at.y - from.y));
    state.gesture = Some(Gesture {
        held,
        name,
        before: state.plan.clone(),
        grip: if name == ActionName::MoveThings {
            (at.x, at.y)
        } else {
            grip
        },
    });
}

/// A handle of the selected thing before the run before the things about it.
fn hit(state: &State, at: Point, reach: f64) -> Option<Hit> {
    if let (Some(thing), 1) = (state.things.first(), state.things.len()) {
        let near = handles(&state.plan, thing)
            .into_iter()
            .map(|(held, place)| (place.distance(at).metres(), held, place))
            .filter(|(distance, ..)| *distance <= reach)
            .min_by(|a, b| a.0.total_cmp(&b.0));
        if let Some((_, held, place)) = near {
            return Some(Hit::Handle(held, place));
        }
    }
    pick(&state.plan, at, reach).or_else(|| pick_thing(&state.plan, at, reach).map(Hit::Thing))
}

/// Selects a thing, or with `adds` puts it to those that are selected or takes it from them.
fn select_thing(state: &mut State, thing: ThingId, adds: bool) {
    if !adds {
        state.select_thing(thing);
        return;
    }
    state.selection = None;
    if !state.things.remove(&thing) {
        state.things.insert(thing);
    }
}

pub(super) fn drag(state: &mut State, to: Point, reach: f64) {
    let Some(gesture) = state.gesture.clone() else {
        return;
    };
    let wanted = Point::new(to.x - gesture.grip.0, to.y - gesture.grip.1);
    let untouched = Arc::ptr_eq(&state.plan, &gesture.before);
    // A hand is never quite still: a press that hardly moves only selects.
    let moved = |from: Point| from.distance(wanted).metres() > reach / 4.0;
    let node = match gesture.held {
        Held::Things => {
            if untouched && !moved(Point::new(0.0, 0.0)) {
                return;
            }
            let right = snap::on_grid(wanted.x, state.units, reach);
            let down = snap::on_grid(wanted.y, state.units, reach);
            if let Ok(plan) = things::shift(&gesture.before, &state.things, right, down) {
                state.plan = Arc::new(plan);
            }
            return;
        }
        Held::WallEnd { wall, start } => {
            let end = handles(&gesture.before, &wall);
            let ends = end.iter().map(|(_, place)| *place);
            let held = usize::from(!start);
            let (Some(from), Some(fixed)) = (ends.clone().nth(held), ends.clone().nth(1 - held))
            else {
                return;
            };
            if untouched && !moved(from) {
                return;
            }
            let tool = Tool::Wall { outside: true };
            let mut catch = snap::catch(&gesture.before, tool, vec![fixed], wanted);
            // The end is not caught by where it was.
            catch.ends.retain(|end| end.distance(from).metres() > 1e-6);
            let settled = snap::snap(wanted, &catch, reach, state.units);
            state.guides = settled.guides;
            if let Ok(plan) = things::move_wall_end(&gesture.before, &wall, start, settled.at) {
                state.plan = Arc::new(plan);
            }
            return;
        }
        Held::BoxCorner { thing, corner } => {
            let places = handles(&gesture.before, &thing);
            let Some((_, from)) = places.get(usize::from(corner)) else {
                return;
            };
            if untouched && !moved(*from) {
                return;
            }
            let tool = Tool::Obstacle(crate::plan::ObstacleKind::ClosedArea);
            let catch = snap::catch(&gesture.before, tool, Vec::new(), wanted);
            let settled = snap::snap(wanted, &catch, reach, state.units);
            state.guides = settled.guides;
            let changed = things::move_box_corner(&gesture.before, &thing, corner, settled.at);
            if let Ok(plan) = changed {
                state.plan = Arc::new(plan);
            }
            return;
        }
        // The elevation drags it.
        Held::Rise(_) => return,
        Held::Corner(node) => {
            if untouched && !position(&state.plan, &node).is_some_and(moved) {
                return;
            }
            node
        }
        Held::NewBend(leg) => {
            let Some(held) = middle_of_leg(&state.plan, &leg).filter(|held| moved(*held)) else {
                return;
            };
            let Ok((plan, node)) = change::insert_bend(&state.plan, &leg, held) else {
                return;
            };
            state.plan = Arc::new(plan);
            state.select(Some(ElementId::new(&node, Part::Elbow)));
            if let Some(gesture) = &mut state.gesture {
                gesture.held = Held::Corner(node.clone());
            }
            node
        }
    };
    drag_corner(state, &node, wanted, reach);
}

fn drag_corner(state: &mut State, node: &NodeId, wanted: Point, reach: f64) {
    let beside = change::neighbours(&state.plan, node);
    let catch: Catch = snap::catch(&state.plan, Tool::Run, beside, wanted);
    let settled = snap::snap(wanted, &catch, reach, state.units);
    state.guides = settled.guides;
    // A place that cannot be leaves the corner where it last could.
    if let Ok(plan) = change::move_corner(&state.plan, node, settled.at) {
        state.plan = Arc::new(plan);
    }
}

pub(super) fn release(state: &mut State) -> Vec<Effect> {
    state.guides.clear();
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
    state.guides.clear();
    if let Some(gesture) = state.gesture.take() {
        state.plan = gesture.before;
        keep_selection_real(state);
    }
}
