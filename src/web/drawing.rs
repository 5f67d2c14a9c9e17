//! The drawing: the plan's marks on an SVG canvas, under the hand.

use super::draft_view::Cursor;
use super::keys;
use super::later::{InTurn, Later};
use super::mark_list::{MarkList, Zoom};
use super::mark_view::Layer;
use super::pointer::{Pointer, PressedLength};
use super::rest::Part;
use super::scale_bar_view::ScaleBar;
use super::store::Store;
use super::tool_bar::ToolBar;
use super::tool_hint::ToolHint;
use crate::editor::Action;
use crate::scene::{Role, cividis};
use leptos::prelude::*;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{PointerEvent, WheelEvent};

/// The scale bar's place, px from the left and from the foot.
const BAR_ASIDE: f64 = 16.0;

#[component]
pub(super) fn Drawing() -> impl IntoView {
    let store = expect_context::<Store>();
    let canvas = NodeRef::<leptos::svg::Svg>::new();
    let pressed = PressedLength(StoredValue::new(None));
    provide_context(pressed);
    let pointer = Rc::new(Pointer::new(store, pressed));
    keep_size(store, canvas);
    let view = store.view;
    let foot = Signal::derive(move || (BAR_ASIDE, view.get().size.1 - BAR_ASIDE));
    let transform = move || {
        let view = view.get();
        let scale = 1.0 / view.metres_per_pixel;
        let (x, y) = view.place(crate::plan::Point::new(0.0, 0.0));
        format!("translate({x} {y}) scale({scale})")
    };
    let (down, moved, up, lost) = (pointer.clone(), pointer.clone(), pointer.clone(), pointer);
    view! {
        <section class="drawing" aria-label=fixed!(Drawing)>
            <InTurn turn=4><ToolBar/></InTurn>
            <div class="canvas-place">
            <svg
                node_ref=canvas
                class="canvas"
                tabindex="0"
                role="application"
                aria-label=fixed!(Drawing)
                aria-describedby="drawing-keys"
                on:pointerdown=move |event: PointerEvent| down.down(&event)
                on:pointermove=move |event: PointerEvent| moved.moved(&event)
                on:pointerup=move |event: PointerEvent| up.up(&event)
                on:pointercancel=move |event: PointerEvent| lost.lost(&event)
                on:wheel=move |event: WheelEvent| super::pointer::wheel(store, &event)
                on:keydown=move |event| keys::pressed(store, &event)
            >
                <g transform=transform>
                    <Marks ground=true/>
                    <Later turn=10 part=Part::SuspectRings/>
                </g>
                <g>
                    <InTurn turn=5><Marks ground=false/></InTurn>
                    <Later turn=10 part=Part::SuspectLetters/>
                </g>
                <g transform=transform>
                    <Later turn=10 part=Part::GhostMarks/>
                </g>
                <g transform=transform>
                    <Later turn=6 part=Part::Draft/>
                </g>
                <g>
                    <Later turn=6 part=Part::DraftOver/>
                    <Cursor/>
                    <ScaleBar view=view.into() at=foot/>
                </g>
            </svg>
            <Later turn=6 part=Part::TypedLength/>
            <div class="canvas-tools">
                <button type="button" aria-label=fixed!(ZoomIn) on:click=move |_| store.act(keys::zoom(store, 1.25))>
                    "+"
                </button>
                <button type="button" aria-label=fixed!(ZoomOut) on:click=move |_| store.act(keys::zoom(store, 0.8))>
                    "\u{2212}"
                </button>
                <button type="button" on:click=move |_| store.act(Action::ShowAll)>
                    {fixed!(ZoomFit)}
                </button>
            </div>
            </div>
            <ToolHint/>
            <Later turn=6 part=Part::NextLength/>
            <Legend/>
            <p class="fine drawing-keys" id="drawing-keys">{fixed!(DrawingKeys)}</p>
        </section>
    }
}

/// The marks of one layer: those that grow with the zoom, or those that keep their size.
#[component]
fn Marks(ground: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let list = MarkList::following(store, Zoom::on_drawing(store, ground), move |take| {
        store
            .results
            .with(|results| results.marks().for_each(&mut *take));
    });
    view! { <Layer list/> }
}

/// Tells the editor the canvas's size, now and whenever it changes.
fn keep_size(store: Store, canvas: NodeRef<leptos::svg::Svg>) {
    Effect::new(move |_| {
        let Some(canvas) = canvas.get() else {
            return;
        };
        let element: web_sys::Element = canvas.unchecked_into();
        let measured = element.clone();
        let mut first = true;
        let resized = Closure::<dyn FnMut()>::new(move || {
            let size = measured.get_bounding_client_rect();
            // While the page is built out of sight it has none.
            if size.width() == 0.0 {
                return;
            }
            store.act(Action::Resize {
                width: size.width(),
                height: size.height(),
            });
            if core::mem::take(&mut first) {
                store.act(Action::ShowAll);
            }
        });
        if let Ok(observer) = web_sys::ResizeObserver::new(resized.as_ref().unchecked_ref()) {
            observer.observe(&element);
        }
        // The canvas lives as long as the page.
        resized.forget();
    });
}

/// The ramp from little to most, as the drawing and the ledger use it.
#[component]
fn Legend() -> impl IntoView {
    const STEPS: u32 = 10;
    let steps = (0..STEPS)
        .map(|step| {
            let weight = f64::from(step) / f64::from(STEPS - 1);
            let height = 3.0 + 9.0 * weight;
            view! {
                <rect
                    x=f64::from(step) * 12.0
                    y=7.0 - height / 2.0
                    width="12"
                    height=height
                    fill=cividis(weight).to_string()
                />
            }
        })
        .collect_view();
    view! {
        <div class="legend">
            <span>{fixed!(Legend)} ": " {fixed!(LegendLow)}</span>
            <svg width="120" height="14" viewBox="0 0 120 14" aria-hidden="true">{steps}</svg>
            <span>{fixed!(LegendHigh)}</span>
        </div>
    }
}

/// The class of a role, for the style sheet.
pub(super) fn role_class(role: &Role) -> &'static str {
    match role {
        Role::OutsideWall => "mark outside-wall",
        Role::InsideWall => "mark inside-wall",
        Role::Window => "mark window",
        Role::Door => "mark door",
        Role::Obstacle => "mark obstacle",
        Role::Dryer => "mark dryer",
        Role::Ghost => "mark ghost",
        Role::Casing => "mark casing",
        Role::Bore => "mark bore",
        Role::Core => "mark core",
        Role::Corrugation => "mark corrugation",
        Role::Flat => "mark flat",
        Role::Concealed => "mark concealed",
        Role::Wet => "mark wet",
        Role::Blockage => "mark blockage",
        Role::Leak => "mark leak",
        Role::WallBox => "mark wall-box",
        Role::AirIntake => "mark air-intake",
        Role::ObstacleElsewhere => "mark obstacle-elsewhere",
        Role::Framing => "mark framing",
        Role::Zone => "mark zone",
        Role::Picture => "mark picture",
        Role::Draft => "mark draft",
        Role::Guide => "mark guide",
        Role::Size => "mark room-size",
        Role::Handle => "mark handle",
        Role::Floor => "mark floor",
        Role::Dimension => "mark dimension",
        Role::Extension => "mark extension",
        Role::Label => "mark label",
        Role::Rank => "mark rank",
        Role::Suspect => "mark suspect",
        Role::SuspectLetter => "mark suspect-letter",
        Role::Corner(_) => "mark corner",
        Role::NewBend { .. } => "mark new-bend",
    }
}
