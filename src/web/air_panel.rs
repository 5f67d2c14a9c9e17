//! What moves the air, and the site.

use super::field::{ChoiceField, LengthField, NumberField};
use super::phase_fields::PhaseFields;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Flow, Site};
use crate::report::words::Label;
use crate::units::{Airflow, Temperature, UnitSystem};
use leptos::prelude::*;

/// The airflow that stands in the field when it is first stated, m³/s: the present one takes its
/// place where there is one.
const FIRST_STATED: Airflow = Airflow::from_cubic_metres_per_second(0.05);

#[component]
pub(super) fn AirPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let flow = Memo::new(move |_| store.plan.with(|plan| plan.flow));
    let is_stated = move || matches!(flow.get(), Flow::StatedAirflow { .. });
    let is_chosen = Callback::new(move |stated| is_stated() == stated);
    let set = Callback::new(move |stated| {
        let present = store
            .results
            .with_untracked(|results| results.figures.totals);
        store.act(Action::SetFlow(if stated {
            Flow::StatedAirflow {
                airflow: present.map_or(FIRST_STATED, |totals| totals.airflow),
            }
        } else {
            Flow::TypicalBlower {}
        }));
    });
    let drivers = vec![
        ("blower", Label::DriverTypicalBlower, false),
        ("stated", Label::DriverStated, true),
    ];
    view! {
        <section class="panel" aria-labelledby="air-title">
            <h2 id="air-title">{label_text(Label::AirAndSite)}</h2>
            <div class="fields">
                <ChoiceField id="driver" label=Label::AirDriver choices=drivers is_chosen set/>
                <Show when=is_stated>
                    <StatedAirflow/>
                </Show>
                <PhaseFields/>
                <SiteFields/>
            </div>
        </section>
    }
}

#[component]
fn StatedAirflow() -> impl IntoView {
    let store = expect_context::<Store>();
    let shown = Signal::derive(move || match store.plan.with(|plan| plan.flow) {
        Flow::StatedAirflow { airflow } => store.units.get().airflow(airflow).figure,
        Flow::TypicalBlower {} => String::new(),
    });
    let set = Callback::new(move |figure: f64| {
        let airflow = store.units.get_untracked().airflow_from(figure);
        store.act(Action::SetFlow(Flow::StatedAirflow { airflow }));
    });
    view! { <NumberField id="stated-airflow" label=Label::Airflow unit=UnitSystem::airflow_unit shown set/> }
}

fn set_site(store: Store, change: impl FnOnce(&mut Site)) {
    let mut site = store.plan_now().site;
    change(&mut site);
    store.act(Action::SetSite(site));
}

#[component]
fn SiteFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let site = move || store.plan.with(|plan| plan.site);
    let altitude = Signal::derive(move || {
        store
            .units
            .get()
            .equivalent_length(site().altitude)
            .to_string()
    });
    let ceiling = Signal::derive(move || {
        let height = store.plan.with(|plan| plan.ceiling_height);
        store.units.get().length(height).to_string()
    });
    let set_ceiling = Callback::new(move |height| store.act(Action::SetCeiling(height)));
    let set_altitude =
        Callback::new(move |altitude| set_site(store, |site| site.altitude = altitude));
    let outdoors = Signal::derive(move || degrees(store.units.get(), site().outdoor_temperature));
    let set_outdoors = Callback::new(move |figure: f64| {
        let temperature = store.units.get_untracked().temperature_from(figure);
        set_site(store, |site| site.outdoor_temperature = temperature);
    });
    view! {
        <NumberField id="outdoor-temperature" label=Label::OutdoorTemperature unit=UnitSystem::temperature_unit shown=outdoors set=set_outdoors/>
        <LengthField id="ceiling" label=Label::CeilingHeight shown=ceiling set=set_ceiling/>
        <LengthField id="altitude" label=Label::Altitude shown=altitude set=set_altitude/>
        <RoomFields/>
    }
}

/// The room that the dryer stands in: what its air comes through, and the house's pressure.
#[component]
fn RoomFields() -> impl IntoView {
    let store = expect_context::<Store>();
    let site = move || store.plan.with(|plan| plan.site);
    let house = Signal::derive(move || store.units.get().pressure(site().house_pressure).figure);
    let set_house = Callback::new(move |figure: f64| {
        let pressure = store.units.get_untracked().pressure_from(figure);
        set_site(store, |site| site.house_pressure = pressure);
    });
    let area = Signal::derive(move || {
        let area = site().make_up_free_area_m2.unwrap_or(0.0);
        format!("{:.0}", store.units.get().small_area(area))
    });
    let set_area = Callback::new(move |figure: f64| {
        let area = store.units.get_untracked().small_area_from(figure);
        // Nought takes it away; what no area can be is refused by the plan's limits.
        let area = (area != 0.0).then_some(area);
        set_site(store, |site| site.make_up_free_area_m2 = area);
    });
    view! {
        <NumberField id="house-pressure" label=Label::HousePressure unit=UnitSystem::pressure_unit shown=house set=set_house/>
        <NumberField id="make-up" label=Label::MakeUpArea hint=Label::MakeUpHint unit=UnitSystem::small_area_unit shown=area set=set_area/>
    }
}

pub(super) fn degrees(units: UnitSystem, temperature: Temperature) -> String {
    units.temperature(temperature).figure
}
