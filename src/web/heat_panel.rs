//! The line of temperatures under the pressure line, and what heat and moisture come to.

use super::air_panel::degrees;
use super::grounds::{GroundsName, GroundsText};
use super::phase_fields::heat_text;
use super::plot_span::PlotSpan;
use super::store::Store;
use crate::plan::ElementId;
use crate::report::words::{HeatFormula, HeatLabel, Message};
use crate::scene::{HeatLine as Line, HeatPlot};
use crate::scene::{PLOT_FOOT as FOOT, PLOT_HEIGHT as HEIGHT, PLOT_LEFT as LEFT};
use crate::scene::{PLOT_RIGHT as RIGHT, PLOT_TOP as TOP, PLOT_WIDTH as WIDTH};
use crate::system::{InsulationUpgrade, insulation_that_dries};
use crate::units::Temperature;
use leptos::prelude::*;

#[component]
pub(super) fn HeatPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let follows = Memo::new(move |_| store.steady.with(|results| results.figures.heat.is_some()));
    view! {
        <section class="panel heat" aria-labelledby="heat-title">
            <h2 id="heat-title">
                {heat_text(HeatLabel::Line)} ", "
                {move || store.units.get().temperature_unit()}
            </h2>
            <Show when=move || follows.get() fallback=|| view! { <p>{heat_text(HeatLabel::AirKeepsTemperature)}</p> }>
                <Plot/>
                <Figures/>
            </Show>
            <p class="fine">{heat_text(HeatLabel::LineMeaning)}</p>
            <p class="fine">{heat_text(HeatLabel::DryingTime)}</p>
        </section>
    }
}

/// The plot; a change of the plan moves what is drawn and makes nothing anew.
#[component]
fn Plot() -> impl IntoView {
    let store = expect_context::<Store>();
    let plot = Memo::new(move |before: Option<&Option<HeatPlot>>| {
        let found = store.steady.with(|results| {
            let (point, _) = results.assessment.working.as_ref()?;
            let profile = point.heat.as_ref()?;
            Some(HeatPlot::of(&results.assessment.run, profile))
        });
        // While the panel closes, the last plot stays.
        found.or_else(|| before.cloned().flatten())
    });
    let look = move |of: fn(&HeatPlot) -> f64| plot.with(|plot| plot.as_ref().map_or(0.0, of));
    let path = move |line: Line| {
        move || {
            plot.with(|plot| {
                plot.as_ref()
                    .map_or_else(String::new, |plot| plot.path(line))
            })
        }
    };
    let wet = move || plot.with(|plot| plot.as_ref().map_or_else(String::new, HeatPlot::wet_path));
    let ids = Memo::new(move |_| {
        plot.with(|plot| plot.as_ref().map_or_else(Vec::new, HeatPlot::elements))
    });
    let mark = move |of: fn(&HeatPlot) -> f64| {
        move || degrees(store.units.get(), Temperature::from_celsius(look(of)))
    };
    let end = move || {
        let last = plot.with(|plot| plot.as_ref()?.line.last().map(|at| at.distance));
        last.map(|end| store.units.get().length(end).to_string())
    };
    view! {
        <svg
            class="plot"
            viewBox=format!("0 0 {WIDTH} {HEIGHT}")
            role="img"
            aria-labelledby="heat-title"
        >
            <defs>
                <pattern id="wet-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
                    <path class="wet-hatch" d="M0 0V7"/>
                </pattern>
            </defs>
            <For each=move || ids.get() key=Clone::clone children=move |id| view! { <Span plot id/> }/>
            <path class="plot-wet" data-plot="wet" fill="url(#wet-hatch)" d=wet/>
            <path class="plot-axis" d=format!("M{LEFT} {TOP}V{}H{}", HEIGHT - FOOT, WIDTH - RIGHT)/>
            <path class="plot-line total" data-plot="air" d=path(Line::Air)/>
            <path class="plot-line static" data-plot="wall" d=path(Line::Wall)/>
            <path class="plot-line dew" data-plot="dew-point" d=path(Line::DewPoint)/>
            <Names plot/>
            <text class="plot-mark end" x=LEFT - 5.0 y=TOP + 4.0>{mark(|plot| plot.highest)}</text>
            <text class="plot-mark end" x=LEFT - 5.0 y=HEIGHT - FOOT + 4.0>{mark(|plot| plot.lowest)}</text>
            <text class="plot-mark" x=LEFT y=HEIGHT - 10.0>"0"</text>
            <text class="plot-mark end" x=WIDTH - RIGHT y=HEIGHT - 10.0>{end}</text>
        </svg>
    }
}

/// The lines' names at their right ends, each clear of the others.
#[component]
fn Names(plot: Memo<Option<HeatPlot>>) -> impl IntoView {
    let places = Memo::new(move |_| {
        plot.with(|plot| plot.as_ref().map_or_else(Vec::new, HeatPlot::name_places))
    });
    move || {
        places
            .get()
            .into_iter()
            .map(|(y, line)| {
                let name = match line {
                    Line::Air => HeatLabel::LineAir,
                    Line::Wall => HeatLabel::LineWall,
                    Line::DewPoint => HeatLabel::LineDewPoint,
                };
                view! { <text class="plot-name end" x=WIDTH - RIGHT - 6.0 y=y>{heat_text(name)}</text> }
            })
            .collect_view()
    }
}

/// The part of the plot that an element takes up.
#[component]
fn Span(plot: Memo<Option<HeatPlot>>, id: ElementId) -> impl IntoView {
    let own = id.clone();
    let span = Memo::new(move |_| {
        plot.with(|plot| {
            let span = plot.as_ref().and_then(|plot| plot.span(&own));
            span.unwrap_or((LEFT, LEFT))
        })
    });
    view! { <PlotSpan id span/> }
}

/// One figure, with where it comes from below it once that is asked for.
#[component]
fn Figure(which: HeatFormula) -> impl IntoView {
    let store = expect_context::<Store>();
    let open = RwSignal::new(false);
    let id = format!("heat-grounds-{which:?}");
    let value = Memo::new(move |_| {
        let units = store.units.get();
        store.steady.with(|results| {
            let heat = results.figures.heat.as_ref()?;
            let at = match which {
                HeatFormula::AtEnd => Some(heat.leaving),
                HeatFormula::ColdestWall => heat.coldest_wall,
                HeatFormula::DewPoint => heat.dew_point,
                HeatFormula::Water => return Some(store.say(Message::Water(heat.water))),
            };
            at.map(|at| units.temperature(at).to_string())
        })
    });
    let grounds = move || {
        store.steady.with(|results| {
            let heat = results.figures.heat.as_ref();
            heat.map_or_else(String::new, |heat| {
                store.say(Message::HeatFormula(heat, which))
            })
        })
    };
    view! {
        <div class:absent=move || value.with(Option::is_none)>
            <dl class="pairs heat-figures">
                <dt><GroundsName name=heat_text(which.label()) id=id.clone() open/></dt>
                <dd>{value}</dd>
            </dl>
            <GroundsText id open text=grounds/>
        </div>
    }
}

/// What heat and moisture come to, and how much insulation keeps the wall dry. They follow a drag as
/// the other tables do: the insulation is solved for by some twenty evaluations.
#[component]
fn Figures() -> impl IntoView {
    let store = expect_context::<Store>();
    let figures = HeatFormula::ALL
        .map(|which| view! { <Figure which/> })
        .collect_view();
    let upgrade = Memo::new(move |_| {
        store.steady.with(|results| {
            let is_dry = results.figures.heat.as_ref()?.wet_stretches.is_empty();
            Some(if is_dry {
                InsulationUpgrade::AlreadyDry
            } else {
                insulation_that_dries(&results.plan)
            })
        })
    });
    view! {
        {figures}
        <p class="heat-upgrade">
            {move || upgrade.get().map(|upgrade| store.say(Message::InsulationUpgrade(&upgrade)))}
        </p>
    }
}
