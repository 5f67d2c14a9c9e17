//! The run that is not changed, drawn beside the open one: at the same scale, moved and zoomed with it,
//! and its elements lit together with their fellows.

use super::elevation_panel::run_in_order;
use super::mark_list::{MarkList, Zoom};
use super::mark_view::Layer;
use super::side::Side;
use super::side_words::side_text;
use super::store::Store;
use crate::editor::View;
use crate::plan::{Bounds, Plan, Point};
use crate::report::words::SideLabel;
use leptos::prelude::*;

/// The name over one of the two drawings: which run it is, its job, and what a press does.
#[component]
pub(super) fn SideCaption(
    /// Whether it stands over the open run.
    of_open: bool,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let which = move || {
        side_text(if side.open_is_first.get() == of_open {
            SideLabel::First
        } else {
            SideLabel::Second
        })
    };
    let title = move || {
        if of_open {
            return store.plan.with(|plan| plan.title.clone());
        }
        side.other.with(|other| {
            let other = other.as_ref();
            other
                .map(|other| other.plan.title.clone())
                .unwrap_or_default()
        })
    };
    let mark = if of_open {
        view! { <span class="fine">{side_text(SideLabel::ChangedHere)}</span> }.into_any()
    } else {
        view! {
            <button type="button" on:click=move |_| side.exchange(store)>
                {side_text(SideLabel::ChangeThis)}
            </button>
        }
        .into_any()
    };
    view! {
        <Show when=move || side.is_open.get()>
            <p class="side-which"><strong>{which}</strong> " " {title}</p>
        </Show>
        {mark}
    }
}

#[component]
pub(super) fn SideFirst() -> impl IntoView {
    let side = expect_context::<Side>();
    view! {
        <Show when=move || side.is_open.get()>
            <Other/>
        </Show>
    }
}

#[component]
fn Other() -> impl IntoView {
    let store = expect_context::<Store>();
    let side = expect_context::<Side>();
    let aside = Memo::new(move |_| {
        side.other.with(|other| {
            let other = other.as_ref()?;
            Some(store.plan.with(|open| from_one_to_other(open, &other.plan)))
        })
    });
    let view = Signal::derive(move || {
        let aside = aside.get().unwrap_or_default();
        let view = store.view.get();
        let origin = Point::new(view.origin.x + aside.x, view.origin.y + aside.y);
        View { origin, ..view }
    });
    let transform = move || {
        let view = view.get();
        let scale = 1.0 / view.metres_per_pixel;
        let (x, y) = view.place(Point::new(0.0, 0.0));
        format!("translate({x} {y}) scale({scale})")
    };
    let list = |zoom: Zoom| {
        MarkList::following(store, zoom, move |take| {
            side.other.with(|other| {
                let marks = other.iter().flat_map(|other| other.marks());
                marks.for_each(&mut *take);
            });
        })
    };
    let (ground, screen) = (list(Zoom::Grows), list(Zoom::Keeps(view)));
    let in_words = move || {
        side.other.with(|other| {
            let other = other.as_ref();
            other
                .map(|other| run_in_order(store, other))
                .unwrap_or_default()
        })
    };
    let named = move || {
        side_text(if side.open_is_first.get() {
            SideLabel::Second
        } else {
            SideLabel::First
        })
    };
    view! {
        <section class="side-other" aria-label=named>
            <div class="side-caption"><SideCaption of_open=false/></div>
            <svg class="side-canvas" role="img" aria-label=named aria-describedby="side-run">
                <g transform=transform>
                    <Layer list=ground/>
                </g>
                <g>
                    <Layer list=screen/>
                </g>
            </svg>
            <p class="visually-hidden" id="side-run">{in_words}</p>
        </section>
    }
}

/// How far the other plan's middle lies from the open one's; nothing where both are of one room.
fn from_one_to_other(open: &Plan, other: &Plan) -> Point {
    if !open.walls.is_empty() && open.walls == other.walls {
        return Point::default();
    }
    let middle = |plan: &Plan| {
        let Bounds { least, greatest } = Bounds::of(plan);
        least.halfway(greatest)
    };
    let (from, to) = (middle(open), middle(other));
    Point::new(to.x - from.x, to.y - from.y)
}
