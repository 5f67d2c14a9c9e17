//! What the page and its worker say to one another.

pub(super) use crate::diagnosis::VisitMeaning as SiteAnswer;
use crate::plan::Plan;
use crate::system::{BandDetail, Bands};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// The version of the messages; a reply of another is dropped.
pub(super) const PROTOCOL: u32 = 4;

/// A plan whose bands are wanted.
#[derive(Serialize, Deserialize)]
pub(super) struct Request {
    /// [`PROTOCOL`] of the sender.
    pub protocol: u32,
    /// Comes back with the reply.
    pub id: u32,
    /// The plan, its pictures left out.
    pub plan: Plan,
    /// The visit whose readings are asked about; none for the newest.
    pub visit: Option<Arc<str>>,
}

/// What the worker found out; the bands come first.
#[derive(Clone, Serialize, Deserialize)]
pub(super) enum Answer {
    /// The plan's bands; none where a drawn blower moves no air.
    Bands(Option<Bands>),
    /// What takes longer than they do.
    Detail(Option<BandDetail>),
    /// What the visit's readings mean; only where there is one.
    Site(Box<SiteAnswer>),
}

/// An answer about a plan.
#[derive(Clone, Serialize, Deserialize)]
pub(super) struct Reply {
    /// [`PROTOCOL`] of the sender.
    pub protocol: u32,
    /// The request's id.
    pub id: u32,
    /// What is known now.
    pub answer: Answer,
}
