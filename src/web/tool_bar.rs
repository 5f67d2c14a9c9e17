//! The tools, and what is done to what is selected.

use super::focus::focus_drawing;
use super::picture;
use super::store::Store;
use crate::editor::{Action, Tool};
use crate::plan::{Axis, ObstacleKind, OpeningKind, ZoneKind};
use crate::report::words::{Label, fixed_text};
use crate::units::Length;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{FocusEvent, HtmlElement, HtmlSelectElement};

/// Joists and studs are mostly set so: common practice, no source.
pub(super) const COMMON_SPACING: Length = Length::from_inches(16.0);

const PLAIN: [(&str, Tool); 7] = [
    (fixed!(ToolPick), Tool::Pick),
    (fixed!(ToolRun), Tool::Run),
    (fixed!(ToolOutsideWall), Tool::Wall { outside: true }),
    (fixed!(ToolInsideWall), Tool::Wall { outside: false }),
    (fixed!(ToolWindow), Tool::Opening(OpeningKind::Window)),
    (fixed!(ToolDoor), Tool::Opening(OpeningKind::Door)),
    (fixed!(ToolAirIntake), Tool::Opening(OpeningKind::AirIntake)),
];

pub(super) const OBSTACLES: [(&str, Label, ObstacleKind); 6] = [
    (
        "closed_area",
        Label::ObstacleClosedArea,
        ObstacleKind::ClosedArea,
    ),
    ("cabinet", Label::ObstacleCabinet, ObstacleKind::Cabinet),
    ("beam", Label::ObstacleBeam, ObstacleKind::Beam),
    ("stack", Label::ObstacleStack, ObstacleKind::Stack),
    (
        "framing_along_x",
        Label::ObstacleFramingAlongX,
        ObstacleKind::Framing {
            members: Axis::AlongX,
            spacing: COMMON_SPACING,
        },
    ),
    (
        "framing_along_y",
        Label::ObstacleFramingAlongY,
        ObstacleKind::Framing {
            members: Axis::AlongY,
            spacing: COMMON_SPACING,
        },
    ),
];

pub(super) const ZONES: [(&str, Label, ZoneKind); 5] = [
    ("heated", Label::ZoneHeated, ZoneKind::Heated),
    ("garage", Label::ZoneGarage, ZoneKind::Garage),
    ("attic", Label::ZoneAttic, ZoneKind::Attic),
    ("crawl_space", Label::ZoneCrawlSpace, ZoneKind::CrawlSpace),
    ("outdoors", Label::ZoneOutdoors, ZoneKind::Outdoors),
];

#[component]
pub(super) fn ToolBar() -> impl IntoView {
    const OBSTACLE_NAMES: [&str; OBSTACLES.len()] = names(&OBSTACLES);
    const ZONE_NAMES: [&str; ZONES.len()] = names(&ZONES);
    let store = expect_context::<Store>();
    let plain = PLAIN
        .map(|(name, tool)| {
            view! {
                <button
                    type="button"
                    aria-pressed=move || (store.tool.get() == tool).to_string()
                    on:click=move |_| store.act(Action::TakeTool(tool))
                >
                    {name}
                </button>
            }
        })
        .collect_view();
    let obstacles = choices(&OBSTACLES, &OBSTACLE_NAMES, Tool::Obstacle);
    let zones = choices(&ZONES, &ZONE_NAMES, Tool::Zone);
    let draws = move || store.tool.get() != Tool::Pick;
    let has_picture = move || store.plan.with(|plan| plan.picture.is_some());
    view! {
        <div class="tool-bar" role="toolbar" aria-label=fixed!(Tools) on:focusin=|event| bring_into_sight(&event)>
            {plain}
            <ToolChoice id="tool-obstacle" name=fixed!(ToolObstacle) choices=obstacles/>
            <ToolChoice id="tool-zone" name=fixed!(ToolZone) choices=zones/>
            <picture::PictureButton/>
            <Show when=has_picture>
                <button
                    type="button"
                    aria-pressed=move || (store.tool.get() == Tool::Scale).to_string()
                    on:click=move |_| store.act(Action::TakeTool(Tool::Scale))
                >
                    {fixed!(PictureScale)}
                </button>
            </Show>
            <Show when=draws>
                <button
                    type="button"
                    class="primary"
                    on:click=move |_| {
                        store.act(Action::FinishDrawing);
                        focus_drawing();
                    }
                >
                    {fixed!(DrawDone)}
                </button>
            </Show>
        </div>
    }
}

/// Moves the bar so that a tool that took the focus stands in it whole: the browser is content with
/// a corner of it.
fn bring_into_sight(event: &FocusEvent) {
    let bar = event
        .current_target()
        .and_then(|bar| bar.dyn_into::<HtmlElement>().ok());
    let tool = event
        .target()
        .and_then(|tool| tool.dyn_into::<HtmlElement>().ok());
    if let (Some(bar), Some(tool)) = (bar, tool) {
        let (left, right) = (tool.offset_left(), tool.offset_left() + tool.offset_width());
        let (from, to) = (bar.scroll_left(), bar.scroll_left() + bar.client_width());
        if left < from {
            bar.set_scroll_left(left);
        } else if right > to {
            bar.set_scroll_left(right - bar.client_width());
        }
    }
}

/// The names of a list's kinds, looked up where the program is compiled.
const fn names<Kind, const COUNT: usize>(
    list: &[(&str, Label, Kind); COUNT],
) -> [&'static str; COUNT] {
    let mut names = [""; COUNT];
    let mut index = 0;
    while index < COUNT {
        names[index] = fixed_text(list[index].1);
        index += 1;
    }
    names
}

fn choices<Kind: Copy>(
    list: &[(&'static str, Label, Kind)],
    names: &[&'static str],
    tool: fn(Kind) -> Tool,
) -> Vec<(&'static str, &'static str, Tool)> {
    let named = list.iter().zip(names);
    named
        .map(|((value, _, kind), name)| (*value, *name, tool(*kind)))
        .collect()
}

/// A tool that comes in several kinds: choosing one takes it in hand.
#[component]
fn ToolChoice(
    id: &'static str,
    name: &'static str,
    choices: Vec<(&'static str, &'static str, Tool)>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let in_hand = {
        let choices = choices.clone();
        move || {
            let tool = store.tool.get();
            choices
                .iter()
                .find(|(.., choice)| *choice == tool)
                .map_or("", |(value, ..)| value)
        }
    };
    let options = choices
        .iter()
        .map(|(value, name, _)| view! { <option value=*value>{*name}</option> })
        .collect_view();
    let changed = move |event: web_sys::Event| {
        let list = event
            .target()
            .and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let value = list.map(|list| list.value());
        let chosen = choices
            .iter()
            .find(|(choice, ..)| Some(*choice) == value.as_deref());
        store.act(Action::TakeTool(
            chosen.map_or(Tool::Pick, |(.., tool)| *tool),
        ));
    };
    view! {
        <select
            id=id
            aria-label=name
            class:in-hand={
                let in_hand = in_hand.clone();
                move || !in_hand().is_empty()
            }
            prop:value=in_hand
            on:change=changed
        >
            <option value="">{name}</option>
            {options}
        </select>
    }
}
