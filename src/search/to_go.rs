//! What a run still loses at least from a crossing of tracks on, going some way: no run through a label
//! can lose less than the label's own and this.

use super::heading::Way;
use super::rates::Rates;
use super::request::Options;
use super::terminal::{can_be_left_by, is_square};
use super::tracks::Tracks;
use crate::plan::{Plan, Point, Wall};

/// For every crossing the straight distance to where a run can go out on each way.
pub(super) struct ToGo {
    /// The ways that are square to an outside wall.
    ways: Vec<Way>,
    /// m; row by row, for each crossing one for each of the ways.
    distances: Vec<f64>,
    /// Of straight duct, Pa/m.
    straight: f64,
    /// Of every 45 deg of turn, Pa, the straight that elbows take the place of taken off.
    turn: f64,
}

impl ToGo {
    /// `tangents` are those of an elbow of 45 and of 90 deg, m.
    pub(super) fn of(plan: &Plan, tracks: &Tracks, rates: &Rates, tangents: (f64, f64)) -> Self {
        let net_45 = rates.at_45 - 2.0 * tangents.0 * rates.straight;
        let net_90 = rates.at_90 - 2.0 * tangents.1 * rates.straight;
        let turn = net_45.min(net_90 / 2.0);
        // An elbow that loses less than the straight that it takes the place of makes a run cheaper than
        // its straight line: then nothing can be said.
        let straight = if turn >= 0.0 { rates.straight } else { 0.0 };
        let walls: Vec<&Wall> = plan.walls.iter().filter(|it| can_be_left_by(it)).collect();
        let leads_out = |way: &Way| walls.iter().any(|wall| is_square(*way, wall));
        let ways: Vec<Way> = Way::all().filter(leads_out).collect();
        let rows = tracks.ys.iter();
        let crossings = rows.flat_map(|y| tracks.xs.iter().map(|x| Point::new(*x, *y)));
        let distances = crossings.flat_map(|at| {
            let nearest = |way: &Way| {
                let own = walls.iter().filter(|wall| is_square(*way, wall));
                let distances = own.map(|wall| distance_on(*way, at, wall));
                distances.fold(f64::INFINITY, f64::min)
            };
            ways.iter().map(nearest).collect::<Vec<f64>>()
        });
        Self {
            distances: distances.collect(),
            ways,
            straight,
            turn: turn.max(0.0),
        }
    }

    /// From the crossing with this place in the list of all, on `way`, Pa.
    pub(super) fn at(&self, crossing: usize, way: Way) -> f64 {
        let first = crossing * self.ways.len();
        let own = &self.distances[first..first + self.ways.len()];
        let losses = self.ways.iter().zip(own).map(|(out, distance)| {
            let eighths = (out.0 + 8 - way.0) % 8;
            let eighths = eighths.min(8 - eighths);
            distance * self.straight + f64::from(eighths) * self.turn
        });
        let least = losses.fold(f64::INFINITY, f64::min);
        if least.is_finite() { least } else { 0.0 }
    }
}

/// From `at` to where a run can cross a wall on `way`, m: straight to the wall from the side that it is
/// crossed from, else first past one of its ends.
fn distance_on(way: Way, at: Point, wall: &Wall) -> f64 {
    let (from, to) = (wall.from(), wall.to());
    let own = way.heading();
    let ahead = (from.x - at.x) * own.x + (from.y - at.y) * own.y;
    let off = at.distance_to_segment(from, to).metres();
    let past_an_end = at.distance(from).metres().min(at.distance(to).metres());
    let is_beside = off <= ahead.abs() + 1e-9;
    match (ahead >= 0.0, is_beside) {
        (true, _) => off,
        (false, true) => past_an_end,
        (false, false) => ahead.abs(),
    }
}

/// The least that a run loses from a level leg up through the roof, Pa; infinite where none may. `tangent`
/// is that of an elbow of 90 deg, m.
pub(super) fn least_roof(options: &Options, tracks: &Tracks, rates: &Rates, tangent: f64) -> f64 {
    options.roof_height.map_or(f64::INFINITY, |roof| {
        let heights = tracks.heights.iter();
        let highest = heights
            .map(|it| it.metres())
            .fold(f64::NEG_INFINITY, f64::max);
        let straight = (roof.metres() - highest - 2.0 * tangent) * rates.straight;
        roof.metres() * rates.rise + rates.roof + rates.at_90 + straight
    })
}
