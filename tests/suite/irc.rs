//! The length rule of the International Residential Code 2021, M1502.4.6.1: its table exactly, the
//! reading rules, the limit of 35 ft to a sixteenth of an inch, and both readings of the path
//! through fittings.

use crate::seeded;
use crate::tally::Tally;
use elbowroom::plan::{self, Elbow, ElbowKind, Fitting, Plan, Point, RuleSetId, RunPoint};
use elbowroom::rules::{
    CodeLength, Doubt, IRC_LENGTH_LIMIT, IRC_LENGTH_TABLE, Verdict, code_length, irc_deduction,
};
use elbowroom::system::assess;
use elbowroom::units::{Angle, Length, UnitSystem};
use proptest::prelude::*;
use serde::Deserialize;

/// in: inches turned into metres and back in doubles; 16 million times finer than the promised
/// sixteenth.
const DUST: f64 = 4e-9;
/// A sixteenth of an inch, in: the finest that the code length promises.
const SIXTEENTH: f64 = 1.0 / 16.0;
/// The table's four rows of two columns, and the reading rules.
const TABLE_ROWS: usize = 8;
const CASES: usize = 44;
/// M1502.4.6.1: 35 ft.
const LIMIT_INCHES: f64 = 420.0;

#[derive(Deserialize)]
struct Case {
    section: String,
    of: String,
    kind: ElbowKind,
    angle_deg: f64,
    radius_in: f64,
    feet: f64,
    inches: f64,
    notes: String,
}

fn cases() -> Vec<Case> {
    csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(include_str!("cases/irc_deductions.csv").as_bytes())
        .deserialize()
        .map(|case| case.expect("the case reads"))
        .collect()
}

#[test]
fn every_row_and_column_and_every_reading_rule() {
    let mut tally = Tally::new("deductions");
    let cases = cases();
    assert_eq!(
        cases.iter().filter(|case| case.of == "table").count(),
        TABLE_ROWS
    );
    for case in &cases {
        let label = format!(
            "{} {:?}, {} deg, {} in",
            case.section, case.kind, case.angle_deg, case.radius_in
        );
        let found = irc_deduction(
            case.kind,
            Angle::from_degrees(case.angle_deg),
            Length::from_inches(case.radius_in),
        );
        let expected = 12.0 * case.feet + case.inches;
        tally.within(&label, found.length.inches(), expected, DUST);
        let notes: Vec<String> = found.notes.iter().map(|note| format!("{note:?}")).collect();
        tally.equal(&label, &notes.join("+"), &case.notes);
    }
    tally.finish(2 * CASES);
}

/// The exported table holds nothing but the rows of M1502.4.6.1, by growing radius.
#[test]
fn the_exported_table_is_the_codes() {
    let rows: Vec<[f64; 3]> = IRC_LENGTH_TABLE
        .iter()
        .map(|row| {
            [row.radius, row.at_45, row.at_90].map(|length| (length.inches() * 1e6).round() / 1e6)
        })
        .collect();
    assert_eq!(
        rows,
        [
            [4.0, 30.0, 60.0],
            [6.0, 12.0, 21.0],
            [8.0, 12.0, 19.0],
            [10.0, 9.0, 18.0]
        ]
    );
    assert!((IRC_LENGTH_LIMIT.inches() - LIMIT_INCHES).abs() < DUST);
}

/// A drawn sheet's dust in an angle must not move an elbow into the next column: 45 and 90 deg,
/// give or take a hundredth, are 45 and 90 (a drawing's coordinates are no finer).
#[test]
fn dust_in_an_angle_changes_nothing() {
    for (angle_deg, inches) in [(45.0, 12.0), (90.0, 21.0), (135.0, 33.0), (180.0, 42.0)] {
        for dust_deg in [-0.01, -1e-9, 1e-9, 0.01] {
            let angle = Angle::from_degrees(angle_deg + dust_deg);
            let found = irc_deduction(ElbowKind::Smooth, angle, Length::from_inches(6.0));
            assert!(
                (found.length.inches() - inches).abs() < DUST,
                "{angle_deg} {dust_deg:+} deg: {found:?}"
            );
        }
    }
}

/// A level run of `legs` (in) that turns left and right by turns by `turn_deg` with `elbow`, in
/// duct of `diameter` (in).
fn run(legs_in: &[f64], turn_deg: f64, elbow: Elbow, diameter_in: f64) -> Plan {
    let mut plan = plan::blank("For the length rule".to_owned());
    plan.run.diameter = Length::from_inches(diameter_in);
    let fitting = Fitting { elbow, riser: None };
    plan.run.outlet = fitting;
    plan.run.points.clear();
    let mut at = plan.dryer.outlet();
    for (index, leg) in legs_in.iter().enumerate() {
        let heading = if index % 2 == 0 {
            0.0
        } else {
            turn_deg.to_radians()
        };
        let leg = Length::from_inches(*leg).metres();
        at = Point::new(at.x + leg * heading.sin(), at.y - leg * heading.cos());
        plan.run.points.push(RunPoint {
            id: format!("p{index}").as_str().into(),
            position: at,
            duct: plan::Duct::Rigid,
            leg: plan::LegState::default(),
            fitting,
        });
    }
    plan
}

fn counted(plan: &Plan, path_through_fittings_counts: bool) -> CodeLength {
    let mut plan = plan.clone();
    plan.code.path_through_fittings_counts = path_through_fittings_counts;
    let assessment = assess(&plan);
    code_length(&plan, &assessment.run, &assessment.findings)
}

fn smooth(radius_in: f64) -> Elbow {
    Elbow {
        kind: ElbowKind::Smooth,
        radius: Length::from_inches(radius_in),
    }
}

fn segmented(radius_in: f64) -> Elbow {
    Elbow {
        kind: ElbowKind::Segmented,
        radius: Length::from_inches(radius_in),
    }
}

/// M1502.4.6.1: 35 ft exactly is allowed; a sixteenth of an inch more is not.
#[test]
fn thirty_five_feet_and_a_sixteenth() {
    let straight = |inches: f64| counted(&run(&[inches], 0.0, segmented(4.0), 4.0), true);
    let exact = straight(LIMIT_INCHES);
    assert_eq!(exact.verdict, Verdict::Meets);
    assert_eq!(exact.section, "M1502.4.6.1");
    assert_eq!(exact.rule_set, RuleSetId::Irc2021);
    assert!(exact.margin.unwrap().inches().abs() < DUST);
    assert_eq!(
        UnitSystem::UsCustomary
            .length(exact.with_deductions)
            .to_string(),
        "35' 0\""
    );
    let over = straight(LIMIT_INCHES + SIXTEENTH);
    assert_eq!(over.verdict, Verdict::DoesNotMeet);
    assert!((over.margin.unwrap().inches() + SIXTEENTH).abs() < DUST);
    let shown = UnitSystem::UsCustomary
        .length(over.with_deductions)
        .to_string();
    assert_eq!(shown, "35' 0 1/16\"");
    assert_eq!(straight(LIMIT_INCHES - SIXTEENTH).verdict, Verdict::Meets);
    // The same limit in legs of odd sixteenths, whose metres do not add up to a round number.
    let in_legs = |more: f64| {
        let legs = [33.0625, 101.1875, 57.3125 + more];
        counted(&run(&legs, 0.0, segmented(4.0), 4.0), true)
            .with_deductions
            .inches()
    };
    assert!((in_legs(0.0) - 191.5625).abs() < DUST);
}

/// The limit counts the deductions: 30 ft of straight duct and one segmented 90 (5 ft, M1502.4.6.1)
/// are 35 ft where the path through the fitting does not count.
#[test]
fn the_limit_counts_deductions() {
    // Each leg gives a tangent of 4 in to the elbow.
    let legs = |more: f64| [180.0 + 4.0, 180.0 + 4.0 + more];
    let meets = counted(&run(&legs(0.0), 90.0, segmented(4.0), 4.0), false);
    assert_eq!(meets.verdict, Verdict::Meets);
    assert!((meets.with_deductions.inches() - LIMIT_INCHES).abs() < DUST);
    let over = counted(&run(&legs(SIXTEENTH), 90.0, segmented(4.0), 4.0), false);
    assert_eq!(over.verdict, Verdict::DoesNotMeet);
    // The stricter reading counts the arc, pi/2 times 4 in.
    let stricter = counted(&run(&legs(0.0), 90.0, segmented(4.0), 4.0), true);
    assert_eq!(stricter.verdict, Verdict::DoesNotMeet);
    let arc = core::f64::consts::FRAC_PI_2 * 4.0;
    assert!((stricter.margin.unwrap().inches() + arc).abs() < DUST);
}

/// Both readings of whether the path through a fitting counts, worked out by hand: legs of 10 and
/// 8 ft, one elbow between them. Straights are the legs less the tangents r tan(a/2), the path r a.
#[test]
fn both_readings_of_the_path_through_fittings() {
    use core::f64::consts::{FRAC_PI_2, FRAC_PI_4};
    let mut tally = Tally::new("both readings");
    // Elbow, turn (deg), straights (in), path through it (in), deduction (in).
    for (elbow, turn_deg, straights, path, deduction) in [
        (segmented(4.0), 90.0, 208.0, 4.0 * FRAC_PI_2, 60.0),
        (smooth(6.0), 90.0, 204.0, 6.0 * FRAC_PI_2, 21.0),
        (smooth(10.0), 90.0, 196.0, 10.0 * FRAC_PI_2, 18.0),
        (smooth(8.0), 45.0, 209.372_583_002, 8.0 * FRAC_PI_4, 12.0),
    ] {
        let plan = run(&[120.0, 96.0], turn_deg, elbow, 4.0);
        for (counts, measured) in [(true, straights + path), (false, straights)] {
            let found = counted(&plan, counts);
            let label = format!("{elbow:?}, {turn_deg} deg, path counts: {counts}");
            tally.equal(&label, &found.path_through_fittings_counts, &counts);
            tally.within(&label, found.measured.inches(), measured, DUST);
            let whole = measured + deduction;
            tally.within(&label, found.with_deductions.inches(), whole, DUST);
            tally.within(
                &label,
                found.margin.unwrap().inches(),
                LIMIT_INCHES - whole,
                DUST,
            );
            tally.equal(&label, &found.deductions.len(), &1);
            tally.equal(&label, &found.verdict, &Verdict::Meets);
        }
    }
    tally.finish(48);
}

/// The stricter reading stands in a new plan.
#[test]
fn the_stricter_reading_is_the_first() {
    assert!(plan::blank(String::new()).code.path_through_fittings_counts);
}

/// Under 4 in radius the table has no row: the verdict stays open, unless the least deduction alone
/// is over the limit.
#[test]
fn under_four_inches_cannot_tell() {
    for elbow in [smooth(3.0), segmented(3.0), smooth(3.9375)] {
        let found = counted(&run(&[120.0, 96.0], 90.0, elbow, 4.0), true);
        assert_eq!(found.verdict, Verdict::CannotTell, "{elbow:?}");
        assert_eq!(found.doubts, [Doubt::RadiusBelowTable]);
        assert!(found.deductions[0].1.length.inches() >= 60.0 - DUST);
    }
    let over = counted(&run(&[300.0, 120.0], 90.0, smooth(3.0), 4.0), true);
    assert_eq!(over.verdict, Verdict::DoesNotMeet);
    let on_the_row = counted(&run(&[120.0, 96.0], 90.0, smooth(4.0), 4.0), true);
    assert_eq!(on_the_row.verdict, Verdict::Meets);
}

/// M1502.4.6.1 is for 4 in duct: another size leaves the verdict open either way.
#[test]
fn another_diameter_cannot_tell() {
    for (diameter_in, leg_in) in [(3.0, 100.0), (5.0, 100.0), (6.0, 100.0), (5.0, 500.0)] {
        let found = counted(&run(&[leg_in], 0.0, segmented(4.0), diameter_in), true);
        assert_eq!(found.verdict, Verdict::CannotTell, "{diameter_in} in");
        assert_eq!(found.doubts, [Doubt::DiameterNotInTable]);
    }
    // 4 in nominal, as metric pipe is made: common practice, no source.
    let metric = run(&[100.0], 0.0, segmented(4.0), 100.0 / 25.4);
    assert_eq!(counted(&metric, true).verdict, Verdict::Meets);
}

/// Elbows that overlap as drawn leave no length that could be set against a limit.
#[test]
fn overlapping_elbows_cannot_tell() {
    let plan = run(&[60.0, 10.0, 60.0], 90.0, smooth(10.0), 4.0);
    let found = counted(&plan, true);
    assert_eq!(found.verdict, Verdict::CannotTell);
    assert_eq!(found.doubts, [Doubt::ElbowsOverlap]);
}

/// A termination and a vertical leg: no row for hoods; a riser's height and its two elbows count
/// like any other (the limit is on the duct's length).
#[test]
fn a_riser_counts() {
    let mut plan = run(&[60.0, 60.0], 0.0, segmented(4.0), 4.0);
    plan.run.points[0].fitting.riser = Some(plan::Riser {
        rise: Length::from_inches(72.0),
        elbow: segmented(4.0),
    });
    let found = counted(&plan, false);
    // 60 - 4, 72 - 8, 60 - 4 and two 90s of 60 each.
    assert!((found.measured.inches() - 176.0).abs() < DUST, "{found:?}");
    assert!((found.with_deductions.inches() - 296.0).abs() < DUST);
    assert_eq!(found.deductions.len(), 2);
}

/// A number of sixteenths as a tape shows it, by whole numbers alone.
fn on_the_tape(sixteenths: u32) -> String {
    let (feet, inches, part) = (sixteenths / 192, sixteenths / 16 % 12, sixteenths % 16);
    let fraction = match part {
        0 => return format!("{feet}' {inches}\""),
        part if part % 8 == 0 => format!("{}/2", part / 8),
        part if part % 4 == 0 => format!("{}/4", part / 4),
        part if part % 2 == 0 => format!("{}/8", part / 2),
        part => format!("{part}/16"),
    };
    format!("{feet}' {inches} {fraction}\"")
}

/// Legs drawn in sixteenths come out in sixteenths, and the verdict turns exactly at the limit:
/// counted here in whole numbers.
#[test]
fn lengths_are_exact_to_a_sixteenth() {
    const TANGENT: u32 = 64;
    const DEDUCTION: u32 = 960;
    const LIMIT: u32 = 6720;
    let legs = prop::collection::vec(130_u32..1500, 1..=5);
    // Often at the limit itself and one to either side of it.
    let last = prop::option::of(0_u32..3);
    seeded::check(300, &(legs, last), |(mut legs, last)| {
        let elbows = u32::try_from(legs.len()).unwrap() - 1;
        let whole =
            |legs: &[u32]| legs.iter().sum::<u32>() + elbows * DEDUCTION - elbows * 2 * TANGENT;
        if let Some(last) = last {
            let others = whole(&legs) - legs[0];
            if others + 130 < LIMIT {
                legs[0] = LIMIT + last - 1 - others;
            }
        }
        let legs_in: Vec<f64> = legs.iter().map(|leg| f64::from(*leg) / 16.0).collect();
        let found = counted(&run(&legs_in, 90.0, segmented(4.0), 4.0), false);
        let expected = whole(&legs);
        let shown = UnitSystem::UsCustomary.length(found.with_deductions);
        prop_assert_eq!(shown.to_string(), on_the_tape(expected));
        let off = found.with_deductions.inches() - f64::from(expected) / 16.0;
        prop_assert!(off.abs() < DUST, "{off} in");
        let verdict = if expected <= LIMIT {
            Verdict::Meets
        } else {
            Verdict::DoesNotMeet
        };
        prop_assert_eq!(found.verdict, verdict);
        Ok(())
    });
}
