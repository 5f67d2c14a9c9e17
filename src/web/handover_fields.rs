//! What is typed for the handover sheet: date, names, remarks, and the lengths that pipe is bought in.

use super::handover_panel::handover_text;
use super::store::Store;
use crate::editor::Action;
use crate::plan::{Field, Handover};
use crate::report::words::{HandoverLabel, Message};
use crate::units::{Length, parse_length};
use leptos::prelude::*;

/// Takes a change of what is typed as one step.
fn change(store: Store, change: impl FnOnce(&mut Handover)) {
    let mut handover = store.plan_now().handover.clone();
    change(&mut handover);
    store.act(Action::SetHandover(Box::new(handover)));
}

/// The free texts; nothing is filled in by itself.
#[component]
pub(super) fn HandoverTexts() -> impl IntoView {
    let store = expect_context::<Store>();
    let field = move |id: &'static str,
                      label: HandoverLabel,
                      of: fn(&mut Handover) -> &mut String| {
        let shown = move || {
            store.plan.with(|plan| {
                let mut handover = plan.handover.clone();
                core::mem::take(of(&mut handover))
            })
        };
        let changed = move |event| {
            let text = event_target_value(&event);
            change(store, |handover| *of(handover) = text);
        };
        view! {
            <div class="field">
                <label for=id>{handover_text(label)}</label>
                <input id=id type="text" maxlength="200" autocomplete="off" prop:value=shown on:change=changed/>
            </div>
        }
    };
    let remarks = move || store.plan.with(|plan| plan.handover.remarks.clone());
    let noted = move |event| {
        let text = event_target_value(&event);
        change(store, |handover| handover.remarks = text);
    };
    view! {
        <p class="fine">{handover_text(HandoverLabel::TextsHint)}</p>
        <div class="fields">
            {field("handover-date", HandoverLabel::Date, |handover| &mut handover.date)}
            {field("handover-for", HandoverLabel::MadeFor, |handover| &mut handover.made_for)}
            {field("handover-by", HandoverLabel::MadeBy, |handover| &mut handover.made_by)}
        </div>
        <div class="field">
            <label for="handover-remarks">{handover_text(HandoverLabel::Remarks)}</label>
            <textarea
                id="handover-remarks"
                rows="3"
                maxlength=Field::HANDOVER_TEXT.greatest.to_string()
                prop:value=remarks
                on:change=noted
            ></textarea>
        </div>
    }
}

/// The lengths that pipe is bought in, with commas between them.
#[component]
pub(super) fn StockField() -> impl IntoView {
    let store = expect_context::<Store>();
    let wrong = RwSignal::new(String::new());
    let shown = move || {
        let units = store.units.get();
        store.plan.with(|plan| {
            let lengths = plan.handover.stock_lengths.iter();
            let texts: Vec<String> = lengths.map(|it| units.length(*it).to_string()).collect();
            texts.join(", ")
        })
    };
    let changed = move |event| {
        let units = store.units.get_untracked();
        let typed = event_target_value(&event);
        let lengths = typed
            .split([',', ';'])
            .filter(|part| !part.trim().is_empty())
            .map(|part| parse_length(part, units))
            .collect::<Result<Vec<Length>, _>>();
        match lengths {
            Ok(lengths) => {
                wrong.set(String::new());
                change(store, |handover| handover.stock_lengths = lengths);
            }
            Err(error) => wrong.set(store.say(Message::LengthText(&error))),
        }
    };
    let note = move || {
        let wrong = wrong.get();
        if wrong.is_empty() {
            handover_text(HandoverLabel::StockHint)
        } else {
            wrong
        }
    };
    view! {
        <div class="field">
            <label for="handover-stock">{handover_text(HandoverLabel::Stock)}</label>
            <input
                id="handover-stock"
                type="text"
                autocomplete="off"
                aria-describedby="handover-stock-note"
                aria-invalid=move || (!wrong.with(String::is_empty)).to_string()
                prop:value=shown
                on:change=changed
            />
            <p id="handover-stock-note" class="field-note" role="status">{note}</p>
        </div>
    }
}
