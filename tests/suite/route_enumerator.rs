//! Every route of a small plan, one by one: corners, not labels, and geometry of its own. Shares
//! nothing with the room `search` but the statement of what a route is.

use elbowroom::plan::RunPath;
use elbowroom::plan::{
    Axis, Duct, Elbow, Fitting, LegState, Level, ObstacleKind, OpeningKind, Plan, Point, Riser,
    RunPoint, Termination, TerminationKind,
};
use elbowroom::search::{Options, Tracks};
use elbowroom::units::Length;

/// A corner: x, y and height, m.
type Corner = [f64; 3];

/// Half of a nominal 2 in member, m. Source: PS 20, from memory.
const HALF_MEMBER: f64 = 0.019_05;
const DUST: f64 = 1e-6;
/// IRC: 3 ft from openings; UMC and IMC air intakes: 10 ft.
const FROM_OPENING: f64 = 0.9144;
const FROM_INTAKE: f64 = 3.048;

pub struct Enumerator<'a> {
    pub plan: &'a Plan,
    pub tracks: &'a Tracks,
    pub elbow: Elbow,
    pub most_bends: usize,
    pub diagonal_tracks: usize,
    /// From a centre line to a box, m.
    pub reach: f64,
    /// Called with the corners of each route.
    pub routes: Vec<Vec<Corner>>,
}

/// A leg under way: where it began, which way it goes, and the tangent taken off its start.
#[derive(Clone, Copy)]
struct Leg {
    from: Corner,
    way: [f64; 2],
    taken: f64,
    /// Whether it is the leg out of the dryer.
    is_first: bool,
}

impl<'a> Enumerator<'a> {
    /// Only to judge the run of `plan`.
    pub fn judge(plan: &'a Plan, options: &Options) -> Self {
        const NO_TRACKS: &Tracks = &Tracks {
            x_m: Vec::new(),
            y_m: Vec::new(),
            height_m: Vec::new(),
        };
        Self {
            plan,
            tracks: NO_TRACKS,
            elbow: plan.run.outlet.elbow,
            most_bends: 0,
            diagonal_tracks: 0,
            reach: plan.run.diameter.metres() / 2.0 + options.clearance.metres(),
            routes: Vec::new(),
        }
    }

    /// Whether each leg of the plan's own run, corner to corner, and each riser keeps clear.
    pub fn has_room_for_run(&self) -> bool {
        let mut at = self.plan.dryer.outlet();
        let mut height = self.plan.dryer.outlet_height.metres();
        let count = self.plan.run.points.len();
        let end = RunPath::of(self.plan).end.0;
        let on_face = |wall: &elbowroom::plan::Wall| {
            let flat = [end.x, end.y, 0.0];
            let off = apart(
                flat,
                flat,
                [
                    wall.from_x_m.min(wall.to_x_m),
                    wall.from_y_m.min(wall.to_y_m),
                ],
                [
                    wall.from_x_m.max(wall.to_x_m),
                    wall.from_y_m.max(wall.to_y_m),
                ],
            );
            (off - wall.thickness.metres() / 2.0).abs() < 1e-6
        };
        let own = self.plan.walls.iter().position(on_face);
        self.plan
            .run
            .points
            .iter()
            .enumerate()
            .all(|(index, point)| {
                let from = [at.x, at.y, height];
                let to = [point.position.x, point.position.y, height];
                let own = own.filter(|_| index + 1 == count);
                let is_clear = self.has_room(from, to, own, index == 0);
                at = point.position;
                let rise = point.fitting.riser.map_or(0.0, |riser| riser.rise.metres());
                let has_shaft = rise == 0.0 || self.has_shaft(to, height + rise);
                height += rise;
                is_clear && has_shaft
            })
    }

    pub fn run(&mut self) {
        let outlet = self.plan.dryer.outlet();
        let heading = self.plan.dryer.outlet_heading();
        let start = [outlet.x, outlet.y, self.plan.dryer.outlet_height.metres()];
        let leg = Leg {
            from: start,
            way: [heading.x.round(), heading.y.round()],
            taken: 0.0,
            is_first: true,
        };
        self.walk(&mut vec![start], leg, 0);
    }

    fn radius(&self) -> f64 {
        self.elbow.radius.metres()
    }

    /// Stations on the ray of a leg at or past its start.
    fn stations(&self, leg: &Leg, with_start: bool) -> Vec<Corner> {
        let along_x = leg.way[0] != 0.0;
        let (list, axis) = if along_x {
            (&self.tracks.x_m, 0)
        } else {
            (&self.tracks.y_m, 1)
        };
        let mut found: Vec<Corner> = list
            .iter()
            .map(|at| {
                let mut corner = leg.from;
                corner[axis] = *at;
                corner
            })
            .filter(|corner| {
                let ahead = (corner[axis] - leg.from[axis]) * leg.way[axis];
                ahead > 1e-9 || (with_start && ahead > -1e-9)
            })
            .collect();
        found.sort_by(|one, other| ((one[axis] - other[axis]) * leg.way[axis]).total_cmp(&0.0));
        found
    }

    fn walk(&mut self, corners: &mut Vec<Corner>, leg: Leg, bends: usize) {
        // After a diagonal a leg begins between stations.
        let begins_on_station = !leg.is_between(self.tracks);
        let stations = self.stations(&leg, !begins_on_station);
        let mut last_clear = leg.from;
        let mut met_any = begins_on_station;
        let mut all_clear = true;
        for station in &stations {
            if !self.has_room(leg.from, *station, None, leg.is_first) {
                all_clear = false;
                break;
            }
            last_clear = *station;
            met_any = true;
            self.turn_at(corners, &leg, *station, bends);
        }
        if all_clear && met_any {
            self.leave(corners, &leg, last_clear);
        }
    }

    /// Out through the wall past the last station.
    fn leave(&mut self, corners: &[Corner], leg: &Leg, last: Corner) {
        let axis = usize::from(leg.way[0] == 0.0);
        for (index, wall) in self
            .plan
            .walls
            .iter()
            .enumerate()
            .filter(|(_, it)| it.outside)
        {
            let (from, to) = ([wall.from_x_m, wall.from_y_m], [wall.to_x_m, wall.to_y_m]);
            // The wall must stand square across the leg.
            if (from[axis] - to[axis]).abs() > 1e-9 {
                continue;
            }
            if (from[axis] - last[axis]) * leg.way[axis] <= 0.0 {
                continue;
            }
            let half = self.plan.run.diameter.metres() / 2.0;
            let across = 1 - axis;
            let (low, high) = (from[across].min(to[across]), from[across].max(to[across]));
            if last[across] < low + half || last[across] > high - half {
                continue;
            }
            let mut end = last;
            end[axis] = from[axis] + leg.way[axis] * wall.thickness.metres() / 2.0;
            let length = flat(leg.from, end);
            if length < leg.taken - 1e-9
                || self.is_near_opening(end)
                || !self.has_room(leg.from, end, Some(index), leg.is_first)
            {
                continue;
            }
            let mut route = corners.to_vec();
            route.push(end);
            if !self.touches_itself(&route) {
                self.routes.push(route);
            }
        }
    }

    fn turn_at(&mut self, corners: &mut Vec<Corner>, leg: &Leg, at: Corner, bends: usize) {
        let length = flat(leg.from, at);
        let radius = self.radius();
        let sides = [[-leg.way[1], leg.way[0]], [leg.way[1], -leg.way[0]]];
        if length >= leg.taken + radius - 1e-9 {
            for way in sides {
                if bends < self.most_bends && self.has_chord(at, leg.way, way, radius, leg.is_first)
                {
                    corners.push(at);
                    self.walk(
                        corners,
                        Leg {
                            from: at,
                            way,
                            taken: radius,
                            is_first: false,
                        },
                        bends + 1,
                    );
                    corners.pop();
                }
            }
            for height in &self.tracks.height_m.clone() {
                let to = [at[0], at[1], *height];
                if bends + 2 > self.most_bends
                    || (height - at[2]).abs() < 2.0 * radius + 1e-9
                    || !self.has_shaft(at, *height)
                {
                    continue;
                }
                corners.push(at);
                corners.push(to);
                for way in [[1.0, 0.0], [-1.0, 0.0], [0.0, 1.0], [0.0, -1.0]] {
                    self.walk(
                        corners,
                        Leg {
                            from: to,
                            way,
                            taken: radius,
                            is_first: false,
                        },
                        bends + 2,
                    );
                }
                corners.truncate(corners.len() - 2);
            }
        }
        let small = radius * (std::f64::consts::FRAC_PI_8).tan();
        if length < leg.taken + small - 1e-9 || bends + 2 > self.most_bends {
            return;
        }
        for side in sides {
            let slope = [
                (leg.way[0] + side[0]) * std::f64::consts::FRAC_1_SQRT_2,
                (leg.way[1] + side[1]) * std::f64::consts::FRAC_1_SQRT_2,
            ];
            // Straight on along a track beside this one, then round a corner onto a track across.
            for (after, across) in [(leg.way, side), (side, leg.way)] {
                let reach = Leg {
                    from: at,
                    way: across,
                    taken: 0.0,
                    is_first: false,
                };
                let tracks = self.stations(&reach, false);
                for track in tracks.iter().take(self.diagonal_tracks) {
                    let run = flat(at, *track);
                    let landing = [
                        at[0] + run * (leg.way[0] + side[0]),
                        at[1] + run * (leg.way[1] + side[1]),
                        at[2],
                    ];
                    let next = Leg {
                        from: landing,
                        way: after,
                        taken: small,
                        is_first: false,
                    };
                    let Some(first) = self.stations(&next, true).first().copied() else {
                        continue;
                    };
                    let has_room = run * std::f64::consts::SQRT_2 >= 2.0 * small - 1e-9
                        && self.has_room(at, landing, None, false)
                        && self.has_room(landing, first, None, false)
                        && self.has_chord(at, leg.way, slope, small, leg.is_first)
                        && self.has_chord(landing, slope, after, small, false);
                    if has_room {
                        corners.push(at);
                        corners.push(landing);
                        self.walk(corners, next, bends + 2);
                        corners.truncate(corners.len() - 2);
                    }
                }
            }
        }
    }

    fn has_chord(
        &self,
        at: Corner,
        before: [f64; 2],
        after: [f64; 2],
        tangent: f64,
        is_first: bool,
    ) -> bool {
        let from = [
            at[0] - before[0] * tangent,
            at[1] - before[1] * tangent,
            at[2],
        ];
        let to = [
            at[0] + after[0] * tangent,
            at[1] + after[1] * tangent,
            at[2],
        ];
        self.has_room(from, to, None, is_first)
    }

    fn level(&self, height: f64) -> Level {
        if height < 0.0 {
            Level::CrawlSpace
        } else if height > self.plan.ceiling_height.metres() {
            Level::CeilingSpace
        } else {
            Level::Room
        }
    }

    fn has_shaft(&self, at: Corner, to: f64) -> bool {
        let ends = [self.level(at[2]), self.level(to)];
        let (low, high) = (ends[0].min(ends[1]), ends[0].max(ends[1]));
        // Heights that stand for the three levels.
        [-0.1, 1.0, self.plan.ceiling_height.metres() + 0.1]
            .into_iter()
            .filter(|height| (low..=high).contains(&self.level(*height)))
            .all(|height| {
                let here = [at[0], at[1], height];
                self.has_room(here, here, None, false)
            })
    }

    fn has_room(&self, from: Corner, to: Corner, own_wall: Option<usize>, is_first: bool) -> bool {
        let level = self.level(from[2]);
        for obstacle in self.plan.obstacles.iter().filter(|it| it.level == level) {
            let low = [obstacle.x_m, obstacle.y_m];
            let high = [
                low[0] + obstacle.width.metres(),
                low[1] + obstacle.depth.metres(),
            ];
            if let ObstacleKind::Framing { members, spacing } = obstacle.kind {
                let axis = usize::from(members == Axis::AlongX);
                let mut at = low[axis];
                while at <= high[axis] + 1e-9 {
                    let (mut start, mut end) = (low, high);
                    start[axis] = at;
                    end[axis] = at;
                    if apart(from, to, start, end) < self.reach + HALF_MEMBER - DUST {
                        return false;
                    }
                    at += spacing.metres();
                }
            } else if apart(from, to, low, high) < self.reach - DUST {
                return false;
            }
        }
        for (index, wall) in self.plan.walls.iter().enumerate() {
            assert!(wall.outside, "small plans have outside walls alone");
            let low = [
                wall.from_x_m.min(wall.to_x_m),
                wall.from_y_m.min(wall.to_y_m),
            ];
            let high = [
                wall.from_x_m.max(wall.to_x_m),
                wall.from_y_m.max(wall.to_y_m),
            ];
            let keeps = self.reach + wall.thickness.metres() / 2.0;
            if own_wall != Some(index) && apart(from, to, low, high) < keeps - DUST {
                return false;
            }
        }
        let dryer = &self.plan.dryer;
        let (wide, deep) = (dryer.width.metres() / 2.0, dryer.depth.metres() / 2.0);
        is_first
            || level != Level::Room
            || apart(
                from,
                to,
                [dryer.x_m - wide, dryer.y_m - deep],
                [dryer.x_m + wide, dryer.y_m + deep],
            ) >= self.reach - DUST
    }

    fn is_near_opening(&self, end: Corner) -> bool {
        self.plan.openings.iter().any(|opening| {
            let wall = self
                .plan
                .walls
                .iter()
                .find(|wall| wall.id == opening.wall)
                .unwrap();
            let (dx, dy) = (wall.to_x_m - wall.from_x_m, wall.to_y_m - wall.from_y_m);
            let long = dx.hypot(dy);
            let place = |along: f64| {
                [
                    wall.from_x_m + dx / long * along,
                    wall.from_y_m + dy / long * along,
                ]
            };
            let (near, far) = (
                place(opening.offset.metres()),
                place((opening.offset + opening.width).metres()),
            );
            // The opening goes through all the wall's thickness.
            let half = wall.thickness.metres() / 2.0;
            let grow = [dy.abs() / long * half, dx.abs() / long * half];
            let low = [near[0].min(far[0]) - grow[0], near[1].min(far[1]) - grow[1]];
            let high = [near[0].max(far[0]) + grow[0], near[1].max(far[1]) + grow[1]];
            let keeps = if opening.kind == OpeningKind::AirIntake {
                FROM_INTAKE
            } else {
                FROM_OPENING
            };
            apart(end, end, low, high) < keeps - 1e-9
        })
    }

    fn touches_itself(&self, route: &[Corner]) -> bool {
        let width = self.plan.run.diameter.metres();
        let legs: Vec<&[Corner]> = route.windows(2).collect();
        (0..legs.len()).any(|one| {
            (one + 2..legs.len()).any(|other| {
                let (a, b) = (legs[one], legs[other]);
                let (low_a, high_a) = (a[0][2].min(a[1][2]), a[0][2].max(a[1][2]));
                let (low_b, high_b) = (b[0][2].min(b[1][2]), b[0][2].max(b[1][2]));
                low_a - width < high_b
                    && low_b - width < high_a
                    && segments_apart(a[0], a[1], b[0], b[1]) < width - 1e-9
            })
        })
    }

    /// The plan with a route laid in rigid duct.
    pub fn plan_with(&self, route: &[Corner]) -> Plan {
        let mut plan = self.plan.clone();
        let level = Fitting {
            elbow: self.elbow,
            riser: None,
        };
        plan.run.outlet = level;
        plan.run.points = Vec::new();
        for pair in route.windows(2) {
            if (pair[0][2] - pair[1][2]).abs() < 1e-9 {
                plan.run.points.push(RunPoint {
                    id: format!("e{}", plan.run.points.len()).into(),
                    position: Point::new(pair[1][0], pair[1][1]),
                    duct: Duct::Rigid,
                    leg: LegState::default(),
                    fitting: level,
                });
            } else {
                let rise = Length::from_metres(pair[1][2] - pair[0][2]);
                plan.run.points.last_mut().unwrap().fitting.riser = Some(Riser {
                    rise,
                    elbow: self.elbow,
                });
            }
        }
        plan.run.termination = Termination::clean(TerminationKind::WallHood);
        plan
    }
}

impl Leg {
    fn is_between(&self, tracks: &Tracks) -> bool {
        let (list, at) = if self.way[0] == 0.0 {
            (&tracks.y_m, self.from[1])
        } else {
            (&tracks.x_m, self.from[0])
        };
        !list.iter().any(|own| (own - at).abs() < 1e-9)
    }
}

fn flat(from: Corner, to: Corner) -> f64 {
    (to[0] - from[0]).hypot(to[1] - from[1])
}

/// The distance of a segment from a box, by clipping and by corners: the segment's parameter is
/// searched for the least distance, which along a segment has one minimum.
fn apart(from: Corner, to: Corner, low: [f64; 2], high: [f64; 2]) -> f64 {
    let at = |share: f64| {
        let distance = |axis: usize| {
            let place = from[axis] + (to[axis] - from[axis]) * share;
            (low[axis] - place).max(place - high[axis]).max(0.0)
        };
        distance(0).hypot(distance(1))
    };
    let (mut start, mut end) = (0.0, 1.0);
    for _ in 0..60 {
        let (one, other) = (start + (end - start) / 3.0, end - (end - start) / 3.0);
        if at(one) <= at(other) {
            end = other;
        } else {
            start = one;
        }
    }
    at(start).min(at(end)).min(at(0.0)).min(at(1.0))
}

fn segments_apart(a: Corner, b: Corner, c: Corner, d: Corner) -> f64 {
    let to_segment = |share: f64| {
        let place = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
        let (dx, dy) = (d[0] - c[0], d[1] - c[1]);
        let squared = dx * dx + dy * dy;
        let along = if squared > 0.0 {
            (((place[0] - c[0]) * dx + (place[1] - c[1]) * dy) / squared).clamp(0.0, 1.0)
        } else {
            0.0
        };
        (place[0] - c[0] - along * dx).hypot(place[1] - c[1] - along * dy)
    };
    let (mut start, mut end) = (0.0, 1.0);
    for _ in 0..60 {
        let (one, other) = (start + (end - start) / 3.0, end - (end - start) / 3.0);
        if to_segment(one) <= to_segment(other) {
            end = other;
        } else {
            start = one;
        }
    }
    to_segment(start)
        .min(to_segment(end))
        .min(to_segment(0.0))
        .min(to_segment(1.0))
}
