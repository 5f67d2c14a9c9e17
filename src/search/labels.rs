//! The search proper, from one dryer's outlet: labels over states of track crossing, height and
//! heading. Pressure at the operating point is no sum over legs, but with one duct and one elbow it
//! grows with straight length, with 45s and with 90s: a label is dropped only where another in its
//! state has no more of any of them and no less straight duct behind it for the next elbow.

mod corners;
mod steps;

use super::request::{Options, Tracks};
use super::space::{Exempt, Owner, Space};
use super::track_graph::distances_to_go;
use crate::plan::{Heading, Plan, Point};
use crate::units::Length;
use std::cmp::Reverse;
use std::collections::{BTreeMap, BinaryHeap};

/// The least that counts as longer, m. Of the computation.
const ROUNDING: f64 = 1e-9;
const NONE: u32 = u32::MAX;
/// Clockwise: up, right, down and left on the sheet.
const HEADINGS: [Heading; 4] = [Heading::UP, Heading::RIGHT, Heading::DOWN, Heading::LEFT];
/// Tangent of half of 45 deg. Of the computation.
const HALF_OF_45: f64 = std::f64::consts::SQRT_2 - 1.0;

/// Where a route ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum End {
    Wall(usize),
    Roof,
}

/// A corner of a route: where it is, and at what height the air leaves it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Corner {
    pub at: Point,
    pub height: f64,
}

/// A route as it was found.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Found {
    pub end: End,
    /// From the outlet to the termination; a riser has two corners at one place.
    pub corners: Vec<Corner>,
    cost: Cost,
}

/// What pressure grows with.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Cost {
    straight: f64,
    at_45: u8,
    at_90: u8,
}

impl Cost {
    fn is_no_more_than(&self, other: &Self) -> bool {
        self.straight <= other.straight + ROUNDING * 1e-3
            && self.at_45 <= other.at_45
            && self.at_90 <= other.at_90
    }
}

#[derive(Clone, Copy)]
struct Label {
    state: u32,
    parent: u32,
    /// The next in the list of the state's labels.
    next: u32,
    cost: Cost,
    /// Straight duct behind it since the last elbow, m, up to the longest tangent; below nought while
    /// the last elbow's tangent is not yet covered.
    slack: f64,
    /// Where the two 45s of the step to this label meet the track.
    landing: Option<Point>,
    is_dropped: bool,
}

/// What reached each end at each height: its cost, its last label and where it ends.
type Ends = BTreeMap<(End, usize), Vec<(Cost, u32, Corner)>>;

/// What walks the tracks from one outlet.
pub(super) struct LabelSearch {
    plan: Plan,
    space: Space,
    tracks: Tracks,
    options: Options,
    /// The tangents of a 45 and a 90, m.
    tangents: (f64, f64),
    labels: Vec<Label>,
    first: Vec<u32>,
    queue: BinaryHeap<Reverse<(u64, u32)>>,
    /// From each crossing of an x with a y straight to the nearest outside wall, m: no run is shorter.
    to_go: Vec<f64>,
    /// Whether the step from a crossing to the right or down has room: nought for not known yet.
    steps: Vec<u8>,
    ends: Ends,
    /// What stood in the way, and how often.
    in_the_way: BTreeMap<usize, usize>,
}

impl LabelSearch {
    /// None where the outlet does not face along the sheet's sides.
    pub fn new(
        plan: &Plan,
        options: &Options,
        tracks: Tracks,
        tangents: (f64, f64),
    ) -> Option<Self> {
        let faces = plan.dryer.outlet_heading();
        let heading = HEADINGS
            .iter()
            .position(|own| (own.x - faces.x).hypot(own.y - faces.y) < 1e-6)?;
        let outlet = plan.dryer.outlet();
        let height = plan.dryer.outlet_height.metres();
        let near = |list: &[f64], at: f64| list.iter().position(|own| (own - at).abs() < 1e-6);
        let place = (
            near(&tracks.x_m, outlet.x)?,
            near(&tracks.y_m, outlet.y)?,
            near(&tracks.height_m, height)?,
        );
        let states = tracks.x_m.len() * tracks.y_m.len() * tracks.height_m.len() * 4;
        let mut search = Self {
            space: Space::of(plan, options.clearance),
            plan: plan.clone(),
            options: options.clone(),
            tangents,
            labels: Vec::new(),
            first: vec![NONE; states],
            queue: BinaryHeap::new(),
            to_go: distances_to_go(plan, &tracks),
            steps: vec![0; states / 2],
            ends: BTreeMap::new(),
            in_the_way: BTreeMap::new(),
            tracks,
        };
        let state = search.state(place, heading);
        let cost = Cost {
            straight: 0.0,
            at_45: 0,
            at_90: 0,
        };
        search.push(state, NONE, cost, 0.0, None);
        Some(search)
    }

    /// Works off at most so many labels; whether any are left.
    pub fn advance(&mut self, budget: usize) -> bool {
        if self.is_cut_short() {
            return false;
        }
        for _ in 0..budget {
            let Some(Reverse((_, index))) = self.queue.pop() else {
                return false;
            };
            if !self.labels[index as usize].is_dropped {
                self.expand(index);
            }
        }
        !self.queue.is_empty()
    }

    /// Whether it stopped before all was looked at: what was found need not be the best.
    pub fn is_cut_short(&self) -> bool {
        self.labels.len() >= self.options.most_partial_routes
    }

    /// How many labels were made.
    pub fn made(&self) -> usize {
        self.labels.len()
    }

    /// The obstacles that stood in the way, most often first.
    pub fn obstacles_in_the_way(&self) -> Vec<usize> {
        let mut all: Vec<_> = self.in_the_way.iter().collect();
        all.sort_by_key(|(index, count)| (Reverse(**count), **index));
        all.into_iter().map(|(index, _)| *index).collect()
    }

    /// The routes that no other to the same end and height is better than in every part.
    pub fn found(&self) -> Vec<Found> {
        let all = self.ends.iter().flat_map(|((end, _), finds)| {
            finds.iter().map(|(cost, label, corner)| Found {
                end: *end,
                corners: self.corners(*label, *corner),
                cost: *cost,
            })
        });
        all.filter(|found| !self.crosses_itself(&found.corners))
            .collect()
    }

    fn state(&self, (x, y, height): (usize, usize, usize), heading: usize) -> u32 {
        let (across, down) = (self.tracks.x_m.len(), self.tracks.y_m.len());
        u32::try_from(((height * down + y) * across + x) * 4 + heading).unwrap_or(NONE)
    }

    fn place(&self, state: u32) -> ((usize, usize, usize), usize) {
        let (across, down) = (self.tracks.x_m.len(), self.tracks.y_m.len());
        let state = state as usize;
        let (crossing, heading) = (state / 4, state % 4);
        let (row, x) = (crossing / across, crossing % across);
        ((x, row % down, row / down), heading)
    }

    fn point(&self, (x, y, _): (usize, usize, usize)) -> Point {
        Point::new(self.tracks.x_m[x], self.tracks.y_m[y])
    }

    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a few hundred metres in micrometres"
    )]
    fn push(&mut self, state: u32, parent: u32, cost: Cost, slack: f64, landing: Option<Point>) {
        if cost.at_45 + cost.at_90 > self.options.most_bends {
            return;
        }
        let slack = slack.min(self.tangents.1);
        let mut at = self.first[state as usize];
        while at != NONE {
            let own = &mut self.labels[at as usize];
            if !own.is_dropped {
                if own.cost.is_no_more_than(&cost) && own.slack >= slack - ROUNDING {
                    return;
                }
                if cost.is_no_more_than(&own.cost) && slack >= own.slack {
                    own.is_dropped = true;
                }
            }
            at = own.next;
        }
        let index = u32::try_from(self.labels.len()).unwrap_or(NONE);
        let (at_45, at_90) = self.tangents;
        // Any order finds the same; this one comes near that of the pressure.
        let order = cost.straight
            + f64::from(cost.at_45) * (2.0 * at_45 + 0.5)
            + f64::from(cost.at_90) * (2.0 * at_90 + 1.0)
            + at_90 * 2.0
            + self.to_go[state as usize / 4 % self.to_go.len()];
        self.labels.push(Label {
            state,
            parent,
            next: self.first[state as usize],
            cost,
            slack,
            landing,
            is_dropped: false,
        });
        self.first[state as usize] = index;
        self.queue
            .push(Reverse(((order.max(0.0) * 1e6) as u64, index)));
    }

    fn expand(&mut self, index: u32) {
        let label = self.labels[index as usize];
        let (place, heading) = self.place(label.state);
        // The outlet's own crossing, before any leg.
        let leaves = label.cost.at_45 + label.cost.at_90 == 0;
        self.go_on(index, label.cost, label.slack, place, heading, leaves);
        let (_, at_90) = self.tangents;
        if label.slack >= at_90 - ROUNDING {
            for turned in [(heading + 1) % 4, (heading + 3) % 4] {
                if self.has_bend_room(place, heading, turned, leaves) {
                    let cost = Cost {
                        straight: label.cost.straight - 2.0 * at_90,
                        at_90: label.cost.at_90 + 1,
                        ..label.cost
                    };
                    self.go_on(index, cost, -at_90, place, turned, false);
                }
            }
            self.rise(index, &label, place);
            self.end_on_roof(index, &label, place);
        }
        if label.slack >= self.tangents.0 - ROUNDING {
            self.diagonals(index, &label, place, heading, leaves);
        }
    }

    /// One step on along the track, or out through the wall.
    fn go_on(
        &mut self,
        parent: u32,
        cost: Cost,
        slack: f64,
        place: (usize, usize, usize),
        heading: usize,
        leaves: bool,
    ) {
        if cost.at_45 + cost.at_90 > self.options.most_bends {
            return;
        }
        let here = self.point(place);
        let next = self.beside(place, heading);
        self.go_out(parent, cost, slack, place, heading, next, leaves);
        let Some(next) = next else { return };
        if !self.has_step_room(place, next, heading, leaves) {
            return;
        }
        let length = here.distance(self.point(next)).metres();
        let cost = Cost {
            straight: cost.straight + length,
            ..cost
        };
        let state = self.state(next, heading);
        self.push(state, parent, cost, slack + length, None);
    }

    fn beside(
        &self,
        (x, y, height): (usize, usize, usize),
        heading: usize,
    ) -> Option<(usize, usize, usize)> {
        match heading {
            0 => y.checked_sub(1).map(|y| (x, y, height)),
            1 => (x + 1 < self.tracks.x_m.len()).then_some((x + 1, y, height)),
            2 => (y + 1 < self.tracks.y_m.len()).then_some((x, y + 1, height)),
            _ => x.checked_sub(1).map(|x| (x, y, height)),
        }
    }

    fn has_step_room(
        &mut self,
        from: (usize, usize, usize),
        to: (usize, usize, usize),
        heading: usize,
        leaves: bool,
    ) -> bool {
        let exempt = Exempt {
            wall: None,
            dryer: leaves,
        };
        if leaves {
            return self.looks_clear(from.2, self.point(from), self.point(to), exempt);
        }
        let (least, along) = if heading == 1 || heading == 2 {
            (from, heading - 1)
        } else {
            (to, usize::from(heading == 0))
        };
        let slot = self.state(least, 0) as usize / 2 + along;
        if self.steps[slot] == 0 {
            let is_clear = self.looks_clear(from.2, self.point(from), self.point(to), exempt);
            self.steps[slot] = if is_clear { 1 } else { 2 };
        }
        self.steps[slot] == 1
    }

    fn looks_clear(&mut self, height: usize, from: Point, to: Point, exempt: Exempt) -> bool {
        let level = self.space.level(self.tracks.height_m[height]);
        match self.space.in_the_way(level, from, to, exempt) {
            None => true,
            Some(Owner::Obstacle(index)) => {
                *self.in_the_way.entry(index).or_default() += 1;
                false
            }
            Some(_) => false,
        }
    }

    /// Whether the arc of a 90 has room: it lies between its legs and its chord.
    fn has_bend_room(
        &mut self,
        place: (usize, usize, usize),
        before: usize,
        after: usize,
        leaves: bool,
    ) -> bool {
        let corner = self.point(place);
        let tangent = Length::from_metres(self.tangents.1);
        let exempt = Exempt {
            wall: None,
            dryer: leaves,
        };
        let from = corner.toward(HEADINGS[before], -tangent);
        let to = corner.toward(HEADINGS[after], tangent);
        self.looks_clear(place.2, from, to, exempt)
    }
}

/// The tangents of a 45 and a 90 of a centre-line radius, m.
pub(super) fn tangents(radius: Length) -> (f64, f64) {
    (radius.metres() * HALF_OF_45, radius.metres())
}
