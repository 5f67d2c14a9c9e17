//! The page's one store: the editor's state, what is worked out from it, and the way to act.

use super::band_client::Banded;
use super::band_protocol::SiteAnswer;
use super::keep::Opening;
use super::keeper::Keeper;
use super::panic_report::tell_done;
use super::steady::Steady;
use crate::editor::{self, Action, State, Tool, View, update};
use crate::plan::{ElementId, Plan, ThingId};
use crate::report::the_example;
use crate::report::words::{ActionName, CodeLabel, Label, Language, Message, SideLabel, say};
use crate::report::{Figures, figures};
use crate::scene::{Mark, scene};
use crate::system::{Assessment, Band, BandDetail, Bands, ElementKind};
use crate::units::{Length, Shown, UnitSystem};
use leptos::prelude::*;
use std::collections::BTreeSet;
use std::sync::Arc;

/// Everything worked out from one version of the plan.
pub(super) struct Results {
    pub plan: Arc<Plan>,
    pub figures: Figures,
    pub assessment: Assessment,
    /// The marks from back to front.
    pub marks: Vec<Mark>,
}

/// A shared value that is the same only where it is the very same one: versions are compared
/// without looking inside.
pub(super) struct Version<T>(pub Arc<T>);

impl<T> Clone for Version<T> {
    fn clone(&self) -> Self {
        Self(Arc::clone(&self.0))
    }
}

impl<T> PartialEq for Version<T> {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> core::ops::Deref for Version<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.0
    }
}

/// The run's nominal diameter, from which the drawing's texts keep clear.
#[derive(Clone, Copy)]
pub(super) struct Diameter(pub Memo<Length>);

impl Diameter {
    pub fn of(store: &Store) -> Self {
        let results = store.results;
        Self(Memo::new(move |_| {
            results.with(|results| results.plan.run.diameter)
        }))
    }
}

/// What the worker answered last, the visit that it is asked about, and whether figures are shown.
#[derive(Clone, Copy)]
struct Worked {
    banded: RwSignal<Option<Banded>, LocalStorage>,
    /// Whether something is dragged.
    dragging: Memo<bool>,
    open_visit: RwSignal<Option<Arc<str>>>,
    /// Whether figures are hidden while a class guesses.
    hides_figures: RwSignal<bool>,
}

/// What a component needs; small enough to be copied about.
#[derive(Clone, Copy)]
pub(super) struct Store {
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
    /// The selected element.
    pub selection: RwSignal<Option<ElementId>>,
    /// The selected things about the run.
    pub things: RwSignal<BTreeSet<ThingId>>,
    /// The tool in hand.
    pub tool: RwSignal<Tool>,
    /// The leg or riser whose length is typed on the drawing.
    pub typed_on_drawing: RwSignal<Option<ElementId>>,
    /// The element under the pointer, on the drawing or in the ledger.
    pub hovered: RwSignal<Option<ElementId>>,
    worked: StoredValue<Worked>,
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
        let results = RwSignal::new(Version(Arc::new(work_out(Arc::clone(&state.plan)))));
        let view = RwSignal::new(state.view);
        let units = RwSignal::new(state.units);
        let selection = RwSignal::new(state.selection.clone());
        let things = RwSignal::new(state.things.clone());
        let tool = RwSignal::new(state.tool);
        let state = RwSignal::new(state);
        let dragging = Memo::new(move |_| state.with(|state| state.gesture.is_some()));
        let steady = Steady::new(results, dragging);
        let plan = Memo::new(move |_| steady.with(|results| Version(Arc::clone(&results.plan))));
        Self {
            state,
            results,
            steady,
            plan,
            view,
            units,
            selection,
            things,
            tool,
            typed_on_drawing: RwSignal::new(None),
            hovered: RwSignal::new(None),
            adds: RwSignal::new(false),
            worked: StoredValue::new(Worked {
                banded: RwSignal::new_local(None),
                dragging,
                open_visit: RwSignal::new(None),
                hides_figures: RwSignal::new(false),
            }),
            announcement: RwSignal::new(String::new()),
            trouble: RwSignal::new(String::new()),
            letter_scale: RwSignal::new(1.0),
            shows_keys: RwSignal::new(false),
            keeper,
        }
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
                        self.open_visit().set(None);
                    }
                    self.keeper.keep(name, self.plan_now());
                    self.trouble.set(String::new());
                    self.announcement
                        .set(if self.hides_figures().get_untracked() {
                            label_text(Label::Side(SideLabel::GuessHint))
                        } else {
                            self.new_totals()
                        });
                }
                editor::Effect::Refuse(refusal) => {
                    if opens {
                        self.keeper.nothing_comes();
                    }
                    let why = self.say(Message::Refusal(&refusal));
                    self.trouble
                        .set(format!("{why} {}", label_text(Label::PlanKept)));
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
            set_new(self.selection, &state.selection);
            set_new(self.things, &state.things);
            set_new(self.tool, &state.tool);
            let is_old = self
                .results
                .with_untracked(|results| !Arc::ptr_eq(&results.plan, &state.plan));
            if is_old {
                let results = work_out(Arc::clone(&state.plan));
                self.results.set(Version(Arc::new(results)));
            }
        });
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

    /// A message in the page's language and units.
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

    /// Looks at the bands, where they belong to the plan as it is now: those of another version are
    /// not shown beside this one's figures.
    pub fn with_bands<T>(
        self,
        look: impl FnOnce(&Bands, Option<&BandDetail>) -> Option<T>,
    ) -> Option<T> {
        let plan = self.held();
        self.banded().with(|banded| {
            let banded = banded
                .as_ref()
                .filter(|banded| Arc::ptr_eq(&banded.plan, &plan))?;
            look(banded.bands.as_ref()?, banded.detail.as_ref())
        })
    }

    /// The visit that is shown and changed; none for the newest.
    pub fn open_visit(self) -> RwSignal<Option<Arc<str>>> {
        self.worked.with_value(|worked| worked.open_visit)
    }

    /// Whether something is dragged.
    pub fn is_dragging(self) -> bool {
        self.worked.with_value(|worked| worked.dragging).get()
    }

    /// Whether figures are hidden while a class guesses: nothing may read them aloud.
    pub fn hides_figures(self) -> RwSignal<bool> {
        self.worked.with_value(|worked| worked.hides_figures)
    }

    /// What the worker answered last.
    pub fn banded(self) -> RwSignal<Option<Banded>, LocalStorage> {
        self.worked.with_value(|worked| worked.banded)
    }

    /// What the open visit comes to, where that belongs to the plan as it is now.
    pub fn site(self) -> Option<Arc<SiteAnswer>> {
        let (plan, visit) = (self.held(), self.open_visit().get());
        self.banded().with(|banded| {
            let banded = banded.as_ref()?;
            let is_now = Arc::ptr_eq(&banded.plan, &plan) && banded.visit == visit;
            banded.site.clone().filter(|_| is_now)
        })
    }

    /// A band in the page's language and units.
    pub fn say_band(self, band: Band, show: impl Fn(UnitSystem, f64) -> Shown) -> String {
        let units = self.units.get();
        let low = show(units, band.low).figure;
        let high = show(units, band.high).to_string();
        self.say(Message::Band {
            low: &low,
            high: &high,
        })
    }

    fn new_totals(self) -> String {
        self.results.with_untracked(|results| {
            let units = self.units.get_untracked();
            let (airflow, back_pressure) = match &results.figures.totals {
                Some(totals) => (
                    units.airflow(totals.airflow).to_string(),
                    units.pressure(totals.back_pressure).to_string(),
                ),
                None => return label_text(Label::NoAirflowFigure),
            };
            let message = Message::NewTotals {
                airflow: &airflow,
                back_pressure: &back_pressure,
            };
            say(Language::English, units, message)
        })
    }
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

pub(super) fn work_out(plan: Arc<Plan>) -> Results {
    let (figures, assessment) = figures(&plan);
    let ledger = assessment.working.as_ref().map(|(_, ledger)| ledger);
    let marks = scene(&plan, ledger);
    Results {
        plan,
        figures,
        assessment,
        marks,
    }
}
