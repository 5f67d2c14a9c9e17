//! The open job as the browser keeps it: what the page opens with, and where the job stands since.

use super::keep_store::{Fault, JobKey, JobStore, Record, Stored};
use super::rest::rest;
use super::soon::after;
use crate::plan::{FileError, Plan};
use std::cell::Cell;
use std::rc::Rc;
use std::time::Duration;
use wasm_bindgen_futures::spawn_local;

/// A storage that has not answered after this is not waited for.
pub(super) const LONGEST_WAIT: Duration = Duration::from_secs(5);

/// Where the open job stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Progress {
    /// The example is open and nobody changed it: no job, so nothing to keep.
    Untouched,
    /// All that was committed is on the disk.
    Saved,
    /// A change is on its way to the disk.
    Saving,
    /// The last change is not on the disk.
    NotKept(NotKept),
}

/// Why changes are not kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum NotKept {
    /// The browser lets nothing be stored.
    Refused,
    /// The storage does not answer.
    NoAnswer,
    /// The storage has no room left.
    Full,
    /// The storage failed in another way.
    Failed,
    /// Another plan is stored than the one that the page knows of.
    Elsewhere,
    /// What is stored could not be read, and stays.
    Unreadable,
}

/// What was stored and could not be read.
#[derive(Debug, Clone)]
pub(super) struct Unreadable {
    /// What is stored, as text.
    pub text: String,
    /// What is wrong with it; none where it is no record of this page at all.
    pub error: Option<FileError>,
}

/// What the page opens with.
#[derive(Default)]
pub(super) struct Opening {
    /// The stored plan.
    pub plan: Option<Plan>,
    pub store: Option<JobStore>,
    pub key: Option<JobKey>,
    pub known: Option<Record>,
    pub not_kept: Option<NotKept>,
    pub unreadable: Option<Unreadable>,
}

/// Calls `show` once with what is stored, or without it where the storage does not answer.
pub(super) fn open_then(show: impl FnOnce(Opening) + 'static) {
    let show = Rc::new(Cell::new(Some(show)));
    let late = Rc::clone(&show);
    let no_answer = move || {
        if let Some(show) = late.take() {
            show(Opening {
                not_kept: Some(NotKept::NoAnswer),
                ..Opening::default()
            });
        }
    };
    after(LONGEST_WAIT, no_answer);
    spawn_local(async move {
        let opening = opening().await;
        if let Some(show) = show.take() {
            show(opening);
        }
    });
}

async fn opening() -> Opening {
    let mut opening = Opening::default();
    let stored = match JobStore::open().await {
        Ok(store) => {
            let stored = store.open_job().await;
            opening.store = Some(store);
            stored
        }
        Err(fault) => Err(fault),
    };
    let stored = match stored {
        Ok(None) => return opening,
        Ok(Some((key, stored))) => {
            opening.key = Some(key);
            stored
        }
        Err(fault) => {
            opening.not_kept = Some(NotKept::from(fault));
            return opening;
        }
    };
    let (text, error) = match stored {
        Stored::Nothing => return opening,
        Stored::Foreign(text) => (text, None),
        Stored::Job(record) => {
            let rest = rest().await;
            match (rest.read)(record.text.as_bytes()) {
                Ok(plan) => {
                    // Before anything of it is drawn: should that fail, the plan can still be had as a file.
                    (rest.tell_kept)(&plan, &record.text);
                    opening.plan = Some(plan);
                    opening.known = Some(record);
                    return opening;
                }
                Err(error) => (record.text, Some(error)),
            }
        }
    };
    opening.not_kept = Some(NotKept::Unreadable);
    opening.unreadable = Some(Unreadable { text, error });
    opening
}

impl From<Fault> for NotKept {
    fn from(fault: Fault) -> Self {
        match fault {
            Fault::Refused => Self::Refused,
            Fault::Full => Self::Full,
            Fault::Occupied => Self::Elsewhere,
            Fault::Failed => Self::Failed,
        }
    }
}
