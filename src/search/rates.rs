//! What a metre of straight and each elbow cost at one airflow, asked of the physics.

use super::heading::HEADINGS;
use super::outlet::odd_turns;
use super::route::wall_termination;
use crate::plan::{
    Duct, Elbow, Fitting, LegState, Plan, Point, RunPoint, Termination, TerminationKind,
};
use crate::system::{CompiledRun, Draw, Driver, operating_point};
use crate::units::{Airflow, Angle, Length};

/// Losses of total pressure in a run's own duct.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Rates {
    /// Of straight duct, Pa/m.
    pub straight: f64,
    /// Of an elbow of 45 deg, Pa.
    pub at_45: f64,
    /// Of an elbow of 90 deg, Pa.
    pub at_90: f64,
    /// Of the elbow at an outlet that faces none of the eight ways, for each of them, Pa.
    pub at_outlet: [f64; HEADINGS],
    /// What the weight of the air adds on a metre upward, Pa/m.
    pub rise: f64,
    /// What a cap on the roof loses more than the hood of new runs, Pa.
    pub roof: f64,
}

/// A leg of a probe, m: long enough for any elbow. Of the computation.
const PROBE: f64 = 10.0;

impl Rates {
    /// At `airflow`, for `elbow` and rigid duct in `plan`'s own air.
    pub(super) fn at(airflow: Airflow, plan: &Plan, elbow: Elbow) -> Self {
        let loss = |legs: &[(f64, f64)]| {
            let run = probe(plan, elbow, legs);
            run.at(airflow, &Draw::LIKELY).loss.pascals()
        };
        let one = loss(&[(0.0, PROBE)]);
        let straight = (loss(&[(0.0, PROBE * 2.0)]) - one) / PROBE;
        let bend = |turn: Angle| {
            let turned = loss(&[(0.0, PROBE), (turn.radians(), PROBE)]);
            let tangent = elbow.radius.metres() * (turn.radians() / 2.0).tan();
            turned - one - straight * (PROBE - 2.0 * tangent)
        };
        let level = probe(plan, elbow, &[(0.0, PROBE)]);
        let mut risen = level.clone();
        risen.rise = Length::from_metres(1.0);
        let end = |kind: TerminationKind| {
            let mut ends = plan.clone();
            ends.run.termination = Termination::clean(kind);
            let run = probe(&ends, elbow, &[(0.0, PROBE)]);
            run.at(airflow, &Draw::LIKELY).loss.pascals()
        };
        let hood = wall_termination(plan.run.termination.kind);
        let stack = |run: &CompiledRun| run.at(airflow, &Draw::LIKELY).stack.pascals();
        Self {
            straight,
            at_45: bend(Angle::from_degrees(45.0)),
            at_90: bend(Angle::from_degrees(90.0)),
            at_outlet: odd_turns(plan).map(|turn| turn.map_or(0.0, bend)),
            rise: stack(&risen) - stack(&level),
            roof: end(TerminationKind::RoofCap) - end(hood),
        }
    }
}

/// The airflow of `plan`'s present run; where it has none, that of a short straight.
pub(super) fn present_airflow(plan: &Plan) -> Airflow {
    let short = || probe(plan, plan.run.outlet.elbow, &[(0.0, PROBE)]);
    let (present, _) = CompiledRun::of(plan);
    [present, short()]
        .iter()
        .find_map(|run| operating_point(run, &Draw::LIKELY).ok())
        .map_or_else(
            || match short().driver {
                Driver::Stated(airflow) => airflow,
                Driver::TypicalBlower => Airflow::ZERO,
            },
            |point| point.evaluation.airflow,
        )
}

/// A rigid run of `legs` (turn in rad, length in m) in a room without anything.
fn probe(plan: &Plan, elbow: Elbow, legs: &[(f64, f64)]) -> CompiledRun {
    let fitting = Fitting { elbow, riser: None };
    let mut bare = Plan {
        walls: Vec::new(),
        openings: Vec::new(),
        obstacles: Vec::new(),
        zones: Vec::new(),
        picture: None,
        ..plan.clone()
    };
    bare.run.outlet = fitting;
    bare.run.points.clear();
    let mut at = bare.dryer.outlet();
    let heading = bare.dryer.outlet_heading();
    let mut turned = heading.y.atan2(heading.x);
    for (index, (turn, length)) in legs.iter().enumerate() {
        turned += turn;
        at = Point::new(at.x + length * turned.cos(), at.y + length * turned.sin());
        bare.run.points.push(RunPoint {
            id: format!("p{index}").as_str().into(),
            position: at,
            duct: Duct::Rigid,
            leg: LegState::default(),
            fitting,
        });
    }
    CompiledRun::of(&bare).0
}
