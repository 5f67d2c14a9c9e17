//! A house with something wrong in its dryer's run, for the fault-finder to be tried on: runs, faults
//! and gauges drawn at random, and what each test would read.
//!
//! It takes the clean run's losses from `system` and adds each fault by formulas of its own; of
//! `diagnosis` it knows the names of tests and causes alone.

use crate::fault_cases::{Chance, Set, TrueFault, other_faults, random_plan, stated_faults};
use elbowroom::diagnosis::{CauseKind, Test};
use elbowroom::plan::{
    Against, Conditions, ElementId, Entry, Found, Input, Look, Measured, Pattern, Plan, Reading,
    Spot, TerminationKind,
};
use elbowroom::system::{AirAlong, CompiledRun, Draw, ElementKind, INPUTS};
use elbowroom::units::{Airflow, Pressure, Temperature, Velocity};

/// The density of fan curves, kg/m³ (ISO 5801).
const STANDARD: f64 = 1.2;

pub struct World {
    pub plan: Plan,
    pub faults: Vec<TrueFault>,
    run: CompiledRun,
    draw: Draw,
    /// Free airflow, m³/s; static rise, Pa, at 1.2 kg/m³; exponent.
    blower: (f64, f64, f64),
    /// What swirl does at each tap, in velocity pressures.
    swirl: Vec<f64>,
    /// Mean over centre-line velocity.
    centre: f64,
    chance: Chance,
}

impl World {
    pub fn of(set: Set, seed: u64) -> Self {
        let mut chance = Chance::of(seed);
        let plan = random_plan(&mut chance);
        Self::on(plan, set, chance)
    }

    pub fn on(plan: Plan, set: Set, mut chance: Chance) -> Self {
        let (run, _) = CompiledRun::of(&plan);
        let mut quantiles = [0.0; INPUTS];
        for quantile in &mut quantiles {
            *quantile = chance.share();
        }
        let draw = Draw::at(quantiles);
        let value = |input| run.value(input, &draw);
        let blower = if set == Set::Stated {
            (
                value(Input::BlowerFreeAirflow),
                value(Input::BlowerShutOffPressure),
                value(Input::BlowerExponent),
            )
        } else {
            // As likely at the ends as in the middle, and of another shape.
            (
                chance.between(0.066, 0.100),
                chance.between(200.0, 500.0),
                chance.between(1.3, 3.0),
            )
        };
        let swirl = (0..=run.elements.len())
            .map(|_| chance.between(-0.25, 0.25))
            .collect();
        let centre = 0.75 + 0.1 * (chance.share() + chance.share());
        let faults = match set {
            Set::Stated => stated_faults(&run, &mut chance),
            Set::Other => other_faults(&run, &mut chance, (0.25, 0.60)),
            Set::Slight => other_faults(&run, &mut chance, (0.60, 0.85)),
        };
        Self {
            plan,
            faults,
            run,
            draw,
            blower,
            swirl,
            centre,
            chance,
        }
    }

    /// At likely inputs, with a gauge that shows what is there.
    pub fn ideal(plan: Plan, faults: Vec<TrueFault>) -> Self {
        let mut cold = plan.clone();
        cold.exhaust.temperature = Temperature::from_celsius(20.0);
        cold.exhaust.relative_humidity = 0.5;
        let (run, _) = CompiledRun::of(&cold);
        Self {
            plan,
            faults,
            swirl: vec![0.0; run.elements.len() + 1],
            run,
            draw: Draw::LIKELY,
            blower: (0.080, 320.0, 2.0),
            centre: 0.85,
            chance: Chance::of(7),
        }
    }

    pub fn element(&self, place: usize) -> &ElementId {
        &self.run.elements[place].id
    }

    pub fn places(&self) -> usize {
        self.run.elements.len()
    }

    /// What a test shows, as it is entered.
    pub fn entry(&mut self, test: &Test) -> Entry {
        let mut conditions = Conditions::PLAIN;
        let mut at = Spot::Outlet;
        let mut is_velocity = false;
        match test {
            Test::LookInto(element) => return self.look(element),
            Test::ReadAtOutlet | Test::CleanScreen => {}
            Test::OpenDoor => conditions.door_open = true,
            Test::HoldFlap => conditions.flap_held = true,
            Test::ReadVelocity => is_velocity = true,
            Test::ReadAtJoint(element) => at = Spot::Before(element.clone()),
            Test::OpenJoint(element) => {
                conditions.open_joint = Some(Spot::Before(element.clone()));
            }
            Test::OpenOutlet => {
                conditions.open_joint = Some(Spot::Outlet);
                is_velocity = true;
            }
        }
        let measured = if is_velocity {
            self.velocity(&conditions)
        } else {
            self.pressure(&conditions, &at)
        };
        Entry::Reading(Reading {
            at,
            measured,
            conditions,
        })
    }

    fn index(&self, spot: &Spot) -> usize {
        match spot {
            Spot::Outlet => 0,
            Spot::Hood => self.run.elements.len(),
            Spot::Before(id) => {
                let mut elements = self.run.elements.iter();
                elements.position(|element| element.id == *id).unwrap()
            }
        }
    }

    fn look(&mut self, element: &ElementId) -> Entry {
        let place = self.index(&Spot::Before(element.clone()));
        let in_place = |fault: &&TrueFault| {
            fault.place == place
                && matches!(
                    fault.kind,
                    CauseKind::Blockage | CauseKind::CrushedFlex | CauseKind::FlapStuck
                )
        };
        let is_there = self.faults.iter().find(in_place).is_some();
        let shows = if is_there { 0.97 } else { 0.01 };
        let found = if self.chance.share() < shows {
            Found::Blocked
        } else {
            Found::Clear
        };
        Entry::Look(Look {
            at: element.clone(),
            found,
        })
    }

    /// Mends everything at an element.
    pub fn clean(&mut self, element: &ElementId) {
        let place = self.index(&Spot::Before(element.clone()));
        self.faults.retain(|fault| fault.place != place);
    }

    fn pressure(&mut self, conditions: &Conditions, at: &Spot) -> Measured {
        let place = self.index(at);
        let open = conditions.open_joint.as_ref().map(|spot| self.index(spot));
        let (shown, q) = self.truth(conditions, open, place);
        let swirl = if self.is_near_bend(place) {
            self.swirl[place] * q
        } else {
            0.0
        };
        let noise = if matches!(self.draw, draw if draw == Draw::LIKELY) {
            0.0
        } else {
            self.chance.normal()
        };
        // To the last digit of the gauge, 1 Pa.
        let pascals = (shown + swirl + noise).round();
        Measured::StaticPressure {
            pressure: Pressure::from_pascals(pascals),
            against: Against::Room,
            resolution: Pressure::from_pascals(1.0),
            tolerance: Pressure::from_pascals(2.0),
        }
    }

    fn velocity(&mut self, conditions: &Conditions) -> Measured {
        let open = conditions.open_joint.as_ref().map(|spot| self.index(spot));
        let airflow = self.airflow(conditions, open).0;
        let mean = airflow / self.area(0);
        let noise = 0.15 * self.chance.normal();
        let centre = ((mean / self.centre + noise) * 10.0).round() / 10.0;
        Measured::Velocity {
            points: vec![Velocity::from_metres_per_second(centre)],
            pattern: Pattern::CentreLine,
            resolution: Velocity::from_metres_per_second(0.1),
            tolerance: Velocity::from_metres_per_second(0.3),
        }
    }

    fn area(&self, place: usize) -> f64 {
        self.run.elements[place.min(self.run.elements.len() - 1)]
            .bore
            .area
    }

    fn is_near_bend(&self, place: usize) -> bool {
        let mut way = 0.0;
        for element in self.run.elements[..place].iter().rev() {
            let ElementKind::Straight { length, .. } = element.kind else {
                return true;
            };
            way += length.metres();
            if way > 3.0 * element.bore.diameter {
                return false;
            }
        }
        false
    }

    /// Pressures lost from a place on, up to the end or an opening, with so much air.
    fn lost(&self, open: Option<usize>, held: bool, from: usize, airflow: f64) -> f64 {
        let end = open.unwrap_or(self.run.elements.len());
        let airflow_at_end = Airflow::from_cubic_metres_per_second(airflow);
        let air = AirAlong::constant(self.run.density, self.run.viscosity);
        let all = self.run.losses_in(airflow_at_end, &self.draw, &air);
        let mut lost: f64 = all[from.min(end)..end]
            .iter()
            .map(|loss| loss.pascals())
            .sum();
        let speed = |place: usize| airflow / self.area(place);
        let q = |place: usize| self.density() / 2.0 * speed(place).powi(2);
        let is_hood = self.plan.run.termination.kind == TerminationKind::WallHood;
        if open.is_some() {
            // The bare end loses its jet.
            lost += q(end.saturating_sub(1));
        } else if held && is_hood {
            lost -= self.run.value(Input::FlapWeight, &self.draw);
        }
        for fault in &self.faults {
            let is_place = matches!(
                fault.kind,
                CauseKind::Blockage | CauseKind::CrushedFlex | CauseKind::FlapStuck
            );
            let is_held = fault.kind == CauseKind::FlapStuck && held;
            if !is_place || is_held || fault.place < from || fault.place >= end {
                continue;
            }
            let free = fault.severity;
            // Idelchik's orifice in a duct, by hand.
            let root = (1.0 + 0.707 * (1.0 - free).sqrt() - free) / free;
            let k = if fault.place + 1 == self.run.elements.len() {
                (1.0 + root).powi(2) - 1.0
            } else {
                root * root
            };
            lost += k * self.run.value(Input::Blockage, &self.draw) * q(fault.place);
        }
        lost
    }

    fn density(&self) -> f64 {
        self.run.density.kilograms_per_cubic_metre()
    }

    /// Airflow at the outlet and past a leak, m³/s.
    pub fn airflow(&self, conditions: &Conditions, open: Option<usize>) -> (f64, f64) {
        let speed = self.fault(CauseKind::Blower).unwrap_or(1.0);
        let (free, rise, exponent) = self.blower;
        let blower = |airflow: f64| {
            let share = (airflow / (free * speed)).max(0.0);
            rise * speed * speed * self.density() / STANDARD * (1.0 - share.powf(exponent))
        };
        let q = |airflow: f64| self.density() / 2.0 * (airflow / self.area(0)).powi(2);
        let (mut low, mut high) = (1e-4, 0.2);
        for _ in 0..48 {
            let at_end = f64::midpoint(low, high);
            let (whole, total) = self.total(conditions, open, at_end);
            if blower(whole) > total - q(whole) {
                low = at_end;
            } else {
                high = at_end;
            }
        }
        let at_end = f64::midpoint(low, high);
        (self.total(conditions, open, at_end).0, at_end)
    }

    fn fault(&self, kind: CauseKind) -> Option<f64> {
        let fault = self.faults.iter().find(|fault| fault.kind == kind)?;
        Some(fault.severity)
    }

    /// What the room is under the open air, Pa.
    fn starved(&self, conditions: &Conditions, open: Option<usize>, airflow: f64) -> f64 {
        let shut = !conditions.door_open && open.is_none();
        let area = self.fault(CauseKind::RoomStarved).filter(|_| shut);
        area.map_or(0.0, |area| {
            let speed = airflow / (self.run.value(Input::MakeUpDischarge, &self.draw) * area);
            self.density() / 2.0 * speed * speed
        })
    }

    /// The whole airflow where so much reaches the end, and the total pressure at the outlet
    /// against the room.
    fn total(&self, conditions: &Conditions, open: Option<usize>, at_end: f64) -> (f64, f64) {
        let end = open.unwrap_or(self.run.elements.len());
        let held = conditions.flap_held;
        let whole = self.lost(open, held, 0, at_end) + self.stack(open, 0);
        let leak = self
            .faults
            .iter()
            .find(|fault| fault.kind == CauseKind::Leak);
        match leak.filter(|leak| leak.place < end) {
            None => (at_end, whole + self.starved(conditions, open, at_end)),
            Some(leak) => {
                let beyond =
                    self.lost(open, held, leak.place, at_end) + self.stack(open, leak.place);
                let q = self.density() / 2.0 * (at_end / self.area(leak.place.max(1) - 1)).powi(2);
                let gauge = beyond - q;
                let speed = (2.0 * gauge.abs() / self.density()).sqrt() * gauge.signum();
                let out = self.run.value(Input::LeakDischarge, &self.draw) * leak.severity * speed;
                let airflow = (at_end + out).max(0.0);
                let before =
                    self.lost(open, held, 0, airflow) - self.lost(open, held, leak.place, airflow);
                (airflow, beyond + before)
            }
        }
    }

    /// What the draught of a rise adds: next to nothing in a run without heat.
    fn stack(&self, open: Option<usize>, from: usize) -> f64 {
        if open.is_some() {
            return 0.0;
        }
        let rise = self.run.elements[from..]
            .iter()
            .map(|element| element.rise)
            .sum();
        self.run.stack(rise, self.run.density).pascals()
    }

    /// Static pressure against the room at a place, and the velocity pressure there.
    fn truth(&self, conditions: &Conditions, open: Option<usize>, place: usize) -> (f64, f64) {
        let (whole, at_end) = self.airflow(conditions, open);
        let leak = self
            .faults
            .iter()
            .find(|fault| fault.kind == CauseKind::Leak);
        let before_leak = leak.is_none_or(|leak| place < leak.place);
        let here = if before_leak { whole } else { at_end };
        let area = self.area(place.max(1) - 1);
        let q = self.density() / 2.0 * (here / area).powi(2);
        if open.is_some_and(|open| place >= open) {
            return (0.0, q);
        }
        let held = conditions.flap_held;
        let mut total = self.lost(open, held, place, at_end)
            + self.stack(open, place)
            + self.starved(conditions, open, at_end);
        if let Some(leak) = leak.filter(|leak| place < leak.place) {
            // Between the place and the leak flows all of it.
            let span = |airflow: f64| {
                self.lost(open, held, place, airflow) - self.lost(open, held, leak.place, airflow)
            };
            let is_in = open.is_none_or(|open| leak.place < open);
            if is_in {
                total += span(whole) - span(at_end);
            }
        }
        (total - q, q)
    }
}
