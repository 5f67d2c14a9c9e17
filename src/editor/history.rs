//! Undo and redo: whole plans with the name of the step between them.

use crate::plan::Plan;
use crate::report::words::ActionName;
use std::collections::VecDeque;
use std::sync::Arc;

/// The most steps that are kept; the oldest go first.
const MOST_STEPS: usize = 500;

/// The plans before and after the present one.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct History {
    undo: VecDeque<(ActionName, Arc<Plan>)>,
    redo: Vec<(ActionName, Arc<Plan>)>,
}

impl History {
    /// Keeps `before`, the plan as it was before the step called `name`. What was undone is gone.
    pub fn record(&mut self, name: ActionName, before: Arc<Plan>) {
        if self.undo.len() == MOST_STEPS {
            self.undo.pop_front();
        }
        self.undo.push_back((name, before));
        self.redo.clear();
    }

    /// Takes the last step back: puts the plan before it into `plan` and gives the step's name.
    pub fn undo(&mut self, plan: &mut Arc<Plan>) -> Option<ActionName> {
        let (name, before) = self.undo.pop_back()?;
        self.redo.push((name, core::mem::replace(plan, before)));
        Some(name)
    }

    /// Does the last undone step again.
    pub fn redo(&mut self, plan: &mut Arc<Plan>) -> Option<ActionName> {
        let (name, after) = self.redo.pop()?;
        self.undo.push_back((name, core::mem::replace(plan, after)));
        Some(name)
    }

    /// The plan as it was before another run was taken last, in the job that is open.
    pub fn before_reroute(&self) -> Option<&Arc<Plan>> {
        let steps = self.undo.iter().rev();
        let mut of_job = steps.take_while(|(name, _)| *name != ActionName::OpenPlan);
        let taken = of_job.find(|(name, _)| *name == ActionName::TakeReroute);
        taken.map(|(_, before)| before)
    }

    /// The step that undo would take back.
    pub fn next_undo(&self) -> Option<ActionName> {
        self.undo.back().map(|(name, _)| *name)
    }

    /// The step that redo would do again.
    pub fn next_redo(&self) -> Option<ActionName> {
        self.redo.last().map(|(name, _)| *name)
    }
}
