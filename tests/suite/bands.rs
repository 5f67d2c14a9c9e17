//! Bands against `bands.csv` and `bands/NN.json`: 262,144 draws of a scrambled Sobol sequence
//! through a numpy model with fluids' losses and CoolProp's air.
//!
//! The set also has the bands of equivalent length and of every element's loss.

use crate::runs::{no_plan_is_overlooked, plan_of};
use crate::{reference, tally::Tally};
use elbowroom::plan::Flow;
use elbowroom::system::{Band, CompiledRun, bands};
use serde::Deserialize;
use std::collections::BTreeMap;

/// Of a percentile: air taken as ideal here and as real there (0.6 %), and a sample of 512.
const OF_VALUE: f64 = 0.02;
/// Of the band's width, where that allows more: a wide band read from 512 draws.
const OF_WIDTH: f64 = 0.05;
/// The set's bar.
const PLANS: usize = 40;

#[derive(Deserialize)]
struct Row {
    plan: String,
    figure: String,
    element: Option<String>,
    percentile_10: f64,
    percentile_90: f64,
}

/// The set's bands of whole runs: plan, then figure.
fn expected() -> BTreeMap<String, BTreeMap<String, Band>> {
    let rows: Vec<Row> = reference::rows("bands.csv", 4 * PLANS);
    let mut expected: BTreeMap<String, BTreeMap<String, Band>> = BTreeMap::new();
    for row in rows.into_iter().filter(|row| row.element.is_none()) {
        let band = Band {
            low: row.percentile_10,
            high: row.percentile_90,
        };
        expected
            .entry(row.plan)
            .or_default()
            .insert(row.figure, band);
    }
    expected
}

fn compare(tally: &mut Tally, label: &str, found: Band, expected: Band) {
    let width = expected.high - expected.low;
    for (end, found, expected) in [
        ("10th", found.low, expected.low),
        ("90th", found.high, expected.high),
    ] {
        let allowed = (OF_VALUE * expected.abs()).max(OF_WIDTH * width);
        tally.within(
            format!("{label}, {end} percentile"),
            found,
            expected,
            allowed,
        );
    }
}

#[test]
fn the_bands_are_those_of_a_large_sample() {
    let mut tally = Tally::new("bands");
    let expected = expected();
    no_plan_is_overlooked("bands", expected.len());
    let mut stated = 0;
    for (name, figures) in &expected {
        let plan = plan_of("bands", name);
        stated += usize::from(matches!(plan.flow, Flow::StatedAirflow { .. }));
        let (run, _) = CompiledRun::of(&plan);
        // Air moves in every draw of the large sample.
        let Some(found) = bands(&run) else {
            tally.holds(format!("plan {name}: no bands"), false);
            continue;
        };
        for (figure, found) in [
            ("airflow_m3_per_s", found.airflow),
            ("back_pressure_pa", found.back_pressure),
            ("velocity_m_per_s", found.velocity),
        ] {
            let label = format!("plan {name}, {figure}");
            compare(&mut tally, &label, found, figures[figure]);
        }
    }
    // Both kinds of flow must be in the set.
    assert_eq!(stated, PLANS / 4);
    tally.finish(6 * PLANS);
}
