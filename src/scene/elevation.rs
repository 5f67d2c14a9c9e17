//! The elevation: the unrolled run from the side, over the floor, with its measures.

use super::room::line;
use super::run::{self, Outline};
use super::unrolled::{ALONG, Corner, UP, Unrolled, point};
use super::{Mark, Role, Shape, Step, Text, leg_marks};
use crate::plan::{
    Bounds, ElementId, Heading, NodeId, Part, Piece, PieceKind, Plan, Point, RunPath,
};
use crate::system::Ledger;
use crate::units::Length;

/// A dryer's height as drawn; a plan has none, and nothing hangs on it. Common practice, no source.
const DRYER_HEIGHT: Length = Length::from_inches(38.0);
/// So much above the floor is shown at least, and so much above the duct: room to pull a rise up.
const SHOWN_HEIGHT: Length = Length::from_inches(60.0);
const SHOWN_ABOVE_DUCT: Length = Length::from_inches(14.0);

/// A riser shorter than this many diameters has its rise written below it, clear of the legs.
const SHORT_RISER: f64 = 6.0;

/// The id of the mark that says the outlet's height.
pub const OUTLET_HEIGHT: &str = "elevation:height:outlet";
/// The id of the mark that says the termination's height.
pub const TERMINATION_HEIGHT: &str = "elevation:height:termination";

/// The elevation of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct Elevation {
    /// What is drawn, back to front: x from the outlet along the unrolled legs, y downward from the
    /// floor, m.
    pub marks: Vec<Mark>,
    /// The rectangle that holds it.
    pub bounds: Bounds,
}

/// The elevation of the run of `plan`, weighted by `ledger` where there is one. Its marks' ids begin
/// with `elevation:`, so that they are unique beside the plan's.
pub fn elevation(plan: &Plan, ledger: Option<&Ledger>) -> Elevation {
    let Unrolled { path, corners } = Unrolled::of(plan);
    let diameter = plan.run.diameter;
    let lines = MeasureLines::of(plan, &path, &corners);
    let mut marks = Vec::new();
    room(plan, &lines, &mut marks);
    extensions(&corners, &lines, &mut marks);
    let mut ranks = run::ducts(&path, diameter, ledger, &mut marks, |piece| {
        outline(piece, &path, diameter)
    });
    leg_marks::draw(plan, &path, &mut marks);
    leg_dimensions(&corners, &lines, &mut marks);
    rises(&path, diameter, &mut marks);
    heights(plan, &path, &lines, &mut marks);
    marks.append(&mut ranks);
    if let Some(ledger) = ledger {
        let front = point(-plan.dryer.depth, DRYER_HEIGHT / 2.0);
        leg_marks::ranks(&path, ledger, (front, ALONG.back()), &mut marks);
    }
    handles(&corners, &mut marks);
    for mark in &mut marks {
        mark.id = format!("elevation:{}", mark.id);
    }
    let bounds = bounds(&marks, diameter);
    Elevation { marks, bounds }
}

/// The lines that things are measured on, clear of dryer and duct.
struct MeasureLines {
    /// Where the outlet's height is measured.
    left: Length,
    /// Where the termination's height is measured.
    right: Length,
    /// Height of the line of the legs' lengths.
    foot: Length,
    /// Half of the stroke at a measure's end.
    tick: Length,
}

impl MeasureLines {
    fn of(plan: &Plan, path: &RunPath, corners: &[Corner]) -> Self {
        let diameter = plan.run.diameter;
        let lowest = corners.iter().fold(0.0_f64, |lowest, corner| {
            let lower = corner.arrives.metres().min(corner.leaves.metres());
            lowest.min(lower - diameter.metres())
        });
        Self {
            left: -plan.dryer.depth - diameter * 1.5,
            right: Length::from_metres(path.end.0.x) + diameter * 2.0,
            foot: Length::from_metres(lowest) - diameter * 1.2,
            tick: diameter * 0.35,
        }
    }
}

fn mark(id: impl Into<String>, role: Role, shape: Shape, element: Option<&ElementId>) -> Mark {
    Mark {
        id: id.into(),
        role,
        shape,
        width: Length::ZERO,
        weight: 0.0,
        element: element.cloned(),
        thing: None,
    }
}

fn text(at: Point, aside: Heading, text: Text) -> Shape {
    let aside = Some(aside);
    Shape::Text { at, aside, text }
}

/// A line with a stroke across each end.
fn measure(from: Point, to: Point, tick: Length) -> Shape {
    let across = from.heading_to(to).unwrap_or(ALONG).right();
    let mut steps = vec![Step::Move(from), Step::Line(to)];
    for end in [from, to] {
        steps.push(Step::Move(end.toward(across, -tick)));
        steps.push(Step::Line(end.toward(across, tick)));
    }
    Shape::Path(steps)
}

/// The floor and the dryer on it, its back at the outlet.
fn room(plan: &Plan, lines: &MeasureLines, marks: &mut Vec<Mark>) {
    let reach = plan.run.diameter / 2.0;
    let (left, right) = (
        point(lines.left - reach, Length::ZERO),
        point(lines.right + reach, Length::ZERO),
    );
    marks.push(mark("floor", Role::Floor, line(left, right), None));
    let outlet_height = plan.dryer.outlet_height;
    let above_outlet = outlet_height + plan.run.diameter;
    let height = if above_outlet > DRYER_HEIGHT {
        above_outlet
    } else {
        DRYER_HEIGHT
    };
    let depth = plan.dryer.depth;
    let outline = Shape::Path(vec![
        Step::Move(point(Length::ZERO, Length::ZERO)),
        Step::Line(point(Length::ZERO, height)),
        Step::Line(point(-depth, height)),
        Step::Line(point(-depth, Length::ZERO)),
        Step::Close,
    ]);
    marks.push(mark("dryer", Role::Dryer, outline, None));
    let name = Shape::Text {
        at: point(-depth / 2.0, height / 2.0),
        aside: None,
        text: Text::Dryer,
    };
    marks.push(mark("dryer:name", Role::Label, name, None));
}

/// From every corner down to the line of the legs' lengths.
fn extensions(corners: &[Corner], lines: &MeasureLines, marks: &mut Vec<Mark>) {
    for corner in corners {
        let from = point(corner.along, corner.leaves);
        let to = point(corner.along, lines.foot);
        let id = format!("extension:{}", corner.node);
        marks.push(mark(id, Role::Extension, line(from, to), None));
    }
}

fn leg_dimensions(corners: &[Corner], lines: &MeasureLines, marks: &mut Vec<Mark>) {
    for (before, corner) in corners.iter().zip(corners.iter().skip(1)) {
        let leg = ElementId::new(&corner.node, Part::Leg);
        let (from, to) = (
            point(before.along, lines.foot),
            point(corner.along, lines.foot),
        );
        let shape = measure(from, to, lines.tick);
        let id = format!("dimension:{leg}");
        marks.push(mark(id, Role::Dimension, shape, Some(&leg)));
        let length = Text::LegLength(corner.along - before.along);
        let shape = text(from.halfway(to), UP.back(), length);
        let id = format!("length:{leg}");
        marks.push(mark(id, Role::Label, shape, Some(&leg)));
    }
}

/// Every riser's rise and every drop, on a side that no leg takes.
fn rises(path: &RunPath, diameter: Length, marks: &mut Vec<Mark>) {
    for piece in &path.pieces {
        let PieceKind::Straight {
            corners: (foot, top),
            ..
        } = &piece.kind
        else {
            continue;
        };
        if piece.id.part == Part::Riser {
            let rise = Length::from_metres(foot.y - top.y);
            let lower = if foot.y > top.y { *foot } else { *top };
            let ends_here = foot.x >= path.end.0.x;
            let (at, aside) = if rise.abs() < diameter * SHORT_RISER {
                (lower, UP.back())
            } else if ends_here {
                (foot.halfway(*top), ALONG.back())
            } else {
                (foot.halfway(*top), ALONG)
            };
            let shape = text(at, aside, Text::Rise(rise));
            let id = format!("length:{}", piece.id);
            marks.push(mark(id, Role::Label, shape, Some(&piece.id)));
        }
    }
}

/// The heights of outlet and termination above the floor.
fn heights(plan: &Plan, path: &RunPath, lines: &MeasureLines, marks: &mut Vec<Mark>) {
    let end = path.end.0;
    let termination = path.pieces.last().map(|piece| &piece.id);
    let ends = [
        (
            "outlet",
            Length::ZERO,
            plan.dryer.outlet_height,
            lines.left,
            ALONG.back(),
            None,
        ),
        (
            "termination",
            Length::from_metres(end.x),
            Length::from_metres(-end.y),
            lines.right,
            ALONG,
            termination,
        ),
    ];
    for (name, along, height, line_at, aside, element) in ends {
        let (foot, top) = (point(line_at, Length::ZERO), point(line_at, height));
        let extension = line(point(along, height), top);
        let id = format!("extension:height:{name}");
        marks.push(mark(id, Role::Extension, extension, None));
        let id = format!("dimension:height:{name}");
        let shape = measure(foot, top, lines.tick);
        marks.push(mark(id, Role::Dimension, shape, element));
        let id = format!("height:{name}");
        let shape = text(foot.halfway(top), aside, Text::Height(height));
        marks.push(mark(id, Role::Label, shape, element));
    }
}

/// The outline of a piece from the side; none where nothing shows.
fn outline(piece: &Piece, path: &RunPath, diameter: Length) -> Option<Outline> {
    match &piece.kind {
        PieceKind::Straight {
            length,
            ends: (from, to),
            ..
        } => {
            let beside = from.heading_to(*to)?.right().back();
            (*length > Length::ZERO).then(|| (line(*from, *to), from.halfway(*to), Some(beside)))
        }
        // A turn on the plan goes straight on here.
        PieceKind::Bend(bend) if bend.before == bend.after => {
            let (from, to) = (
                bend.corner.toward(ALONG, -bend.tangent()),
                bend.corner.toward(ALONG, bend.tangent()),
            );
            Some((line(from, to), bend.corner, Some(UP)))
        }
        PieceKind::Bend(bend) => Some(run::bend_outline(bend)),
        PieceKind::Termination => Some(run::hood_outline(path, diameter)),
    }
}

/// A handle at the top of every corner's vertical, the outlet's too.
fn handles(corners: &[Corner], marks: &mut Vec<Mark>) {
    let last = corners.len().saturating_sub(1);
    for (index, corner) in corners.iter().enumerate() {
        let node: &NodeId = &corner.node;
        let part = if index == last {
            Part::Termination
        } else {
            Part::Elbow
        };
        let element = ElementId::new(node, part);
        let dot = Shape::Dot(point(corner.along, corner.leaves));
        let role = Role::Corner(node.clone());
        marks.push(mark(format!("corner:{node}"), role, dot, Some(&element)));
    }
}

/// The height up to which the handle at `at` can be pulled in sight.
fn above(at: Point) -> Length {
    Length::from_metres(-at.y) + SHOWN_ABOVE_DUCT
}

/// The rectangle about the marks, wide enough for the duct's thickness and high enough to raise it.
fn bounds(marks: &[Mark], diameter: Length) -> Bounds {
    let mut bounds = Bounds {
        least: point(Length::ZERO, SHOWN_HEIGHT),
        greatest: point(Length::ZERO, Length::ZERO),
    };
    let mut take = |at: Point, reach: f64| {
        bounds.least.x = bounds.least.x.min(at.x - reach);
        bounds.least.y = bounds.least.y.min(at.y - reach);
        bounds.greatest.x = bounds.greatest.x.max(at.x + reach);
        bounds.greatest.y = bounds.greatest.y.max(at.y + reach);
    };
    for mark in marks {
        let reach = match mark.role {
            Role::Casing => diameter.metres(),
            _ => 0.0,
        };
        match &mark.shape {
            Shape::Path(steps) => {
                for step in steps {
                    match step {
                        Step::Move(at) | Step::Line(at) | Step::Arc { to: at, .. } => {
                            take(*at, reach);
                        }
                        Step::Close => {}
                    }
                }
            }
            Shape::Circle { centre, radius } => take(*centre, radius.metres()),
            Shape::Dot(at) => take(point(Length::from_metres(at.x), above(*at)), 0.0),
            Shape::Text { at, .. } => take(*at, 0.0),
            // There is none in an elevation.
            Shape::Picture { .. } => {}
        }
    }
    bounds
}
