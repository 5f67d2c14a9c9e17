//! Keeps the open job in the browser: each committed change is stored at once. One write is under way
//! at a time, and the newest plan of each job waits.

use super::keep::{LONGEST_WAIT, NotKept, Opening, Progress, Unreadable};
use super::keep_jobs::{Job, Jobs};
use super::keep_news::KeepNews;
use super::keep_store::{Fault, JobKey, JobStore, Over, Record, Stored};
use super::rest::rest;
use crate::plan::Plan;
use crate::report::words::ActionName;
use gloo_timers::future::TimeoutFuture;
use leptos::prelude::*;
use std::sync::Arc;
use wasm_bindgen_futures::spawn_local;

/// The pauses before further attempts, ms. A connection can end under the page, as when its data are
/// cleared, and while that goes on no new one is let in.
const PAUSES_MS: [u32; 4] = [0, 100, 400, 1500];

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
        self.desk.update_value(|desk| desk.jobs.take(name, &plan));
        self.keep_if_touched(plan);
    }

    /// What was to be opened is what is open already: from now on it is of the job that was to come.
    pub fn keep_the_same(self, plan: Arc<Plan>) {
        let is_of_another = self.desk.try_update_value(|desk| {
            let coming = desk.jobs.coming.take();
            let is_of_another = coming.is_some();
            if let Some(job) = coming {
                desk.jobs.part(job, &plan);
            }
            is_of_another
        });
        if is_of_another == Some(true) {
            self.keep_if_touched(plan);
        }
    }

    /// Nothing was opened: what was to come would else be taken for the next plan that is.
    pub fn nothing_comes(self) {
        self.desk.update_value(|desk| desk.jobs.coming = None);
    }

    fn keep_if_touched(self, plan: Arc<Plan>) {
        let untouched = self.desk.with_value(|desk| desk.jobs.now().untouched);
        if !untouched {
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

    /// Tells other tabs that the job of `key` was stored.
    pub fn tell(self, key: &JobKey) {
        self.desk.with_value(|desk| desk.news.tell(key.as_str()));
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
