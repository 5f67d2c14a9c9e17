//! The page's one store: the editor's state, what is worked out from it, and the way to act.

use super::band_client::Banded;
use super::band_protocol::SiteAnswer;
use super::keep::Opening;
use super::keeper::Keeper;
use super::panic_report::tell_done;
use super::results::{Results, Version, work_out};
use super::steady::Steady;
use crate::editor::{self, Action, State, Tool, View, update};
use crate::plan::{ElementId, Plan, ThingId};
use crate::report::the_example;
use crate::report::words::{ActionName, CodeLabel, FirstWords, Label, Language, Message, say};
use crate::scene::{Draft, Guide};
use crate::system::{Band, BandDetail, Bands, ElementKind};
use crate::units::{Length, Shown, UnitSystem};
use leptos::prelude::*;
use std::collections::BTreeSet;
use std::sync::Arc;

/// What a component needs. It lives as long as the page, so that each closure holds no more than the way
/// to it.
#[derive(Clone, Copy)]
pub(super) struct Store(&'static Signals);

impl core::ops::Deref for Store {
    type Target = Signals;
    fn deref(&self) -> &Signals {
        self.0
    }
}

/// The signals that the page follows.
pub(super) struct Signals {
    state: RwSignal<State>,
    /// What is worked out from the plan as the hand has it now.
    pub results: RwSignal<Version<Results>>,
    /// The same for all but the drawing and the totals.
    pub steady: Steady,
    /// The plan that these belong to.
    pub plan: Memo<Version<Plan>>,
    /// The drawing's window on the plan.
    pub view: RwSignal<View>,
    /// The units shown.
    pub units: RwSignal<UnitSystem>,
    /// The run's nominal diameter.
    pub diameter: RwSignal<Length>,
    /// The selected element.
    pub selection: RwSignal<Option<ElementId>>,
    /// The selected things about the run.
    pub things: RwSignal<BTreeSet<ThingId>>,
    /// The tool in hand.
    pub tool: RwSignal<Tool>,
    /// The leg or riser whose length is typed on the drawing.
    pub typed_on_drawing: RwSignal<Option<ElementId>>,
    /// What is being drawn and not yet in the plan.
    pub draft: RwSignal<Option<Draft>>,
    /// The lines that what is drawn or dragged has settled on.
    pub guides: RwSignal<Vec<Guide>>,
    /// The element under the pointer, on the drawing or in the ledger.
    pub hovered: RwSignal<Option<ElementId>>,
    /// Whether something is dragged.
    dragging: RwSignal<bool>,
    /// The steps that undo and redo would take.
    pub steps: RwSignal<[Option<ActionName>; 2]>,
    /// What the worker answered last.
    banded: RwSignal<Option<Banded>, LocalStorage>,
    /// Whether that belongs to the plan as the hand has it now.
    fits: RwSignal<bool>,
    /// Whether it belongs to the plan that the tables show.
    fits_tables: Memo<bool>,
    /// The visit that is shown and changed; none for the newest.
    pub open_visit: RwSignal<Option<Arc<str>>>,
    /// Whether figures are hidden while a class guesses: nothing may read them aloud.
    pub hides_figures: RwSignal<bool>,
    /// Whether a press on a thing adds it to what is selected, as with Shift held.
    pub adds: RwSignal<bool>,
    /// What is read aloud.
    pub announcement: RwSignal<String>,
    /// What went wrong last; empty for nothing.
    pub trouble: RwSignal<String>,
    /// How many times larger than drawn the style sheets make what keeps its size on the drawing.
    pub letter_scale: RwSignal<f64>,
    /// Whether the list of keys is open.
    pub shows_keys: RwSignal<bool>,
    /// Keeps the open job in the browser.
    pub keeper: Keeper,
}

impl Store {
    /// A store that shows the kept job, or else the example.
    pub fn new(mut opening: Opening) -> Self {
        let plan = opening.plan.take();
        let state = State::new(plan.unwrap_or_else(the_example));
        let keeper = Keeper::new(opening, &state.plan);
        let results = RwSignal::new(Version(Arc::new(work_out(Arc::clone(&state.plan), None))));
        let view = RwSignal::new(state.view);
        let units = RwSignal::new(state.units);
        let diameter = RwSignal::new(state.plan.run.diameter);
        let selection = RwSignal::new(state.selection.clone());
        let things = RwSignal::new(state.things.clone());
        let tool = RwSignal::new(state.tool);
        let steps = RwSignal::new(next_steps(&state));
        let dragging = RwSignal::new(false);
        let state = RwSignal::new(state);
        let steady = Steady::new(results, dragging);
        let plan = Memo::new(move |_| steady.with(|results| Version(Arc::clone(&results.plan))));
        let banded = RwSignal::new_local(None::<Banded>);
        let fits_tables = Memo::new(move |_| {
            banded.with(|banded| {
                let plan = banded.as_ref().map(|banded| &banded.plan);
                plan.is_some_and(|plan| steady.with(|results| Arc::ptr_eq(plan, &results.plan)))
            })
        });
        Self(Box::leak(Box::new(Signals {
            state,
            results,
            steady,
            plan,
            view,
            units,
            diameter,
            selection,
            things,
            tool,
            draft: RwSignal::new(None),
            guides: RwSignal::default(),
            typed_on_drawing: RwSignal::new(None),
            hovered: RwSignal::new(None),
            adds: RwSignal::new(false),
            dragging,
            steps,
            banded,
            fits_tables,
            fits: RwSignal::new(false),
            open_visit: RwSignal::new(None),
            hides_figures: RwSignal::new(false),
            announcement: RwSignal::new(String::new()),
            trouble: RwSignal::new(String::new()),
            letter_scale: RwSignal::new(1.0),
            shows_keys: RwSignal::new(false),
            keeper,
        })))
    }

    /// Takes an action and does what comes of it.
    pub fn act(self, action: Action) {
        let opens = matches!(action, Action::Open(_) | Action::Exchange(_));
        let effects = self
            .state
            .try_update(|state| update(state, action))
            .unwrap_or_default();
        self.follow_state();
        if opens && effects.is_empty() {
            self.keeper.keep_the_same(self.plan_now());
        }
        for effect in effects {
            match effect {
                editor::Effect::Announce(name) => {
                    tell_done(name);
                    if name == ActionName::OpenPlan {
                        self.open_visit.set(None);
                    }
                    self.keeper.keep(name, self.plan_now());
                    self.trouble.set(String::new());
                    self.announcement
                        .set(if self.hides_figures.get_untracked() {
                            fixed!(Side::SideLabel::GuessHint).to_owned()
                        } else {
                            self.new_totals()
                        });
                }
                editor::Effect::Refuse(refusal) => {
                    if opens {
                        self.keeper.nothing_comes();
                    }
                    let why = self.words_now().refusal(&refusal);
                    self.trouble.set(format!("{why} {}", fixed!(PlanKept)));
                }
            }
        }
    }

    /// Hands on what of the state is new. Signals of their own rather than memos of the state: a
    /// memo's followers are all asked again at each change of the state, and a drag changes it
    /// sixty times a second.
    fn follow_state(self) {
        self.state.with_untracked(|state| {
            set_new(self.view, &state.view);
            set_new(self.units, &state.units);
            set_new(self.diameter, &state.plan.run.diameter);
            set_new(self.selection, &state.selection);
            set_new(self.things, &state.things);
            set_new(self.tool, &state.tool);
            set_new(self.steps, &next_steps(state));
            set_new(self.dragging, &state.gesture.is_some());
            set_new(self.draft, &state.draft());
            set_new(self.guides, &state.guides);
            let is_old = self
                .results
                .with_untracked(|results| !Arc::ptr_eq(&results.plan, &state.plan));
            if is_old {
                let results = self
                    .results
                    .with_untracked(|before| work_out(Arc::clone(&state.plan), Some(before)));
                self.results.set(Version(Arc::new(results)));
                self.look_whether_it_fits();
            }
        });
    }

    /// A signal of its own: what shows bands is not asked anew with each move of a drag.
    fn look_whether_it_fits(self) {
        let fits = self.banded.with_untracked(|banded| {
            let plan = banded.as_ref().map(|banded| &banded.plan);
            plan.is_some_and(|plan| {
                self.results
                    .with_untracked(|results| Arc::ptr_eq(plan, &results.plan))
            })
        });
        set_new(self.fits, &fits);
    }

    /// Takes what the worker answered.
    pub fn take_answer(self, take: impl FnOnce(&mut Option<Banded>)) {
        self.banded.update(take);
        self.look_whether_it_fits();
    }

    /// Looks at the state; follows its changes where it is called in a reactive place.
    pub fn with_state<T>(self, look: impl FnOnce(&State) -> T) -> T {
        self.state.with(look)
    }

    /// Looks at the state once.
    pub fn with_state_now<T>(self, look: impl FnOnce(&State) -> T) -> T {
        self.state.with_untracked(look)
    }

    /// The plan as the hand has it now; follows it.
    pub fn held(self) -> Arc<Plan> {
        self.results.with(|results| Arc::clone(&results.plan))
    }

    /// The plan as it is now, looked at once.
    pub fn plan_now(self) -> Arc<Plan> {
        self.with_state_now(|state| Arc::clone(&state.plan))
    }

    /// The words of the first look, in the page's language and units.
    pub fn words(self) -> FirstWords {
        FirstWords {
            language: Language::English,
            units: self.units.get(),
        }
    }

    /// The same as of now.
    fn words_now(self) -> FirstWords {
        FirstWords {
            language: Language::English,
            units: self.units.get_untracked(),
        }
    }

    /// A message in the page's language and units. The program's first file says none: with one it would
    /// carry the words of all.
    pub fn say(self, message: Message<'_>) -> String {
        say(Language::English, self.units.get(), message)
    }

    /// An element's name, and its size where it has one.
    pub fn say_element(self, kind: &ElementKind) -> String {
        let name = self.say(Message::Element(kind));
        let size = self.say(Message::ElementSize(kind));
        if size.is_empty() {
            name
        } else {
            format!("{name}, {size}")
        }
    }

    /// Looks at the bands, where they belong to the plan as the hand has it now: those of another
    /// version are not shown beside this one's figures.
    pub fn with_bands<T>(
        self,
        look: impl FnOnce(&Bands, Option<&BandDetail>) -> Option<T>,
    ) -> Option<T> {
        if self.fits.get() {
            self.with_banded(look)
        } else {
            None
        }
    }

    /// The same for the tables, which may lag behind the hand.
    pub fn with_table_bands<T>(
        self,
        look: impl FnOnce(&Bands, Option<&BandDetail>) -> Option<T>,
    ) -> Option<T> {
        if self.fits_tables.get() {
            self.with_banded(look)
        } else {
            None
        }
    }

    fn with_banded<T>(
        self,
        look: impl FnOnce(&Bands, Option<&BandDetail>) -> Option<T>,
    ) -> Option<T> {
        self.banded.with(|banded| {
            let banded = banded.as_ref()?;
            look(banded.bands.as_ref()?, banded.detail.as_ref())
        })
    }

    /// Whether something is dragged.
    pub fn is_dragging(self) -> bool {
        self.dragging.get()
    }

    /// What the open visit comes to, where that belongs to the plan that the tables show.
    pub fn site(self) -> Option<Arc<SiteAnswer>> {
        let (fits, visit) = (self.fits_tables.get(), self.open_visit.get());
        self.banded.with(|banded| {
            let banded = banded.as_ref()?;
            let is_now = fits && banded.visit == visit;
            banded.site.clone().filter(|_| is_now)
        })
    }

    /// A band in the page's language and units.
    pub fn say_band(self, band: Band, show: impl Fn(UnitSystem, f64) -> Shown) -> String {
        let units = self.units.get();
        let low = show(units, band.low).figure;
        let high = show(units, band.high).to_string();
        self.words().band(&low, &high)
    }

    fn new_totals(self) -> String {
        self.results.with_untracked(|results| {
            let units = self.units.get_untracked();
            let (airflow, back_pressure) = match &results.figures.totals {
                Some(totals) => (
                    units.airflow(totals.airflow).to_string(),
                    units.pressure(totals.back_pressure).to_string(),
                ),
                None => return fixed!(NoAirflowFigure).to_owned(),
            };
            self.words_now().new_totals(&airflow, &back_pressure)
        })
    }
}

/// The steps that undo and redo would take.
fn next_steps(state: &State) -> [Option<ActionName>; 2] {
    [state.history.next_undo(), state.history.next_redo()]
}

fn set_new<T: Clone + PartialEq + Send + Sync + 'static>(signal: RwSignal<T>, value: &T) {
    if signal.with_untracked(|known| known != value) {
        signal.set(value.clone());
    }
}

/// A fixed text, which hangs on no units.
pub(super) fn label_text(label: Label) -> String {
    say(
        Language::English,
        UnitSystem::default(),
        Message::Label(label),
    )
}

/// A fixed text of the code check.
pub(super) fn code_text(label: CodeLabel) -> String {
    say(
        Language::English,
        UnitSystem::default(),
        Message::CodeLabel(label),
    )
}
