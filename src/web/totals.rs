//! The totals above the drawing, with their bands, and the sentence on the costliest element.

use super::asked::{Asked, AskedName};
use super::later::Later;
use super::rest::Part;
use super::results::{Results, Version};
use super::store::Store;
use crate::report::words::TotalFormula;
use crate::rules::Verdict;
use crate::system::{Band, Bands, ElementKind};
use crate::units::{Airflow, Pressure, Shown, UnitSystem, Velocity};
use leptos::prelude::*;

#[component]
pub(super) fn Totals() -> impl IntoView {
    let store = expect_context::<Store>();
    let totals = move || store.results.with(|results| results.figures.totals);
    let airflow = move || totals().map(|totals| store.units.get().airflow(totals.airflow));
    let pressure = move || totals().map(|totals| store.units.get().pressure(totals.back_pressure));
    let velocity = move || totals().map(|totals| store.units.get().velocity(totals.velocity));
    let airflow_band =
        |units: UnitSystem, band: f64| units.airflow(Airflow::from_cubic_metres_per_second(band));
    let pressure_band = |units: UnitSystem, band: f64| units.pressure(Pressure::from_pascals(band));
    let velocity_band =
        |units: UnitSystem, band: f64| units.velocity(Velocity::from_metres_per_second(band));
    provide_context(Asked(RwSignal::new(None)));
    view! {
        <section class="totals" class:held=move || store.is_dragging() aria-label=fixed!(Totals)>
            <dl>
                <Total name=fixed!(Airflow) formula=TotalFormula::Airflow figure=airflow band=|bands: &Bands| bands.airflow show=airflow_band/>
                <Total name=fixed!(BackPressure) formula=TotalFormula::BackPressure hint=fixed!(BackPressureHint) figure=pressure band=|bands: &Bands| bands.back_pressure show=pressure_band/>
                <Total name=fixed!(Velocity) formula=TotalFormula::Velocity figure=velocity band=|bands: &Bands| bands.velocity show=velocity_band/>
                <CodeTotal/>
            </dl>
            <Later turn=6 part=Part::AskedAnswer/>
        </section>
    }
}

#[component]
fn Total(
    name: &'static str,
    formula: TotalFormula,
    #[prop(optional, into)] hint: Option<&'static str>,
    figure: impl Fn() -> Option<Shown> + Send + Sync + 'static,
    band: fn(&Bands) -> Band,
    show: fn(UnitSystem, f64) -> Shown,
) -> impl IntoView {
    let store = expect_context::<Store>();
    // With each move of a drag the figure is another; what is written beside it stays.
    let figure = Memo::new(move |_| figure());
    let unit = Memo::new(move |_| figure.with(|shown| shown.as_ref().map(|shown| shown.unit)));
    let key = format!("{formula:?}");
    let band = move || store.with_bands(|bands, _| Some(store.say_band(band(bands), show)));
    view! {
        <div class="total" data-total=key>
            <dt>
                <AskedName name which=formula/>
                {hint.map(|hint| view! { <small>{hint}</small> })}
            </dt>
            <dd class="total-figure">
                {move || figure.get().map_or_else(
                    || fixed!(NoAirflowFigure).to_owned(),
                    |shown| shown.figure,
                )}
                <small>{move || unit.get()}</small>
            </dd>
            <dd class="total-band">
                {move || band().unwrap_or_else(|| fixed!(BandPending).to_owned())}
            </dd>
        </div>
    }
}

#[component]
fn CodeTotal() -> impl IntoView {
    let store = expect_context::<Store>();
    let length = Memo::new(move |_| {
        let units = store.units.get();
        let length = |results: &Version<Results>| results.figures.code.with_deductions;
        units.length(store.results.with(length))
    });
    let unit = Memo::new(move |_| length.with(|length| length.unit));
    let against = Memo::new(move |_| {
        let units = store.units.get();
        store.results.with(|results| {
            let code = &results.figures.code;
            (
                code.verdict,
                code.limit.map(|limit| units.length(limit).to_string()),
                (code.most > code.least).then(|| {
                    let low = units.length(code.least).figure;
                    let high = units.length(code.most).to_string();
                    store.words().band(&low, &high)
                }),
            )
        })
    });
    view! {
        <div class="total" data-total="CodeLength">
            <dt><AskedName name=fixed!(CodeLength) which=TotalFormula::CodeLength/></dt>
            <dd class="total-figure">
                {move || length.get().figure}
                <small>{move || unit.get()}</small>
            </dd>
            <dd class="total-band">
                <VerdictWord verdict=Signal::derive(move || against.get().0)/>
                " " {move || against.get().1}
            </dd>
            {move || against.get().2.map(|span| view! { <dd class="total-span">{span}</dd> })}
        </div>
    }
}

/// A verdict as a word with a mark of its own shape.
#[component]
pub(super) fn VerdictWord(verdict: Signal<Verdict>) -> impl IntoView {
    let store = expect_context::<Store>();
    let mark = move || match verdict.get() {
        Verdict::Meets => "\u{25ab}",
        Verdict::DoesNotMeet => "\u{25b2}",
        Verdict::CannotTell => "\u{25c7}",
        Verdict::CheckOnSite => "\u{25cb}",
    };
    view! {
        <span class="verdict">
            <span aria-hidden="true">{mark}</span> " "
            {move || store.words().verdict(verdict.get())}
        </span>
    }
}

/// Which element costs the most, and what the code makes of it; where that is the termination, which
/// no reroute takes away, the next one too.
#[component]
pub(super) fn DominantSentence() -> impl IntoView {
    let store = expect_context::<Store>();
    let sentence = move |rank: usize| {
        store.steady.with(|results| {
            let text = store.words().dominant(&results.figures, rank)?;
            let (element, _) = results.figures.ranked(rank)?;
            let is_end = matches!(element.element, ElementKind::Termination { .. });
            Some((text, is_end))
        })
    };
    let sentences = move || {
        let (first, is_end) = sentence(1)?;
        let next = if is_end { sentence(2) } else { None };
        Some(next.map_or(first.clone(), |(next, _)| format!("{first} {next}")))
    };
    view! {
        <p class="dominant" data-testid="dominant">{sentences}</p>
        <p class="fine">
            {fixed!(BandMeaning)} " "
            {move || store.steady.with(|results| store.words().unpublished(&results.figures.unpublished))}
        </p>
    }
}
