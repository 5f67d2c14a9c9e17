//! What a press on a list of marks means.

use crate::plan::Point;
use crate::scene::{Mark, Role, Shape, Step};

/// The mark that lies within `reach` of `at`, m: a corner's handle before a duct, and of each the
/// nearest. An arc counts as its chord.
pub fn pick_mark(marks: &[Mark], at: Point, reach: f64) -> Option<&Mark> {
    let nearest = |is_wanted: fn(&Role) -> bool| {
        marks
            .iter()
            .filter(|mark| is_wanted(&mark.role))
            .map(|mark| (distance(&mark.shape, at), mark))
            .filter(|(distance, _)| *distance <= reach)
            .min_by(|a, b| a.0.total_cmp(&b.0))
            .map(|(_, mark)| mark)
    };
    nearest(|role| matches!(role, Role::Corner(_)))
        .or_else(|| nearest(|role| *role == Role::Casing))
}

fn distance(shape: &Shape, at: Point) -> f64 {
    match shape {
        Shape::Dot(centre) => centre.distance(at).metres(),
        Shape::Circle { centre, radius } => (centre.distance(at) - *radius).metres(),
        Shape::Text { .. } | Shape::Picture { .. } => f64::INFINITY,
        Shape::Path(steps) => {
            let (mut pen, mut least) = (None, f64::INFINITY);
            for step in steps {
                let to = match *step {
                    Step::Move(to) => {
                        pen = Some(to);
                        continue;
                    }
                    Step::Line(to) | Step::Arc { to, .. } => to,
                    Step::Close => continue,
                };
                let from = pen.replace(to).unwrap_or(to);
                least = least.min(at.distance_to_segment(from, to).metres());
            }
            least
        }
    }
}
