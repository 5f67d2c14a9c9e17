//! All that the editor holds.

use super::{Gesture, History, Pen, Tool, View};
use crate::plan::{ElementId, Plan, Point, ThingId};
use crate::scene::{Draft, DraftKind, Guide};
use crate::units::{Length, UnitSystem};
use std::collections::BTreeSet;
use std::sync::Arc;

/// The editor's state. Figures are no part of it: they are worked out from the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// The plan.
    pub plan: Arc<Plan>,
    /// The selected element; it may stand at a corner without an elbow.
    pub selection: Option<ElementId>,
    /// The selected things about the run; empty where an element is selected.
    pub things: BTreeSet<ThingId>,
    /// What stays selected while the keys step on; of no account where it is not selected any more.
    pub kept: BTreeSet<ThingId>,
    /// The tool in hand.
    pub tool: Tool,
    /// What is being drawn.
    pub pen: Option<Pen>,
    /// The lines that the pointer has settled on.
    pub guides: Vec<Guide>,
    /// Where the keys draw, once they have moved.
    pub cursor: Option<Point>,
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
        view.show_plan(&plan);
        Self {
            plan: Arc::new(plan),
            selection: None,
            things: BTreeSet::new(),
            kept: BTreeSet::new(),
            tool: Tool::default(),
            pen: None,
            guides: Vec::new(),
            cursor: None,
            history: History::default(),
            gesture: None,
            view,
            units: UnitSystem::default(),
        }
    }

    /// Selects an element of the run, or nothing.
    pub(super) fn select(&mut self, element: Option<ElementId>) {
        self.things.clear();
        self.selection = element;
    }

    /// Selects one thing about the run.
    pub(super) fn select_thing(&mut self, thing: ThingId) {
        self.selection = None;
        self.things = BTreeSet::from([thing]);
    }

    /// What is being drawn, as it is shown.
    pub fn draft(&self) -> Option<Draft> {
        /// How wide a drawn distance is.
        const MEASURED: Length = Length::from_metres(0.01);
        let pen = self.pen?;
        let kind = match self.tool {
            Tool::Run => DraftKind::Line(self.plan.run.diameter),
            Tool::Wall { .. } => DraftKind::Line(Length::from_inches(4.0)),
            Tool::Scale => DraftKind::Line(MEASURED),
            _ => DraftKind::Rectangle,
        };
        Some(Draft {
            kind,
            from: pen.from,
            to: pen.to,
        })
    }
}
