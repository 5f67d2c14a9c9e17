//! What the rules say of the run's end.

use super::clause_findings::{Look, against, on_site};
use super::openings::{INTAKE_LIMIT, OPENING_LIMIT, OpeningDistance, opening_distances};
use super::{Clause, Deciding, Limit, Measure, RuleFinding, Verdict};
use crate::plan::{ElementId, OpeningKind, TerminationKind};
use crate::source::source;
use crate::units::Length;

source! {
    /// Of the height of a door.
    pub static DOOR_SOURCE {
        title: "Common practice, no source",
        edition: "not dated",
        locator: "a door of 80 in on the floor",
        standing: CommonPractice,
    }
}

/// Height of a common door, which stands on the floor.
/// Source: [`DOOR_SOURCE`].
const DOOR_HEIGHT: Length = Length::from_inches(80.0);

impl Look<'_> {
    pub(super) fn openings(&self, clause: &Clause) -> Vec<RuleFinding> {
        let distances = opening_distances(self.plan, &self.path);
        if distances.is_empty() {
            let limit = Limit::AtLeast(Measure::Length(OPENING_LIMIT));
            return vec![against(on_site(clause), limit)];
        }
        let finding = |distance: OpeningDistance| {
            let (verdict, deciding) = self.opening(&distance);
            RuleFinding {
                verdict,
                deciding,
                ..self.apart(clause, distance, OPENING_LIMIT)
            }
        };
        distances.into_iter().map(finding).collect()
    }

    /// The level distance is never more than the true one: what keeps the limit on the plan keeps it.
    /// What does not may still by its height, which a plan shows for a door alone.
    fn opening(&self, distance: &OpeningDistance) -> (Verdict, Option<Deciding>) {
        if distance.keeps(OPENING_LIMIT) {
            return (Verdict::Meets, None);
        }
        let end = self.plan.dryer.outlet_height + self.path.rise;
        let beside_door = end >= Length::ZERO && end <= DOOR_HEIGHT;
        if distance.kind == OpeningKind::Door && beside_door {
            return (Verdict::DoesNotMeet, None);
        }
        let (limit, level) = (OPENING_LIMIT.metres(), distance.distance.metres());
        let differs_by = Length::from_metres((limit * limit - level * level).max(0.0).sqrt());
        (
            Verdict::CannotTell,
            Some(Deciding::OpeningHeight { differs_by }),
        )
    }

    pub(super) fn intakes(&self, clause: &Clause) -> Vec<RuleFinding> {
        let distances = opening_distances(self.plan, &self.path).into_iter();
        let intakes: Vec<RuleFinding> = distances
            .filter(|distance| distance.kind == OpeningKind::AirIntake)
            .map(|distance| self.apart(clause, distance, INTAKE_LIMIT))
            .collect();
        if intakes.is_empty() {
            let limit = Limit::AtLeast(Measure::Length(INTAKE_LIMIT));
            return vec![against(on_site(clause), limit)];
        }
        intakes
    }

    fn apart(&self, clause: &Clause, distance: OpeningDistance, limit: Length) -> RuleFinding {
        RuleFinding {
            measured: Some(Measure::Length(distance.distance)),
            limit: Some(Limit::AtLeast(Measure::Length(limit))),
            margin: Some(Measure::Length(distance.distance - limit)),
            elements: self.termination().into_iter().collect(),
            opening: Some(distance),
            ..on_site(clause)
        }
    }

    fn termination(&self) -> Option<ElementId> {
        let end = self.assessment.run.elements.last()?;
        Some(end.id.clone())
    }

    /// A run that ends in a drawn room, garage, attic or crawl space does not end outdoors. A cap on
    /// the roof stands over the attic that it is drawn in.
    pub(super) fn outdoors(&self, clause: &Clause) -> RuleFinding {
        let (end, _) = self.path.end;
        let height = self.plan.dryer.outlet_height + self.path.rise;
        let is_indoors = self.plan.run.termination.kind != TerminationKind::RoofCap
            && self.plan.is_indoors(end, height);
        RuleFinding {
            verdict: if is_indoors {
                Verdict::DoesNotMeet
            } else {
                Verdict::CheckOnSite
            },
            elements: self.termination().into_iter().collect(),
            ..on_site(clause)
        }
    }

    pub(super) fn damper(&self, clause: &Clause) -> RuleFinding {
        let is_bare = self.plan.run.termination.kind == TerminationKind::OpenEnd;
        RuleFinding {
            verdict: if is_bare {
                Verdict::DoesNotMeet
            } else {
                Verdict::CheckOnSite
            },
            elements: self.termination().into_iter().collect(),
            ..on_site(clause)
        }
    }
}
