//! The selected element: what can be typed and chosen about it, and what its loss rests on.

use super::field::LengthField;
use super::store::Store;
use crate::editor::Action;
use crate::plan::{Elbow, ElbowKind, ElementId, NodeId, Part, Plan, Point};
use crate::report::words::{Label, Message};
use crate::system::ElementKind;
use crate::units::Length;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

/// What of an element can be changed.
#[derive(Clone, PartialEq)]
struct Choices {
    id: ElementId,
    leg: bool,
    rise: bool,
    elbow: bool,
    elbow_after_riser: bool,
    can_be_removed: bool,
}

impl Choices {
    fn of(plan: &Plan, id: ElementId) -> Self {
        let last = plan.run.points.last().map(|point| NodeId::Point(point.id.clone()));
        let is_last = last.as_ref() == Some(&id.node);
        let is_point = id.node != NodeId::Outlet;
        let has_riser = plan
            .run
            .fitting(&id.node)
            .is_some_and(|fitting| fitting.riser.is_some());
        let at_corner = id.part != Part::Leg;
        Self {
            leg: is_point && (id.part == Part::Leg || is_last),
            rise: at_corner,
            elbow: matches!(id.part, Part::Elbow | Part::Riser) || (is_last && has_riser),
            elbow_after_riser: at_corner && has_riser && !is_last,
            can_be_removed: at_corner && is_point && !is_last,
            id,
        }
    }
}

#[component]
pub(super) fn SelectedPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let choices = Memo::new(move |_| {
        let id = store.selection.get()?;
        Some(store.plan.with(|plan| Choices::of(plan, id)))
    });
    view! {
        <section class="panel selected" aria-labelledby="selected-title">
            <h2 id="selected-title">{store.label(Label::Selected)}</h2>
            {move || match choices.get() {
                None => view! { <p>{store.label(Label::NothingSelected)}</p> }.into_any(),
                Some(choices) => view! { <Chosen choices/> }.into_any(),
            }}
        </section>
    }
}

#[component]
fn Chosen(choices: Choices) -> impl IntoView {
    let store = expect_context::<Store>();
    let node = choices.id.node.clone();
    let leg = choices.leg.then(|| view! { <LegFields node=node.clone() can_bend={choices.id.part == Part::Leg}/> });
    let elbow = choices.elbow.then(|| {
        let element = ElementId::new(&node, Part::Elbow);
        view! { <ElbowFields element label=Label::ElbowKind names=ELBOW_FIELDS/> }
    });
    let rise = choices.rise.then(|| view! { <RiseField node=node.clone()/> });
    let after = choices.elbow_after_riser.then(|| {
        let element = ElementId::new(&node, Part::ElbowAfterRiser);
        view! { <ElbowFields element label=Label::ElbowAfterRiserKind names=ELBOW_AFTER_RISER_FIELDS/> }
    });
    let removed = node.clone();
    let remove = choices.can_be_removed.then(|| {
        view! {
            <button type="button" on:click=move |_| store.act(Action::DeleteBend(removed.clone()))>
                {store.label(Label::DeleteBend)}
            </button>
        }
    });
    view! {
        <Grounds id=choices.id/>
        <div class="fields">{leg} {elbow} {rise} {after}</div>
        {remove}
    }
}

/// What the element is, and the coefficient that its loss rests on with its source.
#[component]
fn Grounds(id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let element = Memo::new(move |_| {
        store.results.with(|results| {
            results.figures.elements.iter().find(|element| element.id == id).cloned()
        })
    });
    let name = move || {
        element.with(|element| {
            element.as_ref().map(|element| {
                let size = store.say(Message::ElementSize(&element.element));
                format!("{} {size}", store.say(Message::Element(&element.element)))
            })
        })
    };
    let grounds = move || {
        element.with(|element| {
            let element = element.as_ref()?;
            let coefficient = element.air.as_ref()?.coefficient;
            let (label, scale, unit) = match element.element {
                ElementKind::Straight { .. } => (Label::Roughness, 1000.0, " mm"),
                _ => (Label::LossCoefficient, 1.0, ""),
            };
            let [low, likely, high] = [coefficient.low, coefficient.likely, coefficient.high]
                .map(|value| format!("{:.2}", value * scale));
            let source = coefficient.source;
            Some(view! {
                <p>
                    {store.label(label)} ": " <strong>{likely} {unit}</strong>
                    " (" {low} "\u{2013}" {high} "), "
                    {store.say(Message::Standing(source.standing))} ", "
                    {store.say(Message::Reach(element.reach))}
                </p>
                <p class="fine">
                    {store.label(Label::SourceHeading)} ": " {source.title} ", " {source.edition} ", "
                    {source.locator}
                </p>
            })
        })
    };
    view! {
        <p class="selected-name">{name}</p>
        {grounds}
    }
}

#[component]
fn LegFields(node: NodeId, can_bend: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let (measured, set, bent) = (node.clone(), node.clone(), node);
    let shown = Signal::derive(move || {
        let length = store.plan.with(|plan| leg_length(plan, &measured));
        length.map_or_else(String::new, |length| store.units.get().length(length).to_string())
    });
    let set = Callback::new(move |length| {
        store.act(Action::SetLegLength {
            node: set.clone(),
            length,
        });
    });
    let bend = can_bend.then(|| {
        view! {
            <button
                type="button"
                on:click=move |_| store.act(Action::InsertBend { leg: bent.clone(), at: None })
            >
                {store.label(Label::InsertBend)}
            </button>
        }
    });
    view! {
        <LengthField id="leg-length" label=Label::LegLength hint=Label::LegLengthHint shown set/>
        {bend}
    }
}

fn leg_length(plan: &Plan, node: &NodeId) -> Option<Length> {
    let NodeId::Point(id) = node else {
        return None;
    };
    let index = plan.run.index_of(id)?;
    let before: Point = match index.checked_sub(1) {
        None => plan.dryer.outlet(),
        Some(before) => plan.run.points[before].position,
    };
    Some(before.distance(plan.run.points[index].position))
}

#[component]
fn RiseField(node: NodeId) -> impl IntoView {
    let store = expect_context::<Store>();
    let measured = node.clone();
    let shown = Signal::derive(move || {
        let rise = store.plan.with(|plan| {
            let riser = plan.run.fitting(&measured).and_then(|fitting| fitting.riser);
            riser.map_or(Length::ZERO, |riser| riser.rise)
        });
        store.units.get().length(rise).to_string()
    });
    let set = Callback::new(move |rise| {
        store.act(Action::SetRise {
            node: node.clone(),
            rise,
        });
    });
    view! { <LengthField id="rise" label=Label::RiseHere hint=Label::RiseHint shown set/> }
}

/// The ids of the two fields of an elbow.
type FieldNames = (&'static str, &'static str);
const ELBOW_FIELDS: FieldNames = ("elbow-kind", "elbow-radius");
const ELBOW_AFTER_RISER_FIELDS: FieldNames = ("elbow-after-riser-kind", "elbow-after-riser-radius");

#[component]
fn ElbowFields(element: ElementId, label: Label, names: FieldNames) -> impl IntoView {
    let store = expect_context::<Store>();
    let looked_up = element.clone();
    let elbow = Memo::new(move |_| {
        store.plan.with(|plan| {
            let fitting = plan.run.fitting(&looked_up.node)?;
            match looked_up.part {
                Part::ElbowAfterRiser => fitting.riser.map(|riser| riser.elbow),
                _ => Some(fitting.elbow),
            }
        })
    });
    let set = move |change: &dyn Fn(&mut Elbow)| {
        if let Some(mut elbow) = elbow.get_untracked() {
            change(&mut elbow);
            store.act(Action::SetElbow {
                element: element.clone(),
                elbow,
            });
        }
    };
    let set_radius = set.clone();
    let shown = Signal::derive(move || {
        let radius = elbow.get().map_or(Length::ZERO, |elbow| elbow.radius);
        store.units.get().length(radius).to_string()
    });
    let is_smooth = move || elbow.get().is_some_and(|elbow| elbow.kind == ElbowKind::Smooth);
    let chosen = move |event: web_sys::Event| {
        let list = event.target().and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let smooth = list.is_some_and(|list| list.value() == "smooth");
        let kind = if smooth { ElbowKind::Smooth } else { ElbowKind::Segmented };
        set(&|elbow| elbow.kind = kind);
    };
    let take_radius = Callback::new(move |radius| set_radius(&|elbow| elbow.radius = radius));
    view! {
        <div class="field">
            <label for=names.0>{store.label(label)}</label>
            <select id=names.0 on:change=chosen>
                <option value="segmented" prop:selected=move || !is_smooth()>
                    {store.label(Label::ElbowSegmented)}
                </option>
                <option value="smooth" prop:selected=is_smooth>
                    {store.label(Label::ElbowSmooth)}
                </option>
            </select>
        </div>
        <LengthField id=names.1 label=Label::ElbowRadius shown set=take_radius/>
    }
}
