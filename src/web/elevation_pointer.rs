//! A pointer on the elevation: it drags a corner's handle up and down, or a press selects.

use super::elevation_marks::Drawn;
use super::results::Version;
use super::store::Store;
use crate::editor::{Action, View, pick_mark, rise_at};
use crate::plan::{ElementId, NodeId};
use crate::scene::Role;
use crate::units::Length;
use leptos::prelude::*;
use std::cell::RefCell;
use wasm_bindgen::JsCast;
use web_sys::{Element, FocusOptions, MouseEvent, PointerEvent, SvgElement};

/// How far off a press may still mean a thing, px: a fingertip is wider than a mouse's arrow.
const REACH_TOUCH: f64 = 22.0;
const REACH_MOUSE: f64 = 12.0;
/// A hand is never quite still: a pointer that moves less than this, px, drags nothing.
const SLACK: f64 = 3.0;

/// A handle that is held.
struct Held {
    pointer: i32,
    node: NodeId,
    /// What it selects, once it is dragged or let go: selected at once, its panel would open under
    /// the finger.
    element: Option<ElementId>,
    /// Where it was pressed, px from the page's top.
    pressed_at: f64,
    /// The rise there was.
    rise: Length,
}

/// What the last press was on.
#[derive(Default)]
enum Press {
    #[default]
    None,
    Handle(Held),
    /// Beside every handle, with how far off it may mean a thing, px. It selects when it is a click:
    /// a finger that scrolls the page is none.
    Elsewhere(f64),
}

pub(super) struct ElevationPointer {
    store: Store,
    drawn: Memo<Version<Drawn>>,
    view: Signal<View>,
    press: RefCell<Press>,
}

impl ElevationPointer {
    pub fn new(store: Store, drawn: Memo<Version<Drawn>>, view: Signal<View>) -> Self {
        Self {
            store,
            drawn,
            view,
            press: RefCell::default(),
        }
    }

    pub fn down(&self, event: &PointerEvent) {
        if event.button() != 0 || self.is_held() {
            return;
        }
        let reach = if event.pointer_type() == "mouse" {
            REACH_MOUSE
        } else {
            REACH_TOUCH
        };
        let Some((Role::Corner(node), element)) = self.picked(event, reach) else {
            self.press.replace(Press::Elsewhere(reach));
            return;
        };
        if let Some(canvas) = canvas(event) {
            // Without capture a fast drag is lost at the rim; nothing else hangs on it.
            let _ = canvas.set_pointer_capture(event.pointer_id());
            // A finger's drag gives no focus of itself, and the focus says which drawing is worked on.
            if let Some(canvas) = canvas.dyn_ref::<SvgElement>() {
                let stays = FocusOptions::new();
                stays.set_prevent_scroll(true);
                let _ = canvas.focus_with_options(&stays);
            }
        }
        let rise = rise_at(&self.store.plan_now(), &node);
        self.press.replace(Press::Handle(Held {
            pointer: event.pointer_id(),
            node,
            element,
            pressed_at: f64::from(event.client_y()),
            rise,
        }));
    }

    pub fn moved(&self, event: &PointerEvent) {
        let press = self.press.borrow();
        let Press::Handle(held) = &*press else {
            return;
        };
        if held.pointer != event.pointer_id() {
            return;
        }
        let pixel = Length::from_metres(self.view.get_untracked().metres_per_pixel);
        let up = held.pressed_at - f64::from(event.client_y());
        self.store.act(Action::DragRise {
            node: held.node.clone(),
            rise: held.rise + pixel * up,
            slack: pixel * SLACK,
        });
        let is_new = self
            .store
            .with_state_now(|state| state.gesture.is_some() && state.selection != held.element);
        if is_new {
            self.store.act(Action::Select(held.element.clone()));
        }
    }

    pub fn up(&self, event: &PointerEvent) {
        self.let_go(event, Action::Release);
    }

    pub fn lost(&self, event: &PointerEvent) {
        self.let_go(event, Action::Cancel);
    }

    pub fn clicked(&self, event: &MouseEvent) {
        if let Press::Elsewhere(reach) = self.press.take() {
            let element = self.picked(event, reach).and_then(|(_, element)| element);
            self.store.act(Action::Select(element));
        }
    }

    /// Whether a handle is held.
    pub fn is_held(&self) -> bool {
        matches!(&*self.press.borrow(), Press::Handle(_))
    }

    fn let_go(&self, event: &PointerEvent, end: Action) {
        let is_it = |press: &Press| matches!(press, Press::Handle(held) if held.pointer == event.pointer_id());
        if is_it(&self.press.borrow())
            && let Press::Handle(held) = self.press.take()
        {
            self.store.act(end);
            self.store.act(Action::Select(held.element));
        }
    }

    fn picked(&self, event: &MouseEvent, reach: f64) -> Option<(Role, Option<ElementId>)> {
        let canvas = canvas(event)?.get_bounding_client_rect();
        let view = self.view.get_untracked();
        let at = view.point_at(
            f64::from(event.client_x()) - canvas.left(),
            f64::from(event.client_y()) - canvas.top(),
        );
        self.drawn.with_untracked(|drawn| {
            let mark = pick_mark(&drawn.elevation.marks, at, reach * view.metres_per_pixel)?;
            Some((mark.role.clone(), mark.element.clone()))
        })
    }
}

fn canvas(event: &MouseEvent) -> Option<Element> {
    event.current_target()?.dyn_into().ok()
}
