//! Bands against `bands.csv` and `bands/NN.json`: 262,144 draws of a scrambled Sobol sequence
//! through a numpy model with fluids' losses and CoolProp's air.
//! Shares against `band_shares.csv`: first-order Sobol indices by pick-freeze on the same model.

use crate::runs::{no_plan_is_overlooked, plan_of};
use crate::{reference, tally::Tally};
use elbowroom::plan::Flow;
use elbowroom::system::{Band, CompiledRun, Share, band_detail, bands};
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

/// The set's bands: plan, then figure and element (empty for the whole run).
type Expected = BTreeMap<String, BTreeMap<(String, String), Band>>;

fn expected() -> Expected {
    let rows: Vec<Row> = reference::rows("bands.csv", 4 * PLANS);
    let mut expected = Expected::new();
    for row in rows {
        let band = Band {
            low: row.percentile_10,
            high: row.percentile_90,
        };
        expected
            .entry(row.plan)
            .or_default()
            .insert((row.figure, row.element.unwrap_or_default()), band);
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
        let found = bands(&run).and_then(|found| Some((found, band_detail(&run)?)));
        let Some((found, detail)) = found else {
            tally.holds(format!("plan {name}: no bands"), false);
            continue;
        };
        let mut compared = 0;
        for (figure, found) in [
            ("airflow_m3_per_s", found.airflow),
            ("back_pressure_pa", found.back_pressure),
            ("velocity_m_per_s", found.velocity),
            ("equivalent_length_m", found.equivalent_length),
        ] {
            let label = format!("plan {name}, {figure}");
            let whole = (figure.to_owned(), String::new());
            compare(&mut tally, &label, found, figures[&whole]);
            compared += 1;
        }
        for (element, found) in run.elements.iter().zip(&detail.elements) {
            let id = element.id.to_string();
            let label = format!("plan {name}, loss of {id}");
            if let Some(expected) = figures.get(&("loss_pa".to_owned(), id)) {
                compare(&mut tally, &label, found.loss, *expected);
                compared += 1;
            }
        }
        assert_eq!(compared, figures.len(), "plan {name}: a row was overlooked");
    }
    // Both kinds of flow must be in the set.
    assert_eq!(stated, PLANS / 4);
    tally.finish(8 * PLANS);
}

/// Two indices that lie closer than this are not told apart.
const APART: f64 = 0.03;

#[derive(Deserialize)]
struct ShareRow {
    plan: String,
    figure: String,
    input: String,
    first_order: f64,
}

#[test]
fn the_first_two_inputs_are_those_of_the_reference() {
    let rows: Vec<ShareRow> = reference::rows("band_shares.csv", 10 * PLANS);
    let mut expected: BTreeMap<(String, String), Vec<(String, f64)>> = BTreeMap::new();
    for row in rows {
        let figure = expected.entry((row.plan, row.figure)).or_default();
        figure.push((row.input, row.first_order));
    }
    let mut tally = Tally::new("shares");
    let (mut firsts, mut seconds) = (0, 0);
    for ((plan, figure), mut inputs) in expected {
        inputs.sort_by(|a, b| b.1.total_cmp(&a.1));
        let (run, _) = CompiledRun::of(&plan_of("bands", &plan));
        let found = band_detail(&run).expect("air moves in every draw");
        let found: &[Share] = match figure.as_str() {
            "airflow_m3_per_s" => &found.airflow_shares,
            _ => &found.back_pressure_shares,
        };
        let of = |input: &str| {
            let share = found.iter().find(|share| share.input.to_string() == input);
            share.map_or(0.0, |share| share.share)
        };
        for (input, index) in &inputs {
            // Under a hundredth a share is left out.
            let label = format!("plan {plan}, {figure}, {input}");
            tally.within(label, of(input), *index, APART);
        }
        let index = |rank: usize| inputs.get(rank).map_or(0.0, |input| input.1);
        let named = |rank: usize| found.get(rank).map(|share| share.input.to_string());
        for (rank, count) in [(0, &mut firsts), (1, &mut seconds)] {
            let is_apart = index(rank) - index(rank + 1) >= APART
                && (rank == 0 || index(0) - index(1) >= APART);
            if is_apart {
                let label = format!("plan {plan}, {figure}, rank {rank}: {:?}", named(rank));
                let reference = inputs[rank].0.as_str();
                tally.holds(label, named(rank).as_deref() == Some(reference));
                *count += 1;
            }
        }
    }
    assert!(
        firsts > 60 && seconds > 50,
        "{firsts} firsts, {seconds} seconds"
    );
    tally.finish(PLANS);
}
