//! The pressure line under the drawing, linked with drawing and ledger.

use super::mark_view::is_lit;
use super::site_points::{ReadingPoints, read_points};
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::ElementId;
use crate::report::words::Label;
use crate::system::{PressurePoint, pressure_line};
use crate::units::Pressure;
use leptos::prelude::*;
use std::fmt::Write;

/// The plot's size and margins, in its own units; it is scaled to the page.
pub(super) const WIDTH: f64 = 640.0;
pub(super) const HEIGHT: f64 = 190.0;
pub(super) const LEFT: f64 = 72.0;
pub(super) const RIGHT: f64 = 12.0;
pub(super) const TOP: f64 = 20.0;
pub(super) const FOOT: f64 = 34.0;
/// A fitting without length is given this width where the pointer looks for it.
const LEAST_HIT: f64 = 8.0;

/// A static pressure that was read: how far along, what was read and what the clean run reads, Pa.
#[derive(Clone, PartialEq)]
pub(super) struct PlotPoint {
    pub metres: f64,
    pub read: f64,
    pub clean: Option<f64>,
}

/// From length and pressure to the plot.
#[derive(Clone, PartialEq)]
pub(super) struct Plot {
    line: Vec<PressurePoint>,
    pub readings: Vec<PlotPoint>,
    longest: f64,
    lowest: f64,
    highest: f64,
}

impl Plot {
    /// No run.
    pub fn empty() -> Self {
        Self::of(Vec::new(), Vec::new())
    }

    /// Both on the wider of the two's axes.
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

    /// The top of the axis of pressure, Pa.
    pub const fn highest(&self) -> f64 {
        self.highest
    }

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

    pub fn x(&self, metres: f64) -> f64 {
        LEFT + (WIDTH - LEFT - RIGHT) * metres / self.longest
    }

    pub fn y(&self, pascals: f64) -> f64 {
        let share = (pascals - self.lowest) / (self.highest - self.lowest);
        HEIGHT - FOOT - (HEIGHT - FOOT - TOP) * share
    }

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
                {move || store.units.get().pressure(Pressure::ZERO).unit}
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
    let ids = Memo::new(move |_| plot.with(elements));
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

/// The elements that the line passes, in its order.
pub(super) fn elements(plot: &Plot) -> Vec<ElementId> {
    let mut ids: Vec<ElementId> = plot.line.iter().map(|at| at.element.clone()).collect();
    ids.dedup();
    ids
}

/// The part of the plot that an element takes up: lit with it, and selects it.
#[component]
pub(super) fn ElementSpan(plot: Memo<Plot>, id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let key = id.to_string();
    let (entered, selected, shown) = (id.clone(), id.clone(), id.clone());
    let span = Memo::new(move |_| plot.with(|plot| plot.span(&id).unwrap_or((LEFT, LEFT))));
    let lit = Memo::new(move |_| is_lit(store, Some(&shown)));
    view! {
        <rect
            class="plot-span"
            class:lit=lit
            data-span=key
            x=move || span.get().0
            y=TOP
            width=move || span.get().1 - span.get().0
            height=HEIGHT - FOOT - TOP
            on:pointerenter=move |_| store.hovered.set(Some(entered.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
            on:click=move |_| store.act(Action::Select(Some(selected.clone())))
        />
    }
}
