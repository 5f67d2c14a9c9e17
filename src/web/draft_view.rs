//! What lies over the plan while it is drawn on: the draft, the lines that it has settled on, the
//! handles of what is selected, the keys' cursor, and the scale bar.

use super::mark_view::{GroundMark, ScreenMark};
use super::store::Store;
use crate::editor::{Tool, cursor, handles};
use crate::report::words::Message;
use crate::scene::{Mark, Role, Shape, Text, draft_marks};
use crate::units::{Length, UnitSystem};
use leptos::prelude::*;

/// The marks of the draft and the handles: those that grow with the zoom, or those that keep their
/// size.
#[component]
pub(super) fn DraftMarks(ground: bool) -> impl IntoView {
    let store = expect_context::<Store>();
    let marks = Memo::new(move |_| {
        store.with_state(|state| {
            let draft = state.draft();
            let mut marks = draft_marks(draft.as_ref(), &state.guides);
            if let (Some(thing), 1, Tool::Pick) =
                (state.things.first(), state.things.len(), state.tool)
            {
                let held = handles(&state.plan, thing);
                marks.extend(held.into_iter().enumerate().map(|(index, (_, at))| Mark {
                    id: format!("handle:{index}"),
                    role: Role::Handle,
                    shape: Shape::Dot(at),
                    width: Length::ZERO,
                    weight: 0.0,
                    element: None,
                    thing: None,
                }));
            }
            marks.retain(|mark| ground != matches!(mark.shape, Shape::Dot(_) | Shape::Text { .. }));
            marks
        })
    });
    let keys = Memo::new(move |_| {
        marks.with(|marks| marks.iter().map(|mark| mark.id.clone()).collect::<Vec<_>>())
    });
    view! {
        <For
            each=move || keys.get()
            key=Clone::clone
            children=move |id| {
                let mark = Memo::new(move |_| {
                    marks.with(|marks| marks.iter().find(|mark| mark.id == id).cloned())
                });
                if ground {
                    view! { <GroundMark mark/> }.into_any()
                } else {
                    view! { <ScreenMark mark/> }.into_any()
                }
            }
        />
    }
}

/// A cross where the keys would set the next point.
#[component]
pub(super) fn Cursor() -> impl IntoView {
    let store = expect_context::<Store>();
    let place = move || {
        store
            .with_state(|state| (state.tool != Tool::Pick).then(|| state.view.place(cursor(state))))
    };
    move || {
        place().map(|(x, y)| {
            view! {
                <path
                    class="keys-cursor"
                    transform=format!("translate({x:.1} {y:.1})")
                    d="M-12 0H-3M3 0H12M0 -12V-3M0 3V12"
                />
            }
        })
    }
}

/// A bar of a round length, to read the drawing by.
#[component]
pub(super) fn ScaleBar() -> impl IntoView {
    /// The longest bar, px, and its place from the drawing's lower left corner.
    const LONGEST: f64 = 140.0;
    const ASIDE: f64 = 16.0;
    let store = expect_context::<Store>();
    let bar = move || {
        let units = store.units.get();
        let (scale, height) =
            store.with_state(|state| (state.view.metres_per_pixel, state.view.size.1));
        let unit = match units {
            UnitSystem::UsCustomary => Length::from_feet(1.0),
            UnitSystem::Si => Length::from_metres(1.0),
        };
        let fits = |length: &Length| length.metres() / scale <= LONGEST;
        let rounds = [
            200.0, 100.0, 50.0, 20.0, 10.0, 5.0, 2.0, 1.0, 0.5, 0.25, 0.1,
        ];
        let length = rounds.into_iter().map(|round| unit * round).find(fits);
        let length = length.unwrap_or(unit * 0.05);
        let right = ASIDE + length.metres() / scale;
        let foot = height - ASIDE;
        let path = format!("M{ASIDE} {0}V{foot}H{right:.1}V{0}", foot - 6.0);
        (
            path,
            store.say(Message::Drawing(&Text::Size(length))),
            foot - 8.0,
        )
    };
    view! {
        <g class="scale-bar">
            <path d=move || bar().0/>
            <text x=ASIDE + 5.0 y=move || bar().2>{move || bar().1}</text>
        </g>
    }
}
