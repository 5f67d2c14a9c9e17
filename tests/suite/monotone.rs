//! What must grow and what must fall, whatever the run: more length, a rougher wall or another
//! elbow takes more pressure at the same airflow and leaves less airflow from the same blower.
//! Source: second law; every loss is a loss.

use crate::random_plan::{
    elbow, lengthened, turn_deg, with_blower, with_elbow, with_stated_airflow,
};
use crate::seeded;
use elbowroom::plan::{AlongRun, Elbow, ElbowKind, Input, Plan};
use elbowroom::system::{
    CompiledRun, Draw, Driver, Evaluation, Finding, INPUTS, assess, operating_point,
};
use elbowroom::units::{Length, Pressure};
use proptest::prelude::*;

const CASES: u32 = 200;

fn evaluation(plan: &Plan, draw: &Draw) -> Result<Evaluation, TestCaseError> {
    let (run, findings) = CompiledRun::of(plan);
    // The random room does not heed the run.
    let fits = findings
        .iter()
        .all(|finding| matches!(finding, Finding::OutsideSource { .. } | Finding::NoRoom(_)));
    prop_assert!(fits, "{findings:?}");
    operating_point(&run, draw)
        .map(|point| point.evaluation)
        .map_err(|error| TestCaseError::fail(format!("{error}")))
}

/// Every input at its middle but the roughness, which is at `quantile` of its span.
fn roughness(quantile: f64) -> Draw {
    let mut quantiles = [0.5; INPUTS];
    quantiles[Input::RigidRoughness as usize] = quantile;
    Draw::at(quantiles)
}

fn loses_more(cools: AlongRun, less: &Evaluation, more: &Evaluation) -> Result<(), TestCaseError> {
    prop_assert!(
        more.loss > less.loss,
        "{:?} after {:?}",
        more.loss,
        less.loss
    );
    // The stack is apart: none of these changes moves the termination up or down.
    // Where the air cools, a longer way leaves it heavier behind: that too is the stack's.
    if cools == AlongRun::KeepsTemperature {
        prop_assert_eq!(more.stack, less.stack);
    }
    let apart = |of: Pressure, found: &Evaluation| of - found.stack;
    for of in [
        |found: &Evaluation| found.total_pressure,
        |found: &Evaluation| found.back_pressure,
    ] {
        prop_assert!(apart(of(more), more) > apart(of(less), less));
    }
    Ok(())
}

fn moves_less(more: &Evaluation, less: &Evaluation) -> Result<(), TestCaseError> {
    prop_assert!(
        less.airflow < more.airflow,
        "{:?} after {:?}",
        less.airflow,
        more.airflow
    );
    prop_assert!(less.back_pressure > more.back_pressure);
    Ok(())
}

#[test]
fn loss_rises_with_length() {
    let values = (
        with_stated_airflow(),
        any::<prop::sample::Index>(),
        0.01..5.0_f64,
    );
    seeded::check(CASES, &values, |(plan, leg, more_m)| {
        let longer = lengthened(&plan, leg.index(plan.run.points.len()), more_m);
        loses_more(
            plan.exhaust.along_run,
            &evaluation(&plan, &Draw::LIKELY)?,
            &evaluation(&longer, &Draw::LIKELY)?,
        )
    });
}

#[test]
fn loss_rises_with_roughness() {
    let values = (with_stated_airflow(), 0.0..0.9_f64, 0.01..0.1_f64);
    seeded::check(CASES, &values, |(plan, quantile, more)| {
        loses_more(
            plan.exhaust.along_run,
            &evaluation(&plan, &roughness(quantile))?,
            &evaluation(&plan, &roughness(quantile + more))?,
        )
    });
}

#[test]
fn loss_rises_with_another_elbow() {
    let values = (with_stated_airflow(), elbow(), turn_deg());
    seeded::check(CASES, &values, |(plan, elbow, turn_deg)| {
        loses_more(
            plan.exhaust.along_run,
            &evaluation(&plan, &Draw::LIKELY)?,
            &evaluation(&with_elbow(&plan, elbow, turn_deg), &Draw::LIKELY)?,
        )
    });
}

/// The slightest turns too, down to the 0.1 deg from which a turn counts as a bend: the elbow must
/// at least lose what the straight duct lost that it replaces, or a search would draw kinks.
#[test]
fn loss_rises_with_a_slight_elbow() {
    let kinds = prop::sample::select(vec![ElbowKind::Smooth, ElbowKind::Segmented]);
    let values = (with_stated_airflow(), kinds, 4.0..8.0_f64, 0.11..10.0_f64);
    seeded::check(CASES, &values, |(plan, kind, radius_inches, turn_deg)| {
        let elbow = Elbow {
            kind,
            radius: Length::from_inches(radius_inches),
        };
        loses_more(
            plan.exhaust.along_run,
            &evaluation(&plan, &Draw::LIKELY)?,
            &evaluation(&with_elbow(&plan, elbow, turn_deg), &Draw::LIKELY)?,
        )
    });
}

#[test]
fn airflow_falls_with_length() {
    let values = (with_blower(), any::<prop::sample::Index>(), 0.01..5.0_f64);
    seeded::check(CASES, &values, |(plan, leg, more_m)| {
        let longer = lengthened(&plan, leg.index(plan.run.points.len()), more_m);
        moves_less(
            &evaluation(&plan, &Draw::LIKELY)?,
            &evaluation(&longer, &Draw::LIKELY)?,
        )
    });
}

#[test]
fn airflow_falls_with_roughness() {
    let values = (with_blower(), 0.0..0.9_f64, 0.01..0.1_f64);
    seeded::check(CASES, &values, |(plan, quantile, more)| {
        moves_less(
            &evaluation(&plan, &roughness(quantile))?,
            &evaluation(&plan, &roughness(quantile + more))?,
        )
    });
}

#[test]
fn airflow_falls_with_another_elbow() {
    let values = (with_blower(), elbow(), turn_deg());
    seeded::check(CASES, &values, |(plan, elbow, turn_deg)| {
        moves_less(
            &evaluation(&plan, &Draw::LIKELY)?,
            &evaluation(&with_elbow(&plan, elbow, turn_deg), &Draw::LIKELY)?,
        )
    });
}

/// The curves meet where the operating point says: source, the definition of an operating point.
#[test]
fn the_blower_gives_what_the_run_takes() {
    /// Pa: the airflow is promised to 2e-7 m³/s, and neither curve is steeper than 2e4 Pa s/m³
    /// below 0.1 m³/s in a run of this kind.
    const GAP: f64 = 4e-3;
    seeded::check(CASES, &with_blower(), |plan| {
        let assessment = assess(&plan);
        prop_assert_eq!(assessment.run.driver, Driver::TypicalBlower);
        let (point, ledger) = assessment.working.expect("air moves");
        let found = point.evaluation;
        let blower = point.blower.expect("the blower is named");
        let rise = blower.static_rise(found.airflow, assessment.run.density);
        let gap = (rise - found.back_pressure).pascals().abs();
        prop_assert!(gap < GAP, "{gap} Pa");
        let shares: f64 = ledger.rows.iter().map(|row| row.share).sum();
        prop_assert!((shares - 1.0).abs() < 1e-12, "shares add up to {shares}");
        Ok(())
    });
}
