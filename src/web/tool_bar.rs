//! The tools, and what is done to what is selected.

use super::focus::focus_drawing;
use super::picture;
use super::store::{Store, label_text};
use crate::editor::{Action, Tool};
use crate::plan::{Axis, ObstacleKind, OpeningKind, ZoneKind};
use crate::report::words::Label;
use crate::units::Length;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{FocusEvent, HtmlElement, HtmlSelectElement};

/// Joists and studs are mostly set so: common practice, no source.
pub(super) const COMMON_SPACING: Length = Length::from_inches(16.0);

const PLAIN: [(Label, Tool); 7] = [
    (Label::ToolPick, Tool::Pick),
    (Label::ToolRun, Tool::Run),
    (Label::ToolOutsideWall, Tool::Wall { outside: true }),
    (Label::ToolInsideWall, Tool::Wall { outside: false }),
    (Label::ToolWindow, Tool::Opening(OpeningKind::Window)),
    (Label::ToolDoor, Tool::Opening(OpeningKind::Door)),
    (Label::ToolAirIntake, Tool::Opening(OpeningKind::AirIntake)),
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
    let store = expect_context::<Store>();
    let plain = PLAIN
        .map(|(label, tool)| {
            view! {
                <button
                    type="button"
                    aria-pressed=move || (store.tool.get() == tool).to_string()
                    on:click=move |_| store.act(Action::TakeTool(tool))
                >
                    {label_text(label)}
                </button>
            }
        })
        .collect_view();
    let obstacles = OBSTACLES.map(|(value, label, kind)| (value, label, Tool::Obstacle(kind)));
    let zones = ZONES.map(|(value, label, kind)| (value, label, Tool::Zone(kind)));
    let draws = move || store.tool.get() != Tool::Pick;
    let has_picture = move || store.plan.with(|plan| plan.picture.is_some());
    view! {
        <div class="tool-bar" role="toolbar" aria-label=label_text(Label::Tools) on:focusin=|event| bring_into_sight(&event)>
            {plain}
            <ToolChoice id="tool-obstacle" label=Label::ToolObstacle choices=obstacles.to_vec()/>
            <ToolChoice id="tool-zone" label=Label::ToolZone choices=zones.to_vec()/>
            <picture::PictureButton/>
            <Show when=has_picture>
                <button
                    type="button"
                    aria-pressed=move || (store.tool.get() == Tool::Scale).to_string()
                    on:click=move |_| store.act(Action::TakeTool(Tool::Scale))
                >
                    {label_text(Label::PictureScale)}
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
                    {label_text(Label::DrawDone)}
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

/// A tool that comes in several kinds: choosing one takes it in hand.
#[component]
fn ToolChoice(
    id: &'static str,
    label: Label,
    choices: Vec<(&'static str, Label, Tool)>,
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
        .map(|(value, label, _)| view! { <option value=*value>{label_text(*label)}</option> })
        .collect_view();
    let changed = move |event: web_sys::Event| {
        let list = event
            .target()
            .and_then(|list| list.dyn_into::<HtmlSelectElement>().ok());
        let value = list.map(|list| list.value());
        let chosen = choices
            .iter()
            .find(|(name, ..)| Some(*name) == value.as_deref());
        store.act(Action::TakeTool(
            chosen.map_or(Tool::Pick, |(.., tool)| *tool),
        ));
    };
    let label_of_none = label_text(label);
    view! {
        <select
            id=id
            aria-label=label_text(label)
            class:in-hand={
                let in_hand = in_hand.clone();
                move || !in_hand().is_empty()
            }
            prop:value=in_hand
            on:change=changed
        >
            <option value="">{label_of_none}</option>
            {options}
        </select>
    }
}
