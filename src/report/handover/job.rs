//! What a handover is made from, worked out once: the plan, its figures and bands, what its visit comes
//! to, and the run that it was changed from or may be changed to.

use crate::diagnosis::{CleanReading, Diagnosis, VisitMeaning, visit_meaning};
use crate::plan::Plan;
use crate::report::words::RerouteText;
use crate::report::{Figures, figures, reroute_words};
use crate::search::Suggestion;
use crate::system::{Assessment, BandDetail, Bands, Ledger, band_detail, bands};

/// A plan with everything worked out.
#[derive(Debug, Clone)]
pub struct WorkedPlan {
    /// The plan.
    pub plan: Plan,
    /// Its figures.
    pub figures: Figures,
    /// What they came from.
    pub assessment: Assessment,
    /// Its bands; none where a drawn blower moves no air.
    pub bands: Option<Bands>,
    /// The bands of its elements.
    pub detail: Option<BandDetail>,
}

impl WorkedPlan {
    /// Works `plan` out, with the bands that the page shows.
    pub fn of(plan: Plan) -> Self {
        let (figures, assessment) = figures(&plan);
        let run = &assessment.run;
        let bands = bands(run);
        Self {
            detail: bands.and_then(|_| band_detail(run)),
            bands,
            figures,
            assessment,
            plan,
        }
    }

    /// The ledger; none where no air moves.
    pub fn ledger(&self) -> Option<&Ledger> {
        let working = self.assessment.working.as_ref();
        working.map(|(_, ledger)| ledger)
    }
}

/// What a visit comes to.
#[derive(Debug, Clone)]
pub struct VisitFound {
    /// Its index in the plan.
    pub visit: usize,
    /// What its readings mean.
    pub diagnosis: Option<Diagnosis>,
    /// What a clean run would read, one an entry.
    pub clean: Vec<Option<CleanReading>>,
}

impl VisitFound {
    /// Of the visit with this index; none where there is none.
    pub fn of(plan: &Plan, visit: usize) -> Option<Self> {
        let of = plan.visits.get(visit)?;
        let VisitMeaning { diagnosis, clean } = visit_meaning(plan, of);
        Some(Self {
            visit,
            diagnosis,
            clean,
        })
    }
}

/// Another run beside the plan's own.
#[derive(Debug, Clone)]
pub enum OtherRun {
    /// The one that was there before the present one was taken.
    Before(Box<WorkedPlan>),
    /// One that is offered, with what it changes.
    Offered(Box<WorkedPlan>, Vec<RerouteText>),
}

/// What a handover is made from.
#[derive(Debug, Clone)]
pub struct HandoverJob {
    /// The plan as it is.
    pub run: WorkedPlan,
    /// The visit that is told of.
    pub visit: Option<VisitFound>,
    /// Another run, where there is one.
    pub other: Option<OtherRun>,
}

impl HandoverJob {
    /// Of a plan and the visit with this index; none for the newest.
    pub fn of(plan: Plan, visit: Option<usize>) -> Self {
        let newest = plan.visits.len().checked_sub(1);
        let visit = visit.or(newest);
        Self {
            visit: visit.and_then(|visit| VisitFound::of(&plan, visit)),
            run: WorkedPlan::of(plan),
            other: None,
        }
    }

    /// The present run was taken in place of that of `before`.
    #[must_use]
    pub fn taken_from(mut self, before: Plan) -> Self {
        self.other = Some(OtherRun::Before(Box::new(WorkedPlan::of(before))));
        self
    }

    /// `suggestion` is offered.
    #[must_use]
    pub fn with_offer(mut self, suggestion: &Suggestion) -> Self {
        let changes = suggestion.changes.iter().map(reroute_words::change);
        let worked = WorkedPlan::of(suggestion.taken_in(&self.run.plan));
        self.other = Some(OtherRun::Offered(Box::new(worked), changes.collect()));
        self
    }

    /// What the visit's readings mean.
    pub(super) fn diagnosis(&self) -> Option<&Diagnosis> {
        self.visit.as_ref()?.diagnosis.as_ref()
    }
}
