//! What a search for reroutes may do: wishes of whoever searches, no part of the plan.

use super::field::MaybeLengthField;
use super::search_client::Reroutes;
use super::store::Store;
use crate::report::words::{Label, Message, RerouteText};
use crate::search::Options;
use crate::units::Length;
use leptos::prelude::*;

#[component]
pub(super) fn RerouteOptions() -> impl IntoView {
    let store = expect_context::<Store>();
    let options = expect_context::<Reroutes>().options;
    let say = move |text: RerouteText| store.say(Message::Reroute(&text));
    let choice = move |text: RerouteText, get: fn(&mut Options) -> &mut bool| {
        let is_so = move || options.with(|options| *get(&mut options.clone()));
        let turn = move |_| {
            options.update(|options| {
                let own = get(options);
                *own = !*own;
            });
        };
        view! {
            <label class="check">
                <input type="checkbox" prop:checked=is_so on:change=turn/>
                <span>{say(text)}</span>
            </label>
        }
    };
    // Zones by id and kind: rebuilt where these change, not with every drag.
    let zones = Memo::new(move |_| {
        store.plan.with(|plan| {
            let zones = plan.zones.iter().map(|zone| (zone.id.clone(), zone.kind));
            zones.collect::<Vec<_>>()
        })
    });
    let zone_choices = move || {
        let one = |(id, kind)| {
            let named = std::sync::Arc::clone(&id);
            let is_closed = move || options.with(|it| it.closed_zones.contains(&named));
            let turn = move |_| {
                options.update(|options| {
                    let closed = &mut options.closed_zones;
                    let count = closed.len();
                    closed.retain(|own| *own != id);
                    if closed.len() == count {
                        closed.push(std::sync::Arc::clone(&id));
                    }
                });
            };
            view! {
                <label class="check">
                    <input type="checkbox" prop:checked=is_closed on:change=turn/>
                    <span>{say(RerouteText::CloseZone(kind))}</span>
                </label>
            }
        };
        zones.get().into_iter().map(one).collect_view()
    };
    let roof_height = Signal::derive(move || {
        let height = options.with(|options| options.roof_height);
        height.map_or_else(String::new, |height| {
            store.units.get().length(height).to_string()
        })
    });
    let set_roof = Callback::new(move |height: Option<Length>| {
        options.update(|options| options.roof_height = height);
    });
    view! {
        {choice(RerouteText::AllowOtherSides, |it| &mut it.other_outlet_sides)}
        {choice(RerouteText::AllowMovedDryer, |it| &mut it.dryer_may_move)}
        {zone_choices}
        <MaybeLengthField
            id="roof-height"
            label=Label::RoofCapHeight
            hint=Label::RoofCapHint
            shown=roof_height
            set=set_roof
        />
    }
}
