//! The steps that are no step along a track: risers, diagonals, and the way out.

use super::{Corner, Cost, End, HEADINGS, Label, LabelSearch, ROUNDING};
use crate::plan::{Point, RunPath};
use crate::rules::too_near;
use crate::search::space::Exempt;
use crate::units::Length;

impl LabelSearch {
    /// A riser or drop to every other height, and on from there each way.
    pub(super) fn rise(&mut self, index: u32, label: &Label, place: (usize, usize, usize)) {
        let (_, at_90) = self.tangents;
        let here = self.point(place);
        let from = self.tracks.height_m[place.2];
        for height in 0..self.tracks.height_m.len() {
            let to = self.tracks.height_m[height];
            let rise = (to - from).abs();
            if rise < 2.0 * at_90 + ROUNDING
                || !self.space.is_shaft_clear(here, from.min(to), from.max(to))
            {
                continue;
            }
            let cost = Cost {
                straight: label.cost.straight + rise - 4.0 * at_90,
                at_90: label.cost.at_90 + 2,
                ..label.cost
            };
            for heading in 0..4 {
                self.go_on(
                    index,
                    cost,
                    -at_90,
                    (place.0, place.1, height),
                    heading,
                    false,
                );
            }
        }
    }

    pub(super) fn end_on_roof(&mut self, index: u32, label: &Label, place: (usize, usize, usize)) {
        let Some(roof) = self.options.roof_height else {
            return;
        };
        let (_, at_90) = self.tangents;
        let (here, from) = (self.point(place), self.tracks.height_m[place.2]);
        let rise = roof.metres() - from;
        if rise < at_90 || !self.space.is_shaft_clear(here, from, roof.metres()) {
            return;
        }
        let cost = Cost {
            straight: label.cost.straight + rise - 2.0 * at_90,
            at_90: label.cost.at_90 + 1,
            ..label.cost
        };
        let corner = Corner {
            at: here,
            height: roof.metres(),
        };
        self.end((End::Roof, 0), cost, index, corner);
    }

    /// Two 45s: onto a track beside this one, or round a corner.
    pub(super) fn diagonals(
        &mut self,
        index: u32,
        label: &Label,
        place: (usize, usize, usize),
        heading: usize,
        leaves: bool,
    ) {
        let (at_45, _) = self.tangents;
        let here = self.point(place);
        let most = self.options.diagonal_tracks;
        for side in [(heading + 1) % 4, (heading + 3) % 4] {
            // Along which track the diagonal lands: one like that which it leaves, or one across.
            for (after, other) in [(heading, side), (side, heading)] {
                let mut across = place;
                for _ in 0..most {
                    let Some(next) = self.beside(across, other) else {
                        break;
                    };
                    across = next;
                    let run = here.distance(self.point(across));
                    let landing = here
                        .toward(HEADINGS[heading], run)
                        .toward(HEADINGS[side], run);
                    let diagonal = run.metres() * std::f64::consts::SQRT_2;
                    if diagonal < 2.0 * at_45 - ROUNDING {
                        continue;
                    }
                    let Some(next) = self.station_from(landing, across, after) else {
                        continue;
                    };
                    let (level_exempt, free) = (
                        Exempt {
                            wall: None,
                            dryer: leaves,
                        },
                        Exempt::default(),
                    );
                    let to = self.point(next);
                    let back = Length::from_metres(-at_45);
                    let ahead = Length::from_metres(at_45);
                    let Some(slope) = here.heading_to(landing) else {
                        continue;
                    };
                    let chords = [
                        (
                            here.toward(HEADINGS[heading], back),
                            here.toward(slope, ahead),
                        ),
                        (
                            landing.toward(slope, back),
                            landing.toward(HEADINGS[after], ahead),
                        ),
                    ];
                    let has_room = self.looks_clear(place.2, here, landing, free)
                        && self.looks_clear(place.2, landing, to, free)
                        && self.looks_clear(place.2, chords[0].0, chords[0].1, level_exempt)
                        && self.looks_clear(place.2, chords[1].0, chords[1].1, free);
                    if !has_room {
                        continue;
                    }
                    let length = landing.distance(to).metres();
                    let cost = Cost {
                        straight: label.cost.straight + diagonal + length - 4.0 * at_45,
                        at_45: label.cost.at_45 + 2,
                        ..label.cost
                    };
                    let state = self.state(next, after);
                    self.push(state, index, cost, length - at_45, Some(landing));
                }
            }
        }
    }

    /// The first station at or past `landing`, which lies on the track of `across` that runs along
    /// `heading`.
    pub(super) fn station_from(
        &self,
        landing: Point,
        across: (usize, usize, usize),
        heading: usize,
    ) -> Option<(usize, usize, usize)> {
        let mut at = across;
        loop {
            let point = self.point(at);
            let ahead = (point.x - landing.x) * HEADINGS[heading].x
                + (point.y - landing.y) * HEADINGS[heading].y;
            if ahead >= -ROUNDING {
                return Some(at);
            }
            at = self.beside(at, heading)?;
        }
    }

    /// Out through an outside wall that stands before the next station.
    #[allow(clippy::too_many_arguments, reason = "one step of a walk")]
    pub(super) fn go_out(
        &mut self,
        parent: u32,
        cost: Cost,
        slack: f64,
        place: (usize, usize, usize),
        heading: usize,
        next: Option<(usize, usize, usize)>,
        leaves: bool,
    ) {
        let here = self.point(place);
        let ahead = HEADINGS[heading];
        let before_next = next.map_or(f64::INFINITY, |next| {
            here.distance(self.point(next)).metres()
        });
        for index in 0..self.plan.walls.len() {
            let wall = &self.plan.walls[index];
            let (from, to) = (wall.from(), wall.to());
            let Some(along) = from.heading_to(to).filter(|_| wall.outside) else {
                continue;
            };
            if along.cross(ahead).abs() < 1.0 - 1e-9 {
                continue;
            }
            let off = (from.x - here.x) * ahead.x + (from.y - here.y) * ahead.y;
            if off <= 0.0 || off > before_next + ROUNDING {
                continue;
            }
            let off_along = (here.x - from.x) * along.x + (here.y - from.y) * along.y;
            let half = self.plan.run.diameter.metres() / 2.0;
            if off_along < half || off_along > from.distance(to).metres() - half {
                continue;
            }
            let length = off + wall.thickness.metres() / 2.0;
            let at = here.toward(ahead, Length::from_metres(length));
            let exempt = Exempt {
                wall: Some(index),
                dryer: leaves,
            };
            if slack + length < -ROUNDING
                || self.is_near_opening(at)
                || !self.looks_clear(place.2, here, at, exempt)
            {
                continue;
            }
            let cost = Cost {
                straight: cost.straight + length,
                ..cost
            };
            let corner = Corner {
                at,
                height: self.tracks.height_m[place.2],
            };
            self.end((End::Wall(index), place.2), cost, parent, corner);
        }
    }

    pub(super) fn is_near_opening(&self, at: Point) -> bool {
        let path = RunPath {
            pieces: Vec::new(),
            rise: Length::ZERO,
            end: (at, None),
            coinciding: Vec::new(),
        };
        !too_near(&self.plan, &path).is_empty()
    }

    pub(super) fn end(&mut self, key: (End, usize), cost: Cost, label: u32, corner: Corner) {
        let finds = self.ends.entry(key).or_default();
        if finds.iter().any(|(own, ..)| own.is_no_more_than(&cost)) {
            return;
        }
        finds.retain(|(own, ..)| !cost.is_no_more_than(own));
        finds.push((cost, label, corner));
    }
}
