//! Readings on site: what a clean run reads, one house walked through fault by fault, and what is asked
//! for next.

use crate::fault_cases::TrueFault;
use crate::fault_world::World;
use crate::tally::Tally;
use elbowroom::diagnosis::{
    CauseKind, Caveat, Test, TestCaution, against_limit, clean_readings, diagnose,
};
use elbowroom::plan::{
    Against, Conditions, Done, Duct, Elbow, ElbowKind, Energy, Entry, Fitting, Found, LegState,
    Look, Measured, Mended, Plan, Point, Preparation, Reading, Riser, RunPoint, Spot, Termination,
    TerminationKind, Visit, blank,
};
use elbowroom::rules::Verdict;
use elbowroom::system::{CompiledRun, Draw, ElementKind, operating_point};
use elbowroom::units::{Length, Pressure, Temperature};

/// An invented house: out of the dryer, up behind it, round a corner, up through the roof. Four right
/// angles, two risers, a roof cap.
pub fn house() -> Plan {
    let mut plan = blank("House with a roof cap, invented".to_owned());
    plan.exhaust.temperature = Temperature::from_celsius(20.0);
    plan.exhaust.relative_humidity = 0.5;
    plan.site.outdoor_temperature = Temperature::from_celsius(20.0);
    plan.site.outdoor_relative_humidity = 0.5;
    let elbow = Elbow {
        kind: ElbowKind::Segmented,
        radius: Length::from_inches(4.0),
    };
    let point = |id: &str, x: f64, y: f64, riser: Option<f64>| RunPoint {
        id: id.into(),
        position: Point::new(x, y),
        duct: Duct::Rigid,
        leg: LegState::default(),
        fitting: Fitting {
            elbow,
            riser: riser.map(|rise| Riser {
                rise: Length::from_metres(rise),
                elbow,
            }),
        },
    };
    let outlet = plan.dryer.outlet();
    let (x, y) = (outlet.x, outlet.y);
    plan.run.points = vec![
        point("p1", x, y - 0.6, Some(1.8)),
        point("p2", x + 1.5, y - 0.6, None),
        point("p3", x + 1.5, y - 2.4, Some(2.0)),
    ];
    plan.run.termination = Termination::clean(TerminationKind::RoofCap);
    plan
}

/// A visit with everything made ready for a reading.
pub fn visit() -> Visit {
    let mut visit = Visit::new("v1");
    visit.preparation = [
        Preparation::ScreenCleaned,
        Preparation::DrumEmpty,
        Preparation::NoHeatCycle,
        Preparation::GaugeZeroed,
    ]
    .into();
    visit
}

pub fn static_at(at: Spot, pascals: f64, conditions: Conditions) -> Reading {
    Reading {
        at,
        measured: Measured::StaticPressure {
            pressure: Pressure::from_pascals(pascals),
            against: Against::Room,
            resolution: Pressure::from_pascals(1.0),
            tolerance: Pressure::from_pascals(2.0),
        },
        conditions,
    }
}

/// The house has at least four fittings, a riser and a roof cap.
#[test]
fn the_house_is_what_it_is_called() {
    let (run, findings) = CompiledRun::of(&house());
    let elbows = run.elements.iter();
    let elbows = elbows.filter(|it| matches!(it.kind, ElementKind::Elbow { .. }));
    assert_eq!(elbows.count(), 4);
    assert!(run.rise.metres() > 3.0, "{findings:?}");
}

/// A clean run reads as `system` works it out for the same air.
/// Source: `system::operating_point`, which has reference sets of its own.
#[test]
fn a_clean_run_reads_as_predicted() {
    /// Of the reading: the losses are held between sixteen airflows.
    const TOLERANCE: f64 = 0.002;
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    let point = operating_point(&run, &Draw::LIKELY).unwrap();
    let expected = point.evaluation.back_pressure.pascals();
    let reading = static_at(Spot::Outlet, expected, Conditions::PLAIN);
    let found = clean_readings(&plan, &[&reading])[0].unwrap();
    let mut tally = Tally::new("clean readings");
    tally.relative("outlet", found.likely, expected, TOLERANCE);
    let is_inside = found.band.low < expected && expected < found.band.high;
    tally.holds("the band holds it", is_inside);
    // At every joint too, by the pressure line of the same run.
    let ledger = elbowroom::system::Ledger::of(&run, &point);
    let line = elbowroom::system::pressure_line(&point, &ledger);
    for pair in line.chunks(2).skip(1) {
        let reading = static_at(
            Spot::Before(pair[0].element.clone()),
            0.0,
            Conditions::PLAIN,
        );
        let found = clean_readings(&plan, &[&reading])[0].unwrap();
        let expected = pair[0].r#static.pascals();
        let label = pair[0].element.to_string();
        tally.within(label, found.likely, expected, 0.002 * 100.0);
    }
    // A bare outlet reads nought.
    let open = Conditions {
        open_joint: Some(Spot::Outlet),
        ..Conditions::PLAIN
    };
    let bare = static_at(Spot::Outlet, 0.0, open);
    let found = clean_readings(&plan, &[&bare])[0].unwrap();
    tally.within("bare outlet", found.likely, 0.0, 1e-9);
    tally.finish(8);
}

/// A blockage that the plan has of its own is no part of the clean run.
#[test]
fn the_clean_run_is_without_the_plans_own_faults() {
    let mut plan = house();
    let reading = static_at(Spot::Outlet, 0.0, Conditions::PLAIN);
    let before = clean_readings(&plan, &[&reading])[0].unwrap();
    plan.run.points[1].leg.blockage_free_area = Some(0.4);
    plan.run.points[1].leg.leak_free_area_m2 = Some(0.001);
    plan.run.termination.free_area = 0.5;
    assert_eq!(clean_readings(&plan, &[&reading])[0], Some(before));
}

/// The simulated house reads what `system` works out for the same blockage drawn in the plan.
/// Source: `system::operating_point` on a plan with a blockage in a leg, or at its end.
#[test]
fn the_simulated_house_obeys_the_physics() {
    let mut tally = Tally::new("simulated readings");
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    for (index, free) in [(1, 0.3), (1, 0.6), (2, 0.45)] {
        let mut blocked = plan.clone();
        blocked.run.points[index].leg.blockage_free_area = Some(free);
        let (with, _) = CompiledRun::of(&blocked);
        let expected = operating_point(&with, &Draw::LIKELY).unwrap().evaluation;
        let id = format!("leg:p{}", index + 1);
        let mut elements = run.elements.iter();
        let place = elements.position(|it| it.id.to_string() == id).unwrap();
        let fault = TrueFault {
            kind: CauseKind::Blockage,
            place,
            severity: free,
        };
        let found = read_outlet(&mut World::ideal(plan.clone(), vec![fault]));
        // To the gauge's last digit.
        tally.within(id, found, expected.back_pressure.pascals(), 0.6);
    }
    let mut stuck = plan.clone();
    stuck.run.termination.free_area = 0.4;
    let (with, _) = CompiledRun::of(&stuck);
    let expected = operating_point(&with, &Draw::LIKELY).unwrap().evaluation;
    let fault = TrueFault {
        kind: CauseKind::FlapStuck,
        place: run.elements.len() - 1,
        severity: 0.4,
    };
    let found = read_outlet(&mut World::ideal(plan, vec![fault]));
    tally.within("flap", found, expected.back_pressure.pascals(), 0.6);
    tally.finish(4);
}

fn read_outlet(world: &mut World) -> f64 {
    match world.entry(&Test::ReadAtOutlet) {
        Entry::Reading(Reading {
            measured: Measured::StaticPressure { pressure, .. },
            ..
        }) => pressure.pascals(),
        other => panic!("{other:?}"),
    }
}

/// Blocked in turn at each right angle and at the flap, the place is in the first two named after at
/// most four tests; cleaned, the house reads as predicted.
#[test]
fn each_fault_of_the_house_is_named() {
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    let clean = read_outlet(&mut World::ideal(plan.clone(), Vec::new()));
    let mut tally = Tally::new("faults of the house");
    for (place, element) in run.elements.iter().enumerate() {
        let kind = match element.kind {
            ElementKind::Elbow { .. } => CauseKind::Blockage,
            ElementKind::Termination { .. } => CauseKind::FlapStuck,
            _ => continue,
        };
        for severity in [0.25, 0.35, 0.5] {
            let fault = TrueFault {
                kind,
                place,
                severity,
            };
            let mut world = World::ideal(plan.clone(), vec![fault]);
            let mut visit = visit();
            visit.entries.push(world.entry(&Test::ReadAtOutlet));
            let mut found = diagnose(&plan, &visit).unwrap();
            for _ in 0..4 {
                let Some(next) = found.next.clone() else {
                    break;
                };
                visit.entries.push(world.entry(&next.test));
                found = diagnose(&plan, &visit).unwrap();
            }
            let mut first_two = found.causes.iter().take(2);
            let is_named = first_two
                .any(|it| it.cause.kind == kind && it.cause.element.as_ref() == Some(&element.id));
            tally.holds(format!("{} at {severity}", element.id), is_named);
            world.clean(&element.id);
            visit.entries.push(Entry::Done(Done {
                what: Mended::Element(element.id.clone()),
            }));
            tally.within("cleaned", read_outlet(&mut world), clean, 0.0);
            visit.entries.push(world.entry(&Test::ReadAtOutlet));
            let found = diagnose(&plan, &visit).unwrap();
            tally.holds(
                format!("{} mended: {:.3}", element.id, found.harmless),
                found.harmless > 0.5,
            );
        }
    }
    tally.finish(3 * 3 * 5);
}

/// Whatever is read, no probability is nought or one.
#[test]
fn nothing_is_ever_certain() {
    let mut tally = Tally::new("certainty");
    let plan = house();
    for pascals in [0.0, 20.0, 90.0, 180.0, 320.0, 900.0] {
        let mut visit = visit();
        for _ in 0..6 {
            let reading = static_at(Spot::Outlet, pascals, Conditions::PLAIN);
            visit.entries.push(Entry::Reading(reading));
        }
        let found = diagnose(&plan, &visit).unwrap();
        for odds in &found.causes {
            let open = 0.0 < odds.probability && odds.probability < 1.0;
            // A screen that was clean all the while is not asked about.
            let is_screen = odds.cause.kind == CauseKind::LintScreen;
            tally.holds(format!("{pascals} Pa, {:?}", odds.cause), open || is_screen);
        }
        let open = 0.0 < found.nothing && found.nothing < 1.0;
        tally.holds(format!("{pascals} Pa, nothing"), open);
    }
    tally.finish(60);
}

/// Readings that no fault explains together are said to be so, and those of one fault are not.
#[test]
fn readings_that_contradict_each_other_are_said_to() {
    let plan = house();
    let contradicts = |readings: &[(Spot, f64)]| {
        let mut visit = visit();
        for (at, pascals) in readings {
            let reading = static_at(at.clone(), *pascals, Conditions::PLAIN);
            visit.entries.push(Entry::Reading(reading));
        }
        let found = diagnose(&plan, &visit).unwrap();
        let mut caveats = found.caveats.iter();
        caveats.any(|caveat| matches!(caveat, Caveat::Contradiction(_)))
    };
    assert!(!contradicts(&[
        (Spot::Outlet, 130.0),
        (Spot::Outlet, 131.0)
    ]));
    assert!(contradicts(&[(Spot::Outlet, 80.0), (Spot::Outlet, 240.0)]));
    // Downstream more than upstream.
    let (run, _) = CompiledRun::of(&plan);
    let far = Spot::Before(run.elements[6].id.clone());
    assert!(contradicts(&[(Spot::Outlet, 60.0), (far, 250.0)]));
}

/// Two readings at the outlet contradict each other from some difference on. Where the drum was full, or
/// the gauge was not zeroed, that difference is none yet: such readings tell less.
#[test]
fn a_reading_that_was_not_made_ready_tells_less() {
    let plan = house();
    let contradicts = |difference: f64, drum_empty: bool, zeroed: bool| {
        let mut visit = visit();
        if !zeroed {
            visit.preparation.remove(&Preparation::GaugeZeroed);
        }
        for pascals in [110.0, 110.0 + difference] {
            let conditions = Conditions {
                drum_empty,
                ..Conditions::PLAIN
            };
            let reading = static_at(Spot::Outlet, pascals, conditions);
            visit.entries.push(Entry::Reading(reading));
        }
        let caveats = diagnose(&plan, &visit).unwrap().caveats;
        let mut caveats = caveats.iter();
        caveats.any(|caveat| matches!(caveat, Caveat::Contradiction(_)))
    };
    let (mut agrees, mut differs) = (0.0, 64.0);
    for _ in 0..5 {
        let middle = f64::midpoint(agrees, differs);
        if contradicts(middle, true, true) {
            differs = middle;
        } else {
            agrees = middle;
        }
    }
    assert!(contradicts(differs, true, true), "{differs} Pa");
    assert!(
        !contradicts(differs, false, true),
        "{differs} Pa, drum full"
    );
    assert!(
        !contradicts(differs, true, false),
        "{differs} Pa, not zeroed"
    );
}

/// A verdict stands against a limit that was typed, and against nothing else.
#[test]
fn a_reading_is_judged_by_a_typed_limit_alone() {
    let mut plan = house();
    let reading = |pascals: f64| static_at(Spot::Outlet, pascals, Conditions::PLAIN);
    assert_eq!(against_limit(&plan, &reading(300.0)), None);
    plan.code.maker.back_pressure = Some(Pressure::from_pascals(150.0));
    let verdict = |pascals: f64| against_limit(&plan, &reading(pascals)).unwrap().verdict;
    assert_eq!(verdict(120.0), Verdict::Meets);
    assert_eq!(verdict(180.0), Verdict::DoesNotMeet);
    // The gauge may be off by 2 Pa.
    assert_eq!(verdict(149.0), Verdict::CannotTell);
    let mut open = reading(0.0);
    open.conditions.open_joint = Some(Spot::Outlet);
    assert_eq!(against_limit(&plan, &open), None);
}

/// A dryer that always heats is asked for no test with a joint open, and each that is asked for with
/// one carries the full caution.
#[test]
fn a_joint_is_opened_cold_or_not_at_all() {
    let mut plan = house();
    plan.dryer.energy = Energy::Gas;
    let mut always = visit();
    always.always_heats = true;
    let mut asked = 0;
    for pascals in [60.0, 120.0, 200.0, 280.0] {
        for visit in [visit(), always.clone()] {
            let mut visit = visit;
            let conditions = Conditions {
                heat: visit.always_heats,
                ..Conditions::PLAIN
            };
            let reading = static_at(Spot::Outlet, pascals, conditions);
            visit.entries.push(Entry::Reading(reading));
            let found = diagnose(&plan, &visit).unwrap();
            for suggestion in [found.next, found.runner_up].into_iter().flatten() {
                asked += 1;
                let opens = suggestion.test.runs_with_joint_open();
                assert!(!(visit.always_heats && suggestion.test.must_be_cold()));
                assert_eq!(suggestion.cautions.contains(&TestCaution::JointOpen), opens);
                assert!(suggestion.cautions.contains(&TestCaution::CarbonMonoxide));
            }
        }
    }
    assert!(asked > 8, "{asked}");
}

/// "Same reading, door open" tells a starved room from a blocked run.
#[test]
fn an_open_door_tells_a_starved_room() {
    let plan = house();
    let starved = TrueFault {
        kind: CauseKind::RoomStarved,
        place: usize::MAX,
        severity: 0.004,
    };
    let mut world = World::ideal(plan.clone(), vec![starved]);
    let mut visit = visit();
    visit.entries.push(world.entry(&Test::ReadAtOutlet));
    visit.entries.push(world.entry(&Test::OpenDoor));
    let found = diagnose(&plan, &visit).unwrap();
    assert_eq!(found.causes[0].cause.kind, CauseKind::RoomStarved);
    assert!(found.causes[0].probability > 0.9, "{:?}", found.causes[0]);
}

/// A look that shows lint makes its element likelier, one that shows none less likely.
#[test]
fn a_look_moves_the_odds() {
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    let element = run.elements[3].id.clone();
    let odds = |found: Option<Found>| {
        let mut visit = visit();
        let reading = static_at(Spot::Outlet, 190.0, Conditions::PLAIN);
        visit.entries.push(Entry::Reading(reading));
        visit.entries.extend(found.map(|found| {
            let at = element.clone();
            Entry::Look(Look { at, found })
        }));
        let found = diagnose(&plan, &visit).unwrap();
        let mut causes = found.causes.iter();
        let cause = causes.find(|it| it.cause.element.as_ref() == Some(&element));
        cause.unwrap().probability
    };
    let before = odds(None);
    assert!(odds(Some(Found::Blocked)) > 3.0 * before);
    assert!(odds(Some(Found::Clear)) < before / 3.0);
}
