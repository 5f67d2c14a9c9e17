//! Readings on a dryer that heats, where the air cools on its way, and temperatures among them.

use crate::heat_properties::in_one_zone;
use crate::site_readings::{house, static_at, visit};
use crate::tally::Tally;
use elbowroom::diagnosis::{CauseKind, Caveat, clean_readings, diagnose};
use elbowroom::plan::{AlongRun, Conditions, Entry, Measured, Pattern, Phase, Plan, Reading, Spot};
use elbowroom::system::{
    CompiledRun, Draw, Ledger, OperatingPoint, exhaust_in, operating_point, pressure_line,
};
use elbowroom::units::{Temperature, TemperatureDifference, Velocity};

const HEATED: Conditions = Conditions {
    heat: true,
    ..Conditions::PLAIN
};

/// The house with an upper storey and a roof in winter: its air cools a good deal.
fn cold_house() -> Plan {
    let mut plan = house();
    plan.exhaust = exhaust_in(Phase::Drying, plan.exhaust);
    plan.exhaust.along_run = AlongRun::Cools;
    plan.site.outdoor_temperature = Temperature::from_celsius(-10.0);
    in_one_zone(&plan, -5.0)
}

fn solved(plan: &Plan) -> (OperatingPoint, Ledger) {
    let (run, _) = CompiledRun::of(plan);
    let point = operating_point(&run, &Draw::LIKELY).unwrap();
    let ledger = Ledger::of(&run, &point);
    (point, ledger)
}

fn temperature(at: Spot, celsius: f64) -> Reading {
    Reading {
        at,
        measured: Measured::Temperature {
            temperature: Temperature::from_celsius(celsius),
            resolution: TemperatureDifference::from_kelvins(0.1),
            tolerance: TemperatureDifference::from_kelvins(1.0),
        },
        conditions: HEATED,
    }
}

/// Pressures, velocity and temperatures of the clean run under heat are those of the ledger for the
/// same plan. Source: `system::operating_point`, which has reference sets of its own.
#[test]
fn a_clean_run_reads_hot_as_the_ledger_has_it() {
    /// Of the reading: losses are held between sixteen airflows.
    const SHARE: f64 = 0.002;
    /// Temperatures are held between twelve.
    const KELVINS: f64 = 0.1;
    let plan = cold_house();
    let (point, ledger) = solved(&plan);
    let heat = point.heat.as_ref().unwrap();
    // Or nothing would be tried here.
    assert!(heat.celsius - heat.leaving().celsius() > 5.0);
    let found = |reading: Reading| clean_readings(&plan, &[&reading])[0].unwrap();
    let mut tally = Tally::new("hot clean readings");
    let outlet = found(static_at(Spot::Outlet, 0.0, HEATED));
    let expected = point.evaluation.back_pressure.pascals();
    tally.relative("outlet", outlet.likely, expected, SHARE);
    let is_inside = outlet.band.low < expected && expected < outlet.band.high;
    tally.holds("the band holds it", is_inside);
    let line = pressure_line(&point, &ledger);
    for (index, pair) in line.chunks(2).enumerate().skip(1) {
        let at = Spot::Before(pair[0].element.clone());
        let pressure = found(static_at(at.clone(), 0.0, HEATED)).likely;
        let expected = pair[0].r#static.pascals();
        tally.within(
            pair[0].element.to_string(),
            pressure,
            expected,
            SHARE * 100.0,
        );
        let celsius = found(temperature(at, 20.0)).likely;
        let expected = heat.elements[index].entering.celsius();
        tally.within(format!("{index}, K"), celsius, expected, KELVINS);
    }
    let end = found(temperature(Spot::Hood, 20.0)).likely;
    tally.within("hood, K", end, heat.leaving().celsius(), KELVINS);
    let velocity = Reading {
        at: Spot::Hood,
        measured: Measured::Velocity {
            points: vec![Velocity::from_metres_per_second(7.0)],
            pattern: Pattern::Traverse,
            resolution: Velocity::from_metres_per_second(0.1),
            tolerance: Velocity::from_metres_per_second(0.2),
        },
        conditions: HEATED,
    };
    // Continuity: at the hood the air takes the room that it takes where it leaves the last element.
    let last = heat.elements.last().unwrap().expansion.1;
    let expected = point.evaluation.velocity.metres_per_second() * last;
    tally.relative("hood, m/s", found(velocity).likely, expected, SHARE);
    tally.finish(2 * (line.len() / 2 - 1) + 4);
}

/// A blockage drawn in the plan, read hot at three joints as `system` works it out with the colder air
/// of its smaller airflow, is named: the clean run's temperatures serve well enough.
/// Source: `system::operating_point` on the plan with the blockage.
#[test]
fn a_blockage_is_named_from_hot_readings() {
    let mut tally = Tally::new("blocked, read hot");
    for index in [1, 2] {
        for free in [0.3, 0.45] {
            let mut blocked = cold_house();
            blocked.run.points[index].leg.blockage_free_area = Some(free);
            let (point, ledger) = solved(&blocked);
            let line = pressure_line(&point, &ledger);
            let clean = cold_house();
            let mut visit = visit();
            visit.always_heats = true;
            let outlet = point.evaluation.back_pressure.pascals();
            let reading = static_at(Spot::Outlet, outlet, HEATED);
            visit.entries.push(Entry::Reading(reading));
            let leg = format!("leg:p{}", index + 1);
            // At every joint of the run, as a patient hand would.
            let (run, _) = CompiledRun::of(&clean);
            for element in &run.elements[1..] {
                let mut points = line.iter();
                let at = points.find(|at| at.element == element.id).unwrap();
                let pascals = at.r#static.pascals();
                let reading = static_at(Spot::Before(element.id.clone()), pascals, HEATED);
                visit.entries.push(Entry::Reading(reading));
            }
            let found = diagnose(&clean, &visit).unwrap();
            let mut first_two = found.causes.iter().take(2);
            let named = first_two.any(|odds| {
                let element = odds.cause.element.as_ref().map(ToString::to_string);
                odds.cause.kind == CauseKind::Blockage && element == Some(leg.clone())
            });
            let named_first = &found.causes[..2];
            tally.holds(format!("{leg} at {free}: {named_first:?}"), named);
            let contradicted = |caveat: &Caveat| matches!(caveat, Caveat::Contradiction(_));
            tally.holds("no contradiction", !found.caveats.iter().any(contradicted));
        }
    }
    tally.finish(8);
}

/// Little air is cold at its end: the same pressure with a cold hood makes a clean run less likely,
/// with a hood as warm as predicted likelier.
#[test]
fn temperatures_move_the_odds() {
    let plan = cold_house();
    let mut blocked = plan.clone();
    blocked.run.points[2].leg.blockage_free_area = Some(0.15);
    let (clean, choked) = (solved(&plan).0, solved(&blocked).0);
    let (clean, choked) = (clean.heat.unwrap(), choked.heat.unwrap());
    let harmless = |ends: Option<f64>| {
        let mut visit = visit();
        visit.always_heats = true;
        for (at, celsius) in ends
            .map(|end| [(Spot::Outlet, clean.celsius), (Spot::Hood, end)])
            .into_iter()
            .flatten()
        {
            visit.entries.push(Entry::Reading(temperature(at, celsius)));
        }
        let found = diagnose(&plan, &visit).unwrap();
        let nothing_read = found.caveats.contains(&Caveat::NothingRead);
        assert_eq!(nothing_read, ends.is_none());
        found.harmless
    };
    let before = harmless(None);
    let (warm, cold) = (clean.leaving().celsius(), choked.leaving().celsius());
    assert!(cold < warm - 5.0, "{cold} {warm}");
    assert!(harmless(Some(warm)) > before);
    assert!(harmless(Some(cold)) < before);
}

/// Where the plan's air keeps its temperature nothing is predicted, and it is said so.
#[test]
fn a_temperature_of_air_that_keeps_its_own_is_left_out() {
    let mut plan = cold_house();
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    let reading = temperature(Spot::Hood, 40.0);
    assert_eq!(clean_readings(&plan, &[&reading]), [None]);
    let mut visit = visit();
    visit.entries.push(Entry::Reading(reading));
    let found = diagnose(&plan, &visit).unwrap();
    assert!(found.caveats.contains(&Caveat::TemperatureOnly(0)));
}
