//! A run made ready for evaluation: what hangs on the drawing alone is worked out once, so that an
//! evaluation at one airflow is a few multiplications an element.

use super::{Draw, Finding, Input};
use crate::air::{MoistAir, pressure_at_altitude};
use crate::duct::elbow::{ElbowLaw, spread_of_methods};
use crate::duct::{elbow, friction, tables, velocity_pressure};
use crate::plan::{
    Bend, Duct, ElbowKind, ElementId, Flow, PieceKind, Plan, RunPath, TerminationKind,
};
use crate::source::{Coefficient, Reach};
use crate::units::{Airflow, Angle, Density, Length, Pressure, Velocity, Viscosity};
use serde::Serialize;

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

/// What an element of the run is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ElementKind {
    /// A straight.
    Straight {
        /// Between its fittings.
        #[serde(rename = "length_m")]
        length: Length,
        /// Its material.
        duct: Duct,
    },
    /// An elbow.
    Elbow {
        /// Its turn.
        #[serde(rename = "angle_rad")]
        angle: Angle,
        /// How it is made.
        elbow: ElbowKind,
        /// To the centre line.
        #[serde(rename = "centre_line_radius_m")]
        radius: Length,
    },
    /// The hood at the end.
    Termination {
        /// What it is.
        termination: TerminationKind,
    },
}

/// How an element's loss is worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Law {
    /// K = f times this many diameters.
    Straight { diameters: f64 },
    /// An elbow, with its span of methods where it is smooth.
    Elbow {
        law: ElbowLaw,
        spread: Option<(f64, f64)>,
    },
    /// K of the hood and the pressure that lifts its flap.
    WallHood,
}

/// An element of a compiled run.
#[derive(Debug, Clone, PartialEq)]
pub struct CompiledElement {
    /// Its name.
    pub id: ElementId,
    /// What it is.
    pub kind: ElementKind,
    /// Straight or arc along the centre line.
    pub developed_length: Length,
    /// Whether its angle and radius are inside the source's range.
    pub reach: Reach,
    law: Law,
}

impl CompiledElement {
    /// The coefficient that this element's loss rests on, to show with its source: K of an elbow or
    /// hood at the friction factor `f` and `reynolds`; for a straight the wall's roughness, m.
    pub fn coefficient(&self, f: f64, reynolds: f64) -> Coefficient {
        match self.law {
            Law::Straight { .. } => tables::rigid_duct::ROUGHNESS,
            Law::WallHood => tables::wall_hood::K,
            Law::Elbow { law, spread } => {
                let k = |k_90: f64| law.loss_coefficient(f, reynolds, k_90);
                let segmented = tables::segmented_elbow::K_90;
                let likely = k(segmented.likely);
                match spread {
                    Some((low, high)) => Coefficient {
                        low: likely * low,
                        likely,
                        high: likely * high,
                        source: &elbow::RENNELS_SOURCE,
                    },
                    None => Coefficient {
                        low: k(segmented.low),
                        likely,
                        high: k(segmented.high),
                        source: segmented.source,
                    },
                }
            }
        }
    }
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
    /// Inside diameter.
    pub diameter: Length,
}

/// A run at one airflow.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Evaluation {
    /// The airflow, at the outlet's density.
    pub airflow: Airflow,
    /// Mean velocity in the duct.
    pub velocity: Velocity,
    /// Velocity pressure in the duct.
    pub velocity_pressure: Pressure,
    /// Reynolds number in the duct.
    pub reynolds: f64,
    /// Friction factor of the duct.
    pub friction_factor: f64,
    /// Sum of the elements' losses.
    pub loss: Pressure,
    /// What the weight of the air adds (a warm riser takes off).
    pub stack: Pressure,
    /// Total pressure at the dryer's outlet.
    pub total_pressure: Pressure,
    /// Back pressure: static pressure at the dryer's outlet, as a gauge reads it.
    pub back_pressure: Pressure,
}

impl CompiledRun {
    /// Compiles the run of `plan` and lists what is wrong with its geometry.
    pub fn of(plan: &Plan) -> (Self, Vec<Finding>) {
        let path = RunPath::of(plan);
        let diameter = plan.run.diameter;
        let mut findings: Vec<Finding> = path
            .coinciding
            .iter()
            .map(|node| Finding::PointsCoincide { node: node.clone() })
            .collect();
        let mut elements = Vec::with_capacity(path.pieces.len());
        for piece in &path.pieces {
            let element = match &piece.kind {
                PieceKind::Straight {
                    length,
                    overlap,
                    duct,
                    ..
                } => {
                    if *overlap > Length::ZERO {
                        findings.push(Finding::ElbowsOverlap {
                            element: piece.id.clone(),
                            overlap: *overlap,
                        });
                    }
                    straight(&piece.id, *length, *duct, diameter)
                }
                PieceKind::Bend(bend) => bend_element(&piece.id, bend, diameter),
                PieceKind::Termination => CompiledElement {
                    id: piece.id.clone(),
                    kind: ElementKind::Termination {
                        termination: plan.run.termination.kind,
                    },
                    developed_length: Length::ZERO,
                    reach: Reach::Within,
                    law: match plan.run.termination.kind {
                        TerminationKind::WallHood => Law::WallHood,
                    },
                },
            };
            if element.reach == Reach::Beyond {
                findings.push(Finding::OutsideSource {
                    element: piece.id.clone(),
                });
            }
            elements.push(element);
        }
        let pressure = pressure_at_altitude(plan.site.altitude);
        let exhaust = MoistAir::new(
            plan.exhaust.temperature,
            pressure,
            plan.exhaust.relative_humidity,
        );
        let outdoors = MoistAir::new(
            plan.site.outdoor_temperature,
            pressure,
            plan.site.outdoor_relative_humidity,
        );
        let run = Self {
            elements,
            driver: match plan.flow {
                Flow::TypicalBlower {} => Driver::TypicalBlower,
                Flow::StatedAirflow { airflow } => Driver::Stated(airflow),
            },
            density: exhaust.density(),
            viscosity: exhaust.viscosity(),
            outdoor_density: outdoors.density(),
            rise: path.rise,
            diameter,
        };
        (run, findings)
    }

    /// The run at `airflow` with the inputs of `draw`. Allocates nothing.
    pub fn at(&self, airflow: Airflow, draw: &Draw) -> Evaluation {
        let values = Values::of(draw);
        let state = self.state(airflow, &values);
        let loss = self
            .elements
            .iter()
            .map(|element| element_loss(element, &state, &values, draw))
            .sum();
        let stack = self.stack();
        let total_pressure = loss + stack;
        Evaluation {
            airflow,
            velocity: state.velocity,
            velocity_pressure: state.velocity_pressure,
            reynolds: state.reynolds,
            friction_factor: state.friction_factor,
            loss,
            stack,
            total_pressure,
            back_pressure: total_pressure - state.velocity_pressure,
        }
    }

    /// Each element's loss of total pressure at `airflow`, in run order.
    pub fn losses_at(&self, airflow: Airflow, draw: &Draw) -> Vec<Pressure> {
        let values = Values::of(draw);
        let state = self.state(airflow, &values);
        self.elements
            .iter()
            .map(|element| element_loss(element, &state, &values, draw))
            .collect()
    }

    /// -g dz (rho_outdoor - rho_duct): what the column of exhaust adds at the outlet.
    fn stack(&self) -> Pressure {
        let lighter = (self.outdoor_density - self.density).kilograms_per_cubic_metre();
        Pressure::from_pascals(-GRAVITY * self.rise.metres() * lighter)
    }

    fn state(&self, airflow: Airflow, values: &Values) -> State {
        let diameter = self.diameter.metres();
        let area = core::f64::consts::FRAC_PI_4 * diameter * diameter;
        let speed = airflow.cubic_metres_per_second() / area;
        let velocity = Velocity::from_metres_per_second(speed);
        let reynolds = self.density.kilograms_per_cubic_metre() * speed * diameter
            / self.viscosity.pascal_seconds();
        State {
            velocity,
            velocity_pressure: velocity_pressure(self.density, velocity),
            reynolds,
            friction_factor: friction::factor(reynolds, values.roughness / diameter).value,
        }
    }
}

/// The draw's values that many elements share, looked up once an evaluation.
struct Values {
    roughness: f64,
    segmented_k_90: f64,
    hood_k: f64,
    flap_weight: Pressure,
}

impl Values {
    fn of(draw: &Draw) -> Self {
        Self {
            roughness: draw.value(Input::RigidRoughness),
            segmented_k_90: draw.value(Input::SegmentedElbow),
            hood_k: draw.value(Input::WallHood),
            flap_weight: Pressure::from_pascals(draw.value(Input::FlapWeight)),
        }
    }
}

/// The air's state in the duct at one airflow.
struct State {
    velocity: Velocity,
    velocity_pressure: Pressure,
    reynolds: f64,
    friction_factor: f64,
}

fn element_loss(
    element: &CompiledElement,
    state: &State,
    values: &Values,
    draw: &Draw,
) -> Pressure {
    let q = state.velocity_pressure;
    match element.law {
        Law::Straight { diameters } => q * (state.friction_factor * diameters),
        Law::Elbow { law, spread } => {
            let k =
                law.loss_coefficient(state.friction_factor, state.reynolds, values.segmented_k_90);
            let factor = spread.map_or(1.0, |(low, high)| {
                let coefficient = Coefficient {
                    low,
                    likely: 1.0,
                    high,
                    source: &elbow::RENNELS_SOURCE,
                };
                draw.of(Input::SmoothElbow, &coefficient)
            });
            q * (k * factor)
        }
        Law::WallHood => q * values.hood_k + values.flap_weight,
    }
}

fn straight(id: &ElementId, length: Length, duct: Duct, diameter: Length) -> CompiledElement {
    CompiledElement {
        id: id.clone(),
        kind: ElementKind::Straight { length, duct },
        developed_length: length,
        reach: Reach::Within,
        law: match duct {
            Duct::Rigid => Law::Straight {
                diameters: length / diameter,
            },
        },
    }
}

fn bend_element(id: &ElementId, bend: &Bend, diameter: Length) -> CompiledElement {
    let ratio = bend.elbow.radius / diameter;
    let ((law, reach), spread) = match bend.elbow.kind {
        ElbowKind::Smooth => (
            ElbowLaw::smooth(bend.angle, ratio),
            Some(spread_of_methods(bend.angle, ratio)),
        ),
        ElbowKind::Segmented => (ElbowLaw::segmented(bend.angle, ratio), None),
    };
    CompiledElement {
        id: id.clone(),
        kind: ElementKind::Elbow {
            angle: bend.angle,
            elbow: bend.elbow.kind,
            radius: bend.elbow.radius,
        },
        developed_length: bend.arc(),
        reach,
        law: Law::Elbow { law, spread },
    }
}
