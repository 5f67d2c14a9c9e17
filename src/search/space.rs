//! What a duct may pass: every obstacle, wall and joist of a plan against a piece of duct by its
//! outside and the clearance.

use crate::plan::{
    ALONG, Axis, HALF_MEMBER, Level, ObstacleKind, Plan, Point, level_at, segment_distance,
};
use crate::units::Length;

/// A cut of less than this, m, is the rounding of a sum of coordinates. Of the computation.
const ROUNDING: f64 = 1e-6;

/// What stands somewhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Owner {
    Obstacle(usize),
    OutsideWall(usize),
    InsideWall(usize),
    Dryer,
}

/// What a piece of duct need not stay clear of.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Exempt {
    /// The outside wall that the last leg goes through.
    pub wall: Option<usize>,
    /// Whether it is the leg that leaves the dryer.
    pub dryer: bool,
}

/// A box, or a segment where its two sizes are one, with the distance that a centre line keeps.
struct Solid {
    owner: Owner,
    /// None for every level.
    level: Option<Level>,
    from: Point,
    to: Point,
    is_box: bool,
    keeps: f64,
}

/// The solids of one plan about a duct of one size.
pub(super) struct Space {
    solids: Vec<Solid>,
    ceiling: Length,
}

impl Space {
    pub fn of(plan: &Plan, clearance: Length) -> Self {
        let half = plan.run.diameter.metres() / 2.0 + clearance.metres();
        let mut solids = Vec::new();
        for (index, obstacle) in plan.obstacles.iter().enumerate() {
            let from = Point::new(obstacle.x_m, obstacle.y_m);
            let to = Point::new(
                from.x + obstacle.width.metres(),
                from.y + obstacle.depth.metres(),
            );
            let solid = |from: Point, to: Point, keeps: f64| Solid {
                owner: Owner::Obstacle(index),
                level: Some(obstacle.level),
                from,
                to,
                is_box: true,
                keeps,
            };
            match obstacle.kind {
                ObstacleKind::Framing { members, .. } => {
                    solids.extend(obstacle.members().into_iter().map(|at| {
                        let (from, to) = match members {
                            Axis::AlongX => (Point::new(from.x, at), Point::new(to.x, at)),
                            Axis::AlongY => (Point::new(at, from.y), Point::new(at, to.y)),
                        };
                        solid(from, to, half + HALF_MEMBER)
                    }));
                }
                _ => solids.push(solid(from, to, half)),
            }
        }
        for (index, wall) in plan.walls.iter().enumerate() {
            solids.push(Solid {
                owner: if wall.outside {
                    Owner::OutsideWall(index)
                } else {
                    Owner::InsideWall(index)
                },
                level: (!wall.outside).then_some(Level::Room),
                from: wall.from(),
                to: wall.to(),
                is_box: false,
                keeps: half + wall.thickness.metres() / 2.0,
            });
        }
        if let Some((from, to)) = footprint(plan) {
            solids.push(Solid {
                owner: Owner::Dryer,
                level: Some(Level::Room),
                from,
                to,
                is_box: true,
                keeps: half,
            });
        }
        Self {
            solids,
            ceiling: plan.ceiling_height,
        }
    }

    pub fn level(&self, height: f64) -> Level {
        level_at(self.ceiling, Length::from_metres(height))
    }

    /// What a straight piece of duct cuts into first, if anything.
    pub fn in_the_way(
        &self,
        level: Level,
        from: Point,
        to: Point,
        exempt: Exempt,
    ) -> Option<Owner> {
        let cut = |solid: &&Solid| {
            if solid.level.is_some_and(|own| own != level) {
                return false;
            }
            match solid.owner {
                Owner::OutsideWall(index) if exempt.wall == Some(index) => return false,
                Owner::Dryer if exempt.dryer => return false,
                Owner::InsideWall(_) if !runs_along(from, to, solid.from, solid.to) => {
                    return false;
                }
                _ => {}
            }
            solid.distance(from, to) < solid.keeps - ROUNDING
        };
        self.solids.iter().find(cut).map(|solid| solid.owner)
    }

    pub fn is_clear(&self, level: Level, from: Point, to: Point, exempt: Exempt) -> bool {
        self.in_the_way(level, from, to, exempt).is_none()
    }

    /// Whether a vertical duct has room at each level that it passes.
    pub fn is_shaft_clear(&self, at: Point, low: f64, high: f64) -> bool {
        let (lowest, highest) = (self.level(low), self.level(high));
        [Level::CrawlSpace, Level::Room, Level::CeilingSpace]
            .into_iter()
            .filter(|level| (lowest..=highest).contains(level))
            .all(|level| self.is_clear(level, at, at, Exempt::default()))
    }
}

/// The dryer's footprint where it stands square to the sheet.
fn footprint(plan: &Plan) -> Option<(Point, Point)> {
    let back = plan.dryer.back_heading();
    let (along_x, along_y) = if back.x.abs() < ROUNDING {
        (plan.dryer.width, plan.dryer.depth)
    } else if back.y.abs() < ROUNDING {
        (plan.dryer.depth, plan.dryer.width)
    } else {
        return None;
    };
    let (half_x, half_y) = (along_x.metres() / 2.0, along_y.metres() / 2.0);
    let centre = plan.dryer.centre();
    Some((
        Point::new(centre.x - half_x, centre.y - half_y),
        Point::new(centre.x + half_x, centre.y + half_y),
    ))
}

/// Whether a leg runs along a wall; it may go through one.
fn runs_along(from: Point, to: Point, start: Point, end: Point) -> bool {
    match (from.heading_to(to), start.heading_to(end)) {
        (Some(own), Some(along)) => own.cross(along).abs() <= ALONG,
        _ => false,
    }
}

impl Solid {
    fn distance(&self, from: Point, to: Point) -> f64 {
        let square = |a: f64, b: f64| (a - b).abs() < 1e-12;
        let is_level = square(from.x, to.x) || square(from.y, to.y);
        let own_level =
            self.is_box || square(self.from.x, self.to.x) || square(self.from.y, self.to.y);
        if is_level && own_level {
            let gap = |a: (f64, f64), b: (f64, f64)| {
                let (low, high) = (a.0.min(a.1), a.0.max(a.1));
                let (start, end) = (b.0.min(b.1), b.0.max(b.1));
                (start - high).max(low - end).max(0.0)
            };
            let across = gap((from.x, to.x), (self.from.x, self.to.x));
            let down = gap((from.y, to.y), (self.from.y, self.to.y));
            return across.hypot(down);
        }
        if !self.is_box {
            return segment_distance(from, to, self.from, self.to);
        }
        let (a, c) = (self.from, self.to);
        let inside =
            |point: Point| (a.x..=c.x).contains(&point.x) && (a.y..=c.y).contains(&point.y);
        if inside(from) || inside(to) {
            return 0.0;
        }
        let corners = [a, Point::new(c.x, a.y), c, Point::new(a.x, c.y)];
        (0..4)
            .map(|side| segment_distance(from, to, corners[side], corners[(side + 1) % 4]))
            .fold(f64::INFINITY, f64::min)
    }
}
