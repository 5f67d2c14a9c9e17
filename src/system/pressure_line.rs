//! The pressure line: static and total pressure against developed length.

use super::{ElementKind, Ledger, OperatingPoint};
use crate::plan::ElementId;
use crate::units::{Length, Pressure};
use serde::Serialize;

/// One point of the line, against the air outdoors at the height of the point.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PressurePoint {
    /// The element that begins (or, for the last point, ended) here.
    pub element: ElementId,
    /// Developed length from the dryer's outlet.
    #[serde(rename = "distance_m")]
    pub distance: Length,
    /// Total pressure.
    #[serde(rename = "total_pressure_pa")]
    pub total: Pressure,
    /// Static pressure: total less the velocity pressure of the duct here.
    #[serde(rename = "static_pressure_pa")]
    pub r#static: Pressure,
}

/// The line from the dryer's outlet to the open air: two points an element, where the air enters it
/// and where it leaves. A fitting without length makes a step; static pressure may rise at an
/// enlargement. The draught of warm air acts where the run rises or drops.
///
/// Make-up air acts before the blower and stands in the back pressure, not on the line.
pub fn pressure_line(point: &OperatingPoint, ledger: &Ledger) -> Vec<PressurePoint> {
    let in_duct =
        |row: &&super::LedgerRow| !matches!(row.element.kind, ElementKind::MakeUpAir { .. });
    let rise: Length = ledger.rows.iter().map(|row| row.element.rise).sum();
    let losses: Pressure = ledger.rows.iter().filter(in_duct).map(|row| row.loss).sum();
    let stack = point.evaluation.stack;
    let mut total = losses + stack;
    let mut distance = Length::ZERO;
    let mut line = Vec::with_capacity(ledger.rows.len() * 2);
    for row in ledger.rows.iter().filter(in_duct) {
        let is_end = matches!(row.element.kind, ElementKind::Termination { .. });
        let q = row.state.velocity_pressure;
        line.push(PressurePoint {
            element: row.element.id.clone(),
            distance,
            total,
            r#static: total - q,
        });
        let along = row.element.developed_length;
        let draught = if rise == Length::ZERO {
            Pressure::ZERO
        } else {
            stack * (row.element.rise / rise)
        };
        total = total - row.loss - draught;
        distance += along;
        // Past the end the air has come to rest.
        let q = if is_end { Pressure::ZERO } else { q };
        line.push(PressurePoint {
            element: row.element.id.clone(),
            distance,
            total,
            r#static: total - q,
        });
    }
    line
}
