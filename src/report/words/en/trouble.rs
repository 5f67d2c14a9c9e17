//! What went wrong, how much, and what would work.

use crate::plan::{Field, FileError, ValueError};
use crate::report::words::Refusal;
use crate::units::{Length, LengthTextError, Temperature, UnitSystem};

pub(super) fn refusal(units: UnitSystem, refusal: &Refusal) -> String {
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
        Refusal::Value(error) => typed_value(units, error),
    }
}

/// A value that was typed or drawn: in the units in which it was, and not by its place in the file.
fn typed_value(units: UnitSystem, error: &ValueError) -> String {
    let ValueError::OutOfRange {
        path,
        value: found,
        field,
    } = error
    else {
        return value(error);
    };
    let name = path.rsplit('.').next().unwrap_or_default();
    let shown = |value: f64| match name.rsplit('_').next() {
        Some("m") => units.length(Length::from_metres(value)).to_string(),
        Some("degc") => units
            .temperature(Temperature::from_celsius(value))
            .to_string(),
        Some("deg") => format!("{value}°"),
        _ => value.to_string(),
    };
    let what = match name {
        "x_m" | "y_m" | "from_x_m" | "from_y_m" | "to_x_m" | "to_y_m" => "A place on the sheet",
        "width_m" => "The width",
        "depth_m" => "The depth",
        "thickness_m" => "The thickness",
        "offset_m" => "The distance from the wall's start",
        "spacing_m" => "The spacing",
        "ceiling_height_m" | "outlet_height_m" => "The height",
        "temperature_degc" | "outdoor_temperature_degc" => "The temperature",
        "turned_deg" => "The turn",
        "rise_m" => "The rise",
        "radius_m" => "The radius",
        "diameter_m" => "The diameter",
        "altitude_m" => "The altitude",
        _ => return value(error),
    };
    // What is offered must not be refused for its rounding.
    let inward = |value: f64, round: fn(f64) -> f64| match (units, name.ends_with("_m")) {
        (UnitSystem::UsCustomary, true) => to_sixteenths(value, round),
        _ => value,
    };
    let least = shown(inward(field.least, f64::ceil));
    let greatest = shown(inward(field.greatest, f64::floor));
    let found = shown(*found);
    format!("{what} would be {found}; it can be from {least} to {greatest}.")
}

/// Metres to a sixteenth of an inch, up or down.
fn to_sixteenths(metres: f64, round: fn(f64) -> f64) -> f64 {
    const SIXTEENTH: f64 = 0.0254 / 16.0;
    /// What is a sixteenth but for the last digit stays.
    const DUST: f64 = 1e-6;
    let count = metres / SIXTEENTH;
    let whole = count.round();
    let rounded = if (count - whole).abs() < DUST {
        whole
    } else {
        round(count)
    };
    rounded * SIXTEENTH
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
