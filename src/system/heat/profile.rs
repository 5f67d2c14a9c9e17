//! What heat and moisture do along the run.

use super::AirAlong;
use crate::units::{Pressure, Temperature};

/// One cell of the march.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatCell {
    /// The element's place in the run.
    pub element: usize,
    /// Length, m.
    pub length: f64,
    /// Air that leaves it, °C.
    pub celsius: f64,
    /// Humidity ratio of the air that leaves it.
    pub humidity_ratio: f64,
    /// The wall's inside, °C.
    pub wall: f64,
    /// Water that condenses in it, kg/s.
    pub water: f64,
    /// Heat that goes out through its wall, W.
    pub heat: f64,
    /// Heat that its water takes along, W above water of 0 °C.
    pub water_heat: f64,
}

/// One element's part of the profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ElementHeat {
    /// Air that enters.
    pub entering: Temperature,
    /// Air that leaves.
    pub leaving: Temperature,
    /// Volume of the air that enters and that leaves, over that at the dryer's outlet.
    pub expansion: (f64, f64),
    /// The coldest of its wall; none where it has no length.
    pub coldest_wall: Option<Temperature>,
    /// Humidity ratio of the air that leaves.
    pub humidity_ratio: f64,
    /// Water that condenses in it, kg/s.
    pub water: f64,
}

/// Temperature, moisture and water along a run, at one airflow.
#[derive(Debug, Clone, PartialEq)]
pub struct HeatProfile {
    /// Air at the dryer's outlet, °C.
    pub celsius: f64,
    /// Its humidity ratio.
    pub humidity_ratio: f64,
    /// Barometric pressure.
    pub pressure: Pressure,
    /// Dry air that the dryer sends out, kg/s.
    pub dry_air: f64,
    /// From the outlet on.
    pub cells: Vec<HeatCell>,
    /// In the order of the run's elements.
    pub elements: Vec<ElementHeat>,
    /// The densities that follow.
    pub air: AirAlong,
}

impl HeatProfile {
    /// Air at the termination.
    pub fn leaving(&self) -> Temperature {
        let last = self.cells.last().map_or(self.celsius, |cell| cell.celsius);
        Temperature::from_celsius(last)
    }

    /// Water that condenses in the whole run, kg/s.
    pub fn water(&self) -> f64 {
        self.cells.iter().map(|cell| cell.water).sum()
    }

    /// Heat that goes out through the walls, W.
    pub fn heat(&self) -> f64 {
        self.cells.iter().map(|cell| cell.heat).sum()
    }

    /// Gives `take` each element on whose wall water condenses, with the shares of its length between
    /// which it does.
    pub fn each_wet_share(&self, mut take: impl FnMut(usize, (f64, f64))) {
        for cells in self.cells.chunk_by(|a, b| a.element == b.element) {
            let length: f64 = cells.iter().map(|cell| cell.length).sum();
            let mut along = 0.0;
            let mut wet: Option<(f64, f64)> = None;
            for cell in cells {
                let from = along;
                along += cell.length;
                if cell.water > 0.0 {
                    wet = Some((wet.map_or(from, |(first, _)| first), along));
                }
            }
            if let Some((from, to)) = wet {
                take(cells[0].element, (from / length, to / length));
            }
        }
    }

    /// The coldest wall and the cell that it is in; none where nothing has a length.
    pub fn coldest_wall(&self) -> Option<(Temperature, &HeatCell)> {
        let cells = self.cells.iter();
        let coldest = cells.min_by(|a, b| a.wall.total_cmp(&b.wall))?;
        Some((Temperature::from_celsius(coldest.wall), coldest))
    }
}
