//! A plan made ready for the inference: the clean run under many draws of its uncertain inputs, cold
//! and hot, with the airflow under every configuration tabulated over the resistance that is added.

use super::clean::clean_plan;
use super::curves::Curves;
use crate::air::{GRAVITY, MoistAir, pressure_at_altitude};
use crate::duct::tables::make_up_air::{ROOM_CELSIUS, ROOM_HUMIDITY};
use crate::numeric::Sobol;
use crate::plan::{ElementId, Energy, Plan};
use crate::system::{CompiledRun, Draw, ElementKind, INPUTS};
use crate::units::{Length, Temperature};

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
    /// m.
    pub rise: f64,
    /// Along the centre line, m.
    pub length: f64,
    /// Of its bore, m.
    pub diameter: f64,
}

/// The run in one state of its air.
#[derive(Debug, Clone)]
pub(super) struct Air {
    /// kg/m³.
    pub density: f64,
    /// What a metre of rise adds where the run is joined, Pa; and where it ends in the room.
    pub stack: f64,
    pub stack_in_room: f64,
    pub draws: Vec<Curves>,
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
    cold: Air,
    hot: Air,
    tables: Vec<Table>,
}

impl Model {
    /// The model of `plan`, its own faults taken away, with `draws` draws; the first of none is the
    /// likely one.
    pub fn of(plan: &Plan, draws: usize) -> Option<Self> {
        let plan = clean_plan(plan);
        let (hot, _) = CompiledRun::of(&plan);
        let mut cold_plan = plan.clone();
        cold_plan.exhaust.temperature = Temperature::from_celsius(ROOM_CELSIUS);
        cold_plan.exhaust.relative_humidity = ROOM_HUMIDITY;
        let (cold, _) = CompiledRun::of(&cold_plan);
        let room = MoistAir::new(
            Temperature::from_celsius(ROOM_CELSIUS),
            pressure_at_altitude(plan.site.altitude),
            ROOM_HUMIDITY,
        );
        let room = room.density().kilograms_per_cubic_metre();
        let in_run = |element: &&crate::system::CompiledElement| {
            !matches!(element.kind, ElementKind::MakeUpAir { .. })
        };
        let elements: Vec<ModelElement> = hot
            .elements
            .iter()
            .filter(in_run)
            .map(|element| ModelElement {
                id: element.id.clone(),
                kind: element.kind,
                area: element.bore.area,
                rise: element.rise.metres(),
                length: element.developed_length.metres(),
                diameter: element.bore.diameter,
            })
            .collect();
        if elements.len() < 2 {
            return None;
        }
        let diameter = plan.run.diameter.metres();
        let air = |run: &CompiledRun| Air {
            density: run.density.kilograms_per_cubic_metre(),
            stack: run.stack(Length::from_metres(1.0), run.density).pascals(),
            stack_in_room: GRAVITY * (run.density.kilograms_per_cubic_metre() - room),
            draws: curves(run, draws, room),
        };
        Some(Self {
            elements,
            outlet_area: core::f64::consts::FRAC_PI_4 * diameter * diameter,
            house: plan.site.house_pressure.pascals(),
            is_gas: plan.dryer.energy == Energy::Gas,
            cold: air(&cold),
            hot: air(&hot),
            tables: Vec::new(),
        })
    }

    pub const fn air(&self, hot: bool) -> &Air {
        if hot { &self.hot } else { &self.cold }
    }

    /// The pressure, Pa, that stands against the blower whatever the airflow.
    pub fn constant(&self, setting: Setting, draw: &Curves) -> f64 {
        let air = self.air(setting.hot);
        let end = setting.open.unwrap_or(self.elements.len());
        let rise = self.rise(0, end);
        if setting.open.is_some() {
            return air.stack_in_room * rise;
        }
        let flap = if setting.flap_held { 0.0 } else { draw.flap };
        air.stack * rise + flap - self.house
    }

    /// m, from one place to another.
    pub fn rise(&self, from: usize, to: usize) -> f64 {
        self.elements[from..to]
            .iter()
            .map(|element| element.rise)
            .sum()
    }

    /// What one velocity pressure in an area is, Pa per (m³/s)².
    pub fn unit(&self, hot: bool, area: f64) -> f64 {
        self.air(hot).density / 2.0 / (area * area)
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
        let outlet = self.unit(setting.hot, self.outlet_area);
        if let Some(place) = setting.open {
            let exit = self.unit(setting.hot, self.area_before(place));
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
        let unit = self.unit(setting.hot, self.outlet_area);
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

#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
fn curves(run: &CompiledRun, draws: usize, room: f64) -> Vec<Curves> {
    if draws == 0 {
        return vec![Curves::of(run, &Draw::LIKELY, room, [0.5; 3])];
    }
    let half_a_cell = 0.5 / draws as f64;
    let points = Sobol::default().take(draws);
    points
        .map(|point| {
            let mut quantiles = [0.0; INPUTS];
            for (quantile, at) in quantiles.iter_mut().zip(point) {
                *quantile = at + half_a_cell;
            }
            let within = [0, 1, 2].map(|more| point[INPUTS + more] + half_a_cell);
            Curves::of(run, &Draw::at(quantiles), room, within)
        })
        .collect()
}
