//! Everything worked out from one version of the plan, and what of it the next one takes over.

use crate::plan::Plan;
use crate::report::{Figures, figures};
use crate::scene::{Mark, is_same_room, room_marks, run_marks};
use crate::system::Assessment;
use std::sync::Arc;

/// Everything worked out from one version of the plan.
pub(super) struct Results {
    pub plan: Arc<Plan>,
    pub figures: Figures,
    pub assessment: Assessment,
    room_marks: Arc<Vec<Mark>>,
    run_marks: Vec<Mark>,
}

impl Results {
    /// The marks from back to front.
    pub fn marks(&self) -> impl Iterator<Item = &Mark> {
        self.room_marks.iter().chain(&self.run_marks)
    }
}

/// A shared value that is the same only where it is the very same one: versions are compared
/// without looking inside.
pub(super) struct Version<T>(pub Arc<T>);

impl<T> Clone for Version<T> {
    fn clone(&self) -> Self {
        Self(Arc::clone(&self.0))
    }
}

impl<T> PartialEq for Version<T> {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> core::ops::Deref for Version<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.0
    }
}

/// Works out everything from `plan`, after `before`: what of that still holds is taken over.
pub(super) fn work_out(plan: Arc<Plan>, before: Option<&Results>) -> Results {
    let (figures, assessment) = figures(&plan);
    let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
    let run_marks = run_marks(&plan, ledger);
    let before = before.filter(|before| is_same_room(&before.plan, &plan));
    let room_marks = before.map_or_else(
        || Arc::new(room_marks(&plan)),
        |before| Arc::clone(&before.room_marks),
    );
    Results {
        plan,
        figures,
        assessment,
        room_marks,
        run_marks,
    }
}
