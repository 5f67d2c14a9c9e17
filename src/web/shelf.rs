//! All jobs that this browser keeps: what is known of each, and what can be done with them.

use super::file_button::bytes_of;
use super::files::{self, hand_out};
use super::keep_store::{Fault, JobKey, JobStore, Over, Record, Stored};
use super::store::{Store, label_text};
use crate::editor::Action;
use crate::plan::{Plan, read, read_jobs, write, write_jobs};
use crate::report::words::{Label, Language, Message, ShelfLabel};
use crate::report::{DrawingWish, drawing_at};
use leptos::prelude::*;
use std::sync::Arc;
use wasm_bindgen_futures::spawn_local;
use web_sys::File;

/// The scale of a job's small picture, which shows no scale.
const PICTURE_SCALE: u32 = 20;

/// One kept job.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Entry {
    pub key: JobKey,
    pub stored: Stored,
    /// The plan; none where the entry cannot be read as one.
    pub plan: Option<Arc<Plan>>,
}

impl Entry {
    fn of((key, stored): (JobKey, Stored)) -> Self {
        let plan = match &stored {
            Stored::Job(record) => read(record.text.as_bytes()).ok().map(Arc::new),
            _ => None,
        };
        Self { key, stored, plan }
    }

    /// When it was stored, ms since the start of 1970.
    pub fn stored_at_ms(&self) -> f64 {
        match &self.stored {
            Stored::Job(record) => record.stored_at_ms,
            _ => 0.0,
        }
    }

    /// Its drawing as the address of a picture.
    pub fn picture(&self, store: Store) -> Option<String> {
        let mut plan = (**self.plan.as_ref()?).clone();
        // What lies under the drawing is large, and no part of it.
        plan.picture = None;
        let units = store.units.get_untracked();
        let wish = DrawingWish {
            language: Language::English,
            units,
            scale: PICTURE_SCALE,
            tells_scale: false,
        };
        let drawing = drawing_at(&plan, None, wish);
        let drawing = js_sys::encode_uri_component(&drawing);
        Some(format!("data:image/svg+xml,{drawing}"))
    }

    /// Whether its name or note has `words` in it, in capitals or not.
    pub fn has(&self, words: &str) -> bool {
        let words = words.trim().to_lowercase();
        let in_text = |text: &str| text.to_lowercase().contains(&words);
        words.is_empty()
            || self
                .plan
                .as_ref()
                .is_some_and(|plan| in_text(&plan.title) || in_text(&plan.note))
    }

    /// Hands it out as it is stored.
    pub fn save(&self) {
        let text = match &self.stored {
            Stored::Nothing => return,
            Stored::Job(record) => &record.text,
            Stored::Foreign(text) => text,
        };
        // A browser that hands out no files shows that itself.
        let _ = hand_out(files::STORED_FILE, "application/json", text);
    }
}

/// The jobs that are kept, as last looked at.
#[derive(Clone, Copy)]
pub(super) struct Shelf {
    /// Whether it is shown.
    pub is_open: RwSignal<bool>,
    /// The kept jobs, the newest first; none until they were looked at.
    pub entries: RwSignal<Option<Vec<Entry>>>,
    /// What was deleted last and can be put back.
    pub deleted: RwSignal<Option<Entry>>,
    /// What became of the last act; empty for nothing to say.
    pub said: RwSignal<String>,
}

impl Shelf {
    pub fn new() -> Self {
        Self {
            is_open: RwSignal::new(false),
            entries: RwSignal::new(None),
            deleted: RwSignal::new(None),
            said: RwSignal::new(String::new()),
        }
    }

    /// Shows it, with what is kept now.
    pub fn open(self) {
        self.said.set(String::new());
        self.deleted.set(None);
        self.is_open.set(true);
        self.look();
    }

    /// Looks at what is kept, without showing it.
    pub fn look(self) {
        self.act(async |_| Ok(()));
    }

    /// Opens a kept job in the place of the one on the page.
    pub fn take(self, store: Store, entry: &Entry) {
        let (Stored::Job(record), Some(plan)) = (&entry.stored, &entry.plan) else {
            return;
        };
        if store.keeper.key().as_ref() != Some(&entry.key) {
            store.keeper.opens_next(entry.key.clone(), record.clone());
            store.act(Action::Open(Box::new((**plan).clone())));
        }
        self.is_open.set(false);
    }

    /// Gives a kept job another name.
    pub fn rename(self, store: Store, entry: Entry, title: String) {
        let Some(plan) = &entry.plan else {
            return;
        };
        if title == plan.title {
            return;
        }
        if store.keeper.key().as_ref() == Some(&entry.key) {
            let note = store.plan_now().note.clone();
            store.act(Action::SetTitle { title, note });
            return;
        }
        let record = record_of(&Plan {
            title,
            ..(**plan).clone()
        });
        self.act(async move |storage| {
            let over = Over::Only(entry.stored);
            storage.write(&entry.key, &over, &record, false).await?;
            store.keeper.tell(&entry.key);
            Ok(())
        });
    }

    /// Makes another job like it.
    pub fn copy(self, entry: &Entry) {
        let Some(plan) = &entry.plan else {
            return;
        };
        let title = format!("{} ({})", plan.title, shelf_text(ShelfLabel::CopyOf));
        let record = record_of(&Plan {
            title,
            ..(**plan).clone()
        });
        self.act(async move |storage| add(storage, &record).await);
    }

    /// Takes a kept job out, so that it can be put back.
    pub fn delete(self, entry: Entry) {
        self.said.set(String::new());
        self.act(async move |storage| {
            storage.remove(&entry.key, &entry.stored).await?;
            self.deleted.set(Some(entry));
            Ok(())
        });
    }

    /// Puts back what was deleted last.
    pub fn put_back(self) {
        let Some(entry) = self.deleted.get_untracked() else {
            return;
        };
        let Stored::Job(record) = entry.stored else {
            return;
        };
        self.act(async move |storage| {
            let nothing = Over::Only(Stored::Nothing);
            storage.write(&entry.key, &nothing, &record, false).await?;
            self.deleted.set(None);
            Ok(())
        });
    }

    /// Hands out all jobs that can be read as one file.
    pub fn save_all(self) {
        let text = self.entries.with_untracked(|entries| {
            let plans = entries
                .iter()
                .flatten()
                .filter_map(|entry| entry.plan.as_deref());
            write_jobs(plans)
        });
        let name = files::file_name(&shelf_text(ShelfLabel::FileName), "json");
        // A browser that hands out no files shows that itself.
        let _ = hand_out(&name, "application/json", &text);
    }

    /// Adds the jobs of a file, each as a job of its own.
    pub fn add_from(self, store: Store, file: File) {
        self.act(async move |storage| {
            let jobs = match bytes_of(&file).await.map(|bytes| read_jobs(&bytes)) {
                Some(Ok(jobs)) => jobs,
                Some(Err(error)) => {
                    self.said.set(store.say(Message::File(&error)));
                    return Ok(());
                }
                None => {
                    self.said.set(label_text(Label::FileNotRead));
                    return Ok(());
                }
            };
            let (mut added, mut refused) = (0, 0);
            for job in jobs {
                if let Ok(plan) = job {
                    add(storage, &record_of(&plan)).await?;
                    added += 1;
                } else {
                    refused += 1;
                }
            }
            let said = format!("{}: {added}.", shelf_text(ShelfLabel::Added));
            let also = format!(" {}: {refused}.", shelf_text(ShelfLabel::NotRead));
            self.said.set(if refused > 0 { said + &also } else { said });
            Ok(())
        });
    }

    /// Does something with the storage, then looks at what is kept now.
    fn act(self, act: impl AsyncFnOnce(&JobStore) -> Result<(), Fault> + 'static) {
        spawn_local(async move {
            let failed = |fault: Fault| {
                self.said.set(shelf_text(match fault {
                    Fault::Occupied => ShelfLabel::ChangedElsewhere,
                    _ => ShelfLabel::StorageFailed,
                }));
            };
            let storage = match JobStore::open().await {
                Ok(storage) => storage,
                Err(fault) => return failed(fault),
            };
            if let Err(fault) = act(&storage).await {
                failed(fault);
            }
            // After a failure too: some of it may be done, or another tab has done something else.
            match storage.all().await {
                Ok(jobs) => {
                    let mut entries: Vec<Entry> = jobs.into_iter().map(Entry::of).collect();
                    entries.sort_by(|a, b| b.stored_at_ms().total_cmp(&a.stored_at_ms()));
                    self.entries.set(Some(entries));
                }
                Err(fault) => failed(fault),
            }
        });
    }
}

async fn add(storage: &JobStore, record: &Record) -> Result<(), Fault> {
    let nothing = Over::Only(Stored::Nothing);
    storage.write(&JobKey::new(), &nothing, record, false).await
}

fn record_of(plan: &Plan) -> Record {
    Record {
        text: write(plan),
        stored_at_ms: js_sys::Date::now(),
    }
}

/// A fixed text about the jobs that are kept.
pub(super) fn shelf_text(label: ShelfLabel) -> String {
    label_text(Label::Shelf(label))
}
