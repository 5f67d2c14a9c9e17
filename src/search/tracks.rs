//! The lines on which corners may lie, and the heights.

use super::request::Options;
use super::terminal::along_x;
use crate::plan::{Axis, HALF_MEMBER, Level, ObstacleKind, PieceKind, Plan, RunPath, Zone};
use crate::rules::{opening_limit, rule_set};
use crate::units::Length;

/// Two tracks nearer than this, m, are one. Of the computation.
const SAME: f64 = 1e-7;

/// The x of every track down the sheet, the y of every track across it, and the heights above the
/// floor at which a level leg may run; each in rising order.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Tracks {
    pub xs: Vec<f64>,
    pub ys: Vec<f64>,
    pub heights: Vec<Length>,
}

/// How near a duct's centre line may come: to a face, and round a corner with an elbow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Reach {
    /// Half the duct and the clearance, m.
    pub straight: f64,
    /// The distance from both faces of a corner at which an elbow of 90 deg still clears it, m.
    pub round_corner: f64,
}

impl Reach {
    pub(super) fn new(diameter: Length, radius: Length, options: &Options) -> Self {
        let straight = diameter.metres() / 2.0 + options.clearance.metres();
        let radius = radius.metres();
        Self {
            straight,
            round_corner: radius - (radius - straight).max(0.0) / core::f64::consts::SQRT_2,
        }
    }

    fn both(self) -> [f64; 2] {
        [self.straight, self.round_corner.max(self.straight)]
    }
}

impl Tracks {
    /// The tracks of `plan` for elbows of `radius`.
    pub(super) fn of(plan: &Plan, options: &Options, reach: Reach, radius: Length) -> Self {
        let mut tracks = Self {
            xs: Vec::new(),
            ys: Vec::new(),
            heights: heights(plan, reach),
        };
        tracks.dryer(plan, reach, radius);
        tracks.obstacles(plan, reach);
        let closed = |zone: &&Zone| options.closed_zones.contains(&zone.id);
        for zone in plan.zones.iter().filter(closed) {
            let (right, foot) = (
                zone.x_m + zone.width.metres(),
                zone.y_m + zone.depth.metres(),
            );
            beside(&mut tracks.xs, zone.x_m, right, reach);
            beside(&mut tracks.ys, zone.y_m, foot, reach);
        }
        tracks.walls(plan, reach);
        tracks.openings(plan);
        for point in &plan.run.points {
            tracks.xs.push(point.position.x);
            tracks.ys.push(point.position.y);
        }
        settle(&mut tracks.xs);
        settle(&mut tracks.ys);
        tracks
    }

    fn dryer(&mut self, plan: &Plan, reach: Reach, radius: Length) {
        let outlet = plan.dryer.outlet();
        let first_corner = outlet.toward(plan.dryer.outlet_heading(), radius);
        // Past the first corner a second one fits two tangents on.
        let next = 2.0 * radius.metres();
        let about = |at: f64| [at - next, at, at + next];
        self.xs.push(outlet.x);
        self.xs.extend(about(first_corner.x));
        self.ys.push(outlet.y);
        self.ys.extend(about(first_corner.y));
        let (sine, cosine) = plan.dryer.turned_deg.to_radians().sin_cos();
        let (width, depth) = (plan.dryer.width.metres(), plan.dryer.depth.metres());
        let across = f64::midpoint(width * cosine.abs(), depth * sine.abs());
        let down = f64::midpoint(width * sine.abs(), depth * cosine.abs());
        let centre = plan.dryer.centre();
        beside(&mut self.xs, centre.x - across, centre.x + across, reach);
        beside(&mut self.ys, centre.y - down, centre.y + down, reach);
    }

    fn obstacles(&mut self, plan: &Plan, reach: Reach) {
        for it in &plan.obstacles {
            let (mut x, mut right) = (it.x_m, it.x_m + it.width.metres());
            let (mut y, mut foot) = (it.y_m, it.y_m + it.depth.metres());
            if let ObstacleKind::Framing { members, .. } = it.kind {
                let bays = it.members();
                let middles = bays.windows(2).map(|pair| f64::midpoint(pair[0], pair[1]));
                match members {
                    Axis::AlongX => self.ys.extend(middles),
                    Axis::AlongY => self.xs.extend(middles),
                }
                (x, y) = (x - HALF_MEMBER, y - HALF_MEMBER);
                (right, foot) = (right + HALF_MEMBER, foot + HALF_MEMBER);
            }
            beside(&mut self.xs, x, right, reach);
            beside(&mut self.ys, y, foot, reach);
        }
    }

    fn walls(&mut self, plan: &Plan, reach: Reach) {
        for wall in &plan.walls {
            let half = wall.thickness.metres() / 2.0;
            let (from, to) = (wall.from(), wall.to());
            let (across, along) = match along_x(wall) {
                Some(true) => (&mut self.ys, &mut self.xs),
                Some(false) => (&mut self.xs, &mut self.ys),
                None => continue,
            };
            let (at, ends) = match along_x(wall) {
                Some(true) => (from.y, (from.x.min(to.x), from.x.max(to.x))),
                _ => (from.x, (from.y.min(to.y), from.y.max(to.y))),
            };
            across.extend([at - half - reach.straight, at + half + reach.straight]);
            if !wall.outside {
                beside(along, ends.0 - half, ends.1 + half, reach);
            }
        }
    }

    /// Where a termination just keeps its distance from an opening in its own wall.
    fn openings(&mut self, plan: &Plan) {
        for opening in &plan.openings {
            let Some(wall) = plan.walls.iter().find(|wall| wall.id == opening.wall) else {
                continue;
            };
            let set = rule_set(plan.code.rule_set);
            let (Some(limit), true) = (opening_limit(set, opening.kind), wall.outside) else {
                continue;
            };
            let near = opening.offset.metres() - limit.metres();
            let far = (opening.offset + opening.width + limit).metres();
            let (from, to) = (wall.from(), wall.to());
            match along_x(wall) {
                Some(true) => {
                    let sign = (to.x - from.x).signum();
                    self.xs.extend([from.x + sign * near, from.x + sign * far]);
                }
                Some(false) => {
                    let sign = (to.y - from.y).signum();
                    self.ys.extend([from.y + sign * near, from.y + sign * far]);
                }
                None => {}
            }
        }
    }
}

/// Tracks on either side of what reaches from `least` to `greatest`.
fn beside(tracks: &mut Vec<f64>, least: f64, greatest: f64, reach: Reach) {
    for off in reach.both() {
        tracks.extend([least - off, greatest + off]);
    }
}

fn settle(tracks: &mut Vec<f64>) {
    tracks.sort_by(f64::total_cmp);
    tracks.dedup_by(|next, kept| *next - *kept < SAME);
}

/// The outlet's height, those of the present run's level legs, and just over the ceiling and just
/// under the floor where the plan has anything there.
fn heights(plan: &Plan, reach: Reach) -> Vec<Length> {
    let mut heights = vec![plan.dryer.outlet_height.metres()];
    for piece in RunPath::of(plan).pieces {
        let is_level =
            matches!(piece.kind, PieceKind::Straight { corners, .. } if corners.0 != corners.1);
        if is_level {
            heights.push(piece.height.metres());
        }
    }
    let off = [
        (
            Level::CeilingSpace,
            plan.ceiling_height.metres() + reach.straight,
        ),
        (Level::CrawlSpace, -reach.straight),
    ];
    for (level, at) in off {
        let has_space = plan.obstacles.iter().any(|it| it.level == level)
            || plan.zones.iter().any(|zone| zone.level == level);
        let is_there = |height: &f64| plan.level_at(Length::from_metres(*height)) == level;
        if has_space && !heights.iter().any(is_there) {
            heights.push(at);
        }
    }
    settle(&mut heights);
    heights.into_iter().map(Length::from_metres).collect()
}
