//! The elevation's own marks that keep their size: lengths in rows under their line, and handles.

use super::mark_view::is_lit;
use super::results::Version;
use super::store::Store;
use crate::editor::View;
use crate::plan::{ElementId, Part};
use crate::report::words::Message;
use crate::scene::{
    Elevation, Mark, OUTLET_HEIGHT, Role, Shape, TERMINATION_HEIGHT, Text, label_rows,
};
use leptos::prelude::*;
use std::collections::BTreeMap;

/// The elevation of one version of the plan, with its marks to be found by their ids.
pub(super) struct Drawn {
    pub elevation: Elevation,
    places: BTreeMap<String, usize>,
}

impl Drawn {
    pub fn new(elevation: Elevation) -> Self {
        let ids = elevation.marks.iter().map(|mark| mark.id.clone());
        let places = ids.enumerate().map(|(place, id)| (id, place)).collect();
        Self { elevation, places }
    }

    pub fn mark(&self, id: &str) -> Option<&Mark> {
        self.elevation.marks.get(*self.places.get(id)?)
    }
}

/// How many rows of lengths there are under their line, and from the line to the first, px.
pub(super) const ROWS: usize = 3;
pub(super) const FIRST_ROW: f64 = 15.0;
/// From row to row, and the width of a letter, px: in small and, from this width of the elevation
/// on, in large.
const WIDE: f64 = 900.0;
const SMALL: (f64, f64) = (15.0, 6.4);
const LARGE: (f64, f64) = (19.0, 8.6);
/// Between two lengths in a row, px.
const GAP: f64 = 8.0;

/// From row to row, and the width of a letter, px.
pub(super) fn letters(view: &View) -> (f64, f64) {
    if view.size.0 < WIDE { SMALL } else { LARGE }
}

/// The widths that the heights of outlet and termination take up beside the elevation, px.
#[allow(clippy::cast_precision_loss, reason = "a few letters")]
pub(super) fn widths_beside(store: Store, drawn: &Drawn, size: (f64, f64)) -> [f64; 2] {
    /// From a text to the edge and to its line, px.
    const CLEAR: f64 = 26.0;
    let view = View {
        size,
        ..View::default()
    };
    let (_, letter) = letters(&view);
    [OUTLET_HEIGHT, TERMINATION_HEIGHT].map(|id| match drawn.mark(id).map(|mark| &mark.shape) {
        Some(Shape::Text { text, .. }) => {
            let letters = store.say(Message::Drawing(text)).chars().count();
            letters as f64 * letter + CLEAR
        }
        _ => CLEAR,
    })
}

/// The row of every leg's length, by the mark's id; none where all rows are taken.
#[allow(clippy::cast_precision_loss, reason = "a few letters")]
pub(super) fn rows(store: Store, drawn: &Version<Drawn>, view: &View) -> BTreeMap<String, usize> {
    let (_, letter) = letters(view);
    let lengths = drawn
        .elevation
        .marks
        .iter()
        .filter_map(|mark| match &mark.shape {
            Shape::Text { at, text, .. } if is_leg_length(mark) => {
                let letters = store.say(Message::Drawing(text)).chars().count();
                let width = letters as f64 * letter + GAP;
                Some((mark.id.clone(), (view.place(*at).0, width)))
            }
            _ => None,
        });
    let (ids, places): (Vec<_>, Vec<_>) = lengths.unzip();
    let rows = label_rows(&places, ROWS);
    let named = ids.into_iter().zip(rows);
    named.filter_map(|(id, row)| Some((id, row?))).collect()
}

/// Whether a mark is the length of a leg.
pub(super) fn is_leg_length(mark: &Mark) -> bool {
    matches!(
        mark.shape,
        Shape::Text {
            text: Text::LegLength(_),
            ..
        }
    )
}

/// The length of a leg, in a row under its line. One that finds no room shows when it is lit.
#[component]
pub(super) fn LegLength(
    mark: RwSignal<Mark>,
    view: Signal<View>,
    rows: Memo<BTreeMap<String, usize>>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let first = mark.get_untracked();
    let id = first.id.clone();
    let row = Memo::new(move |_| rows.with(|rows| rows.get(&id).copied()));
    let element = first.element.clone();
    let lit = Memo::new(move |_| is_lit(store, element.as_ref()));
    let shape = move || mark.with(|mark| mark.shape.clone());
    let place = move || match shape() {
        Shape::Text { at, .. } => {
            let view = view.get();
            let (x, y) = view.place(at);
            #[allow(clippy::cast_precision_loss, reason = "a few rows")]
            let row = row.get().unwrap_or(0) as f64;
            let down = FIRST_ROW + row * letters(&view).0;
            format!("translate({x:.2} {:.2})", y + down)
        }
        _ => String::new(),
    };
    let text = move || match shape() {
        Shape::Text { text, .. } => store.say(Message::Drawing(&text)),
        _ => String::new(),
    };
    view! {
        <g
            class="mark label"
            class:lit=lit
            class:quiet=move || row.get().is_none() && !lit.get()
            data-mark=first.id
            transform=place
        >
            <text y="4" text-anchor="middle">{text}</text>
        </g>
    }
    .into_any()
}

/// A corner's handle, with the room about it that a finger needs. It is lit with every element of
/// its corner but the leg.
#[component]
pub(super) fn Handle(mark: RwSignal<Mark>, view: Signal<View>) -> impl IntoView {
    let store = expect_context::<Store>();
    let first = mark.get_untracked();
    let node = first.element.map(|element| element.node);
    let is_of_corner = move |element: &Option<ElementId>| {
        let element = element.as_ref().filter(|id| id.part != Part::Leg);
        element.is_some_and(|id| Some(&id.node) == node.as_ref())
    };
    let lit = Memo::new(move |_| {
        store.selection.with(&is_of_corner) || store.hovered.with(&is_of_corner)
    });
    let place = move || {
        mark.with(|mark| match &mark.shape {
            Shape::Dot(at) => {
                let (x, y) = view.get().place(*at);
                format!("translate({x:.2} {y:.2})")
            }
            _ => String::new(),
        })
    };
    view! {
        <g class="mark corner" class:lit=lit data-mark=first.id transform=place>
            <circle class="finger" r="22"/>
            <circle class="grip" r="7"/>
            <path d="M-2.5 -1.5L0 -4L2.5 -1.5M-2.5 1.5L0 4L2.5 1.5"/>
        </g>
    }
    .into_any()
}

/// Whether a mark is a handle.
pub(super) fn is_handle(mark: &Mark) -> bool {
    matches!(mark.role, Role::Corner(_))
}
