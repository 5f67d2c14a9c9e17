//! The run of 20 elements among 40 obstacles that every bench times, and one full evaluation of it.

use elbowroom::plan::{AlongRun, Level, Plan, Zone, ZoneKind, read};
use elbowroom::system::{CompiledRun, Draw, Ledger, OperatingPoint, operating_point};
use elbowroom::units::{Length, Temperature};

/// What the run is to have.
const ELEMENTS: usize = 20;
const OBSTACLES: usize = 40;

/// The plan of `twenty.json`.
pub fn plan() -> Plan {
    let plan = read(include_bytes!("twenty.json")).expect("twenty.json is a plan");
    assert_eq!(plan.obstacles.len(), OBSTACLES);
    plan
}

/// Its run made ready.
pub fn run() -> CompiledRun {
    let (run, _) = CompiledRun::of(&plan());
    assert_eq!(run.elements.len(), ELEMENTS);
    run
}

/// The same run in the cold: its air cools, and its wall is wet along most of it.
#[allow(dead_code, reason = "the count of instructions is of the other run")]
pub fn run_with_heat() -> CompiledRun {
    let mut plan = plan();
    plan.exhaust.along_run = AlongRun::Cools;
    for (id, level) in [("cold", Level::Room), ("colder", Level::CeilingSpace)] {
        plan.zones.push(Zone {
            id: id.into(),
            kind: ZoneKind::Attic,
            level,
            temperature: Temperature::from_celsius(-5.0),
            x_m: -50.0,
            y_m: -50.0,
            width: Length::from_metres(100.0),
            depth: Length::from_metres(100.0),
        });
    }
    let (run, _) = CompiledRun::of(&plan);
    let water = operating_point(&run, &Draw::LIKELY)
        .ok()
        .and_then(|point| point.heat)
        .map_or(0.0, |profile| profile.water());
    assert!(water > 0.0, "nothing condenses");
    run
}

/// One full evaluation: the operating point with the blower, and the ledger there.
pub fn evaluate(run: &CompiledRun) -> (OperatingPoint, Ledger) {
    let point = operating_point(run, &Draw::LIKELY).expect("air moves");
    let ledger = Ledger::of(run, &point);
    (point, ledger)
}
