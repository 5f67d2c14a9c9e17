//! Visits beside one another, before and after a repair, and pictures. Source of what is right: the
//! order in which things were done, by hand.

use crate::fault_cases::TrueFault;
use crate::fault_world::World;
use crate::site_readings::{house, static_at, visit};
use elbowroom::diagnosis::{
    BeforeAfter, CauseKind, Test, before_and_after, clean_readings, diagnose,
};
use elbowroom::editor::{Action, State, VisitChange, update};
use elbowroom::plan::{
    Conditions, Done, Entry, Field, Mended, PictureCoding, Spot, Taken, Visit, VisitPicture, read,
    write,
};
use elbowroom::report::words::Language;
use elbowroom::report::{VisitSheet, figures, sheet_html, visit_sheet};
use elbowroom::system::CompiledRun;
use elbowroom::units::UnitSystem;

fn reading(pascals: f64, conditions: Conditions) -> Entry {
    Entry::Reading(static_at(Spot::Outlet, pascals, conditions))
}

/// The finished example with a visit: a high reading, a repair, a lower one, a picture.
pub fn house_with_readings() -> elbowroom::plan::Plan {
    let mut plan = elbowroom::plan::example("a".to_owned(), "b".to_owned(), "c".to_owned());
    let mut visit = visit();
    visit.entries = vec![
        reading(250.0, Conditions::PLAIN),
        repair(),
        reading(130.0, Conditions::PLAIN),
    ];
    visit.pictures = vec![picture(8)];
    plan.visits = vec![visit];
    plan
}

fn repair() -> Entry {
    Entry::Done(Done {
        what: Mended::WholeRun,
    })
}

#[test]
fn a_reading_is_paired_with_the_one_that_it_repeats() {
    let open_door = Conditions {
        door_open: true,
        ..Conditions::PLAIN
    };
    let mut visit = visit();
    visit.entries = vec![
        reading(250.0, Conditions::PLAIN),
        reading(255.0, Conditions::PLAIN),
        reading(250.0, open_door.clone()),
    ];
    assert_eq!(before_and_after(&visit), [], "nothing was mended");
    visit.entries.extend([
        repair(),
        // Between two repairs: neither before nor after.
        reading(200.0, Conditions::PLAIN),
        repair(),
    ]);
    assert_eq!(before_and_after(&visit), [], "nothing was read after");
    visit.entries.extend([
        reading(140.0, Conditions::PLAIN),
        reading(138.0, Conditions::PLAIN),
    ]);
    let pair = |before, after| BeforeAfter { before, after };
    assert_eq!(before_and_after(&visit), [pair(1, 7)]);
    visit.entries.push(reading(139.0, open_door));
    assert_eq!(before_and_after(&visit), [pair(1, 7), pair(2, 8)]);
}

/// The airflow before the repair is the simulated house's, and after it that of a clean one.
/// Source: the house, of which the fault-finder sees readings alone.
#[test]
fn the_airflow_before_and_now_is_told() {
    let plan = house();
    let (run, _) = CompiledRun::of(&plan);
    let place = 2;
    let fault = TrueFault {
        kind: CauseKind::Blockage,
        place,
        severity: 0.3,
    };
    let airflow = |faults: Vec<TrueFault>| {
        World::ideal(plan.clone(), faults)
            .airflow(&Conditions::PLAIN, None)
            .0
    };
    let expected = airflow(vec![fault.clone()]) / airflow(Vec::new());
    let mut world = World::ideal(plan.clone(), vec![fault]);
    let mut visit = visit();
    visit.entries.push(world.entry(&Test::ReadAtOutlet));
    assert_eq!(diagnose(&plan, &visit).unwrap().airflow_before, None);
    let element = run.elements[place].id.clone();
    world.clean(&element);
    visit.entries.push(Entry::Done(Done {
        what: Mended::Element(element),
    }));
    visit.entries.push(world.entry(&Test::ReadAtOutlet));
    let found = diagnose(&plan, &visit).unwrap();
    let (mean, low, high) = found.airflow_before.unwrap();
    assert!(low < expected && expected < high, "{low} {expected} {high}");
    assert!((mean - expected).abs() < 0.1, "{mean} {expected}");
    assert!(found.airflow_now.0 > 0.95, "{:?}", found.airflow_now);
}

fn act(state: &mut State, visit: Option<&str>, change: VisitChange) {
    let change = Box::new(change);
    let visit = visit.map(Into::into);
    update(state, Action::ChangeVisit { visit, change });
}

fn picture(length: usize) -> VisitPicture {
    VisitPicture {
        taken: Taken::After,
        coding: PictureCoding::Jpeg,
        data_base64: "A".repeat(length).into(),
    }
}

/// An earlier visit is gone on with by its id; a new one leaves it alone.
#[test]
fn an_earlier_visit_can_be_gone_on_with() {
    let mut state = State::new(house());
    let counts = |state: &State| -> Vec<usize> {
        let visits = state.plan.visits.iter();
        visits.map(|visit: &Visit| visit.entries.len()).collect()
    };
    act(
        &mut state,
        None,
        VisitChange::Add(reading(100.0, Conditions::PLAIN)),
    );
    act(&mut state, None, VisitChange::Begin);
    act(&mut state, None, VisitChange::Add(repair()));
    act(&mut state, Some("v1"), VisitChange::Add(repair()));
    assert_eq!(counts(&state), [2, 1]);
    act(&mut state, Some("gone"), VisitChange::Add(repair()));
    assert_eq!(counts(&state), [2, 1]);
    update(&mut state, Action::Undo);
    assert_eq!(counts(&state), [1, 1]);
}

/// Pictures are counted over all visits, bounded in size, undone like any step, and a full job with a
/// floor plan's picture of the greatest size still fits into a file.
#[test]
fn pictures_are_bounded_and_undone() {
    const LARGEST: usize = 130_000;
    const MOST: usize = 12;
    let mut plan = house();
    plan.picture = Some(elbowroom::plan::Picture {
        coding: PictureCoding::Png,
        data_base64: "A".repeat(2_000_000).into(),
        x_m: 0.0,
        y_m: 0.0,
        width: elbowroom::units::Length::from_metres(10.0),
        depth: elbowroom::units::Length::from_metres(10.0),
    });
    let mut state = State::new(plan);
    let count = |state: &State| -> usize {
        let visits = state.plan.visits.iter();
        visits.map(|visit| visit.pictures.len()).sum()
    };
    act(
        &mut state,
        None,
        VisitChange::AddPicture(picture(LARGEST + 4)),
    );
    assert_eq!(count(&state), 0, "too large");
    for index in 0..MOST + 3 {
        if index == 5 {
            act(&mut state, None, VisitChange::Begin);
        }
        act(&mut state, None, VisitChange::AddPicture(picture(LARGEST)));
    }
    assert_eq!(count(&state), MOST);
    assert!(!Field::VISIT_PICTURES.holds(13.0));
    let file = write(&state.plan);
    assert_eq!(read(file.as_bytes()).as_ref(), Ok(&*state.plan));
    act(&mut state, None, VisitChange::RemovePicture(0));
    assert_eq!(count(&state), MOST - 1);
    update(&mut state, Action::Undo);
    assert_eq!(count(&state), MOST);
    act(&mut state, None, VisitChange::RemovePicture(40));
    assert_eq!(count(&state), MOST);
}

/// The sheet holds what was read beside the clean run, a verdict only where a limit was typed, what was
/// done, and nothing that was typed as anything but text. Source: the letters that HTML takes for its own.
#[test]
fn the_sheet_says_what_was_done_and_is_inert() {
    let mut plan = house();
    plan.title = "<script>alert(1)</script>".to_owned();
    let mut visit = visit();
    visit.date = "\"March\" & <b>".to_owned();
    visit.note = "<img src=x onerror=alert(1)>".to_owned();
    visit.entries = vec![
        reading(250.0, Conditions::PLAIN),
        repair(),
        reading(80.0, Conditions::PLAIN),
    ];
    visit.pictures = vec![picture(8)];
    let sheet = |plan: &elbowroom::plan::Plan| {
        let (figures, _) = figures(plan);
        let visit = &plan.visits[0];
        let readings = visit.entries.iter().filter_map(|entry| match entry {
            Entry::Reading(reading) => Some(reading),
            _ => None,
        });
        let clean = clean_readings(plan, &readings.collect::<Vec<_>>());
        let diagnosis = diagnose(plan, visit);
        sheet_html(&visit_sheet(&VisitSheet {
            plan,
            figures: &figures,
            visit: 0,
            diagnosis: diagnosis.as_ref(),
            clean: &[clean[0], None, clean[1]],
            language: Language::English,
            units: UnitSystem::Si,
        }))
    };
    plan.visits = vec![visit];
    let text = sheet(&plan);
    for (what, count) in [
        ("<script", 0),
        ("<img", 1),
        ("<b>", 0),
        ("&lt;script&gt;alert(1)&lt;/script&gt;", 1),
        ("&quot;March&quot; &amp; &lt;b&gt;", 1),
        // As read, and again before and after.
        ("<td>250.0 Pa</td>", 2),
        ("<td>80.0 Pa</td>", 2),
        ("<td>Whole run cleaned</td>", 1),
        ("Meets", 0),
        ("Does not meet", 0),
        ("style=", 0),
    ] {
        assert_eq!(text.matches(what).count(), count, "{what} in {text}");
    }
    plan.code.maker.back_pressure = Some(elbowroom::units::Pressure::from_pascals(150.0));
    let text = sheet(&plan);
    assert_eq!(text.matches("Does not meet, limit 150.0 Pa").count(), 1);
    assert_eq!(text.matches("Meets, limit 150.0 Pa").count(), 1);
}
