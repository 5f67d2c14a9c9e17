//! The cut list: stock against an exhaustive search, and parts counted by hand.

use crate::seeded;
use elbowroom::plan::{Duct, ElbowKind, Metal, Plan, Riser, TerminationKind, example};
use elbowroom::report::cut_list::{CutList, PartKind, PartLine, cut_list, pack};
use elbowroom::report::figures;
use elbowroom::units::Length;
use proptest::prelude::*;

/// Cases against the exhaustive search; the bar asks for a hundred.
const CASES: u32 = 100;
/// Sums of lengths in another order differ in their last digits, m.
const DUST: f64 = 1e-9;

/// The least that can be bought for `pieces`: every way to put them into groups is tried, and each
/// group takes the shortest stock that holds it. Source: the definition of the problem.
fn exhaustive(pieces: &[f64], stock: &[f64], groups: &mut Vec<f64>) -> f64 {
    let Some((piece, others)) = pieces.split_first() else {
        let shortest = |sum: &f64| {
            let holding = stock.iter().filter(|bar| *sum <= **bar + DUST);
            holding.copied().fold(f64::INFINITY, f64::min)
        };
        return groups.iter().map(shortest).sum();
    };
    let mut least = f64::INFINITY;
    for group in 0..groups.len() {
        groups[group] += piece;
        least = least.min(exhaustive(others, stock, groups));
        groups[group] -= piece;
    }
    groups.push(*piece);
    least = least.min(exhaustive(others, stock, groups));
    groups.pop();
    least
}

fn stock() -> impl Strategy<Value = Vec<f64>> {
    prop_oneof![
        Just(vec![0.6096, 0.9144, 1.524, 3.048]),
        prop::collection::vec(0.5..3.5_f64, 1..=4),
    ]
}

/// Up to eight pieces, of a share of the longest bar each: 4,140 ways to put eight into groups.
fn shares() -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(0.03..1.0_f64, 1..=8)
}

/// The bar: never more than one stock length over the least. What is cut exactly buys the least itself,
/// and every piece is cut once, from a bar that holds it.
#[test]
fn stock_is_cut_as_an_exhaustive_search_would() {
    for (exact_up_to, allowed) in [(12, 0.0), (0, 1.0)] {
        seeded::check(CASES, &(stock(), shares()), |(stock, shares)| {
            let longest = stock.iter().copied().fold(0.0, f64::max);
            let pieces: Vec<f64> = shares.iter().map(|share| share * longest).collect();
            let least = exhaustive(&pieces, &stock, &mut Vec::new());
            let packing = pack(&pieces, &stock, exact_up_to).unwrap();
            let over = packing.bought() - least;
            prop_assert!(
                over > -DUST && over <= allowed * longest + DUST,
                "{} over {}",
                over,
                least
            );
            prop_assert!(packing.least <= least + DUST);
            prop_assert!(!packing.is_best || over < DUST);
            let mut cut: Vec<usize> = Vec::new();
            for bar in &packing.bars {
                let held: f64 = bar.pieces.iter().map(|piece| pieces[*piece]).sum();
                prop_assert!(held <= bar.stock + DUST && stock.contains(&bar.stock));
                cut.extend(&bar.pieces);
            }
            cut.sort_unstable();
            prop_assert_eq!(cut, (0..pieces.len()).collect::<Vec<_>>());
            Ok(())
        });
    }
}

#[test]
fn a_piece_that_no_stock_holds_is_not_cut() {
    assert_eq!(pack(&[4.0], &[3.0], 12), None);
    assert_eq!(pack(&[], &[3.0], 12).unwrap().bars, []);
}

fn list(plan: &Plan) -> CutList {
    cut_list(plan, &figures(plan).0)
}

fn line(list: &CutList, is_it: impl Fn(&PartKind) -> bool) -> Option<PartLine> {
    list.parts.iter().copied().find(|line| is_it(&line.part))
}

/// The outlet, one elbow of 90 deg and two legs, all by hand: 12 ft and 4 ft from corner to corner,
/// an elbow of 4 in centre-line radius whose tangents are 4 in each.
fn by_hand() -> Plan {
    let mut plan = example("by hand, invented".to_owned(), String::new(), String::new());
    let outlet = plan.dryer.outlet();
    let ahead = plan.dryer.outlet_heading();
    let corner = outlet.toward(ahead, Length::from_feet(12.0));
    let end = corner.toward(ahead.right(), Length::from_feet(4.0));
    plan.run.points.truncate(2);
    for (point, at) in plan.run.points.iter_mut().zip([corner, end]) {
        point.position = at;
        point.duct = Duct::Rigid;
        point.leg = elbowroom::plan::LegState::default();
        point.fitting.riser = None;
        point.fitting.elbow.kind = ElbowKind::Segmented;
        point.fitting.elbow.radius = Length::from_inches(4.0);
    }
    plan.run.outlet.riser = None;
    plan.run.diameter = Length::from_inches(4.0);
    plan
}

/// 12 ft less 4 in is 11 ft 8 in, with a crimped end of 1 1/2 in 140 + 1.5 in: one of 10 ft, which
/// covers 118 1/2 in, and 23 in. 4 ft less 4 in and with 1 1/2 in is 45 1/2 in. A bar of 10 ft and one of
/// 10 ft, or 10 ft, 2 ft and 5 ft: the latter buys 17 ft.
#[test]
fn lengths_are_cut_as_by_hand() {
    let list = list(&by_hand());
    let [pipe] = &list.pipe[..] else {
        panic!("{list:?}")
    };
    assert_eq!(pipe.metal, Metal::Galvanized);
    let inches: Vec<f64> = pipe
        .pieces
        .iter()
        .map(|piece| piece.length.inches())
        .collect();
    for (found, right) in inches.iter().zip([120.0, 23.0, 45.5]) {
        assert!((found - right).abs() < 1e-6, "{inches:?}");
    }
    assert_eq!(inches.len(), 3);
    let bought: Vec<f64> = pipe
        .packing
        .bars
        .iter()
        .map(|bar| (Length::from_metres(bar.stock).feet() * 1e6).round() / 1e6)
        .collect();
    assert_eq!(bought, [10.0, 5.0, 2.0]);
    assert!(pipe.packing.is_best);
    // Dryer, pipe, pipe, elbow, pipe, hood: four joints between, one at the dryer.
    let tape = line(&list, |part| {
        matches!(part, PartKind::FoilTape { joints: 5 })
    })
    .unwrap();
    let right = 5.0 * 1.25 * core::f64::consts::PI * 4.0;
    assert!((tape.length.unwrap().inches() - right).abs() < 1e-6);
    assert_eq!(line(&list, |part| *part == PartKind::Clamp), None);
    let elbow = line(&list, |part| matches!(part, PartKind::Elbow { .. })).unwrap();
    assert_eq!(elbow.count, Some(1));
    let hood = |part: &PartKind| {
        let hood = TerminationKind::WallHood;
        matches!(part, PartKind::Termination { termination, .. } if *termination == hood)
    };
    assert_eq!(line(&list, hood).unwrap().count, Some(1));
    // 15 ft 4 in of straight and an arc of 6.28 in: every 12 ft of IRC 2021, M1502.4.2.
    let support = line(&list, |part| matches!(part, PartKind::Support { .. })).unwrap();
    assert_eq!(support.count, Some(2));
}

/// A transition duct takes two clamps and no tape at its ends; another stock changes what is bought; a
/// riser's pipe is cut too; two diameters have a reducer between them and are cut apart.
#[test]
fn flexible_duct_own_stock_risers_and_diameters() {
    let mut plan = by_hand();
    plan.run.points[0].duct = Duct::Foil {
        short_of_full_stretch_percent: 10.0,
    };
    let list_of = list(&plan);
    assert_eq!(
        line(&list_of, |part| *part == PartKind::Clamp)
            .unwrap()
            .count,
        Some(2)
    );
    let flexible = line(&list_of, |part| matches!(part, PartKind::Flexible { .. })).unwrap();
    assert!((flexible.length.unwrap().inches() - 140.0).abs() < 1e-6);
    assert!(matches!(
        flexible.part,
        PartKind::Flexible {
            is_transition: true,
            ..
        }
    ));
    let mut plan = by_hand();
    plan.handover.stock_lengths = vec![Length::from_feet(4.0)];
    let own = list(&plan);
    let stock = own.pipe[0].packing.bars.iter();
    assert!(stock.clone().count() >= 4);
    assert!(
        stock
            .into_iter()
            .all(|bar| (bar.stock - 1.2192).abs() < 1e-9)
    );
    let mut plan = by_hand();
    plan.run.points[0].fitting.riser = Some(Riser {
        rise: Length::from_feet(3.0),
        elbow: plan.run.points[0].fitting.elbow,
    });
    assert_eq!(list(&plan).pipe[0].pieces.len(), 4);
    let mut plan = by_hand();
    plan.run.points[1].leg.diameter = Some(Length::from_inches(5.0));
    let apart = list(&plan);
    assert_eq!(apart.pipe.len(), 2);
    let reducer = line(&apart, |part| matches!(part, PartKind::Reducer { .. })).unwrap();
    assert_eq!(reducer.count, Some(1));
}

/// A run as long as a plan can hold ends, and says that it is too long.
#[test]
fn a_run_without_end_is_not_cut_up() {
    let mut plan = by_hand();
    plan.handover.stock_lengths = vec![Length::from_metres(0.3)];
    let first = plan.run.points[0].clone();
    plan.run.points = (0..400_u32)
        .map(|index| {
            let mut point = first.clone();
            point.id = format!("p{index}").as_str().into();
            point.position.x = if index % 2 == 0 { -490.0 } else { 490.0 };
            point.position.y = f64::from(index);
            point
        })
        .collect();
    let list = list(&plan);
    assert!(list.is_too_long && list.pipe.is_empty());
}

/// A riser at the dryer's outlet is of the first leg's duct, its diameter too: in the air as in the list
/// of what is bought.
#[test]
fn a_riser_at_the_outlet_is_as_wide_as_the_leg_that_leaves() {
    let mut plan = by_hand();
    plan.run.outlet.riser = Some(Riser {
        rise: Length::from_feet(3.0),
        elbow: plan.run.outlet.elbow,
    });
    let wide = Length::from_inches(5.0);
    plan.run.points[0].leg.diameter = Some(wide);
    let figures = figures(&plan).0;
    let mut elements = figures.elements.iter();
    let riser = elements.find(|it| it.id.to_string() == "riser:@outlet");
    let diameter = riser.unwrap().air.as_ref().unwrap().diameter;
    assert!((diameter - wide).abs() < Length::from_metres(1e-9));
    // The riser and the first leg; the second leg is of the run's diameter.
    let list = cut_list(&plan, &figures);
    let mut widths: Vec<f64> = list.pipe.iter().map(|it| it.diameter.inches()).collect();
    widths.sort_by(f64::total_cmp);
    assert_eq!(widths.len(), 2, "{widths:?}");
    assert!((widths[1] - 5.0).abs() < 1e-9, "{widths:?}");
}
