//! The field of stations: where tracks cross, on each level, and which moves between them are clear.

use super::blocker::{Blocker, in_zones, on_level};
use super::heading::Way;
use super::ranked::ranked;
use super::request::Options;
use super::terminal::End;
use super::tracks::{Reach, Tracks};
use crate::plan::{ALONG, Level, Plan, Point, Wall, segment_distance};
use crate::units::Length;
use std::cell::RefCell;

/// Distances are held to this, m. Of the computation.
const ROUNDING: f64 = 1e-9;
/// Two stations lie on a 45 deg line where they stray less than this from it, m. Of the computation.
const ON_THE_LINE: f64 = 1e-7;
/// How high a dryer's body reaches above its outlet, m. Common practice, no source.
/// Source: [`ROUTE_SOURCE`].
///
/// [`ROUTE_SOURCE`]: crate::plan::ROUTE_SOURCE
const BODY_OVER_OUTLET: f64 = 1.1;
/// A bend's curve is looked at in so many chords. Of the computation.
const CHORDS: u32 = 16;
/// A chord of a quarter turn may come nearer than its curve by this, m: 1 - cos(90 deg / 32) of a
/// tenth of a metre. Of the computation.
const CHORD_ERROR: f64 = 1.3e-4;

/// A crossing of two tracks on a level.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Station {
    pub level: u16,
    pub x: u16,
    pub y: u16,
}

struct Storey {
    level: Level,
    /// What stands there, and whose it is: an obstacle's place in the plan; none for a closed zone.
    blockers: Vec<(Option<usize>, Blocker)>,
    /// Whether the dryer's body stands this high.
    has_body: bool,
}

/// Stations and clear moves.
pub(super) struct Field {
    pub tracks: Tracks,
    pub reach: Reach,
    radius: Length,
    storeys: Vec<Storey>,
    body: Blocker,
    walls: Vec<Wall>,
    /// Whether each straight move is clear: 0 not looked at, 1 clear, 2 not.
    moves: Vec<u8>,
    /// Whether anything is near enough to meet a curve at a station: 0 not looked at, 1 no, 2 yes.
    curves: Vec<u8>,
    /// Whether each riser away from the outlet is clear: 0 not looked at, 1 clear, 2 not.
    risers: Vec<u8>,
    /// The next station on each diagonal, by its x track; none as [`NO_STATION`].
    diagonals: Vec<u16>,
    /// How often each obstacle was the first to stand in the way of a move.
    in_the_way: RefCell<Vec<u32>>,
}

const NOT_LOOKED_AT: u16 = u16::MAX;
const NO_STATION: u16 = u16::MAX - 1;

impl Field {
    pub(super) fn of(
        plan: &Plan,
        options: &Options,
        tracks: Tracks,
        reach: Reach,
        radius: Length,
    ) -> Self {
        let body_top = plan.dryer.outlet_height.metres() + BODY_OVER_OUTLET;
        let storeys = tracks.heights.iter().map(|height| {
            let level = plan.level_at(*height);
            let obstacles = on_level(&plan.obstacles, level);
            let zones = in_zones(&plan.zones, &options.closed_zones, level).into_iter();
            let blockers = obstacles.chain(zones.map(|zone| (None, zone)));
            Storey {
                level,
                blockers: blockers.collect(),
                has_body: height.metres() <= body_top,
            }
        });
        let storeys: Vec<Storey> = storeys.collect();
        let crossings = tracks.xs.len() * tracks.ys.len();
        Self {
            reach,
            radius,
            moves: vec![0; crossings * storeys.len() * 4],
            curves: vec![0; crossings * storeys.len()],
            risers: vec![0; crossings * storeys.len() * storeys.len()],
            diagonals: vec![NOT_LOOKED_AT; crossings * 4],
            in_the_way: RefCell::new(vec![0; plan.obstacles.len()]),
            storeys,
            body: Blocker::of_dryer(&plan.dryer),
            walls: plan.walls.clone(),
            tracks,
        }
    }

    /// How many stations there are, on all levels.
    pub(super) fn stations(&self) -> usize {
        self.tracks.xs.len() * self.tracks.ys.len() * self.storeys.len()
    }

    /// The place of a station in a list of all.
    pub(super) fn index(&self, station: Station) -> usize {
        let row = usize::from(station.level) * self.tracks.ys.len() + usize::from(station.y);
        row * self.tracks.xs.len() + usize::from(station.x)
    }

    /// The place of a station's crossing in a list of all on one level.
    pub(super) fn crossing(&self, station: Station) -> usize {
        usize::from(station.y) * self.tracks.xs.len() + usize::from(station.x)
    }

    pub(super) fn point(&self, station: Station) -> Point {
        Point::new(
            self.tracks.xs[usize::from(station.x)],
            self.tracks.ys[usize::from(station.y)],
        )
    }

    pub(super) fn height(&self, station: Station) -> Length {
        self.tracks.heights[usize::from(station.level)]
    }

    /// The station nearest to `point` at `height`.
    pub(super) fn nearest(&self, point: Point, height: Length) -> Option<Station> {
        let nearest = |values: &mut dyn Iterator<Item = f64>, at: f64| {
            let place = values
                .enumerate()
                .min_by(|one, other| (one.1 - at).abs().total_cmp(&(other.1 - at).abs()));
            place.and_then(|(index, _)| u16::try_from(index).ok())
        };
        Some(Station {
            level: nearest(
                &mut self.tracks.heights.iter().map(|height| height.metres()),
                height.metres(),
            )?,
            x: nearest(&mut self.tracks.xs.iter().copied(), point.x)?,
            y: nearest(&mut self.tracks.ys.iter().copied(), point.y)?,
        })
    }

    /// The next station on `way`, whether or not the move to it is clear.
    pub(super) fn next(&mut self, from: Station, way: Way) -> Option<Station> {
        if way.is_diagonal() {
            return self.next_on_diagonal(from, way);
        }
        let (x, y) = way.steps();
        let step = |at: u16, by: i32, count: usize| {
            let next = u16::try_from(i32::from(at) + by).ok()?;
            (usize::from(next) < count).then_some(next)
        };
        Some(Station {
            x: step(from.x, x, self.tracks.xs.len())?,
            y: step(from.y, y, self.tracks.ys.len())?,
            ..from
        })
    }

    fn next_on_diagonal(&mut self, from: Station, way: Way) -> Option<Station> {
        let row = usize::from(from.y) * self.tracks.xs.len() + usize::from(from.x);
        let place = row * 4 + usize::from(way.0 / 2);
        if self.diagonals[place] == NOT_LOOKED_AT {
            let found = self.look_along_diagonal(from, way);
            self.diagonals[place] = found.map_or(NO_STATION, |(x, _)| x);
            return found.map(|(x, y)| Station { x, y, ..from });
        }
        let x = self.diagonals[place];
        if x == NO_STATION {
            return None;
        }
        let reached = (self.tracks.xs[usize::from(x)] - self.tracks.xs[usize::from(from.x)]).abs();
        let aim = self.tracks.ys[usize::from(from.y)] + f64::from(way.steps().1) * reached;
        let ys = &self.tracks.ys;
        let y = ys.partition_point(|y| *y < aim - ON_THE_LINE);
        Some(Station {
            x,
            y: u16::try_from(y).ok()?,
            ..from
        })
    }

    /// Walks both families of tracks outward until two lie equally far.
    fn look_along_diagonal(&self, from: Station, way: Way) -> Option<(u16, u16)> {
        let (step_x, step_y) = way.steps();
        let (xs, ys) = (&self.tracks.xs, &self.tracks.ys);
        let far = |tracks: &[f64], start: u16, at: i32| {
            let at = usize::try_from(at).ok()?;
            Some((tracks.get(at)? - tracks[usize::from(start)]).abs())
        };
        let (mut x, mut y) = (i32::from(from.x) + step_x, i32::from(from.y) + step_y);
        loop {
            let (right, down) = (far(xs, from.x, x)?, far(ys, from.y, y)?);
            if (right - down).abs() < ON_THE_LINE {
                return Some((u16::try_from(x).ok()?, u16::try_from(y).ok()?));
            }
            if right < down {
                x += step_x;
            } else {
                y += step_y;
            }
        }
    }

    /// Whether the straight move from `from` to the next station `to` on `way` is clear of all but
    /// the dryer's body.
    pub(super) fn is_clear(&mut self, from: Station, to: Station, way: Way) -> bool {
        // A move is the same either way round: kept at the end where the first four ways begin.
        let kept_at = if way.0 < 4 { from } else { to };
        let place = self.index(kept_at) * 4 + usize::from(way.0 % 4);
        if self.moves[place] == 0 {
            let is_clear = self.is_leg_clear(from.level, self.point(from), self.point(to));
            self.moves[place] = if is_clear { 1 } else { 2 };
        }
        self.moves[place] == 1
    }

    /// Whether a leg keeps its distance from everything on its level but the dryer's body, and goes
    /// through no outside wall.
    pub(super) fn is_leg_clear(&self, level: u16, from: Point, to: Point) -> bool {
        self.keeps_clear(level, from, to)
            && !self.walls.iter().any(|wall| {
                wall.outside && segment_distance(from, to, wall.from(), wall.to()) <= ROUNDING
            })
    }

    /// The same for a leg that ends through an outside wall square to it.
    pub(super) fn is_last_leg_clear(
        &self,
        level: u16,
        from: Point,
        to: Point,
        through: End,
    ) -> bool {
        let walls = self.walls.iter().enumerate();
        let others = walls.filter(|(index, wall)| End::Wall(*index) != through && wall.outside);
        self.keeps_clear(level, from, to)
            && !others
                .into_iter()
                .any(|(_, wall)| segment_distance(from, to, wall.from(), wall.to()) <= ROUNDING)
    }

    fn keeps_clear(&self, level: u16, from: Point, to: Point) -> bool {
        let storey = &self.storeys[usize::from(level)];
        let reach = self.reach.straight - ROUNDING;
        let own = from.heading_to(to);
        let is_along = |wall: &Wall| {
            let along = wall.from().heading_to(wall.to());
            own.zip(along)
                .is_some_and(|(own, along)| own.cross(along).abs() <= ALONG)
        };
        let walls = self.walls.iter();
        self.has_room_beside(storey, from, to, reach)
            && (storey.level != Level::Room
                || !walls.into_iter().any(|wall| {
                    is_along(wall)
                        && segment_distance(from, to, wall.from(), wall.to())
                            < reach + wall.thickness.metres() / 2.0
                }))
    }

    /// Whether a leg keeps its distance from the dryer's body.
    pub(super) fn is_clear_of_body(&self, level: u16, from: Point, to: Point) -> bool {
        !self.storeys[usize::from(level)].has_body
            || !self
                .body
                .is_nearer(from, to, self.reach.straight - ROUNDING)
    }

    /// Whether the curve of a level elbow at a station keeps its distance from obstacles and walls.
    pub(super) fn is_bend_clear(&mut self, station: Station, before: Way, after: Way) -> bool {
        let place = self.index(station);
        if self.curves[place] == 0 {
            let at = self.point(station);
            let storey = &self.storeys[usize::from(station.level)];
            // A curve goes no farther from its corner than a tangent of 90 deg.
            let around = self.reach.straight + self.radius.metres();
            let is_near = storey
                .blockers
                .iter()
                .any(|(_, it)| it.is_nearer(at, at, around))
                || (storey.level == Level::Room && !self.keeps_off_walls(at, at, around));
            self.curves[place] = 1 + u8::from(is_near);
        }
        self.curves[place] == 1
            || self.is_curve_clear(station.level, self.point(station), before, after)
    }

    fn is_curve_clear(&self, level: u16, at: Point, before: Way, after: Way) -> bool {
        let (before, after) = (before.heading(), after.heading());
        let turn = before.turn_to(after).radians();
        let tangent = self.radius * (turn / 2.0).tan();
        let start = at.toward(before, -tangent);
        let inward = if before.cross(after) > 0.0 {
            before.right()
        } else {
            before.right().back()
        };
        let centre = start.toward(inward, self.radius);
        let on_curve = |share: f64| {
            let (sine, cosine) = (turn * share).sin_cos();
            let out = centre.toward(inward, -(self.radius * cosine));
            out.toward(before, self.radius * sine)
        };
        let storey = &self.storeys[usize::from(level)];
        let reach = self.reach.straight - CHORD_ERROR;
        let around = self.reach.straight + tangent.metres();
        let near: Vec<&(Option<usize>, Blocker)> = storey
            .blockers
            .iter()
            .filter(|(_, it)| it.is_nearer(at, at, around))
            .collect();
        let keeps_off_walls = storey.level != Level::Room || self.keeps_off_walls(at, at, around);
        if near.is_empty() && keeps_off_walls {
            return true;
        }
        let share = |at: u32| f64::from(at) / f64::from(CHORDS);
        (0..CHORDS).all(|chord| {
            let (from, to) = (on_curve(share(chord)), on_curve(share(chord + 1)));
            let mut nearer = near.iter().filter(|(_, it)| it.is_nearer(from, to, reach));
            let first = nearer.next();
            if let Some((Some(owner), _)) = first {
                self.stood_in_the_way(*owner);
            }
            first.is_none() && (keeps_off_walls || self.keeps_off_walls(from, to, reach))
        })
    }

    /// Whether a riser from a station keeps its distance from everything on all levels that it passes.
    pub(super) fn is_riser_clear(&mut self, from: Station, to: u16, from_outlet: bool) -> bool {
        let (low, high) = (from.level.min(to), from.level.max(to));
        let at = self.point(from);
        if from_outlet {
            return self.is_column_clear(at, low, high);
        }
        let place = self.index(from) * self.storeys.len() + usize::from(to);
        if self.risers[place] == 0 {
            let reach = self.reach.straight - ROUNDING;
            let meets_body =
                self.storeys[usize::from(low)].has_body && self.body.is_nearer(at, at, reach);
            let is_clear = !meets_body && self.is_column_clear(at, low, high);
            self.risers[place] = if is_clear { 1 } else { 2 };
        }
        self.risers[place] == 1
    }

    fn is_column_clear(&self, at: Point, low: u16, high: u16) -> bool {
        let reach = self.reach.straight - ROUNDING;
        let passed = &self.storeys[usize::from(low)..=usize::from(high)];
        passed.iter().all(|storey| {
            self.has_room_beside(storey, at, at, reach)
                && (storey.level != Level::Room || self.keeps_off_walls(at, at, reach))
        })
    }

    /// Whether a riser from a station has room on every level that it passes up to the roof.
    pub(super) fn is_clear_to_roof(&mut self, from: Station) -> bool {
        let highest = u16::try_from(self.storeys.len().saturating_sub(1)).unwrap_or(from.level);
        self.is_riser_clear(from, highest.max(from.level), false)
    }

    fn has_room_beside(&self, storey: &Storey, from: Point, to: Point, reach: f64) -> bool {
        let mut nearer = storey.blockers.iter();
        let first = nearer.find(|(_, it)| it.is_nearer(from, to, reach));
        if let Some((Some(owner), _)) = first {
            self.stood_in_the_way(*owner);
        }
        first.is_none()
    }

    fn stood_in_the_way(&self, owner: usize) {
        if let Some(count) = self.in_the_way.borrow_mut().get_mut(owner) {
            *count += 1;
        }
    }

    /// The obstacles that stood in the way of a move, most often first, by their place in the plan.
    pub(super) fn obstacles_in_the_way(&self) -> Vec<usize> {
        let counts = self.in_the_way.borrow();
        let met = (0..counts.len()).filter(|it| counts[*it] > 0);
        ranked(met, &|one, other| counts[other].cmp(&counts[one]))
    }

    fn keeps_off_walls(&self, from: Point, to: Point, reach: f64) -> bool {
        !self.walls.iter().any(|wall| {
            segment_distance(from, to, wall.from(), wall.to())
                < reach + wall.thickness.metres() / 2.0
        })
    }
}
