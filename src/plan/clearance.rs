//! Where the drawn duct has no room: what stands in its way, by its outside and not its centre line.

use super::{
    Axis, Duct, ElementId, Level, Obstacle, ObstacleKind, Part, PieceKind, Plan, Point, RunPath,
    Wall,
};
use crate::source::source;
use crate::units::Length;
use serde::Serialize;

/// A leg that cuts into something.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Clash {
    /// The leg.
    pub element: ElementId,
    /// What it cuts into.
    pub with: ClashWith,
    /// How far at most.
    #[serde(rename = "by_m")]
    pub by: Length,
}

/// What a leg cuts into.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ClashWith {
    /// A wall that it runs along; it may go through one.
    Wall,
    /// Studs or joists that it runs across, or lies too near to.
    Members,
    /// Anything else, by its kind and its name, which may be empty.
    Obstacle(ObstacleKind, String),
}

source! {
    /// Of the room that new routes keep and the elbows that they may have.
    pub static ROUTE_SOURCE {
        title: "Our assumption for new routes",
        edition: "2026",
        locator: "1/4 in beside the duct, a dryer's body as high as 1.1 m above its outlet, long radius 1.5 diameters",
        standing: Assumption,
    }
}

source! {
    /// Of the thickness of framing members.
    pub static LUMBER_SOURCE {
        title: "American Softwood Lumber Standard, PS 20",
        edition: "current",
        locator: "dressed size of nominal 2 in lumber, 1-1/2 in",
        standing: Memory,
    }
}

/// A cut of less than this is drawing, not building. Of the computation.
pub const LEAST_CUT: Length = Length::from_metres(0.003);
/// Half the thickness of a stud or joist, 1-1/2 in. Source: [`LUMBER_SOURCE`].
pub const HALF_MEMBER: f64 = 0.019_05;
/// A leg runs along a wall where it turns less than this from it: sine of 20 deg.
/// Of the computation.
pub const ALONG: f64 = 0.342;

/// Every leg of `path` that cuts into a wall, an obstacle or framing of `plan`, in run order.
pub fn clashes(plan: &Plan, path: &RunPath) -> Vec<Clash> {
    let mut found = Vec::new();
    for piece in &path.pieces {
        let PieceKind::Straight { ends, duct, .. } = &piece.kind else {
            continue;
        };
        if piece.id.part != Part::Leg {
            continue;
        }
        let half = half_width(plan, piece.point, *duct);
        let leg = Leg {
            from: ends.0,
            to: ends.1,
            half,
            level: plan.level_at(piece.height),
        };
        let mut add = |with: ClashWith, by: f64| {
            let by = Length::from_metres(by);
            if by > LEAST_CUT {
                found.push(Clash {
                    element: piece.id.clone(),
                    with,
                    by,
                });
            }
        };
        if leg.level == Level::Room {
            let cuts = plan.walls.iter().filter_map(|wall| leg.cut_into_wall(wall));
            if let Some(by) = cuts.max_by(f64::total_cmp) {
                add(ClashWith::Wall, by);
            }
        }
        for obstacle in plan.obstacles.iter().filter(|it| it.level == leg.level) {
            if let Some(by) = leg.cut_into(obstacle) {
                let with = match obstacle.kind {
                    ObstacleKind::Framing { .. } => ClashWith::Members,
                    kind => ClashWith::Obstacle(kind, obstacle.name.clone()),
                };
                add(with, by);
            }
        }
    }
    found
}

/// Half the leg's width as seen from above, m: its outside is taken for its inside, which sheet metal
/// differs from by its thickness.
fn half_width(plan: &Plan, point: Option<usize>, duct: Duct) -> f64 {
    let own = point.and_then(|index| plan.run.points[index].leg.diameter);
    let width = match duct {
        // Flat duct stands on edge behind the dryer.
        Duct::FlatRectangular { depth, .. } => depth,
        _ => own.unwrap_or(plan.run.diameter),
    };
    width.metres() / 2.0
}

struct Leg {
    from: Point,
    to: Point,
    half: f64,
    level: Level,
}

impl Leg {
    /// How far it cuts into a wall that it runs along, m.
    fn cut_into_wall(&self, wall: &Wall) -> Option<f64> {
        let along = wall.from().heading_to(wall.to())?;
        let own = self.from.heading_to(self.to)?;
        if own.cross(along).abs() > ALONG {
            return None;
        }
        let off = segment_distance(self.from, self.to, wall.from(), wall.to());
        Some(self.half + wall.thickness.metres() / 2.0 - off)
    }

    /// How far it cuts into an obstacle, m.
    fn cut_into(&self, obstacle: &Obstacle) -> Option<f64> {
        if !self.may_touch(obstacle) {
            return None;
        }
        match obstacle.kind {
            ObstacleKind::Framing { members, .. } => self.cut_into_members(obstacle, members),
            _ => Some(self.half - self.distance_to_box(obstacle)),
        }
    }

    /// Whether the boxes about the two, which are quick to compare, come near enough.
    fn may_touch(&self, obstacle: &Obstacle) -> bool {
        let near = self.half + HALF_MEMBER;
        let meets = |from: f64, to: f64, least: f64, size: Length| {
            from.max(to) + near >= least && from.min(to) - near <= least + size.metres()
        };
        meets(self.from.x, self.to.x, obstacle.x_m, obstacle.width)
            && meets(self.from.y, self.to.y, obstacle.y_m, obstacle.depth)
    }

    fn cut_into_members(&self, obstacle: &Obstacle, members: Axis) -> Option<f64> {
        let cuts = obstacle.members().into_iter().map(|at| {
            let (from, to) = match members {
                Axis::AlongX => (
                    Point::new(obstacle.x_m, at),
                    Point::new(obstacle.x_m + obstacle.width.metres(), at),
                ),
                Axis::AlongY => (
                    Point::new(at, obstacle.y_m),
                    Point::new(at, obstacle.y_m + obstacle.depth.metres()),
                ),
            };
            self.half + HALF_MEMBER - segment_distance(self.from, self.to, from, to)
        });
        cuts.max_by(f64::total_cmp)
    }

    fn distance_to_box(&self, obstacle: &Obstacle) -> f64 {
        let (x, y) = (obstacle.x_m, obstacle.y_m);
        let (right, foot) = (x + obstacle.width.metres(), y + obstacle.depth.metres());
        let inside = |point: Point| (x..=right).contains(&point.x) && (y..=foot).contains(&point.y);
        if inside(self.from) || inside(self.to) {
            return 0.0;
        }
        let corners = [
            Point::new(x, y),
            Point::new(right, y),
            Point::new(right, foot),
            Point::new(x, foot),
        ];
        (0..4)
            .map(|side| {
                segment_distance(self.from, self.to, corners[side], corners[(side + 1) % 4])
            })
            .fold(f64::INFINITY, f64::min)
    }
}

/// The least distance between two segments, m.
pub fn segment_distance(a: Point, b: Point, c: Point, d: Point) -> f64 {
    let side = |from: Point, to: Point, point: Point| {
        (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x)
    };
    let crosses = side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0;
    if crosses {
        return 0.0;
    }
    [
        a.distance_to_segment(c, d),
        b.distance_to_segment(c, d),
        c.distance_to_segment(a, b),
        d.distance_to_segment(a, b),
    ]
    .into_iter()
    .fold(f64::INFINITY, |least, each| least.min(each.metres()))
}
