//! Operating points against `operating.csv` and `operating/NN.json`: the typical blower against
//! fluids' losses and CoolProp's air, solved by scipy's brentq.

use crate::runs::{Row, compare, no_plan_is_overlooked, plan_of};
use crate::{reference, tally::Tally};
use elbowroom::plan::Flow;
use elbowroom::system::assess;

/// Of the airflow: air alone, taken as ideal here and as real there.
const AIRFLOW: f64 = 0.006;
/// The set's bar.
const ROWS: usize = 40;

#[test]
fn the_airflow_is_scipys() {
    let mut tally = Tally::new("operating points");
    let rows: Vec<Row> = reference::rows("operating.csv", ROWS);
    no_plan_is_overlooked("operating", rows.len());
    for row in &rows {
        let plan = plan_of("operating", &row.run);
        assert_eq!(plan.flow, Flow::TypicalBlower {}, "run {}", row.run);
        let assessment = assess(&plan);
        let (point, _) = assessment.working.as_ref().expect("air moves");
        let found = point.evaluation.airflow.cubic_metres_per_second();
        let expected = row.airflow_m3_per_s;
        tally.relative(format!("run {}", row.run), found, expected, AIRFLOW);
        compare(&mut tally, row, &plan, &assessment);
    }
    tally.finish(14 * ROWS);
}
