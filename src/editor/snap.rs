//! Where a dragged corner settles.

use crate::plan::Point;
use crate::units::{Length, UnitSystem};

/// The grid that a corner falls on where nothing else catches it: half an inch, or a centimetre.
fn grid(units: UnitSystem) -> f64 {
    match units {
        UnitSystem::UsCustomary => Length::from_inches(0.5).metres(),
        UnitSystem::Si => 0.01,
    }
}

/// Where a corner at `wanted` settles between its `neighbours`: in line with one or both of them
/// (making a leg run square to the sheet), else on a diagonal through one, each within `reach`;
/// what is left free falls on the grid.
pub fn snap(wanted: Point, neighbours: &[Point], reach: f64, units: UnitSystem) -> Point {
    let nearest = |value: f64, lines: &mut dyn Iterator<Item = f64>| {
        lines
            .filter(|line| (line - value).abs() <= reach)
            .min_by(|a, b| (a - value).abs().total_cmp(&(b - value).abs()))
    };
    let x = nearest(wanted.x, &mut neighbours.iter().map(|point| point.x));
    let y = nearest(wanted.y, &mut neighbours.iter().map(|point| point.y));
    let on_grid = |value: f64| (value / grid(units)).round() * grid(units);
    if x.is_none() && y.is_none() {
        for neighbour in neighbours {
            let (dx, dy) = (wanted.x - neighbour.x, wanted.y - neighbour.y);
            // Distance to the nearer diagonal through the neighbour.
            if (dx.abs() - dy.abs()).abs() / core::f64::consts::SQRT_2 <= reach {
                let side = on_grid(f64::midpoint(dx.abs(), dy.abs()));
                return Point::new(
                    neighbour.x + side.copysign(dx),
                    neighbour.y + side.copysign(dy),
                );
            }
        }
    }
    Point::new(
        x.unwrap_or_else(|| on_grid(wanted.x)),
        y.unwrap_or_else(|| on_grid(wanted.y)),
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_corner_settles_square_then_diagonal_then_on_the_grid() {
        let neighbours = [Point::new(0.0, 0.0), Point::new(2.0, 1.0)];
        let si = UnitSystem::Si;
        let near = |wanted: Point| snap(wanted, &neighbours, 0.03, si);
        assert_eq!(near(Point::new(0.02, 0.98)), Point::new(0.0, 1.0));
        let diagonal = near(Point::new(0.512, 0.5));
        assert!((diagonal.x - diagonal.y).abs() < 1e-12);
        let free = near(Point::new(0.704, 0.306));
        assert!((free.x - 0.70).abs() < 1e-12 && (free.y - 0.31).abs() < 1e-12);
    }
}
