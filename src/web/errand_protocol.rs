//! What the page asks the worker's program now and then, so that the page itself need not hold it.

use crate::plan::{LinkError, Plan};
use crate::report::DifferenceBands;
use serde::{Deserialize, Serialize};

/// The version of the messages; one of another is dropped.
pub(super) const ERRAND_PROTOCOL: u32 = 1;

/// Something to be done once.
#[derive(Serialize, Deserialize)]
pub(super) enum Errand {
    /// The link to a job, behind the page's address.
    WriteLink {
        /// The job, its pictures left out.
        plan: Box<Plan>,
        /// The page's address.
        address: String,
    },
    /// How sure the difference of two plans is.
    Compare {
        /// The first, its pictures left out.
        first: Box<Plan>,
        /// The second, its pictures left out.
        second: Box<Plan>,
    },
    /// The job in what stands behind a link's `#`.
    ReadLink(String),
}

/// What came of it.
#[derive(Serialize, Deserialize)]
pub(super) enum Done {
    /// The link.
    Link(Result<String, LinkError>),
    /// The difference's bands; none where a drawn blower moves no air.
    Compared(Option<DifferenceBands>),
    /// The job.
    Job(Result<Box<Plan>, LinkError>),
}

/// An errand as a message.
#[derive(Serialize, Deserialize)]
pub(super) struct ErrandAsk {
    /// [`ERRAND_PROTOCOL`] of the sender.
    pub errand_protocol: u32,
    /// What is to be done.
    pub errand: Errand,
}

/// Its answer as a message.
#[derive(Serialize, Deserialize)]
pub(super) struct ErrandAnswer {
    /// [`ERRAND_PROTOCOL`] of the sender.
    pub errand_protocol: u32,
    /// What came of it.
    pub done: Done,
}
