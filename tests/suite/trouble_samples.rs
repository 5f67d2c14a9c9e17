//! Refusals and errors, one and more of each kind; values are invented.

use crate::message_samples::NAME;
use elbowroom::plan::{Field, FileError, ValueError};
use elbowroom::report::words::Refusal;
use elbowroom::units::LengthTextError;

/// Every value that a plan's file can hold too large, by its name in the file.
const TYPED: [&str; 15] = [
    "x_m",
    "width_m",
    "depth_m",
    "thickness_m",
    "offset_m",
    "spacing_m",
    "ceiling_height_m",
    "temperature_degc",
    "turned_deg",
    "rise_m",
    "radius_m",
    "diameter_m",
    "altitude_m",
    "humidity",
    "free_area",
];

fn value_errors() -> Vec<ValueError> {
    let path = || format!("{NAME}.path");
    let out_of_range = |name: &&str| ValueError::OutOfRange {
        path: format!("run.{name}"),
        value: 17.0,
        field: Field {
            least: 1.0,
            greatest: 16.0,
        },
    };
    let rest = [
        ValueError::BadId { path: path() },
        ValueError::NoSuchWall { path: path() },
        ValueError::NoPoints,
        ValueError::NotBase64 { path: path() },
        ValueError::NotSettable { path: path() },
        ValueError::TooManyPictures {
            path: path(),
            count: 17,
            field: Field::VISIT_PICTURES,
        },
    ];
    TYPED.iter().map(out_of_range).chain(rest).collect()
}

pub fn refusals() -> Vec<Refusal> {
    let fixed = [
        Refusal::TerminationStays,
        Refusal::NoSuchElement,
        Refusal::LegTooShort,
        Refusal::NothingBegun,
        Refusal::NoDirection,
        Refusal::NoWallHere,
        Refusal::TooSmall,
        Refusal::OpeningPastWall,
        Refusal::DryerAndRunStay,
        Refusal::NothingToCopy,
        Refusal::NothingToTurn,
    ];
    let values = value_errors().into_iter().map(Refusal::Value);
    fixed.into_iter().chain(values).collect()
}

pub fn file_errors() -> Vec<FileError> {
    let version = |found: &str| FileError::UnknownVersion {
        found: found.to_owned(),
        known: 4,
    };
    let rest = [
        FileError::TooLarge {
            bytes: 123_456,
            limit: 654,
        },
        FileError::NotText,
        FileError::NotJson {
            line: 12,
            column: 34,
        },
        FileError::NotAPlan,
        version(""),
        version("99"),
        FileError::Field {
            path: NAME.to_owned(),
            detail: "qxz18".to_owned(),
        },
    ];
    let values = value_errors().into_iter().map(FileError::Value);
    rest.into_iter().chain(values).collect()
}

pub fn length_errors() -> Vec<LengthTextError> {
    let part = || NAME.to_owned();
    vec![
        LengthTextError::Empty,
        LengthTextError::TooLong,
        LengthTextError::NotUnderstood { part: part() },
        LengthTextError::AmbiguousComma { part: part() },
        LengthTextError::NumberMissing { unit: part() },
        LengthTextError::UnitMissing { number: part() },
        LengthTextError::UnitOrder { unit: part() },
        LengthTextError::ZeroDivisor,
        LengthTextError::TooLarge {
            metres: 4321.0,
            limit_metres: 1000.0,
        },
    ]
}
