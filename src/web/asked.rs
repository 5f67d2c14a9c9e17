//! Where a total comes from: pressed on its name, its formula with the numbers put in, how its band
//! comes about, and what moves it.

use super::focus::focus_first;
use super::store::{Store, label_text};
use crate::report::words::{Label, Message, TotalFormula};
use crate::system::{BAND_SAMPLES, BandDetail, Share};
use leptos::prelude::*;

/// The id by which the names of the totals point to the answer.
const ANSWER: &str = "asked-answer";
/// How many of the inputs that move a figure are named here; the rest stand in their own panel.
const NAMED: usize = 3;

/// The total that was asked about, if any.
#[derive(Clone, Copy)]
pub(super) struct Asked(pub RwSignal<Option<TotalFormula>>);

/// The name of a total, to be pressed.
#[component]
pub(super) fn AskedName(name: &'static str, which: TotalFormula) -> impl IntoView {
    let Asked(asked) = expect_context();
    let is_asked = move || asked.get() == Some(which);
    let pressed = move |_| {
        asked.update(|asked| *asked = (*asked != Some(which)).then_some(which));
    };
    view! {
        <button
            type="button"
            class="ask"
            title=fixed!(WhereFrom)
            aria-expanded=move || is_asked().to_string()
            aria-controls=ANSWER
            on:click=pressed
        >
            {name}
        </button>
    }
}

/// The answer below the totals.
#[component]
pub(super) fn AskedAnswer() -> impl IntoView {
    let Asked(asked) = expect_context();
    view! {
        <div id=ANSWER>
            {move || asked.get().map(|which| view! { <Answer which/> })}
        </div>
    }
}

#[component]
fn Answer(which: TotalFormula) -> impl IntoView {
    let store = expect_context::<Store>();
    let Asked(asked) = expect_context();
    let formula = move || {
        store
            .steady
            .with(|results| store.say(Message::TotalFormula(&results.figures, which)))
    };
    let band = if which == TotalFormula::CodeLength {
        view! { <CodeGrounds/> }.into_any()
    } else {
        view! { <BandGrounds which/> }.into_any()
    };
    let dismiss = move |_| {
        // Back to the name that was pressed.
        focus_first(&format!("[aria-controls={ANSWER}][aria-expanded=true]"));
        asked.set(None);
    };
    view! {
        <div class="asked" role="group" aria-label=store.say(Message::TotalName(which))>
            <p class="formula">{formula}</p>
            {band}
            <button type="button" on:click=dismiss>{label_text(Label::Dismiss)}</button>
        </div>
    }
}

/// How the band comes about, and what moves it most.
#[component]
fn BandGrounds(which: TotalFormula) -> impl IntoView {
    let store = expect_context::<Store>();
    let moved_by = move || {
        let named = |detail: &BandDetail| {
            let shares: &[Share] = match which {
                TotalFormula::BackPressure => &detail.back_pressure_shares,
                _ => &detail.airflow_shares,
            };
            let named = shares.iter().take(NAMED).map(|share| {
                let (input, share) = (share.input, share.share);
                store.say(Message::InputShare { input, share })
            });
            named.collect::<Vec<_>>().join("; ")
        };
        let text = store.with_bands(|_, detail| detail.map(named))?;
        (!text.is_empty()).then(|| format!("{}: {text}.", label_text(Label::MovedMostBy)))
    };
    let samples = BAND_SAMPLES;
    view! {
        <p class="fine">{store.say(Message::BandFormula { samples })} " " {moved_by}</p>
        <p class="fine">
            {move || store.steady.with(|results| store.say(Message::Unpublished(&results.figures.unpublished)))}
        </p>
    }
}

/// Where the limit was read, and between which lengths the run may lie.
#[component]
fn CodeGrounds() -> impl IntoView {
    let store = expect_context::<Store>();
    let span = move || {
        store.steady.with(|results| {
            let (least, most) = (results.figures.code.least, results.figures.code.most);
            store.say(Message::CodeLengthSpan { least, most })
        })
    };
    let source = move || {
        store
            .steady
            .with(|results| store.say(Message::Source(results.figures.code.source)))
    };
    view! {
        <p class="fine" data-testid="code-span">{span}</p>
        <p class="fine">{source}</p>
    }
}
