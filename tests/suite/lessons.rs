//! Lessons: their file's format, and that each of the project's own says what its two runs come to.
//!
//! Source of what is right: of the format, JSON Schema, draft 2020-12, by the crate `jsonschema`; of the
//! texts, the figures of the very two runs, which stand on the checks of the physics; of the deduction of
//! 5 ft, IRC 2021, table M1502.4.6.1, first row.

use crate::schema::SCHEMA as PLAN_SCHEMA;
use elbowroom::plan::{
    Difference, Field, Lesson, LessonError, LessonPart, LessonText, Part, Quantity, differences,
    read_lesson, write_lesson,
};
use elbowroom::report::{figures, quantity_of};
use elbowroom::rules::Verdict;
use jsonschema::Registry;
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::path::Path;

const OWN: [&str; 6] = [
    "one-elbow-more",
    "sharp-or-long-radius",
    "flex-pushed-together",
    "same-code-length",
    "hot-and-cold",
    "blocked-flap",
];
/// Lengths by the code are told to 1/16 in.
const SIXTEENTH_METRES: f64 = 0.0254 / 16.0;

fn file(name: &str) -> Vec<u8> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("public/lessons")
        .join(format!("{name}.json"));
    std::fs::read(path).unwrap()
}

fn lesson(name: &str) -> Lesson {
    read_lesson(&file(name)).unwrap_or_else(|error| panic!("{name}: {error}"))
}

fn both(lesson: &Lesson, quantity: Quantity) -> (f64, f64) {
    let of = |plan| quantity_of(&figures(plan).0, quantity).unwrap();
    (of(&lesson.first), of(&lesson.second))
}

/// What the second run has more than the first, in hundredths.
fn percent(lesson: &Lesson, quantity: Quantity) -> f64 {
    let (first, second) = both(lesson, quantity);
    (second / first - 1.0) * 100.0
}

/// The answer tells a change that is really so, to the whole percent, and in the right direction.
fn tells(lesson: &Lesson, quantity: Quantity, verb: &str) {
    let percent = percent(lesson, quantity);
    let told = format!("{verb} {:.0} %", percent.abs());
    assert!(
        lesson.text.answer.contains(&told),
        "{told}: {}",
        lesson.text.answer
    );
    assert_eq!(verb.contains("falls"), percent < 0.0, "{told}");
}

#[test]
fn the_folder_holds_the_six_and_each_is_written_as_the_program_writes_it() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("public/lessons");
    let found: BTreeSet<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    assert_eq!(found, OWN.map(|name| format!("{name}.json")).into());
    for name in OWN {
        let lesson = lesson(name);
        assert_eq!(write_lesson(&lesson).as_bytes(), file(name), "{name}");
        for plan in [&lesson.first, &lesson.second] {
            assert!(plan.note.contains("Invented"), "{name}: {}", plan.note);
            assert!(!plan.title.is_empty());
            assert_eq!(
                figures(plan)
                    .0
                    .findings
                    .iter()
                    .filter(|finding| {
                        matches!(
                            finding,
                            elbowroom::system::Finding::NoRoom(_)
                                | elbowroom::system::Finding::ElbowsOverlap { .. }
                        )
                    })
                    .count(),
                0,
                "{name}: {}",
                plan.title
            );
        }
        assert!(lesson.text.answer.ends_with("Both runs are invented."));
        // What is asked about differs by more than it is rounded to.
        assert!(percent(&lesson, lesson.text.asks).abs() > 2.0, "{name}");
    }
}

#[test]
fn one_elbow_more() {
    let lesson = lesson("one-elbow-more");
    tells(&lesson, Quantity::Airflow, "The airflow falls by");
    tells(
        &lesson,
        Quantity::BackPressure,
        "the back pressure rises by",
    );
    assert!(lesson.text.answer.contains(&format!(
        "{:.0} % longer",
        percent(&lesson, Quantity::CodeLength)
    )));
    let elbows = |plan| {
        let elements = figures(plan).0.elements;
        elements
            .iter()
            .filter(|element| element.id.part == Part::Elbow)
            .count()
    };
    assert_eq!((elbows(&lesson.first), elbows(&lesson.second)), (1, 2));
    // Equally long, corner to corner.
    let drawn = |plan: &elbowroom::plan::Plan| {
        let mut at = plan.dryer.outlet();
        let legs = plan.run.points.iter().map(|point| {
            let length = at.distance(point.position).metres();
            at = point.position;
            length
        });
        legs.sum::<f64>()
    };
    assert!((drawn(&lesson.first) - drawn(&lesson.second)).abs() < 1e-9);
}

#[test]
fn sharp_or_long_radius() {
    let lesson = lesson("sharp-or-long-radius");
    tells(&lesson, Quantity::Airflow, "the airflow rises by");
    tells(
        &lesson,
        Quantity::BackPressure,
        "the back pressure falls by",
    );
    let differ = differences(&lesson.first, &lesson.second);
    assert!(
        matches!(differ[..], [Difference::Elbow { .. }]),
        "{differ:?}"
    );
}

#[test]
fn flexible_duct_pushed_together() {
    let lesson = lesson("flex-pushed-together");
    tells(&lesson, Quantity::Airflow, "The airflow falls by");
    tells(
        &lesson,
        Quantity::BackPressure,
        "the back pressure rises by",
    );
    let (first, second) = both(&lesson, Quantity::CodeLength);
    assert!(
        (first - second).abs() < 1e-9,
        "the code counts no transition duct"
    );
    let differ = differences(&lesson.first, &lesson.second);
    assert!(
        matches!(differ[..], [Difference::Duct { leg: 1, .. }]),
        "{differ:?}"
    );
}

#[test]
fn the_same_code_length_and_twice_the_loss() {
    let lesson = lesson("same-code-length");
    let (first, second) = both(&lesson, Quantity::CodeLength);
    assert!(
        (first - second).abs() < SIXTEENTH_METRES,
        "{first} m and {second} m"
    );
    let (first, second) = both(&lesson, Quantity::Loss);
    assert!(
        (2.0..2.25).contains(&(second / first)),
        "{} times",
        second / first
    );
    let told = format!("It loses {:.0} % more", percent(&lesson, Quantity::Loss));
    assert!(lesson.text.answer.contains(&told), "{told}");
    let (first, second) = both(&lesson, Quantity::Airflow);
    assert!(
        (first - second).abs() < 1e-12,
        "one airflow is pushed through both"
    );
    let (second, _) = figures(&lesson.second);
    let elbows: Vec<_> = second
        .elements
        .iter()
        .filter(|element| element.id.part == Part::Elbow)
        .collect();
    assert_eq!(elbows.len(), 5);
    for elbow in elbows {
        let air = elbow.air.as_ref().unwrap().equivalent_length.feet();
        assert!((18.0..=19.0).contains(&air), "{air} ft");
        let code = elbow.code_deduction.unwrap().feet();
        assert!((code - 5.0).abs() < 1e-9, "{code} ft");
    }
    assert_eq!(figures(&lesson.first).0.code.verdict, Verdict::Meets);
    assert_eq!(second.code.verdict, Verdict::CannotTell);
}

#[test]
fn hot_air_and_cold_air() {
    let lesson = lesson("hot-and-cold");
    tells(
        &lesson,
        Quantity::BackPressure,
        "The back pressure falls by",
    );
    tells(
        &lesson,
        Quantity::Airflow,
        "the airflow rises by no more than",
    );
    // Thinner, and drawn upward.
    let totals = |plan| figures(plan).0.totals.unwrap();
    let (cold, hot) = (totals(&lesson.first), totals(&lesson.second));
    assert!(hot.density < cold.density && hot.stack < cold.stack);
    let differ = differences(&lesson.first, &lesson.second);
    assert!(
        matches!(differ[..], [Difference::ExhaustTemperature(..)]),
        "{differ:?}"
    );
}

#[test]
fn a_flap_that_sticks() {
    let lesson = lesson("blocked-flap");
    tells(
        &lesson,
        Quantity::BackPressure,
        "The back pressure rises by",
    );
    tells(&lesson, Quantity::Airflow, "the airflow falls by");
    let (first, second) = both(&lesson, Quantity::CodeLength);
    assert!((first - second).abs() < 1e-9);
    let differ = differences(&lesson.first, &lesson.second);
    assert!(
        matches!(differ[..], [Difference::TerminationFree(..)]),
        "{differ:?}"
    );
}

fn document() -> Value {
    serde_json::from_slice(&file("blocked-flap")).unwrap()
}

/// A fault, the document that has it, and what the reader's error must be.
type Fault = (&'static str, Value, fn(&LessonError) -> bool);

/// Faults of a lesson's own fields, each with how the reader calls it.
#[allow(clippy::too_many_lines, reason = "a table, a few lines a fault")]
fn faults() -> Vec<Fault> {
    let with = |pointer: &str, value: Value| {
        let mut document = document();
        *document.pointer_mut(pointer).unwrap() = value;
        document
    };
    let without = |name: &str| {
        let mut document = document();
        document.as_object_mut().unwrap().remove(name);
        document
    };
    let mut more = document();
    more["extra"] = json!(1);
    vec![
        (
            "format",
            with("/format", json!("elbowroom-plan")),
            |error| *error == LessonError::NotALesson,
        ),
        ("no format", without("format"), |error| {
            *error == LessonError::NotALesson
        }),
        ("version", with("/version", json!(2)), |error| {
            matches!(error, LessonError::File(_))
        }),
        ("a field more", more, |error| {
            matches!(error, LessonError::File(_))
        }),
        ("no name", with("/title", json!("")), |error| {
            matches!(
                error,
                LessonError::Text {
                    text: LessonPart::Title,
                    letters: 0,
                    ..
                }
            )
        }),
        (
            "long name",
            with("/title", json!("x".repeat(201))),
            |error| {
                matches!(
                    error,
                    LessonError::Text {
                        text: LessonPart::Title,
                        letters: 201,
                        field: Field::LESSON_NAME
                    }
                )
            },
        ),
        ("no question", with("/question", json!("")), |error| {
            matches!(
                error,
                LessonError::Text {
                    text: LessonPart::Question,
                    ..
                }
            )
        }),
        (
            "long hint",
            with("/hint", json!("é".repeat(2001))),
            |error| {
                matches!(
                    error,
                    LessonError::Text {
                        text: LessonPart::Hint,
                        ..
                    }
                )
            },
        ),
        (
            "long answer",
            with("/answer", json!("x".repeat(2001))),
            |error| {
                matches!(
                    error,
                    LessonError::Text {
                        text: LessonPart::Answer,
                        ..
                    }
                )
            },
        ),
        ("asks", with("/asks", json!("drying_time")), |error| {
            matches!(error, LessonError::File(_))
        }),
        ("no asks", without("asks"), |error| {
            matches!(error, LessonError::File(_))
        }),
        ("no first run", without("first"), |error| {
            matches!(error, LessonError::First(_))
        }),
        ("no second run", without("second"), |error| {
            matches!(error, LessonError::Second(_))
        }),
        (
            "first run",
            with("/first/run/diameter_m", json!(9.0)),
            |error| matches!(error, LessonError::First(_)),
        ),
        (
            "second run",
            with("/second/format", json!("elbowroom-lesson")),
            |error| matches!(error, LessonError::Second(_)),
        ),
    ]
}

#[test]
fn the_schema_and_the_reader_say_the_same_of_every_lesson() {
    let schema: Value =
        serde_json::from_str(include_str!("../../public/lesson.schema.json")).unwrap();
    // Any address will do: nothing is fetched.
    let base = "https://a.page/";
    let registry = Registry::new()
        .add(format!("{base}plan.schema.json"), PLAN_SCHEMA.clone())
        .unwrap()
        .prepare()
        .unwrap();
    let validator = jsonschema::options()
        .with_draft(jsonschema::Draft::Draft202012)
        .with_base_uri(base)
        .with_registry(&registry)
        .build(&schema)
        .unwrap();
    for name in OWN {
        let document: Value = serde_json::from_slice(&file(name)).unwrap();
        assert!(validator.is_valid(&document), "{name}");
    }
    for (what, document, is_right) in faults() {
        let error = read_lesson(&serde_json::to_vec(&document).unwrap()).expect_err(what);
        assert!(is_right(&error), "{what}: {error:?}");
        assert!(
            !validator.is_valid(&document),
            "{what}: the schema takes it"
        );
    }
    // The longest texts and the shortest.
    for (letters, hint) in [(2000, String::new()), (1, "é".repeat(2000))] {
        let mut document = document();
        document["question"] = json!("é".repeat(letters));
        document["hint"] = json!(hint);
        assert!(validator.is_valid(&document));
        assert!(read_lesson(&serde_json::to_vec(&document).unwrap()).is_ok());
    }
    let asked: Vec<Value> = Quantity::ALL.iter().map(|one| json!(one)).collect();
    assert_eq!(schema["properties"]["asks"]["enum"], Value::Array(asked));
}

#[test]
fn a_lesson_of_hostile_texts_reads_back_the_same() {
    let mut lesson = lesson("blocked-flap");
    let hostile = "<script>alert(1)</script> \u{202e}=cmd|' /C calc'!A1\u{1f9fa}";
    lesson.text = LessonText {
        title: hostile.into(),
        question: hostile.into(),
        hint: hostile.into(),
        answer: hostile.into(),
        asks: Quantity::Velocity,
    };
    assert_eq!(read_lesson(write_lesson(&lesson).as_bytes()), Ok(lesson));
    for bytes in [
        &b""[..],
        b"{}",
        b"[1]",
        b"null",
        b"\xff\xfe",
        b"{\"format\":\"elbowroom-lesson\"}",
    ] {
        assert!(read_lesson(bytes).is_err());
    }
}
