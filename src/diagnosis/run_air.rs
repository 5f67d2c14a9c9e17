//! The clean run in one state of its air: cold, or as the dryer heats it. Where the plan's air cools
//! on its way, the temperatures of the likely clean run serve every draw and every fault.

use super::curves::Curves;
use crate::air::GRAVITY;
use crate::numeric::Sobol;
use crate::plan::Plan;
use crate::system::{
    AirAlong, CompiledElement, CompiledRun, Draw, ElementKind, HeatProfile, INPUTS, operating_point,
};

/// The run's air. Places are those of the model: make-up air is none.
#[derive(Debug, Clone)]
pub(super) struct RunAir {
    /// At the dryer's outlet, kg/m³.
    pub density: f64,
    /// What the air's weight adds up to each place, Pa: against the open air, and against the room.
    stack: Vec<f64>,
    stack_in_room: Vec<f64>,
    /// Volume of the air at the joint before each place and past the end, over that at the outlet.
    at_joint: Vec<f64>,
    /// The same in the middle of each element.
    within: Vec<f64>,
    pub draws: Vec<Curves>,
}

impl RunAir {
    /// The air of `plan` under so many draws; the first of none is the likely one. `room` is the
    /// density of the room's air, kg/m³.
    pub fn of(plan: &Plan, draws: usize, room: f64) -> (Self, CompiledRun) {
        let (run, _) = CompiledRun::of(plan);
        // A stated airflow has no blower; its temperatures are those at that airflow.
        let point = operating_point(&run, &Draw::LIKELY).ok();
        let profile = point.and_then(|point| point.heat);
        let constant;
        let along: &AirAlong = if let Some(profile) = &profile {
            &profile.air
        } else {
            constant = AirAlong::constant(run.density, run.viscosity);
            &constant
        };
        let mut air = Self {
            density: run.density.kilograms_per_cubic_metre(),
            stack: vec![0.0],
            stack_in_room: vec![0.0],
            at_joint: Vec::new(),
            within: Vec::new(),
            draws: curves(&run, draws, room, along),
        };
        let (mut outside, mut inside) = (0.0, 0.0);
        let mut leaving = 1.0;
        for (index, element) in in_run(&run) {
            let local = along.at(index);
            outside += run.stack(element.rise, local.density).pascals();
            let density = local.density.kilograms_per_cubic_metre();
            inside += GRAVITY * element.rise.metres() * (density - room);
            air.stack.push(outside);
            air.stack_in_room.push(inside);
            air.within.push(local.expansion);
            let ends = ends(profile.as_ref(), index);
            air.at_joint.push(ends.0);
            leaving = ends.1;
        }
        air.at_joint.push(leaving);
        (air, run)
    }

    /// What the air's weight adds between two places, Pa; `joined` where it ends in the open air.
    pub fn stack(&self, from: usize, to: usize, joined: bool) -> f64 {
        let sums = if joined {
            &self.stack
        } else {
            &self.stack_in_room
        };
        sums[to] - sums[from]
    }

    /// Volume of the air at the joint before a place, over that at the outlet.
    pub fn at_joint(&self, place: usize) -> f64 {
        self.at_joint[place]
    }

    /// The same in the middle of an element.
    pub fn within(&self, place: usize) -> f64 {
        self.within[place]
    }
}

/// The elements of a run with their indices, make-up air left out.
pub(super) fn in_run(run: &CompiledRun) -> impl Iterator<Item = (usize, &CompiledElement)> {
    let elements = run.elements.iter().enumerate();
    elements.filter(|(_, element)| !matches!(element.kind, ElementKind::MakeUpAir { .. }))
}

/// Volume of the air that enters an element and that leaves it, over that at the outlet.
fn ends(profile: Option<&HeatProfile>, index: usize) -> (f64, f64) {
    profile.map_or((1.0, 1.0), |profile| profile.elements[index].expansion)
}

#[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
fn curves(run: &CompiledRun, draws: usize, room: f64, air: &AirAlong) -> Vec<Curves> {
    if draws == 0 {
        return vec![Curves::of(run, &Draw::LIKELY, room, [0.5; 4], air)];
    }
    let half_a_cell = 0.5 / draws as f64;
    let points = Sobol::default().take(draws);
    points
        .map(|point| {
            let mut quantiles = [0.0; INPUTS];
            for (quantile, at) in quantiles.iter_mut().zip(point) {
                *quantile = at + half_a_cell;
            }
            let within = [0, 1, 2, 3].map(|more| point[INPUTS + more] + half_a_cell);
            Curves::of(run, &Draw::at(quantiles), room, within, air)
        })
        .collect()
}
