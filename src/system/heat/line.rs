//! Temperature, wall and dew point against developed length, and where the wall is wet.

use super::HeatProfile;
use crate::air::MoistAir;
use crate::plan::ElementId;
use crate::system::CompiledRun;
use crate::units::{Length, MassFlow, Temperature};
use serde::Serialize;

/// One point of the line: the air where a cell ends, and the wall of that cell.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HeatPoint {
    /// The element.
    pub element: ElementId,
    /// Developed length from the dryer's outlet.
    #[serde(rename = "distance_m")]
    pub distance: Length,
    /// Air.
    #[serde(rename = "temperature_degc")]
    pub temperature: Temperature,
    /// The wall's inside.
    #[serde(rename = "wall_temperature_degc")]
    pub wall: Temperature,
    /// Dew point of the air; none for dry air.
    #[serde(rename = "dew_point_degc")]
    pub dew_point: Option<Temperature>,
    /// Humidity ratio of the air.
    #[serde(rename = "humidity_ratio_kg_per_kg")]
    pub humidity_ratio: f64,
}

/// A stretch along which water condenses.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WetStretch {
    /// The element that it begins in.
    pub element: ElementId,
    /// Developed length from the dryer's outlet to its beginning.
    #[serde(rename = "from_m")]
    pub from: Length,
    /// And to its end.
    #[serde(rename = "to_m")]
    pub to: Length,
    /// The coldest of its wall.
    #[serde(rename = "coldest_wall_degc")]
    pub coldest_wall: Temperature,
    /// Water that condenses along it.
    #[serde(rename = "water_kg_per_s")]
    pub water: MassFlow,
}

/// The line from the dryer's outlet on, one point a cell, with the outlet's own before them.
pub fn heat_line(run: &CompiledRun, profile: &HeatProfile) -> Vec<HeatPoint> {
    let dew = |celsius: f64, ratio: f64| {
        let temperature = Temperature::from_celsius(celsius);
        MoistAir::with_humidity_ratio(temperature, profile.pressure, ratio).dew_point()
    };
    let mut line: Vec<HeatPoint> = Vec::with_capacity(profile.cells.len() + 1);
    let mut distance = 0.0;
    let mut known = (f64::NAN, None);
    for cell in &profile.cells {
        let Some(element) = run.elements.get(cell.element) else {
            continue;
        };
        let mut point = |distance: f64, celsius: f64, ratio: f64| {
            #[allow(clippy::float_cmp, reason = "air that loses no water keeps its number")]
            if known.0 != ratio {
                known = (ratio, dew(celsius, ratio));
            }
            HeatPoint {
                element: element.id.clone(),
                distance: Length::from_metres(distance),
                temperature: Temperature::from_celsius(celsius),
                wall: Temperature::from_celsius(cell.wall),
                dew_point: known.1,
                humidity_ratio: ratio,
            }
        };
        if line.is_empty() {
            line.push(point(0.0, profile.celsius, profile.humidity_ratio));
        }
        distance += cell.length;
        line.push(point(distance, cell.celsius, cell.humidity_ratio));
    }
    line
}

/// The stretches along which water condenses, from the outlet on.
pub fn wet_stretches(run: &CompiledRun, profile: &HeatProfile) -> Vec<WetStretch> {
    let mut found: Vec<WetStretch> = Vec::new();
    let mut distance = 0.0;
    let mut goes_on = false;
    for cell in &profile.cells {
        let from = Length::from_metres(distance);
        distance += cell.length;
        let is_wet = cell.water > 0.0;
        let wall = Temperature::from_celsius(cell.wall);
        match found.last_mut().filter(|_| goes_on && is_wet) {
            Some(stretch) => {
                stretch.to = Length::from_metres(distance);
                stretch.water += MassFlow::from_kilograms_per_second(cell.water);
                if wall < stretch.coldest_wall {
                    stretch.coldest_wall = wall;
                }
            }
            None if is_wet => {
                if let Some(element) = run.elements.get(cell.element) {
                    found.push(WetStretch {
                        element: element.id.clone(),
                        from,
                        to: Length::from_metres(distance),
                        coldest_wall: wall,
                        water: MassFlow::from_kilograms_per_second(cell.water),
                    });
                }
            }
            None => {}
        }
        goes_on = is_wet;
    }
    found
}
