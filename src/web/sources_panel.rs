//! Where the figures come from: each total as its formula with the numbers put in, and every source.

use super::store::{Store, label_text};
use crate::report::words::{Label, Message, TotalFormula};
use crate::rules::rule_sources;
use crate::source::Source;
use crate::system::SOURCES;
use leptos::prelude::*;

#[component]
pub(super) fn SourcesPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let formulas = TotalFormula::ALL
        .map(|which| {
            let formula = move || {
                store
                    .steady
                    .with(|results| store.say(Message::TotalFormula(&results.figures, which)))
            };
            view! {
                <dt>{store.say(Message::TotalName(which))}</dt>
                <dd class="formula">{formula}</dd>
            }
        })
        .collect_view();
    let physics = SOURCES
        .iter()
        .map(|(subject, source)| cite(store, store.say(Message::Subject(*subject)), source))
        .collect_view();
    let mut rules: Vec<&'static Source> = Vec::new();
    for source in rule_sources() {
        if !rules.contains(&source) {
            rules.push(source);
        }
    }
    let rules = rules
        .into_iter()
        .map(|source| view! { <dd class="fine">{store.say(Message::Source(source))}</dd> })
        .collect_view();
    view! {
        <section class="panel sources" aria-labelledby="sources-title">
            <h2 id="sources-title">{label_text(Label::FiguresFrom)}</h2>
            <dl>{formulas}</dl>
            <p class="fine">{label_text(Label::FiguresFromHint)}</p>
            <details class="more">
                <summary>{label_text(Label::AllSources)}</summary>
                <dl>{physics} <dt>{label_text(Label::CodeCheck)}</dt> {rules}</dl>
            </details>
        </section>
    }
}

fn cite(store: Store, subject: String, source: &'static Source) -> impl IntoView {
    view! {
        <dt>{subject}</dt>
        <dd class="fine">
            {store.say(Message::Source(source))}
        </dd>
    }
}
