//! Every route of a small plan, by going through all of them: the outside check of the search. Shares
//! no code with it but `system`, and takes the document and the run's walk from `plan`.
//!
//! The stations are those that the search promises (`search`, tracks): the outlet and two radii about
//! the first corner, a duct's reach beside every obstacle, wall and dryer, the limits of openings, and
//! the present run's points. Legality is worked out here from the drawn numbers.

use elbowroom::plan::{
    Duct, Elbow, Fitting, LegState, Level, OpeningKind, Plan, Riser, Run, RunPoint,
};
use elbowroom::system::assess;
use elbowroom::units::Length;
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;

/// m: coordinates are whole inches, so sums stray by far less.
const NEAR: f64 = 1e-7;
/// From openings, the rule set's own figure (IRC M1502.3: 3 ft; 10 ft from intakes is not drawn here).
const FROM_OPENINGS: f64 = 0.9144;
/// A dryer's body reaches so far above its outlet, as the search documents.
const BODY: f64 = 1.1;

type Spot = (f64, f64);

/// What a corner is made of: 1 for 45 deg, 2 for 90, 4 for a riser's two elbows.
type Weight = u32;

/// A drawn box by its least and greatest corner.
#[derive(Clone, Copy)]
struct Box2(Spot, Spot);

pub struct Small {
    plan: Plan,
    elbow: Elbow,
    reach: f64,
    xs: Vec<f64>,
    ys: Vec<f64>,
    heights: Vec<f64>,
    seen: RefCell<Seen>,
}

/// Where a leg starts (its bits), the way that it goes, its height, and whether it leaves the dryer.
type From = (u64, u64, i32, i32, u64, bool);

/// What was worked out already: geometry alone, asked for again by route after route.
#[derive(Default)]
struct Seen {
    legs: HashMap<From, Rc<Legs>>,
    curves: HashMap<(From, i32, i32), bool>,
    risers: HashMap<(u64, u64, u64, u64), bool>,
}

/// The stations that a leg may reach, nearest first with their distance, and its end outdoors.
struct Legs {
    stops: Vec<(Spot, f64)>,
    end: Option<(Spot, f64)>,
}

/// A whole route: corners after the outlet, each with the height that the leg arrives at, and the end.
#[derive(Clone, Debug)]
pub struct Route {
    corners: Vec<(Spot, f64)>,
    weight: Weight,
    at_45: u32,
    at_90: u32,
}

/// The shortest route of each kind (number of 45s, of 90s, height of the end), and how many there are.
#[derive(Default)]
pub struct Enumerated {
    pub routes: u64,
    /// Every one of them, up to as many as were asked for.
    pub every: Vec<Route>,
    most_kept: usize,
    shortest: HashMap<(u32, u32, i64), (f64, Route)>,
}

/// The least distance from a segment to a box: both are convex, so it is nought or lies at an end or
/// a corner.
fn apart(a: Spot, b: Spot, it: Box2) -> f64 {
    let Box2(least, most) = it;
    // Clip the segment to the box (Liang and Barsky).
    let (mut enters, mut leaves) = (0.0_f64, 1.0_f64);
    let mut misses = false;
    for (from, step, low, high) in [
        (a.0, b.0 - a.0, least.0, most.0),
        (a.1, b.1 - a.1, least.1, most.1),
    ] {
        if step.abs() < 1e-12 {
            misses |= from < low || from > high;
        } else {
            let (one, other) = ((low - from) / step, (high - from) / step);
            enters = enters.max(one.min(other));
            leaves = leaves.min(one.max(other));
        }
    }
    if !misses && enters <= leaves {
        return 0.0;
    }
    let to_box = |p: Spot| {
        let x = (least.0 - p.0).max(p.0 - most.0).max(0.0);
        let y = (least.1 - p.1).max(p.1 - most.1).max(0.0);
        x.hypot(y)
    };
    let corners = [least, most, (least.0, most.1), (most.0, least.1)];
    corners
        .iter()
        .map(|corner| to_segment(*corner, a, b))
        .chain([to_box(a), to_box(b)])
        .fold(f64::INFINITY, f64::min)
}

fn to_segment(p: Spot, a: Spot, b: Spot) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let square = dx * dx + dy * dy;
    let along = if square > 0.0 {
        (((p.0 - a.0) * dx + (p.1 - a.1) * dy) / square).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (p.0 - a.0 - along * dx).hypot(p.1 - a.1 - along * dy)
}

impl Small {
    pub fn of(plan: &Plan, clearance: f64) -> Self {
        let elbow = plan.run.outlet.elbow;
        let reach = plan.run.diameter.metres() / 2.0 + clearance;
        let radius = elbow.radius.metres();
        let round = if radius > reach {
            radius - (radius - reach) / 2.0_f64.sqrt()
        } else {
            reach
        };
        let (mut xs, mut ys) = (Vec::new(), Vec::new());
        let outlet = plan.dryer.outlet();
        let way = plan.dryer.outlet_heading();
        let first = (outlet.x + radius * way.x, outlet.y + radius * way.y);
        xs.extend([
            outlet.x,
            first.0,
            first.0 - 2.0 * radius,
            first.0 + 2.0 * radius,
        ]);
        ys.extend([
            outlet.y,
            first.1,
            first.1 - 2.0 * radius,
            first.1 + 2.0 * radius,
        ]);
        let mut beside = |Box2(least, most): Box2| {
            for off in [reach, round] {
                xs.extend([least.0 - off, most.0 + off]);
                ys.extend([least.1 - off, most.1 + off]);
            }
        };
        beside(body(plan));
        plan.obstacles.iter().for_each(|it| beside(drawn(it)));
        for wall in &plan.walls {
            let half = wall.thickness.metres() / 2.0;
            if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                ys.extend([wall.from_y_m - half - reach, wall.from_y_m + half + reach]);
                if !wall.outside {
                    for off in [reach + half, round + half] {
                        xs.extend([wall.from_x_m.min(wall.to_x_m) - off]);
                        xs.extend([wall.from_x_m.max(wall.to_x_m) + off]);
                    }
                }
            } else {
                xs.extend([wall.from_x_m - half - reach, wall.from_x_m + half + reach]);
                if !wall.outside {
                    for off in [reach + half, round + half] {
                        ys.extend([wall.from_y_m.min(wall.to_y_m) - off]);
                        ys.extend([wall.from_y_m.max(wall.to_y_m) + off]);
                    }
                }
            }
        }
        for opening in &plan.openings {
            assert_ne!(opening.kind, OpeningKind::AirIntake);
            let wall = plan
                .walls
                .iter()
                .find(|wall| wall.id == opening.wall)
                .unwrap();
            let near = opening.offset.metres() - FROM_OPENINGS;
            let far = opening.offset.metres() + opening.width.metres() + FROM_OPENINGS;
            let (dx, dy) = (
                (wall.to_x_m - wall.from_x_m).signum(),
                (wall.to_y_m - wall.from_y_m).signum(),
            );
            if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                xs.extend([wall.from_x_m + dx * near, wall.from_x_m + dx * far]);
            } else {
                ys.extend([wall.from_y_m + dy * near, wall.from_y_m + dy * far]);
            }
        }
        for point in &plan.run.points {
            xs.push(point.position.x);
            ys.push(point.position.y);
        }
        let mut heights = heights(plan, reach);
        for list in [&mut xs, &mut ys, &mut heights] {
            list.sort_by(f64::total_cmp);
            list.dedup_by(|next, kept| *next - *kept < NEAR);
        }
        Self {
            plan: plan.clone(),
            elbow,
            reach,
            xs,
            ys,
            heights,
            seen: RefCell::default(),
        }
    }

    /// How many stations there are along x, along y, and how many levels.
    pub fn size(&self) -> (usize, usize, usize) {
        (self.xs.len(), self.ys.len(), self.heights.len())
    }

    fn level(&self, height: f64) -> Level {
        if height > self.plan.ceiling_height.metres() {
            Level::CeilingSpace
        } else {
            Level::Room
        }
    }

    fn leg_is_clear(&self, a: Spot, b: Spot, height: f64, leaves_dryer: bool) -> bool {
        let level = self.level(height);
        let there = self.plan.obstacles.iter().filter(|it| it.level == level);
        let clear = there
            .map(drawn)
            .all(|it| apart(a, b, it) >= self.reach - NEAR);
        let low = height <= self.heights_outlet() + BODY;
        let clear_of_body =
            leaves_dryer || !low || apart(a, b, body(&self.plan)) >= self.reach - NEAR;
        clear && clear_of_body && self.walls_are_clear(a, b, level)
    }

    fn heights_outlet(&self) -> f64 {
        self.plan.dryer.outlet_height.metres()
    }

    /// A leg keeps beside walls that it runs along; walls indoors may be gone through.
    fn walls_are_clear(&self, a: Spot, b: Spot, level: Level) -> bool {
        self.plan.walls.iter().all(|wall| {
            let line = wall_line(wall);
            let lies_along_x = (a.1 - b.1).abs() < NEAR;
            let lies_along_y = (a.0 - b.0).abs() < NEAR;
            let wall_along_x = (line.0.1 - line.1.1).abs() < NEAR;
            let runs_along = (lies_along_x && wall_along_x) || (lies_along_y && !wall_along_x);
            let off = apart(a, b, line);
            let enough = self.reach + wall.thickness.metres() / 2.0;
            if runs_along && level == Level::Room {
                off >= enough - NEAR
            } else {
                !wall.outside || off > NEAR
            }
        })
    }

    fn riser_is_clear(&self, at: Spot, one: f64, other: f64) -> bool {
        let (low, high) = (one.min(other), one.max(other));
        let passed = self.heights.iter().filter(|it| (low..=high).contains(*it));
        let clear_of_body = low > self.heights_outlet() + BODY
            || apart(at, at, body(&self.plan)) >= self.reach - NEAR;
        clear_of_body
            && passed.into_iter().all(|height| {
                let level = self.level(*height);
                let there = self.plan.obstacles.iter().filter(|it| it.level == level);
                let clear = there
                    .map(drawn)
                    .all(|it| apart(at, at, it) >= self.reach - NEAR);
                let mut walls = self.plan.walls.iter();
                clear
                    && (level != Level::Room
                        || walls.all(|wall| {
                            let enough = self.reach + wall.thickness.metres() / 2.0;
                            apart(at, at, wall_line(wall)) >= enough - NEAR
                        }))
            })
    }

    /// The curve of an elbow, point by point: a two-hundredth of a quarter turn apart.
    fn curve_is_clear(&self, at: Spot, before: Spot, after: Spot, height: f64) -> bool {
        /// Points lie on the curve, where the search's chords may be nearer by this, m.
        const CURVE: f64 = 1e-4;
        let turn = (before.0 * after.0 + before.1 * after.1)
            .clamp(-1.0, 1.0)
            .acos();
        let radius = self.elbow.radius.metres();
        let tangent = radius * (turn / 2.0).tan();
        let start = (at.0 - tangent * before.0, at.1 - tangent * before.1);
        let side = (before.0 * after.1 - before.1 * after.0).signum();
        let inward = (-before.1 * side, before.0 * side);
        let level = self.level(height);
        (0..=200).all(|step| {
            let angle = turn * f64::from(step) / 200.0;
            let (ahead, aside) = (radius * angle.sin(), radius * (1.0 - angle.cos()));
            let p = (
                start.0 + ahead * before.0 + aside * inward.0,
                start.1 + ahead * before.1 + aside * inward.1,
            );
            let there = self.plan.obstacles.iter().filter(|it| it.level == level);
            let mut walls = self.plan.walls.iter();
            there
                .map(drawn)
                .all(|it| apart(p, p, it) >= self.reach - CURVE)
                && (level != Level::Room
                    || walls.all(|wall| {
                        let enough = self.reach + wall.thickness.metres() / 2.0;
                        apart(p, p, wall_line(wall)) >= enough - CURVE
                    }))
        })
    }

    /// Every route whose elbows weigh at most `most`.
    pub fn all(&self, most: Weight) -> Enumerated {
        self.all_kept(most, 0)
    }

    /// The same; so many are kept one by one.
    pub fn all_kept(&self, most: Weight, most_kept: usize) -> Enumerated {
        let mut found = Enumerated {
            most_kept,
            ..Enumerated::default()
        };
        let outlet = self.plan.dryer.outlet();
        let way = self.plan.dryer.outlet_heading();
        let start = Route {
            corners: Vec::new(),
            weight: 0,
            at_45: 0,
            at_90: 0,
        };
        self.go(
            (outlet.x, outlet.y),
            self.heights_outlet(),
            (snap(way.x), snap(way.y)),
            0.0,
            true,
            &start,
            most,
            0.0,
            &mut found,
        );
        found
    }

    /// Goes on from a corner: `taken` is the tangent that the leg starts with, `length` what is drawn so
    /// far.
    #[allow(clippy::too_many_arguments, reason = "the whole state of the walk")]
    fn go(
        &self,
        from: Spot,
        height: f64,
        way: Spot,
        taken: f64,
        leaves_dryer: bool,
        route: &Route,
        most: Weight,
        length: f64,
        found: &mut Enumerated,
    ) {
        let radius = self.elbow.radius.metres();
        let legs = self.legs(from, way, height, leaves_dryer);
        for (stop, leg) in legs.stops.iter().copied() {
            let (drawn, arrives_at) = (length + leg, height);
            let mut turned_to =
                |turned: Spot, height: f64, taken: f64, weight: (Weight, u32, u32), drawn: f64| {
                    let mut next = route.clone();
                    next.corners.push((stop, arrives_at));
                    next.weight += weight.0;
                    next.at_45 += weight.1;
                    next.at_90 += weight.2;
                    self.go(
                        stop, height, turned, taken, false, &next, most, drawn, found,
                    );
                };
            for (turned, is_quarter) in turns(way) {
                let (weight, tangent) = if is_quarter {
                    ((2, 0, 1), radius)
                } else {
                    ((1, 1, 0), radius * (core::f64::consts::PI / 8.0).tan())
                };
                if route.weight + weight.0 <= most
                    && leg + NEAR >= taken + tangent
                    && self.curve(stop, way, turned, height)
                {
                    turned_to(turned, height, tangent, weight, drawn);
                }
            }
            if route.weight + 4 > most || leg + NEAR < taken + radius {
                continue;
            }
            for level in &self.heights {
                let rise = (level - height).abs();
                if rise + NEAR < 2.0 * radius || !self.riser(stop, height, *level) {
                    continue;
                }
                for turned in EIGHT {
                    turned_to(turned, *level, radius, (4, 0, 2), drawn + rise);
                }
            }
        }
        if let Some((end, leg)) = legs.end.filter(|(_, leg)| leg + NEAR >= taken) {
            Self::take(end, height, route, length + leg, found);
        }
    }

    fn legs(&self, from: Spot, way: Spot, height: f64, leaves_dryer: bool) -> Rc<Legs> {
        let key = key(from, way, height, leaves_dryer);
        if let Some(legs) = self.seen.borrow().legs.get(&key) {
            return Rc::clone(legs);
        }
        let far = |to: Spot| (to.0 - from.0).hypot(to.1 - from.1);
        let clear = |stop: &Spot| self.leg_is_clear(from, *stop, height, leaves_dryer);
        let stops = self.stops(from, way).into_iter().take_while(clear);
        let end = self.end(from, way, height, leaves_dryer);
        let legs = Rc::new(Legs {
            stops: stops.map(|stop| (stop, far(stop))).collect(),
            end: end.map(|end| (end, far(end))),
        });
        self.seen.borrow_mut().legs.insert(key, Rc::clone(&legs));
        legs
    }

    fn curve(&self, at: Spot, before: Spot, after: Spot, height: f64) -> bool {
        let [x, y] = steps(after);
        let key = (key(at, before, height, false), x, y);
        if let Some(clear) = self.seen.borrow().curves.get(&key) {
            return *clear;
        }
        let clear = self.curve_is_clear(at, unit(before), unit(after), height);
        self.seen.borrow_mut().curves.insert(key, clear);
        clear
    }

    fn riser(&self, at: Spot, one: f64, other: f64) -> bool {
        let key = (
            at.0.to_bits(),
            at.1.to_bits(),
            one.to_bits(),
            other.to_bits(),
        );
        if let Some(clear) = self.seen.borrow().risers.get(&key) {
            return *clear;
        }
        let clear = self.riser_is_clear(at, one, other);
        self.seen.borrow_mut().risers.insert(key, clear);
        clear
    }

    fn take(end: Spot, height: f64, route: &Route, length: f64, found: &mut Enumerated) {
        found.routes += 1;
        #[allow(clippy::cast_possible_truncation, reason = "a height in micrometres")]
        let kind = (route.at_45, route.at_90, (height * 1e6).round() as i64);
        let shortest = found.shortest.entry(kind);
        let mut whole = route.clone();
        whole.corners.push((end, height));
        if found.every.len() < found.most_kept {
            found.every.push(whole.clone());
        }
        shortest
            .and_modify(|kept| {
                if length < kept.0 {
                    *kept = (length, whole.clone());
                }
            })
            .or_insert((length, whole));
    }

    /// The stations ahead, in order.
    fn stops(&self, from: Spot, way: Spot) -> Vec<Spot> {
        let mut stops = Vec::new();
        let mut put = |x: f64, y: f64| {
            let (dx, dy) = (x - from.0, y - from.1);
            let along = dx * way.0 + dy * way.1;
            let aside = dx * way.1 - dy * way.0;
            if aside.abs() < NEAR && along > NEAR {
                stops.push((along, (x, y)));
            }
        };
        // Along the sheet the one coordinate stays as it is.
        if way.1 == 0.0 {
            self.xs.iter().for_each(|x| put(*x, from.1));
        } else if way.0 == 0.0 {
            self.ys.iter().for_each(|y| put(from.0, *y));
        } else {
            for x in &self.xs {
                self.ys.iter().for_each(|y| put(*x, *y));
            }
        }
        stops.sort_by(|one, other| one.0.total_cmp(&other.0));
        stops.into_iter().map(|(_, spot)| spot).collect()
    }

    /// Where a leg on `way` ends outdoors, if it may.
    fn end(&self, from: Spot, way: Spot, height: f64, leaves_dryer: bool) -> Option<Spot> {
        let mut best: Option<(f64, usize)> = None;
        for (index, wall) in self.plan.walls.iter().enumerate() {
            let Box2(least, most) = wall_line(wall);
            let wall_along_x = (least.1 - most.1).abs() < NEAR;
            let (distance, inside) = if wall_along_x && way.0 == 0.0 {
                let x = from.0;
                (
                    (least.1 - from.1) * way.1,
                    x >= least.0 + self.reach && x <= most.0 - self.reach,
                )
            } else if !wall_along_x && way.1 == 0.0 {
                let y = from.1;
                (
                    (least.0 - from.0) * way.0,
                    y >= least.1 + self.reach && y <= most.1 - self.reach,
                )
            } else {
                continue;
            };
            let is_nearer = best.is_none_or(|(other, _)| distance < other);
            if wall.outside && inside && distance > 0.0 && is_nearer {
                best = Some((distance, index));
            }
        }
        let (distance, index) = best?;
        let out = distance + self.plan.walls[index].thickness.metres() / 2.0;
        let end = (from.0 + way.0 * out, from.1 + way.1 * out);
        let mut others = self.plan.walls.iter().enumerate();
        let level = self.level(height);
        let there = self.plan.obstacles.iter().filter(|it| it.level == level);
        let clear = there
            .map(drawn)
            .all(|it| apart(from, end, it) >= self.reach - NEAR);
        let low = height <= self.heights_outlet() + BODY;
        let body_clear =
            leaves_dryer || !low || apart(from, end, body(&self.plan)) >= self.reach - NEAR;
        let walls_clear = others.all(|(other, wall)| {
            let line = wall_line(wall);
            let along = ((line.0.1 - line.1.1).abs() < NEAR) == (way.1 == 0.0);
            let off = apart(from, end, line);
            other == index
                || if along && level == Level::Room {
                    off >= self.reach + wall.thickness.metres() / 2.0 - NEAR
                } else {
                    !wall.outside || off > NEAR
                }
        });
        let far_enough = self.plan.openings.iter().all(|opening| {
            let wall = self
                .plan
                .walls
                .iter()
                .find(|wall| wall.id == opening.wall)
                .unwrap();
            let (dx, dy) = (
                (wall.to_x_m - wall.from_x_m).signum(),
                (wall.to_y_m - wall.from_y_m).signum(),
            );
            let half = wall.thickness.metres() / 2.0;
            let (near, wide) = (opening.offset.metres(), opening.width.metres());
            let hole = if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                let (one, other) = (
                    wall.from_x_m + dx * near,
                    wall.from_x_m + dx * (near + wide),
                );
                Box2(
                    (one.min(other), wall.from_y_m - half),
                    (one.max(other), wall.from_y_m + half),
                )
            } else {
                let (one, other) = (
                    wall.from_y_m + dy * near,
                    wall.from_y_m + dy * (near + wide),
                );
                Box2(
                    (wall.from_x_m - half, one.min(other)),
                    (wall.from_x_m + half, one.max(other)),
                )
            };
            !wall.outside || apart(end, end, hole) >= FROM_OPENINGS - 1e-9
        });
        (clear && body_clear && walls_clear && far_enough).then_some(end)
    }

    /// The plan with this route.
    pub fn plan_by(&self, route: &Route) -> Plan {
        let mut plan = self.plan.clone();
        let level = Fitting {
            elbow: self.elbow,
            riser: None,
        };
        let mut points: Vec<RunPoint> = Vec::new();
        for (index, (spot, height)) in route.corners.iter().enumerate() {
            let next = route.corners.get(index + 1).map_or(*height, |next| next.1);
            let rise = Length::from_metres(next - height);
            points.push(RunPoint {
                id: format!("q{index}").as_str().into(),
                position: elbowroom::plan::Point::new(spot.0, spot.1),
                duct: Duct::Rigid,
                leg: LegState::default(),
                fitting: Fitting {
                    riser: (rise.metres().abs() > NEAR).then_some(Riser {
                        rise,
                        elbow: self.elbow,
                    }),
                    ..level
                },
            });
        }
        plan.run = Run {
            outlet: level,
            points,
            ..plan.run
        };
        plan
    }

    /// The best route by the full operating point: airflow, m³/s, and back pressure, Pa. Of one kind
    /// the shortest is the best, since straight duct loses something and helps nothing.
    pub fn best(&self, found: &Enumerated) -> Option<(f64, f64, f64)> {
        let figures = found.shortest.values().filter_map(|(_, route)| {
            let plan = self.plan_by(route);
            let (point, ledger) = assess(&plan).working?;
            let at = point.evaluation;
            let loss: f64 = ledger
                .rows
                .iter()
                .take(ledger.rows.len() - 1)
                .map(|row| row.loss.pascals())
                .sum();
            Some((
                at.airflow.cubic_metres_per_second(),
                at.back_pressure.pascals(),
                loss,
            ))
        });
        figures.max_by(|one, other| one.0.total_cmp(&other.0).then(other.1.total_cmp(&one.1)))
    }
}

/// The outlet's height, those of the present run's legs, and just over the ceiling where something is
/// there.
fn heights(plan: &Plan, reach: f64) -> Vec<f64> {
    let mut heights = vec![plan.dryer.outlet_height.metres()];
    let mut height = heights[0] + plan.run.outlet.riser.map_or(0.0, |it| it.rise.metres());
    heights.push(height);
    for (index, point) in plan.run.points.iter().enumerate() {
        height += point.fitting.riser.map_or(0.0, |it| it.rise.metres());
        if index + 1 < plan.run.points.len() {
            heights.push(height);
        }
    }
    let over = plan
        .obstacles
        .iter()
        .any(|it| it.level == Level::CeilingSpace);
    let ceiling = plan.ceiling_height.metres();
    if over && !heights.iter().any(|height| *height > ceiling) {
        heights.push(ceiling + reach);
    }
    heights
}

fn drawn(it: &elbowroom::plan::Obstacle) -> Box2 {
    Box2(
        (it.x_m, it.y_m),
        (it.x_m + it.width.metres(), it.y_m + it.depth.metres()),
    )
}

/// The dryer's body; its turn is a quarter's multiple.
fn body(plan: &Plan) -> Box2 {
    let dryer = &plan.dryer;
    let is_across = (dryer.turned_deg / 90.0).round() % 2.0 != 0.0;
    let (wide, deep) = (dryer.width.metres() / 2.0, dryer.depth.metres() / 2.0);
    let (x, y) = if is_across {
        (deep, wide)
    } else {
        (wide, deep)
    };
    Box2(
        (dryer.x_m - x, dryer.y_m - y),
        (dryer.x_m + x, dryer.y_m + y),
    )
}

fn wall_line(wall: &elbowroom::plan::Wall) -> Box2 {
    Box2(
        (
            wall.from_x_m.min(wall.to_x_m),
            wall.from_y_m.min(wall.to_y_m),
        ),
        (
            wall.from_x_m.max(wall.to_x_m),
            wall.from_y_m.max(wall.to_y_m),
        ),
    )
}

const EIGHT: [Spot; 8] = [
    (1.0, 0.0),
    (1.0, 1.0),
    (0.0, 1.0),
    (-1.0, 1.0),
    (-1.0, 0.0),
    (-1.0, -1.0),
    (0.0, -1.0),
    (1.0, -1.0),
];

/// The ways after a turn of 45 or 90 deg, and whether it is 90.
fn turns(way: Spot) -> Vec<(Spot, bool)> {
    let own = unit(way);
    EIGHT
        .iter()
        .filter_map(|other| {
            let to = unit(*other);
            let cosine = own.0 * to.0 + own.1 * to.1;
            if cosine.abs() < NEAR {
                Some((*other, true))
            } else if (cosine - 0.5_f64.sqrt()).abs() < NEAR {
                Some((*other, false))
            } else {
                None
            }
        })
        .collect()
}

fn unit(way: Spot) -> Spot {
    let length = way.0.hypot(way.1);
    (way.0 / length, way.1 / length)
}

#[allow(clippy::cast_possible_truncation, reason = "-1, 0 or 1")]
fn steps(way: Spot) -> [i32; 2] {
    [way.0.round() as i32, way.1.round() as i32]
}

fn key(from: Spot, way: Spot, height: f64, leaves_dryer: bool) -> From {
    let [x, y] = steps(way);
    (
        from.0.to_bits(),
        from.1.to_bits(),
        x,
        y,
        height.to_bits(),
        leaves_dryer,
    )
}

/// A heading along the sheet without the last digits of a sine.
fn snap(share: f64) -> f64 {
    share.round()
}
