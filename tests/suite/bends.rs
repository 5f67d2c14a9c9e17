//! Bend formulas against `bends.csv`: fluids 1.3.1, `bend_rounded` and `bend_miter`.

use crate::{reference, tally::Tally};
use elbowroom::duct::{elbow, friction};
use elbowroom::units::Angle;
use serde::Deserialize;

/// Of K: the same closed formula on both sides, in doubles.
const SAME_FORMULA: f64 = 1e-9;
/// Of K by Miller: both sides read one digitised chart, ours at points with straight lines between,
/// theirs by a spline; the printed chart itself cannot be read closer.
const CHART: f64 = 0.05;
/// The set's rows by method.
const RENNELS_ROWS: usize = 108;
const ITO_ROWS: usize = 50;
const MITRE_ROWS: usize = 30;
const MILLER_ROWS: usize = 60;

#[derive(Deserialize)]
struct Row {
    method: String,
    angle_deg: f64,
    radius_over_diameter: Option<f64>,
    reynolds: Option<f64>,
    friction_factor: Option<f64>,
    k: f64,
}

fn check(method: &str, rows: usize, tolerance: f64, k: impl Fn(&Row, Angle) -> Option<f64>) {
    let mut tally = Tally::new("bends");
    let all: Vec<Row> = reference::rows("bends.csv", RENNELS_ROWS + ITO_ROWS + MITRE_ROWS);
    for row in all.iter().filter(|row| row.method == method) {
        let found = k(row, Angle::from_degrees(row.angle_deg)).expect("the row has its inputs");
        let label = format!(
            "{method}, {} deg, r/D {:?}, Re {:?}, f {:?}",
            row.angle_deg, row.radius_over_diameter, row.reynolds, row.friction_factor
        );
        tally.relative(label, found, row.k, tolerance);
    }
    tally.finish(rows);
}

/// Rennels & Hudson 2012, smooth bends.
#[test]
fn rennels() {
    check("rennels", RENNELS_ROWS, SAME_FORMULA, |row, angle| {
        Some(elbow::rennels(angle, row.radius_over_diameter?).at(row.friction_factor?))
    });
}

/// Ito 1960, smooth pipe.
#[test]
fn ito() {
    check("ito", ITO_ROWS, SAME_FORMULA, |row, angle| {
        Some(elbow::ito(angle, row.radius_over_diameter?, row.reynolds?))
    });
}

/// Miller 1990, smooth pipe (so that the duct's friction over a smooth one's is 1).
#[test]
fn miller() {
    check("miller", MILLER_ROWS, CHART, |row, angle| {
        let reynolds = row.reynolds?;
        let smooth = friction::factor(reynolds, 0.0).value;
        Some(elbow::Miller::of(angle, row.radius_over_diameter?).at(smooth, reynolds))
    });
}

/// Rennels & Hudson 2012, sharp mitre without its Reynolds factor.
#[test]
fn mitre() {
    check("mitre_rennels", MITRE_ROWS, SAME_FORMULA, |_, angle| {
        Some(elbow::mitre(angle))
    });
}

/// Every row of the set is checked above.
#[test]
fn no_method_is_overlooked() {
    let known = [
        ("rennels", RENNELS_ROWS),
        ("ito", ITO_ROWS),
        ("mitre_rennels", MITRE_ROWS),
        ("miller", MILLER_ROWS),
    ];
    let rows: Vec<Row> = reference::rows("bends.csv", 1);
    let counted: usize = known
        .iter()
        .map(|(method, least)| {
            let count = rows.iter().filter(|row| row.method == *method).count();
            assert!(count >= *least, "{method}: {count} rows");
            count
        })
        .sum();
    assert_eq!(counted, rows.len());
}

/// The Reynolds factor at the rows of its table (physics text: ASHRAE's rectangular mitre), halfway
/// between two of them, and outside all.
#[test]
fn mitre_reynolds_factor() {
    /// Straight lines between two-digit values: only rounding in doubles.
    const DUST: f64 = 1e-12;
    let mut tally = Tally::new("mitre's Reynolds factor");
    for (reynolds, factor) in [
        (1e3, 1.40),
        (1e4, 1.40),
        (1.5e4, 1.33),
        (2e4, 1.26),
        (3e4, 1.19),
        (4e4, 1.14),
        (5e4, 1.115),
        (6e4, 1.09),
        (8e4, 1.06),
        (1e5, 1.04),
        (1.2e5, 1.02),
        (1.4e5, 1.0),
        (1e6, 1.0),
    ] {
        let found = elbow::mitre_reynolds_factor(reynolds);
        tally.relative(format!("Re {reynolds}"), found, factor, DUST);
    }
    tally.finish(13);
}
