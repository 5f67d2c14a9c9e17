//! What the bands hang on: the uncertain inputs by how much they move airflow and back pressure.

use super::store::{Store, label_text};
use crate::report::words::{Label, Message};
use crate::system::{BandDetail, Share};
use leptos::prelude::*;

#[component]
pub(super) fn SharesPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let decides = move || {
        store.with_table_bands(|_, detail| {
            let detail = detail?;
            let first = detail.back_pressure_shares.first()?;
            Some(if detail.leading_share_is_settled {
                store.say(Message::LeadingInput {
                    input: first.input,
                    share: first.share,
                })
            } else {
                label_text(Label::NoSingleInput)
            })
        })
    };
    view! {
        <section class="panel shares" aria-labelledby="shares-title">
            <h2 id="shares-title">{label_text(Label::Shares)}</h2>
            <p data-testid="leading-input">{move || decides().unwrap_or_else(|| label_text(Label::SharePending))}</p>
            <SharesOf label=Label::BackPressure shares=|detail| &detail.back_pressure_shares/>
            <SharesOf label=Label::Airflow shares=|detail| &detail.airflow_shares/>
            <p class="fine">{label_text(Label::SharesMeaning)}</p>
        </section>
    }
}

/// One figure's inputs, most first.
#[component]
fn SharesOf(label: Label, shares: fn(&BandDetail) -> &Vec<Share>) -> impl IntoView {
    let store = expect_context::<Store>();
    let rows = Memo::new(move |_| {
        store.with_table_bands(|_, detail| detail.map(|detail| shares(detail).clone()))
    });
    let row = move |share: &Share| {
        let input = share.input;
        let coefficient = store
            .steady
            .with(|results| results.assessment.run.coefficients[input as usize]);
        let range = store.say(Message::InputRange {
            input,
            coefficient: &coefficient,
        });
        let standing = store.say(Message::Standing(coefficient.source.standing));
        view! {
            <li data-input=input.to_string()>
                <span class="share-of">{format!("{:.0} %", share.share * 100.0)}</span>
                <span>
                    {store.say(Message::Input(input))}
                    <small>{format!("{range}; {standing}")}</small>
                </span>
            </li>
        }
    };
    view! {
        <h3>{label_text(label)}</h3>
        {move || match rows.get() {
            None => view! { <p class="fine">{label_text(Label::SharePending)}</p> }.into_any(),
            Some(rows) if rows.is_empty() => view! { <p>{label_text(Label::NothingUncertain)}</p> }.into_any(),
            Some(rows) => view! { <ol class="share-list">{rows.iter().map(row).collect_view()}</ol> }.into_any(),
        }}
    }
}
