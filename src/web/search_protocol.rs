//! What the page and the worker of the search say to one another.

use crate::search::{Reply, Request};
use serde::{Deserialize, Serialize};

/// The version of the messages; one of another is dropped.
pub(super) const SEARCH_PROTOCOL: u32 = 2;

/// A search that is wanted. It takes the place of one under way.
#[derive(Serialize, Deserialize)]
pub(super) struct SearchAsk {
    /// [`SEARCH_PROTOCOL`] of the sender.
    pub search_protocol: u32,
    /// Comes back with each answer.
    pub id: u32,
    /// What is asked; none to stop.
    pub request: Option<Request>,
}

/// How far a search is.
#[derive(Serialize, Deserialize)]
pub(super) struct SearchAnswer {
    /// [`SEARCH_PROTOCOL`] of the sender.
    pub search_protocol: u32,
    /// The id of what was asked.
    pub id: u32,
    /// What is known now; none as the answer to a stop.
    pub reply: Option<Reply>,
}
