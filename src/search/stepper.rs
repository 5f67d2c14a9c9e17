//! The search in pieces: upgrades of the present run first, since they answer at once; then routes from
//! the present outlet and from others; then the best of these changed further; and where there is no
//! route, what is in the way.

use super::change::Change;
use super::different::rebuilt;
use super::dryer_place::{Placed, other_outlets};
use super::gain::drawn_of;
use super::legal::is_legal;
use super::ranked::ranked;
use super::request::{Options, Request};
use super::routes::Routes;
use super::suggestion::{Blocked, Changed, choose, new_route};
use super::terminal::can_be_left_by;
use super::upgrade::{Kind, Upgraded};
use super::{Candidate, Figures, Gain, Suggestion};
use crate::plan::Plan;
use crate::system::Drawn;
use serde::{Deserialize, Serialize};
use std::collections::VecDeque;
use std::sync::Arc;

/// How far a search is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Progress {
    /// Parts done.
    pub done: usize,
    /// Parts in all, as far as is known.
    pub of: usize,
    /// How many partial routes were looked at.
    pub looked_at: usize,
    /// Whether any part stopped before all was looked at, so that a better route may be left.
    pub is_cut_short: bool,
    /// Whether the best new route from the present outlet is proved to be the best on the tracks, with
    /// air that keeps its temperature.
    pub is_proven: bool,
}

/// What a step of a search has to say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reply {
    /// How far it is.
    pub progress: Progress,
    /// The present run's figures; none where no air moves.
    pub present: Option<Figures>,
    /// Whether the present run has room where it is drawn; where not, a suggestion may lose more.
    pub has_present_room: bool,
    /// The suggestions so far, where there may be others than before.
    pub suggestions: Option<Vec<Suggestion>>,
    /// Whether it is over.
    pub is_done: bool,
    /// Where it is over without any new route.
    pub blocked: Option<Blocked>,
}

/// The best are changed further, so many of the new routes and of the upgrades. Of the computation.
const REFINED: usize = 4;
const PAIRED: usize = 5;
/// A part that is not about the present outlet looks at so many labels at most. Of the computation.
const SIDE_LABELS: usize = 30_000;
/// To judge a plan takes as long as so many labels. Of the computation.
const JUDGED: usize = 20;

/// What routes are looked for.
#[derive(Clone)]
enum Aim {
    /// From the present outlet.
    Present,
    /// With the dryer's outlet elsewhere.
    Placed(Placed),
    /// Whether one opens without this obstacle.
    Without(Arc<str>),
}

enum Part {
    /// The present run and one kind of upgrades of it.
    Upgrades(Kind),
    /// One kind of upgrades on top of one of the best that were found, by its place.
    Further(usize, Kind),
    /// Makes parts of the best upgrades.
    Pairs,
    /// Makes parts of the best routes.
    Refine,
    Routes(Aim, Box<Plan>),
    UnderWay(Aim, Box<Routes>),
}

/// A search under way. Dropping it cancels it.
pub struct Search {
    plan: Plan,
    options: Options,
    present: Option<Candidate>,
    drawn: Option<Drawn>,
    has_present_room: bool,
    parts: VecDeque<Part>,
    /// Plans that wait to be judged.
    pending: VecDeque<(Vec<Change>, Plan)>,
    found: Vec<Changed>,
    /// Whether `found` has more than was told.
    is_news: bool,
    present_routes: Vec<Candidate>,
    /// The bound over which routes from the present outlet are not worth looking at, Pa.
    worth: f64,
    routes: usize,
    blocked: Blocked,
    progress: Progress,
}

impl Search {
    /// Makes the search ready; looks at no route yet.
    pub fn new(request: Request) -> Self {
        let Request { plan, options } = request;
        let mut parts: VecDeque<Part> = Kind::ALL.into_iter().map(Part::Upgrades).collect();
        let routes = |aim: Aim, plan: Plan| Part::Routes(aim, Box::new(plan));
        parts.push_back(routes(Aim::Present, plan.clone()));
        parts.push_back(Part::Pairs);
        let others = other_outlets(&plan, &options).into_iter();
        parts.extend(others.map(|(placed, plan)| routes(Aim::Placed(placed), plan)));
        parts.push_back(Part::Refine);
        let present = Candidate::of(plan.clone());
        Self {
            has_present_room: is_legal(&plan, &options),
            drawn: present.as_ref().and_then(|it| drawn_of(&it.plan)),
            present,
            progress: Progress {
                done: 0,
                of: parts.len(),
                looked_at: 0,
                is_cut_short: false,
                is_proven: false,
            },
            parts,
            pending: VecDeque::new(),
            found: Vec::new(),
            is_news: false,
            present_routes: Vec::new(),
            worth: f64::INFINITY,
            routes: 0,
            blocked: Blocked {
                has_no_way_out: options.roof_height.is_none()
                    && !plan.walls.iter().any(can_be_left_by),
                by: Vec::new(),
                opens: None,
            },
            plan,
            options,
        }
    }

    /// Works on for about so many partial routes; less where there is something to tell.
    pub fn advance(&mut self, budget: usize) -> Reply {
        let mut left = budget.max(1);
        while left > 0 && !self.is_done() {
            left = left.saturating_sub(self.step(left));
            if self.is_news && self.pending.is_empty() {
                break;
            }
        }
        let is_done = self.is_done();
        let tells = is_done || (self.is_news && self.pending.is_empty());
        if tells {
            self.is_news = false;
        }
        Reply {
            suggestions: tells.then(|| self.suggestions()),
            progress: self.progress,
            present: self.present.as_ref().map(|it| it.figures),
            has_present_room: self.has_present_room,
            is_done,
            blocked: (is_done && self.routes == 0).then(|| self.blocked.clone()),
        }
    }

    /// The new routes from the present outlet, the best first, with air that keeps its temperature.
    pub fn present_routes(&self) -> &[Candidate] {
        &self.present_routes
    }

    fn is_done(&self) -> bool {
        self.parts.is_empty() && self.pending.is_empty()
    }

    /// One piece of work; how many partial routes it was worth.
    fn step(&mut self, left: usize) -> usize {
        if let Some((changes, plan)) = self.pending.pop_front() {
            self.judge(changes, plan);
            return JUDGED;
        }
        let Some(part) = self.parts.pop_front() else {
            return left;
        };
        self.progress.done += 1;
        match part {
            Part::Upgrades(kind) => {
                let made = kind.upgrades(&self.plan, &self.options);
                self.wait(&[], made);
            }
            Part::Further(index, kind) => {
                let changed = &self.found[index];
                let made = kind.upgrades(&changed.candidate.plan, &self.options);
                let before = changed.changes.clone();
                // Cut corners and long radii together make one more of a new route; on the present run
                // two changes are enough to be told.
                let last = made
                    .last()
                    .filter(|_| kind == Kind::TwoFortyFives && is_route(changed));
                let both = last.and_then(|(cut, plan)| {
                    let long = Kind::LongRadius.upgrades(plan, &self.options).pop()?;
                    let changes = before.iter().cloned().chain([cut.clone(), long.0]);
                    Some((changes.collect::<Vec<_>>(), long.1))
                });
                self.wait(&before, made);
                self.pending.extend(both);
            }
            Part::Pairs => self.further(PAIRED, |it| !is_route(it)),
            Part::Refine => self.further(REFINED, is_route),
            Part::Routes(aim, plan) => {
                let most_labels = match aim {
                    Aim::Present => self.options.most_labels,
                    _ => self.options.most_labels.min(SIDE_LABELS),
                };
                let options = Options {
                    most_labels,
                    ..self.options.clone()
                };
                // Another side of the dryer is worth its while where it beats the present one.
                let worth = match aim {
                    Aim::Placed(_) => self.worth,
                    _ => f64::INFINITY,
                };
                let routes = Box::new(Routes::new(*plan, options, worth));
                self.progress.done -= 1;
                self.parts.push_front(Part::UnderWay(aim, routes));
            }
            Part::UnderWay(aim, mut routes) => {
                let looked_at = routes.advance(left);
                self.progress.looked_at += looked_at;
                let first = routes.take_first();
                if let (Some(plan), Aim::Present) = (first, &aim) {
                    let change = new_route(&self.plan, &plan);
                    self.pending.push_back((vec![change], plan));
                }
                if routes.is_done() {
                    self.take(&aim, &routes);
                } else {
                    self.progress.done -= 1;
                    self.parts.push_front(Part::UnderWay(aim, routes));
                }
                return looked_at.max(1);
            }
        }
        // Making a part ready is work too.
        left / 4 + 1
    }

    fn wait(&mut self, before: &[Change], made: Vec<Upgraded>) {
        let with_before = |(change, plan): Upgraded| {
            let changes = before.iter().cloned().chain([change]).collect();
            (changes, plan)
        };
        self.pending.extend(made.into_iter().map(with_before));
    }

    fn judge(&mut self, changes: Vec<Change>, plan: Plan) {
        if let Some(candidate) = Candidate::of(plan) {
            self.found.push(Changed {
                rebuilt: rebuilt(&candidate.plan, &self.plan),
                changes,
                candidate,
                gain: None,
            });
            self.is_news = true;
        }
    }

    /// One more change on top of each of the best that are of a kind.
    fn further(&mut self, most: usize, is_of_kind: fn(&Changed) -> bool) {
        let figures = |index: usize| &self.found[index].candidate.figures;
        let of_kind = (0..self.found.len()).filter(|index| is_of_kind(&self.found[*index]));
        let order = |one: usize, other: usize| figures(one).order(figures(other));
        let mut best = ranked(of_kind, &order);
        best.truncate(most);
        for index in best.into_iter().rev() {
            for kind in Kind::ALL.into_iter().rev() {
                self.parts.push_front(Part::Further(index, kind));
                self.progress.of += 1;
            }
        }
    }

    /// What a part that is done has found.
    fn take(&mut self, aim: &Aim, routes: &Routes) {
        self.progress.is_cut_short |= routes.is_cut_short();
        if let Aim::Without(id) = aim {
            if let Some(best) = routes.candidates().first() {
                let airflow = best.figures.airflow;
                let opens = &mut self.blocked.opens;
                if opens.as_ref().is_none_or(|(_, own)| airflow > *own) {
                    *opens = Some((id.clone(), airflow));
                }
            }
            return;
        }
        self.routes += routes.count();
        for plan in routes.promising() {
            let route = new_route(&self.plan, &plan);
            let changes = match aim {
                Aim::Placed(Placed::Side(side)) => vec![route, Change::OutletSide { side: *side }],
                Aim::Placed(Placed::Turned(turn)) => vec![route, Change::TurnDryer { turn: *turn }],
                Aim::Present | Aim::Without(_) => vec![route],
            };
            self.pending.push_back((changes, plan));
        }
        if matches!(aim, Aim::Present) {
            self.progress.is_proven = routes.is_proven();
            self.worth = routes.worth();
            self.present_routes = routes.candidates().into_iter().cloned().collect();
            if self.present_routes.is_empty() {
                self.lift(&routes.obstacles_in_the_way());
            }
        }
    }

    /// Each obstacle that stood in the way is lifted in turn: one that never did opens nothing.
    fn lift(&mut self, in_the_way: &[usize]) {
        for index in in_the_way {
            let id = self.plan.obstacles[*index].id.clone();
            let mut plan = self.plan.clone();
            plan.obstacles.remove(*index);
            self.blocked.by.push(id.clone());
            let aim = Aim::Without(id);
            self.parts.push_back(Part::Routes(aim, Box::new(plan)));
            self.progress.of += 1;
        }
    }

    /// The suggestions so far.
    fn suggestions(&mut self) -> Vec<Suggestion> {
        let chosen = choose(
            self.present.as_ref(),
            &self.plan,
            self.has_present_room,
            &self.found,
            self.options.most_suggestions,
        );
        let suggestion = |index: usize| {
            let changed = &mut self.found[index];
            if let (Some(present), None) = (&self.present, &changed.gain) {
                let gain = Gain::of(present, self.drawn.as_ref(), &changed.candidate);
                changed.gain = Some(gain);
            }
            Suggestion {
                run: changed.candidate.plan.run.clone(),
                dryer: changed.candidate.plan.dryer,
                changes: changed.changes.clone(),
                figures: changed.candidate.figures,
                gain: changed.gain,
                rebuilt: changed.rebuilt,
            }
        };
        chosen.into_iter().map(suggestion).collect()
    }
}

fn is_route(it: &Changed) -> bool {
    matches!(it.changes.first(), Some(Change::NewRoute { .. }))
}
