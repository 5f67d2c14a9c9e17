//! From length and temperature to the plot of temperatures, on the page and in its file alike.

use super::plot_size::{PLOT_FOOT, PLOT_HEIGHT, PLOT_LEFT, PLOT_RIGHT, PLOT_TOP, PLOT_WIDTH};
use crate::plan::ElementId;
use crate::system::{CompiledRun, HeatPoint, HeatProfile, WetStretch, heat_line, wet_stretches};
use crate::units::Temperature;
use std::fmt::Write;

/// An element without length is given this width where the pointer looks for it.
const LEAST_HIT: f64 = 8.0;

/// One of the three lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HeatLine {
    /// Of the air.
    Air,
    /// Of the wall.
    Wall,
    /// The dew point of the air.
    DewPoint,
}

impl HeatLine {
    /// The temperature of the line at a place; none for the dew point of dry air.
    pub fn of(self, at: &HeatPoint) -> Option<Temperature> {
        match self {
            Self::Air => Some(at.temperature),
            Self::Wall => Some(at.wall),
            Self::DewPoint => at.dew_point,
        }
    }
}

/// The plot.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatPlot {
    /// What all three lines are drawn from.
    pub line: Vec<HeatPoint>,
    /// Where the wall is wet.
    pub wet: Vec<WetStretch>,
    longest: f64,
    /// Where the axis begins, degrees Celsius.
    pub lowest: f64,
    /// Where it ends, degrees Celsius.
    pub highest: f64,
}

impl HeatPlot {
    /// Of a run's profile.
    pub fn of(run: &CompiledRun, profile: &HeatProfile) -> Self {
        /// The axis begins and ends at a multiple of this, K.
        const ROUND: f64 = 5.0;
        let line = heat_line(run, profile);
        let lines = [HeatLine::Air, HeatLine::Wall, HeatLine::DewPoint];
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

    /// Across, of a distance along the run in m.
    pub fn x(&self, metres: f64) -> f64 {
        PLOT_LEFT + (PLOT_WIDTH - PLOT_LEFT - PLOT_RIGHT) * metres / self.longest
    }

    /// Down, of a temperature in degrees Celsius.
    pub fn y(&self, celsius: f64) -> f64 {
        let share = (celsius - self.lowest) / (self.highest - self.lowest);
        PLOT_HEIGHT - PLOT_FOOT - (PLOT_HEIGHT - PLOT_FOOT - PLOT_TOP) * share
    }

    /// The path of a line; empty for the dew point of dry air.
    pub fn path(&self, line: HeatLine) -> String {
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
    pub fn wet_path(&self) -> String {
        let mut data = String::new();
        for stretch in &self.wet {
            let (from, to) = (self.x(stretch.from.metres()), self.x(stretch.to.metres()));
            let _ = write!(
                data,
                "M{from:.1} {PLOT_TOP}H{to:.1}V{}H{from:.1}Z",
                PLOT_HEIGHT - PLOT_FOOT
            );
        }
        data
    }

    /// Where an element stands on the plot: from, to.
    pub fn span(&self, id: &ElementId) -> Option<(f64, f64)> {
        let first = self.line.iter().skip(1).position(|at| at.element == *id)?;
        let last = self.line.iter().rposition(|at| at.element == *id)?;
        let (from, to) = (
            self.x(self.line[first].distance.metres()),
            self.x(self.line[last].distance.metres()),
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

    /// Where the lines' names stand at their right ends, each clear of the others.
    pub fn name_places(&self) -> Vec<(f64, HeatLine)> {
        /// From one name to the next at least, and from a name to its line.
        const APART: f64 = 14.0;
        const ABOVE: f64 = 5.0;
        let Some(last) = self.line.last() else {
            return Vec::new();
        };
        let lines = [HeatLine::Air, HeatLine::Wall, HeatLine::DewPoint];
        let places = lines.into_iter().filter_map(|line| {
            let celsius = line.of(last)?.celsius();
            Some((self.y(celsius) - ABOVE, line))
        });
        let mut found: Vec<(f64, HeatLine)> = places.collect();
        found.sort_by(|one, other| one.0.total_cmp(&other.0));
        // From the top down, then up again from the axis.
        let mut least = PLOT_TOP + 4.0;
        for (y, _) in &mut found {
            *y = y.max(least);
            least = *y + APART;
        }
        let mut most = PLOT_HEIGHT - PLOT_FOOT - 4.0;
        for (y, _) in found.iter_mut().rev() {
            *y = y.min(most);
            most = *y - APART;
        }
        found
    }
}
