//! What is being drawn and not yet in the plan, with the lines that it has settled on.

use super::room::{line, rectangle};
use super::{Mark, Role, Shape, Snap, Text};
use crate::plan::{Heading, Point};
use crate::units::Length;

/// Something on its way into the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draft {
    /// What it will be.
    pub kind: DraftKind,
    /// Where it begins.
    pub from: Point,
    /// Where it would end.
    pub to: Point,
}

/// The outline that is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DraftKind {
    /// A line of this width.
    Line(Length),
    /// A rectangle from corner to corner.
    Rectangle,
}

/// A line that a point has settled on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Guide {
    /// Where it comes from.
    pub from: Point,
    /// The point that settled.
    pub to: Point,
    /// What it is.
    pub snap: Snap,
}

/// The marks of what is being drawn: its outline, its sizes and the lines that it has settled on.
pub fn draft_marks(draft: Option<&Draft>, guides: &[Guide]) -> Vec<Mark> {
    let mark = |id: String, role: Role, shape: Shape, width: Length| Mark {
        id,
        role,
        shape,
        width,
        weight: 0.0,
        element: None,
        thing: None,
    };
    let mut marks = Vec::new();
    for (index, guide) in guides.iter().enumerate() {
        let shape = line(guide.from, guide.to);
        marks.push(mark(
            format!("guide:{index}"),
            Role::Guide,
            shape,
            Length::ZERO,
        ));
        let text = Shape::Text {
            at: guide.from.halfway(guide.to),
            // The drawn length stands on the other side.
            aside: guide.to.heading_to(guide.from).map(Heading::right),
            text: Text::Snap(guide.snap),
        };
        marks.push(mark(
            format!("guide:{index}:name"),
            Role::Guide,
            text,
            Length::ZERO,
        ));
    }
    let Some(Draft { kind, from, to }) = draft.copied() else {
        return marks;
    };
    let size = |length: Length, at: Point, aside: Option<Heading>| Shape::Text {
        at,
        aside,
        text: Text::Size(length),
    };
    match kind {
        DraftKind::Line(width) => {
            marks.push(mark("draft".into(), Role::Draft, line(from, to), width));
            let aside = from.heading_to(to).map(Heading::right);
            let text = size(from.distance(to), from.halfway(to), aside);
            marks.push(mark("draft:length".into(), Role::Size, text, Length::ZERO));
        }
        DraftKind::Rectangle => {
            let corner = Point::new(from.x.min(to.x), from.y.min(to.y));
            let width = Length::from_metres((to.x - from.x).abs());
            let depth = Length::from_metres((to.y - from.y).abs());
            let outline = rectangle(corner, width, depth);
            marks.push(mark("draft".into(), Role::Draft, outline, Length::ZERO));
            let top = Point::new(f64::midpoint(from.x, to.x), corner.y);
            let side = Point::new(corner.x, f64::midpoint(from.y, to.y));
            let across = size(width, top, Some(Heading::UP));
            let down = size(depth, side, Some(Heading::LEFT));
            marks.push(mark("draft:width".into(), Role::Size, across, Length::ZERO));
            marks.push(mark("draft:depth".into(), Role::Size, down, Length::ZERO));
        }
    }
    marks
}
