//! What each rule says of the plan, and the list of what has to be looked at on site.

use super::code_panel::set_code;
use super::results::Results;
use super::store::{Store, code_text};
use super::totals::VerdictWord;
use crate::editor::Action;
use crate::plan::{ElementId, RuleTopic};
use crate::report::words::{CodeLabel, Message};
use crate::rules::{Deciding, RuleFinding, Verdict};
use crate::source::{Source, Standing};
use crate::system::ElementKind;
use leptos::prelude::*;

/// A finding's place in the list: its topic, and the opening that it is about.
type Key = (RuleTopic, Option<String>, bool);

fn key(finding: &RuleFinding) -> Key {
    let opening = finding.opening.as_ref();
    (
        finding.topic,
        opening.map(|opening| opening.opening.to_string()),
        finding.verdict == Verdict::CheckOnSite,
    )
}

/// How far a source can be leaned on, in brackets; nothing for what was read in print.
pub(super) fn weak_standing(store: Store, source: &Source) -> Option<String> {
    let is_weak = source.standing != Standing::Published;
    is_weak.then(|| format!(" ({})", store.say(Message::Standing(source.standing))))
}

fn kind_of(results: &Results, id: &ElementId) -> Option<ElementKind> {
    results.figures.element(id).map(|it| it.element)
}

#[component]
pub(super) fn CodeFindings() -> impl IntoView {
    let store = expect_context::<Store>();
    let keys = Memo::new(move |_| {
        store.steady.with(|results| {
            let findings = results.figures.code_check.findings.iter();
            findings.map(key).collect::<Vec<_>>()
        })
    });
    let of = move |on_site: bool| {
        let keys = keys.get();
        keys.into_iter().filter(move |(.., it)| *it == on_site)
    };
    let seen = move || {
        let seen = store.plan.with(|plan| {
            of(true)
                .filter(|(topic, ..)| plan.code.seen_on_site.contains(topic))
                .count()
        });
        store.say(Message::SeenOnSite {
            seen,
            of: of(true).count(),
        })
    };
    let told = move || {
        let count = |verdict: Verdict| {
            store.steady.with(|results| {
                let findings = results.figures.code_check.findings.iter();
                findings.filter(|it| it.verdict == verdict).count()
            })
        };
        store.say(Message::FindingsCount {
            meet: count(Verdict::Meets),
            not: count(Verdict::DoesNotMeet),
            open: count(Verdict::CannotTell),
        })
    };
    let not_covered = move || {
        store
            .steady
            .with(|results| !results.figures.code_check.not_covered.is_empty())
    };
    view! {
        <details class="more">
            <summary>{code_text(CodeLabel::FindingsHeading)} ": " <span data-testid="findings-count">{told}</span></summary>
            <ul class="rules">
                <For each=move || of(false) key=Clone::clone children=move |key| view! { <Finding key/> }/>
            </ul>
        </details>
        <details class="more">
            <summary>{code_text(CodeLabel::OnSiteHeading)} ", " <span data-testid="seen-on-site">{seen}</span></summary>
            <p class="fine">{code_text(CodeLabel::OnSiteHint)}</p>
            <ul class="rules">
                <For each=move || of(true) key=Clone::clone children=move |key| view! { <Finding key/> }/>
            </ul>
            <Show when=not_covered>
                <p class="fine">{code_text(CodeLabel::NotCovered)}</p>
            </Show>
        </details>
        <Advice/>
    }
}

#[component]
fn Finding(key: Key) -> impl IntoView {
    let store = expect_context::<Store>();
    let (topic, _, on_site) = key;
    let data_rule = format!("{topic:?}");
    let finding = Memo::new(move |_| {
        store.steady.with(|results| {
            let mut findings = results.figures.code_check.findings.iter();
            findings.find(|finding| self::key(finding) == key).cloned()
        })
    });
    let text = move |words: fn(&RuleFinding) -> Message<'_>| {
        finding.with(|finding| finding.as_ref().map(|it| store.say(words(it))))
    };
    let asks = move || text(|finding| Message::RuleAsks(finding));
    let measured =
        move || text(|finding| Message::RuleMeasured(finding)).filter(|text| !text.is_empty());
    let source = move || text(|finding| Message::Source(finding.source));
    let section = move || finding.with(|it| it.as_ref().map(|it| it.section));
    // How far the section can be leaned on stands beside it, unless it was read in print.
    let standing = move || finding.with(|it| weak_standing(store, it.as_ref()?.source));
    let verdict = Signal::derive(move || {
        finding.with(|it| it.as_ref().map_or(Verdict::CheckOnSite, |it| it.verdict))
    });
    let deciding = Memo::new(move |_| finding.with(|it| it.as_ref()?.deciding.clone()));
    let name = store.say(Message::RuleTopic(topic));
    let head = if on_site {
        let seen = move || {
            store
                .plan
                .with(|plan| plan.code.seen_on_site.contains(&topic))
        };
        let tick = move |_| {
            set_code(store, |code| {
                if !code.seen_on_site.remove(&topic) {
                    code.seen_on_site.insert(topic);
                }
            });
        };
        view! {
            <label class="check">
                <input type="checkbox" prop:checked=seen on:change=tick/>
                <span><strong>{name}</strong> " " <small>{section} {standing}</small></span>
            </label>
        }
        .into_any()
    } else {
        view! {
            <p>
                <VerdictWord verdict/> ": " <strong>{name}</strong> " " <small>{section} {standing}</small>
            </p>
        }
        .into_any()
    };
    view! {
        <li data-rule=data_rule>
            {head}
            <p>{asks}</p>
            {move || measured().map(|text| view! { <p class="measured">{text}</p> })}
            <DecidingText deciding/>
            <Elements finding/>
            <details class="more">
                <summary>{code_text(CodeLabel::SourceHeading)}</summary>
                <p class="fine">{source}</p>
            </details>
        </li>
    }
}

/// What would settle an open verdict.
#[component]
pub(super) fn DecidingText(deciding: Memo<Option<Deciding>>) -> impl IntoView {
    let store = expect_context::<Store>();
    let text = move || {
        deciding.with(|deciding| {
            let deciding = deciding.as_ref()?;
            let kind = store
                .steady
                .with(|results| kind_of(results, deciding.element()?));
            Some(store.say(Message::Deciding {
                deciding,
                element: kind.as_ref(),
            }))
        })
    };
    move || text().map(|text| view! { <p class="deciding">{text}</p> })
}

/// A button for each element that a finding is about: it selects the element on the drawing.
#[component]
fn Elements(finding: Memo<Option<RuleFinding>>) -> impl IntoView {
    let elements = Memo::new(move |_| {
        // Where a rule is met nothing has to be looked for, but for the measure to an opening.
        finding.with(|finding| {
            let shown = finding
                .as_ref()
                .filter(|it| it.verdict != Verdict::Meets || it.opening.is_some());
            shown.map_or_else(Vec::new, |it| it.elements.clone())
        })
    });
    view! {
        <Show when=move || !elements.with(Vec::is_empty)>
            <p class="rule-elements">
                {code_text(CodeLabel::ShowOnDrawing)} ": "
                <For
                    each=move || elements.get()
                    key=Clone::clone
                    children=move |id| view! { <ElementButton id/> }
                />
            </p>
        </Show>
    }
}

#[component]
fn ElementButton(id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let kind_id = id.clone();
    let kind = Memo::new(move |_| store.steady.with(|results| kind_of(results, &kind_id)));
    let name = move || Some(store.say_element(&kind.get()?));
    let (entered, pressed, data) = (id.clone(), id.clone(), id.to_string());
    view! {
        <button
            type="button"
            data-shows=data
            on:pointerenter=move |_| store.hovered.set(Some(entered.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
            on:click=move |_| store.act(Action::Select(Some(pressed.clone())))
        >
            {name}
        </button>
    }
}

/// What the trade does: advice, never a verdict.
#[component]
fn Advice() -> impl IntoView {
    let store = expect_context::<Store>();
    let advice = store
        .results
        .with_untracked(|results| results.figures.code_check.advice.clone());
    let lines = advice
        .into_iter()
        .map(|advice| {
            view! {
                <li>
                    {store.say(Message::Practice(advice.practice))} " "
                    <small>{store.say(Message::Source(advice.source))}</small>
                </li>
            }
        })
        .collect_view();
    view! {
        <details class="more">
            <summary>{code_text(CodeLabel::AdviceHeading)}</summary>
            <ul>{lines}</ul>
        </details>
    }
}
