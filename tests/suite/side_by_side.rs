//! Two runs side by side: what differs is found and counted, and the table adds up to the two ledgers.
//! Source: that each change made here by hand is one thing that differs, and that a sum is the sum of its
//! parts; of the median, that at most half of the values lie on either side of it.

use crate::random_plan;
use crate::seeded;
use elbowroom::editor::{Action, State, update};
use elbowroom::plan::{
    AlongRun, Difference, Duct, Elbow, ElbowKind, LegDifference, Plan, Quantity, Riser,
    TerminationKind, differences, example,
};
use elbowroom::report::{
    GuessSpread, SideBySide, difference_bands, figures, quantity_of, quantity_shown, side_by_side,
};
use elbowroom::system::{CompiledRun, bands as bands_of};
use elbowroom::units::{Length, Pressure, Temperature, UnitSystem};
use proptest::prelude::*;
use std::sync::Arc;

fn the_example() -> Plan {
    example(String::new(), String::new(), String::new())
}

/// A change by hand, and what it is to be called.
type Change = (&'static str, fn(&mut Plan), fn(&Difference) -> bool);

#[test]
#[allow(
    clippy::too_many_lines,
    clippy::float_cmp,
    reason = "a table, a few lines a change; what was set is the very same"
)]
fn each_change_is_one_thing_that_differs_and_is_called_by_its_name() {
    let changes: [Change; 21] = [
        (
            "kind of elbow",
            |plan| plan.run.points[1].fitting.elbow.kind = ElbowKind::Smooth,
            |it| matches!(it, Difference::Elbow { corner: 2, from, to } if from.kind == ElbowKind::Segmented && to.kind == ElbowKind::Smooth),
        ),
        (
            "radius",
            |plan| plan.run.points[2].fitting.elbow.radius = Length::from_inches(6.0),
            |it| matches!(it, Difference::Elbow { corner: 3, .. }),
        ),
        (
            "elbow after the riser",
            |plan| {
                if let Some(riser) = &mut plan.run.points[0].fitting.riser {
                    riser.elbow.kind = ElbowKind::SharpMitre;
                }
            },
            |it| matches!(it, Difference::Elbow { corner: 1, .. }),
        ),
        (
            "rise",
            |plan| {
                if let Some(riser) = &mut plan.run.points[0].fitting.riser {
                    riser.rise = Length::from_feet(6.0);
                }
            },
            |it| {
                matches!(
                    it,
                    Difference::Rise {
                        corner: 1,
                        from: Some(_),
                        to: Some(_)
                    }
                )
            },
        ),
        (
            "a corner moved",
            |plan| plan.run.points[1].position.x += 0.1,
            |it| {
                matches!(
                    it,
                    Difference::Moved {
                        corner: 2,
                        is_end: false
                    }
                )
            },
        ),
        (
            "the end moved",
            |plan| plan.run.points[3].position.x += 0.1,
            |it| {
                matches!(
                    it,
                    Difference::Moved {
                        corner: 4,
                        is_end: true
                    }
                )
            },
        ),
        (
            "a corner more",
            |plan| {
                let mut point = plan.run.points[3].clone();
                point.id = "new".into();
                point.position.x -= 0.5;
                plan.run.points.insert(3, point);
            },
            |it| matches!(it, Difference::MoreCorners(1)),
        ),
        (
            "duct",
            |plan| {
                plan.run.points[0].duct = Duct::Foil {
                    short_of_full_stretch_percent: 20.0,
                }
            },
            |it| matches!(it, Difference::Duct { leg: 1, .. }),
        ),
        (
            "blockage",
            |plan| plan.run.points[3].leg.blockage_free_area = Some(0.5),
            |it| matches!(it, Difference::Leg { leg: 4, what: LegDifference::Blockage(from, to) } if *from == 1.0 && *to == 0.5),
        ),
        (
            "leak",
            |plan| plan.run.points[3].leg.leak_free_area_m2 = Some(0.0005),
            |it| {
                matches!(
                    it,
                    Difference::Leg {
                        what: LegDifference::Leak,
                        ..
                    }
                )
            },
        ),
        (
            "hood",
            |plan| plan.run.termination.kind = TerminationKind::LouvredHood,
            |it| {
                matches!(
                    it,
                    Difference::Termination(
                        TerminationKind::WallHood,
                        TerminationKind::LouvredHood
                    )
                )
            },
        ),
        (
            "flap",
            |plan| plan.run.termination.free_area = 0.4,
            |it| matches!(it, Difference::TerminationFree(from, to) if *from == 1.0 && *to == 0.4),
        ),
        (
            "diameter",
            |plan| plan.run.diameter = Length::from_inches(5.0),
            |it| matches!(it, Difference::Diameter(..)),
        ),
        (
            "dryer",
            |plan| plan.dryer.outlet_height = Length::from_inches(8.0),
            |it| *it == Difference::Dryer,
        ),
        (
            "heat",
            |plan| plan.exhaust.temperature = Temperature::from_celsius(20.0),
            |it| matches!(it, Difference::ExhaustTemperature(..)),
        ),
        (
            "cooling",
            |plan| plan.exhaust.along_run = AlongRun::KeepsTemperature,
            |it| *it == Difference::Cooling,
        ),
        (
            "outdoors",
            |plan| plan.site.outdoor_temperature = Temperature::from_celsius(-20.0),
            |it| matches!(it, Difference::OutdoorTemperature(..)),
        ),
        (
            "altitude",
            |plan| plan.site.altitude = Length::from_feet(5000.0),
            |it| matches!(it, Difference::Altitude(..)),
        ),
        (
            "house",
            |plan| plan.site.house_pressure = Pressure::from_pascals(-5.0),
            |it| matches!(it, Difference::HousePressure(..)),
        ),
        (
            "code",
            |plan| plan.code.path_through_fittings_counts = false,
            |it| *it == Difference::Code,
        ),
        (
            "room",
            |plan| plan.obstacles.clear(),
            |it| *it == Difference::Room,
        ),
    ];
    let first = the_example();
    assert_eq!(differences(&first, &first), []);
    for (what, change, is_it) in changes {
        let mut second = first.clone();
        change(&mut second);
        let found = differences(&first, &second);
        assert!(found.len() == 1 && is_it(&found[0]), "{what}: {found:?}");
        let back = differences(&second, &first);
        assert_eq!(back.len(), 1, "{what}, the other way: {back:?}");
    }
    // What moves no figure is nothing that differs.
    let mut named = first.clone();
    named.title = "Another".into();
    named.dryer.energy = elbowroom::plan::Energy::Gas;
    assert_eq!(differences(&first, &named), []);
    // The radius of a mitre says nothing, and an elbow where no run turns is not built.
    let mitred = |radius: f64| {
        let mut plan = first.clone();
        plan.run.points[1].fitting.elbow = Elbow {
            kind: ElbowKind::SharpMitre,
            radius: Length::from_inches(radius),
        };
        plan.run.points[3].fitting.elbow.radius = Length::from_inches(radius);
        plan
    };
    assert_eq!(differences(&mitred(4.0), &mitred(6.0)), []);
    let mut two = first.clone();
    two.run.points[0].fitting.riser = None::<Riser>;
    two.run.termination.free_area = 0.5;
    assert_eq!(differences(&first, &two).len(), 2);
}

fn sums(table: &SideBySide) -> [f64; 2] {
    let of = |second: bool| {
        let losses = table.elements.iter().filter_map(|pair| {
            let side = if second { pair.second } else { pair.first };
            side?.loss
        });
        let same = table.same_loss[usize::from(second)].unwrap();
        losses.map(Pressure::pascals).sum::<f64>() + same.pascals()
    };
    [of(false), of(true)]
}

/// The sum of the rows, shown or folded into one, is each run's own loss; a row shown differs.
#[test]
fn the_table_adds_up_to_both_ledgers() {
    let pair = (
        random_plan::with_blower(),
        random_plan::elbow(),
        random_plan::turn_deg(),
        0.1..1.0_f64,
    );
    seeded::check(50, &pair, |(plan, elbow, turn_deg, more)| {
        let others = [
            random_plan::with_elbow(&plan, elbow, turn_deg),
            random_plan::lengthened(&plan, 0, more),
        ];
        for other in others {
            let (first, second) = (figures(&plan).0, figures(&other).0);
            let table = side_by_side(&first, &second);
            prop_assert!(!table.elements.is_empty());
            for (sum, figures) in sums(&table).into_iter().zip([&first, &second]) {
                let loss = quantity_of(figures, Quantity::Loss).unwrap();
                // Sums in another order differ by their last digits.
                prop_assert!((sum - loss).abs() < 1e-9 * loss, "{} Pa of {}", sum, loss);
            }
            let told = table.elements.len() + table.same;
            prop_assert!(told >= second.elements.len() && told >= first.elements.len());
            for units in [UnitSystem::UsCustomary, UnitSystem::Si] {
                let shown = quantity_shown(
                    units,
                    Quantity::Airflow,
                    quantity_of(&second, Quantity::Airflow).unwrap(),
                );
                prop_assert_eq!(shown, units.airflow(second.totals.unwrap().airflow));
            }
        }
        let same = side_by_side(&figures(&plan).0, &figures(&plan).0);
        prop_assert_eq!(same.elements, vec![]);
        Ok(())
    });
}

/// What both runs share cancels in their difference, so its band is narrower than those of the two apart
/// are together. Of one run and itself it is nought.
#[test]
fn the_band_of_a_difference_is_narrower_than_both_bands() {
    let pair = (
        random_plan::with_blower(),
        random_plan::elbow(),
        random_plan::turn_deg(),
    );
    seeded::check(8, &pair, |(plan, elbow, turn_deg)| {
        let itself = difference_bands(&plan, &plan).unwrap();
        prop_assert!(itself.airflow.low.abs() < 1e-12 && itself.airflow.high.abs() < 1e-12);
        let other = random_plan::with_elbow(&plan, elbow, turn_deg);
        let bands = difference_bands(&plan, &other).unwrap();
        let band = bands.back_pressure;
        prop_assert!(band.high >= band.low);
        let apart = |plan: &Plan| {
            let bands = bands_of(&CompiledRun::of(plan).0).unwrap();
            bands.back_pressure.high - bands.back_pressure.low
        };
        prop_assert!(band.high - band.low < apart(&plan) + apart(&other));
        Ok(())
    });
}

/// The very same plan is opened, so that whoever knows it knows it again, and an undo goes back.
#[test]
fn two_plans_change_places_and_an_undo_changes_them_back() {
    let (one, other) = (Arc::new(the_example()), {
        let mut plan = the_example();
        plan.title = "Another".into();
        Arc::new(plan)
    });
    let mut state = State::new((*one).clone());
    let before = Arc::clone(&state.plan);
    let view = state.view;
    let effects = update(&mut state, Action::Exchange(Arc::clone(&other)));
    assert_eq!(effects.len(), 1);
    assert!(Arc::ptr_eq(&state.plan, &other));
    assert_eq!(state.view, view);
    assert_eq!(update(&mut state, Action::Exchange(Arc::clone(&other))), []);
    update(&mut state, Action::Undo);
    assert!(Arc::ptr_eq(&state.plan, &before));
    update(&mut state, Action::Redo);
    assert!(Arc::ptr_eq(&state.plan, &other));
}

#[test]
fn at_most_half_of_the_guesses_lie_on_either_side_of_the_middle_one() {
    let guesses = (
        prop::collection::vec(-50.0..200.0_f64, 1..40),
        -50.0..200.0_f64,
    );
    seeded::check(200, &guesses, |(guesses, figure)| {
        let spread = GuessSpread::of(&guesses, figure).unwrap();
        let count = |is_so: &dyn Fn(f64) -> bool| guesses.iter().filter(|at| is_so(**at)).count();
        prop_assert!(2 * count(&|at| at < spread.median) <= guesses.len());
        prop_assert!(2 * count(&|at| at > spread.median) <= guesses.len());
        prop_assert_eq!(count(&|at| at < spread.least || at > spread.greatest), 0);
        prop_assert_eq!(spread.below, count(&|at| at < figure));
        prop_assert_eq!(spread.above, count(&|at| at > figure));
        prop_assert_eq!(spread.count, guesses.len());
        Ok(())
    });
    assert_eq!(GuessSpread::of(&[], 1.0), None);
}
