//! The ledger: one row an element in run order, fed to every screen, sheet and file.

use super::compiled::Passage;
use super::{CompiledElement, CompiledRun, Draw, ElementKind, OperatingPoint, State};
use crate::duct::elbow::{Method, side_by_side};
use crate::plan::{BendMethod, ElbowKind};
use crate::source::Coefficient;
use crate::units::{Airflow, Length, Pressure};
use std::cmp::Reverse;

/// One element's figures.
#[derive(Debug, Clone, PartialEq)]
pub struct LedgerRow {
    /// The element.
    pub element: CompiledElement,
    /// Its loss of total pressure.
    pub loss: Pressure,
    /// Its share of the sum of losses, 0..1.
    pub share: f64,
    /// 1 for the greatest loss; of two alike the first in the run leads.
    pub rank: usize,
    /// The length of straight rigid duct of the run's diameter that loses as much here and now.
    pub equivalent_length: Length,
    /// What its loss rests on.
    pub coefficient: Coefficient,
    /// The air's state in it.
    pub state: State,
    /// What the air's weight adds to the pressure at its foot; a warm riser takes off.
    pub stack: Pressure,
    /// From which to which share of its length water condenses on its wall, if any does.
    pub wet: Option<(f64, f64)>,
    /// What of the airflow leaves by it, for a leak; negative where air is drawn in.
    pub escaped: Airflow,
}

impl LedgerRow {
    /// Whether it is a joint by which air leaves the run or comes in.
    pub fn leaks(&self) -> bool {
        matches!(self.element.kind, ElementKind::Leak { .. })
    }

    /// K by each published method, for a smooth elbow; none where a method does not cover it.
    pub fn methods(&self) -> Vec<(BendMethod, Option<f64>)> {
        let ElementKind::Elbow {
            angle,
            elbow: ElbowKind::Smooth,
            radius,
        } = self.element.kind
        else {
            return Vec::new();
        };
        let ratio = radius.metres() / self.element.bore.diameter;
        let covering = side_by_side(angle, ratio, self.state.wall_friction, self.state.reynolds);
        Method::ALL
            .map(choice_of)
            .into_iter()
            .zip(covering)
            .collect()
    }
}

/// All rows at one airflow.
#[derive(Debug, Clone, PartialEq)]
pub struct Ledger {
    /// In the order in which the air meets the elements.
    pub rows: Vec<LedgerRow>,
}

impl Ledger {
    /// The ledger of `run` at its operating point, with likely inputs.
    pub fn of(run: &CompiledRun, point: &OperatingPoint) -> Self {
        let evaluation = &point.evaluation;
        let constant;
        let air = if let Some(profile) = &point.heat {
            &profile.air
        } else {
            constant = run.air();
            &constant
        };
        let per_diameter = evaluation.velocity_pressure * evaluation.friction_factor;
        let end = evaluation.airflow_at_end;
        let likely = run.values(&Draw::LIKELY);
        // A row is large: passages are gathered on the way back, and each row is then written once.
        let mut passages: Vec<Passage> = Vec::with_capacity(run.elements.len());
        run.each_from_end(end, &likely, air, |_, passage| passages.push(passage));
        let row = |(element, passage): (&CompiledElement, &Passage)| LedgerRow {
            element: element.clone(),
            loss: passage.loss,
            share: passage.loss / evaluation.loss,
            rank: 0,
            equivalent_length: run.diameter * (passage.loss / per_diameter),
            coefficient: run.grounds(element, &passage.state, &likely),
            state: passage.state,
            stack: passage.stack,
            escaped: passage.escaped,
            wet: None,
        };
        let along = run.elements.iter().zip(passages.iter().rev());
        let mut rows: Vec<LedgerRow> = along.map(row).collect();
        if let Some(profile) = &point.heat {
            profile.each_wet_share(|index, share| rows[index].wet = Some(share));
        }
        let mut order: Vec<(Reverse<u64>, usize)> = rows
            .iter()
            .enumerate()
            .map(|(index, row)| (Reverse(in_order(row.loss.pascals())), index))
            .collect();
        order.sort_unstable();
        for (place, (_, index)) in order.into_iter().enumerate() {
            rows[index].rank = place + 1;
        }
        Self { rows }
    }

    /// The row with the greatest loss.
    pub fn dominant(&self) -> Option<&LedgerRow> {
        self.rows.iter().find(|row| row.rank == 1)
    }
}

/// A whole number that is the greater the greater `value` is, in the order of `f64::total_cmp`: quicker to
/// sort by.
fn in_order(value: f64) -> u64 {
    const SIGN: u64 = 1 << 63;
    let bits = value.to_bits();
    if bits & SIGN == 0 { bits | SIGN } else { !bits }
}

/// The plan's word for a method.
fn choice_of(method: Method) -> BendMethod {
    match method {
        Method::Rennels => BendMethod::Rennels,
        Method::Miller => BendMethod::Miller,
        Method::Ito => BendMethod::Ito,
        Method::Idelchik => BendMethod::Idelchik,
    }
}
