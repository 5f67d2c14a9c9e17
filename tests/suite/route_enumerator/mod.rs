//! Every route of a small plan, by going through all of them: the outside check of the search. Shares
//! no code with it but `system`, and takes the document and the run's walk from `plan`.
//!
//! The stations are those that the search promises (`search`, tracks): the outlet and two radii about
//! the first corner, a duct's reach beside every obstacle, wall and dryer, the limits of openings, and
//! the present run's points. Legality is worked out here from the drawn numbers.

mod boxes;
mod clear;
mod stations;

use elbowroom::plan::{Duct, Elbow, Fitting, LegState, Plan, Riser, Run, RunPoint};
use elbowroom::system::assess;
use elbowroom::units::Length;
use std::cell::RefCell;
use std::collections::HashMap;
use std::rc::Rc;

/// m: coordinates are whole inches, so sums stray by far less.
const NEAR: f64 = 1e-7;
/// From openings, the rule set's own figure (IRC M1502.3: 3 ft; 10 ft from intakes is not drawn here).
const FROM_OPENINGS: f64 = 0.9144;

type Spot = (f64, f64);

/// What a corner is made of: 1 for 45 deg, 2 for 90, 4 for a riser's two elbows.
type Weight = u32;

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

impl Small {
    /// How many stations there are along x, along y, and how many levels.
    pub fn size(&self) -> (usize, usize, usize) {
        (self.xs.len(), self.ys.len(), self.heights.len())
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
            self.outlet_height(),
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
