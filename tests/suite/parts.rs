//! The other parts of a run: flexible and flat duct, sharp mitres, other terminations, blockages,
//! area changes, make-up air, house pressure, estimates, overrides. Each against a figure worked by
//! hand from the published formula that its comment names.

use crate::example_file;
use crate::tally::Tally;
use elbowroom::plan::{
    AlongRun, ConcealedElbows, Duct, ElbowKind, Estimate, Input, Override, Part, Plan, Termination,
    TerminationKind,
};
use elbowroom::rules::{Doubt, Verdict};
use elbowroom::system::{Draw, LedgerRow, assess, pressure_line};
use elbowroom::units::{Airflow, Length, Pressure};

/// Arithmetic done by hand to five digits.
const BY_HAND: f64 = 2e-4;

/// The example at a stated 0.05 m³/s, its air keeping its temperature, where every velocity pressure is known.
fn stated() -> Plan {
    let mut plan = example_file::with_stated_airflow();
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    plan
}

fn row(plan: &Plan, key: &str) -> LedgerRow {
    let (_, ledger) = assess(plan).working.expect("air moves");
    let found = ledger
        .rows
        .into_iter()
        .find(|row| row.element.id.to_string() == key);
    found.unwrap_or_else(|| panic!("no {key}"))
}

/// Loss over the element's own velocity pressure.
fn k(plan: &Plan, key: &str) -> f64 {
    let row = row(plan, key);
    row.loss / row.state.velocity_pressure
}

fn back_pressure(plan: &Plan) -> f64 {
    let (point, _) = assess(plan).working.expect("air moves");
    point.evaluation.back_pressure.pascals()
}

/// A bare end loses the jet once, so that a dryer with nothing on it reads nought. A stub of duct a
/// tenth of a millimetre long stands for nothing. Source: definition of static pressure.
#[test]
fn a_bare_outlet_reads_nought() {
    let mut plan = stated();
    let outlet = plan.dryer.outlet();
    plan.run.points.truncate(1);
    plan.run.points[0].fitting.riser = None;
    plan.run.points[0].position = elbowroom::plan::Point::new(outlet.x, outlet.y - 1e-4);
    plan.run.termination = Termination::clean(TerminationKind::OpenEnd);
    assert!(
        back_pressure(&plan).abs() < 0.01,
        "{}",
        back_pressure(&plan)
    );
}

/// K of each termination, the exit in it; with half its opening free by
/// (1 + sqrt(K_b))² + K - 1, K_b(0.5) = (1 + 0.707 sqrt(0.5) - 0.5)²/0.25 = 3.99934.
/// Sources: the assumptions of the tables; Idelchik, thin orifice.
#[test]
fn terminations_whole_and_half_open() {
    let mut tally = Tally::new("terminations");
    for (kind, whole, half) in [
        (TerminationKind::OpenEnd, 1.0, 8.9990),
        (TerminationKind::RoofCap, 2.5, 10.4990),
        (TerminationKind::LouvredHood, 3.0, 10.9990),
    ] {
        let mut plan = stated();
        plan.run.termination = Termination::clean(kind);
        tally.relative(
            format!("{kind:?} whole"),
            k(&plan, "termination:p4"),
            whole,
            BY_HAND,
        );
        plan.run.termination.free_area = 0.5;
        tally.relative(
            format!("{kind:?} half"),
            k(&plan, "termination:p4"),
            half,
            BY_HAND,
        );
    }
    tally.finish(6);
}

/// Sharp 90: 0.42 sin 45 + 2.56 sin³ 45 = 1.20208, by the Reynolds factor between 3e4 and 4e4.
/// Source: Rennels & Hudson; ASHRAE's mitre factor.
#[test]
fn a_sharp_mitre_costs_three_smooth_elbows() {
    let mut plan = stated();
    plan.run.points[1].fitting.elbow.kind = ElbowKind::SharpMitre;
    let at = row(&plan, "elbow:p2");
    let along = (at.state.reynolds - 3e4) / 1e4;
    assert!((0.0..1.0).contains(&along), "Re {}", at.state.reynolds);
    let expected = 1.202_08 * (1.19 - 0.05 * along);
    let found = at.loss / at.state.velocity_pressure;
    assert!(
        (found / expected - 1.0).abs() < BY_HAND,
        "{found} for {expected}"
    );
}

/// Foil 15 % short of full stretch in 4 in: 1 + 0.58 * 15 * exp(-4.96 * 0.1016) = 6.2563 times the
/// friction at full stretch. Source: Abushakra, Walker & Sherman 2004.
#[test]
fn foil_pushed_together_multiplies_its_friction() {
    let foil = |percent: f64| {
        let mut plan = stated();
        plan.run.points[3].duct = Duct::Foil {
            short_of_full_stretch_percent: percent,
        };
        row(&plan, "leg:p4")
    };
    let ratio = foil(15.0).loss / foil(0.0).loss;
    assert!((ratio / 6.2563 - 1.0).abs() < BY_HAND, "{ratio}");
}

/// Flat duct of 2 1/2 by 14 in: area ratio 35 / (4 pi) = 2.78521, so going in (1 - 1/2.78521)² =
/// 0.410828 on the 4 in velocity pressure and coming out 0.5 (1 - 1/2.78521) = 0.320480 on it too.
/// Source: Borda and Carnot; sudden contraction.
#[test]
fn flat_duct_pays_at_both_ends() {
    let mut plan = stated();
    plan.run.points[2].duct = Duct::FlatRectangular {
        width: Length::from_inches(14.0),
        depth: Length::from_inches(2.5),
    };
    let mut tally = Tally::new("area changes");
    tally.relative("in", k(&plan, "area-change:p3"), 0.410_828, BY_HAND);
    tally.relative("out", k(&plan, "area-change:p4"), 0.320_480, BY_HAND);
    tally.finish(2);
    let assessment = assess(&plan);
    let (point, ledger) = assessment.working.expect("air moves");
    let line = pressure_line(&point, &ledger);
    let at = |key: &str| {
        line.iter()
            .filter(|at| at.element.to_string() == key)
            .collect::<Vec<_>>()
    };
    let [before, _] = at("area-change:p3")[..] else {
        panic!("two points")
    };
    let after = at("leg:p3")[0];
    assert!(
        after.r#static > before.r#static,
        "static pressure rises at an enlargement"
    );
    assert!(after.total < before.total, "total pressure never does");
}

/// A blockage that leaves 0.3 free: (1 + 0.707 sqrt(0.7) - 0.3)²/0.09 = 1.291519²/0.09 = 18.5336.
/// Source: Idelchik, thin orifice.
#[test]
fn a_blockage_by_its_free_area() {
    let mut plan = stated();
    plan.run.points[1].leg.blockage_free_area = Some(0.3);
    let found = k(&plan, "blockage:p2");
    assert!((found / 18.5336 - 1.0).abs() < BY_HAND, "{found}");
}

/// A gap of 5 cm² lets 0.6 times 5 cm² times sqrt(2 p/rho) out, p the static pressure past the joint
/// against the house: at a joint just before a hood of K 2 and a 5 Pa flap, p is q + 5 Pa. With
/// 0.05 m³/s past it in a 4 in duct, V = 6.1674 m/s. Source: orifice law.
#[test]
fn a_gap_before_the_hood_by_the_orifice_law() {
    let mut plan = stated();
    // The last leg shrinks to nothing that counts.
    let last = plan.run.points.len() - 1;
    let before = plan.run.points[last - 1].position;
    plan.run.points[last].position = elbowroom::plan::Point::new(before.x, before.y - 1e-3);
    plan.run.points[last].leg.leak_free_area_m2 = Some(5e-4);
    let (run, _) = elbowroom::system::CompiledRun::of(&plan);
    let rho = run.density.kilograms_per_cubic_metre();
    let at_end = Airflow::from_cubic_metres_per_second(0.05);
    let evaluation = run.at(at_end, &Draw::LIKELY);
    let q = rho / 2.0 * 6.167_4_f64.powi(2);
    let escaped = 0.6 * 5e-4 * (2.0 * (q + 5.0) / rho).sqrt();
    let found = (evaluation.airflow - at_end).cubic_metres_per_second();
    assert!((found / escaped - 1.0).abs() < 0.002, "{found} {escaped}");
    // A tight run sends all of it out of the hood.
    plan.run.points[last].leg.leak_free_area_m2 = None;
    let tight = elbowroom::system::CompiledRun::of(&plan)
        .0
        .at(at_end, &Draw::LIKELY);
    assert_eq!(tight.airflow, at_end);
}

/// A wall box costs its own K and ends the transition duct: what is flexible past it is in the run.
/// IRC 2021 M1502.4.3, M1502.4.6.1; K is an assumption.
#[test]
fn a_wall_box_ends_the_transition() {
    let mut plan = stated();
    let foil = Duct::Foil {
        short_of_full_stretch_percent: 0.0,
    };
    plan.run.points[0].duct = foil;
    plan.run.points[0].leg.ends_in_wall_box = true;
    assert!((k(&plan, "wall-box:p1") - 0.1).abs() < 1e-12);
    let doubts = |plan: &Plan| elbowroom::report::figures(plan).0.code.doubts;
    assert!(!doubts(&plan).contains(&Doubt::FlexibleInRun));
    plan.run.points[1].duct = foil;
    assert!(doubts(&plan).contains(&Doubt::FlexibleInRun));
}

/// A door's undercut of 1/2 x 30 in costs rho/2 (0.05 / (0.6 * 0.0096774))² = 44.5 Pa at 0.05 m³/s
/// (1.2 kg/m³), and a gauge open to the room reads that much more; a house drawn down by 5 Pa adds 5.
/// Source: orifice law.
#[test]
fn the_room_stands_in_the_back_pressure() {
    let plan = stated();
    let open = back_pressure(&plan);
    let mut closed = plan.clone();
    closed.site.make_up_free_area_m2 = Some(0.009_677_4);
    let undercut = back_pressure(&closed) - open;
    assert!((undercut / 44.5 - 1.0).abs() < 0.005, "{undercut}");
    let mut drawn_down = plan;
    drawn_down.site.house_pressure = Pressure::from_pascals(-5.0);
    assert!((back_pressure(&drawn_down) - open - 5.0).abs() < 1e-9);
}

/// The line begins at the outlet's back pressure and ends at the open air's nought.
#[test]
fn the_pressure_line_goes_from_the_gauge_to_nought() {
    let mut plan = stated();
    plan.run.points[1].duct = Duct::SemiRigid {
        short_of_full_stretch_percent: 0.0,
    };
    let (point, ledger) = assess(&plan).working.expect("air moves");
    let line = pressure_line(&point, &ledger);
    let (first, last) = (&line[0], &line[line.len() - 1]);
    let back = point.evaluation.back_pressure.pascals();
    assert!((first.r#static.pascals() - back).abs() < 1e-9);
    assert!(last.total.pascals().abs() < 1e-9 && last.r#static.pascals().abs() < 1e-9);
    assert!(
        line.windows(2)
            .all(|pair| pair[1].distance >= pair[0].distance)
    );
}

/// 35 ft with the limit inside what is only estimated: nobody can tell. IRC 2021 M1502.4.6.1.
#[test]
fn an_estimate_across_the_limit_cannot_be_told() {
    let code = |change: &dyn Fn(&mut Plan)| {
        let mut plan = stated();
        change(&mut plan);
        elbowroom::report::figures(&plan).0.code
    };
    assert_eq!(code(&|_| {}).verdict, Verdict::Meets);
    let estimate = |more: f64| {
        move |plan: &mut Plan| {
            plan.run.points[3].leg.estimate = Some(Estimate {
                less: Length::ZERO,
                more: Length::from_feet(more),
            });
        }
    };
    assert_eq!(code(&estimate(0.5)).verdict, Verdict::Meets);
    let doubtful = code(&estimate(3.0));
    assert_eq!(doubtful.verdict, Verdict::CannotTell);
    assert_eq!(doubtful.doubts, [Doubt::EstimatedLength]);
    let concealed = code(&|plan| {
        plan.run.points[3].leg.concealed = Some(ConcealedElbows { least: 0, most: 2 });
    });
    assert_eq!(concealed.verdict, Verdict::CannotTell);
}

/// The transition duct is no part of the length; flexible duct past it is in doubt.
/// IRC 2021 M1502.4.6.1, M1502.4.3.
#[test]
fn the_transition_duct_is_not_counted() {
    let foil = Duct::Foil {
        short_of_full_stretch_percent: 10.0,
    };
    let length = |legs: &[usize]| {
        let mut plan = stated();
        for leg in legs {
            plan.run.points[*leg].duct = foil;
        }
        elbowroom::report::figures(&plan).0.code
    };
    let plain = length(&[]);
    let transition = length(&[0]);
    assert!(transition.measured < plain.measured);
    assert!(transition.doubts.is_empty());
    assert_eq!(length(&[2]).doubts, [Doubt::FlexibleInRun]);
}

/// What the user sets is used and named as the user's.
#[test]
fn an_override_takes_the_place_of_ours() {
    let mut plan = stated();
    plan.run.termination = Termination::clean(TerminationKind::LouvredHood);
    plan.overrides.push(Override {
        input: Input::LouvredHood,
        low: 1.2,
        likely: 1.4,
        high: 1.6,
        note: "measured on a bench, invented".to_owned(),
    });
    assert!((k(&plan, "termination:p4") - 1.4).abs() < 1e-12);
    let grounds = row(&plan, "termination:p4").coefficient;
    assert_eq!(grounds.source, &elbowroom::system::USER_SOURCE);
    assert!((grounds.high - 1.6).abs() < 1e-12);
}

/// Elbows folded together may lose less and elbows in a sharp Z more, likely as much as apart.
/// Source: Idelchik, elbows in combination (from memory).
#[test]
fn close_elbows_widen_the_band_alone() {
    let mut plan = stated();
    let apart = row(&plan, "elbow:p3").coefficient;
    plan.run.points[2].position.y = plan.run.points[1].position.y + 0.21;
    let last = plan.run.points[2].position.y;
    plan.run.points[3].position.y = last;
    let close = row(&plan, "elbow:p3").coefficient;
    assert!((close.likely - apart.likely).abs() < 1e-12);
    assert!(close.high > apart.high);
    let remarked = assess(&plan).findings.iter().any(|finding| {
        matches!(finding, elbowroom::system::Finding::ElbowsClose { element, .. }
            if element.part == Part::Elbow && element.node.to_string() == "p3")
    });
    assert!(remarked);
}
