//! The ledger: one row an element, in run order or costliest first.

use super::radio_choice::RadioChoice;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::ElementId;
use crate::report::words::{Label, Message};
use crate::report::{AirFigures, ElementFigures, Totals};
use crate::scene::cividis;
use crate::source::Standing;
use crate::units::{Length, Pressure, Shown, UnitSystem};
use leptos::prelude::*;

#[component]
pub(super) fn LedgerPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let ranked = RwSignal::new(false);
    let ids = Memo::new(move |_| {
        store.steady.with(|results| {
            let mut elements: Vec<&ElementFigures> = results.figures.elements.iter().collect();
            if ranked.get() {
                elements
                    .sort_by_key(|element| element.air.as_ref().map_or(usize::MAX, |air| air.rank));
            }
            elements
                .iter()
                .map(|element| element.id.clone())
                .collect::<Vec<_>>()
        })
    });
    let greatest = Memo::new(move |_| {
        store.steady.with(|results| {
            let air = results
                .figures
                .elements
                .iter()
                .filter_map(|element| element.air.as_ref());
            air.map(|air| air.share).fold(0.0, f64::max)
        })
    });
    let units = move || store.units.get();
    let length_unit = move || units().equivalent_length_unit();
    let orders = vec![
        (false, label_text(Label::LedgerInRunOrder)),
        (true, label_text(Label::LedgerRanked)),
    ];
    let set_order = Callback::new(move |order| ranked.set(order));
    view! {
        <section class="panel ledger" aria-labelledby="ledger-title">
            <div class="panel-head">
                <h2 id="ledger-title">{label_text(Label::Ledger)}</h2>
                <RadioChoice
                    name="ledger-order"
                    legend=label_text(Label::LedgerOrder)
                    choices=orders
                    chosen=ranked.into()
                    set=set_order
                />
            </div>
            <div class="table-scroll">
                <table>
                    <thead>
                        <tr>
                            <th scope="col" class="figure">{label_text(Label::ColumnRank)}</th>
                            <th scope="col">{label_text(Label::ColumnElement)}</th>
                            <th scope="col" class="figure">
                                {label_text(Label::ColumnLoss)} <small>{move || units().pressure_unit()}</small>
                            </th>
                            <th scope="col" class="figure">{label_text(Label::ColumnShare)}</th>
                            <th scope="col" class="figure">
                                {label_text(Label::EquivalentLength)} <small>{length_unit}</small>
                            </th>
                            <th scope="col" class="figure">
                                {label_text(Label::ColumnCodeDeduction)} <small>{length_unit}</small>
                            </th>
                        </tr>
                    </thead>
                    <tbody>
                        <For
                            each=move || ids.get()
                            key=Clone::clone
                            children=move |id| view! { <Row id greatest/> }
                        />
                    </tbody>
                    <SumRow/>
                </table>
            </div>
        </section>
    }
}

#[component]
fn Row(id: ElementId, greatest: Memo<f64>) -> impl IntoView {
    let store = expect_context::<Store>();
    let key = id.to_string();
    let (selects, enters, found) = (id.clone(), id.clone(), id.clone());
    let is_selected = Memo::new({
        let id = id.clone();
        move |_| {
            store
                .selection
                .with(|selected| selected.as_ref() == Some(&id))
        }
    });
    let is_hovered =
        Memo::new(move |_| store.hovered.with(|hovered| hovered.as_ref() == Some(&id)));
    let placed = found.clone();
    let element = Memo::new(move |_| {
        store
            .steady
            .with(|results| results.figures.element(&found).cloned())
    });
    let place = Memo::new(move |_| {
        store.steady.with(|results| {
            let mut elements = results.figures.elements.iter();
            elements.position(|element| element.id == placed)
        })
    });
    let bands = Memo::new(move |_| {
        let place = place.get()?;
        store.with_table_bands(|_, detail| detail?.elements.get(place).copied())
    });
    let of_air = move |text: &dyn Fn(&AirFigures) -> String| {
        element.with(|element| {
            let air = element.as_ref().and_then(|element| element.air.as_ref());
            air.map_or_else(String::new, text)
        })
    };
    let of_element = move |text: &dyn Fn(&ElementFigures) -> String| {
        element.with(|element| element.as_ref().map_or_else(String::new, text))
    };
    view! {
        <tr
            data-element=key
            class:lit=move || is_selected.get() || is_hovered.get()
            aria-selected=move || is_selected.get().to_string()
            on:pointerenter=move |_| store.hovered.set(Some(enters.clone()))
            on:pointerleave=move |_| store.hovered.set(None)
        >
            <td class="figure" data-cell="rank">{move || of_air(&|air| air.rank.to_string())}</td>
            <th scope="row">
                <button
                    type="button"
                    class="row-select"
                    aria-pressed=move || is_selected.get().to_string()
                    on:click=move |_| store.act(Action::Select(Some(selects.clone())))
                >
                    <span>{move || of_element(&|element| store.say(Message::Element(&element.element)))}</span>
                    <small>{move || of_element(&|element| store.say(Message::ElementSize(&element.element)))}</small>
                </button>
                <small class="standing">{move || of_air(&|air| standing(store, air))}</small>
            </th>
            <td class="figure" data-cell="loss">
                <span class="likely">{move || of_air(&|air| store.units.get().pressure(air.loss).figure)}</span>
                <BandOf band=Signal::derive(move || bands.get().map(|bands| store.say_band(bands.loss, loss_figure)))/>
            </td>
            <td class="figure" data-cell="share">
                <ShareBar greatest share=Signal::derive(move || {
                    element.with(|element| {
                        let air = element.as_ref().and_then(|element| element.air.as_ref());
                        air.map(|air| air.share)
                    })
                })/>
            </td>
            <td class="figure" data-cell="equivalent-length">
                <span class="likely">{move || of_air(&|air| store.units.get().equivalent_length(air.equivalent_length).figure)}</span>
                <BandOf band=Signal::derive(move || bands.get().map(|bands| store.say_band(bands.equivalent_length, length_figure)))/>
            </td>
            <td class="figure" data-cell="code-deduction">
                {move || of_element(&|element| {
                    element.code_deduction.map_or_else(
                        || "\u{2013}".to_owned(),
                        |deduction| store.units.get().equivalent_length(deduction).figure,
                    )
                })}
                <small>
                    {move || of_element(&|element| {
                        let notes = element.code_notes.iter();
                        let notes = notes.map(|note| store.say(Message::DeductionNote(*note)));
                        notes.collect::<Vec<_>>().join("; ")
                    })}
                </small>
            </td>
        </tr>
    }
}

/// What the figures of an element rest on, where that is no published source.
fn standing(store: Store, air: &AirFigures) -> String {
    let standing = air.coefficient.source.standing;
    if matches!(standing, Standing::Published) {
        String::new()
    } else {
        store.say(Message::Standing(standing))
    }
}

/// A figure's band in small; nothing while it is worked out.
#[component]
fn BandOf(band: Signal<Option<String>>) -> impl IntoView {
    view! { <small class="band">{move || band.get()}</small> }
}

/// Figures of a table stand without their unit, which its head gives.
fn loss_figure(units: UnitSystem, pascals: f64) -> Shown {
    without_unit(units.pressure(Pressure::from_pascals(pascals)))
}

fn length_figure(units: UnitSystem, metres: f64) -> Shown {
    without_unit(units.equivalent_length(Length::from_metres(metres)))
}

fn without_unit(shown: Shown) -> Shown {
    Shown { unit: "", ..shown }
}

/// A share as a figure and a bar in the drawing's ramp.
#[component]
fn ShareBar(share: Signal<Option<f64>>, greatest: Memo<f64>) -> impl IntoView {
    const FULL: f64 = 56.0;
    let weight = move || {
        let greatest = greatest.get();
        share.get().map_or(0.0, |share| {
            if greatest > 0.0 {
                share / greatest
            } else {
                0.0
            }
        })
    };
    view! {
        <span class="share">
            <svg width=FULL height="10" viewBox=format!("0 0 {FULL} 10") aria-hidden="true">
                <rect class="share-rest" x="0" y="0" width=FULL height="10"/>
                <rect
                    class="share-bar"
                    x="0"
                    y="0"
                    width=move || FULL * weight()
                    height="10"
                    fill=move || cividis(weight()).to_string()
                />
            </svg>
            <span>{move || share.get().map(|share| format!("{:.0} %", share * 100.0))}</span>
        </span>
    }
}

#[component]
fn SumRow() -> impl IntoView {
    let store = expect_context::<Store>();
    let totals = move || store.steady.with(|results| results.figures.totals);
    let units = move || store.units.get();
    let deductions = move || store.steady.with(|results| results.figures.code.deductions);
    view! {
        <tfoot>
            <tr>
                <td></td>
                <th scope="row">
                    {label_text(Label::ColumnSum)}
                    <small>
                        {label_text(Label::DevelopedLength)} " "
                        {move || totals().map(|totals| units().length(totals.developed_length).to_string())}
                    </small>
                </th>
                <td class="figure" data-cell="loss">
                    <span class="likely">{move || totals().map(|totals| units().pressure(totals.loss).figure)}</span>
                    <BandOf band=Signal::derive(move || store.with_table_bands(|bands, _| Some(store.say_band(bands.loss, loss_figure))))/>
                </td>
                <td></td>
                <td class="figure" data-cell="equivalent-length">
                    <span class="likely">{move || totals().map(|totals| units().equivalent_length(totals.equivalent_length).figure)}</span>
                    <BandOf band=Signal::derive(move || store.with_table_bands(|bands, _| Some(store.say_band(bands.equivalent_length, length_figure))))/>
                </td>
                <td class="figure">{move || units().equivalent_length(deductions()).figure}</td>
            </tr>
            <Balance label=Label::BalanceDraught pressure=|totals| totals.stack/>
            <Balance label=Label::BalanceHouse pressure=|totals| -totals.house_pressure/>
            <Balance label=Label::BalanceVelocityPressure pressure=|totals| -totals.velocity_pressure/>
            <Balance label=Label::BackPressure hint=Label::BackPressureHint pressure=|totals| totals.back_pressure/>
        </tfoot>
    }
}

/// One step from the sum of losses to the back pressure that a gauge reads.
#[component]
fn Balance(
    label: Label,
    #[prop(optional, into)] hint: Option<Label>,
    pressure: fn(&Totals) -> Pressure,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let figure = move || {
        let totals = store.steady.with(|results| results.figures.totals)?;
        Some(store.units.get().pressure(pressure(&totals)).figure)
    };
    view! {
        <tr class="balance">
            <td></td>
            <th scope="row">
                {label_text(label)}
                {hint.map(|hint| view! { <small>{label_text(hint)}</small> })}
            </th>
            <td class="figure">{figure}</td>
            <td colspan="3"></td>
        </tr>
    }
}
