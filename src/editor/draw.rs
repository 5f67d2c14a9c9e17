//! Drawing: points that are set one after the other, by a drag, by two taps or by keys.

use super::change::{self, SHORTEST_LEG};
use super::change_openings::add_opening;
use super::snap::{self, Settled, exact};
use super::update::{commit, name_of_move};
use super::{Effect, Pen, State, Tool, change_things as things};
use crate::plan::{ElementId, Heading, NodeId, Part, Point, ThingId};
use crate::report::words::{ActionName, Refusal};
use crate::units::Length;
use std::sync::Arc;

/// A press that a tool can find a wall from, at least, m: a fingertip on a small drawing.
const LEAST_WALL_REACH: f64 = 0.3;
/// A fingertip is as large as so many times what a line catches from.
const FINGERTIP: f64 = 2.75;

/// Takes `tool` in hand and lays down what was being drawn.
pub(super) fn take_tool(state: &mut State, tool: Tool) {
    state.tool = tool;
    state.guides.clear();
    state.cursor = None;
    state.pen = (tool == Tool::Run).then(|| Pen {
        fresh: true,
        ..Pen::at(state.plan.dryer.outlet())
    });
}

/// Where a point with the tool in hand settles.
fn settle(state: &State, wanted: Point, reach: f64) -> Settled {
    let beside = state.pen.map(|pen| pen.from).into_iter().collect();
    let beside = if state.tool.chains() || state.tool == Tool::Scale {
        beside
    } else {
        Vec::new()
    };
    let catch = snap::catch(&state.plan, state.tool, beside, wanted);
    snap::snap(wanted, &catch, reach, state.units)
}

/// The pen's far end follows the pointer.
pub(super) fn hover(state: &mut State, at: Point, reach: f64) {
    if !state.tool.has_pen() {
        return;
    }
    let settled = settle(state, at, reach);
    state.guides = settled.guides;
    if let Some(pen) = &mut state.pen
        && !pen.set
    {
        pen.to = settled.at;
    }
}

pub(super) fn press(state: &mut State, at: Point, reach: f64) -> Vec<Effect> {
    state.cursor = None;
    if !state.tool.has_pen() {
        return put(state, at, reach);
    }
    if state.tool == Tool::Run {
        go_on_from_the_end(state, at, reach);
    }
    let settled = settle(state, at, reach);
    state.guides = settled.guides;
    match &mut state.pen {
        Some(pen) if !pen.set => pen.to = settled.at,
        pen => {
            *pen = Some(Pen {
                begins: true,
                ..Pen::at(settled.at)
            });
        }
    }
    Vec::new()
}

/// A run that is pressed at its end is drawn on from there.
fn go_on_from_the_end(state: &mut State, at: Point, reach: f64) {
    let end = state.plan.run.points.last().map(|point| point.position);
    if let (Some(pen), Some(end)) = (&mut state.pen, end)
        && pen.fresh
        && end.distance(at).metres() <= reach * FINGERTIP
    {
        *pen = Pen {
            begins: true,
            ..Pen::at(end)
        };
    }
}

pub(super) fn release(state: &mut State) -> Vec<Effect> {
    let Some(pen) = &mut state.pen else {
        return Vec::new();
    };
    let first = core::mem::take(&mut pen.begins);
    let (from, to, set) = (pen.from, pen.to, pen.set);
    // A first tap waits for the second; a drag is both.
    if set || (first && from.distance(to) < SHORTEST_LEG) {
        return Vec::new();
    }
    put(state, to, 0.0)
}

/// A press is taken back: what it began is gone, and what stood before it waits on.
pub(super) fn cancel(state: &mut State) {
    if let Some(pen) = &mut state.pen {
        if pen.begins && state.tool != Tool::Run {
            state.pen = None;
        } else {
            pen.begins = false;
            pen.to = pen.from;
        }
    }
    state.guides.clear();
}

/// Sets a point where the keys' cursor is.
pub(super) fn put_at_cursor(state: &mut State) -> Vec<Effect> {
    let at = cursor(state);
    if state.tool.has_pen() && state.pen.is_none() {
        state.pen = Some(Pen::at(at));
        return Vec::new();
    }
    put(state, at, 0.0)
}

/// Moves the keys' cursor, and the pen's far end with it.
pub(super) fn move_cursor(state: &mut State, right: Length, down: Length) {
    let at = cursor(state);
    let to = Point::new(exact(at.x + right.metres()), exact(at.y + down.metres()));
    state.cursor = Some(to);
    if let Some(pen) = &mut state.pen
        && !pen.set
    {
        pen.to = to;
    }
}

/// Where the keys' cursor is, or would first be: at the pen, at the middle of the newest wall for an
/// opening, else at the end of the newest wall, else at the sheet's origin.
pub fn cursor(state: &State) -> Point {
    let newest = state.plan.walls.last();
    let first = || match (state.tool, newest) {
        (Tool::Opening(_), Some(wall)) => wall.from().halfway(wall.to()),
        (_, Some(wall)) => wall.to(),
        (_, None) => Point::new(0.0, 0.0),
    };
    state
        .cursor
        .or(state.pen.map(|pen| pen.to))
        .unwrap_or_else(first)
}

/// Sets the pen's far end at a typed length: along `heading`, or the way that it points.
pub(super) fn put_length(
    state: &mut State,
    length: Length,
    heading: Option<Heading>,
) -> Vec<Effect> {
    let Some(pen) = state.pen else {
        return vec![Effect::Refuse(Refusal::NothingBegun)];
    };
    if state.tool == Tool::Scale {
        let changed = things::scale_picture(&state.plan, &pen, length);
        take_tool(state, Tool::Pick);
        return commit(state, ActionName::SetPicture, changed);
    }
    let Some(heading) = heading.or_else(|| pen.from.heading_to(pen.to)) else {
        return vec![Effect::Refuse(Refusal::NoDirection)];
    };
    let to = pen.from.toward(heading, length);
    put(state, Point::new(exact(to.x), exact(to.y)), 0.0)
}

/// Sets a point with the tool in hand.
fn put(state: &mut State, at: Point, reach: f64) -> Vec<Effect> {
    match state.tool {
        Tool::Pick => Vec::new(),
        Tool::Place => place(state, at, reach),
        Tool::Opening(kind) => {
            let reaches = ((reach * FINGERTIP).max(LEAST_WALL_REACH), reach);
            match add_opening(&state.plan, kind, at, reaches, state.units) {
                Ok((plan, thing)) => finish_thing(state, plan, thing),
                Err(refusal) => vec![Effect::Refuse(refusal)],
            }
        }
        Tool::Wall { outside } => wall(state, outside, at),
        Tool::Run => leg(state, at),
        Tool::Obstacle(_) | Tool::Zone(_) => rectangle(state, at),
        Tool::Scale => {
            if let Some(pen) = &mut state.pen {
                pen.to = at;
                pen.set = true;
            }
            Vec::new()
        }
    }
}

fn finish_thing(state: &mut State, plan: crate::plan::Plan, thing: ThingId) -> Vec<Effect> {
    take_tool(state, Tool::Pick);
    let effects = commit(state, ActionName::AddThing, Ok(plan));
    state.select_thing(thing);
    effects
}

/// The next wall of a chain; one without length ends it.
fn wall(state: &mut State, outside: bool, at: Point) -> Vec<Effect> {
    let Some(pen) = state.pen else {
        return Vec::new();
    };
    if pen.from.distance(at) < SHORTEST_LEG {
        state.pen = None;
        return Vec::new();
    }
    match things::add_wall(&state.plan, pen.from, at, outside) {
        Ok((plan, _)) => {
            state.pen = Some(Pen::at(at));
            state.cursor = None;
            let effects = commit(state, ActionName::AddThing, Ok(plan));
            state.view.follow(&state.plan, at);
            effects
        }
        Err(refusal) => vec![Effect::Refuse(refusal)],
    }
}

fn rectangle(state: &mut State, at: Point) -> Vec<Effect> {
    let Some(pen) = state.pen else {
        return Vec::new();
    };
    let added = match state.tool {
        Tool::Zone(kind) => things::add_zone(&state.plan, kind, pen.from, at),
        Tool::Obstacle(kind) => things::add_obstacle(&state.plan, kind, pen.from, at),
        _ => return Vec::new(),
    };
    match added {
        Ok((plan, thing)) => finish_thing(state, plan, thing),
        Err(refusal) => vec![Effect::Refuse(refusal)],
    }
}

/// The next leg of the run; one without length ends it.
fn leg(state: &mut State, at: Point) -> Vec<Effect> {
    let Some(pen) = state.pen else {
        return Vec::new();
    };
    if pen.from.distance(at) < SHORTEST_LEG {
        if !pen.fresh {
            end_run(state);
        }
        return Vec::new();
    }
    match change::draw_leg(&state.plan, pen.fresh, at) {
        Ok(plan) => {
            state.cursor = None;
            let effects = commit(state, ActionName::DrawLeg, Ok(plan));
            state.pen = Some(Pen::at(at));
            state.view.follow(&state.plan, at);
            effects
        }
        Err(refusal) => vec![Effect::Refuse(refusal)],
    }
}

/// Lays the pen down: the run ends where it last came to, and a chain of walls too.
pub(super) fn finish(state: &mut State) {
    if state.tool == Tool::Run {
        end_run(state);
    } else {
        take_tool(state, Tool::Pick);
    }
}

fn end_run(state: &mut State) {
    take_tool(state, Tool::Pick);
    let last = state.plan.run.points.last();
    let last = last.map(|point| NodeId::Point(point.id.clone()));
    state.select(last.map(|node| ElementId::new(&node, Part::Termination)));
}

/// Puts what is selected where the press was.
fn place(state: &mut State, at: Point, reach: f64) -> Vec<Effect> {
    take_tool(state, Tool::Pick);
    let plan = Arc::clone(&state.plan);
    if let Some(node) = state.selection.as_ref().map(|id| id.node.clone()) {
        // As a drag that ends here would.
        let beside = change::neighbours(&plan, &node);
        let catch = snap::catch(&plan, Tool::Run, beside, at);
        let settled = snap::snap(at, &catch, reach, state.units);
        let name = name_of_move(&plan, &node);
        return commit(state, name, change::move_corner(&plan, &node, settled.at));
    }
    let at = Point::new(
        snap::on_grid(at.x, state.units, reach),
        snap::on_grid(at.y, state.units, reach),
    );
    let middle = things::middle(&plan, &state.things);
    let Some(middle) = middle else {
        return Vec::new();
    };
    let changed = things::shift(&plan, &state.things, at.x - middle.x, at.y - middle.y);
    commit(state, ActionName::MoveThings, changed)
}
