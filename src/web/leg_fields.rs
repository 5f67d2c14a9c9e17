//! A leg's duct, and what else is known or guessed of it.

use super::field::{ChoiceField, CountField, LengthField, NumberField};
use super::insulation_fields::InsulationFields;
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{ConcealedElbows, Duct, Estimate, LegState, NodeId, Plan};
use crate::report::words::Label;
use crate::units::{Length, UnitSystem};
use leptos::prelude::*;

/// What a leg is first taken for when its duct is chosen: stretched out, or a common flat size.
const STRETCHED: f64 = 0.0;
const FLAT: Duct = Duct::FlatRectangular {
    width: Length::from_inches(14.0),
    depth: Length::from_inches(2.5),
};

/// Whether a field belongs to the leg's present duct.
type Shown = fn(Duct) -> bool;

#[component]
pub(super) fn LegFields(node: NodeId) -> impl IntoView {
    let store = expect_context::<Store>();
    let looked_up = node.clone();
    let leg = Memo::new(move |_| store.plan.with(|plan| find(plan, &looked_up)));
    let set = Callback::new(move |(duct, leg): (Duct, LegState)| {
        let node = node.clone();
        store.act(Action::SetLeg { node, duct, leg });
    });
    let duct = Memo::new(move |_| leg.get().map_or(Duct::Rigid, |(duct, _)| duct));
    let when = move |shown: Shown| Memo::new(move |_| shown(duct.get()));
    let flexible = when(Duct::is_flexible);
    let flat = when(|duct| matches!(duct, Duct::FlatRectangular { .. }));
    view! {
        <DuctChoice duct set=Callback::new(move |duct| set.run((duct, state(leg))))/>
        <Show when=move || flexible.get()>
            <StretchField duct set=Callback::new(move |duct| set.run((duct, state(leg))))/>
        </Show>
        <Show when=move || flat.get()>
            <FlatFields duct set=Callback::new(move |duct| set.run((duct, state(leg))))/>
        </Show>
        <details class="more">
            <summary>{label_text(Label::MoreAboutLeg)}</summary>
            <div class="fields">
                <StateFields
                    leg=Memo::new(move |_| state(leg))
                    set=Callback::new(move |state| set.run((duct.get_untracked(), state)))
                />
            </div>
        </details>
    }
}

fn find(plan: &Plan, node: &NodeId) -> Option<(Duct, LegState)> {
    let NodeId::Point(id) = node else {
        return None;
    };
    let point = &plan.run.points[plan.run.index_of(id)?];
    Some((point.duct, point.leg))
}

fn state(leg: Memo<Option<(Duct, LegState)>>) -> LegState {
    leg.get().map_or_else(LegState::default, |(_, state)| state)
}

#[component]
fn DuctChoice(duct: Memo<Duct>, set: Callback<Duct>) -> impl IntoView {
    let kinds: [(&'static str, Label, Duct); 4] = [
        ("rigid", Label::DuctRigid, Duct::Rigid),
        (
            "semi_rigid",
            Label::DuctSemiRigid,
            Duct::SemiRigid {
                short_of_full_stretch_percent: STRETCHED,
            },
        ),
        (
            "foil",
            Label::DuctFoil,
            Duct::Foil {
                short_of_full_stretch_percent: STRETCHED,
            },
        ),
        ("flat", Label::DuctFlatRectangular, FLAT),
    ];
    let is_chosen = Callback::new(move |kind: Duct| {
        core::mem::discriminant(&duct.get()) == core::mem::discriminant(&kind)
    });
    view! { <ChoiceField id="leg-duct" label=Label::Duct choices=kinds.to_vec() is_chosen set/> }
}

#[component]
fn StretchField(duct: Memo<Duct>, set: Callback<Duct>) -> impl IntoView {
    let shown = Signal::derive(move || match duct.get() {
        Duct::SemiRigid {
            short_of_full_stretch_percent: percent,
        }
        | Duct::Foil {
            short_of_full_stretch_percent: percent,
        } => format!("{percent}"),
        _ => String::new(),
    });
    let set = Callback::new(move |percent: f64| {
        let mut duct = duct.get_untracked();
        if let Duct::SemiRigid {
            short_of_full_stretch_percent: old,
        }
        | Duct::Foil {
            short_of_full_stretch_percent: old,
        } = &mut duct
        {
            *old = percent;
        }
        set.run(duct);
    });
    view! { <NumberField id="leg-stretch" label=Label::ShortOfFullStretch shown set/> }
}

#[component]
fn FlatFields(duct: Memo<Duct>, set: Callback<Duct>) -> impl IntoView {
    let store = expect_context::<Store>();
    let size = move || match duct.get() {
        Duct::FlatRectangular { width, depth } => (width, depth),
        _ => (Length::ZERO, Length::ZERO),
    };
    let width = Signal::derive(move || store.units.get().length(size().0).to_string());
    let depth = Signal::derive(move || store.units.get().length(size().1).to_string());
    let set_width = Callback::new(move |width| {
        let (_, depth) = untrack(size);
        set.run(Duct::FlatRectangular { width, depth });
    });
    let set_depth = Callback::new(move |depth| {
        let (width, _) = untrack(size);
        set.run(Duct::FlatRectangular { width, depth });
    });
    view! {
        <LengthField id="leg-width" label=Label::DuctWidth shown=width set=set_width/>
        <LengthField id="leg-depth" label=Label::DuctDepth shown=depth set=set_depth/>
    }
}

/// What is guessed of a leg: how far off its length may be, elbows in it, a blockage, a leak.
#[component]
fn StateFields(leg: Memo<LegState>, set: Callback<LegState>) -> impl IntoView {
    const NO_ESTIMATE: Estimate = Estimate {
        less: Length::ZERO,
        more: Length::ZERO,
    };
    const NO_ELBOWS: ConcealedElbows = ConcealedElbows { least: 0, most: 0 };
    let store = expect_context::<Store>();
    let length = move |length: Length| store.units.get().length(length).to_string();
    let estimate = move || leg.get().estimate.unwrap_or(NO_ESTIMATE);
    let set_estimate = move |estimate: Estimate| {
        let leg = leg.get_untracked();
        let estimate = (estimate != NO_ESTIMATE).then_some(estimate);
        set.run(LegState { estimate, ..leg });
    };
    let elbows = move || leg.get().concealed.unwrap_or(NO_ELBOWS);
    let set_elbows = move |elbows: ConcealedElbows| {
        let leg = leg.get_untracked();
        let concealed = (elbows != NO_ELBOWS).then_some(elbows);
        set.run(LegState { concealed, ..leg });
    };
    let less = Signal::derive(move || length(estimate().less));
    let more = Signal::derive(move || length(estimate().more));
    let least = Signal::derive(move || elbows().least.to_string());
    let most = Signal::derive(move || elbows().most.to_string());
    let free = Signal::derive(move || {
        format!("{:.0}", leg.get().blockage_free_area.unwrap_or(1.0) * 100.0)
    });
    let set_less = Callback::new(move |less| {
        set_estimate(Estimate {
            less,
            ..untrack(estimate)
        });
    });
    let set_more = Callback::new(move |more| {
        set_estimate(Estimate {
            more,
            ..untrack(estimate)
        });
    });
    let set_least = Callback::new(move |least: u8| {
        let most = untrack(elbows).most;
        set_elbows(ConcealedElbows {
            least,
            most: most.max(least),
        });
    });
    let set_most = Callback::new(move |most: u8| {
        let least = untrack(elbows).least;
        set_elbows(ConcealedElbows {
            least: least.min(most),
            most,
        });
    });
    let set_free = Callback::new(move |percent: f64| {
        let leg = leg.get_untracked();
        // All free is no blockage; what no share can be is refused by the plan's limits.
        let free = percent / 100.0;
        let blockage_free_area = ((free - 1.0).abs() > f64::EPSILON).then_some(free);
        set.run(LegState {
            blockage_free_area,
            ..leg
        });
    });
    let gap = Signal::derive(move || {
        let area = leg.get().leak_free_area_m2.unwrap_or(0.0);
        format!("{:.2}", store.units.get().small_area(area))
    });
    let set_gap = Callback::new(move |figure: f64| {
        let area = store.units.get_untracked().small_area_from(figure);
        let leg = leg.get_untracked();
        let leak_free_area_m2 = (area != 0.0).then_some(area);
        set.run(LegState {
            leak_free_area_m2,
            ..leg
        });
    });
    view! {
        <LengthField id="estimate-less" label=Label::EstimateLess shown=less set=set_less/>
        <LengthField id="estimate-more" label=Label::EstimateMore shown=more set=set_more/>
        <CountField id="concealed-least" label=Label::ConcealedLeast shown=least set=set_least/>
        <CountField id="concealed-most" label=Label::ConcealedMost shown=most set=set_most/>
        <NumberField id="blockage" label=Label::BlockageFreeArea hint=Label::BlockageHint shown=free set=set_free/>
        <InsulationFields leg set/>
        <NumberField id="leak" label=Label::LeakArea hint=Label::LeakHint unit=UnitSystem::small_area_unit shown=gap set=set_gap/>
        <label class="check">
            <input
                type="checkbox"
                id="wall-box"
                prop:checked=move || leg.get().ends_in_wall_box
                on:change=move |event| {
                    let leg = leg.get_untracked();
                    set.run(LegState { ends_in_wall_box: event_target_checked(&event), ..leg });
                }
            />
            <span>{label_text(Label::EndsInWallBox)}</span>
        </label>
    }
}
