//! The exhaust air: the phase of the cycle, its temperature and humidity, and whether it cools.

use super::air_panel::{degrees, temperature_unit};
use super::field::{ChoiceField, NumberField};
use super::leg_fields::no_unit;
use super::store::Store;
use crate::editor::Action;
use crate::plan::{AlongRun, Exhaust, Phase};
use crate::report::words::{HeatLabel, Label, Message};
use crate::system::exhaust_in;
use leptos::prelude::*;

#[component]
pub(super) fn PhaseFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let exhaust = Memo::new(move |_| store.plan.with(|plan| plan.exhaust));
    let set = move |change: &dyn Fn(Exhaust) -> Exhaust| {
        store.act(Action::SetExhaust(change(exhaust.get_untracked())));
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
        <NumberField id="exhaust-temperature" label=Label::ExhaustTemperature unit=temperature_unit shown=temperature set=set_temperature/>
        <NumberField id="exhaust-humidity" label=Label::Heat(HeatLabel::ExhaustHumidity) unit=no_unit shown=humidity set=set_humidity/>
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
        let present = exhaust.get_untracked();
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
            <label for="phase">{label(HeatLabel::Phase)}</label>
            <select id="phase" aria-describedby="phase-note" on:change=changed>
                <option value=NONE prop:selected=move || exhaust.get().phase.is_none()>
                    {label(HeatLabel::PhaseNone)}
                </option>
                {choices}
            </select>
            <p id="phase-note" class="field-note">{label(HeatLabel::PhaseHint)}</p>
        </div>
    }
}

/// A fixed text of heat and moisture.
pub(super) fn label(key: HeatLabel) -> String {
    super::store::label_text(Label::Heat(key))
}
