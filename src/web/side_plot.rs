//! The pressure lines of both runs, each in a plot of its own on the same two axes.

use super::pressure_panel::ElementSpan;
use super::results::Results;
use super::side::Side;
use super::side_table::SideTable;
use super::side_words::side_text;
use super::store::{Store, label_text};
use crate::report::words::{Label, SideLabel};
use crate::scene::{
    PLOT_FOOT, PLOT_HEIGHT, PLOT_LEFT, PLOT_RIGHT, PLOT_TOP, PLOT_WIDTH, PressurePlot,
};
use crate::system::{PressurePoint, pressure_line};
use crate::units::{Length, Pressure};
use leptos::prelude::*;

/// Table and plots under the two drawings.
#[component]
pub(super) fn SideFigures() -> impl IntoView {
    let side = expect_context::<Side>();
    view! {
        <Show when=move || side.is_open.get()>
            <section class="panel side-figures" aria-labelledby="side-figures-title">
                <h2 id="side-figures-title">{side_text(SideLabel::Pressures)}</h2>
                <Plots/>
                <div class="side-scroll"><SideTable/></div>
            </section>
        </Show>
    }
}

#[component]
fn Plots() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let plots = Memo::new(move |_| {
        let both = side.with_both(store, |first, second| [plot(first), plot(second)]);
        let [mut first, mut second] =
            both.unwrap_or_else(|| [PressurePlot::empty(), PressurePlot::empty()]);
        // What is hidden must not show in the other's axes either.
        if side.hides() {
            second = PressurePlot::empty();
        }
        first.share_axes(&mut second);
        [first, second]
    });
    let first = Memo::new(move |_| plots.with(|[first, _]| first.clone()));
    let second = Memo::new(move |_| plots.with(|[_, second]| second.clone()));
    view! {
        <div class="side-plots">
            <OnePlot plot=first label=SideLabel::First is_hidden=Signal::stored(false)/>
            <OnePlot plot=second label=SideLabel::Second is_hidden=Signal::derive(move || side.hides())/>
        </div>
    }
}

fn plot(results: &Results) -> PressurePlot {
    let working = results.assessment.working.as_ref();
    working.map_or_else(PressurePlot::empty, |(point, ledger)| {
        PressurePlot::of(pressure_line(point, ledger), Vec::new())
    })
}

#[component]
fn OnePlot(plot: Memo<PressurePlot>, label: SideLabel, is_hidden: Signal<bool>) -> impl IntoView {
    let store = expect_context::<Store>();
    let ids = Memo::new(move |_| plot.with(PressurePlot::elements));
    let nought = move || plot.with(|plot| plot.y(0.0));
    let top = move || plot.with(|plot| plot.y(plot.highest));
    let highest = move || {
        let pascals = plot.with(|plot| plot.highest);
        store
            .units
            .get()
            .pressure(Pressure::from_pascals(pascals))
            .to_string()
    };
    let longest = move || {
        let metres = plot.with(PressurePlot::longest);
        store
            .units
            .get()
            .length(Length::from_metres(metres))
            .to_string()
    };
    let path = move |of: fn(&PressurePoint) -> Pressure| plot.with(|plot| plot.path(of));
    view! {
        <figure class="side-plot">
            <figcaption>
                <strong>{side_text(label)}</strong>
                " "
                {move || is_hidden.get().then(|| side_text(SideLabel::Hidden))}
                <span class="side-key" aria-hidden="true"></span>
                {label_text(Label::PressureLineTotal)}
                <span class="side-key side-key-static" aria-hidden="true"></span>
                {label_text(Label::PressureLineStatic)}
            </figcaption>
            <svg class="plot" viewBox=format!("0 0 {PLOT_WIDTH} {PLOT_HEIGHT}") role="img" aria-label=side_text(label)>
                <For each=move || ids.get() key=Clone::clone children=move |id| view! { <ElementSpan plot id/> }/>
                <path class="plot-axis" d=move || format!("M{PLOT_LEFT} {PLOT_TOP}V{}M{PLOT_LEFT} {}H{}", PLOT_HEIGHT - PLOT_FOOT, nought(), PLOT_WIDTH - PLOT_RIGHT)/>
                <path class="plot-axis grid" d=move || format!("M{PLOT_LEFT} {}H{}", top(), PLOT_WIDTH - PLOT_RIGHT)/>
                <path class="plot-line total" d=move || path(|at| at.total)/>
                <path class="plot-line static" d=move || path(|at| at.r#static)/>
                <text class="plot-mark" x=PLOT_LEFT + 5.0 y=move || top() - 5.0>{highest}</text>
                <text class="plot-mark end" x=PLOT_LEFT - 5.0 y=move || nought() + 4.0>"0"</text>
                <text class="plot-mark" x=PLOT_LEFT y=PLOT_HEIGHT - 10.0>"0"</text>
                <text class="plot-mark end" x=PLOT_WIDTH - PLOT_RIGHT y=PLOT_HEIGHT - 10.0>{longest}</text>
            </svg>
        </figure>
    }
}
