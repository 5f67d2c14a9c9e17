//! A plan made ready for the inference: the clean run under many draws of its uncertain inputs, cold
//! and hot, with the airflow under every configuration tabulated over the resistance that is added.

use super::clean::clean_plan;
use super::curves::Curves;
use super::run_air::{RunAir, in_run};
use super::temperatures::Temperatures;
use crate::air::{MoistAir, pressure_at_altitude};
use crate::duct::tables::make_up_air::{ROOM_CELSIUS, ROOM_HUMIDITY};
use crate::plan::{ElementId, Energy, Phase, Plan};
use crate::system::{ElementKind, exhaust_in};
use crate::units::Temperature;

/// How many draws the inference rests on.
pub(super) const DRAWS: usize = 96;
/// Added resistances at which the airflow is tabulated, in velocity pressures of the outlet: none,
/// then from the first upward by the square root of two.
const STEPS: usize = 26;
/// Of the computation.
const FIRST_STEP: f64 = 0.25;
/// Of the computation.
#[allow(clippy::cast_precision_loss, reason = "a few steps")]
const LAST: f64 = (STEPS - 1) as f64;

/// An element of the clean run, make-up air left out.
#[derive(Debug, Clone)]
pub(super) struct ModelElement {
    pub id: ElementId,
    pub kind: ElementKind,
    /// Of its bore, m².
    pub area: f64,
    /// Along the centre line, m.
    pub length: f64,
    /// Of its bore, m.
    pub diameter: f64,
}

/// How the run is set up for a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Setting {
    pub hot: bool,
    /// The place before which the run is open.
    pub open: Option<usize>,
    pub flap_held: bool,
    pub door_open: bool,
}

/// A setting with its table: one over the square of the airflow, by added resistance, for each draw.
#[derive(Debug, Clone)]
struct Table {
    setting: Setting,
    rows: Vec<[f64; STEPS]>,
}

/// The plan made ready.
#[derive(Debug, Clone)]
pub(super) struct Model {
    pub elements: Vec<ModelElement>,
    /// At the dryer's outlet, m².
    pub outlet_area: f64,
    /// The house's pressure less the outdoors', Pa.
    pub house: f64,
    /// Whether the dryer burns gas.
    pub is_gas: bool,
    cold: RunAir,
    hot: RunAir,
    tables: Vec<Table>,
    /// The plans that the two airs are of, cold and hot, and their temperatures once they are asked
    /// for.
    plans: [Plan; 2],
    temperatures: [Option<Temperatures>; 2],
}

impl Model {
    /// The model of `plan`, its own faults taken away, with `draws` draws; the first of none is the
    /// likely one.
    pub fn of(plan: &Plan, draws: usize) -> Option<Self> {
        let mut hot_plan = clean_plan(plan);
        if hot_plan.exhaust.phase == Some(Phase::NoHeat) {
            // The plan shows a cycle without heat: one with heat is taken to be at its drying.
            hot_plan.exhaust = exhaust_in(Phase::Drying, hot_plan.exhaust);
        }
        let mut cold_plan = hot_plan.clone();
        cold_plan.exhaust.temperature = Temperature::from_celsius(ROOM_CELSIUS);
        cold_plan.exhaust.relative_humidity = ROOM_HUMIDITY;
        let room = MoistAir::new(
            Temperature::from_celsius(ROOM_CELSIUS),
            pressure_at_altitude(plan.site.altitude),
            ROOM_HUMIDITY,
        );
        let room = room.density().kilograms_per_cubic_metre();
        let (hot, run) = RunAir::of(&hot_plan, draws, room);
        let elements: Vec<ModelElement> = in_run(&run)
            .map(|(_, element)| ModelElement {
                id: element.id.clone(),
                kind: element.kind,
                area: element.bore.area,
                length: element.developed_length.metres(),
                diameter: element.bore.diameter,
            })
            .collect();
        if elements.len() < 2 {
            return None;
        }
        let diameter = plan.run.diameter.metres();
        Some(Self {
            elements,
            outlet_area: core::f64::consts::FRAC_PI_4 * diameter * diameter,
            house: plan.site.house_pressure.pascals(),
            is_gas: plan.dryer.energy == Energy::Gas,
            cold: RunAir::of(&cold_plan, draws, room).0,
            hot,
            tables: Vec::new(),
            plans: [cold_plan, hot_plan],
            temperatures: [None, None],
        })
    }

    pub const fn air(&self, hot: bool) -> &RunAir {
        if hot { &self.hot } else { &self.cold }
    }

    /// The temperatures in a state of the air, where they were asked for.
    pub const fn temperatures(&self, hot: bool) -> Option<&Temperatures> {
        self.temperatures[hot as usize].as_ref()
    }

    /// Works the temperatures out; whether the plan's air has any but one.
    pub fn take_temperatures(&mut self, hot: bool) -> bool {
        let at = usize::from(hot);
        if self.temperatures[at].is_none() {
            self.temperatures[at] = Temperatures::of(&self.plans[at], hot);
        }
        self.temperatures[at].is_some()
    }

    /// The pressure, Pa, that stands against the blower whatever the airflow.
    pub fn constant(&self, setting: Setting, draw: &Curves) -> f64 {
        let air = self.air(setting.hot);
        let end = setting.open.unwrap_or(self.elements.len());
        let stack = air.stack(0, end, setting.open.is_none());
        if setting.open.is_some() {
            return stack;
        }
        let flap = if setting.flap_held { 0.0 } else { draw.flap };
        stack + flap - self.house
    }

    /// What one velocity pressure at the outlet is, Pa per (m³/s)².
    pub fn unit(&self, hot: bool) -> f64 {
        self.air(hot).density / 2.0 / (self.outlet_area * self.outlet_area)
    }

    /// The same at the joint before a place: at one mass flow it goes with the air's volume.
    pub fn unit_before(&self, hot: bool, place: usize) -> f64 {
        let (air, area) = (self.air(hot), self.area_before(place));
        air.density / 2.0 / (area * area) * air.at_joint(place)
    }

    /// The same in the middle of an element.
    pub fn unit_within(&self, hot: bool, place: usize) -> f64 {
        let (air, area) = (self.air(hot), self.elements[place].area);
        air.density / 2.0 / (area * area) * air.within(place)
    }

    /// The duct's area at the joint before `place`, m².
    pub fn area_before(&self, place: usize) -> f64 {
        match place.checked_sub(1).map(|before| &self.elements[before]) {
            None => self.outlet_area,
            Some(before) => match (before.kind, self.elements.get(place)) {
                (ElementKind::AreaChange { .. }, Some(next)) => next.area,
                _ => before.area,
            },
        }
    }

    /// The resistance against the blower, make-up air and the exit included and the velocity pressure
    /// at the outlet taken off, Pa per (m³/s)².
    pub fn resistance(&self, setting: Setting, draw: &Curves, airflow: f64) -> f64 {
        let outlet = self.unit(setting.hot);
        if let Some(place) = setting.open {
            let exit = self.unit_before(setting.hot, place);
            return draw.before(place, airflow) + exit - outlet;
        }
        let room = if setting.door_open { 0.0 } else { draw.make_up };
        draw.before(self.elements.len(), airflow) + room - outlet
    }

    /// The number of a setting's table, which is made where there is none yet.
    pub fn tabulate(&mut self, setting: Setting) -> usize {
        if let Some(number) = self
            .tables
            .iter()
            .position(|table| table.setting == setting)
        {
            return number;
        }
        let unit = self.unit(setting.hot);
        let rows = self.air(setting.hot).draws.iter().map(|draw| {
            let constant = self.constant(setting, draw);
            let mut row = [0.0; STEPS];
            let mut airflow = draw.free_airflow * 1.5;
            for (step, inverse) in row.iter_mut().enumerate() {
                let added = ADDED[step] * unit;
                airflow = draw.airflow(constant, 1.0, airflow, |airflow| {
                    self.resistance(setting, draw, airflow) + added
                });
                *inverse = 1.0 / (airflow * airflow);
            }
            row
        });
        let rows = rows.collect();
        self.tables.push(Table { setting, rows });
        self.tables.len() - 1
    }

    /// The airflow, m³/s, with so much resistance added, in velocity pressures of the outlet.
    pub fn airflow(&self, table: usize, draw: usize, added: f64) -> f64 {
        let row = &self.tables[table].rows[draw];
        if added <= 0.0 {
            return row[0].sqrt().recip();
        }
        let at = (1.0 + 2.0 * (added / FIRST_STEP).log2()).clamp(0.0, LAST);
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between nought and the number of steps"
        )]
        let step = (at as usize).min(STEPS - 2);
        let (from, to) = (ADDED[step], ADDED[step + 1]);
        let share = (added - from) / (to - from);
        (row[step] + (row[step + 1] - row[step]) * share)
            .sqrt()
            .recip()
    }

    /// Whether there is a joint that can be reached before the element at `place`.
    pub fn has_joint(&self, place: usize) -> bool {
        let Some(here) = self.elements.get(place) else {
            return false;
        };
        let before = place
            .checked_sub(1)
            .map(|before| self.elements[before].kind);
        let hidden = |kind: ElementKind| matches!(kind, ElementKind::ConcealedElbows { .. });
        let is_change = |kind: ElementKind| matches!(kind, ElementKind::AreaChange { .. });
        place > 0
            && !hidden(here.kind)
            && !before.is_some_and(|kind| hidden(kind) || is_change(kind))
    }

    /// Whether a tap before `place` lies close behind a bend, whose swirl it reads.
    pub fn is_near_bend(&self, place: usize) -> bool {
        use crate::duct::tables::velocity_points::NEAR_BEND_DIAMETERS;
        let mut way = 0.0;
        for element in self.elements[..place].iter().rev() {
            match element.kind {
                ElementKind::Straight { .. } => way += element.length,
                ElementKind::AreaChange { .. } => {}
                _ => return true,
            }
            if way > NEAR_BEND_DIAMETERS * element.diameter {
                return false;
            }
        }
        false
    }
}

/// The elements of `plan` that begin at a joint that can be reached, in run order.
pub fn reachable_joints(plan: &Plan) -> Vec<ElementId> {
    let Some(model) = Model::of(plan, 0) else {
        return Vec::new();
    };
    let elements = model.elements.iter().enumerate();
    elements
        .filter(|(place, _)| model.has_joint(*place))
        .map(|(_, element)| element.id.clone())
        .collect()
}

/// The added resistance at each step. Of the computation.
const ADDED: [f64; STEPS] = {
    let mut added = [0.0; STEPS];
    let mut step = 1;
    while step < STEPS {
        added[step] = match step {
            1 => FIRST_STEP,
            2 => FIRST_STEP * core::f64::consts::SQRT_2,
            _ => added[step - 2] * 2.0,
        };
        step += 1;
    }
    added
};
