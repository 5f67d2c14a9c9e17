//! Heat and moisture against `heat.csv` and `condensation.csv`: ht, fluids, CoolProp and scipy, a
//! run marched apart from the project. The air's density along the run moves no temperature here,
//! since the airflow at the outlet is stated.

use crate::{reference, tally::Tally};
use elbowroom::air::enthalpy;
use elbowroom::plan::{
    self, AlongRun, Elbow, ElbowKind, Fitting, Flow, Insulation, Level, Metal, Plan, Point, Riser,
    Termination, TerminationKind, Zone, ZoneKind,
};
use elbowroom::system::{HeatProfile, assess, wet_stretches};
use elbowroom::units::{Airflow, Length, Temperature};
use serde::Deserialize;

/// K, of the air at the end and of the wall there: the bar of the set. Ideal-gas air and one
/// Nusselt number for a whole run on this side.
const AIR_KELVINS: f64 = 0.3;
const WALL_KELVINS: f64 = 0.5;
/// Of the water: the bar of the set.
const WATER: f64 = 0.03;
/// Of heat and water, summed over the cells.
const BALANCE: f64 = 1e-6;
const SENSIBLE: usize = 48;
const CONDENSING: usize = 24;

/// What both sets are made of.
#[derive(Deserialize)]
struct Given {
    run: u32,
    diameter_m: f64,
    leg_m: f64,
    riser_m: f64,
    bend_m: f64,
    airflow_m3_per_s: f64,
    temperature_degc: f64,
    relative_humidity: f64,
    surroundings_degc: f64,
    altitude_m: f64,
    thickness_m: f64,
    metal: String,
}

#[derive(Deserialize)]
struct Dry {
    #[serde(flatten)]
    given: Given,
    end_degc: f64,
    last_wall_degc: f64,
}

#[derive(Deserialize)]
struct Wet {
    #[serde(flatten)]
    given: Given,
    end_degc: f64,
    last_wall_degc: f64,
    water_kg_per_h: f64,
    wet_m: f64,
    heat_w: f64,
}

/// A run of one level straight, and with a riser a bend and a vertical one, in one surrounding.
fn plan_of(given: &Given) -> Plan {
    let mut plan = plan::blank("Reference".to_owned());
    let metres = Length::from_metres;
    plan.site.altitude = metres(given.altitude_m);
    plan.exhaust.temperature = Temperature::from_celsius(given.temperature_degc);
    plan.exhaust.relative_humidity = given.relative_humidity;
    plan.exhaust.along_run = AlongRun::Cools;
    plan.flow = Flow::StatedAirflow {
        airflow: Airflow::from_cubic_metres_per_second(given.airflow_m3_per_s),
    };
    for (id, level) in [
        ("z1", Level::CrawlSpace),
        ("z2", Level::Room),
        ("z3", Level::CeilingSpace),
    ] {
        plan.zones.push(Zone {
            id: id.into(),
            kind: ZoneKind::Garage,
            level,
            temperature: Temperature::from_celsius(given.surroundings_degc),
            x_m: -40.0,
            y_m: -40.0,
            width: metres(80.0),
            depth: metres(80.0),
        });
    }
    let run = &mut plan.run;
    run.diameter = metres(given.diameter_m);
    run.termination = Termination::clean(TerminationKind::OpenEnd);
    let elbow = Elbow {
        kind: ElbowKind::Segmented,
        radius: run.diameter,
    };
    let has_riser = given.riser_m > 0.0;
    // Legs are drawn to their corners: the bend's tangent, one radius, is taken off both.
    let tangent = if has_riser { given.diameter_m } else { 0.0 };
    let riser = has_riser.then(|| Riser {
        rise: metres(given.riser_m + tangent),
        elbow,
    });
    let point = &mut run.points[0];
    point.fitting = Fitting { elbow, riser };
    point.leg.metal = if given.metal == "aluminium" {
        Metal::Aluminium
    } else {
        Metal::Galvanized
    };
    point.leg.insulation =
        (given.thickness_m > 0.0).then(|| Insulation::Thickness(metres(given.thickness_m)));
    let outlet = plan.dryer.outlet();
    plan.run.points[0].position = Point::new(outlet.x, outlet.y - given.leg_m - tangent);
    plan
}

fn profile_of(given: &Given) -> HeatProfile {
    let assessment = assess(&plan_of(given));
    let developed: Length = assessment
        .run
        .elements
        .iter()
        .map(|element| element.developed_length)
        .sum();
    let expected = given.leg_m + given.riser_m + given.bend_m;
    assert!(
        (developed.metres() - expected).abs() < 1e-9,
        "{}",
        given.run
    );
    let (point, _) = assessment.working.expect("air moves");
    point.heat.expect("heat is followed")
}

fn last_wall(profile: &HeatProfile) -> f64 {
    profile.cells.last().expect("a cell").wall
}

/// What the last cell's wall is at its end, where the reference reads it: half a cell on.
fn wall_at_end(profile: &HeatProfile) -> f64 {
    let [.., before, last] = profile.cells.as_slice() else {
        return last_wall(profile);
    };
    if before.element != last.element {
        return last_wall(profile);
    }
    last.wall + (last.wall - before.wall) / 2.0
}

#[test]
fn air_and_wall_of_runs_that_stay_dry() {
    let mut tally = Tally::new("sensible heat");
    let rows: Vec<Dry> = reference::rows("heat.csv", SENSIBLE);
    for row in &rows {
        let profile = profile_of(&row.given);
        let label = |figure: &str| format!("run {}, {figure}", row.given.run);
        let end = profile.leaving().celsius();
        tally.within(label("end"), end, row.end_degc, AIR_KELVINS);
        let wall = wall_at_end(&profile);
        tally.within(label("wall"), wall, row.last_wall_degc, WALL_KELVINS);
        tally.equal(label("water"), &profile.water(), &0.0);
        balances(&mut tally, row.given.run, &profile);
    }
    tally.finish(5 * SENSIBLE);
}

#[test]
fn water_air_and_wall_of_runs_that_get_wet() {
    let mut tally = Tally::new("condensation");
    let rows: Vec<Wet> = reference::rows("condensation.csv", CONDENSING);
    for row in &rows {
        let profile = profile_of(&row.given);
        let label = |figure: &str| format!("run {}, {figure}", row.given.run);
        let end = profile.leaving().celsius();
        tally.within(label("end"), end, row.end_degc, AIR_KELVINS);
        let wall = wall_at_end(&profile);
        tally.within(label("wall"), wall, row.last_wall_degc, WALL_KELVINS);
        let water = profile.water() * 3600.0;
        tally.relative(label("water"), water, row.water_kg_per_h, WATER);
        tally.relative(label("heat"), profile.heat(), row.heat_w, WATER);
        let (run, _) = elbowroom::system::CompiledRun::of(&plan_of(&row.given));
        let wet: f64 = wet_stretches(&run, &profile)
            .iter()
            .map(|stretch| (stretch.to - stretch.from).metres())
            .sum();
        // Wet or not is told cell by cell, of 0.75 m at most.
        tally.within(label("wet length"), wet, row.wet_m, 0.75);
        balances(&mut tally, row.given.run, &profile);
    }
    tally.finish(7 * CONDENSING);
}

/// What the air gives is what goes out through the wall and away with the water; the heat of the air
/// by the handbook's formula.
fn balances(tally: &mut Tally, run: u32, profile: &HeatProfile) {
    let entering = enthalpy(
        Temperature::from_celsius(profile.celsius),
        profile.humidity_ratio,
    );
    let last = profile.cells.last().expect("a cell");
    let leaving = enthalpy(profile.leaving(), last.humidity_ratio);
    let given = profile.dry_air * (entering - leaving);
    let drained: f64 = profile.cells.iter().map(|cell| cell.water_heat).sum();
    let size = BALANCE * profile.heat().abs();
    tally.within(
        format!("run {run}, heat balance"),
        given,
        profile.heat() + drained,
        size,
    );
    let lost = profile.dry_air * (profile.humidity_ratio - last.humidity_ratio);
    let size = BALANCE * profile.water();
    tally.within(
        format!("run {run}, water balance"),
        lost,
        profile.water(),
        size,
    );
}
