//! From length and pressure to the plot of the pressure line, on the page and in its file alike.

use super::plot_size::{PLOT_FOOT, PLOT_HEIGHT, PLOT_LEFT, PLOT_RIGHT, PLOT_TOP, PLOT_WIDTH};
use crate::plan::ElementId;
use crate::system::PressurePoint;
use crate::units::Pressure;
use std::fmt::Write;

/// A fitting without length is given this width where the pointer looks for it.
const LEAST_HIT: f64 = 8.0;

/// A static pressure that was read: how far along, what was read and what the clean run reads, Pa.
#[derive(Debug, Clone, PartialEq)]
pub struct PlotPoint {
    /// How far along the run, m.
    pub metres: f64,
    /// What was read, Pa.
    pub read: f64,
    /// What the clean run reads there, Pa.
    pub clean: Option<f64>,
}

/// From length and pressure to the plot.
#[derive(Debug, Clone, PartialEq)]
pub struct PressurePlot {
    /// The line.
    pub line: Vec<PressurePoint>,
    /// What was read.
    pub readings: Vec<PlotPoint>,
    longest: f64,
    lowest: f64,
    /// The greatest pressure on it, Pa.
    pub highest: f64,
}

impl PressurePlot {
    /// No run.
    pub fn empty() -> Self {
        Self::of(Vec::new(), Vec::new())
    }

    /// Puts both on the wider of the two's axes.
    pub fn share_axes(&mut self, other: &mut Self) {
        let longest = self.longest.max(other.longest);
        let lowest = self.lowest.min(other.lowest);
        let highest = self.highest.max(other.highest);
        for plot in [self, other] {
            (plot.longest, plot.lowest, plot.highest) = (longest, lowest, highest);
        }
    }

    /// The end of the axis along the run, m.
    pub const fn longest(&self) -> f64 {
        self.longest
    }

    /// Of a line and readings on it.
    pub fn of(line: Vec<PressurePoint>, readings: Vec<PlotPoint>) -> Self {
        let pressures = line
            .iter()
            .flat_map(|at| [at.total.pascals(), at.r#static.pascals()]);
        let read = readings
            .iter()
            .flat_map(|at| core::iter::once(at.read).chain(at.clean));
        let pressures = pressures.chain(read);
        let (lowest, highest) = pressures.fold((0.0_f64, 1.0_f64), |(low, high), pressure| {
            (low.min(pressure), high.max(pressure))
        });
        let longest = line.last().map_or(1.0, |at| at.distance.metres().max(0.1));
        Self {
            line,
            readings,
            longest,
            lowest,
            highest,
        }
    }

    /// Across, of a distance along the run in m.
    pub fn x(&self, metres: f64) -> f64 {
        PLOT_LEFT + (PLOT_WIDTH - PLOT_LEFT - PLOT_RIGHT) * metres / self.longest
    }

    /// Down, of a pressure in Pa.
    pub fn y(&self, pascals: f64) -> f64 {
        let share = (pascals - self.lowest) / (self.highest - self.lowest);
        PLOT_HEIGHT - PLOT_FOOT - (PLOT_HEIGHT - PLOT_FOOT - PLOT_TOP) * share
    }

    /// The path of a pressure along the run.
    pub fn path(&self, pressure: impl Fn(&PressurePoint) -> Pressure) -> String {
        let mut data = String::new();
        for (index, at) in self.line.iter().enumerate() {
            let (x, y) = (self.x(at.distance.metres()), self.y(pressure(at).pascals()));
            let letter = if index == 0 { 'M' } else { 'L' };
            // Writing into a string cannot fail.
            let _ = write!(data, "{letter}{x:.1} {y:.1}");
        }
        data
    }

    /// Where an element stands on the plot: from, to.
    pub fn span(&self, id: &ElementId) -> Option<(f64, f64)> {
        let mut of_element = self.line.iter().filter(|at| at.element == *id);
        let (first, last) = (of_element.next()?, of_element.next()?);
        let (from, to) = (
            self.x(first.distance.metres()),
            self.x(last.distance.metres()),
        );
        let short = (LEAST_HIT - (to - from)).max(0.0) / 2.0;
        Some((from - short, to + short))
    }

    /// The elements in the order in which they stand on it.
    pub fn elements(&self) -> Vec<ElementId> {
        let mut ids: Vec<ElementId> = self.line.iter().map(|at| at.element.clone()).collect();
        ids.dedup();
        ids
    }
}
