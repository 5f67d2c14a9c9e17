//! Static pressures that were read, as points on the pressure line, each beside what the clean run
//! reads there under the same conditions.

use crate::diagnosis::CleanReading;
use crate::plan::{Against, Entry, Measured, Plan, Reading, Spot, Visit};
use crate::scene::PlotPoint;
use crate::system::PressurePoint;

/// The readings of `visit` that belong on `line`, against outdoors as the line is; `clean` has what a
/// clean run would read, one an entry.
pub fn pressure_readings(
    plan: &Plan,
    visit: &Visit,
    clean: &[Option<CleanReading>],
    line: &[PressurePoint],
) -> Vec<PlotPoint> {
    let house = plan.site.house_pressure.pascals();
    let entries = visit.entries.iter().enumerate();
    let points = entries.filter_map(|(index, entry)| {
        let Entry::Reading(reading) = entry else {
            return None;
        };
        let (metres, read, against) = point(reading, line)?;
        let offset = if against == Against::Room { house } else { 0.0 };
        let clean = clean.get(index).copied().flatten();
        Some(PlotPoint {
            metres,
            read: read + offset,
            clean: clean.map(|clean| clean.likely + offset),
        })
    });
    points.collect()
}

fn point(reading: &Reading, line: &[PressurePoint]) -> Option<(f64, f64, Against)> {
    let Measured::StaticPressure {
        pressure, against, ..
    } = reading.measured
    else {
        return None;
    };
    if reading.conditions.open_joint.is_some() {
        return None;
    }
    let metres = match &reading.at {
        Spot::Outlet => 0.0,
        Spot::Hood => line.last()?.distance.metres(),
        Spot::Before(id) => {
            let mut points = line.iter();
            points.find(|at| at.element == *id)?.distance.metres()
        }
    };
    Some((metres, pressure.pascals(), against))
}
