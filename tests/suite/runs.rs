//! Whole runs against `runs.csv` and `runs/NN.json`: fluids and CoolProp, geometry by numpy, the
//! runs with a blower solved by scipy.

use crate::{reference, tally::Tally};
use elbowroom::plan::{self, Plan};
use elbowroom::system::{Assessment, ElementKind, Finding, assess};
use elbowroom::units::{Length, Pressure};
use serde::Deserialize;

/// Of a pressure or an airflow: air alone, taken as ideal here and as real there.
pub const RUN: f64 = 0.006;
/// Of the density: an ideal mixture lies up to 0.37 % from CoolProp's real one.
const DENSITY: f64 = 0.005;
/// Of the Reynolds number: viscosity (4 %) and density (0.5 %) together.
const REYNOLDS: f64 = 0.045;
/// Of the velocity at a stated airflow: airflow over area, the same on both sides.
const STATED_VELOCITY: f64 = 1e-12;
/// m: geometry alone, in doubles.
const LENGTH: f64 = 1e-9;
/// Where the back pressure is less than this share of the total pressure, it is a small difference
/// of two large figures and is held against the total.
const SMALL_BACK_PRESSURE: f64 = 0.1;
/// The set's bar.
const ROWS: usize = 60;

/// A row of a set of runs.
#[derive(Deserialize)]
pub struct Row {
    pub run: String,
    pub airflow_m3_per_s: f64,
    density_kg_per_m3: f64,
    velocity_m_per_s: f64,
    reynolds: f64,
    total_pressure_pa: f64,
    back_pressure_pa: f64,
    stack_pa: f64,
    developed_length_m: f64,
    straight_length_m: f64,
    elbow_loss_pa: f64,
    straight_loss_pa: f64,
    termination_loss_pa: f64,
}

/// The plan of the run called `run` in the set `set`.
pub fn plan_of(set: &str, run: &str) -> Plan {
    let path = reference::path(&format!("{set}/{run}.json"));
    let bytes = std::fs::read(path).expect("the run's plan opens");
    plan::read(&bytes).unwrap_or_else(|error| panic!("{set}/{run}.json: {error}"))
}

/// Every plan file of the set `set` has its row.
pub fn no_plan_is_overlooked(set: &str, rows: usize) {
    let files = std::fs::read_dir(reference::path(set)).expect("the set's plans are there");
    assert_eq!(files.count(), rows, "plans of {set}");
}

struct Sums {
    straights: Pressure,
    elbows: Pressure,
    terminations: Pressure,
    straight_length: Length,
    developed_length: Length,
}

fn sums(assessment: &Assessment) -> Sums {
    let mut sums = Sums {
        straights: Pressure::ZERO,
        elbows: Pressure::ZERO,
        terminations: Pressure::ZERO,
        straight_length: Length::ZERO,
        developed_length: Length::ZERO,
    };
    let (_, ledger) = assessment.working.as_ref().expect("air moves");
    for row in &ledger.rows {
        match row.element.kind {
            ElementKind::Straight { length, .. } => {
                sums.straights += row.loss;
                sums.straight_length += length;
            }
            ElementKind::Elbow { .. } => sums.elbows += row.loss,
            ElementKind::Termination { .. } => sums.terminations += row.loss,
            other => panic!("the set has no {other:?}"),
        }
        sums.developed_length += row.element.developed_length;
    }
    sums
}

/// Holds every figure of the assessed run against its row.
pub fn compare(tally: &mut Tally, row: &Row, plan: &Plan, assessment: &Assessment) {
    let (point, _) = assessment.working.as_ref().expect("air moves");
    let found = &point.evaluation;
    let label = |figure: &str| format!("run {}, {figure}", row.run);
    tally.relative(
        label("density"),
        assessment.run.density.kilograms_per_cubic_metre(),
        row.density_kg_per_m3,
        DENSITY,
    );
    tally.relative(
        label("airflow"),
        found.airflow.cubic_metres_per_second(),
        row.airflow_m3_per_s,
        RUN,
    );
    let velocity_tolerance = match plan.flow {
        plan::Flow::StatedAirflow { .. } => STATED_VELOCITY,
        plan::Flow::TypicalBlower {} => RUN,
    };
    tally.relative(
        label("velocity"),
        found.velocity.metres_per_second(),
        row.velocity_m_per_s,
        velocity_tolerance,
    );
    tally.relative(
        label("Reynolds number"),
        found.reynolds,
        row.reynolds,
        REYNOLDS,
    );
    let total = row.total_pressure_pa;
    tally.relative(
        label("total pressure"),
        found.total_pressure.pascals(),
        total,
        RUN,
    );
    let back = row.back_pressure_pa;
    let measure = if back.abs() < SMALL_BACK_PRESSURE * total {
        total
    } else {
        back
    };
    tally.within(
        label("back pressure"),
        found.back_pressure.pascals(),
        back,
        RUN * measure.abs(),
    );
    // A difference of two densities: a small error of either is a large one of it.
    tally.within(
        label("stack"),
        found.stack.pascals(),
        row.stack_pa,
        RUN * total.abs(),
    );
    let sums = sums(assessment);
    for (figure, found, expected) in [
        ("straights' loss", sums.straights, row.straight_loss_pa),
        ("elbows' loss", sums.elbows, row.elbow_loss_pa),
        (
            "termination's loss",
            sums.terminations,
            row.termination_loss_pa,
        ),
    ] {
        tally.relative(label(figure), found.pascals(), expected, RUN);
    }
    for (figure, found, expected) in [
        (
            "straight length",
            sums.straight_length,
            row.straight_length_m,
        ),
        (
            "developed length",
            sums.developed_length,
            row.developed_length_m,
        ),
    ] {
        tally.within(label(figure), found.metres(), expected, LENGTH);
    }
    // The set was composed so that everything fits and moves.
    let sound = assessment.findings.iter().all(|finding| {
        matches!(
            finding,
            Finding::OutsideSource { .. }
                | Finding::ElbowsClose { .. }
                | Finding::Dip(_)
                | Finding::SlowAir { .. }
        )
    });
    tally.holds(label(&format!("{:?}", assessment.findings)), sound);
}

#[test]
fn every_figure_of_every_run() {
    let mut tally = Tally::new("runs");
    let rows: Vec<Row> = reference::rows("runs.csv", ROWS);
    no_plan_is_overlooked("runs", rows.len());
    let mut stated = 0;
    for row in &rows {
        let plan = plan_of("runs", &row.run);
        stated += usize::from(matches!(plan.flow, plan::Flow::StatedAirflow { .. }));
        compare(&mut tally, row, &plan, &assess(&plan));
    }
    // Both kinds of flow must be in the set.
    assert!((10..=rows.len() - 10).contains(&stated), "{stated} stated");
    tally.finish(13 * ROWS);
}
