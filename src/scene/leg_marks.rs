//! What a leg is made of and what is known of it: corrugation, concealment, a blockage, a leak, a
//! wall box.

use super::room::line;
use super::run::RANKED;
use super::{Mark, Role, Shape, Step, Text};
use crate::plan::{Duct, ElementId, Heading, NodeId, Part, PieceKind, Plan, Point, RunPath};
use crate::system::{Ledger, LedgerRow};
use crate::units::Length;

/// Where along a leg its blockage is drawn: clear of the length and of the place for a new bend.
const BLOCKAGE_PLACE: f64 = 0.28;

pub(super) fn draw(plan: &Plan, path: &RunPath, marks: &mut Vec<Mark>) {
    for piece in &path.pieces {
        let (PieceKind::Straight { ends, duct, .. }, Part::Leg) = (&piece.kind, piece.id.part)
        else {
            continue;
        };
        let NodeId::Point(point) = &piece.id.node else {
            continue;
        };
        let Some(index) = plan.run.index_of(point) else {
            continue;
        };
        let leg = plan.run.points[index].leg;
        let width = plan.run.diameter;
        let node = &piece.id.node;
        let mut add = |name: &str, role: Role, shape: Shape, width: Length, part: Part| {
            marks.push(Mark {
                id: format!("{name}:{}", piece.id),
                role,
                shape,
                width,
                weight: 0.0,
                element: Some(ElementId::new(node, part)),
                thing: None,
            });
        };
        let line = line(ends.0, ends.1);
        if duct.is_flexible() {
            add(
                "corrugation",
                Role::Corrugation,
                line.clone(),
                width,
                Part::Leg,
            );
        }
        if matches!(duct, Duct::FlatRectangular { .. }) {
            add("flat", Role::Flat, line.clone(), width * 1.4, Part::Leg);
        }
        if leg.estimate.is_some() || leg.concealed.is_some() {
            let part = if leg.concealed.is_some() {
                Part::ConcealedElbows
            } else {
                Part::Leg
            };
            add("concealed", Role::Concealed, line, width * 1.7, part);
        }
        if leg.blockage_free_area.is_some()
            && let Some(cross) = cross(*ends, width)
        {
            add(
                "blockage",
                Role::Blockage,
                cross,
                Length::ZERO,
                Part::Blockage,
            );
        }
        if leg.leak_free_area_m2.is_some()
            && let Some(jets) = jets(*ends, width)
        {
            add("leak", Role::Leak, jets, Length::ZERO, Part::Leak);
        }
        if leg.ends_in_wall_box
            && let Some(frame) = frame(*ends, width)
        {
            add(
                "wall-box",
                Role::WallBox,
                frame,
                Length::ZERO,
                Part::WallBox,
            );
        }
    }
}

/// The ranks of costly elements that are no piece of the path: a blockage, a change of area, concealed
/// elbows, the room's opening, which stands at the dryer's `front`.
pub(super) fn ranks(
    path: &RunPath,
    ledger: &Ledger,
    front: (Point, Heading),
    marks: &mut Vec<Mark>,
) {
    for row in ledger.rows.iter().filter(|row| row.rank <= RANKED) {
        if let Some((at, aside)) = place(path, row, front) {
            let id = &row.element.id;
            marks.push(Mark {
                id: format!("rank:{id}"),
                role: Role::Rank,
                shape: Shape::Text {
                    at,
                    aside,
                    text: Text::Rank(row.rank),
                },
                width: Length::ZERO,
                weight: 0.0,
                element: Some(id.clone()),
                thing: None,
            });
        }
    }
}

/// The middle of the dryer's front on the sheet, and the way it faces.
pub(super) fn dryer_front(plan: &Plan) -> (Point, Heading) {
    let front = plan.dryer.outlet_heading().back();
    let at = plan.dryer.centre().toward(front, plan.dryer.depth / 2.0);
    (at, front)
}

fn place(
    path: &RunPath,
    row: &LedgerRow,
    (front, facing): (Point, Heading),
) -> Option<(Point, Option<Heading>)> {
    let id = &row.element.id;
    if id.part == Part::MakeUpAir {
        return Some((front, Some(facing)));
    }
    let share = match id.part {
        Part::Blockage => BLOCKAGE_PLACE,
        Part::AreaChange => 0.0,
        Part::WallBox | Part::AreaChangeIntoRiser => 1.0,
        Part::ConcealedElbows => 1.0 - BLOCKAGE_PLACE,
        _ => return None,
    };
    let leg = ElementId::new(&id.node, Part::Leg);
    let piece = path.pieces.iter().find(|piece| piece.id == leg)?;
    let PieceKind::Straight {
        ends: (from, to), ..
    } = &piece.kind
    else {
        return None;
    };
    let along = from.heading_to(*to)?;
    let at = from.toward(along, from.distance(*to) * share);
    Some((at, Some(along.right().back())))
}

/// A cross over the duct.
fn cross((from, to): (Point, Point), width: Length) -> Option<Shape> {
    let along = from.heading_to(to)?;
    let side = along.right();
    let middle = from.toward(along, from.distance(to) * BLOCKAGE_PLACE);
    let reach = width * 0.6;
    let corner = |ahead: Length, aside: Length| middle.toward(along, ahead).toward(side, aside);
    Some(Shape::Path(vec![
        Step::Move(corner(-reach, -reach)),
        Step::Line(corner(reach, reach)),
        Step::Move(corner(reach, -reach)),
        Step::Line(corner(-reach, reach)),
    ]))
}

/// Strokes that leave the duct on both sides at the leg's start.
fn jets((from, to): (Point, Point), width: Length) -> Option<Shape> {
    let along = from.heading_to(to)?;
    let corner = |ahead: f64, aside: f64| {
        let side = along.right();
        from.toward(along, width * ahead)
            .toward(side, width * aside)
    };
    let jet = |ahead: f64, side: f64| {
        [
            Step::Move(corner(ahead, 0.6 * side)),
            Step::Line(corner(ahead + 0.35, 1.15 * side)),
        ]
    };
    let jets = [jet(0.1, 1.0), jet(0.5, 1.0), jet(0.1, -1.0), jet(0.5, -1.0)];
    Some(Shape::Path(jets.into_iter().flatten().collect()))
}

/// A box about the leg's end.
fn frame((from, to): (Point, Point), width: Length) -> Option<Shape> {
    let along = from.heading_to(to)?;
    let corner = |ahead: f64, aside: f64| {
        let side = along.right();
        to.toward(along, width * ahead).toward(side, width * aside)
    };
    Some(Shape::Path(vec![
        Step::Move(corner(-1.0, -1.0)),
        Step::Line(corner(1.0, -1.0)),
        Step::Line(corner(1.0, 1.0)),
        Step::Line(corner(-1.0, 1.0)),
        Step::Close,
    ]))
}
