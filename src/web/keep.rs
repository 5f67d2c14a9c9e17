//! The open job is kept in the browser: it opens with the page, and each committed change is stored
//! at once. One write is under way at a time, and the newest plan of each job waits.

use super::keep_jobs::{Job, Jobs};
use super::keep_news::KeepNews;
use super::keep_store::{Fault, JobKey, JobStore, Over, Record, Stored};
use super::rest::rest;
use super::soon::after;
use crate::plan::{FileError, Plan};
use crate::report::words::ActionName;
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use std::cell::Cell;
use std::rc::Rc;
use std::sync::Arc;
use std::time::Duration;
use wasm_bindgen_futures::spawn_local;

/// A storage that has not answered after this, ms, is not waited for.
const LONGEST_WAIT: Duration = Duration::from_secs(5);

/// The pauses before further attempts, ms. A connection can end under the page, as when its data are
/// cleared, and while that goes on no new one is let in.
const PAUSES_MS: [u32; 4] = [0, 100, 400, 1500];

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
    store: Option<JobStore>,
    key: Option<JobKey>,
    known: Option<Record>,
    not_kept: Option<NotKept>,
    unreadable: Option<Unreadable>,
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

/// Keeps the open job.
#[derive(Clone, Copy)]
pub(super) struct Keeper {
    /// Where the open job stands.
    pub progress: ReadSignal<Progress>,
    set_progress: WriteSignal<Progress>,
    desk: StoredValue<Desk, LocalStorage>,
}

struct Desk {
    store: Option<JobStore>,
    jobs: Jobs,
    under_way: bool,
    /// The newest plan of each job that is not on the disk yet, the oldest first.
    waiting: Vec<(usize, Arc<Plan>)>,
    /// What was stored when the page opened and could not be read, until a plan takes its place.
    unreadable: Option<Unreadable>,
    /// Tells other tabs of what is stored, and hears of theirs.
    news: KeepNews,
}

impl Keeper {
    /// Goes on from what the page opened with: `plan`, which is the example where that was nothing.
    pub fn new(opening: Opening, plan: &Arc<Plan>) -> Self {
        let untouched = opening.known.is_none();
        let (progress, set_progress) = signal(match opening.not_kept {
            Some(why) => Progress::NotKept(why),
            None if untouched => Progress::Untouched,
            None => Progress::Saved,
        });
        let job = Job {
            key: opening.key,
            over: Over::Only(opening.known.map_or(Stored::Nothing, Stored::Job)),
            untouched,
        };
        let keeper = Self {
            progress,
            set_progress,
            desk: StoredValue::new_local(Desk {
                store: opening.store,
                jobs: Jobs::new(job, plan),
                under_way: false,
                waiting: Vec::new(),
                unreadable: opening.unreadable,
                news: KeepNews::silent(),
            }),
        };
        let news = KeepNews::start(move |key| keeper.heard_of(key));
        keeper.desk.update_value(|desk| desk.news = news);
        keeper
    }

    /// What was stored when the page opened and could not be read, until a plan takes its place.
    pub fn unreadable(self) -> Option<Unreadable> {
        self.desk.with_value(|desk| desk.unreadable.clone())
    }

    /// Stores `plan` after the step called `name`, unless nobody has changed it since it was opened
    /// as it comes.
    pub fn keep(self, name: ActionName, plan: Arc<Plan>) {
        let untouched = self.desk.try_update_value(|desk| {
            desk.jobs.take(name, &plan);
            desk.jobs.now().untouched
        });
        if untouched == Some(false) {
            self.put_in_line(plan);
        } else if self.progress.get_untracked() == Progress::Saved {
            self.show(Progress::Untouched);
        }
    }

    /// Stores `plan` in place of whatever is stored for its job.
    pub fn keep_instead(self, plan: Arc<Plan>) {
        self.desk.update_value(|desk| {
            let job = desk.jobs.now_mut();
            job.over = Over::Anything;
            job.untouched = false;
        });
        self.put_in_line(plan);
    }

    /// Stores `plan` as a job of its own; what is stored for its job stays.
    pub fn keep_as_another(self, plan: Arc<Plan>) {
        self.desk
            .update_value(|desk| desk.jobs.part(Job::new(false), &plan));
        self.put_in_line(plan);
    }

    /// The plan that is opened next is the stored job of `key`.
    pub fn opens_next(self, key: JobKey, record: Record) {
        let job = Job {
            key: Some(key),
            over: Over::Only(Stored::Job(record)),
            untouched: false,
        };
        self.desk.update_value(|desk| desk.jobs.coming = Some(job));
    }

    /// The plan that is opened next belongs to no kept job, and is kept once it is changed.
    pub fn opens_as_it_comes(self) {
        self.desk
            .update_value(|desk| desk.jobs.coming = Some(Job::new(true)));
    }

    /// The key of the open job, once it has one.
    pub fn key(self) -> Option<JobKey> {
        self.desk.with_value(|desk| desk.jobs.now().key.clone())
    }

    /// Another tab has stored the job of `key`.
    fn heard_of(self, key: &str) {
        let is_open = self.key().is_some_and(|own| own.as_str() == key);
        if is_open {
            self.show(Progress::NotKept(NotKept::Elsewhere));
        }
    }

    /// Says it where it is news: what is shown for it stays in place, a focused button too.
    fn show(self, progress: Progress) {
        if self.progress.get_untracked() != progress {
            self.set_progress.set(progress);
        }
    }

    fn put_in_line(self, plan: Arc<Plan>) {
        let idle = self.desk.try_update_value(|desk| {
            let job = desk.jobs.place();
            desk.waiting.retain(|(waits, _)| *waits != job);
            desk.waiting.push((job, plan));
            !core::mem::replace(&mut desk.under_way, true)
        });
        if idle == Some(true) {
            spawn_local(self.save_in_turn());
        }
    }

    async fn save_in_turn(self) {
        while let Some((job, plan)) = self.next_in_line() {
            // What is not kept stays said until it is.
            if !matches!(self.progress.get_untracked(), Progress::NotKept(_)) {
                self.show(Progress::Saving);
            }
            let no_answer = move || self.show(Progress::NotKept(NotKept::NoAnswer));
            let slow = set_timeout(no_answer, LONGEST_WAIT);
            let saved = self.save(job, &plan).await;
            if let Ok(slow) = slow {
                slow.clear();
            }
            self.show(match saved {
                Ok(()) if self.desk.with_value(|desk| desk.jobs.now().untouched) => {
                    Progress::Untouched
                }
                Ok(()) => Progress::Saved,
                Err(fault) => Progress::NotKept(self.not_kept(fault)),
            });
        }
    }

    fn next_in_line(self) -> Option<(usize, Arc<Plan>)> {
        let next = |desk: &mut Desk| {
            let next = (!desk.waiting.is_empty()).then(|| desk.waiting.remove(0));
            desk.under_way = next.is_some();
            next
        };
        self.desk.try_update_value(next).flatten()
    }

    async fn save(self, job: usize, plan: &Plan) -> Result<(), Fault> {
        let rest = rest().await;
        let record = Record {
            text: (rest.write)(plan),
            stored_at_ms: js_sys::Date::now(),
        };
        let mut saved = self.try_to_save(job, &record).await;
        for pause in PAUSES_MS {
            if !matches!(saved, Err(Fault::Failed | Fault::Refused)) {
                break;
            }
            TimeoutFuture::new(pause).await;
            saved = self.try_to_save(job, &record).await;
        }
        saved?;
        self.desk.update_value(|desk| {
            if job == desk.jobs.place() {
                (rest.tell_kept)(plan, &record.text);
            }
            if job == Jobs::FIRST {
                desk.unreadable = None;
            }
            let job = desk.jobs.at_mut(job);
            job.over = Over::Only(Stored::Job(record));
            if let Some(key) = &job.key {
                desk.news.tell(key.as_str());
            }
        });
        Ok(())
    }

    async fn try_to_save(self, job: usize, record: &Record) -> Result<(), Fault> {
        let at_hand = self.desk.try_update_value(|desk| {
            let opens = job == desk.jobs.place();
            let job = desk.jobs.at_mut(job);
            let key = job.key.get_or_insert_with(JobKey::new).clone();
            (desk.store.take(), key, job.over.clone(), opens)
        });
        let (store, key, over, opens) = at_hand.ok_or(Fault::Failed)?;
        let store = match store {
            Some(store) => store,
            None => JobStore::open().await?,
        };
        // After a fault the next attempt opens the storage anew.
        store.write(&key, &over, record, opens).await?;
        self.desk.update_value(|desk| desk.store = Some(store));
        Ok(())
    }

    fn not_kept(self, fault: Fault) -> NotKept {
        match NotKept::from(fault) {
            NotKept::Elsewhere if self.unreadable().is_some() => NotKept::Unreadable,
            other => other,
        }
    }
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
