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
    let losses: Pressure = ledger.rows.iter().filter(in_duct).map(|row| row.loss).sum();
    let stack = point.evaluation.stack;
    let mut total = losses + stack;
    let mut distance = Length::ZERO;
    let mut line = Vec::with_capacity(ledger.rows.len() * 2);
    for (index, row) in ledger.rows.iter().enumerate() {
        if !in_duct(&row) {
            continue;
        }
        let is_end = matches!(row.element.kind, ElementKind::Termination { .. });
        let mean = row.state.velocity_pressure;
        // At one mass flow velocity pressure goes with the volume.
        let (q, q_leaving) = match &point.heat {
            None => (mean, mean),
            Some(profile) => {
                let own = profile.air.at(index).expansion;
                let (entering, leaving) = profile.elements[index].expansion;
                (mean * (entering / own), mean * (leaving / own))
            }
        };
        line.push(PressurePoint {
            element: row.element.id.clone(),
            distance,
            total,
            r#static: total - q,
        });
        let along = row.element.developed_length;
        total = total - row.loss - row.stack;
        distance += along;
        // Past the end the air has come to rest.
        let q = if is_end { Pressure::ZERO } else { q_leaving };
        line.push(PressurePoint {
            element: row.element.id.clone(),
            distance,
            total,
            r#static: total - q,
        });
    }
    line
}
