//! The search for new routes from one outlet, as a stepper.

use super::Candidate;
use super::field::Field;
use super::frontier::Frontier;
use super::heading::{HEADINGS, Way};
use super::label::Label;
use super::legal::is_legal;
use super::moves::SPARE_ROUNDING;
use super::outlet::{odd_turns, turns_at_outlet};
use super::ranked::ranked;
use super::rates::{Rates, present_airflow};
use super::request::Options;
use super::route::{corners, plan_by, usual_elbow};
use super::terminal::{End, Terminal};
use super::to_go::{ToGo, least_roof};
use super::tracks::{Reach, Tracks};
use crate::plan::{AlongRun, Elbow, Exhaust, Plan};
use crate::units::Length;

/// How eager the search is that goes before. Of the computation.
const EAGER: f64 = 2.0;

/// A search under way. It ranks runs whose air keeps its temperature: what a metre and an elbow cost is
/// then the same wherever they stand in the run.
pub(super) struct Routes {
    pub(super) plan: Plan,
    pub(super) options: Options,
    pub(super) elbow: Elbow,
    rates: Rates,
    pub(super) field: Field,
    frontier: Frontier,
    /// Tangents of an elbow of 45 and of 90 deg, m.
    pub(super) tangents: (f64, f64),
    /// The exhaust as it was asked for.
    exhaust: Exhaust,
    /// The least that the weight of the air can add from the floor up to any level, Pa.
    least_stack: f64,
    /// The least that a run loses from a level leg up through the roof, Pa; infinite where none may.
    least_roof: f64,
    to_go: ToGo,
    candidates: Vec<Candidate>,
    /// The last label of each of them.
    ends: Vec<Label>,
    /// The last labels of routes that the judge refused: one that crosses itself, say.
    refused: Vec<Label>,
    /// So many times what is lost at least from a label on is taken for what is lost.
    eagerness: f64,
    /// The plan of the eager search's route, until it is told.
    first: Option<Plan>,
    /// The bound of labels worth looking at, Pa.
    worth: f64,
    looked_at: usize,
    is_done: bool,
    /// Whether every label that the bound lets pass was looked at.
    is_whole: bool,
    /// The least loss found, without the weight of the air, Pa.
    least_loss: f64,
}

impl Routes {
    /// Makes the search ready; looks at nothing yet.
    ///
    /// Labels whose bound is over `worth`, Pa, are not worth looking at; where that says nothing, an
    /// eager search goes before for a route that does.
    pub(super) fn new(mut plan: Plan, options: Options, worth: f64) -> Self {
        let exhaust = plan.exhaust;
        plan.exhaust.along_run = AlongRun::KeepsTemperature;
        let elbow = usual_elbow(&plan.run);
        let reach = Reach::new(plan.run.diameter, elbow.radius, &options);
        let tracks = Tracks::of(&plan, &options, reach, elbow.radius);
        let rates = Rates::at(present_airflow(&plan), &plan, elbow);
        let stack = tracks.heights.iter().map(|it| it.metres() * rates.rise);
        let least_stack = stack.fold(f64::INFINITY, f64::min);
        let radius = elbow.radius.metres();
        let tangents = (radius * (core::f64::consts::PI / 8.0).tan(), radius);
        let to_go = ToGo::of(&plan, &tracks, &rates, tangents);
        let least_roof = least_roof(&options, &tracks, &rates, tangents.1);
        let field = Field::of(&plan, &options, tracks, reach, elbow.radius);
        let tracks = &field.tracks;
        let longer = tracks.xs.len().max(tracks.ys.len());
        let ends = plan.walls.len() * longer * tracks.heights.len();
        // All ends on the roof are one state.
        let states = field.stations() * HEADINGS + ends + 1;
        let mut routes = Self {
            exhaust,
            least_stack,
            least_roof,
            to_go,
            field,
            tangents,
            rates,
            elbow,
            plan,
            options,
            frontier: Frontier::new(states),
            candidates: Vec::new(),
            ends: Vec::new(),
            refused: Vec::new(),
            eagerness: if worth.is_finite() { 1.0 } else { EAGER },
            first: None,
            worth,
            looked_at: 0,
            is_done: false,
            is_whole: true,
            least_loss: f64::INFINITY,
        };
        routes.start();
        routes
    }

    /// Looks at `budget` labels at most; returns how many it looked at.
    pub(super) fn advance(&mut self, budget: usize) -> usize {
        let before = self.looked_at;
        while !self.is_done && self.looked_at - before < budget {
            self.look_at_next();
        }
        self.looked_at - before
    }

    /// The plan of the first route that was found, once, with the exhaust as it was asked for.
    pub(super) fn take_first(&mut self) -> Option<Plan> {
        let mut plan = self.first.take()?;
        plan.exhaust = self.exhaust;
        Some(plan)
    }

    /// The bound over which labels are not worth looking at, Pa, as it is now.
    pub(super) fn worth(&self) -> f64 {
        self.worth
    }

    /// Whether nothing is left to be looked at.
    pub(super) fn is_done(&self) -> bool {
        self.is_done
    }

    /// How many labels there are.
    pub(super) fn labels(&self) -> usize {
        self.frontier.count()
    }

    /// How many routes were found so far.
    pub(super) fn count(&self) -> usize {
        self.candidates.len()
    }

    /// The places of the routes found so far, the best first, with air that keeps its temperature.
    fn places(&self) -> Vec<usize> {
        let figures = |index: usize| &self.candidates[index].figures;
        let order = |one: usize, other: usize| figures(one).order(figures(other));
        ranked(0..self.candidates.len(), &order)
    }

    /// The routes found so far, the best first, with air that keeps its temperature.
    pub(super) fn candidates(&self) -> Vec<&Candidate> {
        let places = self.places().into_iter();
        places.map(|index| &self.candidates[index]).collect()
    }

    /// The plans of the best routes, and of those that are better than all of these in code length or
    /// parts, with the exhaust as it was asked for.
    pub(super) fn promising(&self) -> Vec<Plan> {
        /// So many of the best. Of the computation.
        const BEST: usize = 12;
        let (mut code_length, mut parts) = (f64::INFINITY, usize::MAX);
        let mut plans = Vec::new();
        for (index, it) in self.candidates().into_iter().enumerate() {
            let own = it.figures.code_length.metres();
            if index < BEST || own < code_length - 1e-6 || it.figures.parts < parts {
                let mut plan = it.plan.clone();
                plan.exhaust = self.exhaust;
                plans.push(plan);
                code_length = code_length.min(own);
                parts = parts.min(it.figures.parts);
            }
        }
        plans
    }

    /// The obstacles that stood in the way of a move, most often first, by their place in the plan.
    pub(super) fn obstacles_in_the_way(&self) -> Vec<usize> {
        self.field.obstacles_in_the_way()
    }

    /// Whether it stopped before all was looked at.
    pub(super) fn is_cut_short(&self) -> bool {
        self.looked_at >= self.options.most_labels && self.is_done
    }

    /// Whether the best of [`Routes::candidates`] is the best that the tracks hold: everything within
    /// the bound was looked at, and nothing outside it can be better at the best one's own airflow.
    pub(super) fn is_proven(&self) -> bool {
        let Some(best) = self.places().first().copied() else {
            return self.is_done && self.is_whole && self.refused.is_empty();
        };
        let airflow = self.candidates[best].figures.airflow;
        let there = Rates::at(airflow, &self.plan, self.elbow);
        // What a refused route's labels kept out has no less of anything than it.
        let total = |label: &Label| self.whole_loss(label, &there);
        let least_total = total(&self.ends[best]);
        let mut refused = self.refused.iter();
        let is_whole = self.is_whole && refused.all(|label| total(label) >= least_total);
        let mut ratios = vec![
            there.straight / self.rates.straight,
            there.at_45 / self.rates.at_45,
            there.at_90 / self.rates.at_90,
        ];
        let odd = there.at_outlet.iter().zip(&self.rates.at_outlet);
        ratios.extend(
            odd.filter(|(_, here)| **here > 0.0)
                .map(|(there, here)| there / here),
        );
        let least = ratios.iter().copied().fold(f64::INFINITY, f64::min);
        let greatest = ratios.iter().copied().fold(0.0, f64::max);
        let heights = self.field.tracks.heights.iter();
        let heights = heights.chain(self.options.roof_height.as_ref());
        let highest = heights.map(|height| height.metres()).fold(0.0, f64::max);
        let stack = (self.rates.rise * highest).abs();
        // The weight of the air does not change with the airflow; the losses do, by these ratios. How
        // much more a cap loses than a hood changes with the airflow too.
        let room = (least * self.options.slack - greatest) * self.least_loss;
        let ends = if self.options.roof_height.is_some() {
            (there.roof - self.rates.roof).abs()
        } else {
            0.0
        };
        self.is_done && is_whole && room >= (1.0 - least).abs() * stack + ends
    }

    fn start(&mut self) {
        let outlet = self.plan.dryer.outlet();
        let heading = self.plan.dryer.outlet_heading();
        let Some(station) = self.field.nearest(outlet, self.plan.dryer.outlet_height) else {
            return;
        };
        let first = Label {
            station,
            way: Way(0),
            terminal: None,
            straight: 0.0,
            spare: 0.0,
            outlet_turn: 0.0,
            outlet_way: Way(0),
            at_45: 0,
            at_90: 0,
            is_first_leg: true,
            before: None,
        };
        if let Some(way) = Way::of(heading) {
            self.offer(Label { way, ..first });
            if turns_at_outlet(&self.plan) {
                self.turn_at_outlet(&Label { way, ..first });
            }
            return;
        }
        for (way, turn) in Way::all().zip(odd_turns(&self.plan)) {
            let Some(turn) = turn else {
                continue;
            };
            let tangent = self.elbow.radius.metres() * (turn.radians() / 2.0).tan();
            self.offer(Label {
                way,
                straight: -tangent,
                spare: -tangent,
                outlet_turn: turn.radians(),
                outlet_way: way,
                ..first
            });
        }
    }

    fn look_at_next(&mut self) {
        let next = self.frontier.next();
        let Some((index, _)) = next.filter(|(_, bound)| *bound <= self.worth) else {
            self.is_done = true;
            return;
        };
        if self.looked_at >= self.options.most_labels {
            self.is_done = true;
            self.is_whole = false;
            return;
        }
        self.looked_at += 1;
        let label = *self.frontier.label(index);
        if label.terminal.is_some() {
            self.take_route(index, &label);
            return;
        }
        let before = Some(index);
        self.go_on(&label, before);
        self.turn(&label, before);
        if label.spare >= self.tangents.1 - SPARE_ROUNDING {
            self.risers(&label, before, false);
            self.up_through_roof(&label, before);
        }
    }

    /// Takes a label in, unless it can lead to nothing that is worth while.
    pub(super) fn offer(&mut self, label: Label) {
        let bound = self.bound(&label);
        if bound > self.worth {
            return;
        }
        let state = match label.terminal {
            None => self.field.index(label.station) * HEADINGS + usize::from(label.way.0),
            Some(Terminal { end: End::Roof, .. }) => self.frontier.states() - 1,
            Some(Terminal {
                end: End::Wall(wall),
                ..
            }) => {
                let track = if label.way.steps().0 == 0 {
                    label.station.x
                } else {
                    label.station.y
                };
                let tracks = self.field.tracks.xs.len().max(self.field.tracks.ys.len());
                let levels = self.field.tracks.heights.len();
                let end = (wall * tracks + usize::from(track)) * levels
                    + usize::from(label.station.level);
                self.field.stations() * HEADINGS + end
            }
        };
        self.frontier.offer(state, label, bound);
    }

    /// No run through `label` loses less, weight of the air included: a straight line to the nearest
    /// outside wall, and the level where the air weighs least.
    fn bound(&self, label: &Label) -> f64 {
        if label.terminal.is_some() {
            return self.whole_loss(label, &self.rates);
        }
        let to_wall = self.to_go.at(self.field.crossing(label.station), label.way);
        let ends = (self.least_stack + self.eagerness * to_wall).min(self.least_roof);
        label.loss(&self.rates) + ends
    }

    /// What a run that ends with `label` loses, weight of the air included, at the airflow of `rates`;
    /// hoods are left out, since they are all alike.
    fn whole_loss(&self, label: &Label, rates: &Rates) -> f64 {
        let roof = self.options.roof_height;
        let (height, cap) = match label.terminal {
            Some(Terminal { end: End::Roof, .. }) => (roof.unwrap_or(Length::ZERO), rates.roof),
            _ => (self.field.height(label.station), 0.0),
        };
        label.loss(rates) + cap + height.metres() * rates.rise
    }

    fn take_route(&mut self, index: u32, label: &Label) {
        let Some(terminal) = label.terminal else {
            return;
        };
        let mut chain = vec![*label];
        let mut before = self.frontier.label(index).before;
        while let Some(index) = before {
            chain.push(*self.frontier.label(index));
            before = self.frontier.label(index).before;
        }
        chain.reverse();
        let corners = corners(&chain, self.plan.dryer.outlet(), |label| {
            (
                self.field.point(label.station),
                self.field.height(label.station),
            )
        });
        let roof = self
            .options
            .roof_height
            .filter(|_| terminal.end == End::Roof);
        let rise = roof.map_or(Length::ZERO, |roof| roof - self.field.height(label.station));
        let plan = plan_by(&self.plan, self.elbow, &corners, (terminal.point, rise));
        let candidate = is_legal(&plan, &self.options)
            .then(|| Candidate::of(plan))
            .flatten();
        let Some(candidate) = candidate else {
            self.refused.push(*label);
            return;
        };
        let loss = label.loss(&self.rates);
        self.least_loss = self.least_loss.min(loss);
        let total = self.bound(label) + (self.options.slack - 1.0) * loss;
        self.worth = self.worth.min(total);
        if self.eagerness > 1.0 {
            self.first = Some(candidate.plan);
            self.look_again();
        } else {
            self.candidates.push(candidate);
            self.ends.push(*label);
        }
    }

    /// From the start, with no more than what is lost at least, and with what a route is worth known.
    fn look_again(&mut self) {
        self.eagerness = 1.0;
        self.frontier = Frontier::new(self.frontier.states());
        self.refused.clear();
        self.least_loss = f64::INFINITY;
        self.start();
    }
}
