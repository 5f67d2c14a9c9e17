//! A run made ready for evaluation: what hangs on the drawing alone is worked out once, so that an
//! evaluation at one airflow is a few multiplications an element.

use super::bore::{Bore, State};
use super::compile::Compiler;
use super::element::CompiledElement;
use super::heat::HeatRun;
use super::input::{INPUTS, Values, coefficients};
use super::law::Law;
use super::{AirAlong, Draw, Finding};
use crate::air::{GRAVITY, MoistAir, pressure_at_altitude};
use crate::duct::orifice;
use crate::plan::{AlongRun, Flow, Input, Plan};
use crate::source::Coefficient;
use crate::units::{Airflow, Density, Length, Pressure, Temperature, Velocity, Viscosity};

/// What moves the air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Driver {
    /// The assumed blower.
    TypicalBlower,
    /// An airflow that is stated.
    Stated(Airflow),
}

/// A run and its air, ready to be evaluated.
#[derive(Debug, Clone, PartialEq)]
pub struct CompiledRun {
    /// The elements in the order in which the air meets them.
    pub elements: Vec<CompiledElement>,
    /// What moves the air.
    pub driver: Driver,
    /// Density of the exhaust air.
    pub density: Density,
    /// Viscosity of the exhaust air.
    pub viscosity: Viscosity,
    /// Density of the air outdoors.
    pub outdoor_density: Density,
    /// Height of the termination above the outlet.
    pub rise: Length,
    /// Inside diameter at the dryer's outlet.
    pub diameter: Length,
    /// The house's pressure less the outdoors'.
    pub house_pressure: Pressure,
    /// The uncertain inputs, in the order of `plan::Input`.
    pub coefficients: [Coefficient; INPUTS],
    /// What heat needs; none where the air keeps its temperature.
    pub(super) heat: Option<HeatRun>,
}

/// The air on its way through one element.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Passage {
    /// Its state there; at a leak, that of the air past the joint.
    pub state: State,
    /// What of it passes, at the outlet's density.
    pub airflow: Airflow,
    /// What it loses of its total pressure.
    pub loss: Pressure,
    /// What the air's weight adds to the pressure that drives it: it lifts where it is warm.
    pub stack: Pressure,
    /// What of it leaves by a leaking joint; negative where a draught draws air in.
    pub escaped: Airflow,
}

/// A run at one airflow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evaluation {
    /// The airflow that the dryer sends out, at the outlet's density.
    pub airflow: Airflow,
    /// What of it reaches the termination; the rest leaves by leaking joints.
    pub airflow_at_end: Airflow,
    /// Mean velocity at the outlet.
    pub velocity: Velocity,
    /// Velocity pressure at the outlet.
    pub velocity_pressure: Pressure,
    /// Reynolds number at the outlet.
    pub reynolds: f64,
    /// Friction factor of rigid duct at the outlet.
    pub friction_factor: f64,
    /// Sum of the elements' losses, that of make-up air among them.
    pub loss: Pressure,
    /// What the weight of the air adds (a warm riser takes off).
    pub stack: Pressure,
    /// Total pressure at the dryer's outlet, against the room that the dryer draws its air from.
    pub total_pressure: Pressure,
    /// Back pressure: static pressure at the dryer's outlet against that room, as a gauge whose
    /// other side is open to the room reads it.
    pub back_pressure: Pressure,
}

impl CompiledRun {
    /// Compiles the run of `plan` and lists what is wrong with its geometry.
    pub fn of(plan: &Plan) -> (Self, Vec<Finding>) {
        let pressure = pressure_at_altitude(plan.site.altitude);
        let air = |temperature: Temperature, humidity: f64| {
            MoistAir::new(temperature, pressure, humidity)
        };
        let exhaust = air(plan.exhaust.temperature, plan.exhaust.relative_humidity);
        let outdoors = air(
            plan.site.outdoor_temperature,
            plan.site.outdoor_relative_humidity,
        );
        let (compiled, path) = Compiler::compile(plan, pressure);
        let heat = (plan.exhaust.along_run == AlongRun::Cools)
            .then(|| HeatRun::of(plan, &path, &compiled.elements, &exhaust, pressure))
            .flatten();
        let run = Self {
            heat,
            elements: compiled.elements,
            driver: match plan.flow {
                Flow::TypicalBlower {} => Driver::TypicalBlower,
                Flow::StatedAirflow { airflow } => Driver::Stated(airflow),
            },
            density: exhaust.density(),
            viscosity: exhaust.viscosity(),
            outdoor_density: outdoors.density(),
            rise: compiled.rise,
            diameter: plan.run.diameter,
            house_pressure: plan.site.house_pressure,
            coefficients: coefficients(&plan.overrides),
        };
        (run, compiled.findings)
    }

    /// The run with so much air at its termination, with the inputs of `draw`: that is all the air
    /// where no joint leaks. The air keeps its temperature. Allocates nothing.
    pub fn at(&self, airflow_at_end: Airflow, draw: &Draw) -> Evaluation {
        self.with(airflow_at_end, &self.values(draw), &self.air())
    }

    /// The exhaust everywhere.
    pub(super) fn air(&self) -> AirAlong {
        AirAlong::constant(self.density, self.viscosity)
    }

    /// Dew point of the exhaust, where its moisture is followed.
    pub fn dew_point(&self) -> Option<Temperature> {
        let dew_point = self.heat.as_ref()?.dry_above;
        dew_point
            .is_finite()
            .then(|| Temperature::from_celsius(dew_point))
    }

    /// The inputs' values in `draw`.
    pub(super) fn values(&self, draw: &Draw) -> Values {
        Values::of(draw, &self.coefficients)
    }

    /// The run with so much air at its termination, with these values, and with the air as it is
    /// along the run.
    pub(super) fn with(
        &self,
        airflow_at_end: Airflow,
        values: &Values,
        air: &AirAlong,
    ) -> Evaluation {
        let (mut loss, mut stack) = (Pressure::ZERO, Pressure::ZERO);
        let (airflow, outlet) = self.each_from_end(airflow_at_end, values, air, |_, passage| {
            loss += passage.loss;
            stack += passage.stack;
        });
        let total_pressure = loss + stack - self.house_pressure;
        Evaluation {
            airflow,
            airflow_at_end,
            velocity: outlet.velocity,
            velocity_pressure: outlet.velocity_pressure,
            reynolds: outlet.reynolds,
            friction_factor: outlet.friction_factor,
            loss,
            stack,
            total_pressure,
            back_pressure: total_pressure - outlet.velocity_pressure,
        }
    }

    /// Gives `take` each element from the termination back to the outlet; returns the airflow and the
    /// air's state at the outlet. The way back is the one on which each leak's pressure is known
    /// before its airflow. A bore's state is worked out once for all elements in a row that share it,
    /// and fitted to each one's own air.
    pub(super) fn each_from_end(
        &self,
        airflow_at_end: Airflow,
        values: &Values,
        air: &AirAlong,
        mut take: impl FnMut(&CompiledElement, Passage),
    ) -> (Airflow, State) {
        let state = |bore: &Bore, airflow: Airflow| {
            bore.state(airflow, self.density, air.viscosity, values)
        };
        let outlet_bore = Bore::round(self.diameter);
        let mut bore = self.elements.last().map_or(&outlet_bore, |end| &end.bore);
        let mut airflow = airflow_at_end;
        let mut here = state(bore, airflow);
        // Losses and the air's weight from here to the end.
        let mut beyond = Pressure::ZERO;
        for (index, element) in self.elements.iter().enumerate().rev() {
            let local = air.at(index);
            if element.bore != *bore {
                bore = &element.bore;
                here = state(bore, airflow);
            }
            let own = here.with_air(local);
            let mut passage = Passage {
                state: own,
                airflow,
                loss: element.law.loss(airflow, &own, values),
                stack: self.stack(element.rise, local.density),
                escaped: Airflow::ZERO,
            };
            if let Law::Leak { free_area } = element.law {
                // Against the house around the joint, with the velocity of the air past it.
                let gauge = beyond - self.house_pressure - own.velocity_pressure;
                let discharge = values.get(Input::LeakDischarge);
                let escaped = orifice::airflow(gauge, free_area, discharge, local.density);
                passage.escaped = escaped / local.expansion;
                airflow += passage.escaped;
                here = state(bore, airflow);
            }
            beyond += passage.loss;
            beyond += passage.stack;
            take(element, passage);
        }
        if outlet_bore != *bore {
            here = state(&outlet_bore, airflow);
        }
        (airflow, here)
    }

    /// Whether all the air that the dryer sends out reaches the termination.
    pub(super) fn is_tight(&self) -> bool {
        !self
            .elements
            .iter()
            .any(|element| matches!(element.law, Law::Leak { .. }))
    }

    /// The coefficient that an element's loss rests on at `state`, with its source.
    /// `likely` are the run's likely values.
    pub(super) fn grounds(
        &self,
        element: &CompiledElement,
        state: &State,
        likely: &Values,
    ) -> Coefficient {
        let roughness = element.bore.roughness;
        let coefficients = &self.coefficients;
        element.law.grounds(state, coefficients, likely, roughness)
    }

    /// The loss of each element with so much air at the termination, in the order in which the air
    /// meets them, in air that is known along the run.
    pub fn losses_in(&self, airflow_at_end: Airflow, draw: &Draw, air: &AirAlong) -> Vec<Pressure> {
        let mut losses = Vec::with_capacity(self.elements.len());
        let values = self.values(draw);
        self.each_from_end(airflow_at_end, &values, air, |_, passage| {
            losses.push(passage.loss);
        });
        losses.reverse();
        losses
    }

    /// An input's value in `draw`.
    pub fn value(&self, input: Input, draw: &Draw) -> f64 {
        draw.of(input, &self.coefficients[input as usize])
    }

    /// -g dz (rho_outdoor - rho_duct): what a column of air adds at its foot.
    pub fn stack(&self, rise: Length, density: Density) -> Pressure {
        let lighter = (self.outdoor_density - density).kilograms_per_cubic_metre();
        Pressure::from_pascals(-GRAVITY * rise.metres() * lighter)
    }
}
