//! The elevation beside the plan: the unrolled run from the side, under the hand.

use super::elevation_keys;
use super::elevation_marks::{
    Drawn, FIRST_ROW, Handle, LegLength, ROWS, is_handle, is_leg_length, letters, rows,
    widths_beside,
};
use super::elevation_pointer::ElevationPointer;
use super::mark_list::{MarkList, Zoom};
use super::mark_view::{Layer, OneMark};
use super::results::{Results, Version};
use super::scale_bar_view::ScaleBar;
use super::store::{Store, label_text};
use crate::editor::{Gesture, Held, View};
use crate::plan::{Bounds, Point};
use crate::report::answer::tell_run;
use crate::report::words::{Label, Message};
use crate::scene::elevation;
use leptos::prelude::*;
use std::rc::Rc;
use std::sync::Arc;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{MouseEvent, PointerEvent};

/// Room above the elevation, px.
const ABOVE: f64 = 14.0;
/// The scale bar's place, px from the left and the top.
const BAR: (f64, f64) = (12.0, 18.0);

#[component]
pub(super) fn ElevationPanel() -> impl IntoView {
    let store = expect_context::<Store>();
    let canvas = NodeRef::<leptos::svg::Svg>::new();
    let dragging = Memo::new(move |_| {
        // What is held stays the same from press to release.
        store.is_dragging()
            && store.with_state_now(|state| state.gesture.as_ref().is_some_and(is_of_a_rise))
    });
    let drawn = Memo::new(move |_| {
        let draw = |results: &Results| {
            let working = results.assessment.working.as_ref();
            let ledger = working.map(|(_, ledger)| ledger);
            Version(Arc::new(Drawn::new(elevation(&results.plan, ledger))))
        };
        // Under the hand here it never waits.
        if dragging.get() {
            store.results.with(|results| draw(results))
        } else {
            store.steady.with(draw)
        }
    });
    let size = observed_size(canvas);
    // It shows the whole run, but holds still while a handle is in the hand.
    let view = Memo::new(move |before: Option<&View>| match before {
        Some(before) if dragging.get() => *before,
        _ => drawn.with(|drawn| {
            let beside = widths_beside(store, drawn, size.get());
            fitted(&drawn.elevation.bounds, size.get(), beside)
        }),
    });
    let view = Signal::from(view);
    let pointer = Rc::new(ElevationPointer::new(store, drawn, view));
    let (down, moved, up) = (pointer.clone(), pointer.clone(), pointer.clone());
    let (lost, clicked, touched) = (pointer.clone(), pointer.clone(), pointer);
    view! {
        <section class="panel elevation" aria-labelledby="elevation-title">
            <h2 id="elevation-title">{label_text(Label::Elevation)}</h2>
            <svg
                node_ref=canvas
                class="elevation-canvas"
                tabindex="0"
                role="application"
                aria-labelledby="elevation-title"
                aria-describedby="elevation-run elevation-keys"
                on:pointerdown=move |event: PointerEvent| down.down(&event)
                on:pointermove=move |event: PointerEvent| moved.moved(&event)
                on:pointerup=move |event: PointerEvent| up.up(&event)
                on:pointercancel=move |event: PointerEvent| lost.lost(&event)
                // Engines differ on `touch-action` inside a canvas: a finger on a handle must not scroll.
                on:touchstart=move |event| if touched.is_held() { event.prevent_default() }
                on:click=move |event: MouseEvent| clicked.clicked(&event)
                on:keydown=move |event| elevation_keys::pressed(store, &event)
            >
                <Marks drawn view/>
                <ScaleBar view at=Signal::stored(BAR)/>
            </svg>
            <p class="visually-hidden" id="elevation-run">{move || store.steady.with(|results| run_in_order(store, results))}</p>
            <p class="fine">{label_text(Label::ElevationHint)}</p>
            <p class="fine elevation-keys" id="elevation-keys">{label_text(Label::ElevationKeys)}</p>
        </section>
    }
}

fn is_of_a_rise(gesture: &Gesture) -> bool {
    matches!(gesture.held, Held::Rise(_))
}

/// The canvas's size, px, now and whenever it changes.
fn observed_size(canvas: NodeRef<leptos::svg::Svg>) -> RwSignal<(f64, f64)> {
    let size = RwSignal::new(View::default().size);
    Effect::new(move |_| {
        let Some(canvas) = canvas.get() else {
            return;
        };
        let element: web_sys::Element = canvas.unchecked_into();
        let measured = element.clone();
        let resized = Closure::<dyn FnMut()>::new(move || {
            let now = measured.get_bounding_client_rect();
            size.set((now.width(), now.height()));
        });
        if let Ok(observer) = web_sys::ResizeObserver::new(resized.as_ref().unchecked_ref()) {
            observer.observe(&element);
        }
        // The canvas lives as long as the page.
        resized.forget();
    });
    size
}

/// The window that shows all of `bounds` with room for its texts, standing on its foot.
#[allow(clippy::cast_precision_loss, reason = "a few rows")]
fn fitted(bounds: &Bounds, size: (f64, f64), [left, right]: [f64; 2]) -> View {
    /// The least room that is drawn in, px.
    const LEAST: f64 = 40.0;
    let mut view = View {
        size,
        ..View::default()
    };
    let below = FIRST_ROW + ROWS as f64 * letters(&view).0;
    let (width, height) = bounds.size();
    let across = (size.0 - left - right).max(LEAST);
    let down = (size.1 - ABOVE - below).max(LEAST);
    let scale = (width / across).max(height / down);
    view.metres_per_pixel = scale;
    view.origin = Point::new(
        bounds.least.x - left * scale - (across * scale - width) / 2.0,
        bounds.greatest.y + below * scale - size.1 * scale,
    );
    view
}

/// What an element is drawn by: what grows with the elevation, then the texts and handles.
#[component]
fn Marks(drawn: Memo<Version<Drawn>>, view: Signal<View>) -> impl IntoView {
    let store = expect_context::<Store>();
    let transform = move || {
        let view = view.get();
        let (x, y) = view.place(Point::new(0.0, 0.0));
        format!("translate({x} {y}) scale({})", 1.0 / view.metres_per_pixel)
    };
    let rows = Memo::new(move |_| drawn.with(|drawn| rows(store, drawn, &view.get())));
    let list = move |zoom: Zoom| {
        MarkList::following(store, zoom, move |take| {
            drawn.with(|drawn| drawn.elevation.marks.iter().for_each(&mut *take));
        })
    };
    let (ground, screen) = (list(Zoom::Grows), list(Zoom::Keeps(view)));
    view! {
        <g transform=transform><Layer list=ground/></g>
        <g>
            <For
                each=move || screen.keys.get()
                key=Clone::clone
                children=move |key| {
                    let mark = screen.waiting(&key)?;
                    Some(if is_handle(&mark) {
                        view! { <Handle mark=screen.followed(mark) view/> }.into_any()
                    } else if is_leg_length(&mark) {
                        view! { <LegLength mark=screen.followed(mark) view rows/> }.into_any()
                    } else {
                        view! { <OneMark list=screen mark/> }.into_any()
                    })
                }
            />
        </g>
    }
}

/// The run in words, for those who do not see it.
pub(super) fn run_in_order(store: Store, results: &Results) -> String {
    let tell = |message: Message<'_>| store.say(message);
    tell_run(&results.plan, &results.figures, tell)
}
