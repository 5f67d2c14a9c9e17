//! The inside of a stretch of duct: its size, its wall, and the air's state in it.

use super::LocalAir;
use super::input::Values;
use crate::duct::tables::flexible_duct::compression_factor;
use crate::duct::{friction, velocity_pressure};
use crate::plan::{Duct, Input, LegState};
use crate::source::Reach;
use crate::units::{Airflow, Density, Length, Pressure, Velocity, Viscosity};

/// Size and wall of a duct.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bore {
    /// Free area, m².
    pub area: f64,
    /// Hydraulic diameter, m: four times the area over the wetted edge.
    pub diameter: f64,
    /// The input that its wall's roughness is.
    pub roughness: Input,
    /// What pushing together likely adds to its friction, as a share of it.
    pub compression: f64,
}

impl Bore {
    /// A round rigid duct.
    pub fn round(diameter: Length) -> Self {
        let diameter = diameter.metres();
        Self {
            area: core::f64::consts::FRAC_PI_4 * diameter * diameter,
            diameter,
            roughness: Input::RigidRoughness,
            compression: 0.0,
        }
    }

    /// The duct of a leg, in a run of `diameter`, and whether it is inside its source's range.
    pub fn of_leg(duct: Duct, leg: &LegState, diameter: Length) -> (Self, Reach) {
        let round = Self::round(leg.diameter.unwrap_or(diameter));
        match duct {
            Duct::Rigid => (round, Reach::Within),
            Duct::SemiRigid {
                short_of_full_stretch_percent: percent,
            } => {
                let (bore, reach) = round.flexible(Input::SemiRigidRoughness, percent);
                // The measurements were made on foil; semi-rigid pushed back is a guess.
                (bore, if percent > 0.0 { Reach::Beyond } else { reach })
            }
            Duct::Foil {
                short_of_full_stretch_percent: percent,
            } => round.flexible(Input::FoilRoughness, percent),
            Duct::FlatRectangular { width, depth } => {
                let (width, depth) = (width.metres(), depth.metres());
                let bore = Self {
                    area: width * depth,
                    diameter: 2.0 * width * depth / (width + depth),
                    ..round
                };
                (bore, Reach::Within)
            }
        }
    }

    fn flexible(self, roughness: Input, percent: f64) -> (Self, Reach) {
        /// Percent short of full stretch to which the formula was measured, and carried.
        /// Source: [`FOIL_SOURCE`](crate::duct::tables::flexible_duct::FOIL_SOURCE).
        const MEASURED: f64 = 30.0;
        const CARRIED: f64 = 45.0;
        let reach = if percent > CARRIED {
            Reach::Beyond
        } else if percent > MEASURED {
            Reach::AtEdge
        } else {
            Reach::Within
        };
        let bore = Self {
            roughness,
            compression: compression_factor(percent, self.diameter) - 1.0,
            ..self
        };
        (bore, reach)
    }

    /// The same size with a rigid wall: what a fitting between such legs is made of.
    pub fn as_fitting(self) -> Self {
        Self {
            roughness: Input::RigidRoughness,
            compression: 0.0,
            ..self
        }
    }

    /// Darcy friction factor of the wall at full stretch.
    fn wall_friction(&self, reynolds: f64, values: &Values) -> f64 {
        let roughness = values.get(self.roughness) / self.diameter;
        friction::factor(reynolds, roughness).value
    }

    /// What pushing together multiplies its friction by.
    fn pushed(&self, values: &Values) -> f64 {
        1.0 + self.compression * values.get(Input::FlexibleCompression)
    }

    /// Darcy friction factor of straights at a Reynolds number, pushing together included.
    pub(super) fn friction_factor(&self, reynolds: f64, values: &Values) -> f64 {
        self.wall_friction(reynolds, values) * self.pushed(values)
    }

    /// The air's state in it.
    pub(super) fn state(
        &self,
        airflow: Airflow,
        density: Density,
        viscosity: Viscosity,
        values: &Values,
    ) -> State {
        let speed = airflow.cubic_metres_per_second() / self.area;
        let velocity = Velocity::from_metres_per_second(speed);
        let reynolds = density.kilograms_per_cubic_metre() * speed * self.diameter
            / viscosity.pascal_seconds();
        let wall_friction = self.wall_friction(reynolds, values);
        State {
            velocity,
            velocity_pressure: velocity_pressure(density, velocity),
            reynolds,
            wall_friction,
            friction_factor: wall_friction * self.pushed(values),
        }
    }
}

/// The air's state in a bore at one airflow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// Mean velocity.
    pub velocity: Velocity,
    /// Its velocity pressure.
    pub velocity_pressure: Pressure,
    /// Reynolds number on the hydraulic diameter.
    pub reynolds: f64,
    /// Darcy friction factor of the wall at full stretch: what bends see.
    pub wall_friction: f64,
    /// Darcy friction factor of straights, pushing together included.
    pub friction_factor: f64,
}

impl State {
    /// The same mass of air where it takes another volume: faster, and with more velocity pressure.
    pub(super) fn with_air(self, air: &LocalAir) -> Self {
        let velocity = self.velocity * air.expansion;
        Self {
            velocity,
            velocity_pressure: velocity_pressure(air.density, velocity),
            ..self
        }
    }
}
