//! The likely places of a fault: a dashed ring at each, wider and heavier the likelier it is, with its
//! letter by rank.

use super::run::outline;
use super::{Mark, Role, Shape, Text};
use crate::plan::{ElementId, Heading, Plan, RunPath};

/// Radius and line of a ring as shares of the duct, for the least and the greatest odds.
const RADIUS: (f64, f64) = (1.1, 1.6);
const LINE: (f64, f64) = (0.06, 0.22);

/// The marks of `suspects`, each an element with its odds, the likeliest first.
pub fn suspect_marks(plan: &Plan, suspects: &[(ElementId, f64)]) -> Vec<Mark> {
    let path = RunPath::of(plan);
    let diameter = plan.run.diameter;
    let mut marks = Vec::new();
    for (rank, (id, odds)) in suspects.iter().enumerate() {
        // What sits in a leg is shown at its leg.
        let piece = path.pieces.iter().find(|piece| piece.id == *id);
        let piece = piece.or_else(|| {
            let mut pieces = path.pieces.iter();
            pieces.find(|piece| piece.id.node == id.node)
        });
        let Some((_, middle, aside)) = piece.and_then(|piece| outline(piece, &path, diameter))
        else {
            continue;
        };
        let weight = odds.clamp(0.0, 1.0);
        let between = |(least, most): (f64, f64)| diameter * (least + (most - least) * weight);
        let mark = |id: String, role: Role, shape: Shape| Mark {
            id,
            role,
            shape,
            width: between(LINE),
            weight,
            element: None,
            thing: None,
        };
        marks.push(mark(
            format!("suspect:{id}"),
            Role::Suspect,
            Shape::Circle {
                centre: middle,
                radius: between(RADIUS),
            },
        ));
        marks.push(mark(
            format!("suspect-letter:{id}"),
            Role::SuspectLetter,
            Shape::Text {
                at: middle,
                aside: Some(aside.map_or(Heading::UP, Heading::back)),
                text: Text::Suspect(rank),
            },
        ));
    }
    marks
}
