//! One mark as SVG. Only what changed is written.

use super::drawing::role_class;
use super::mark_list::MarkList;
use super::pointer::PressedLength;
use super::store::{Diameter, Store};
use crate::editor::View;
use crate::plan::{ElementId, Part, Point, ThingId};
use crate::scene::{Mark, Role, Shape, Step, Text, cividis};
use leptos::prelude::*;
use std::fmt::Write;

/// How far a text stands from the duct that it names, px, and from its centre line at least.
const ASIDE: f64 = 11.0;
const LEAST_ASIDE: f64 = 18.0;
/// A leg shorter than this on the screen, px, shows neither its length nor the place for a new bend
/// until it is selected.
const SHORT_LEG: f64 = 52.0;
/// A text that stands this much to one side of its line begins, or ends, at the line.
const BESIDE: f64 = 0.7;

/// Whether an element is selected or under the pointer.
pub(super) fn is_lit(store: Store, element: Option<&ElementId>) -> bool {
    element.is_some_and(|id| {
        store
            .selection
            .with(|selected| selected.as_ref() == Some(id))
            || store.hovered.with(|hovered| hovered.as_ref() == Some(id))
    })
}

/// Whether a thing about the run is selected.
fn is_thing_lit(store: Store, thing: Option<&ThingId>) -> bool {
    thing.is_some_and(|id| store.things.with(|things| things.contains(id)))
}

/// A list's marks on the drawing: those that grow with the zoom, or those that keep their size.
#[component]
pub(super) fn Layer(list: MarkList, ground: bool) -> impl IntoView {
    view! {
        <For
            each=move || list.keys.get()
            key=Clone::clone
            children=move |key| match list.mark(&key) {
                Some(mark) if ground => view! { <GroundMark mark/> }.into_any(),
                Some(mark) => view! { <ScreenMark mark/> }.into_any(),
                None => ().into_any(),
            }
        />
    }
}

/// A mark that grows with the zoom.
#[component]
pub(super) fn GroundMark(mark: RwSignal<Mark>) -> impl IntoView {
    let store = expect_context::<Store>();
    let first = mark.get_untracked();
    let element = first.element.clone();
    let hovered = element.clone();
    let thing = first.thing.clone();
    let lit =
        Memo::new(move |_| is_lit(store, element.as_ref()) || is_thing_lit(store, thing.as_ref()));
    let class = role_class(&first.role);
    let class = move || {
        if lit.get() {
            format!("{class} lit")
        } else {
            class.to_owned()
        }
    };
    let width = move || {
        mark.with(|mark| {
            let metres = mark.width.metres();
            (metres > 0.0).then(|| metres.to_string())
        })
    };
    let is_core = first.role == Role::Core;
    let colour = move || is_core.then(|| cividis(mark.with(|mark| mark.weight)).to_string());
    let enter = move |_| store.hovered.set(hovered.clone());
    let leave = move |_| store.hovered.set(None);
    let id = first.id.clone();
    match first.shape {
        Shape::Circle { .. } => {
            let circle = move || {
                mark.with(|mark| match &mark.shape {
                    Shape::Circle { centre, radius } => (centre.x, centre.y, radius.metres()),
                    _ => (0.0, 0.0, 0.0),
                })
            };
            view! {
                <circle
                    class=class
                    data-mark=id
                    cx=move || circle().0
                    cy=move || circle().1
                    r=move || circle().2
                    stroke-width=width
                    stroke=colour
                    on:pointerenter=enter
                    on:pointerleave=leave
                />
            }
            .into_any()
        }
        Shape::Picture { coding, data, .. } => {
            let place = move || {
                mark.with(|mark| match &mark.shape {
                    Shape::Picture {
                        corner,
                        width,
                        depth,
                        ..
                    } => (corner.x, corner.y, width.metres(), depth.metres()),
                    _ => (0.0, 0.0, 0.0, 0.0),
                })
            };
            view! {
                <image
                    class=class
                    data-mark=id
                    href=format!("data:{};base64,{data}", coding.media_type())
                    x=move || place().0
                    y=move || place().1
                    width=move || place().2
                    height=move || place().3
                    preserveAspectRatio="none"
                />
            }
            .into_any()
        }
        _ => view! {
            <path
                class=class
                data-mark=id
                d=move || mark.with(|mark| path(&mark.shape))
                stroke-width=width
                stroke=colour
                on:pointerenter=enter
                on:pointerleave=leave
            />
        }
        .into_any(),
    }
}

fn path(shape: &Shape) -> String {
    let Shape::Path(steps) = shape else {
        return String::new();
    };
    let mut data = String::new();
    for step in steps {
        // Writing into a string cannot fail.
        let _ = match step {
            Step::Move(Point { x, y }) => write!(data, "M{x} {y}"),
            Step::Line(Point { x, y }) => write!(data, "L{x} {y}"),
            Step::Arc {
                to: Point { x, y },
                radius,
                clockwise,
            } => {
                write!(
                    data,
                    "A{radius} {radius} 0 0 {} {x} {y}",
                    u8::from(*clockwise)
                )
            }
            Step::Close => write!(data, "Z"),
        };
    }
    data
}

/// The length of the leg that a mark belongs to, where it is one of those that a short leg hides.
fn leg_metres(mark: &Mark) -> Option<f64> {
    match (&mark.shape, &mark.role) {
        (
            Shape::Text {
                text: Text::LegLength(length),
                ..
            },
            _,
        ) => Some(length.metres()),
        (_, Role::NewBend { leg, .. }) => Some(leg.metres()),
        _ => None,
    }
}

/// A mark that keeps its size on the screen.
#[component]
pub(super) fn ScreenMark(
    mark: RwSignal<Mark>,
    /// The window on the marks; the drawing's where none is given.
    #[prop(optional)]
    view: Option<Signal<View>>,
) -> impl IntoView {
    let store = expect_context::<Store>();
    let view = view.unwrap_or(store.view.into());
    let Diameter(diameter) = expect_context();
    let first = mark.get_untracked();
    let element = first.element.clone();
    let lit = Memo::new(move |_| is_lit(store, element.as_ref()));
    let class = role_class(&first.role);
    let scale = move || store.letter_scale.get();
    let typed = first
        .element
        .clone()
        .filter(|id| first.role == Role::Label && matches!(id.part, Part::Leg | Part::Riser));
    let short_leg = move || {
        let metres = mark.with(leg_metres);
        metres.is_some_and(|metres| metres < SHORT_LEG * scale() * view.get().metres_per_pixel)
    };
    let class = move || match (lit.get(), short_leg()) {
        (true, _) => format!("{class} lit"),
        (false, true) => format!("{class} quiet"),
        (false, false) => class.to_owned(),
    };
    let anchor = move || {
        mark.with(|mark| match &mark.shape {
            Shape::Text {
                aside: Some(aside), ..
            } if aside.x > BESIDE => "start",
            Shape::Text {
                aside: Some(aside), ..
            } if aside.x < -BESIDE => "end",
            _ => "middle",
        })
    };
    let place = move || {
        mark.with(|mark| {
            let (at, aside) = match &mark.shape {
                Shape::Dot(at) => (*at, None),
                Shape::Text { at, aside, .. } => (*at, *aside),
                _ => return String::new(),
            };
            let view = view.get();
            let half = diameter.get().metres() / 2.0 / view.metres_per_pixel;
            let reach = (half + ASIDE * scale()).max(LEAST_ASIDE * scale());
            let (x, y) = view.place(at);
            let (right, down) =
                aside.map_or((0.0, 0.0), |aside| (aside.x * reach, aside.y * reach));
            format!("translate({:.2} {:.2})", x + right, y + down)
        })
    };
    let text = move || {
        mark.with(|mark| match &mark.shape {
            Shape::Text { text, .. } => store.words().drawing(text),
            _ => String::new(),
        })
    };
    let id = first.id.clone();
    match (&first.shape, &first.role) {
        (Shape::Dot(_), Role::NewBend { .. }) => view! {
            <g class=class data-mark=id transform=place>
                <path d="M0 -6L6 0L0 6L-6 0Z"/>
            </g>
        }
        .into_any(),
        (Shape::Dot(_), _) => view! {
            <g class=class data-mark=id transform=place>
                <circle r="7"/>
            </g>
        }
        .into_any(),
        (
            Shape::Text {
                text: Text::Rank(_),
                ..
            },
            _,
        ) => view! {
            <g class=class data-mark=id transform=place>
                <circle r="10"/>
                <text y="4.5">{text}</text>
            </g>
        }
        .into_any(),
        _ => match typed {
            None => view! {
                <g class=class data-mark=id transform=place>
                    <text y="4" text-anchor=anchor>{text}</text>
                </g>
            }
            .into_any(),
            Some(element) => {
                view! { <TypedLabel element class=Signal::derive(class) id place=Signal::derive(place) anchor=Signal::derive(anchor) text=Signal::derive(text)/> }
                    .into_any()
            }
        },
    }
}

/// A length that is typed where it stands.
#[component]
fn TypedLabel(
    element: ElementId,
    class: Signal<String>,
    id: String,
    place: Signal<String>,
    anchor: Signal<&'static str>,
    text: Signal<String>,
) -> impl IntoView {
    let pressed = use_context::<PressedLength>();
    view! {
        <g
            class=move || format!("{} typed", class.get())
            data-mark=id
            transform=place
            // The drawing takes the press too: a corner under the label goes first.
            on:pointerdown=move |_| if let Some(PressedLength(pressed)) = pressed {
                pressed.set_value(Some(element.clone()));
            }
        >
            <text y="4" text-anchor=anchor>{text}</text>
        </g>
    }
}
