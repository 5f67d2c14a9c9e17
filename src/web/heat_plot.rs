//! From length and temperature to the plot of temperatures.

use crate::plan::ElementId;
use crate::system::{CompiledRun, HeatProfile};
use crate::system::{HeatPoint, WetStretch, heat_line, wet_stretches};
use crate::units::Temperature;
use std::fmt::Write;

/// The plot's size and margins, in its own units, as the pressure line has them.
pub(super) const WIDTH: f64 = 640.0;
pub(super) const HEIGHT: f64 = 190.0;
pub(super) const LEFT: f64 = 72.0;
pub(super) const RIGHT: f64 = 12.0;
pub(super) const TOP: f64 = 20.0;
pub(super) const FOOT: f64 = 34.0;
/// An element without length is given this width where the pointer looks for it.
const LEAST_HIT: f64 = 8.0;

/// One of the three lines.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Line {
    Air,
    Wall,
    DewPoint,
}

impl Line {
    pub(super) fn of(self, at: &HeatPoint) -> Option<Temperature> {
        match self {
            Self::Air => Some(at.temperature),
            Self::Wall => Some(at.wall),
            Self::DewPoint => at.dew_point,
        }
    }
}

#[derive(Clone, PartialEq)]
pub(super) struct HeatPlot {
    pub(super) line: Vec<HeatPoint>,
    pub(super) wet: Vec<WetStretch>,
    longest: f64,
    pub(super) lowest: f64,
    pub(super) highest: f64,
}

impl HeatPlot {
    pub(super) fn of(run: &CompiledRun, profile: &HeatProfile) -> Self {
        /// The axis begins and ends at a multiple of this, K.
        const ROUND: f64 = 5.0;
        let line = heat_line(run, profile);
        let lines = [Line::Air, Line::Wall, Line::DewPoint];
        let all = line.iter().flat_map(|at| lines.map(|of| of.of(at)));
        let (lowest, highest) = all.flatten().fold(
            (f64::INFINITY, f64::NEG_INFINITY),
            |(low, high), temperature| {
                let celsius = temperature.celsius();
                (low.min(celsius), high.max(celsius))
            },
        );
        let longest = line.last().map_or(0.1, |at| at.distance.metres().max(0.1));
        let (lowest, highest) = if lowest < highest {
            (
                (lowest / ROUND).floor() * ROUND,
                (highest / ROUND).ceil() * ROUND,
            )
        } else {
            (0.0, ROUND)
        };
        Self {
            wet: wet_stretches(run, profile),
            line,
            longest,
            lowest,
            highest,
        }
    }

    pub(super) fn x(&self, metres: f64) -> f64 {
        LEFT + (WIDTH - LEFT - RIGHT) * metres / self.longest
    }

    pub(super) fn y(&self, celsius: f64) -> f64 {
        let share = (celsius - self.lowest) / (self.highest - self.lowest);
        HEIGHT - FOOT - (HEIGHT - FOOT - TOP) * share
    }

    /// The path of a line; empty for the dew point of dry air.
    pub(super) fn path(&self, line: Line) -> String {
        let mut data = String::new();
        for at in &self.line {
            let Some(temperature) = line.of(at) else {
                continue;
            };
            let (x, y) = (self.x(at.distance.metres()), self.y(temperature.celsius()));
            let letter = if data.is_empty() { 'M' } else { 'L' };
            // Writing into a string cannot fail.
            let _ = write!(data, "{letter}{x:.1} {y:.1}");
        }
        data
    }

    /// The outlines of the wet stretches, filled with hatching.
    pub(super) fn wet_path(&self) -> String {
        let mut data = String::new();
        for stretch in &self.wet {
            let (from, to) = (self.x(stretch.from.metres()), self.x(stretch.to.metres()));
            let _ = write!(
                data,
                "M{from:.1} {TOP}H{to:.1}V{}H{from:.1}Z",
                HEIGHT - FOOT
            );
        }
        data
    }

    /// Where an element stands on the plot: from, to.
    pub(super) fn span(&self, id: &ElementId) -> Option<(f64, f64)> {
        let first = self.line.iter().skip(1).position(|at| at.element == *id)?;
        let last = self.line.iter().rposition(|at| at.element == *id)?;
        let (from, to) = (
            self.x(self.line[first].distance.metres()),
            self.x(self.line[last].distance.metres()),
        );
        let short = (LEAST_HIT - (to - from)).max(0.0) / 2.0;
        Some((from - short, to + short))
    }

    pub(super) fn elements(&self) -> Vec<ElementId> {
        let mut ids: Vec<ElementId> = self.line.iter().map(|at| at.element.clone()).collect();
        ids.dedup();
        ids
    }
}
