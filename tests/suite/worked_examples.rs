//! Worked examples from textbooks and design sheets, recomputed with the core's formulas.

use crate::tally::Tally;
use elbowroom::duct::{friction, velocity_pressure};
use elbowroom::numeric::root;
use elbowroom::units::{Density, Length, Pressure, UnitSystem, Velocity};

/// Pascals in an inch of water as the textbook takes it (998 kg/m³).
const INCH_OF_WATER: f64 = 998.0 * 9.81 * 0.0254;
const CFM: f64 = 0.3048 * 0.3048 * 0.3048 / 60.0;

/// Loss of a round duct with the fittings `k`, Pa: q (f L/D + k).
fn loss(airflow: f64, diameter: f64, length: f64, roughness: f64, air: (f64, f64), k: f64) -> f64 {
    let (density, viscosity) = air;
    let speed = airflow / (core::f64::consts::FRAC_PI_4 * diameter * diameter);
    let reynolds = density * speed * diameter / viscosity;
    let f = friction::factor(reynolds, roughness / diameter).value;
    let q = velocity_pressure(
        Density::from_kilograms_per_cubic_metre(density),
        Velocity::from_metres_per_second(speed),
    );
    q.pascals() * (f * length / diameter + k)
}

/// Cengel & Cimbala, Fluid Mechanics, example 14-1: a fan on 44 ft of 9.06 in galvanized duct with
/// five elbows; the maker's six points as printed with it. The book reads 650 cfm and 0.83 in. w.c.
/// off its graph: a hundredth of the scale either way.
#[test]
fn a_fan_with_a_round_duct_and_five_elbows() {
    const READ_OFF: f64 = 0.02;
    const FAN: [(f64, f64); 6] = [
        (0.0, 0.90),
        (250.0, 0.95),
        (500.0, 0.90),
        (750.0, 0.75),
        (1000.0, 0.40),
        (1200.0, 0.0),
    ];
    // Air at 25 °C; the outlet's kinetic energy with the book's factor of 1.05.
    let air = (1.184, 1.849e-5);
    let fittings = 5.0 * 0.21 + 1.3 + 1.8 + 1.05;
    let required = |cfm: f64| loss(cfm * CFM, 0.230, 13.4, 0.15e-3, air, fittings) / INCH_OF_WATER;
    let available = |cfm: f64| {
        let next = FAN
            .iter()
            .position(|(at, _)| *at > cfm)
            .unwrap_or(FAN.len() - 1);
        let (from, to) = (FAN[next - 1], FAN[next]);
        from.1 + (to.1 - from.1) * (cfm - from.0) / (to.0 - from.0)
    };
    let cfm = root(|cfm| available(cfm) - required(cfm), 300.0, 1100.0, 1e-6).unwrap();
    let mut tally = Tally::new("example 14-1");
    tally.relative("airflow", cfm, 650.0, READ_OFF);
    tally.relative("head", required(cfm), 0.83, READ_OFF);
    tally.finish(2);
}

/// Cengel & Cimbala, Fluid Mechanics, example 8-4: 0.35 m³/s of air at 35 °C (1.145 kg/m³,
/// 1.655e-5 m²/s) through 150 m of smooth plastic duct may lose 20 m of head: 0.267 m of diameter,
/// f 0.0180, 6.24 m/s, Re 100,800.
#[test]
fn the_diameter_of_a_smooth_duct() {
    /// Three digits are printed.
    const PRINTED: f64 = 0.005;
    const AIRFLOW: f64 = 0.35;
    let density = 1.145;
    let air = (density, density * 1.655e-5);
    let allowed = density * 9.81 * 20.0;
    let spare = |diameter: f64| allowed - loss(AIRFLOW, diameter, 150.0, 0.0, air, 0.0);
    let diameter = root(spare, 0.1, 1.0, 1e-9).unwrap();
    let speed = AIRFLOW / (core::f64::consts::FRAC_PI_4 * diameter * diameter);
    let reynolds = speed * diameter / 1.655e-5;
    let mut tally = Tally::new("example 8-4");
    tally.relative("diameter", diameter, 0.267, PRINTED);
    tally.relative(
        "friction factor",
        friction::factor(reynolds, 0.0).value,
        0.0180,
        PRINTED,
    );
    tally.relative("velocity", speed, 6.24, PRINTED);
    tally.relative("Reynolds number", reynolds, 100_800.0, PRINTED);
    tally.finish(4);
}

/// A duct design sheet after the ASHRAE handbook: 500 L/s in 350 by 200 mm of roughness 0.09 mm is
/// 7.14 m/s, hydraulic diameter 254.5 mm, velocity pressure 31 Pa, f 0.0191 and 2.3 Pa/m.
#[test]
fn a_rectangular_duct_by_its_hydraulic_diameter() {
    /// Figures printed to two or three digits; its f is by another explicit formula.
    const PRINTED: f64 = 0.03;
    let (width, depth, airflow): (f64, f64, f64) = (0.350, 0.200, 0.500);
    let speed = airflow / (width * depth);
    let diameter = 2.0 * width * depth / (width + depth);
    // The sheet's own Reynolds number, 66.4 times millimetres times m/s.
    let f = friction::factor(120_727.0, 0.09e-3 / diameter).value;
    let q = velocity_pressure(
        Density::from_kilograms_per_cubic_metre(1.2),
        Velocity::from_metres_per_second(speed),
    );
    let mut tally = Tally::new("rectangular duct");
    tally.relative("velocity", speed, 7.14, PRINTED);
    tally.relative("hydraulic diameter", diameter, 0.2545, PRINTED);
    tally.relative("velocity pressure", q.pascals(), 31.0, PRINTED);
    tally.relative("friction factor", f, 0.0191, PRINTED);
    tally.relative("loss a metre", q.pascals() * f / diameter, 2.3, PRINTED);
    tally.finish(5);
}

/// A solved design problem by the velocity pressure method (ACGIH, Industrial Ventilation): 390 cfm
/// in 15 ft of 4 in galvanized duct is 4471 fpm and 1.2464 in. w.c. of velocity pressure, and the
/// straight loses 1.0635 of it.
#[test]
fn four_inch_duct_by_the_velocity_pressure_method() {
    /// The method rounds standard air to 4005 fpm at 1 in. w.c. and friction to a fitted power law.
    const METHOD: f64 = 0.03;
    let diameter = Length::from_inches(4.0).metres();
    let speed = 390.0 * CFM / (core::f64::consts::FRAC_PI_4 * diameter * diameter);
    let velocity = Velocity::from_metres_per_second(speed);
    let density = Density::from_kilograms_per_cubic_metre(1.201);
    let q: Pressure = velocity_pressure(density, velocity);
    let reynolds = 1.201 * speed * diameter / 1.82e-5;
    // 0.0005 ft, the roughness that the method's friction stands for.
    let f = friction::factor(reynolds, 0.0005 * 0.3048 / diameter).value;
    let mut tally = Tally::new("velocity pressure method");
    let fpm = UnitSystem::UsCustomary.velocity(velocity).figure;
    tally.relative("velocity", fpm.parse().unwrap(), 4471.3, METHOD);
    tally.relative("velocity pressure", q.pascals() / 248.84, 1.2464, METHOD);
    let straight = f * Length::from_feet(15.0).metres() / diameter;
    tally.relative("straight", straight, 1.0635, METHOD);
    tally.finish(3);
}
