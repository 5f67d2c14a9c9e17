//! The run of 20 elements among 40 obstacles that every bench times, and one full evaluation of it.

use elbowroom::plan::{Plan, read};
use elbowroom::system::{CompiledRun, Draw, Ledger, OperatingPoint, operating_point};

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

/// One full evaluation: the operating point with the blower, and the ledger there.
pub fn evaluate(run: &CompiledRun) -> (OperatingPoint, Ledger) {
    let point = operating_point(run, &Draw::LIKELY).expect("air moves");
    let ledger = Ledger::of(run, &point);
    (point, ledger)
}
