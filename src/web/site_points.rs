//! Static pressures that were read, as points on the pressure line, each beside what the clean run
//! reads there under the same conditions.

use super::open_visit::visit_of;
use super::pressure_panel::{Plot, PlotPoint};
use super::store::Store;
use crate::plan::{Against, Entry, Measured, Reading, Spot};
use crate::system::PressurePoint;
use leptos::prelude::*;

/// The readings of the open visit that belong on `line`, against outdoors as the line is.
pub(super) fn read_points(store: Store, line: &[PressurePoint]) -> Vec<PlotPoint> {
    let (site, open) = (store.site(), store.open_visit().get());
    store.plan.with(|plan| {
        let house = plan.site.house_pressure.pascals();
        let visit = visit_of(plan, open.as_deref());
        let entries = visit.map(|visit| visit.entries.iter());
        let entries = entries.into_iter().flatten().enumerate();
        entries
            .filter_map(|(index, entry)| {
                let Entry::Reading(reading) = entry else {
                    return None;
                };
                let (metres, read, against) = point(reading, line)?;
                let offset = if against == Against::Room { house } else { 0.0 };
                let clean = site
                    .as_ref()
                    .and_then(|site| site.clean.get(index).copied().flatten());
                Some(PlotPoint {
                    metres,
                    read: read + offset,
                    clean: clean.map(|clean| clean.likely + offset),
                })
            })
            .collect()
    })
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

#[component]
pub(super) fn ReadingPoints(plot: Memo<Plot>) -> impl IntoView {
    /// Half of a point's size, and of the clean run's tick, in the plot's units.
    const HALF: f64 = 4.5;
    const TICK: f64 = 6.0;
    let points = move || {
        plot.with(|plot| {
            let points = plot.readings.iter();
            points
                .map(|point| {
                    let (x, y) = (plot.x(point.metres), plot.y(point.read));
                    let diamond = format!(
                        "M{x} {}L{} {y}L{x} {}L{} {y}Z",
                        y - HALF,
                        x + HALF,
                        y + HALF,
                        x - HALF
                    );
                    let clean = point.clean.map(|clean| {
                        let clean = plot.y(clean);
                        format!("M{} {clean}H{}M{x} {clean}V{y}", x - TICK, x + TICK)
                    });
                    view! {
                        <path class="plot-clean" d=clean/>
                        <path class="plot-reading" d=diamond/>
                    }
                })
                .collect_view()
        })
    };
    view! { <g>{points}</g> }
}
