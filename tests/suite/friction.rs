//! The friction factor against `friction.csv`: fluids 1.3.1 (Colebrook 1939, exact form), each
//! turbulent row confirmed by scipy on the equation itself; laminar rows 64/Re.

use crate::{reference, tally::Tally};
use elbowroom::duct::friction;
use elbowroom::source::Reach;
use serde::Deserialize;

/// Of the factor: both sides solve one equation, ours to a promised 1e-9.
const TOLERANCE: f64 = 1e-6;
/// The set's bar.
const ROWS: usize = 200;

#[derive(Deserialize)]
struct Row {
    reynolds: f64,
    relative_roughness: f64,
    darcy_friction_factor: f64,
    regime: String,
}

#[test]
fn the_factor_is_that_of_fluids() {
    let mut tally = Tally::new("friction factor");
    let mut laminar = 0;
    for row in reference::rows::<Row>("friction.csv", ROWS) {
        let label = format!(
            "Re {}, e/D {}, {}",
            row.reynolds, row.relative_roughness, row.regime
        );
        let found = friction::factor(row.reynolds, row.relative_roughness);
        tally.relative(&label, found.value, row.darcy_friction_factor, TOLERANCE);
        tally.equal(&label, &found.reach, &Reach::Within);
        laminar += usize::from(row.regime == "laminar");
    }
    // Both regimes must be in the set.
    assert!(
        (20..=ROWS - 20).contains(&laminar),
        "{laminar} laminar rows"
    );
    tally.finish(2 * ROWS);
}

/// Between laminar and turbulent flow no source determines the factor (Rennels & Hudson 2012,
/// ch. 4): what is given must join both ends without a jump and say that it is no measured value.
#[test]
fn the_blend_joins_laminar_and_turbulent_flow() {
    /// Of the factor, across a step of 1e-6 in Re: a jump would be a thousand times that.
    const JUMP: f64 = 1e-5;
    let mut tally = Tally::new("blend");
    for roughness in [0.0, 1e-4, 1e-3, 0.01, 0.05] {
        for limit in [friction::LAMINAR_BELOW, friction::TURBULENT_FROM] {
            let below = friction::factor(limit * (1.0 - 1e-6), roughness).value;
            let above = friction::factor(limit, roughness).value;
            tally.relative(format!("e/D {roughness} at Re {limit}"), above, below, JUMP);
        }
        let between = friction::factor(3000.0, roughness);
        tally.equal(format!("e/D {roughness}"), &between.reach, &Reach::AtEdge);
        let (thin, thick) = (
            friction::factor(friction::LAMINAR_BELOW, roughness).value,
            friction::factor(friction::TURBULENT_FROM, roughness).value,
        );
        let inside = (thin.min(thick)..=thin.max(thick)).contains(&between.value);
        tally.holds(
            format!("e/D {roughness}: {} lies outside", between.value),
            inside,
        );
    }
    tally.finish(20);
}

/// Moody 1944 draws walls up to e/D 0.05: rougher is said to be beyond.
#[test]
fn a_rougher_wall_than_moodys_is_beyond() {
    assert_eq!(friction::factor(1e5, 0.050_001).reach, Reach::Beyond);
    assert_eq!(friction::factor(1e3, 0.050_001).reach, Reach::Beyond);
}
