//! The dryer maker's limits, typed from the dryer's instructions.

use super::code_panel::set_code;
use super::field::{MaybeLengthField, MaybeNumberField};
use super::store::{Store, code_text};
use crate::plan::MakerLimits;
use crate::report::words::{CodeLabel, Label};
use crate::units::{Length, UnitSystem};
use leptos::prelude::*;

#[component]
pub(super) fn MakerFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let back_pressure = Signal::derive(move || {
        let limit = store.plan.with(|plan| plan.code.maker.back_pressure);
        limit.map_or_else(String::new, |limit| {
            store.units.get().pressure(limit).figure
        })
    });
    let set_back_pressure = Callback::new(move |figure: Option<f64>| {
        let units = store.units.get_untracked();
        set_code(store, |code| {
            code.maker.back_pressure = figure.map(|figure| units.pressure_from(figure));
        });
    });
    view! {
        <details class="more">
            <summary>{code_text(CodeLabel::MakerHeading)}</summary>
            <p class="fine">{code_text(CodeLabel::MakerHint)}</p>
            <div class="fields">
                <MakerLength
                    id="maker-length"
                    label=Label::MakerLength
                    get=|maker| maker.length
                    put=|maker, length| maker.length = length
                />
                <MakerLength
                    id="maker-elbow-45"
                    label=Label::MakerElbow45
                    get=|maker| maker.at_45
                    put=|maker, length| maker.at_45 = length
                />
                <MakerLength
                    id="maker-elbow-90"
                    label=Label::MakerElbow90
                    get=|maker| maker.at_90
                    put=|maker, length| maker.at_90 = length
                />
                <MaybeNumberField
                    id="maker-back-pressure"
                    label=Label::MakerBackPressure
                    hint=Label::MakerEmpty
                    unit=UnitSystem::pressure_unit
                    shown=back_pressure
                    set=set_back_pressure
                />
            </div>
        </details>
    }
}

#[component]
fn MakerLength(
    id: &'static str,
    label: Label,
    get: fn(&MakerLimits) -> Option<Length>,
    put: fn(&mut MakerLimits, Option<Length>),
) -> impl IntoView {
    let store = expect_context::<Store>();
    let shown = Signal::derive(move || {
        let length = store.plan.with(|plan| get(&plan.code.maker));
        length.map_or_else(String::new, |length| {
            store.units.get().length(length).to_string()
        })
    });
    let set = Callback::new(move |length: Option<Length>| {
        set_code(store, |code| put(&mut code.maker, length));
    });
    view! { <MaybeLengthField id label hint=Label::MakerEmpty shown set/> }
}
