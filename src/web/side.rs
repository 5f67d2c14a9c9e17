//! Two runs side by side: the open one, and another that stays as it is until the two change places.

use super::keep_store::{JobKey, Record};
use super::results::{Results, Version, work_out};
use super::shelf::shelf_text;
use super::side_bands::SideBands;
use super::side_guess::Guess;
use super::soon::once_laid_out;
use super::store::Store;
use crate::editor::{Action, Tool};
use crate::plan::{Bounds, LessonText, Plan};
use crate::report::words::ShelfLabel;
use leptos::prelude::*;
use std::sync::Arc;

/// What the other run belongs to once it is opened for the first time.
#[derive(Clone)]
enum Belongs {
    /// A job of its own, kept once it is changed.
    ItsOwn,
    /// A kept job.
    Kept(JobKey, Record),
}

/// The two runs.
#[derive(Clone, Copy)]
pub(super) struct Side {
    /// Whether they are shown.
    pub is_open: RwSignal<bool>,
    /// The one that is not changed.
    pub other: RwSignal<Option<Version<Results>>>,
    /// Whether the open run is the first of the two.
    pub open_is_first: RwSignal<bool>,
    /// The lesson that the two belong to.
    pub lesson: RwSignal<Option<Arc<LessonText>>>,
    /// What a class guesses.
    pub guess: Guess,
    /// How sure the difference is.
    pub bands: SideBands,
    /// What became of the last press; empty for nothing to say.
    pub said: RwSignal<String>,
    belongs: StoredValue<Option<Belongs>, LocalStorage>,
}

impl Side {
    pub fn start(store: Store) -> Self {
        let side = Self {
            is_open: RwSignal::new(false),
            other: RwSignal::new(None),
            open_is_first: RwSignal::new(false),
            lesson: RwSignal::new(None),
            guess: Guess::new(),
            bands: SideBands::new(),
            said: RwSignal::new(String::new()),
            belongs: StoredValue::new_local(None),
        };
        // The two change places where the other one is opened, by a press or by an undo.
        Effect::new(move |before: Option<Arc<Plan>>| {
            if store.is_dragging()
                && let Some(before) = before
            {
                return before;
            }
            let now = store.held();
            let is_other = side.other.with_untracked(|other| {
                other.as_ref().is_some_and(|it| Arc::ptr_eq(&it.plan, &now))
            });
            if let Some(before) = before.filter(|_| is_other) {
                side.other
                    .set(Some(Version(Arc::new(work_out(before, None)))));
                side.open_is_first.update(|is_first| *is_first = !*is_first);
            }
            now
        });
        Effect::new(move |_| {
            let (is_open, hides) = (side.is_open.get(), side.hides());
            store.hides_figures.set(hides);
            let Some(root) = document().document_element() else {
                return;
            };
            let is_first = side.open_is_first.get();
            let classes = [
                ("side-open", is_open),
                ("side-hides", hides),
                ("side-open-first", is_first),
            ];
            for (class, is_so) in classes {
                // A class of plain letters is never refused.
                let _ = root.class_list().toggle_with_force(class, is_so);
            }
        });
        side
    }

    /// Whether the second run's figures are hidden.
    pub fn hides(self) -> bool {
        self.is_open.get() && self.guess.hides()
    }

    /// Shows the two, or the open run alone again.
    pub fn turn(self, store: Store) {
        if self.is_open.get_untracked() {
            self.end(store);
        } else {
            self.begin(store);
        }
    }

    /// Shows the two: the open run and, where there is no other yet, a copy of it as it is now.
    pub fn begin(self, store: Store) {
        if self.other.with_untracked(Option::is_none) {
            self.copy(store);
        }
        store.act(Action::TakeTool(Tool::Pick));
        self.is_open.set(true);
        self.show_both(store);
    }

    /// The open run alone again; the other one is laid down.
    pub fn end(self, store: Store) {
        self.is_open.set(false);
        self.other.set(None);
        self.lesson.set(None);
        self.guess.lay_down();
        once_laid_out(move || store.act(Action::ShowAll));
    }

    /// A copy of the open run, as it is now, is the first.
    pub fn copy(self, store: Store) {
        let mut plan = (*store.plan_now()).clone();
        plan.title = format!("{} ({})", plan.title, shelf_text(ShelfLabel::CopyOf));
        self.set_first(plan, Belongs::ItsOwn);
    }

    /// A kept job is the first.
    pub fn take_kept(self, store: Store, key: JobKey, record: Record, plan: Plan) {
        self.set_first(plan, Belongs::Kept(key, record));
        self.show_both(store);
    }

    /// A lesson's two runs: neither is kept until it is changed.
    pub fn take_lesson(self, store: Store, first: Plan, second: Plan, text: LessonText) {
        store.keeper.opens_as_it_comes();
        store.act(Action::Open(Box::new(second)));
        self.set_first(first, Belongs::ItsOwn);
        self.guess.ask(text.asks);
        self.lesson.set(Some(Arc::new(text)));
        self.show_both(store);
    }

    fn set_first(self, plan: Plan, belongs: Belongs) {
        self.said.set(String::new());
        self.lesson.set(None);
        self.guess.lay_down();
        self.belongs.set_value(Some(belongs));
        self.open_is_first.set(false);
        self.other
            .set(Some(Version(Arc::new(work_out(Arc::new(plan), None)))));
    }

    /// The other run is opened to be changed, and the open one stays as it is.
    pub fn exchange(self, store: Store) {
        let Some(other) = self.other.get_untracked() else {
            return;
        };
        // From then on the keeper knows it.
        match self.belongs.try_update_value(Option::take).flatten() {
            Some(Belongs::ItsOwn) => store.keeper.opens_as_it_comes(),
            Some(Belongs::Kept(key, record)) => store.keeper.opens_next(key, record),
            None => {}
        }
        store.act(Action::Exchange(Arc::clone(&other.plan)));
    }

    /// Looks at the first and at the second, once their figures rest; none without another.
    pub fn with_both<T>(
        self,
        store: Store,
        look: impl FnOnce(&Results, &Results) -> T,
    ) -> Option<T> {
        let is_first = self.open_is_first.get();
        self.other.with(|other| {
            let other = other.as_ref()?;
            Some(store.steady.with(|open| {
                if is_first {
                    look(open, other)
                } else {
                    look(other, open)
                }
            }))
        })
    }

    /// One scale for both: as large as the larger of the two allows.
    fn show_both(self, store: Store) {
        let larger = self.other.with_untracked(|other| {
            let size = |plan: &Plan| Bounds::of(plan).size();
            let (width, height) = size(&store.plan_now());
            other.as_ref().map_or(1.0, |other| {
                let (other_width, other_height) = size(&other.plan);
                (other_width / width).max(other_height / height).max(1.0)
            })
        });
        show_all_once_laid_out(store, larger);
    }
}

/// Shows the whole plan once the page is laid out anew, smaller by `times`.
fn show_all_once_laid_out(store: Store, times: f64) {
    /// Half a page leaves a room's sizes no place beside it, unless it is drawn a little smaller.
    const ROOM: f64 = 1.12;
    // The drawing has its new size a frame later.
    once_laid_out(move || {
        store.act(Action::ShowAll);
        let (width, height) = store.view.get_untracked().size;
        store.act(Action::Zoom {
            x: width / 2.0,
            y: height / 2.0,
            factor: 1.0 / (times * ROOM),
        });
    });
}
