//! The pressure line under the drawing, linked with drawing and ledger.

use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::ElementId;
use crate::report::words::Label;
use crate::system::{PressurePoint, pressure_line};
use crate::units::Pressure;
use leptos::prelude::*;
use std::fmt::Write;

/// The plot's size and margins, in its own units; it is scaled to the page.
const WIDTH: f64 = 640.0;
const HEIGHT: f64 = 190.0;
const LEFT: f64 = 72.0;
const RIGHT: f64 = 12.0;
const TOP: f64 = 20.0;
const FOOT: f64 = 34.0;
/// A fitting without length is given this width where the pointer looks for it.
const LEAST_HIT: f64 = 8.0;

/// From length and pressure to the plot.
#[derive(Clone, PartialEq)]
struct Plot {
    line: Vec<PressurePoint>,
    longest: f64,
    lowest: f64,
    highest: f64,
}

impl Plot {
    fn of(line: Vec<PressurePoint>) -> Self {
        let pressures = line
            .iter()
            .flat_map(|at| [at.total.pascals(), at.r#static.pascals()]);
        let (lowest, highest) = pressures.fold((0.0_f64, 1.0_f64), |(low, high), pressure| {
            (low.min(pressure), high.max(pressure))
        });
        let longest = line.last().map_or(1.0, |at| at.distance.metres().max(0.1));
        Self {
            line,
            longest,
            lowest,
            highest,
        }
    }

    fn x(&self, metres: f64) -> f64 {
        LEFT + (WIDTH - LEFT - RIGHT) * metres / self.longest
    }

    fn y(&self, pascals: f64) -> f64 {
        let share = (pascals - self.lowest) / (self.highest - self.lowest);
        HEIGHT - FOOT - (HEIGHT - FOOT - TOP) * share
    }

    fn path(&self, pressure: impl Fn(&PressurePoint) -> Pressure) -> String {
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
    fn span(&self, id: &ElementId) -> Option<(f64, f64)> {
        let mut of_element = self.line.iter().filter(|at| at.element == *id);
        let (first, last) = (of_element.next()?, of_element.next()?);
        let (from, to) = (
            self.x(first.distance.metres()),
            self.x(last.distance.metres()),
        );
        let short = (LEAST_HIT - (to - from)).max(0.0) / 2.0;
        Some((from - short, to + short))
    }
}

#[component]
pub(super) fn PressurePanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let plot = Memo::new(move |_| {
        store.results.with(|results| {
            let (point, ledger) = results.assessment.working.as_ref()?;
            Some(Plot::of(pressure_line(point, ledger)))
        })
    });
    view! {
        <section class="panel pressure" aria-labelledby="pressure-title">
            <h2 id="pressure-title">
                {label_text(Label::PressureLine)} ", "
                {move || store.units.get().pressure(Pressure::ZERO).unit}
            </h2>
            {move || match plot.get() {
                None => view! { <p>{label_text(Label::NoAirflowFigure)}</p> }.into_any(),
                Some(plot) => view! { <PlotView plot/> }.into_any(),
            }}
            <p class="fine">{label_text(Label::PressureLineMeaning)}</p>
        </section>
    }
}

#[component]
fn PlotView(plot: Plot) -> impl IntoView {
    let store = expect_context::<Store>();
    let units = store.units.get();
    let pressure = |pascals: f64| units.pressure(Pressure::from_pascals(pascals)).figure;
    let nought = plot.y(0.0);
    let top = plot.y(plot.highest);
    let end = plot
        .line
        .last()
        .map(|at| units.length(at.distance).to_string());
    let (total, r#static) = (plot.path(|at| at.total), plot.path(|at| at.r#static));
    // Named where the lines are lowest before the end: total above it, static below.
    let before_end = plot.line.iter().rev().nth(1);
    let names = before_end.map(|at| {
        let x = plot.x(at.distance.metres()) - 6.0;
        let (y_total, y_static) = (plot.y(at.total.pascals()), plot.y(at.r#static.pascals()));
        view! {
            <text class="plot-name end" x=x y=y_total - 7.0>{label_text(Label::PressureLineTotal)}</text>
            <text class="plot-name end static" x=x y=y_static + 5.0>{label_text(Label::PressureLineStatic)}</text>
        }
    });
    let bands = elements(&plot)
        .into_iter()
        .map(|id| view! { <ElementSpan plot=plot.clone() id/> })
        .collect_view();
    view! {
        <svg
            class="plot"
            viewBox=format!("0 0 {WIDTH} {HEIGHT}")
            role="img"
            aria-labelledby="pressure-title"
        >
            {bands}
            <path class="plot-axis" d=format!("M{LEFT} {TOP}V{}M{LEFT} {nought}H{}", HEIGHT - FOOT, WIDTH - RIGHT)/>
            <path class="plot-axis grid" d=format!("M{LEFT} {top}H{}", WIDTH - RIGHT)/>
            <path class="plot-line total" d=total/>
            <path class="plot-line static" d=r#static/>
            {names}
            <text class="plot-mark end" x=LEFT - 5.0 y=top + 4.0>{pressure(plot.highest)}</text>
            <text class="plot-mark end" x=LEFT - 5.0 y=nought + 4.0>"0"</text>
            <text class="plot-mark" x=LEFT y=HEIGHT - 10.0>"0"</text>
            <text class="plot-mark end" x=WIDTH - RIGHT y=HEIGHT - 10.0>{end}</text>
        </svg>
    }
}

fn elements(plot: &Plot) -> Vec<ElementId> {
    let mut ids: Vec<ElementId> = plot.line.iter().map(|at| at.element.clone()).collect();
    ids.dedup();
    ids
}

/// The part of the plot that an element takes up: lit with it, and selects it.
#[component]
fn ElementSpan(plot: Plot, id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let (from, to) = plot.span(&id).unwrap_or((LEFT, LEFT));
    let key = id.to_string();
    let (entered, selected, shown) = (id.clone(), id.clone(), id);
    let lit = move || {
        store
            .selection
            .with(|selected| selected.as_ref() == Some(&shown))
            || store
                .hovered
                .with(|hovered| hovered.as_ref() == Some(&shown))
    };
    view! {
        <rect
            class="plot-span"
            class:lit=lit
            data-span=key
            x=from
            y=TOP
            width=to - from
            height=HEIGHT - FOOT - TOP
            on:pointerenter=move |_| store.hovered.set(Some(entered.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
            on:click=move |_| store.act(Action::Select(Some(selected.clone())))
        />
    }
}
