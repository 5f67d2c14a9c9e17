//! The pressure line under the drawing, linked with drawing and ledger.

use super::plot_span::PlotSpan;
use super::site_points::{ReadingPoints, read_points};
use super::store::{Store, label_text};
use crate::plan::ElementId;
use crate::report::words::Label;
use crate::scene::PressurePlot as Plot;
use crate::scene::{PLOT_FOOT as FOOT, PLOT_HEIGHT as HEIGHT, PLOT_LEFT as LEFT};
use crate::scene::{PLOT_RIGHT as RIGHT, PLOT_TOP as TOP, PLOT_WIDTH as WIDTH};
use crate::system::{PressurePoint, pressure_line};
use crate::units::Pressure;
use leptos::prelude::*;

#[component]
pub(super) fn PressurePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    // No air moves: the last plot there was stays behind the word that says so.
    let works = Memo::new(move |_| {
        store
            .results
            .with(|results| results.assessment.working.is_some())
    });
    let plot = Memo::new(move |before: Option<&Plot>| {
        store.steady.with(|results| {
            let working = results.assessment.working.as_ref();
            working.map_or_else(
                || before.cloned().unwrap_or_else(Plot::empty),
                |(point, ledger)| {
                    let line = pressure_line(point, ledger);
                    let readings = read_points(store, &line);
                    Plot::of(line, readings)
                },
            )
        })
    });
    view! {
        <section class="panel pressure" aria-labelledby="pressure-title">
            <h2 id="pressure-title">
                {label_text(Label::PressureLine)} ", "
                {move || store.units.get().pressure_unit()}
            </h2>
            <Show when=move || works.get() fallback=|| view! { <p>{label_text(Label::NoAirflowFigure)}</p> }>
                <PlotView plot/>
            </Show>
            <p class="fine">{label_text(Label::PressureLineMeaning)}</p>
        </section>
    }
}

/// The plot; a change of the plan moves what is drawn and makes nothing anew.
#[component]
fn PlotView(plot: Memo<Plot>) -> impl IntoView {
    let store = expect_context::<Store>();
    let pressure = move |pascals: f64| {
        let shown = store.units.get().pressure(Pressure::from_pascals(pascals));
        shown.figure
    };
    let ids = Memo::new(move |_| plot.with(Plot::elements));
    let of_plot = move |look: fn(&Plot) -> f64| plot.with(look);
    let nought = move || of_plot(|plot| plot.y(0.0));
    let top = move || of_plot(|plot| plot.y(plot.highest));
    let end = move || {
        let last = plot.with(|plot| plot.line.last().map(|at| at.distance));
        last.map(|end| store.units.get().length(end).to_string())
    };
    // Named where the lines are lowest before the end: total above it, static below.
    let name = move |pressure: fn(&PressurePoint) -> Pressure, aside: f64| {
        let before_end = move || {
            plot.with(|plot| {
                let at = plot.line.iter().rev().nth(1)?;
                Some((plot.x(at.distance.metres()), plot.y(pressure(at).pascals())))
            })
        };
        (
            move || before_end().map_or(LEFT, |(x, _)| x - 6.0),
            move || before_end().map_or(TOP, |(_, y)| y + aside),
        )
    };
    let (total_x, total_y) = name(|at| at.total, -7.0);
    let (static_x, static_y) = name(|at| at.r#static, 5.0);
    view! {
        <svg
            class="plot"
            viewBox=format!("0 0 {WIDTH} {HEIGHT}")
            role="img"
            aria-labelledby="pressure-title"
        >
            <For each=move || ids.get() key=Clone::clone children=move |id| view! { <ElementSpan plot id/> }/>
            <path class="plot-axis" d=move || format!("M{LEFT} {TOP}V{}M{LEFT} {}H{}", HEIGHT - FOOT, nought(), WIDTH - RIGHT)/>
            <path class="plot-axis grid" d=move || format!("M{LEFT} {}H{}", top(), WIDTH - RIGHT)/>
            <path class="plot-line total" d=move || plot.with(|plot| plot.path(|at| at.total))/>
            <path class="plot-line static" d=move || plot.with(|plot| plot.path(|at| at.r#static))/>
            <ReadingPoints plot/>
            <text class="plot-name end" x=total_x y=total_y>{label_text(Label::PressureLineTotal)}</text>
            <text class="plot-name end static" x=static_x y=static_y>{label_text(Label::PressureLineStatic)}</text>
            <text class="plot-mark end" x=LEFT - 5.0 y=move || top() + 4.0>{move || pressure(of_plot(|plot| plot.highest))}</text>
            <text class="plot-mark end" x=LEFT - 5.0 y=move || nought() + 4.0>"0"</text>
            <text class="plot-mark" x=LEFT y=HEIGHT - 10.0>"0"</text>
            <text class="plot-mark end" x=WIDTH - RIGHT y=HEIGHT - 10.0>{end}</text>
        </svg>
    }
}

/// The part of a pressure line's plot that an element takes up.
#[component]
pub(super) fn ElementSpan(plot: Memo<Plot>, id: ElementId) -> impl IntoView {
    let own = id.clone();
    let span = Memo::new(move |_| plot.with(|plot| plot.span(&own).unwrap_or((LEFT, LEFT))));
    view! { <PlotSpan id span/> }
}
