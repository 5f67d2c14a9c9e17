//! The measure from the termination to an opening that is nearer than the rules ask for.

use super::room::line;
use super::{Mark, Role, Shape, Text};
use crate::plan::{Plan, RunPath, ThingId};
use crate::rules::too_near;
use crate::units::Length;

pub(super) fn draw(plan: &Plan, path: &RunPath, marks: &mut Vec<Mark>) {
    let end = path.pieces.last().map(|piece| piece.id.clone());
    for near in too_near(plan, path) {
        let opening = ThingId::Opening(near.opening.clone());
        let mark = |part: &str, role: Role, shape: Shape| Mark {
            id: format!("measure{part}:{opening}"),
            role,
            shape,
            width: Length::ZERO,
            weight: 0.0,
            element: end.clone(),
            thing: None,
        };
        let text = Shape::Text {
            at: near.from.halfway(near.to),
            aside: near
                .from
                .heading_to(near.to)
                .map(crate::plan::Heading::right),
            text: Text::Size(near.distance),
        };
        marks.push(mark("", Role::Dimension, line(near.from, near.to)));
        marks.push(mark("-length", Role::Label, text));
    }
}
