//! What the page and its worker say to one another.

use crate::plan::Plan;
use crate::system::Bands;
use serde::{Deserialize, Serialize};

/// The version of the messages; a reply of another is dropped.
pub(super) const PROTOCOL: u32 = 1;

/// A plan whose bands are wanted.
#[derive(Serialize, Deserialize)]
pub(super) struct Request {
    /// [`PROTOCOL`] of the sender.
    pub protocol: u32,
    /// Comes back with the reply.
    pub id: u32,
    /// The plan.
    pub plan: Plan,
}

/// A plan's bands.
#[derive(Clone, Copy, Serialize, Deserialize)]
pub(super) struct Reply {
    /// [`PROTOCOL`] of the sender.
    pub protocol: u32,
    /// The request's id.
    pub id: u32,
    /// None where a drawn blower moves no air.
    pub bands: Option<Bands>,
}
