//! A run made ready for evaluation: what hangs on the drawing alone is worked out once, so that an
//! evaluation at one airflow is a few multiplications an element.

use super::bore::{Bore, State};
use super::compile::Compiler;
use super::element::CompiledElement;
use super::input::{INPUTS, Values, coefficients};
use super::{Draw, Finding};
use crate::air::{MoistAir, pressure_at_altitude};
use crate::plan::{Flow, Plan};
use crate::source::Coefficient;
use crate::units::{Airflow, Density, Length, Pressure, Temperature, Velocity, Viscosity};

/// Standard gravity, m/s². Source: ISO 80000-3.
const GRAVITY: f64 = 9.806_65;

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
}

/// A run at one airflow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evaluation {
    /// The airflow, at the outlet's density.
    pub airflow: Airflow,
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
        let compiled = Compiler::compile(plan, pressure);
        let run = Self {
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

    /// The run at `airflow` with the inputs of `draw`. Allocates nothing.
    pub fn at(&self, airflow: Airflow, draw: &Draw) -> Evaluation {
        let mut loss = Pressure::ZERO;
        let outlet = self.each_loss(airflow, draw, |_, _, element_loss| loss += element_loss);
        let stack = self.stack();
        let total_pressure = loss + stack - self.house_pressure;
        Evaluation {
            airflow,
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

    /// Gives `take` each element in run order, the air's state in it and its loss; returns the state
    /// at the outlet. A bore's state is worked out once for all elements in a row that share it.
    pub(super) fn each_loss(
        &self,
        airflow: Airflow,
        draw: &Draw,
        mut take: impl FnMut(&CompiledElement, &State, Pressure),
    ) -> State {
        let values = Values::of(draw, &self.coefficients);
        let state = |bore: &Bore| bore.state(airflow, self.density, self.viscosity, &values);
        let outlet_bore = Bore::round(self.diameter);
        let outlet = state(&outlet_bore);
        let (mut bore, mut here) = (&outlet_bore, outlet);
        for element in &self.elements {
            if element.bore != *bore {
                (bore, here) = (&element.bore, state(&element.bore));
            }
            take(
                element,
                &here,
                element.law.loss(airflow, &here, &values, draw),
            );
        }
        outlet
    }

    /// The coefficient that an element's loss rests on at `state`, with its source.
    pub(super) fn grounds(&self, element: &CompiledElement, state: &State) -> Coefficient {
        element
            .law
            .grounds(state, &self.coefficients, element.bore.roughness)
    }

    /// -g dz (rho_outdoor - rho_duct): what the column of exhaust adds at the outlet.
    fn stack(&self) -> Pressure {
        let lighter = (self.outdoor_density - self.density).kilograms_per_cubic_metre();
        Pressure::from_pascals(-GRAVITY * self.rise.metres() * lighter)
    }
}
