//! The exhaust air: the phase of the cycle, its temperature and humidity, and whether it cools.

use super::air_panel::degrees;
use super::field::{ChoiceField, NumberField};
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{AlongRun, Exhaust, Phase};
use crate::report::words::{HeatLabel, Label, Message};
use crate::system::exhaust_in;
use crate::units::UnitSystem;
use leptos::prelude::*;

#[component]
pub(super) fn PhaseFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let exhaust = Memo::new(move |_| store.plan.with(|plan| plan.exhaust));
    let set = move |change: &dyn Fn(Exhaust) -> Exhaust| {
        store.act(Action::SetExhaust(change(store.plan_now().exhaust)));
    };
    let temperature = Signal::derive(move || degrees(store.units.get(), exhaust.get().temperature));
    let set_temperature = Callback::new(move |figure: f64| {
        let temperature = store.units.get_untracked().temperature_from(figure);
        set(&|exhaust| Exhaust {
            temperature,
            ..exhaust
        });
    });
    let humidity =
        Signal::derive(move || format!("{:.0}", exhaust.get().relative_humidity * 100.0));
    let set_humidity = Callback::new(move |percent: f64| {
        set(&|exhaust| Exhaust {
            relative_humidity: percent / 100.0,
            ..exhaust
        });
    });
    let cools = vec![
        (
            "cools",
            Label::Heat(HeatLabel::AlongRunCools),
            AlongRun::Cools,
        ),
        (
            "keeps",
            Label::Heat(HeatLabel::AlongRunKeeps),
            AlongRun::KeepsTemperature,
        ),
    ];
    let is_chosen = Callback::new(move |along| exhaust.get().along_run == along);
    let set_along = Callback::new(move |along_run| {
        set(&|exhaust| Exhaust {
            along_run,
            ..exhaust
        });
    });
    view! {
        <PhaseChoice exhaust/>
        <NumberField id="exhaust-temperature" label=Label::ExhaustTemperature unit=UnitSystem::temperature_unit shown=temperature set=set_temperature/>
        <NumberField id="exhaust-humidity" label=Label::Heat(HeatLabel::ExhaustHumidity) shown=humidity set=set_humidity/>
        <ChoiceField id="along-run" label=Label::Heat(HeatLabel::AlongRun) choices=cools is_chosen set=set_along/>
    }
}

/// The phase: its name stays with figures that were changed after it was chosen.
#[component]
fn PhaseChoice(exhaust: Memo<Exhaust>) -> impl IntoView {
    const NONE: &str = "";
    let store = expect_context::<Store>();
    let choices = Phase::ALL
        .iter()
        .enumerate()
        .map(|(index, phase)| {
            let phase = *phase;
            view! {
                <option value=index.to_string() prop:selected=move || exhaust.get().phase == Some(phase)>
                    {store.say(Message::Phase(phase))}
                </option>
            }
        })
        .collect_view();
    let changed = move |event: web_sys::Event| {
        let value = event_target_value(&event);
        let phase = value
            .parse::<usize>()
            .ok()
            .and_then(|index| Phase::ALL.get(index));
        let present = store.plan_now().exhaust;
        store.act(Action::SetExhaust(match phase {
            Some(phase) => exhaust_in(*phase, present),
            None => Exhaust {
                phase: None,
                ..present
            },
        }));
    };
    view! {
        <div class="field">
            <label for="phase">{heat_text(HeatLabel::Phase)}</label>
            <select id="phase" aria-describedby="phase-note" on:change=changed>
                <option value=NONE prop:selected=move || exhaust.get().phase.is_none()>
                    {heat_text(HeatLabel::PhaseNone)}
                </option>
                {choices}
            </select>
            <p id="phase-note" class="field-note">{heat_text(HeatLabel::PhaseHint)}</p>
        </div>
    }
}

/// A fixed text of heat and moisture.
pub(super) fn heat_text(key: HeatLabel) -> String {
    label_text(Label::Heat(key))
}
