//! The selected element: what can be typed and chosen about it, and what its loss rests on.

use super::field::{ChoiceField, LengthField};
use super::leg_fields::LegFields;
use super::own_value::OwnValue;
use super::remarks::RemarksOn;
use super::store::{Store, label_text};
use super::termination_fields::TerminationFields;
use super::thing_fields::ThingPanel;
use crate::editor::{Action, Tool, rise_at};
use crate::plan::{Elbow, ElbowKind, ElementId, NodeId, Part, Plan, Point};
use crate::report::ElementFigures;
use crate::report::words::{Label, Message};
use crate::system::ElementKind;
use crate::units::Length;
use leptos::prelude::*;

/// Something about an element that can be changed.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Choice {
    LegLength,
    Duct,
    BendInLeg,
    Termination,
    Elbow,
    Rise,
    ElbowAfterRiser,
    Removal,
}

/// What can be changed about the element called `id`, in the order in which it is shown.
fn choices(plan: &Plan, id: &ElementId) -> Vec<Choice> {
    let last = plan
        .run
        .points
        .last()
        .map(|point| NodeId::Point(point.id.clone()));
    let is_last = last.as_ref() == Some(&id.node);
    let is_point = id.node != NodeId::Outlet;
    let is_leg = id.part == Part::Leg;
    let fitting = plan.run.fitting(&id.node);
    let has_riser = fitting.is_some_and(|fitting| fitting.riser.is_some());
    let offered = [
        (Choice::LegLength, is_point && (is_leg || is_last)),
        (Choice::Duct, is_leg && is_point),
        (Choice::BendInLeg, is_leg),
        (Choice::Termination, !is_leg && is_last),
        // At the end of the run an elbow only leads into a riser.
        (Choice::Elbow, !is_leg && (!is_last || has_riser)),
        (Choice::Rise, !is_leg),
        (Choice::ElbowAfterRiser, !is_leg && has_riser && !is_last),
        (Choice::Removal, !is_leg && is_point && !is_last),
    ];
    let offered = offered.into_iter().filter(|(_, offered)| *offered);
    offered.map(|(choice, _)| choice).collect()
}

#[component]
pub(super) fn SelectedPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    // The fields stay as they are while figures change about them.
    let chosen = Memo::new(move |_| {
        let id = store.selection.get()?;
        Some((store.plan.with(|plan| choices(plan, &id)), id))
    });
    let has_things = Memo::new(move |_| store.things.with(|things| !things.is_empty()));
    view! {
        <section class="panel selected" aria-labelledby="selected-title">
            <h2 id="selected-title">{label_text(Label::Selected)}</h2>
            {move || match chosen.get() {
                None if has_things.get() => view! { <ThingPanel/> }.into_any(),
                None => view! { <p>{label_text(Label::NothingSelected)}</p> }.into_any(),
                Some((choices, id)) => view! { <Chosen choices id/> }.into_any(),
            }}
        </section>
    }
}

#[component]
fn Chosen(choices: Vec<Choice>, id: ElementId) -> impl IntoView {
    let moves = choices.contains(&Choice::Removal) || choices.contains(&Choice::Termination);
    let fields = choices
        .into_iter()
        .map(|choice| offer(choice, id.node.clone()))
        .collect_view();
    view! {
        <Grounds id=id.clone()/>
        <RemarksOn element=id.clone()/>
        <div class="fields">{fields}</div>
        {moves.then(|| view! { <MoveByPress/> })}
        <Methods id=id.clone()/>
        <Own id/>
    }
}

/// What a drag does, for those who cannot drag: press where the corner is to go.
#[component]
fn MoveByPress() -> impl IntoView {
    let store = expect_context::<Store>();
    view! {
        <div class="deeds">
            <button type="button" on:click=move |_| store.act(Action::TakeTool(Tool::Place))>
                {label_text(Label::PlaceByTap)}
            </button>
        </div>
    }
}

/// K of a smooth elbow by every published method, to choose the plan's.
#[component]
fn Methods(id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let methods = Memo::new(move |_| {
        store.steady.with(|results| {
            let element = results.figures.element(&id);
            let air = element.and_then(|element| element.air.as_ref());
            air.map_or_else(Vec::new, |air| air.methods.clone())
        })
    });
    let chosen = move || store.plan.with(|plan| plan.bend_method);
    let choices = move || {
        methods
            .get()
            .into_iter()
            .map(|(method, k)| {
                view! {
                    <label class="check">
                        <input
                            type="radio"
                            name="bend-method"
                            disabled=k.is_none()
                            prop:checked=move || chosen() == method
                            on:change=move |_| store.act(Action::SetBendMethod(method))
                        />
                        <span>{move || store.say(Message::BendMethod { method, k })}</span>
                    </label>
                }
            })
            .collect_view()
    };
    view! {
        <Show when=move || !methods.with(Vec::is_empty)>
            <fieldset class="methods">
                <legend>{label_text(Label::BendMethods)}</legend>
                {choices}
            </fieldset>
        </Show>
    }
}

/// A value of the user's own for what the element's loss rests on.
#[component]
fn Own(id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let input = Memo::new(move |_| {
        store
            .steady
            .with(|results| results.figures.element(&id)?.element.own_input())
    });
    move || input.get().map(|input| view! { <OwnValue input/> })
}

fn offer(choice: Choice, node: NodeId) -> AnyView {
    let store = expect_context::<Store>();
    match choice {
        Choice::LegLength => view! { <LegLengthField node/> }.into_any(),
        Choice::Duct => view! { <LegFields node/> }.into_any(),
        Choice::Termination => view! { <TerminationFields/> }.into_any(),
        Choice::Rise => view! { <RiseField node/> }.into_any(),
        Choice::Elbow => {
            let element = ElementId::new(&node, Part::Elbow);
            view! { <ElbowFields element label=Label::ElbowKind names=ELBOW_FIELDS/> }.into_any()
        }
        Choice::ElbowAfterRiser => {
            let element = ElementId::new(&node, Part::ElbowAfterRiser);
            let label = Label::ElbowAfterRiserKind;
            view! { <ElbowFields element label=label names=ELBOW_AFTER_RISER_FIELDS/> }.into_any()
        }
        Choice::BendInLeg => button(Label::InsertBend, move || {
            store.act(Action::InsertBend {
                leg: node.clone(),
                at: None,
            });
        }),
        Choice::Removal => button(Label::DeleteBend, move || {
            store.act(Action::DeleteBend(node.clone()));
        }),
    }
}

fn button(label: Label, pressed: impl Fn() + 'static) -> AnyView {
    view! {
        <button type="button" on:click=move |_| pressed()>
            {label_text(label)}
        </button>
    }
    .into_any()
}

/// What the element is, and the coefficient that its loss rests on with its source.
#[component]
fn Grounds(id: ElementId) -> impl IntoView {
    let store = expect_context::<Store>();
    let element = Memo::new(move |_| {
        store
            .steady
            .with(|results| results.figures.element(&id).cloned())
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
                <p class="formula">{store.say(Message::LossFormula(element))}</p>
                <p class="formula">{length_formula(store, element)}</p>
                <p>
                    {label_text(label)} ": " <strong>{likely} {unit}</strong>
                    " (" {low} "\u{2013}" {high} "), "
                    {store.say(Message::Standing(source.standing))} ", "
                    {store.say(Message::Reach(element.reach))}
                </p>
                <p class="fine">
                    {label_text(Label::SourceHeading)} ": " {source.title} ", " {source.edition} ", "
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

fn length_formula(store: Store, element: &ElementFigures) -> Option<String> {
    let totals = store.steady.with(|results| results.figures.totals)?;
    Some(store.say(Message::EquivalentLengthFormula(element, &totals)))
}

#[component]
fn LegLengthField(node: NodeId) -> impl IntoView {
    let store = expect_context::<Store>();
    let measured = node.clone();
    let shown = Signal::derive(move || {
        let length = store.plan.with(|plan| leg_length(plan, &measured));
        length.map_or_else(String::new, |length| {
            store.units.get().length(length).to_string()
        })
    });
    let set = Callback::new(move |length| {
        store.act(Action::SetLegLength {
            node: node.clone(),
            length,
        });
    });
    view! { <LengthField id="leg-length" label=Label::LegLength hint=Label::LegLengthHint shown set/> }
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
        let rise = store.plan.with(|plan| rise_at(plan, &measured));
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

const KINDS: [(&str, Label, ElbowKind); 4] = [
    ("segmented", Label::ElbowSegmented, ElbowKind::Segmented),
    ("smooth", Label::ElbowSmooth, ElbowKind::Smooth),
    ("sharp_mitre", Label::ElbowSharpMitre, ElbowKind::SharpMitre),
    (
        "bent_flexible",
        Label::ElbowBentFlexible,
        ElbowKind::BentFlexible,
    ),
];

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
    let is_chosen = Callback::new(move |kind| elbow.get().is_some_and(|elbow| elbow.kind == kind));
    let set_kind = Callback::new(move |kind| set(&|elbow| elbow.kind = kind));
    let take_radius = Callback::new(move |radius| set_radius(&|elbow| elbow.radius = radius));
    view! {
        <ChoiceField id=names.0 label choices=KINDS.to_vec() is_chosen set=set_kind/>
        <LengthField id=names.1 label=Label::ElbowRadius shown set=take_radius/>
    }
}
