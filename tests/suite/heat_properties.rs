//! What heat does whatever the run: at a stated airflow in one zone the air goes toward the zone's
//! temperature, insulation holds it back, dry air gets no wall wet, and air that keeps its
//! temperature keeps it. Source: the second law, and what the words mean.

use crate::random_plan::{with_blower, with_stated_airflow};
use crate::seeded;
use crate::tally::Tally;
use elbowroom::plan::{AlongRun, Insulation, Level, Plan, Riser, RunPoint, Zone, ZoneKind, read};
use elbowroom::system::{
    CompiledRun, Draw, Finding, HeatProfile, InsulationUpgrade, assess, bands,
    insulation_that_dries, low_points, operating_point,
};
use elbowroom::units::{Length, Temperature};
use proptest::prelude::*;

const CASES: u32 = 100;

/// `plan` with one zone everywhere.
pub fn in_one_zone(plan: &Plan, degrees: f64) -> Plan {
    let mut plan = plan.clone();
    plan.exhaust.along_run = AlongRun::Cools;
    plan.zones.clear();
    for (id, level) in [
        ("under", Level::CrawlSpace),
        ("room", Level::Room),
        ("over", Level::CeilingSpace),
    ] {
        plan.zones.push(Zone {
            id: id.into(),
            kind: ZoneKind::Garage,
            level,
            temperature: Temperature::from_celsius(degrees),
            x_m: -50.0,
            y_m: -50.0,
            width: Length::from_metres(100.0),
            depth: Length::from_metres(100.0),
        });
    }
    plan
}

fn profile(plan: &Plan) -> Option<HeatProfile> {
    let (run, _) = CompiledRun::of(plan);
    operating_point(&run, &Draw::LIKELY)
        .expect("air moves")
        .heat
}

fn insulated(plan: &Plan, resistance: f64) -> Plan {
    let mut plan = plan.clone();
    for point in &mut plan.run.points {
        point.leg.insulation = Some(Insulation::Resistance(resistance));
    }
    plan
}

#[test]
fn air_goes_toward_the_zone_and_insulation_holds_it_back() {
    let values = (with_stated_airflow(), -30.0..45.0_f64, 0.05..3.0_f64);
    seeded::check(CASES, &values, |(mut plan, degrees, resistance)| {
        plan.exhaust.relative_humidity = 0.0;
        let bare = profile(&in_one_zone(&plan, degrees)).expect("heat is followed");
        let mut before = (bare.celsius - degrees).abs();
        for cell in &bare.cells {
            let now = (cell.celsius - degrees).abs();
            prop_assert!(now < before || now < 1e-9, "{now} after {before}");
            prop_assert!((cell.celsius - degrees) * (bare.celsius - degrees) >= 0.0);
            before = now;
        }
        let wrapped = insulated(&in_one_zone(&plan, degrees), resistance);
        let wrapped = profile(&wrapped).expect("heat is followed");
        let kept = (wrapped.leaving().celsius() - degrees).abs();
        // A thin wrap of a shiny duct may lose more: its jacket radiates.
        prop_assert!(kept > before || resistance < 0.2, "{kept}, bare {before}");
        Ok(())
    });
}

#[test]
fn more_insulation_holds_more_heat() {
    let values = (with_stated_airflow(), 0.05..1.5_f64, 1.2..4.0_f64);
    seeded::check(CASES, &values, |(mut plan, resistance, times)| {
        plan.exhaust.temperature = Temperature::from_celsius(60.0);
        plan.exhaust.relative_humidity = 0.05;
        let plan = in_one_zone(&plan, -10.0);
        let less = profile(&insulated(&plan, resistance)).expect("heat is followed");
        let more = profile(&insulated(&plan, resistance * times)).expect("heat is followed");
        prop_assert!(more.leaving() > less.leaving());
        Ok(())
    });
}

#[test]
fn dry_air_gets_no_wall_wet() {
    let values = (with_blower(), -50.0..20.0_f64);
    seeded::check(CASES, &values, |(mut plan, degrees)| {
        plan.exhaust.relative_humidity = 0.0;
        let found = profile(&in_one_zone(&plan, degrees)).expect("heat is followed");
        prop_assert!(found.water().abs() <= 0.0);
        Ok(())
    });
}

/// Water never comes from nowhere, and no wall is wet that is warmer than the exhaust's dew point.
#[test]
fn water_comes_out_of_the_air() {
    let values = (with_blower(), -30.0..20.0_f64, 0.2..1.0_f64);
    seeded::check(CASES, &values, |(mut plan, degrees, humidity)| {
        plan.exhaust.relative_humidity = humidity;
        let found = profile(&in_one_zone(&plan, degrees)).expect("heat is followed");
        let mut ratio = found.humidity_ratio;
        for cell in &found.cells {
            prop_assert!(cell.water >= 0.0 && cell.humidity_ratio <= ratio);
            ratio = cell.humidity_ratio;
        }
        Ok(())
    });
}

#[test]
fn air_that_keeps_its_temperature_has_no_profile() {
    seeded::check(CASES, &with_blower(), |mut plan| {
        plan.exhaust.along_run = AlongRun::KeepsTemperature;
        prop_assert!(profile(&plan).is_none());
        let (run, _) = CompiledRun::of(&plan);
        let point = operating_point(&run, &Draw::LIKELY).expect("air moves");
        prop_assert_eq!(
            point.evaluation.airflow,
            run.at(point.evaluation.airflow_at_end, &Draw::LIKELY)
                .airflow
        );
        Ok(())
    });
}

/// In surroundings of the exhaust's own temperature nothing is gained or lost: the figures are those
/// of air that keeps its temperature.
#[test]
fn surroundings_as_warm_as_the_air_change_nothing() {
    seeded::check(CASES, &with_blower(), |mut plan| {
        plan.exhaust.relative_humidity = plan.exhaust.relative_humidity.min(0.9);
        let degrees = plan.exhaust.temperature.celsius();
        let warm = in_one_zone(&plan, degrees);
        let mut kept = warm.clone();
        kept.exhaust.along_run = AlongRun::KeepsTemperature;
        let point = |plan: &Plan| {
            let (run, _) = CompiledRun::of(plan);
            operating_point(&run, &Draw::LIKELY).expect("air moves")
        };
        let (warm, kept) = (point(&warm), point(&kept));
        let off = warm.evaluation.airflow / kept.evaluation.airflow - 1.0;
        prop_assert!(off.abs() < 1e-5, "{off}");
        let leaving = warm.heat.expect("heat is followed").leaving();
        prop_assert!((leaving.celsius() - degrees).abs() < 1e-6);
        Ok(())
    });
}

/// What is said to dry the wall does, and a tenth less does not.
#[test]
fn the_insulation_that_dries_is_the_least() {
    let mut tally = Tally::new("insulation");
    let mut solved = 0;
    for degrees in [-15.0, -5.0, 0.0, 5.0] {
        let mut plan = crate::example_file::example();
        plan.exhaust.relative_humidity = 0.55;
        let plan = in_one_zone(&plan, degrees);
        let InsulationUpgrade::Resistance {
            resistance_m2_k_per_w: found,
        } = insulation_that_dries(&plan)
        else {
            continue;
        };
        solved += 1;
        let water = |resistance: f64| {
            profile(&insulated(&plan, resistance)).map_or(f64::NAN, |found| found.water())
        };
        tally.equal(format!("{degrees} °C, dry"), &water(found), &0.0);
        tally.holds(
            format!("{degrees} °C, wet"),
            water(found * 0.9 - 0.005) > 0.0,
        );
    }
    assert!(solved >= 3, "{solved} solved");
    tally.finish(6);
}

/// Down and up again by 0.5 m holds water; up and down again, or down alone, does not. By hand.
#[test]
fn a_dip_is_down_and_up_again() {
    let mut tally = Tally::new("dips");
    for (rises, depths) in [
        (vec![-0.8, 0.5], vec![0.5]),
        (vec![-0.5, 0.8], vec![0.5]),
        (vec![0.8, -0.5], vec![]),
        (vec![-0.8], vec![]),
        (vec![1.0, -0.6, 0.4, -0.7, 0.9], vec![0.4, 0.7]),
    ] {
        let mut plan = crate::example_file::example();
        let first: RunPoint = plan.run.points[0].clone();
        plan.run.outlet.riser = None;
        plan.dryer.outlet_height = Length::from_metres(2.0);
        let outlet = plan.dryer.outlet();
        plan.run.points = (0..=rises.len())
            .map(|index| {
                let mut point = first.clone();
                point.id = format!("q{index}").as_str().into();
                #[allow(clippy::cast_precision_loss, reason = "a handful of points")]
                let along = 1.5 * (index as f64 + 1.0);
                point.position = elbowroom::plan::Point::new(outlet.x, outlet.y - along);
                point.fitting.riser = rises.get(index).map(|rise| Riser {
                    rise: Length::from_metres(*rise),
                    elbow: first.fitting.elbow,
                });
                point
            })
            .collect();
        let (run, _) = CompiledRun::of(&plan);
        let found = low_points(&run, None);
        tally.equal(format!("{rises:?}, how many"), &found.len(), &depths.len());
        for (low, depth) in found.iter().zip(depths) {
            tally.within(format!("{rises:?}"), low.depth.metres(), depth, 1e-9);
            tally.equal(
                format!("{rises:?}"),
                &low.element.node.to_string().starts_with('q'),
                &true,
            );
        }
        let said = assess(&plan).findings;
        let dips = said
            .iter()
            .filter(|it| matches!(it, Finding::Dip(_)))
            .count();
        tally.equal(format!("{rises:?}, said"), &dips, &found.len());
    }
    tally.finish(14);
}

/// The bands hold the likely run's temperatures. Against every draw solved anew with its own: the
/// difference over the plans of the band set, made to cool, is printed and held under a hundredth.
#[test]
fn bands_with_the_likely_temperatures() {
    // All 40 plans in full.
    let full = std::env::var("ELBOWROOM_FULL").as_deref() == Ok("1");
    let count = if full { 40 } else { 4 };
    let mut worst = (0.0_f64, String::new());
    let folder = std::fs::read_dir(crate::reference::path("bands")).expect("plans of the bands");
    let mut paths: Vec<_> = folder
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    let mut looked_at = 0;
    for path in paths.iter().take(count) {
        let mut plan = read(&std::fs::read(path).expect("a plan opens")).expect("a plan");
        plan.exhaust.along_run = AlongRun::Cools;
        let (run, _) = CompiledRun::of(&plan);
        let (Some(held), Some(solved)) = (bands(&run), elbowroom::system::bands_solved_anew(&run))
        else {
            continue;
        };
        looked_at += 1;
        for (name, held, solved) in [
            ("airflow", held.airflow, solved.airflow),
            ("back pressure", held.back_pressure, solved.back_pressure),
            ("loss", held.loss, solved.loss),
        ] {
            for (held, solved) in [(held.low, solved.low), (held.high, solved.high)] {
                let off = (held / solved - 1.0).abs();
                if off > worst.0 {
                    worst = (off, format!("{name} of {}", path.display()));
                }
            }
        }
    }
    println!(
        "{looked_at} plans: at most {:.4} % ({})",
        worst.0 * 100.0,
        worst.1
    );
    assert!(looked_at * 10 >= count * 9, "{looked_at} plans had bands");
    assert!(worst.0 < 0.01, "{worst:?}");
}
