//! The page's one store: the editor's state, what is worked out from it, and the way to act.

use super::band_client::{self, Banded};
use super::band_protocol::SiteAnswer;
use super::keep::{Keeper, Opening};
use super::steady::Steady;
use crate::editor::{self, Action, State, Tool, View, update};
use crate::plan::{ElementId, Plan, ThingId, example};
use crate::report::words::{ActionName, CodeLabel, Label, Language, Message, say};
use crate::report::{Figures, figures};
use crate::scene::{Mark, scene};
use crate::system::{Assessment, Band, BandDetail, Bands};
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
        let plan = store.plan;
        Self(Memo::new(move |_| plan.with(|plan| plan.run.diameter)))
    }
}

/// What the worker answered last, and the visit that it is asked about.
#[derive(Clone, Copy)]
struct Worked {
    banded: ReadSignal<Option<Banded>, LocalStorage>,
    open_visit: RwSignal<Option<Arc<str>>>,
}

/// What a component needs; small enough to be copied about.
#[derive(Clone, Copy)]
pub(super) struct Store {
    state: RwSignal<State>,
    /// The plan.
    pub plan: Memo<Version<Plan>>,
    /// What is worked out from it.
    pub results: Memo<Version<Results>>,
    /// The same for what may wait until the hand rests.
    pub steady: Steady,
    /// The drawing's window on the plan.
    pub view: Memo<View>,
    /// The units shown.
    pub units: Memo<UnitSystem>,
    /// The selected element.
    pub selection: Memo<Option<ElementId>>,
    /// The selected things about the run.
    pub things: Memo<BTreeSet<ThingId>>,
    /// The tool in hand.
    pub tool: Memo<Tool>,
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
        let state = RwSignal::new(State::new(plan.unwrap_or_else(the_example)));
        let plan = Memo::new(move |_| state.with(|state| Version(Arc::clone(&state.plan))));
        let results = Memo::new(move |_| Version(Arc::new(work_out(plan.get().0))));
        let view = Memo::new(move |_| state.with(|state| state.view));
        let units = Memo::new(move |_| state.with(|state| state.units));
        let selection = Memo::new(move |_| state.with(|state| state.selection.clone()));
        let things = Memo::new(move |_| state.with(|state| state.things.clone()));
        let tool = Memo::new(move |_| state.with(|state| state.tool));
        let dragging = Memo::new(move |_| state.with(|state| state.gesture.is_some()));
        let steady = Steady::new(results, dragging);
        let (ask_for_bands, banded) = band_client::start();
        let open_visit = RwSignal::new(None);
        Effect::new(move |_| {
            // The band never runs while something is dragged.
            let (plan, visit) = (plan.get(), open_visit.get());
            if !dragging.get() {
                ask_for_bands((plan.0, visit));
            }
        });
        Self {
            state,
            plan,
            results,
            steady,
            view,
            units,
            selection,
            things,
            tool,
            typed_on_drawing: RwSignal::new(None),
            hovered: RwSignal::new(None),
            adds: RwSignal::new(false),
            worked: StoredValue::new(Worked { banded, open_visit }),
            announcement: RwSignal::new(String::new()),
            trouble: RwSignal::new(String::new()),
            letter_scale: RwSignal::new(1.0),
            shows_keys: RwSignal::new(false),
            keeper: Keeper::new(opening),
        }
    }

    /// Takes an action and does what comes of it.
    pub fn act(self, action: Action) {
        let effects = self
            .state
            .try_update(|state| update(state, action))
            .unwrap_or_default();
        for effect in effects {
            match effect {
                editor::Effect::Announce(name) => {
                    if name == ActionName::OpenPlan {
                        self.open_visit().set(None);
                    }
                    self.keeper.keep(name, self.plan_now());
                    self.trouble.set(String::new());
                    self.announcement.set(self.new_totals());
                }
                editor::Effect::Refuse(refusal) => {
                    let why = self.say(Message::Refusal(&refusal));
                    self.trouble
                        .set(format!("{why} {}", label_text(Label::PlanKept)));
                }
            }
        }
    }

    /// Looks at the state; follows its changes where it is called in a reactive place.
    pub fn with_state<T>(self, look: impl FnOnce(&State) -> T) -> T {
        self.state.with(look)
    }

    /// Looks at the state once.
    pub fn with_state_now<T>(self, look: impl FnOnce(&State) -> T) -> T {
        self.state.with_untracked(look)
    }

    /// The plan as it is now.
    pub fn plan_now(self) -> Arc<Plan> {
        self.with_state_now(|state| Arc::clone(&state.plan))
    }

    /// A message in the page's language and units.
    pub fn say(self, message: Message<'_>) -> String {
        say(Language::English, self.units.get(), message)
    }

    /// Looks at the bands, where they belong to the plan as it is now: those of another version are
    /// not shown beside this one's figures.
    pub fn with_bands<T>(
        self,
        look: impl FnOnce(&Bands, Option<&BandDetail>) -> Option<T>,
    ) -> Option<T> {
        let plan = self.plan.get();
        self.banded().with(|banded| {
            let banded = banded
                .as_ref()
                .filter(|banded| Arc::ptr_eq(&banded.plan, &plan.0))?;
            look(banded.bands.as_ref()?, banded.detail.as_ref())
        })
    }

    /// The visit that is shown and changed; none for the newest.
    pub fn open_visit(self) -> RwSignal<Option<Arc<str>>> {
        self.worked.with_value(|worked| worked.open_visit)
    }

    fn banded(self) -> ReadSignal<Option<Banded>, LocalStorage> {
        self.worked.with_value(|worked| worked.banded)
    }

    /// What the open visit comes to, where that belongs to the plan as it is now.
    pub fn site(self) -> Option<Arc<SiteAnswer>> {
        let (plan, visit) = (self.plan.get(), self.open_visit().get());
        self.banded().with(|banded| {
            let banded = banded.as_ref()?;
            let is_now = Arc::ptr_eq(&banded.plan, &plan.0) && banded.visit == visit;
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

/// The plan that the page opens with.
pub(super) fn the_example() -> Plan {
    example(
        label_text(Label::ExampleTitle),
        label_text(Label::ExampleNote),
        label_text(Label::ExampleObstacle),
    )
}

fn work_out(plan: Arc<Plan>) -> Results {
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
