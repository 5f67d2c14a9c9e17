//! What the rules find where a run ends: its distance from openings and intakes, and whether it ends
//! outdoors. Limits are those of the rule sets' own sources; distances are worked out here by hand.

use crate::code_findings::{all, inches, one, straight};
use crate::tally::Tally;
use elbowroom::plan::{
    self, Duct, Level, Opening, OpeningKind, Plan, RuleSetId, RuleTopic, TerminationKind, Wall,
    Zone, ZoneKind,
};
use elbowroom::rules::{Deciding, Measure, Verdict, too_near};
use elbowroom::units::{Length, Temperature};

/// A run that ends at (0, 0) outside a wall along the sheet's top, 6 in thick, whose outer face is
/// 1 in below the end; an opening 36 in wide that begins so far to the right.
fn beside_an_opening(kind: OpeningKind, aside: f64) -> Plan {
    let mut plan = straight(&[(60.0, Duct::Rigid)]);
    let end = plan.run.points[0].position;
    let middle = end.y + inches(1.0 + 3.0).metres();
    plan.walls = vec![Wall {
        id: "w1".into(),
        from_x_m: end.x - 2.0,
        from_y_m: middle,
        to_x_m: end.x + 5.0,
        to_y_m: middle,
        thickness: inches(6.0),
        outside: true,
    }];
    plan.openings = vec![Opening {
        id: "o1".into(),
        wall: "w1".into(),
        kind,
        offset: Length::from_metres(2.0) + inches(aside),
        width: inches(36.0),
    }];
    plan
}

/// The nearest edge is aside to the right and 1 in down: a right triangle.
#[test]
fn the_distance_is_to_the_openings_nearest_edge() {
    let mut tally = Tally::new("openings");
    for (aside, verdict) in [
        (35.0, Verdict::CannotTell),
        (36.0, Verdict::Meets),
        (12.0, Verdict::CannotTell),
    ] {
        let plan = beside_an_opening(OpeningKind::Window, aside);
        let found = one(&plan, RuleTopic::OpeningDistance);
        let Some(Measure::Length(distance)) = found.measured else {
            panic!("{found:?}")
        };
        let level = f64::hypot(aside, 1.0);
        tally.within(format!("{aside} in"), distance.inches(), level, 1e-6);
        tally.equal(format!("{aside} in"), &found.verdict, &verdict);
        // What height would settle it: the other side of a right triangle whose long side is 3 ft.
        if let Some(Deciding::OpeningHeight { differs_by }) = found.deciding {
            let height = (36.0 * 36.0 - level * level).sqrt();
            tally.within("height", differs_by.inches(), height, 1e-6);
        }
        let drawn = too_near(&plan, &plan::RunPath::of(&plan));
        tally.equal("drawn", &drawn.is_empty(), &(verdict == Verdict::Meets));
    }
    tally.finish(11);
}

/// A door stands on the floor: a hood at knee height beside it has no height to spare. Over the door,
/// or with a rule set that leaves it out, that is not said.
#[test]
fn a_door_decides_where_a_window_does_not() {
    let mut plan = beside_an_opening(OpeningKind::Door, 12.0);
    assert_eq!(
        one(&plan, RuleTopic::OpeningDistance).verdict,
        Verdict::DoesNotMeet
    );
    plan.dryer.outlet_height = inches(100.0);
    assert_eq!(
        one(&plan, RuleTopic::OpeningDistance).verdict,
        Verdict::CannotTell
    );
    plan.code.rule_set = RuleSetId::Umc504;
    assert!(all(&plan, RuleTopic::OpeningDistance).is_empty());
    // A door between two rooms is no opening into the building.
    let mut plan = beside_an_opening(OpeningKind::Door, 12.0);
    plan.walls[0].outside = false;
    let found = one(&plan, RuleTopic::OpeningDistance);
    assert_eq!(
        (found.verdict, found.measured),
        (Verdict::CheckOnSite, None)
    );
}

/// An air intake 5 ft off keeps 3 ft and not 10: the first is a verdict, the second is looked at.
#[test]
fn an_air_intake_is_looked_at_on_site() {
    let plan = beside_an_opening(OpeningKind::AirIntake, 60.0);
    assert_eq!(
        one(&plan, RuleTopic::OpeningDistance).verdict,
        Verdict::Meets
    );
    let found = one(&plan, RuleTopic::IntakeDistance);
    assert_eq!(found.verdict, Verdict::CheckOnSite);
    let Some(Measure::Length(margin)) = found.margin else {
        panic!("{found:?}")
    };
    assert!((margin.inches() - (f64::hypot(60.0, 1.0) - 120.0)).abs() < 1e-6);
    assert_eq!(too_near(&plan, &plan::RunPath::of(&plan)).len(), 1);
}

#[test]
fn a_run_that_ends_in_an_attic_does_not_end_outdoors() {
    let mut plan = straight(&[(60.0, Duct::Rigid)]);
    let end = plan.run.points[0].position;
    assert_eq!(
        one(&plan, RuleTopic::OutdoorTermination).verdict,
        Verdict::CheckOnSite
    );
    plan.zones = vec![Zone {
        id: "z1".into(),
        kind: ZoneKind::Garage,
        level: Level::Room,
        temperature: Temperature::from_celsius(5.0),
        x_m: end.x - 1.0,
        y_m: end.y - 1.0,
        width: Length::from_metres(2.0),
        depth: Length::from_metres(2.0),
    }];
    assert_eq!(
        one(&plan, RuleTopic::OutdoorTermination).verdict,
        Verdict::DoesNotMeet
    );
    assert_eq!(one(&plan, RuleTopic::GarageSeparation).elements.len(), 1);
    // On another level it is not there; and a cap on the roof stands over the attic.
    plan.zones[0].level = Level::CeilingSpace;
    assert_eq!(
        one(&plan, RuleTopic::OutdoorTermination).verdict,
        Verdict::CheckOnSite
    );
    plan.zones[0].level = Level::Room;
    plan.run.termination.kind = TerminationKind::RoofCap;
    assert_eq!(
        one(&plan, RuleTopic::OutdoorTermination).verdict,
        Verdict::CheckOnSite
    );
    plan.zones[0].kind = ZoneKind::Outdoors;
    plan.run.termination.kind = TerminationKind::OpenEnd;
    assert_eq!(
        one(&plan, RuleTopic::OutdoorTermination).verdict,
        Verdict::CheckOnSite
    );
    assert_eq!(
        one(&plan, RuleTopic::BackdraftDamper).verdict,
        Verdict::DoesNotMeet
    );
}
