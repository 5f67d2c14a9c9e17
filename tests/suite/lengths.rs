//! Lengths as people type them. The values follow from the definitions of the foot and the inch
//! (international yard and pound agreement of 1959: 0.3048 m, 0.0254 m); that people type them so
//! is common practice, no source.

use crate::seeded;
use crate::tally::Tally;
use elbowroom::units::{Length, LengthTextError, UnitSystem, parse_length};
use proptest::prelude::*;

/// m: sums of a few doubles.
const DUST: f64 = 1e-12;

const US: UnitSystem = UnitSystem::UsCustomary;
const SI: UnitSystem = UnitSystem::Si;

/// A typed text in the units of the page, and the metres that it means.
type Case = (&'static str, UnitSystem, f64);

fn inches(inches: f64) -> f64 {
    inches * 0.0254
}

fn feet(feet: f64) -> f64 {
    feet * 0.3048
}

fn check(subject: &'static str, cases: &[Case]) {
    let mut tally = Tally::new(subject);
    for (text, bare_unit, expected) in cases {
        match parse_length(text, *bare_unit) {
            Ok(length) => tally.within(format!("{text:?}"), length.metres(), *expected, DUST),
            Err(error) => tally.holds(format!("{text:?}: {error}"), false),
        }
    }
    tally.finish(cases.len());
}

#[test]
fn feet_and_inches_with_marks() {
    check(
        "marks",
        &[
            ("12' 6\"", US, inches(150.0)),
            ("12'6\"", US, inches(150.0)),
            ("12' 6\"", SI, inches(150.0)),
            ("12'-6\"", US, inches(150.0)),
            ("12' - 6\"", US, inches(150.0)),
            ("12' 6", US, inches(150.0)),
            ("12'6", SI, inches(150.0)),
            ("5 ' 6 \"", US, inches(66.0)),
            ("12'  6\"", US, inches(150.0)),
            ("12' 6''", US, inches(150.0)),
            ("8' 0\"", US, feet(8.0)),
            ("0' 8\"", US, inches(8.0)),
            ("2'-0\"", US, feet(2.0)),
            ("35'", US, feet(35.0)),
            ("150\"", US, inches(150.0)),
            ("12.5'", US, feet(12.5)),
            ("12' 6.5\"", US, inches(150.5)),
            (".5'", US, inches(6.0)),
        ],
    );
}

#[test]
fn feet_and_inches_with_typographic_marks() {
    check(
        "typographic marks",
        &[
            ("12\u{2032} 6\u{2033}", US, inches(150.0)),
            ("12\u{2019} 6\u{201d}", US, inches(150.0)),
            ("12\u{2018}6\u{201c}", US, inches(150.0)),
            ("12\u{2032}\u{2011}6\u{2033}", US, inches(150.0)),
            ("12'\u{2013}6\"", US, inches(150.0)),
            ("12`6\"", US, inches(150.0)),
            ("12\u{b4} 6\u{b4}\u{b4}", US, inches(150.0)),
            ("12\u{a0}ft 6\u{202f}in", US, inches(150.0)),
            ("12' 6\u{bd}\"", US, inches(150.5)),
            ("6\u{be}\"", US, inches(6.75)),
            ("12\u{bd} ft", US, feet(12.5)),
            ("7\u{215d}\u{2033}", US, inches(7.625)),
            ("3 1\u{2044}2\"", US, inches(3.5)),
        ],
    );
}

#[test]
fn feet_and_inches_in_words() {
    check(
        "words",
        &[
            ("12ft 6in", US, inches(150.0)),
            ("12 ft 6 in", US, inches(150.0)),
            ("12 ft. 6 in.", US, inches(150.0)),
            ("12ft.6in.", US, inches(150.0)),
            ("12ft6", US, inches(150.0)),
            ("12 feet 6 inches", US, inches(150.0)),
            ("1 Foot 1 Inch", US, inches(13.0)),
            ("35 FT", US, feet(35.0)),
            ("12.5 ft", SI, feet(12.5)),
            ("150 in.", SI, inches(150.0)),
            // A comma between the two, as in running text, has no other meaning.
            ("12 ft, 6 in", US, inches(150.0)),
            ("12 feet, 6 inches", US, inches(150.0)),
            // Joined by a hyphen to its unit, as on a drawing.
            ("8-ft", US, feet(8.0)),
            ("6-inch", US, inches(6.0)),
        ],
    );
}

#[test]
fn fractions() {
    check(
        "fractions",
        &[
            ("1/2\"", US, inches(0.5)),
            ("3 1/2\"", US, inches(3.5)),
            ("5-1/2\"", US, inches(5.5)),
            ("5-1/2 in", US, inches(5.5)),
            ("5 \u{2013} 1/2 in", US, inches(5.5)),
            ("12' 6 1/2\"", US, inches(150.5)),
            ("12' 6-1/2\"", US, inches(150.5)),
            ("12'-6-1/2\"", US, inches(150.5)),
            ("12'-6 1/2\"", US, inches(150.5)),
            ("12' 6 1/2", US, inches(150.5)),
            ("12' 1/2\"", US, inches(144.5)),
            ("10 ft 0 1/16 in", US, inches(120.0625)),
            ("7 ft 11 15/16 in", US, inches(95.9375)),
            ("1/4'", US, inches(3.0)),
            ("2 1/2 ft", US, feet(2.5)),
            ("3 1/2", US, feet(3.5)),
        ],
    );
}

#[test]
fn metric() {
    check(
        "metric",
        &[
            ("3.8m", SI, 3.8),
            ("3.8 m", US, 3.8),
            ("3,8 m", SI, 3.8),
            ("380cm", SI, 3.8),
            ("380 cm", US, 3.8),
            ("3800 mm", SI, 3.8),
            ("3800MM", SI, 3.8),
            ("101,6 mm", SI, 0.1016),
            ("3 m 80 cm", SI, 3.8),
            ("3m 800mm", SI, 3.8),
            ("1 metre", SI, 1.0),
            ("2.5 Meters", SI, 2.5),
            ("0,5 m", SI, 0.5),
            // Nobody writes a thousand that begins with nought: this comma is a decimal one.
            ("0,125 m", SI, 0.125),
            ("30 centimeters", SI, 0.3),
            ("250 millimetres", SI, 0.25),
        ],
    );
}

#[test]
fn bare_numbers() {
    check(
        "bare numbers",
        &[
            ("12", US, feet(12.0)),
            ("12", SI, 12.0),
            ("12.5", US, feet(12.5)),
            ("2.5", SI, 2.5),
            ("2,5", SI, 2.5),
            ("0", US, 0.0),
            (" 7 ", SI, 7.0),
        ],
    );
}

/// A rise is signed: a drop is negative, and a person who types drops marks a rise too.
#[test]
fn drops() {
    check(
        "drops",
        &[
            ("-2'", US, feet(-2.0)),
            ("-2' 6\"", US, inches(-30.0)),
            ("\u{2212}2 ft", US, feet(-2.0)),
            ("\u{2013}30 cm", SI, -0.3),
            ("- 30 cm", SI, -0.3),
            ("-2 1/2 ft", US, feet(-2.5)),
            ("-1/2\"", US, inches(-0.5)),
            ("-1,5", SI, -1.5),
            ("+2 ft", US, feet(2.0)),
            ("+0.6", SI, 0.6),
        ],
    );
}

fn not_understood(part: &str) -> LengthTextError {
    LengthTextError::NotUnderstood {
        part: part.to_owned(),
    }
}

fn number_missing(unit: &str) -> LengthTextError {
    LengthTextError::NumberMissing {
        unit: unit.to_owned(),
    }
}

fn unit_missing(number: &str) -> LengthTextError {
    LengthTextError::UnitMissing {
        number: number.to_owned(),
    }
}

fn unit_order(unit: &str) -> LengthTextError {
    LengthTextError::UnitOrder {
        unit: unit.to_owned(),
    }
}

fn ambiguous(part: &str) -> LengthTextError {
    LengthTextError::AmbiguousComma {
        part: part.to_owned(),
    }
}

/// Each wrong text ends in the error that tells the person what to mend, naming the part.
#[test]
fn wrong_ways() {
    let too_long = "1".repeat(65);
    let cases = [
        ("", US, LengthTextError::Empty),
        ("   ", US, LengthTextError::Empty),
        ("\u{a0}\t", SI, LengthTextError::Empty),
        (too_long.as_str(), US, LengthTextError::TooLong),
        ("twelve feet", US, not_understood("twelve")),
        ("12 yd", US, not_understood("yd")),
        ("about 12 ft", US, not_understood("about")),
        ("4 x 4", US, not_understood("x")),
        ("#4", US, not_understood("#")),
        ("12 ft?", US, not_understood("?")),
        ("12..5 ft", US, not_understood("12..5")),
        ("1.2.3", US, not_understood("1.2.3")),
        (".", US, not_understood(".")),
        ("1/2/3\"", US, not_understood("1/2/3")),
        ("1.5/2\"", US, not_understood("1.5/2")),
        ("1/\"", US, not_understood("1/")),
        ("1e3 mm", SI, not_understood("e")),
        ("NaN", SI, not_understood("nan")),
        ("--2 ft", US, not_understood("-")),
        // A hyphen with nothing after it: something was typed, so it is not empty.
        ("12'-", US, not_understood("-")),
        ("1,250 mm", SI, ambiguous("1,250")),
        ("12,000 ft", US, ambiguous("12,000")),
        ("ft", US, number_missing("ft")),
        ("'", US, number_missing("'")),
        ("12' \"", US, number_missing("\"")),
        ("12 6", US, unit_missing("12")),
        ("12-6\"", US, unit_missing("12")),
        ("3m80", SI, unit_missing("80")),
        ("6\" 1/2", US, unit_missing("1/2")),
        ("6\" 12'", US, unit_order("'")),
        ("12' 3'", US, unit_order("'")),
        ("5 ft 20 cm", US, unit_order("cm")),
        ("80 cm 3 m", SI, unit_order("m")),
        ("1'250 mm", SI, unit_order("mm")),
        ("5 1/0\"", US, LengthTextError::ZeroDivisor),
        (
            "1001 m",
            SI,
            LengthTextError::TooLarge {
                metres: 1001.0,
                limit_metres: 1000.0,
            },
        ),
    ];
    let mut tally = Tally::new("wrong lengths");
    for (text, bare_unit, expected) in &cases {
        let found = parse_length(text, *bare_unit);
        tally.equal(format!("{text:?}"), &found, &Err(expected.clone()));
    }
    tally.finish(30);
}

/// What the page shows can be typed back: to half of the last digit shown.
#[test]
fn a_shown_length_reads_back() {
    seeded::check(1000, &(-30.0..900.0_f64), |metres| {
        for (units, last_digit_m) in [(US, inches(1.0 / 16.0)), (SI, 0.001)] {
            let shown = units.length(Length::from_metres(metres)).to_string();
            let read = parse_length(&shown, units);
            let read = read.map_err(|error| TestCaseError::fail(format!("{shown}: {error}")))?;
            let off = (read.metres() - metres).abs();
            prop_assert!(off <= last_digit_m / 2.0 + DUST, "{shown}: off by {off} m");
        }
        Ok(())
    });
}

/// Whatever is typed ends in a length or an error, and a length is finite and within the limit.
#[test]
fn anything_typed_ends_in_a_length_or_an_error() {
    let letters = prop::sample::select(
        "0123456789.,/'\"-\u{2212}\u{2032}\u{2033}\u{bd}\u{215e} +ftinmcm\u{130}\u{df}\n"
            .chars()
            .collect::<Vec<_>>(),
    );
    let letter = prop_oneof![9 => letters, 1 => any::<char>()];
    let texts = prop::collection::vec(letter, 0..70);
    seeded::check(3000, &texts, |letters| {
        let text: String = letters.into_iter().collect();
        for units in [US, SI] {
            if let Ok(length) = parse_length(&text, units) {
                prop_assert!(length.metres().abs() <= 1000.0, "{text:?}: {length:?}");
            }
        }
        Ok(())
    });
}
