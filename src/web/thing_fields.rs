//! What can be typed and chosen about the selected things of the room.

use super::field::{ChoiceField, LengthField, NumberField, TextField};
use super::store::{Store, label_text};
use super::tool_bar::{COMMON_SPACING, OBSTACLES, ZONES};
use crate::editor::{Action, NewThing, Tool, Turn};
use crate::plan::{
    Dryer, Energy, Level, Obstacle, ObstacleKind, Opening, OpeningKind, OutletSide, Plan, Thing,
    ThingId, Wall, Zone,
};
use crate::report::words::{Label, Message};
use crate::units::{Length, UnitSystem};
use leptos::prelude::*;

const LEVELS: [(&str, Label, Level); 3] = [
    ("crawl_space", Label::LevelCrawlSpace, Level::CrawlSpace),
    ("room", Label::LevelRoom, Level::Room),
    (
        "ceiling_space",
        Label::LevelCeilingSpace,
        Level::CeilingSpace,
    ),
];

/// The selected things: what they are, their fields where it is one, and what is done to them.
#[component]
pub(super) fn ThingPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let one = Memo::new(move |_| {
        store.things.with(|things| {
            (things.len() == 1)
                .then(|| things.first().cloned())
                .flatten()
        })
    });
    // By the things alone: beside `one`, which follows them too, a change of their number only
    // would go unseen.
    let name = move || {
        store
            .things
            .with(|things| match (things.first(), things.len()) {
                (Some(id), 1) => store.plan.with(|plan| {
                    plan.thing(id)
                        .map_or_else(String::new, |thing| store.say(Message::Thing(&thing)))
                }),
                (_, count) => store.say(Message::ThingsSelected(count)),
            })
    };
    view! {
        <p class="selected-name">{name}</p>
        {move || one.get().map(|id| view! { <div class="fields">{fields(id)}</div> })}
        <Deeds/>
    }
}

/// What is done to all that is selected.
#[component]
fn Deeds() -> impl IntoView {
    let store = expect_context::<Store>();
    let deed = move |label: Label, action: fn() -> Action| {
        view! {
            <button type="button" on:click=move |_| store.act(action())>{label_text(label)}</button>
        }
    };
    on_cleanup(move || store.adds.set(false));
    view! {
        <div class="deeds">
            <button
                type="button"
                class="toggle"
                aria-pressed=move || store.adds.get().to_string()
                on:click=move |_| store.adds.update(|adds| *adds = !*adds)
            >
                {label_text(Label::SelectMore)}
            </button>
            {deed(Label::PlaceByTap, || Action::TakeTool(Tool::Place))}
            {deed(Label::ThingCopy, || Action::Copy)}
            {deed(Label::ThingMirror, || Action::Turn(Turn::Mirror))}
            {deed(Label::ThingTurn, || Action::Turn(Turn::Quarter))}
            {deed(Label::ThingRemove, || Action::Remove)}
        </div>
    }
}

fn fields(id: ThingId) -> AnyView {
    match id {
        ThingId::Wall(_) => view! { <WallFields id/> }.into_any(),
        ThingId::Opening(_) => view! { <OpeningFields id/> }.into_any(),
        ThingId::Obstacle(_) => view! { <ObstacleFields id/> }.into_any(),
        ThingId::Zone(_) => view! { <ZoneFields id/> }.into_any(),
        ThingId::Dryer => view! { <DryerFields/> }.into_any(),
        ThingId::Picture | ThingId::Run => ().into_any(),
    }
}

/// Reads a thing of the plan as `read` finds it, and puts it back changed.
struct Held<T: Send + Sync + 'static> {
    store: Store,
    thing: Memo<Option<T>>,
    put: fn(T) -> NewThing,
}

// By hand: a derived one would ask that the thing itself can be copied.
impl<T: Send + Sync + 'static> Clone for Held<T> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<T: Send + Sync + 'static> Copy for Held<T> {}

impl<T: Clone + PartialEq + Send + Sync + 'static> Held<T> {
    fn of(
        store: Store,
        read: impl Fn(&Plan) -> Option<T> + Send + Sync + 'static,
        put: fn(T) -> NewThing,
    ) -> Self {
        Self {
            store,
            thing: Memo::new(move |_| store.plan.with(|plan| read(plan))),
            put,
        }
    }

    fn set(self, change: impl FnOnce(&mut T)) {
        if let Some(mut thing) = self.thing.get_untracked() {
            change(&mut thing);
            self.store
                .act(Action::SetThing(Box::new((self.put)(thing))));
        }
    }

    fn is(self, asks: impl FnOnce(&T) -> bool) -> bool {
        self.thing.with(|thing| thing.as_ref().is_some_and(asks))
    }

    /// A length of it as it is shown.
    fn length(self, read: fn(&T) -> Length) -> Signal<String> {
        let store = self.store;
        Signal::derive(move || {
            self.thing.with(|thing| {
                let length = thing.as_ref().map_or(Length::ZERO, read);
                store.units.get().length(length).to_string()
            })
        })
    }

    fn take_length(self, write: fn(&mut T, Length)) -> Callback<Length> {
        Callback::new(move |length| self.set(|thing| write(thing, length)))
    }

    fn chosen<C: PartialEq + 'static>(self, read: fn(&T) -> C) -> Callback<C, bool> {
        Callback::new(move |choice| self.is(|thing| read(thing) == choice))
    }

    fn choose<C: 'static>(self, write: fn(&mut T, C)) -> Callback<C> {
        Callback::new(move |choice| self.set(|thing| write(thing, choice)))
    }
}

fn checkbox<T: Clone + PartialEq + Send + Sync + 'static>(
    held: &Held<T>,
    label: Label,
    read: fn(&T) -> bool,
    write: fn(&mut T, bool),
) -> impl IntoView + use<T> {
    let held = *held;
    view! {
        <label class="check">
            <input
                type="checkbox"
                prop:checked=move || held.is(read)
                on:change=move |event| {
                    let checked = event_target_checked(&event);
                    held.set(|thing| write(thing, checked));
                }
            />
            <span>{label_text(label)}</span>
        </label>
    }
}

#[component]
fn WallFields(id: ThingId) -> impl IntoView {
    let store = expect_context::<Store>();
    let read = move |plan: &Plan| match plan.thing(&id) {
        Some(Thing::Wall(wall)) => Some(wall.clone()),
        _ => None,
    };
    let held = Held::of(store, read, NewThing::Wall);
    let length = held.length(|wall: &Wall| wall.from().distance(wall.to()));
    // Its start stays where it is.
    let set_length = held.take_length(|wall, length| {
        if let Some(along) = wall.from().heading_to(wall.to()) {
            let to = wall.from().toward(along, length);
            (wall.to_x_m, wall.to_y_m) = (to.x, to.y);
        }
    });
    let thickness = held.length(|wall: &Wall| wall.thickness);
    let set_thickness = held.take_length(|wall, thickness| wall.thickness = thickness);
    view! {
        <LengthField id="wall-length" label=Label::WallLength shown=length set=set_length/>
        <LengthField id="wall-thickness" label=Label::WallThickness shown=thickness set=set_thickness/>
        {checkbox(&held, Label::WallOutside, |wall| wall.outside, |wall, outside| wall.outside = outside)}
    }
}

#[component]
fn OpeningFields(id: ThingId) -> impl IntoView {
    const KINDS: [(&str, Label, OpeningKind); 3] = [
        ("window", Label::ToolWindow, OpeningKind::Window),
        ("door", Label::ToolDoor, OpeningKind::Door),
        ("air_intake", Label::ToolAirIntake, OpeningKind::AirIntake),
    ];
    let store = expect_context::<Store>();
    let read = move |plan: &Plan| match plan.thing(&id) {
        Some(Thing::Opening(opening, _)) => Some(opening.clone()),
        _ => None,
    };
    let held = Held::of(store, read, NewThing::Opening);
    let offset = held.length(|it: &Opening| it.offset);
    let set_offset = held.take_length(|it, offset| it.offset = offset);
    let width = held.length(|it: &Opening| it.width);
    let set_width = held.take_length(|it, width| it.width = width);
    let (is_chosen, set) = (
        held.chosen(|it| it.kind),
        held.choose(|it, kind| it.kind = kind),
    );
    view! {
        <ChoiceField id="opening-kind" label=Label::OpeningKind choices=KINDS.to_vec() is_chosen set/>
        <LengthField id="opening-offset" label=Label::OpeningOffset shown=offset set=set_offset/>
        <LengthField id="opening-width" label=Label::OpeningWidth shown=width set=set_width/>
    }
}

#[component]
fn ObstacleFields(id: ThingId) -> impl IntoView {
    let store = expect_context::<Store>();
    let read = move |plan: &Plan| match plan.thing(&id) {
        Some(Thing::Obstacle(obstacle)) => Some(obstacle.clone()),
        _ => None,
    };
    let held = Held::of(store, read, NewThing::Obstacle);
    let name = Signal::derive(move || {
        held.thing
            .with(|it| it.as_ref().map_or_else(String::new, |it| it.name.clone()))
    });
    let set_name = Callback::new(move |name: String| held.set(|it| it.name = name));
    let is_chosen = Callback::new(move |kind: ObstacleKind| {
        held.is(|it| match (it.kind, kind) {
            (ObstacleKind::Framing { members: own, .. }, ObstacleKind::Framing { members, .. }) => {
                own == members
            }
            (own, kind) => own == kind,
        })
    });
    // Framing that is turned keeps its spacing.
    let set = held.choose(|it: &mut Obstacle, kind| {
        it.kind = match (it.kind, kind) {
            (ObstacleKind::Framing { spacing, .. }, ObstacleKind::Framing { members, .. }) => {
                ObstacleKind::Framing { members, spacing }
            }
            (_, kind) => kind,
        };
    });
    let is_framing =
        Memo::new(move |_| held.is(|it| matches!(it.kind, ObstacleKind::Framing { .. })));
    let spacing = held.length(|it: &Obstacle| match it.kind {
        ObstacleKind::Framing { spacing, .. } => spacing,
        _ => COMMON_SPACING,
    });
    let set_spacing = held.take_length(|it, new| {
        if let ObstacleKind::Framing { spacing, .. } = &mut it.kind {
            *spacing = new;
        }
    });
    let width = held.length(|it: &Obstacle| it.width);
    let set_width = held.take_length(|it, width| it.width = width);
    let depth = held.length(|it: &Obstacle| it.depth);
    let set_depth = held.take_length(|it, depth| it.depth = depth);
    let on_level = held.chosen(|it| it.level);
    let set_level = held.choose(|it, level| it.level = level);
    view! {
        <ChoiceField id="obstacle-kind" label=Label::ObstacleKind choices=OBSTACLES.to_vec() is_chosen set/>
        <TextField id="obstacle-name" label=Label::ThingName shown=name set=set_name/>
        <ChoiceField id="obstacle-level" label=Label::Level choices=LEVELS.to_vec() is_chosen=on_level set=set_level/>
        <LengthField id="obstacle-width" label=Label::ThingWidth shown=width set=set_width/>
        <LengthField id="obstacle-depth" label=Label::ThingDepth shown=depth set=set_depth/>
        <Show when=move || is_framing.get()>
            <LengthField id="framing-spacing" label=Label::FramingSpacing shown=spacing set=set_spacing/>
        </Show>
    }
}

#[component]
fn ZoneFields(id: ThingId) -> impl IntoView {
    let store = expect_context::<Store>();
    let read = move |plan: &Plan| match plan.thing(&id) {
        Some(Thing::Zone(zone)) => Some(zone.clone()),
        _ => None,
    };
    let held = Held::of(store, read, NewThing::Zone);
    let (is_chosen, set) = (
        held.chosen(|it| it.kind),
        held.choose(|it, kind| it.kind = kind),
    );
    let on_level = held.chosen(|it| it.level);
    let set_level = held.choose(|it, level| it.level = level);
    let width = held.length(|it: &Zone| it.width);
    let set_width = held.take_length(|it, width| it.width = width);
    let depth = held.length(|it: &Zone| it.depth);
    let set_depth = held.take_length(|it, depth| it.depth = depth);
    let degrees = Signal::derive(move || {
        held.thing.with(|it| {
            it.as_ref().map_or_else(String::new, |it| {
                store.units.get().temperature(it.temperature).figure
            })
        })
    });
    let set_degrees = Callback::new(move |degrees: f64| {
        let temperature = store.units.get_untracked().temperature_from(degrees);
        held.set(|it| it.temperature = temperature);
    });
    view! {
        <ChoiceField id="zone-kind" label=Label::ObstacleKind choices=ZONES.to_vec() is_chosen set/>
        <NumberField id="zone-temperature" label=Label::ZoneTemperature unit=UnitSystem::temperature_unit shown=degrees set=set_degrees/>
        <ChoiceField id="zone-level" label=Label::Level choices=LEVELS.to_vec() is_chosen=on_level set=set_level/>
        <LengthField id="zone-width" label=Label::ThingWidth shown=width set=set_width/>
        <LengthField id="zone-depth" label=Label::ThingDepth shown=depth set=set_depth/>
    }
}

#[component]
fn DryerFields() -> impl IntoView {
    const SIDES: [(&str, Label, OutletSide); 3] = [
        ("back", Label::OutletBack, OutletSide::Back),
        ("left", Label::OutletLeft, OutletSide::Left),
        ("right", Label::OutletRight, OutletSide::Right),
    ];
    const ENERGIES: [(&str, Label, Energy); 2] = [
        ("electric", Label::EnergyElectric, Energy::Electric),
        ("gas", Label::EnergyGas, Energy::Gas),
    ];
    let store = expect_context::<Store>();
    let held = Held::of(store, |plan| Some(plan.dryer), NewThing::Dryer);
    let width = held.length(|it: &Dryer| it.width);
    let set_width = held.take_length(|it, width| it.width = width);
    let depth = held.length(|it: &Dryer| it.depth);
    let set_depth = held.take_length(|it, depth| it.depth = depth);
    let height = held.length(|it: &Dryer| it.outlet_height);
    let set_height = held.take_length(|it, height| it.outlet_height = height);
    let turned = Signal::derive(move || {
        held.thing.with(|it| {
            it.as_ref()
                .map_or_else(String::new, |it| it.turned_deg.to_string())
        })
    });
    let set_turned = Callback::new(move |degrees: f64| held.set(|it| it.turned_deg = degrees));
    let on_side = held.chosen(|it| it.outlet_side);
    let set_side = held.choose(|it, side| it.outlet_side = side);
    let heats = held.chosen(|it| it.energy);
    let set_energy = held.choose(|it, energy| it.energy = energy);
    view! {
        <ChoiceField id="outlet-side" label=Label::OutletSide choices=SIDES.to_vec() is_chosen=on_side set=set_side/>
        <LengthField id="outlet-height" label=Label::OutletHeight shown=height set=set_height/>
        <NumberField id="dryer-turned" label=Label::DryerTurned shown=turned set=set_turned/>
        <ChoiceField id="dryer-energy" label=Label::Energy choices=ENERGIES.to_vec() is_chosen=heats set=set_energy/>
        <LengthField id="dryer-width" label=Label::ThingWidth shown=width set=set_width/>
        <LengthField id="dryer-depth" label=Label::ThingDepth shown=depth set=set_depth/>
        {checkbox(&held, Label::Stacked, |it| it.stacked, |it, stacked| it.stacked = stacked)}
    }
}
