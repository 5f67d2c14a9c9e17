//! Which stored job each plan of the page belongs to: an undo may go back over the opening of another
//! job, and must not store the one in the place of the other.

use super::keep_store::{JobKey, Over, Stored};
use crate::plan::{Plan, blank};
use crate::report::the_example;
use crate::report::words::ActionName;
use std::sync::{Arc, Weak};

/// A job as the page has it.
#[derive(Debug, Clone)]
pub(super) struct Job {
    /// Its key in the storage, once it has one.
    pub key: Option<JobKey>,
    /// What may be written over.
    pub over: Over,
    /// Whether it is as it comes with the page: nothing to keep.
    pub untouched: bool,
}

impl Job {
    /// A job that is not stored yet.
    pub fn new(untouched: bool) -> Self {
        Self {
            key: None,
            over: Over::Only(Stored::Nothing),
            untouched,
        }
    }
}

/// The jobs that were open since the page opened.
pub(super) struct Jobs {
    list: Vec<Job>,
    now: usize,
    /// What the next opened plan belongs to; none for a job of its own.
    pub coming: Option<Job>,
    /// The plans that the history still holds, and their jobs.
    plans: Vec<(Weak<Plan>, usize)>,
}

impl Jobs {
    /// The job that the page opened with.
    pub const FIRST: usize = 0;

    /// Begins with one job and its plan.
    pub fn new(job: Job, plan: &Arc<Plan>) -> Self {
        Self {
            list: vec![job],
            now: Self::FIRST,
            coming: None,
            plans: vec![(Arc::downgrade(plan), Self::FIRST)],
        }
    }

    /// The open job.
    pub fn now(&self) -> &Job {
        &self.list[self.now]
    }

    /// The same, to change it.
    pub fn now_mut(&mut self) -> &mut Job {
        &mut self.list[self.now]
    }

    /// The open job's place.
    pub const fn place(&self) -> usize {
        self.now
    }

    /// The job at a place that [`place`](Self::place) gave.
    pub fn at_mut(&mut self, place: usize) -> &mut Job {
        &mut self.list[place]
    }

    /// `plan` is open now, after the step called `name`.
    pub fn take(&mut self, name: ActionName, plan: &Arc<Plan>) {
        self.plans.retain(|(known, _)| known.strong_count() > 0);
        let own = Arc::downgrade(plan);
        let known = self
            .plans
            .iter()
            .rev()
            .find(|(known, _)| known.ptr_eq(&own));
        if let Some((_, job)) = known {
            // Undo or redo: the same plan as before, whatever was to come.
            self.now = *job;
            self.coming = None;
        } else if name == ActionName::OpenPlan {
            let job = self
                .coming
                .take()
                .unwrap_or_else(|| Job::new(as_it_comes(plan)));
            self.part(job, plan);
        } else {
            self.now_mut().untouched = false;
            self.plans.push((own, self.now));
        }
    }

    /// `plan` belongs to `job` from now on.
    pub fn part(&mut self, job: Job, plan: &Arc<Plan>) {
        let same = |known: &Job| known.key.is_some() && known.key == job.key;
        self.now = self.list.iter().position(same).unwrap_or(self.list.len());
        if let Some(known) = self.list.get_mut(self.now) {
            *known = job;
        } else {
            self.list.push(job);
        }
        self.plans.push((Arc::downgrade(plan), self.now));
    }
}

fn as_it_comes(plan: &Plan) -> bool {
    *plan == the_example() || *plan == blank(plan.title.clone())
}
