//! The search in pieces: upgrades first, then new routes from each place of the outlet.

use super::choice::choose;
use super::labels::{End, LabelSearch, tangents};
use super::request::{Options, Request};
use super::route::plan_with;
use super::suggestion::{Candidate, Change, Suggestion};
use super::track_graph::tracks;
use super::upgrade::{rigid_elbow, upgrades};
use crate::plan::{Elbow, OutletSide, Plan};
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// So many upgrades are tried in pairs.
const PAIRED: usize = 6;
/// So many obstacles are lifted in turn where there is no route.
const LIFTED: usize = 5;

/// How far a search is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Progress {
    /// Stages done.
    pub done: usize,
    /// Stages in all.
    pub of: usize,
    /// How many partial routes were looked at.
    pub looked_at: usize,
    /// Whether any stage stopped before all was looked at, so that a better route may be left.
    pub is_cut_short: bool,
}

/// Why there is no new route.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Blocked {
    /// Ids of the obstacles that stood in the way, most often first.
    pub by: Vec<Arc<str>>,
    /// The obstacle without which the best route opens, and that route's back pressure, Pa.
    pub opens: Option<(Arc<str>, f64)>,
}

/// What a step of a search has to say.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Reply {
    /// How far it is.
    pub progress: Progress,
    /// The suggestions so far, where they are other than before.
    pub suggestions: Option<Vec<Suggestion>>,
    /// Whether it is over.
    pub is_done: bool,
    /// Where it is over without any new route.
    pub blocked: Option<Blocked>,
}

enum Stage {
    Singles,
    Pairs,
    Routes(Box<Variant>),
    Lifted(Box<Variant>, usize),
}

/// One place of the outlet.
struct Variant {
    plan: Plan,
    changes: Vec<Change>,
    search: Option<LabelSearch>,
}

/// A search under way. Dropping it cancels it.
pub struct Search {
    options: Options,
    elbow: Elbow,
    present: Option<Candidate>,
    candidates: Vec<Candidate>,
    /// The stages still to come, the next one last.
    stages: Vec<Stage>,
    progress: Progress,
    routes: usize,
    blocked: Blocked,
    plan: Plan,
}

impl Search {
    /// A search for `request`. Nothing is worked out yet.
    pub fn new(request: Request) -> Self {
        let Request { plan, options } = request;
        let elbow = options.elbow.unwrap_or_else(|| rigid_elbow(&plan));
        let mut stages: Vec<Stage> = variants(&plan, &options)
            .into_iter()
            .map(|(plan, changes)| {
                Stage::Routes(Box::new(Variant {
                    plan,
                    changes,
                    search: None,
                }))
            })
            .collect();
        stages.extend([Stage::Pairs, Stage::Singles]);
        Self {
            progress: Progress {
                done: 0,
                of: stages.len(),
                looked_at: 0,
                is_cut_short: false,
            },
            present: None,
            candidates: Vec::new(),
            stages,
            routes: 0,
            blocked: Blocked {
                by: Vec::new(),
                opens: None,
            },
            options,
            elbow,
            plan,
        }
    }

    /// Works on for about so many partial routes.
    pub fn advance(&mut self, budget: usize) -> Reply {
        let found = self.candidates.len();
        let Some(stage) = self.stages.pop() else {
            return self.reply(false);
        };
        match stage {
            Stage::Singles => {
                self.present = Candidate::of(self.plan.clone(), Vec::new());
                let made = upgrades(&self.plan).into_iter();
                self.candidates
                    .extend(made.filter_map(|(change, plan)| Candidate::of(plan, vec![change])));
                self.progress.done += 1;
            }
            Stage::Pairs => {
                self.pairs();
                self.progress.done += 1;
            }
            Stage::Routes(mut variant) => {
                if self.walk(&mut variant, budget) {
                    self.stages.push(Stage::Routes(variant));
                } else {
                    self.take(&variant);
                    self.progress.done += 1;
                    if self.stages.is_empty() && self.routes == 0 {
                        self.lift();
                    }
                }
            }
            Stage::Lifted(mut variant, obstacle) => {
                if self.walk(&mut variant, budget) {
                    self.stages.push(Stage::Lifted(variant, obstacle));
                } else {
                    self.opened(&variant, obstacle);
                    self.progress.done += 1;
                }
            }
        }
        let is_news = self.candidates.len() > found || self.stages.is_empty();
        self.reply(is_news)
    }

    fn reply(&self, is_news: bool) -> Reply {
        let is_done = self.stages.is_empty();
        Reply {
            progress: self.progress.clone(),
            suggestions: is_news.then(|| self.suggestions()),
            is_done,
            blocked: (is_done && self.routes == 0).then(|| self.blocked.clone()),
        }
    }

    /// The suggestions so far.
    pub fn suggestions(&self) -> Vec<Suggestion> {
        let Some(present) = &self.present else {
            return Vec::new();
        };
        let chosen = choose(present, &self.candidates);
        chosen.into_iter().map(|it| it.against(present)).collect()
    }

    /// Goes on with a variant; whether there is more to do.
    fn walk(&mut self, variant: &mut Variant, budget: usize) -> bool {
        if variant.search.is_none() {
            let tangents = tangents(self.elbow.radius);
            let tracks = self
                .options
                .tracks
                .clone()
                .unwrap_or_else(|| tracks(&variant.plan, &self.options, tangents.1));
            variant.search = LabelSearch::new(&variant.plan, &self.options, tracks, tangents);
        }
        variant.search.as_mut().is_some_and(|search| {
            let before = search.made();
            let is_more = search.advance(budget);
            self.progress.looked_at += search.made() - before;
            self.progress.is_cut_short |= search.is_cut_short();
            is_more
        })
    }

    fn routes_of(&self, variant: &Variant) -> Vec<Candidate> {
        let found = variant.search.iter().flat_map(LabelSearch::found);
        let made = found.filter_map(|found| {
            let wall = match found.end {
                End::Wall(index) => variant.plan.walls.get(index).map(|wall| wall.id.clone()),
                End::Roof => None,
            };
            let mut changes = vec![Change::NewRoute { wall }];
            changes.extend(variant.changes.iter().cloned());
            Candidate::of(plan_with(&variant.plan, &found, self.elbow), changes)
        });
        made.filter(|candidate| candidate.faults == 0).collect()
    }

    fn take(&mut self, variant: &Variant) {
        let routes = self.routes_of(variant);
        self.routes += routes.len();
        self.candidates.extend(routes);
        let Some(search) = &variant.search else {
            return;
        };
        for index in search.obstacles_in_the_way() {
            let obstacle = variant.plan.obstacles.get(index);
            let id = obstacle.map(|obstacle| obstacle.id.clone());
            let is_new = |id: &Arc<str>| !self.blocked.by.contains(id);
            if let Some(id) = id.filter(is_new) {
                self.blocked.by.push(id);
            }
        }
    }

    /// Each of the obstacles that stood in the way, lifted in turn.
    fn lift(&mut self) {
        for id in self.blocked.by.iter().take(LIFTED) {
            let index = self.plan.obstacles.iter().position(|it| it.id == *id);
            if let Some(index) = index {
                let mut plan = self.plan.clone();
                plan.obstacles.remove(index);
                let variant = Variant {
                    plan,
                    changes: Vec::new(),
                    search: None,
                };
                self.stages.push(Stage::Lifted(Box::new(variant), index));
                self.progress.of += 1;
            }
        }
    }

    fn opened(&mut self, variant: &Variant, obstacle: usize) {
        let pressures = self.routes_of(variant);
        let best = pressures
            .iter()
            .map(|route| route.figures.back_pressure_pa)
            .min_by(f64::total_cmp);
        let Some((best, lifted)) = best.zip(self.plan.obstacles.get(obstacle)) else {
            return;
        };
        if self
            .blocked
            .opens
            .as_ref()
            .is_none_or(|(_, own)| best < *own)
        {
            self.blocked.opens = Some((lifted.id.clone(), best));
        }
    }

    /// The best upgrades two by two.
    fn pairs(&mut self) {
        let mut best: Vec<Candidate> = self.candidates.clone();
        best.sort_by(|one, other| {
            let pressure = |it: &Candidate| it.figures.back_pressure_pa;
            pressure(one).total_cmp(&pressure(other))
        });
        best.truncate(PAIRED);
        for first in &best {
            for (change, plan) in upgrades(&first.plan) {
                let is_paired = best.iter().any(|it| it.changes.first() == Some(&change));
                if is_paired && first.changes.first() != Some(&change) {
                    let changes = first.changes.iter().cloned().chain([change]).collect();
                    self.candidates.extend(Candidate::of(plan, changes));
                }
            }
        }
    }
}

/// The outlet's places, the present one last: stages are taken from the end.
fn variants(plan: &Plan, options: &Options) -> Vec<(Plan, Vec<Change>)> {
    let mut all = Vec::new();
    if options.turned_dryer {
        for turn in [90.0, -90.0, 180.0] {
            let mut turned = plan.clone();
            turned.dryer.turned_deg = (turned.dryer.turned_deg + turn) % 360.0;
            all.push((turned, vec![Change::TurnDryer(turn)]));
        }
    }
    if options.other_outlet_sides {
        for side in [OutletSide::Left, OutletSide::Right, OutletSide::Back] {
            if side != plan.dryer.outlet_side {
                let mut other = plan.clone();
                other.dryer.outlet_side = side;
                all.push((other, vec![Change::OutletSide(side)]));
            }
        }
    }
    all.push((plan.clone(), Vec::new()));
    all
}
