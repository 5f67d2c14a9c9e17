//! What went wrong, how much, and what would work.

use crate::plan::{Field, FileError, ValueError};
use crate::report::words::Refusal;
use crate::report::words::typed_value::{TypedQuantity, out_of_range};
use crate::units::{LengthTextError, UnitSystem};

pub(in crate::report::words) fn refusal(units: UnitSystem, refusal: &Refusal) -> String {
    match refusal {
        Refusal::TerminationStays => {
            "The run has to end somewhere: move the termination instead of removing it.".to_owned()
        }
        Refusal::NoSuchElement => "That part of the run is no longer there.".to_owned(),
        Refusal::LegTooShort => "That would leave a leg shorter than 2 in (50 mm).".to_owned(),
        Refusal::NothingBegun => "Set a first point, then type the length from there.".to_owned(),
        Refusal::NoDirection => {
            "Point the way first, or press an arrow key after the length.".to_owned()
        }
        Refusal::NoWallHere => {
            "There is no wall here. Draw one first, or press nearer to one.".to_owned()
        }
        Refusal::TooSmall => {
            "That has no size. Draw from one corner to the opposite one.".to_owned()
        }
        Refusal::OpeningPastWall => {
            "The opening would reach past the end of its wall. Move it along, or make it narrower."
                .to_owned()
        }
        Refusal::DryerAndRunStay => {
            "The dryer and its run cannot be removed. Start blank for a new plan.".to_owned()
        }
        Refusal::NothingToCopy => "Select walls, obstacles or zones to copy.".to_owned(),
        Refusal::NothingToTurn => {
            "An opening turns with its wall, and a picture is turned before it is opened. Select walls, obstacles, zones, the dryer or the run."
                .to_owned()
        }
        Refusal::Value(error) => typed_value(units, error),
    }
}

/// A value that was typed or drawn: in the units in which it was, and not by its place in the file.
fn typed_value(units: UnitSystem, error: &ValueError) -> String {
    let Some(wrong) = out_of_range(units, error) else {
        return value(error);
    };
    let what = match wrong.quantity {
        TypedQuantity::Place => "A place on the sheet",
        TypedQuantity::Width => "The width",
        TypedQuantity::Depth => "The depth",
        TypedQuantity::Thickness => "The thickness",
        TypedQuantity::Offset => "The distance from the wall's start",
        TypedQuantity::Spacing => "The spacing",
        TypedQuantity::Height => "The height",
        TypedQuantity::Temperature => "The temperature",
        TypedQuantity::Turn => "The turn",
        TypedQuantity::Rise => "The rise",
        TypedQuantity::Radius => "The radius",
        TypedQuantity::Diameter => "The diameter",
        TypedQuantity::Altitude => "The altitude",
    };
    format!(
        "{what} would be {}; it can be from {} to {}.",
        wrong.found, wrong.least, wrong.greatest
    )
}

fn value(error: &ValueError) -> String {
    match error {
        ValueError::OutOfRange {
            path,
            value,
            field: Field { least, greatest },
        } => format!("{path} is {value}; it can be from {least} to {greatest}."),
        ValueError::BadId { path } => format!(
            "{path} is empty, too long, used twice, or has signs other than letters, digits, - and _."
        ),
        ValueError::NoSuchWall { path } => format!("{path} names a wall that is not in the plan."),
        ValueError::NotSettable { path } => {
            format!("{path} is set twice, or is worked out for each element and cannot be set.")
        }
        ValueError::NotBase64 { path } => {
            format!("{path} is not a picture's bytes in Base64.")
        }
        ValueError::TooManyPictures { path, count, field } => format!(
            "{path}: the visits have {count} pictures together; a plan can hold {}.",
            field.greatest
        ),
        ValueError::NoPoints => {
            "run.points is empty; a run needs one point at least, where it ends.".to_owned()
        }
    }
}

pub(super) fn length_text(units: UnitSystem, error: &LengthTextError) -> String {
    let example = match units {
        UnitSystem::UsCustomary => "12' 6\", 12.5 ft, 150 in or 3.8 m",
        UnitSystem::Si => "3.8 m, 380 cm, 3800 mm or 12' 6\"",
    };
    let what = match error {
        LengthTextError::Empty => "Nothing was typed.".to_owned(),
        LengthTextError::TooLong => "That is too long for one length.".to_owned(),
        LengthTextError::NotUnderstood { part } => format!("“{part}” was not understood."),
        LengthTextError::AmbiguousComma { part } => {
            format!("“{part}” could be thousands or decimals: write it without the comma.")
        }
        LengthTextError::NumberMissing { unit } => format!("“{unit}” has no number before it."),
        LengthTextError::UnitMissing { number } => format!("“{number}” has no unit after it."),
        LengthTextError::UnitOrder { unit } => {
            format!("“{unit}” comes too late: write feet before inches.")
        }
        LengthTextError::ZeroDivisor => "A fraction cannot have 0 below its line.".to_owned(),
        LengthTextError::TooLarge {
            metres,
            limit_metres,
        } => {
            format!("{metres:.0} m is more than a plan can hold ({limit_metres:.0} m).")
        }
    };
    format!("{what} Write it like {example}.")
}

pub(super) fn file(error: &FileError) -> String {
    match error {
        FileError::TooLarge { bytes, limit } => {
            format!("The file has {bytes} bytes; a plan has at most {limit}.")
        }
        FileError::NotText => "The file is not text.".to_owned(),
        FileError::NotJson { line, column } => {
            format!("The file is not complete JSON: line {line}, column {column}.")
        }
        FileError::NotAPlan => {
            "The file does not say that it is a plan (format “elbowroom-plan”).".to_owned()
        }
        FileError::UnknownVersion { found, known } if found.is_empty() => {
            format!("The file has no version; version {known} can be read.")
        }
        FileError::UnknownVersion { found, known } => {
            format!("The file's version is {found}; version {known} can be read.")
        }
        FileError::Field { path, detail } => format!("At {path}: {detail}."),
        FileError::Value(error) => value(error),
    }
}
