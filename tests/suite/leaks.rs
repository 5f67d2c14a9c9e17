//! Leaking joints against `leaks.csv` and `leaks/NN.json`: orifices, fluids' friction and CoolProp's
//! air, every stretch's airflow solved at once by scipy.

use crate::runs::{RUN, no_plan_is_overlooked, plan_of};
use crate::{reference, tally::Tally};
use elbowroom::report::figures;
use elbowroom::system::Finding;
use serde::Deserialize;

const ROWS: usize = 12;

#[derive(Deserialize)]
struct Row {
    run: String,
    airflow_m3_per_s: f64,
    airflow_at_end_m3_per_s: f64,
    back_pressure_pa: f64,
}

#[test]
fn what_leaves_by_the_joints_is_scipys() {
    let mut tally = Tally::new("leaks");
    let rows: Vec<Row> = reference::rows("leaks.csv", ROWS);
    no_plan_is_overlooked("leaks", rows.len());
    for row in &rows {
        let (figures, assessment) = figures(&plan_of("leaks", &row.run));
        let totals = figures.totals.expect("air moves");
        let label = |figure: &str| format!("run {}, {figure}", row.run);
        let airflow = totals.airflow.cubic_metres_per_second();
        let at_end = totals.airflow_at_end.cubic_metres_per_second();
        tally.relative(label("airflow"), airflow, row.airflow_m3_per_s, RUN);
        tally.relative(
            label("at the end"),
            at_end,
            row.airflow_at_end_m3_per_s,
            RUN,
        );
        let back = totals.back_pressure.pascals();
        tally.relative(label("back pressure"), back, row.back_pressure_pa, RUN);
        // What leaves is what the ledger's rows and the findings say.
        let escaped = |finding: &Finding| match finding {
            Finding::JointLeaks { escaped, .. } => Some(escaped.cubic_metres_per_second()),
            _ => None,
        };
        let said: f64 = assessment.findings.iter().filter_map(escaped).sum();
        tally.within(label("sum of leaks"), said, airflow - at_end, 1e-12);
    }
    tally.finish(4 * ROWS);
}
