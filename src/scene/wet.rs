//! Hatching of the stretch where water condenses.

use super::{Shape, Step};
use crate::plan::Point;
use crate::units::Length;

/// From stroke to stroke, and how far a stroke's ends lie apart along the duct, in duct widths.
const SPACING: f64 = 0.6;
const SLANT: f64 = 0.35;
/// Half of a stroke across the duct, in duct widths.
const HALF_ACROSS: f64 = 0.5;

/// Strokes across the share `from..to` of an outline drawn from its beginning; none where it has no
/// length that could be hatched.
pub(super) fn hatching(outline: &Shape, width: Length, (from, to): (f64, f64)) -> Option<Shape> {
    let width = width.metres();
    let steps = match outline {
        Shape::Path(steps) => match steps.as_slice() {
            [Step::Move(start), Step::Line(end)] => {
                let (x, y) = (end.x - start.x, end.y - start.y);
                let length = x.hypot(y);
                let at = |along: f64, aside: f64| {
                    let (x, y) = (x / length, y / length);
                    Point::new(
                        start.x + x * along - y * aside,
                        start.y + y * along + x * aside,
                    )
                };
                strokes(length, width, from, to, at)
            }
            [
                Step::Move(start),
                Step::Arc {
                    to: end,
                    radius,
                    clockwise,
                },
            ] => {
                let arc = Arc::of(*start, *end, *radius, *clockwise)?;
                let at = |along: f64, aside: f64| arc.at(along, aside);
                strokes(arc.sweep.abs() * radius, width, from, to, at)
            }
            _ => return None,
        },
        // A riser from above: the strokes cross the whole ring.
        Shape::Circle { centre, radius } => {
            let across = 2.0 * radius.metres();
            let at = |along: f64, aside: f64| {
                Point::new(centre.x + along - across / 2.0, centre.y + aside)
            };
            strokes(across, width * 0.7, 0.0, 1.0, at)
        }
        _ => return None,
    };
    (!steps.is_empty()).then_some(Shape::Path(steps))
}

/// Strokes between two shares of a length; `at` gives the place so far along and so far aside.
fn strokes(
    length: f64,
    width: f64,
    from: f64,
    to: f64,
    at: impl Fn(f64, f64) -> Point,
) -> Vec<Step> {
    /// More strokes than this are not told one from another.
    const MOST: usize = 400;
    let mut steps = Vec::new();
    if length <= 0.0 || width <= 0.0 {
        return steps;
    }
    let (mut along, end) = (length * from + width * SPACING / 2.0, length * to);
    while along < end && steps.len() < MOST {
        steps.push(Step::Move(at(
            along - width * SLANT / 2.0,
            -width * HALF_ACROSS,
        )));
        steps.push(Step::Line(at(
            along + width * SLANT / 2.0,
            width * HALF_ACROSS,
        )));
        along += width * SPACING;
    }
    steps
}

/// An arc of less than half a circle.
struct Arc {
    centre: Point,
    radius: f64,
    /// The angle that it starts at, and how far it goes on, rad.
    start: f64,
    sweep: f64,
}

impl Arc {
    fn of(from: Point, to: Point, radius: f64, clockwise: bool) -> Option<Self> {
        let (x, y) = (to.x - from.x, to.y - from.y);
        let chord = x.hypot(y);
        if chord <= 0.0 || chord > 2.0 * radius {
            return None;
        }
        let height = (radius * radius - chord * chord / 4.0).sqrt();
        // With y toward the foot of the sheet a clockwise arc's centre lies to the right of its chord.
        let side = if clockwise { 1.0 } else { -1.0 };
        let centre = Point::new(
            from.x + x / 2.0 - y / chord * height * side,
            from.y + y / 2.0 + x / chord * height * side,
        );
        let sweep = 2.0 * (chord / (2.0 * radius)).asin() * side;
        Some(Self {
            centre,
            radius,
            start: (from.y - centre.y).atan2(from.x - centre.x),
            sweep,
        })
    }

    fn at(&self, along: f64, aside: f64) -> Point {
        let angle = self.start + along / self.radius * self.sweep.signum();
        let (sine, cosine) = angle.sin_cos();
        // Aside is to the right of the way: toward the centre where it turns clockwise.
        let radius = self.radius - aside * self.sweep.signum();
        Point::new(
            self.centre.x + radius * cosine,
            self.centre.y + radius * sine,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn points(shape: Option<Shape>) -> Vec<Point> {
        let Some(Shape::Path(steps)) = shape else {
            return Vec::new();
        };
        let point = |step: &Step| match step {
            Step::Move(at) | Step::Line(at) => Some(*at),
            _ => None,
        };
        steps.iter().filter_map(point).collect()
    }

    #[test]
    fn strokes_lie_on_their_share_of_a_straight() {
        let straight = Shape::Path(vec![
            Step::Move(Point::new(0.0, 1.0)),
            Step::Line(Point::new(4.0, 1.0)),
        ]);
        let found = points(hatching(&straight, Length::from_metres(0.1), (0.5, 1.0)));
        assert!(found.len() > 60);
        for point in found {
            assert!((1.95..4.05).contains(&point.x) && (0.94..1.06).contains(&point.y));
        }
    }

    /// A quarter turn of radius 1 about (1, 1): every stroke is 0.1 long across the radius.
    #[test]
    fn strokes_follow_an_arc() {
        let bend = |clockwise: bool, to: Point| {
            let from = Point::new(0.0, 1.0);
            Shape::Path(vec![
                Step::Move(from),
                Step::Arc {
                    to,
                    radius: 1.0,
                    clockwise,
                },
            ])
        };
        for (shape, centre) in [
            (bend(true, Point::new(1.0, 0.0)), Point::new(1.0, 1.0)),
            (bend(false, Point::new(1.0, 2.0)), Point::new(1.0, 1.0)),
        ] {
            let found = points(hatching(&shape, Length::from_metres(0.1), (0.0, 1.0)));
            assert!(found.len() > 50, "{}", found.len());
            for point in found {
                let radius = (point.x - centre.x).hypot(point.y - centre.y);
                assert!((radius - 1.0).abs() < 0.051, "{point:?}, {radius}");
            }
        }
    }
}
