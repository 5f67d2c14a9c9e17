//! Where a drawn or dragged point settles, and the lines that it settles on.

use super::Tool;
use crate::plan::{Heading, Plan, Point, Wall};
use crate::scene::{Guide, Snap};
use crate::units::{Length, UnitSystem};

/// The lines and points that may catch a point.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Catch {
    /// The points beside it in its chain: it settles square or at 45 deg to them.
    pub beside: Vec<Point>,
    /// Points that it settles on, or in line with.
    pub ends: Vec<Point>,
    /// Lines along the sheet's sides.
    pub lines: Vec<Line>,
}

/// A line along one of the sheet's sides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// A point on it, from which it is drawn.
    pub through: Point,
    /// Whether it runs up and down the sheet.
    pub upright: bool,
    /// What it is.
    pub snap: Snap,
}

/// Where a point settled.
#[derive(Debug, Clone, PartialEq)]
pub struct Settled {
    /// The point.
    pub at: Point,
    /// What it settled on.
    pub guides: Vec<Guide>,
}

/// The grid that a point falls on where nothing else catches it, m: half an inch or a centimetre from
/// near, and from farther off a rounder step that a hand can still tell from the next.
fn grid(units: UnitSystem, reach: f64) -> f64 {
    const INCHES: [f64; 6] = [0.5, 1.0, 3.0, 6.0, 12.0, 24.0];
    const METRES: [f64; 6] = [0.01, 0.05, 0.1, 0.25, 0.5, 1.0];
    /// The least step, as a share of the distance at which lines catch.
    const TELLABLE: f64 = 0.75;
    let steps = match units {
        UnitSystem::UsCustomary => INCHES.map(|step| Length::from_inches(step).metres()),
        UnitSystem::Si => METRES,
    };
    let widest = steps[steps.len() - 1];
    let tellable = steps.into_iter().find(|step| *step >= reach * TELLABLE);
    tellable.unwrap_or(widest)
}

/// A coordinate to the tenth of a micrometre: the same place reached in two ways is the same number,
/// and a sixteenth of an inch is exact.
pub(super) fn exact(value: f64) -> f64 {
    (value * 1e7).round() / 1e7
}

/// A coordinate without the last digits of a sum; one that stands between the steps stays.
fn without_dust(value: f64) -> f64 {
    const DUST: f64 = 1e-12;
    let rounded = exact(value);
    if (rounded - value).abs() < DUST {
        rounded
    } else {
        value
    }
}

/// A coordinate that came of another: as exact as that one was.
#[allow(clippy::float_cmp, reason = "asks whether rounding changes it at all")]
pub(super) fn as_exact_as(before: f64, after: f64) -> f64 {
    if exact(before) == before {
        exact(after)
    } else {
        after
    }
}

/// A coordinate on the grid.
pub(super) fn on_grid(value: f64, units: UnitSystem, reach: f64) -> f64 {
    let grid = grid(units, reach);
    exact((value / grid).round() * grid)
}

/// Where a point at `wanted` settles: on an end; else square to what is beside it or on a line, in x
/// and in y each by itself; else on a diagonal; each within `reach`. What is left free falls on the
/// grid.
pub fn snap(wanted: Point, catch: &Catch, reach: f64, units: UnitSystem) -> Settled {
    let near_end = catch
        .ends
        .iter()
        .map(|end| (end, end.distance(wanted).metres()))
        .filter(|(_, distance)| *distance <= reach)
        .min_by(|a, b| a.1.total_cmp(&b.1));
    if let Some((end, _)) = near_end {
        return Settled {
            at: *end,
            guides: vec![guide(*end, *end, Snap::WallEnd)],
        };
    }
    let square = catch.beside.iter().map(|point| (point, Snap::Square));
    let in_line = catch.ends.iter().map(|point| (point, Snap::InLine));
    let lines: Vec<Line> = square
        .chain(in_line)
        .flat_map(|(through, snap)| {
            [true, false].map(|upright| Line {
                through: *through,
                upright,
                snap,
            })
        })
        .chain(catch.lines.iter().copied())
        .collect();
    let nearest = |upright: bool| {
        lines
            .iter()
            .filter(|line| line.upright == upright)
            .map(|line| (line, line.distance(wanted)))
            .filter(|(_, distance)| *distance <= reach)
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .map(|(line, _)| *line)
    };
    let (across, down) = (nearest(true), nearest(false));
    if across.is_none()
        && down.is_none()
        && let Some(settled) = diagonal(wanted, &catch.beside, reach, units)
    {
        return settled;
    }
    let at = Point::new(
        across.map_or_else(
            || on_grid(wanted.x, units, reach),
            |line| without_dust(line.through.x),
        ),
        down.map_or_else(
            || on_grid(wanted.y, units, reach),
            |line| without_dust(line.through.y),
        ),
    );
    let guides = across
        .into_iter()
        .chain(down)
        .map(|line| guide(line.through, at, line.snap));
    Settled {
        at,
        guides: guides.collect(),
    }
}

const fn guide(from: Point, to: Point, snap: Snap) -> Guide {
    Guide { from, to, snap }
}

fn diagonal(wanted: Point, beside: &[Point], reach: f64, units: UnitSystem) -> Option<Settled> {
    beside.iter().find_map(|neighbour| {
        let (dx, dy) = (wanted.x - neighbour.x, wanted.y - neighbour.y);
        // Distance to the nearer diagonal through the neighbour.
        let off = (dx.abs() - dy.abs()).abs() / core::f64::consts::SQRT_2;
        (off <= reach).then(|| {
            let side = on_grid(f64::midpoint(dx.abs(), dy.abs()), units, reach);
            let at = Point::new(
                exact(neighbour.x + side.copysign(dx)),
                exact(neighbour.y + side.copysign(dy)),
            );
            Settled {
                at,
                guides: vec![guide(*neighbour, at, Snap::Diagonal)],
            }
        })
    })
}

impl Line {
    fn distance(&self, point: Point) -> f64 {
        if self.upright {
            (point.x - self.through.x).abs()
        } else {
            (point.y - self.through.y).abs()
        }
    }
}

/// What catches a point that is drawn with `tool`, between the points `beside` it.
pub(super) fn catch(plan: &Plan, tool: Tool, beside: Vec<Point>, near: Point) -> Catch {
    let mut catch = Catch {
        beside,
        ..Catch::default()
    };
    match tool {
        Tool::Wall { .. } => {
            catch.ends = plan
                .walls
                .iter()
                .flat_map(|wall| [wall.from(), wall.to()])
                .collect();
            // A wall never ends where it begins.
            let beside = &catch.beside;
            catch.ends.retain(|end| !beside.contains(end));
        }
        Tool::Run => {
            wall_lines(plan, near, &mut catch.lines);
            member_lines(plan, near, &mut catch.lines);
        }
        Tool::Obstacle(_) | Tool::Zone(_) => wall_lines(plan, near, &mut catch.lines),
        Tool::Pick | Tool::Place | Tool::Opening(_) | Tool::Scale => {}
    }
    catch
}

/// The faces of the walls that a point is beside, where they lie along the sheet's sides.
fn wall_lines(plan: &Plan, near: Point, lines: &mut Vec<Line>) {
    /// A wall catches this far past its ends, m.
    const PAST_END: f64 = 0.3;
    for wall in &plan.walls {
        let Some((along, from_start, length)) = along(wall, near) else {
            continue;
        };
        let upright = along.x.abs() < 1e-9;
        let level = along.y.abs() < 1e-9;
        if !(upright || level) || !(-PAST_END..=length + PAST_END).contains(&from_start) {
            continue;
        }
        for side in [-0.5, 0.5] {
            let face = wall.from().toward(along.right(), wall.thickness * side);
            lines.push(Line {
                through: Point::new(exact(face.x), exact(face.y)),
                upright,
                snap: Snap::WallFace,
            });
        }
    }
}

/// Midway between each two members of the framing that a point is in.
fn member_lines(plan: &Plan, near: Point, lines: &mut Vec<Line>) {
    for obstacle in &plan.obstacles {
        let inside = (obstacle.x_m..=obstacle.x_m + obstacle.width.metres()).contains(&near.x)
            && (obstacle.y_m..=obstacle.y_m + obstacle.depth.metres()).contains(&near.y);
        let crate::plan::ObstacleKind::Framing { members, .. } = obstacle.kind else {
            continue;
        };
        if !inside {
            continue;
        }
        let upright = members == crate::plan::Axis::AlongY;
        for pair in obstacle.members().windows(2) {
            let middle = exact(f64::midpoint(pair[0], pair[1]));
            let through = if upright {
                Point::new(middle, obstacle.y_m)
            } else {
                Point::new(obstacle.x_m, middle)
            };
            lines.push(Line {
                through,
                upright,
                snap: Snap::BetweenMembers,
            });
        }
    }
}

/// A wall's direction, how far along it a point lies from its start, and its length, m.
pub(super) fn along(wall: &Wall, point: Point) -> Option<(Heading, f64, f64)> {
    let along = wall.from().heading_to(wall.to())?;
    let (dx, dy) = (point.x - wall.from_x_m, point.y - wall.from_y_m);
    let length = wall.from().distance(wall.to()).metres();
    Some((along, dx * along.x + dy * along.y, length))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_corner_settles_square_then_diagonal_then_on_the_grid() {
        let catch = Catch {
            beside: vec![Point::new(0.0, 0.0), Point::new(2.0, 1.0)],
            ..Catch::default()
        };
        let near = |wanted: Point| snap(wanted, &catch, 0.03, UnitSystem::Si);
        let square = near(Point::new(0.02, 0.98));
        assert_eq!(square.at, Point::new(0.0, 1.0));
        assert_eq!(square.guides.len(), 2);
        let diagonal = near(Point::new(0.512, 0.5));
        assert!((diagonal.at.x - diagonal.at.y).abs() < 1e-12);
        assert_eq!(diagonal.guides[0].snap, Snap::Diagonal);
        let free = near(Point::new(0.704, 0.306)).at;
        assert!((free.x - 0.70).abs() < 1e-12 && (free.y - 0.30).abs() < 1e-12);
        let close = snap(Point::new(0.704, 0.306), &catch, 0.01, UnitSystem::Si).at;
        assert!((close.x - 0.70).abs() < 1e-12 && (close.y - 0.31).abs() < 1e-12);
    }
}
