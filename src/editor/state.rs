//! All that the editor holds.

use super::{Gesture, History, View};
use crate::plan::{Bounds, ElementId, Plan};
use crate::units::UnitSystem;
use std::sync::Arc;

/// The editor's state. Figures are no part of it: they are worked out from the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// The plan.
    pub plan: Arc<Plan>,
    /// The selected element; it may stand at a corner without an elbow.
    pub selection: Option<ElementId>,
    /// What can be undone and redone.
    pub history: History,
    /// The press that goes on.
    pub gesture: Option<Gesture>,
    /// The window on the plan.
    pub view: View,
    /// The page's units.
    pub units: UnitSystem,
}

impl State {
    /// A state that shows `plan`, with nothing to undo.
    pub fn new(plan: Plan) -> Self {
        let mut view = View::default();
        view.show(&Bounds::of(&plan));
        Self {
            plan: Arc::new(plan),
            selection: None,
            history: History::default(),
            gesture: None,
            view,
            units: UnitSystem::default(),
        }
    }
}
