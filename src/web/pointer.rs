//! Pointers on the drawing: one drags a corner or the paper, two move and zoom the paper.

use super::store::Store;
use crate::editor::{Action, Tool};
use crate::plan::ElementId;
use leptos::prelude::*;
use std::cell::RefCell;
use std::rc::Rc;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{Element, PointerEvent, WheelEvent};

/// How far off a press may still mean a thing, px: a fingertip is wider than a mouse's arrow.
const REACH_TOUCH: f64 = 22.0;
const REACH_MOUSE: f64 = 12.0;
/// How near a line must be to catch what is dragged or drawn, px.
const SNAP_REACH: f64 = 8.0;

/// A place on the drawing, px from its top left.
type Place = (f64, f64);

/// The leg or riser whose length was pressed, until the drawing has taken the press.
#[derive(Clone, Copy)]
pub(super) struct PressedLength(pub StoredValue<Option<ElementId>>);

/// The pointers that are down, and the drag that waits for the next frame.
pub(super) struct Pointer {
    store: Store,
    pressed: PressedLength,
    down: RefCell<Vec<(i32, Place)>>,
    /// Whether a lone pointer moves the paper.
    pans: RefCell<bool>,
    /// The length that the press is on, and where the press was.
    length: RefCell<Option<(ElementId, Place)>>,
    waiting: Rc<RefCell<Option<Action>>>,
    frame: Closure<dyn FnMut()>,
}

impl Pointer {
    pub fn new(store: Store, pressed: PressedLength) -> Self {
        let waiting: Rc<RefCell<Option<Action>>> = Rc::default();
        let next = Rc::clone(&waiting);
        let frame = Closure::new(move || {
            let action = next.borrow_mut().take();
            if let Some(action) = action {
                store.act(action);
            }
        });
        Self {
            store,
            pressed,
            down: RefCell::default(),
            pans: RefCell::new(false),
            length: RefCell::new(None),
            waiting,
            frame,
        }
    }

    pub fn down(&self, event: &PointerEvent) {
        if event.button() != 0 {
            return;
        }
        let Some(place) = place(event) else {
            return;
        };
        if let Some(canvas) = canvas(event) {
            // Without capture a fast drag is lost at the rim; nothing else hangs on it.
            let _ = canvas.set_pointer_capture(event.pointer_id());
        }
        let mut down = self.down.borrow_mut();
        down.push((event.pointer_id(), place));
        if down.len() > 1 {
            // A second finger: what the first one moved goes back, and the paper moves instead.
            self.waiting.borrow_mut().take();
            self.length.replace(None);
            self.pressed.0.set_value(None);
            self.store.act(Action::Cancel);
            return;
        }
        let draws = self.store.with_state_now(|state| state.tool != Tool::Pick);
        let reach = match (draws, event.pointer_type().as_str()) {
            // What is drawn settles where the move before showed it.
            (true, _) => SNAP_REACH,
            (false, "mouse") => REACH_MOUSE,
            (false, _) => REACH_TOUCH,
        };
        let (at, reach) = self.on_plan(place, reach);
        let adds = event.shift_key() || self.store.adds.get_untracked();
        self.store.act(Action::Press { at, reach, adds });
        // A length is typed where it stands, unless the press holds something to drag.
        let length = self.pressed.0.try_update_value(Option::take).flatten();
        let is_free = self
            .store
            .with_state_now(|state| state.tool == Tool::Pick && state.gesture.is_none());
        self.length
            .replace(length.filter(|_| is_free).map(|length| (length, place)));
        let nothing = self.store.with_state_now(|state| {
            state.tool == Tool::Pick && state.gesture.is_none() && state.selection.is_none()
        });
        self.pans.replace(nothing);
    }

    pub fn moved(&self, event: &PointerEvent) {
        let Some(new) = place(event) else {
            return;
        };
        let mut down = self.down.borrow_mut();
        let before = down.clone();
        let Some(moving) = down.iter_mut().find(|(id, _)| *id == event.pointer_id()) else {
            let draws = self.store.with_state_now(|state| state.pen.is_some());
            if draws && down.is_empty() {
                let (at, reach) = self.on_plan(new, SNAP_REACH);
                self.on_next_frame(Action::Hover { at, reach });
            }
            return;
        };
        let old = core::mem::replace(&mut moving.1, new);
        match before.as_slice() {
            [_] if *self.pans.borrow() => self.store.act(Action::Pan {
                right: new.0 - old.0,
                down: new.1 - old.1,
            }),
            [_] => {
                let (to, reach) = self.on_plan(new, SNAP_REACH);
                self.on_next_frame(Action::Drag { to, reach });
            }
            [first, second] => {
                let after = (down[0].1, down[1].1);
                self.two_fingers((first.1, second.1), after);
            }
            _ => {}
        }
    }

    pub fn up(&self, event: &PointerEvent) {
        /// A press that moved farther than this, px, was meant for the paper.
        const STILL: f64 = 4.0;
        self.let_go(event, Action::Release);
        let pressed = self.length.borrow_mut().take();
        if let (Some((element, down)), Some(up)) = (pressed, place(event))
            && (up.0 - down.0).hypot(up.1 - down.1) <= STILL
        {
            self.store.act(Action::Select(Some(element.clone())));
            self.store.typed_on_drawing.set(Some(element));
        }
    }

    pub fn lost(&self, event: &PointerEvent) {
        self.let_go(event, Action::Cancel);
    }

    fn let_go(&self, event: &PointerEvent, end: Action) {
        let mut down = self.down.borrow_mut();
        let count = down.len();
        down.retain(|(id, _)| *id != event.pointer_id());
        if count == 1 && down.is_empty() {
            let last = self.waiting.borrow_mut().take();
            if let Some(last) = last {
                self.store.act(last);
            }
            self.store.act(end);
        }
        // The finger that is left after two moves the paper, never a corner.
        self.pans.replace(count > 1);
    }

    fn two_fingers(&self, before: (Place, Place), after: (Place, Place)) {
        let middle = |(a, b): (Place, Place)| (f64::midpoint(a.0, b.0), f64::midpoint(a.1, b.1));
        let apart = |(a, b): (Place, Place)| (a.0 - b.0).hypot(a.1 - b.1);
        let (from, to) = (middle(before), middle(after));
        self.store.act(Action::Pan {
            right: to.0 - from.0,
            down: to.1 - from.1,
        });
        self.store.act(Action::Zoom {
            x: to.0,
            y: to.1,
            factor: apart(after) / apart(before).max(1.0),
        });
    }

    /// A place and a distance on the screen as they are on the plan.
    fn on_plan(&self, place: Place, reach: f64) -> (crate::plan::Point, f64) {
        self.store.with_state_now(|state| {
            let view = state.view;
            (
                view.point_at(place.0, place.1),
                reach * view.metres_per_pixel,
            )
        })
    }

    /// Many moves fall into one frame: the last one is enough.
    fn on_next_frame(&self, action: Action) {
        let asked_already = self.waiting.borrow_mut().replace(action).is_some();
        if !asked_already {
            // Should the browser refuse, the move is taken with the release.
            let _ = window().request_animation_frame(self.frame.as_ref().unchecked_ref());
        }
    }
}

/// The wheel zooms about the pointer.
pub(super) fn wheel(store: Store, event: &WheelEvent) {
    /// Wheel pixels for a doubling.
    const DOUBLING: f64 = 400.0;
    event.prevent_default();
    if let Some((x, y)) = place(event) {
        store.act(Action::Zoom {
            x,
            y,
            factor: (-event.delta_y() / DOUBLING).exp2(),
        });
    }
}

fn canvas(event: &web_sys::MouseEvent) -> Option<Element> {
    event.current_target()?.dyn_into().ok()
}

fn place(event: &web_sys::MouseEvent) -> Option<Place> {
    let canvas = canvas(event)?.get_bounding_client_rect();
    Some((
        f64::from(event.client_x()) - canvas.left(),
        f64::from(event.client_y()) - canvas.top(),
    ))
}
