//! The run: casing and core of each piece, lengths, ranks and handles.

use super::room::line;
use super::wet::hatching;
use super::{Mark, Role, Shape, Step, Text, leg_marks};
use crate::plan::{Bend, ElementId, Heading, NodeId, Part, Piece, PieceKind, Plan, Point, RunPath};
use crate::system::{Ledger, LedgerRow};
use crate::units::Length;

/// How many of the costliest elements carry their rank.
pub(super) const RANKED: usize = 3;
/// Width of the core as a share of the duct, for no loss and for the greatest.
const CORE_WIDTH: (f64, f64) = (0.2, 0.7);
/// Width of the duct's inside as drawn, as a share of the duct.
const BORE_WIDTH: f64 = 0.8;

/// A piece's outline, its middle, and the side on which its rank stands.
pub(super) type Outline = (Shape, Point, Option<Heading>);

pub(super) fn draw(plan: &Plan, path: &RunPath, ledger: Option<&Ledger>, marks: &mut Vec<Mark>) {
    let diameter = plan.run.diameter;
    let mut ranks = ducts(path, diameter, ledger, marks, |piece| {
        outline(piece, path, diameter)
    });
    leg_marks::draw(plan, path, marks);
    lengths(plan, path, marks);
    marks.append(&mut ranks);
    if let Some(ledger) = ledger {
        leg_marks::ranks(path, ledger, leg_marks::dryer_front(plan), marks);
    }
    handles(plan, marks);
}

/// Casing, bore and core of every piece that has an outline; gives the ranks, which lie on top.
pub(super) fn ducts(
    path: &RunPath,
    diameter: Length,
    ledger: Option<&Ledger>,
    marks: &mut Vec<Mark>,
    outline: impl Fn(&Piece) -> Option<Outline>,
) -> Vec<Mark> {
    let mut drawing = Drawing {
        diameter,
        ledger,
        greatest: ledger
            .and_then(Ledger::dominant)
            .map_or(0.0, |row| row.loss.pascals()),
        cores: Vec::new(),
        wet: Vec::new(),
        notes: Vec::new(),
    };
    let (mut casings, mut bores) = (Vec::new(), Vec::new());
    for piece in &path.pieces {
        let Some((shape, middle, aside)) = outline(piece) else {
            continue;
        };
        casings.push(Mark {
            id: format!("casing:{}", piece.id),
            role: Role::Casing,
            shape: shape.clone(),
            width: diameter,
            weight: 0.0,
            element: Some(piece.id.clone()),
            thing: None,
        });
        bores.push(Mark {
            id: format!("bore:{}", piece.id),
            role: Role::Bore,
            shape: shape.clone(),
            width: diameter * BORE_WIDTH,
            weight: 0.0,
            element: Some(piece.id.clone()),
            thing: None,
        });
        drawing.core(piece, shape, middle, aside);
    }
    marks.append(&mut casings);
    marks.append(&mut bores);
    marks.append(&mut drawing.cores);
    marks.append(&mut drawing.wet);
    drawing.notes
}

/// What is gathered while the pieces are walked.
struct Drawing<'a> {
    diameter: Length,
    ledger: Option<&'a Ledger>,
    greatest: f64,
    cores: Vec<Mark>,
    wet: Vec<Mark>,
    notes: Vec<Mark>,
}

impl Drawing<'_> {
    fn row(&self, id: &ElementId) -> Option<&LedgerRow> {
        self.ledger?.rows.iter().find(|row| row.element.id == *id)
    }

    fn core(&mut self, piece: &Piece, shape: Shape, middle: Point, aside: Option<Heading>) {
        let row = self.row(&piece.id);
        let rank = row.map(|row| row.rank);
        let weight = match row {
            Some(row) if self.greatest > 0.0 => {
                (row.loss.pascals() / self.greatest).clamp(0.0, 1.0)
            }
            _ => 0.0,
        };
        let wet = row.and_then(|row| row.wet);
        let hatched = wet.and_then(|share| hatching(&shape, self.diameter, share));
        if let Some(hatched) = hatched {
            self.wet.push(Mark {
                id: format!("wet:{}", piece.id),
                role: Role::Wet,
                shape: hatched,
                width: Length::ZERO,
                weight: 0.0,
                element: Some(piece.id.clone()),
                thing: None,
            });
        }
        let (least, greatest) = CORE_WIDTH;
        self.cores.push(Mark {
            id: format!("core:{}", piece.id),
            role: Role::Core,
            shape,
            width: self.diameter * (least + (greatest - least) * weight),
            weight,
            element: Some(piece.id.clone()),
            thing: None,
        });
        if let Some(rank) = rank.filter(|rank| *rank <= RANKED) {
            self.notes.push(Mark {
                id: format!("rank:{}", piece.id),
                role: Role::Rank,
                shape: Shape::Text {
                    at: middle,
                    aside,
                    text: Text::Rank(rank),
                },
                width: Length::ZERO,
                weight,
                element: Some(piece.id.clone()),
                thing: None,
            });
        }
    }
}

/// The outline of a piece from above; none where nothing shows.
pub(super) fn outline(piece: &Piece, path: &RunPath, diameter: Length) -> Option<Outline> {
    match &piece.kind {
        PieceKind::Straight {
            length,
            ends,
            corners,
            ..
        } => {
            let (from, to) = *ends;
            if piece.id.part == Part::Riser {
                let ring = Shape::Circle {
                    centre: corners.0,
                    radius: diameter / 2.0,
                };
                return Some((ring, corners.0, None));
            }
            let heading = from.heading_to(to)?;
            (*length > Length::ZERO).then(|| {
                let side = heading.right().back();
                (line(from, to), from.halfway(to), Some(side))
            })
        }
        PieceKind::Bend(bend) => Some(bend_outline(bend)),
        PieceKind::Termination => Some(hood_outline(path, diameter)),
    }
}

pub(super) fn bend_outline(bend: &Bend) -> Outline {
    let tangent = bend.tangent();
    let corner = bend.corner;
    match (bend.before, bend.after) {
        (Some(before), Some(after)) => {
            let from = corner.toward(before, -tangent);
            let to = corner.toward(after, tangent);
            let clockwise = before.cross(after) > 0.0;
            let shape = Shape::Path(vec![
                Step::Move(from),
                Step::Arc {
                    to,
                    radius: bend.elbow.radius.metres(),
                    clockwise,
                },
            ]);
            // Outside the bend, on its bisector.
            let chord = from.heading_to(to).unwrap_or(before);
            let outward = if clockwise {
                chord.right().back()
            } else {
                chord.right()
            };
            (shape, corner, Some(outward))
        }
        // An elbow into or out of the vertical shows as the short straight that it is from above.
        (Some(before), None) => {
            let from = corner.toward(before, -tangent);
            (
                line(from, corner),
                from.halfway(corner),
                Some(before.right()),
            )
        }
        (None, Some(after)) => {
            let to = corner.toward(after, tangent);
            (
                line(corner, to),
                corner.halfway(to),
                Some(after.right().back()),
            )
        }
        (None, None) => (line(corner, corner), corner, None),
    }
}

/// The hood: a cap across the duct's end with its flap open; a ring where the run ends upward.
pub(super) fn hood_outline(path: &RunPath, diameter: Length) -> Outline {
    let (end, heading) = path.end;
    let Some(out) = heading else {
        let ring = Shape::Circle {
            centre: end,
            radius: diameter * 0.9,
        };
        return (ring, end, None);
    };
    let side = out.right();
    let tip = end.toward(out, diameter * 0.8);
    let shape = Shape::Path(vec![
        Step::Move(end.toward(side, diameter * 0.75)),
        Step::Line(tip.toward(side, diameter * 0.35)),
        Step::Line(tip.toward(side, -diameter * 0.35)),
        Step::Line(end.toward(side, -diameter * 0.75)),
        Step::Close,
    ]);
    (shape, tip, Some(out))
}

/// Every leg's length, corner to corner, and every riser's rise.
fn lengths(plan: &Plan, path: &RunPath, marks: &mut Vec<Mark>) {
    for (place, piece) in path.pieces.iter().enumerate() {
        let PieceKind::Straight {
            corners: (from, to),
            ..
        } = &piece.kind
        else {
            continue;
        };
        let (text, at, aside) = if piece.id.part == Part::Riser {
            let rise = plan
                .run
                .fitting(&piece.id.node)
                .and_then(|fitting| fitting.riser)
                .map_or(Length::ZERO, |riser| riser.rise);
            (Text::Rise(rise), *from, clear_side(path, piece))
        } else {
            (
                Text::LegLength(from.distance(*to)),
                from.halfway(*to),
                open_side(&path.pieces, place),
            )
        };
        marks.push(Mark {
            id: format!("length:{}", piece.id),
            role: Role::Label,
            shape: Shape::Text { at, aside, text },
            width: Length::ZERO,
            weight: 0.0,
            element: Some(piece.id.clone()),
            thing: None,
        });
    }
}

/// The side of the leg at `place` toward which fewer of its neighbours turn: two legs that enclose a
/// corner would both write into it. On the right where it makes no difference.
fn open_side(pieces: &[Piece], place: usize) -> Option<Heading> {
    /// Sine of a turn that is as good as none, 6 deg.
    const STRAIGHT_ON: f64 = 0.1;
    let heading = |piece: &Piece| match &piece.kind {
        PieceKind::Straight {
            corners: (from, to),
            ..
        } => from.heading_to(*to),
        _ => None,
    };
    let along = heading(&pieces[place])?;
    let before = pieces[..place].iter().rev().find_map(heading);
    let after = pieces[place + 1..].iter().find_map(heading);
    let sides = [before.map(Heading::back), after].map(|neighbour| {
        let side = neighbour.map_or(0.0, |neighbour| along.cross(neighbour));
        i32::from(side > STRAIGHT_ON) - i32::from(side < -STRAIGHT_ON)
    });
    let right = along.right();
    Some(if sides.iter().sum::<i32>() > 0 {
        right.back()
    } else {
        right
    })
}

/// The side of a riser on which no leg leaves it: against the one that leaves, else along the one
/// that arrives.
fn clear_side(path: &RunPath, riser: &Piece) -> Option<Heading> {
    let bends = path
        .pieces
        .iter()
        .filter(|piece| piece.id.node == riser.id.node);
    let headings = bends.filter_map(|piece| match &piece.kind {
        PieceKind::Bend(bend) => Some((bend.before, bend.after)),
        _ => None,
    });
    let (mut arrives, mut leaves) = (None, None);
    for (before, after) in headings {
        arrives = arrives.or(before);
        leaves = leaves.or(after);
    }
    leaves.map(Heading::back).or(arrives)
}

fn handles(plan: &Plan, marks: &mut Vec<Mark>) {
    let mut before = plan.dryer.outlet();
    let last = plan.run.points.len().saturating_sub(1);
    for (index, point) in plan.run.points.iter().enumerate() {
        let node = NodeId::Point(point.id.clone());
        let part = if index == last {
            Part::Termination
        } else {
            Part::Elbow
        };
        let handle = |id: String, role: Role, at: Point, part: Part| Mark {
            id,
            role,
            shape: Shape::Dot(at),
            width: Length::ZERO,
            weight: 0.0,
            element: Some(ElementId::new(&node, part)),
            thing: None,
        };
        let middle = before.halfway(point.position);
        let new_bend = Role::NewBend {
            node: node.clone(),
            leg: before.distance(point.position),
        };
        marks.push(handle(
            format!("new-bend:{node}"),
            new_bend,
            middle,
            Part::Leg,
        ));
        let corner = Role::Corner(node.clone());
        marks.push(handle(
            format!("corner:{node}"),
            corner,
            point.position,
            part,
        ));
        before = point.position;
    }
}
