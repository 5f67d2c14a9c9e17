//! Static pressures that were read, as points on the pressure line, each beside what the clean run
//! reads there under the same conditions.

use super::store::Store;
use crate::report::pressure_readings;
use crate::scene::{PlotPoint, PressurePlot as Plot};
use crate::system::PressurePoint;
use leptos::prelude::*;

/// The readings of the open visit that belong on `line`, against outdoors as the line is.
pub(super) fn read_points(store: Store, line: &[PressurePoint]) -> Vec<PlotPoint> {
    let (site, open) = (store.site(), store.open_visit.get());
    store.plan.with(|plan| {
        let Some(visit) = plan.visit_or_newest(open.as_deref()) else {
            return Vec::new();
        };
        let clean = site.as_ref().map_or(&[][..], |site| &site.clean);
        pressure_readings(plan, visit, clean, line)
    })
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
