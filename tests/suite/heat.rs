//! Heat and moisture against `heat.csv` and `condensation.csv`: ht, fluids, CoolProp and scipy, a
//! run marched apart from the project. The air's density along the run moves no temperature here,
//! since the airflow at the outlet is stated.

use crate::{reference, tally::Tally};
use elbowroom::air::enthalpy;
use elbowroom::duct::friction::colebrook;
use elbowroom::duct::heat_transfer::{StillAir, horizontal_cylinder, nusselt};
use elbowroom::plan::{
    self, AlongRun, Elbow, ElbowKind, Fitting, Flow, Insulation, Level, Metal, Plan, Point, Riser,
    Termination, TerminationKind, Zone, ZoneKind,
};
use elbowroom::system::{HeatProfile, assess, wet_stretches};
use elbowroom::units::{Airflow, Length, Pressure, Temperature};
use serde::Deserialize;

/// K, of the air at the end and of the wall there: the bar of the set. Ideal-gas air and one
/// Nusselt number for a whole run on this side.
const AIR_KELVINS: f64 = 0.3;
const WALL_KELVINS: f64 = 0.5;
/// Of the water where the wall is wet from end to end: the bar of the set.
const WATER: f64 = 0.03;
/// K: where the wall is wet on a part of its way alone, the water hangs on a small difference of wall
/// and dew point; it is held as if the wall were so much off, a tenth of the wall's own bar.
const WALL_WHERE_PARTLY_WET: f64 = 0.05;
/// Of heat and water, summed over the cells.
const BALANCE: f64 = 1e-6;
const SENSIBLE: usize = 48;
const WET_WHOLLY: usize = 24;
const WET_PARTLY: usize = 8;

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
struct Moist {
    #[serde(flatten)]
    given: Given,
    end_degc: f64,
    last_wall_degc: f64,
    humidity_ratio_kg_per_kg: f64,
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
    let mut wholly = 0;
    let rows: Vec<Moist> = reference::rows("condensation.csv", WET_WHOLLY + WET_PARTLY);
    for row in &rows {
        let profile = profile_of(&row.given);
        let label = |figure: &str| format!("run {}, {figure}", row.given.run);
        let end = profile.leaving().celsius();
        tally.within(label("end"), end, row.end_degc, AIR_KELVINS);
        let wall = wall_at_end(&profile);
        tally.within(label("wall"), wall, row.last_wall_degc, WALL_KELVINS);
        let water = profile.water() * 3600.0;
        let length = row.given.leg_m + row.given.bend_m + row.given.riser_m;
        let allowed = if row.wet_m > length - 1e-9 {
            wholly += 1;
            WATER * row.water_kg_per_h
        } else {
            WATER * row.water_kg_per_h + water_of_a_wall_off(row, WALL_WHERE_PARTLY_WET)
        };
        tally.within(label("water"), water, row.water_kg_per_h, allowed);
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
    assert!(wholly >= WET_WHOLLY, "{wholly} wet from end to end");
    tally.finish(6 * (WET_WHOLLY + WET_PARTLY));
}

/// Water, kg/h, that a wall so many K colder gets along the wet part: Lewis' analogy by hand, with
/// 15 W/(m² K) inside, and a saturated ratio that rises by 6 % a K (steam tables, 20..50 °C).
fn water_of_a_wall_off(row: &Moist, kelvins: f64) -> f64 {
    let area = core::f64::consts::PI * row.given.diameter_m * row.wet_m;
    let transfer = 15.0 / (1050.0 * 0.897);
    transfer * area * 0.06 * row.humidity_ratio_kg_per_kg * kelvins * 3600.0
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

/// Cengel & Ghajar, Heat and Mass Transfer, example 8-7: air at 80 °C, 0.15 m³/s through 8 m of
/// square duct of 0.2 m with walls at 60 °C leaves at 71.3 °C and gives 1313 W, by Dittus and
/// Boelter's Nu 91.4. Gnielinski's formula is another fit of the same data, printed there as within
/// 10 % where that one is within 25 %: it is held to their difference.
#[test]
fn hot_air_in_an_attic_duct() {
    const TWO_CORRELATIONS: f64 = 0.25;
    let (density, conductivity, prandtl, capacity) = (0.9994, 0.02953, 0.7154, 1008.0);
    let speed = 0.15 / 0.04;
    let reynolds = speed * 0.2 / 2.097e-5;
    let number = nusselt(reynolds, prandtl, |reynolds| colebrook(reynolds, 0.0));
    let leaves = |number: f64| {
        let film = number * conductivity / 0.2;
        60.0 + 20.0 * (-film * 6.4 / (density * 0.15 * capacity)).exp()
    };
    let gives = |number: f64| density * 0.15 * capacity * (80.0 - leaves(number));
    let mut tally = Tally::new("example 8-7");
    tally.relative("Nusselt number", number, 91.4, TWO_CORRELATIONS);
    // With the book's own number its figures come out, so that the inputs are the book's.
    tally.within("leaves, by the book's number", leaves(91.4), 71.3, 0.05);
    tally.relative("gives, by the book's number", gives(91.4), 1313.0, 0.01);
    tally.within("leaves", leaves(number), 71.3, 1.2);
    tally.finish(4);
}

/// Cengel & Ghajar, example 9-1: 6 m of horizontal pipe of 8 cm at 70 °C in a room of 20 °C: Nu
/// 17.39, h 5.867 W/(m² K), 442 W, with Ra 1.867e6 and Pr 0.7241.
#[test]
fn a_horizontal_pipe_by_natural_convection() {
    /// Four digits are printed.
    const PRINTED: f64 = 0.003;
    /// The book's table has 0.02699 W/(m K) at 45 °C, 2.6 % below CoolProp's 0.0277.
    const OWN_AIR: f64 = 0.025;
    let mut tally = Tally::new("example 9-1");
    let number = horizontal_cylinder(1.867e6, 0.7241);
    tally.relative("Nusselt number", number, 17.39, PRINTED);
    let by_the_book = number * 0.02699 / 0.08;
    tally.relative("h with the book's air", by_the_book, 5.867, PRINTED);
    let still = StillAir::new(
        Temperature::from_celsius(20.0),
        Pressure::from_pascals(101_325.0),
    );
    let film = still.convection(70.0, 0.08, None);
    tally.relative("h", film, 5.867, OWN_AIR);
    let watts = film * core::f64::consts::PI * 0.08 * 6.0 * 50.0;
    tally.relative("heat", watts, 442.0, OWN_AIR);
    tally.finish(4);
}
