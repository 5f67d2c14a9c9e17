//! The length rule of every rule set, edition by edition, to a sixteenth of an inch; the sets' limits
//! and sources. Sources of what is expected stand in `cases/code_lengths.toml`.

use crate::tally::Tally;
use elbowroom::plan::{
    self, Elbow, ElbowKind, Fitting, MakerLimits, Plan, Point, RuleSetId, RunPoint,
};
use elbowroom::rules::{
    CodeLength, RULE_SETS, Verdict, code_check, code_length, rule_set, rule_sources,
};
use elbowroom::source::Standing;
use elbowroom::system::assess;
use elbowroom::units::{Length, UnitSystem};
use serde::Deserialize;
use std::collections::BTreeSet;

/// in: inches turned into metres and back in doubles, and an angle through a drawing's coordinates;
/// a million times finer than the promised sixteenth.
const DUST: f64 = 6e-8;
const CASES: usize = 180;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Cases {
    case: Vec<Case>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Case {
    of: String,
    set: RuleSetId,
    section: String,
    legs_in: Vec<f64>,
    elbows: Vec<ElbowCase>,
    path_counts: bool,
    #[serde(default)]
    maker_ft: MakerCase,
    measured_in: f64,
    deducted_in: f64,
    limit_ft: Option<f64>,
    verdict: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ElbowCase {
    kind: ElbowKind,
    angle_deg: f64,
    radius_in: f64,
}

#[derive(Deserialize, Default)]
#[serde(deny_unknown_fields)]
struct MakerCase {
    length: Option<f64>,
    at_45: Option<f64>,
    at_90: Option<f64>,
}

impl ElbowCase {
    fn elbow(&self) -> Elbow {
        Elbow {
            kind: self.kind,
            radius: Length::from_inches(self.radius_in),
        }
    }

    /// From the corner to where the curve begins, in.
    fn tangent_in(&self) -> f64 {
        self.radius_in * (self.angle_deg.to_radians() / 2.0).tan()
    }
}

impl Case {
    /// A level run of its legs, which turns right and left by turns.
    fn plan(&self) -> Plan {
        let mut plan = plan::blank("For the length rules".to_owned());
        plan.code.rule_set = self.set;
        plan.code.path_through_fittings_counts = self.path_counts;
        let feet = |feet: Option<f64>| feet.map(Length::from_feet);
        plan.code.maker = MakerLimits {
            length: feet(self.maker_ft.length),
            at_45: feet(self.maker_ft.at_45),
            at_90: feet(self.maker_ft.at_90),
            back_pressure: None,
        };
        let mut at = plan.dryer.outlet();
        let mut heading = 0.0_f64;
        plan.run.points.clear();
        for (index, leg) in self.legs_in.iter().enumerate() {
            let before = index.checked_sub(1).map(|before| &self.elbows[before]);
            let after = self.elbows.get(index);
            let tangents: f64 = before
                .into_iter()
                .chain(after)
                .map(ElbowCase::tangent_in)
                .sum();
            let drawn = Length::from_inches(leg + tangents).metres();
            at = Point::new(at.x + drawn * heading.sin(), at.y - drawn * heading.cos());
            let elbow = after.map_or(plan.run.outlet.elbow, ElbowCase::elbow);
            plan.run.points.push(RunPoint {
                id: format!("p{index}").as_str().into(),
                position: at,
                duct: plan::Duct::Rigid,
                leg: plan::LegState::default(),
                fitting: Fitting { elbow, riser: None },
            });
            if let Some(after) = after {
                let way = if index % 2 == 0 { 1.0 } else { -1.0 };
                heading += way * after.angle_deg.to_radians();
            }
        }
        plan
    }
}

fn cases() -> Vec<Case> {
    let cases: Cases = toml::from_str(include_str!("cases/code_lengths.toml")).unwrap();
    cases.case
}

fn counted(plan: &Plan) -> CodeLength {
    let assessment = assess(plan);
    code_length(plan, &assessment.run, &assessment.findings)
}

fn name(verdict: Verdict) -> String {
    serde_json::to_value(verdict)
        .unwrap()
        .as_str()
        .unwrap()
        .to_owned()
}

#[test]
fn every_row_convention_edition_and_edge() {
    let mut tally = Tally::new("code lengths");
    let cases = cases();
    for case in &cases {
        let label = format!(
            "{} {:?}, {}, {:?}",
            case.section, case.set, case.of, case.legs_in
        );
        let found = counted(&case.plan());
        tally.equal(&label, &found.rule_set, &case.set);
        tally.equal(&label, &found.section, &case.section.as_str());
        tally.within(&label, found.measured.inches(), case.measured_in, DUST);
        let whole = case.measured_in + case.deducted_in;
        tally.within(&label, found.with_deductions.inches(), whole, DUST);
        let limit = found.limit.map(|limit| (limit.feet() * 1e9).round() / 1e9);
        tally.equal(&label, &limit, &case.limit_ft);
        let margin = found.margin.map(Length::inches);
        match (margin, case.limit_ft) {
            (Some(margin), Some(limit)) => {
                tally.within(&label, margin, 12.0 * limit - whole, DUST);
            }
            (margin, limit) => tally.equal(&label, &margin.is_some(), &limit.is_some()),
        }
        tally.equal(&label, &name(found.verdict), &case.verdict);
        // An open verdict names what decides.
        let is_open = found.verdict == Verdict::CannotTell;
        tally.equal(&label, &found.deciding.is_some(), &is_open);
    }
    assert_eq!(cases.len(), CASES);
    tally.finish(8 * CASES);
}

/// Every set and each of the table's rows is among the cases, at the limit and over it.
#[test]
fn the_cases_leave_no_set_out() {
    let cases = cases();
    for set in RULE_SETS {
        for verdict in ["meets", "does_not_meet"] {
            let of_set = |case: &&Case| case.set == set.id && case.verdict == verdict;
            assert!(
                cases.iter().any(|case| of_set(&case)),
                "{:?} {verdict}",
                set.id
            );
        }
    }
}

/// What is shown of a run at a limit is the limit, on a tape.
#[test]
fn the_limits_as_a_tape_shows_them() {
    let mut tally = Tally::new("limits on a tape");
    for (id, shown) in [
        (RuleSetId::Irc2021, "35' 0\""),
        (RuleSetId::Irc2018, "35' 0\""),
        (RuleSetId::Irc2015, "35' 0\""),
        (RuleSetId::Irc2012, "35' 0\""),
        (RuleSetId::Imc504, "35' 0\""),
        (RuleSetId::Ifgc614, "35' 0\""),
        (RuleSetId::IrcBefore2012, "25' 0\""),
        (RuleSetId::Umc504, "14' 0\""),
    ] {
        let limit = rule_set(id).length_limit.unwrap();
        let found = UnitSystem::UsCustomary.length(limit).to_string();
        tally.equal(format!("{id:?}"), &found.as_str(), &shown);
    }
    tally.finish(8);
}

/// Spacing of supports and length of the transition duct, ft, as the project's list of facts has them.
#[test]
fn the_sets_other_figures() {
    let mut tally = Tally::new("other figures");
    for (id, transition, supports) in [
        (RuleSetId::Irc2021, Some(8.0), Some(12.0)),
        (RuleSetId::Irc2018, Some(8.0), Some(12.0)),
        (RuleSetId::Irc2015, Some(8.0), Some(12.0)),
        (RuleSetId::Irc2012, Some(8.0), Some(12.0)),
        (RuleSetId::IrcBefore2012, Some(8.0), Some(4.0)),
        (RuleSetId::Imc504, Some(8.0), Some(4.0)),
        (RuleSetId::Ifgc614, Some(8.0), Some(4.0)),
        (RuleSetId::Umc504, Some(6.0), None),
        (RuleSetId::DryerMaker, None, None),
    ] {
        let set = rule_set(id);
        let feet = |length: Option<Length>| length.map(|it| (it.feet() * 1e9).round() / 1e9);
        tally.equal(
            format!("{id:?} transition"),
            &feet(set.transition_limit),
            &transition,
        );
        tally.equal(
            format!("{id:?} supports"),
            &feet(set.support_spacing),
            &supports,
        );
    }
    tally.finish(18);
}

/// Every rule says where it was read and how well that can be leaned on; what was read at second hand,
/// or is held from memory, says so in its locator too or by its standing.
#[test]
fn every_rule_has_a_source() {
    let mut tally = Tally::new("sources of rules");
    let mut standings = BTreeSet::new();
    for source in rule_sources() {
        tally.holds(format!("{source:?} has a title"), source.title.len() > 10);
        tally.holds(
            format!("{source:?} has an edition"),
            !source.edition.is_empty(),
        );
        tally.holds(
            format!("{source:?} has a locator"),
            source.locator.len() > 3,
        );
        standings.insert(format!("{:?}", source.standing));
    }
    // All standings that the facts have are met with.
    let expected = [
        Standing::CommonPractice,
        Standing::Memory,
        Standing::Published,
        Standing::SecondHand,
        Standing::Typed,
    ];
    let expected: BTreeSet<String> = expected.map(|it| format!("{it:?}")).into();
    tally.equal("standings", &standings, &expected);
    tally.finish(400);
}

/// No set names a topic twice, each has a section, and the first is on the length.
#[test]
fn every_set_is_whole() {
    for set in RULE_SETS {
        let topics: Vec<_> = set.clauses.iter().map(|clause| clause.topic).collect();
        let once: BTreeSet<_> = topics.iter().copied().collect();
        assert_eq!(once.len(), topics.len(), "{:?}", set.id);
        assert!(set.clauses.iter().all(|clause| !clause.section.is_empty()));
        assert_eq!(rule_set(set.id), set);
        assert!(matches!(
            topics[0],
            plan::RuleTopic::Length | plan::RuleTopic::MakerLength
        ));
    }
    let ids: BTreeSet<String> = RULE_SETS
        .iter()
        .map(|set| format!("{:?}", set.id))
        .collect();
    assert_eq!(ids.len(), RULE_SETS.len());
}

/// The open area of 12.5 in2 was read in the 2018 text: the older editions are not given it.
#[test]
fn the_open_area_is_given_to_no_older_edition() {
    let has = |id: RuleSetId| {
        let mut clauses = rule_set(id).clauses.iter();
        clauses.any(|clause| clause.topic == plan::RuleTopic::OpenArea)
    };
    assert!(has(RuleSetId::Irc2018));
    for older in [
        RuleSetId::Irc2015,
        RuleSetId::Irc2012,
        RuleSetId::IrcBefore2012,
    ] {
        assert!(!has(older), "{older:?}");
    }
}

/// Side by side stands each set in both readings, and the chosen one is among them as it is alone.
#[test]
fn side_by_side_agrees_with_each_alone() {
    let mut tally = Tally::new("side by side");
    for case in cases().iter().step_by(7) {
        let mut plan = case.plan();
        let assessment = assess(&plan);
        let check = code_check(&plan, &assessment);
        tally.equal(&case.of, &check.side_by_side.len(), &RULE_SETS.len());
        for (set, readings) in RULE_SETS.iter().zip(&check.side_by_side) {
            for (reading, counts) in readings.iter().zip([true, false]) {
                plan.code.rule_set = set.id;
                plan.code.path_through_fittings_counts = counts;
                tally.equal(&case.of, reading, &counted(&plan));
            }
        }
    }
    tally.finish(400);
}
