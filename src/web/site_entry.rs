//! The form for a reading: what was read, where, under which conditions.

use super::field::NumberField;
use super::open_visit::change_visit;
use super::site_reading::{Quantity, typed_reading};
use super::site_words::{say_spot, site_text};
use super::store::Store;
use crate::diagnosis::{Plausibility, Test, plausibility, reachable_joints};
use crate::editor::VisitChange;
use crate::plan::{Conditions, Entry, Pattern, Preparation, Spot, Visit};
use crate::report::words::{Label, Message, SiteLabel, SiteMessage};
use leptos::html;
use leptos::prelude::*;

/// What is being typed.
#[derive(Clone, Copy)]
pub(super) struct Form {
    pub quantity: RwSignal<Quantity>,
    pub at: RwSignal<Spot>,
    pub text: RwSignal<String>,
    pub pattern: RwSignal<Pattern>,
    pub outdoors: RwSignal<bool>,
    pub conditions: RwSignal<Conditions>,
    /// Last digit and tolerance, SI.
    pub resolution: RwSignal<f64>,
    pub tolerance: RwSignal<f64>,
    said: RwSignal<String>,
    input: NodeRef<html::Input>,
}

impl Form {
    pub fn new() -> Self {
        let (resolution, tolerance) = Quantity::StaticPressure.usual_error();
        Self {
            quantity: RwSignal::new(Quantity::StaticPressure),
            at: RwSignal::new(Spot::Outlet),
            text: RwSignal::new(String::new()),
            pattern: RwSignal::new(Pattern::CentreLine),
            outdoors: RwSignal::new(false),
            conditions: RwSignal::new(Conditions::PLAIN),
            resolution: RwSignal::new(resolution),
            tolerance: RwSignal::new(tolerance),
            said: RwSignal::new(String::new()),
            input: NodeRef::new(),
        }
    }

    fn take_quantity(self, quantity: Quantity) {
        let (resolution, tolerance) = quantity.usual_error();
        self.quantity.set(quantity);
        self.resolution.set(resolution);
        self.tolerance.set(tolerance);
    }

    /// Makes the form ready for a test, and puts the finger on the figure.
    pub fn make_ready(self, test: &Test, heat: bool) {
        let (Some(spot), Some(conditions)) = (test.spot(), test.conditions(heat)) else {
            return;
        };
        self.take_quantity(if test.is_velocity() {
            Quantity::Velocity
        } else {
            Quantity::StaticPressure
        });
        self.at.set(spot);
        self.conditions.set(conditions);
        self.outdoors.set(false);
        self.text.set(String::new());
        if let Some(input) = self.input.get_untracked() {
            let _ = input.focus();
        }
    }
}

#[component]
pub(super) fn EntryForm(form: Form, visit: Memo<Visit>) -> impl IntoView {
    let store = expect_context::<Store>();
    let add = move || {
        let units = store.units.get_untracked();
        let reading = match typed_reading(form, units) {
            Ok(reading) => reading,
            Err(text) => {
                form.said
                    .set(store.say(Message::NotANumber { text: &text }));
                return;
            }
        };
        let plan = store.plan_now();
        form.said.set(match plausibility(&plan, &reading) {
            Plausibility::Fine => String::new(),
            Plausibility::Doubted(why) => store.say(Message::Site(SiteMessage::Doubted(why))),
            Plausibility::Refused(why) => {
                form.said
                    .set(store.say(Message::Site(SiteMessage::Refused(why))));
                return;
            }
        });
        change_visit(store, VisitChange::Add(Entry::Reading(reading)));
        form.text.set(String::new());
    };
    // What was ticked holds for the reading, unless it is said otherwise there.
    Effect::new(move |_| {
        let cold = visit.with(|visit| visit.preparation.contains(&Preparation::NoHeatCycle));
        let always = visit.with(|visit| visit.always_heats);
        let heat = always && !cold;
        form.conditions.update(|conditions| conditions.heat = heat);
    });
    let quantity = form.quantity;
    let is_velocity = move || {
        matches!(
            quantity.get(),
            Quantity::Velocity | Quantity::VelocityPressure
        )
    };
    let is_pressure = move || quantity.get() == Quantity::StaticPressure;
    let value_label = move || {
        let unit = quantity.get().unit(store.units.get());
        format!("{} ({unit})", site_text(SiteLabel::Value))
    };
    let hint = move || {
        site_text(if is_velocity() {
            SiteLabel::ValuesHint
        } else {
            SiteLabel::ValueHint
        })
    };
    view! {
        <form
            class="site-entry"
            aria-labelledby="site-entry-title"
            on:submit=move |event| {
                event.prevent_default();
                add();
            }
        >
            <h3 id="site-entry-title">{site_text(SiteLabel::EntryHeading)}</h3>
            <div class="fields">
                <QuantityField form/>
                <SpotField id="site-at" label=SiteLabel::At chosen=form.at hood=true/>
                <div class="field">
                    <label for="site-value">{value_label}</label>
                    <input
                        node_ref=form.input
                        id="site-value"
                        type="text"
                        inputmode="decimal"
                        autocomplete="off"
                        aria-describedby="site-value-note"
                        prop:value=form.text
                        on:input=move |event| form.text.set(event_target_value(&event))
                    />
                    <p id="site-value-note" class="field-note">{hint}</p>
                </div>
                <Show when=is_velocity>
                    <PatternField form/>
                </Show>
            </div>
            <details class="more">
                <summary>{site_text(SiteLabel::Conditions)}</summary>
                <div class="site-conditions">
                    <Show when=is_pressure>
                        <Tick label=SiteLabel::AgainstOutdoors is_so=Signal::derive(move || form.outdoors.get()) set=Callback::new(move |is_so| form.outdoors.set(is_so))/>
                    </Show>
                    <Condition form label=SiteLabel::Heat of=|it| &mut it.heat/>
                    <Condition form label=SiteLabel::FlapHeld of=|it| &mut it.flap_held/>
                    <Condition form label=SiteLabel::DoorOpen of=|it| &mut it.door_open/>
                    <Condition form label=SiteLabel::ScreenNotClean of=|it| &mut it.lint_screen_clean unless=true/>
                    <Condition form label=SiteLabel::DrumNotEmpty of=|it| &mut it.drum_empty unless=true/>
                    <OpenJointField form/>
                    <ErrorField id="site-resolution" label=Label::GaugeResolution form of=|form| form.resolution/>
                    <ErrorField id="site-tolerance" label=Label::GaugeTolerance form of=|form| form.tolerance/>
                </div>
            </details>
            <p class="site-said" role="status">{move || form.said.get()}</p>
            <button type="submit" class="site-add">{site_text(SiteLabel::Add)}</button>
        </form>
    }
}

#[component]
fn QuantityField(form: Form) -> impl IntoView {
    let options = Quantity::ALL.map(|quantity| {
        view! {
            <option value=quantity.key() prop:selected=move || form.quantity.get() == quantity>
                {site_text(quantity.label())}
            </option>
        }
    });
    let changed = move |event| {
        let key = event_target_value(&event);
        let quantity = Quantity::ALL.into_iter().find(|it| it.key() == key);
        if let Some(quantity) = quantity {
            form.take_quantity(quantity);
        }
    };
    view! {
        <div class="field">
            <label for="site-quantity">{site_text(SiteLabel::Quantity)}</label>
            <select id="site-quantity" on:change=changed>{options}</select>
        </div>
    }
}

/// The spots of the run that can be reached.
fn spots(store: Store, hood: bool) -> Vec<Spot> {
    let joints = store.plan.with(|plan| reachable_joints(plan));
    let joints = joints.into_iter().map(Spot::Before);
    core::iter::once(Spot::Outlet)
        .chain(joints)
        .chain(hood.then_some(Spot::Hood))
        .collect()
}

#[component]
fn SpotField(
    id: &'static str,
    label: SiteLabel,
    chosen: RwSignal<Spot>,
    hood: bool,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let options = move || {
        spots(store, hood)
            .into_iter()
            .map(|spot| {
                let (value, said) = (spot.to_string(), say_spot(store, &spot));
                let is_chosen = move || chosen.with(|chosen| *chosen == spot);
                view! { <option value=value prop:selected=is_chosen>{said}</option> }
            })
            .collect_view()
    };
    let changed = move |event| {
        if let Ok(spot) = Spot::try_from(event_target_value(&event)) {
            chosen.set(spot);
        }
    };
    view! {
        <div class="field">
            <label for=id>{site_text(label)}</label>
            <select id=id on:change=changed>{options}</select>
        </div>
    }
}

#[component]
fn OpenJointField(form: Form) -> impl IntoView {
    let store = expect_context::<Store>();
    let is_open = move |spot: Option<&Spot>| {
        form.conditions
            .with(|conditions| conditions.open_joint.as_ref() == spot)
    };
    let options = move || {
        spots(store, false)
            .into_iter()
            .map(|spot| {
                let (value, said) = (spot.to_string(), say_spot(store, &spot));
                view! {
                    <option value=value prop:selected=move || is_open(Some(&spot))>{said}</option>
                }
            })
            .collect_view()
    };
    let changed = move |event| {
        let joint = Spot::try_from(event_target_value(&event)).ok();
        form.conditions
            .update(|conditions| conditions.open_joint = joint);
    };
    view! {
        <div class="field">
            <label for="site-joint">{site_text(SiteLabel::OpenJoint)}</label>
            <select id="site-joint" on:change=changed>
                <option value="" prop:selected=move || is_open(None)>
                    {site_text(SiteLabel::NoJointOpen)}
                </option>
                {options}
            </select>
        </div>
    }
}

const PATTERNS: [(&str, Pattern); 3] = [
    ("centre-straight", Pattern::CentreLineAfterStraight),
    ("centre", Pattern::CentreLine),
    ("traverse", Pattern::Traverse),
];

#[component]
fn PatternField(form: Form) -> impl IntoView {
    let store = expect_context::<Store>();
    let options = PATTERNS.map(|(value, pattern)| {
        view! {
            <option value=value prop:selected=move || form.pattern.get() == pattern>
                {store.say(Message::Site(SiteMessage::Pattern(pattern)))}
            </option>
        }
    });
    let changed = move |event| {
        let value = event_target_value(&event);
        if let Some((_, pattern)) = PATTERNS.into_iter().find(|(key, _)| *key == value) {
            form.pattern.set(pattern);
        }
    };
    view! {
        <div class="field">
            <label for="site-pattern">{site_text(SiteLabel::Pattern)}</label>
            <select id="site-pattern" on:change=changed>{options}</select>
        </div>
    }
}

#[component]
fn Tick(label: SiteLabel, is_so: Signal<bool>, set: Callback<bool>) -> impl IntoView {
    view! {
        <label class="check">
            <input type="checkbox" prop:checked=is_so on:change=move |_| set.run(!is_so.get_untracked())/>
            <span>{site_text(label)}</span>
        </label>
    }
}

/// A condition by its field; `unless` where the tick says that it does not hold.
#[component]
fn Condition(
    form: Form,
    label: SiteLabel,
    of: fn(&mut Conditions) -> &mut bool,
    #[prop(optional)] unless: bool,
) -> impl IntoView {
    let is_so = Signal::derive(move || {
        let mut conditions = form.conditions.get();
        *of(&mut conditions) != unless
    });
    let set = Callback::new(move |is_so: bool| {
        form.conditions
            .update(|conditions| *of(conditions) = is_so != unless);
    });
    view! { <Tick label is_so set/> }
}

/// What the instrument may be off by, in the units of what it reads.
#[component]
fn ErrorField(
    id: &'static str,
    label: Label,
    form: Form,
    of: fn(Form) -> RwSignal<f64>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let shown = Signal::derive(move || {
        let units = store.units.get();
        form.quantity.get().error_shown(units, of(form).get())
    });
    let set = Callback::new(move |figure: f64| {
        let units = store.units.get_untracked();
        let error = form
            .quantity
            .get_untracked()
            .error_from(units, figure.abs());
        of(form).set(error);
    });
    view! { <NumberField id label shown set/> }
}
