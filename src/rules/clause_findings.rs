//! Each clause of a rule set held against the plan.

use super::run_length::RunLength;
use super::transition::Transition;
use super::{
    Clause, CodeLength, IRC_LENGTH_LIMIT, LabelWhen, Limit, Measure, RuleFinding, RuleSet, Verdict,
    maker_pressure, rule_set,
};
use crate::plan::{
    ElementId, Part, PieceKind, Plan, Point, RuleSetId, RuleTopic, RunPath, ZoneKind,
};
use crate::system::Assessment;
use crate::units::{Airflow, Length};

/// Make-up air is asked for over this: 200 cfm. Source: clause [`RuleTopic::MakeUpAir`].
const STRONG_DRYER: Airflow = Airflow::from_cubic_metres_per_second(200.0 * 0.000_471_947_443_2);
/// 12.5 in2 in m². Source: clause [`RuleTopic::OpenArea`].
const OPEN_AREA: f64 = 12.5 * 0.0254 * 0.0254;
/// 100 in2 in m². Source: clause [`RuleTopic::ClosetOpening`].
const CLOSET_OPENING: f64 = 100.0 * 0.0254 * 0.0254;
/// A metal duct's thickness: 28 gage. Source: clause [`RuleTopic::DuctThickness`].
const THICKNESS: Length = Length::from_inches(0.0157);
/// How far screws may reach inside. Source: clause [`RuleTopic::Fasteners`].
const SCREWS: Length = Length::from_inches(0.125);
/// From the framing's face, without a shield plate. Source: clause [`RuleTopic::ShieldPlates`].
const COVER: Length = Length::from_inches(1.25);
/// From the property line. Source: clause [`RuleTopic::PropertyLine`].
const PROPERTY_LINE: Length = Length::from_feet(3.0);

/// All that the clauses look at.
pub(super) struct Look<'a> {
    pub(super) plan: &'a Plan,
    pub(super) assessment: &'a Assessment,
    pub(super) set: &'a RuleSet,
    pub(super) lengths: &'a RunLength,
    length: &'a CodeLength,
    pub(super) path: RunPath,
    pub(super) transition: Transition,
}

impl<'a> Look<'a> {
    pub(super) fn at(
        plan: &'a Plan,
        assessment: &'a Assessment,
        set: &'a RuleSet,
        lengths: &'a RunLength,
        length: &'a CodeLength,
    ) -> Self {
        Self {
            plan,
            assessment,
            set,
            lengths,
            length,
            path: RunPath::of(plan),
            transition: Transition::of(plan, &assessment.run),
        }
    }

    /// What `clause` says of the plan; nothing where it has no object on it.
    pub(super) fn findings(&self, clause: &Clause) -> Vec<RuleFinding> {
        let on_site = on_site(clause);
        vec![match clause.topic {
            RuleTopic::Length => by_length(clause, self.length),
            RuleTopic::MakerLength => {
                let counts = self.plan.code.path_through_fittings_counts;
                let set = rule_set(RuleSetId::DryerMaker);
                by_length(clause, &self.lengths.by(set, &self.plan.code.maker, counts))
            }
            RuleTopic::MakerBackPressure => {
                return self.back_pressure(clause).into_iter().collect();
            }
            RuleTopic::DuctSize => self.duct_size(clause),
            RuleTopic::DuctMaterial => self.duct_material(clause),
            RuleTopic::TransitionLength => self.transition_length(clause),
            RuleTopic::TransitionOnePiece => self.transition_pieces(clause),
            RuleTopic::TransitionConcealed => self.transition_concealed(clause),
            RuleTopic::TransitionListing => RuleFinding {
                elements: self.transition.legs.clone(),
                ..on_site
            },
            RuleTopic::Supports => self.supports(clause),
            RuleTopic::Label => return self.label(clause).into_iter().collect(),
            RuleTopic::OpeningDistance => return self.openings(clause),
            RuleTopic::IntakeDistance => return self.intakes(clause),
            RuleTopic::OutdoorTermination => self.outdoors(clause),
            RuleTopic::BackdraftDamper => self.damper(clause),
            RuleTopic::MakeUpAir => RuleFinding {
                measured: self.airflow().map(Measure::Airflow),
                limit: Some(Limit::AtMost(Measure::Airflow(STRONG_DRYER))),
                margin: self
                    .airflow()
                    .map(|airflow| Measure::Airflow(STRONG_DRYER - airflow)),
                ..on_site
            },
            RuleTopic::CleanOut => return self.clean_outs(clause).into_iter().collect(),
            RuleTopic::GarageSeparation => RuleFinding {
                elements: self.legs_in(ZoneKind::Garage),
                ..on_site
            },
            RuleTopic::SharedShaft => return Vec::new(),
            RuleTopic::DuctThickness => against(on_site, Limit::AtLeast(Measure::Size(THICKNESS))),
            RuleTopic::Fasteners
                if self.set.id != RuleSetId::Umc504 && self.set.id != RuleSetId::Ifgc614 =>
            {
                against(on_site, Limit::AtMost(Measure::Size(SCREWS)))
            }
            RuleTopic::ShieldPlates => against(on_site, Limit::AtLeast(Measure::Size(COVER))),
            RuleTopic::OpenArea => against(on_site, Limit::AtLeast(Measure::Area(OPEN_AREA))),
            RuleTopic::ClosetOpening => {
                against(on_site, Limit::AtLeast(Measure::Area(CLOSET_OPENING)))
            }
            RuleTopic::PropertyLine => {
                against(on_site, Limit::AtLeast(Measure::Length(PROPERTY_LINE)))
            }
            RuleTopic::Joints
            | RuleTopic::Fasteners
            | RuleTopic::NoScreen
            | RuleTopic::ForbiddenOutlets
            | RuleTopic::FireDampers
            | RuleTopic::PowerVentilators
            | RuleTopic::OtherDucts
            | RuleTopic::RatedAssemblies
            | RuleTopic::StudSpaces
            | RuleTopic::UnusedDuct => on_site,
        }]
    }

    fn airflow(&self) -> Option<Airflow> {
        let (point, _) = self.assessment.working.as_ref()?;
        Some(point.evaluation.airflow)
    }

    fn back_pressure(&self, clause: &Clause) -> Option<RuleFinding> {
        let limit = self.plan.code.maker.back_pressure?;
        let (verdict, measured, deciding) = maker_pressure::judge(self.assessment, limit);
        Some(RuleFinding {
            verdict,
            measured: measured.map(Measure::Pressure),
            limit: Some(Limit::AtMost(Measure::Pressure(limit))),
            margin: measured.map(|measured| Measure::Pressure(limit - measured)),
            deciding,
            ..on_site(clause)
        })
    }

    /// The label, where the plan shows that it is asked for or cannot show that it is not.
    fn label(&self, clause: &Clause) -> Option<RuleFinding> {
        let length = self.length.with_deductions;
        let finding = RuleFinding {
            measured: Some(Measure::Length(length)),
            ..on_site(clause)
        };
        match self.set.label {
            LabelWhen::NotNamed => None,
            LabelWhen::Concealed => Some(finding),
            LabelWhen::OverLimit => {
                let is_over = self.length.verdict != Verdict::Meets || length > IRC_LENGTH_LIMIT;
                is_over.then_some(RuleFinding {
                    limit: Some(Limit::AtMost(Measure::Length(IRC_LENGTH_LIMIT))),
                    margin: Some(Measure::Length(IRC_LENGTH_LIMIT - length)),
                    ..finding
                })
            }
        }
    }

    fn clean_outs(&self, clause: &Clause) -> Option<RuleFinding> {
        let pieces = self.path.pieces.iter();
        let risers: Vec<ElementId> = pieces
            .filter(|piece| piece.id.part == Part::Riser)
            .map(|piece| piece.id.clone())
            .collect();
        (!risers.is_empty()).then(|| RuleFinding {
            measured: Some(Measure::Count(risers.len())),
            elements: risers,
            ..on_site(clause)
        })
    }

    /// The legs that enter or end in a zone of a kind.
    fn legs_in(&self, kind: ZoneKind) -> Vec<ElementId> {
        let of_kind = self.plan.zones.iter().filter(|zone| zone.kind == kind);
        let inside = |at: Point| of_kind.clone().any(|zone| zone.covers(at));
        let legs = self.path.pieces.iter().filter(|piece| match &piece.kind {
            PieceKind::Straight {
                corners: (from, to),
                ..
            } => [*from, from.halfway(*to), *to].into_iter().any(inside),
            _ => false,
        });
        legs.map(|piece| piece.id.clone()).collect()
    }
}

pub(super) fn on_site(clause: &Clause) -> RuleFinding {
    RuleFinding {
        topic: clause.topic,
        section: clause.section,
        verdict: Verdict::CheckOnSite,
        measured: None,
        limit: None,
        margin: None,
        deciding: None,
        elements: Vec::new(),
        opening: None,
        source: clause.source,
    }
}

pub(super) fn against(finding: RuleFinding, limit: Limit) -> RuleFinding {
    RuleFinding {
        limit: Some(limit),
        ..finding
    }
}

fn by_length(clause: &Clause, length: &CodeLength) -> RuleFinding {
    RuleFinding {
        verdict: length.verdict,
        measured: Some(Measure::Length(length.with_deductions)),
        limit: length
            .limit
            .map(|limit| Limit::AtMost(Measure::Length(limit))),
        margin: length.margin.map(Measure::Length),
        deciding: length.deciding.clone(),
        elements: length
            .deductions
            .iter()
            .map(|(element, _)| element.clone())
            .collect(),
        ..on_site(clause)
    }
}
