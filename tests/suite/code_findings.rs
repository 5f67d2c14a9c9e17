//! What the rules find on a plan beside the length: sizes, transition duct, supports, the maker's
//! back pressure, and what would settle an open verdict. Limits are those of the rule sets'
//! own sources; distances are worked out here by hand.

use crate::tally::Tally;
use elbowroom::plan::{
    self, AlongRun, ConcealedElbows, Duct, Elbow, ElbowKind, Estimate, Plan, Point, RuleSetId,
    RuleTopic, RunPoint, Wall,
};
use elbowroom::report::figures;
use elbowroom::rules::{CodeCheck, Deciding, Measure, RuleFinding, Verdict, code_check};
use elbowroom::system::assess;
use elbowroom::units::{Length, Pressure};

/// m: far below a sixteenth of an inch.
const DUST: f64 = 1e-9;

pub fn inches(length: f64) -> Length {
    Length::from_inches(length)
}

/// A straight run of legs in one line, in, in the ducts given.
pub fn straight(legs: &[(f64, Duct)]) -> Plan {
    let mut plan = plan::blank("For the rules".to_owned());
    plan.run.points.clear();
    let mut at = plan.dryer.outlet();
    for (index, (leg, duct)) in legs.iter().enumerate() {
        at = Point::new(at.x, at.y - inches(*leg).metres());
        plan.run.points.push(RunPoint {
            id: format!("p{index}").as_str().into(),
            position: at,
            duct: *duct,
            leg: plan::LegState::default(),
            fitting: plan.run.outlet,
        });
    }
    plan
}

const SEMI_RIGID: Duct = Duct::SemiRigid {
    short_of_full_stretch_percent: 0.0,
};

fn check(plan: &Plan) -> CodeCheck {
    code_check(plan, &assess(plan))
}

pub fn all(plan: &Plan, topic: RuleTopic) -> Vec<RuleFinding> {
    let found = check(plan).findings.into_iter();
    found.filter(|finding| finding.topic == topic).collect()
}

pub fn one(plan: &Plan, topic: RuleTopic) -> RuleFinding {
    let mut found = all(plan, topic);
    assert_eq!(found.len(), 1, "{topic:?}");
    found.remove(0)
}

fn with_set(mut plan: Plan, set: RuleSetId) -> Plan {
    plan.code.rule_set = set;
    plan
}

/// 8 ft in the residential and mechanical codes, 6 ft in the uniform one, to a sixteenth.
#[test]
fn the_transition_duct_to_a_sixteenth() {
    let mut tally = Tally::new("transition");
    for (set, limit) in [
        (RuleSetId::Irc2021, 96.0),
        (RuleSetId::Irc2012, 96.0),
        (RuleSetId::IrcBefore2012, 96.0),
        (RuleSetId::Imc504, 96.0),
        (RuleSetId::Umc504, 72.0),
    ] {
        for (more, verdict) in [(0.0, Verdict::Meets), (0.0625, Verdict::DoesNotMeet)] {
            let plan = straight(&[(limit + more, SEMI_RIGID), (60.0, Duct::Rigid)]);
            let found = one(&with_set(plan, set), RuleTopic::TransitionLength);
            tally.equal(format!("{set:?} {more}"), &found.verdict, &verdict);
            let Some(Measure::Length(margin)) = found.margin else {
                panic!("{found:?}")
            };
            tally.within(format!("{set:?}"), margin.inches(), -more, 1e-6);
        }
    }
    tally.finish(20);
}

/// An estimated transition duct that straddles the limit: 7 ft drawn, 2 ft more at most. It turns at 8 ft.
#[test]
fn an_estimated_transition_duct_turns_at_its_limit() {
    let mut plan = straight(&[(84.0, SEMI_RIGID), (60.0, Duct::Rigid)]);
    plan.run.points[0].leg.estimate = Some(Estimate {
        less: inches(12.0),
        more: inches(24.0),
    });
    let found = one(&plan, RuleTopic::TransitionLength);
    assert_eq!(found.verdict, Verdict::CannotTell);
    let Some(Deciding::Length { at_most, .. }) = found.deciding else {
        panic!("{found:?}")
    };
    assert!((at_most.inches() - 96.0).abs() < 1e-6);
}

/// Two lengths of flexible duct joined by an elbow are two; one that is bent by hand is one.
#[test]
fn a_transition_duct_of_two_lengths() {
    for (kind, pieces, verdict) in [
        (ElbowKind::Segmented, 2, Verdict::DoesNotMeet),
        (ElbowKind::BentFlexible, 1, Verdict::Meets),
    ] {
        let mut plan = straight(&[(30.0, SEMI_RIGID), (30.0, SEMI_RIGID), (60.0, Duct::Rigid)]);
        let corner = plan.run.points[0].position;
        plan.run.points[1].position = Point::new(corner.x + inches(30.0).metres(), corner.y);
        plan.run.points[2].position = Point::new(corner.x + inches(90.0).metres(), corner.y);
        plan.run.points[0].fitting.elbow = Elbow {
            kind,
            radius: inches(4.0),
        };
        let found = one(&plan, RuleTopic::TransitionOnePiece);
        assert_eq!(found.measured, Some(Measure::Count(pieces)), "{kind:?}");
        assert_eq!(found.verdict, verdict, "{kind:?}");
    }
    // In one line and of one size they are one; a reducer between two sizes joins two.
    let mut plan = straight(&[(30.0, SEMI_RIGID), (30.0, SEMI_RIGID), (60.0, Duct::Rigid)]);
    let count = |plan: &Plan| one(plan, RuleTopic::TransitionOnePiece).measured;
    assert_eq!(count(&plan), Some(Measure::Count(1)));
    plan.run.points[1].leg.diameter = Some(inches(5.0));
    assert_eq!(count(&plan), Some(Measure::Count(2)));
}

#[test]
fn a_transition_duct_through_a_wall_is_concealed() {
    let mut plan = straight(&[(40.0, SEMI_RIGID), (60.0, Duct::Rigid)]);
    assert_eq!(
        one(&plan, RuleTopic::TransitionConcealed).verdict,
        Verdict::Meets
    );
    let outlet = plan.dryer.outlet();
    let at = |down: f64| outlet.y - inches(down).metres();
    let wall = |y: f64| Wall {
        id: "w1".into(),
        from_x_m: outlet.x - 1.0,
        from_y_m: y,
        to_x_m: outlet.x + 1.0,
        to_y_m: y,
        thickness: inches(4.5),
        outside: false,
    };
    // One that ends on the wall's middle does not pass it.
    plan.walls = vec![wall(at(40.0))];
    assert_eq!(
        one(&plan, RuleTopic::TransitionConcealed).verdict,
        Verdict::Meets
    );
    plan.walls = vec![wall(at(20.0))];
    let found = one(&plan, RuleTopic::TransitionConcealed);
    assert_eq!(found.verdict, Verdict::DoesNotMeet);
    assert_eq!(found.elements.len(), 1);
    plan.walls.clear();
    plan.run.points[0].leg.concealed = Some(ConcealedElbows { least: 0, most: 1 });
    assert_eq!(
        one(&plan, RuleTopic::TransitionConcealed).verdict,
        Verdict::DoesNotMeet
    );
}

#[test]
fn duct_size_and_material() {
    let mut plan = straight(&[(60.0, Duct::Rigid)]);
    assert_eq!(one(&plan, RuleTopic::DuctSize).verdict, Verdict::Meets);
    assert_eq!(one(&plan, RuleTopic::DuctMaterial).verdict, Verdict::Meets);
    plan.run.diameter = inches(3.0);
    let found = one(&plan, RuleTopic::DuctSize);
    assert_eq!(found.verdict, Verdict::DoesNotMeet);
    assert_eq!(found.measured, Some(Measure::Size(inches(3.0))));
    let plan = straight(&[(60.0, Duct::Rigid), (30.0, SEMI_RIGID)]);
    let found = one(&plan, RuleTopic::DuctMaterial);
    assert_eq!(found.verdict, Verdict::DoesNotMeet);
    assert_eq!(found.elements[0].to_string(), "leg:p1");
    let flat = Duct::FlatRectangular {
        width: inches(10.0),
        depth: inches(3.25),
    };
    let found = one(&straight(&[(60.0, flat)]), RuleTopic::DuctSize);
    assert_eq!(found.verdict, Verdict::CannotTell);
    assert!(matches!(
        found.deciding,
        Some(Deciding::RectangularDuct { .. })
    ));
}

/// Supports every 12 ft, and every 4 ft: 24 ft need two, or six; a sixteenth more needs one more.
#[test]
fn supports_are_counted_by_the_sets_spacing() {
    let mut tally = Tally::new("supports");
    for (set, length, count) in [
        (RuleSetId::Irc2021, 288.0, 2),
        (RuleSetId::Irc2021, 288.0625, 3),
        (RuleSetId::Imc504, 288.0, 6),
        (RuleSetId::Imc504, 288.0625, 7),
        (RuleSetId::Ifgc614, 48.0, 1),
        (RuleSetId::IrcBefore2012, 49.0, 2),
    ] {
        let found = one(
            &with_set(straight(&[(length, Duct::Rigid)]), set),
            RuleTopic::Supports,
        );
        let label = format!("{set:?} {length}");
        tally.equal(&label, &found.measured, &Some(Measure::Count(count)));
        tally.equal(&label, &found.verdict, &Verdict::CheckOnSite);
    }
    tally.finish(12);
}

/// 30 ft drawn, estimated to 10 ft more: 35 ft is where the verdict turns.
#[test]
fn an_estimated_length_turns_at_the_limit() {
    let mut plan = straight(&[(360.0, Duct::Rigid)]);
    plan.run.points[0].leg.estimate = Some(Estimate {
        less: inches(0.0),
        more: inches(120.0),
    });
    let found = one(&plan, RuleTopic::Length);
    assert_eq!(found.verdict, Verdict::CannotTell);
    let Some(Deciding::Length { at_most, element }) = found.deciding else {
        panic!("{found:?}")
    };
    assert_eq!(element.to_string(), "leg:p0");
    assert!((at_most.inches() - 420.0).abs() < 1e-6);
    // Shorter by a sixteenth than that it meets, over it by one it does not.
    plan.run.points[0].leg.estimate = None;
    for (more, verdict) in [(0.0, Verdict::Meets), (0.0625, Verdict::DoesNotMeet)] {
        let outlet = plan.dryer.outlet();
        plan.run.points[0].position =
            Point::new(outlet.x, outlet.y - (at_most + inches(more)).metres());
        assert_eq!(one(&plan, RuleTopic::Length).verdict, verdict);
    }
}

/// 15 ft and up to six concealed elbows of 90 deg at 5 ft each: four keep 35 ft, five do not. In the
/// uniform code 10 ft and up to six, of which two are in the 14 ft: 2 ft for each further one leave
/// room for two more.
#[test]
fn concealed_elbows_turn_at_a_number() {
    for (set, length, expected) in [
        (RuleSetId::Irc2021, 180.0, 4),
        (RuleSetId::Umc504, 120.0, 4),
        (RuleSetId::IrcBefore2012, 180.0, 2),
    ] {
        let mut plan = with_set(straight(&[(length, Duct::Rigid)]), set);
        plan.run.points[0].leg.concealed = Some(ConcealedElbows { least: 0, most: 6 });
        let found = one(&plan, RuleTopic::Length);
        assert_eq!(found.verdict, Verdict::CannotTell, "{set:?}");
        let Some(Deciding::Elbows { at_most, .. }) = found.deciding else {
            panic!("{found:?}")
        };
        assert_eq!(at_most, Some(expected), "{set:?}");
        for (count, verdict) in [
            (expected, Verdict::Meets),
            (expected + 1, Verdict::DoesNotMeet),
        ] {
            plan.run.points[0].leg.concealed = Some(ConcealedElbows {
                least: count,
                most: count,
            });
            assert_eq!(
                one(&plan, RuleTopic::Length).verdict,
                verdict,
                "{set:?} {count}"
            );
        }
    }
}

/// The maker's pressure: none typed, none told; one far above and one far below the likely pressure
/// are told for sure; the likely pressure itself cannot be.
#[test]
fn the_makers_back_pressure() {
    let mut plan = plan::example("title".into(), "note".into(), "breast".into());
    assert!(all(&plan, RuleTopic::MakerBackPressure).is_empty());
    let likely = figures(&plan).0.totals.unwrap().back_pressure;
    for (limit, verdict) in [
        (likely * 3.0, Verdict::Meets),
        (likely * 0.2, Verdict::DoesNotMeet),
        (likely, Verdict::CannotTell),
    ] {
        for set in [RuleSetId::Irc2021, RuleSetId::DryerMaker] {
            plan.code.rule_set = set;
            plan.code.maker.back_pressure = Some(limit);
            let found = one(&plan, RuleTopic::MakerBackPressure);
            assert_eq!(found.verdict, verdict, "{limit:?}");
            assert_eq!(found.measured, Some(Measure::Pressure(likely)));
            let is_input = matches!(found.deciding, Some(Deciding::Input { .. }));
            assert_eq!(is_input, verdict == Verdict::CannotTell, "{found:?}");
        }
    }
}

/// Pa: what the quantile's tolerance leaves, and the middle of inputs without a likely quantile.
const NEAR: f64 = 1.0;

/// The value at which the verdict is said to turn does turn it: set as the plan's own, the likely
/// pressure is the limit.
#[test]
fn the_deciding_input_turns_the_verdict() {
    let mut plan = plan::example("title".into(), "note".into(), "breast".into());
    let likely = figures(&plan).0.totals.unwrap().back_pressure;
    let limit = likely + Pressure::from_pascals(3.0);
    plan.code.maker.back_pressure = Some(limit);
    let found = one(&plan, RuleTopic::MakerBackPressure);
    let Some(Deciding::Input {
        input,
        turns_at: Some(value),
    }) = found.deciding
    else {
        panic!("{found:?}")
    };
    plan.overrides.push(plan::Override {
        input,
        low: value,
        likely: value,
        high: value,
        note: String::new(),
    });
    let turned = figures(&plan).0.totals.unwrap().back_pressure;
    assert!(
        (turned - limit).abs().pascals() < NEAR,
        "{turned:?} {limit:?}"
    );
}

/// Beside a code the maker's length is told too, by the maker's own elbows alone; without one it is not.
#[test]
fn the_makers_length_stands_beside_the_code() {
    let mut plan = straight(&[(480.0, Duct::Rigid)]);
    assert!(all(&plan, RuleTopic::MakerLength).is_empty());
    plan.code.maker.length = Some(Length::from_feet(60.0));
    assert_eq!(one(&plan, RuleTopic::Length).verdict, Verdict::DoesNotMeet);
    assert_eq!(one(&plan, RuleTopic::MakerLength).verdict, Verdict::Meets);
    plan.code.rule_set = RuleSetId::DryerMaker;
    assert_eq!(one(&plan, RuleTopic::MakerLength).verdict, Verdict::Meets);
    assert!(all(&plan, RuleTopic::Length).is_empty());
}

/// A label is asked for over 35 ft of equivalent length, and before that wherever the duct is concealed.
#[test]
fn the_label_is_asked_for_where_the_text_does() {
    let mut tally = Tally::new("label");
    for (set, length, asked) in [
        (RuleSetId::Irc2021, 420.0, false),
        (RuleSetId::Irc2021, 420.0625, true),
        (RuleSetId::Irc2012, 60.0, true),
        (RuleSetId::Umc504, 500.0, false),
    ] {
        let plan = with_set(straight(&[(length, Duct::Rigid)]), set);
        let label = check(&plan).label;
        tally.equal(format!("{set:?} {length}"), &label.is_some(), &asked);
    }
    tally.finish(4);
}

/// Code and air: in rigid duct of the run's own size a straight counts alike; the mitre of the example
/// costs more than its deduction; the hood is not counted.
#[test]
fn code_and_air_side_by_side() {
    let mut plan = plan::example("title".into(), "note".into(), "breast".into());
    plan.run.points[1].fitting.elbow.kind = ElbowKind::SharpMitre;
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    let found = check(&plan).disagreement.unwrap();
    let straight = found
        .elements
        .iter()
        .find(|it| it.element.to_string() == "leg:p4");
    assert!((straight.unwrap().factor().unwrap() - 1.0).abs() < 1e-6);
    assert_eq!(found.most.as_ref().unwrap().to_string(), "elbow:p2");
    assert!(
        found
            .element(found.most.as_ref().unwrap())
            .unwrap()
            .factor()
            .unwrap()
            > 2.0
    );
    assert_eq!(found.uncounted.unwrap().to_string(), "termination:p4");
    let sum: Length = found.elements.iter().map(|it| it.air).sum();
    assert!((sum - found.air).abs().metres() < DUST);
    let counted: Length = found.elements.iter().filter_map(|it| it.code).sum();
    assert!((counted - found.code).abs().metres() < DUST);
}
