//! A value that was typed or drawn and cannot be: by what it is of, in the units in which it was put.

use crate::plan::{Field, ValueError};
use crate::units::{Length, Temperature, UnitSystem};

/// What a value that can be typed or drawn is of.
#[derive(Clone, Copy)]
pub(super) enum TypedQuantity {
    Place,
    Width,
    Depth,
    Thickness,
    Offset,
    Spacing,
    Height,
    Temperature,
    Turn,
    Rise,
    Radius,
    Diameter,
    Altitude,
}

/// A value out of its range, as it is shown.
pub(super) struct OutOfRange {
    /// What it is of.
    pub quantity: TypedQuantity,
    /// What was put.
    pub found: String,
    /// The least that it can be.
    pub least: String,
    /// The greatest.
    pub greatest: String,
}

/// The error as people can read it; none where the value is known by its place in a file alone.
pub(super) fn out_of_range(units: UnitSystem, error: &ValueError) -> Option<OutOfRange> {
    let ValueError::OutOfRange {
        path,
        value: found,
        field: Field { least, greatest },
    } = error
    else {
        return None;
    };
    let name = path.rsplit('.').next().unwrap_or_default();
    let quantity = quantity(name)?;
    let shown = |value: f64| match name.rsplit('_').next() {
        Some("m") => units.length(Length::from_metres(value)).to_string(),
        Some("degc") => units
            .temperature(Temperature::from_celsius(value))
            .to_string(),
        Some("deg") => format!("{value}°"),
        _ => value.to_string(),
    };
    // What is offered must not be refused for its rounding.
    let inward = |value: f64, round: fn(f64) -> f64| match (units, name.ends_with("_m")) {
        (UnitSystem::UsCustomary, true) => to_sixteenths(value, round),
        _ => value,
    };
    Some(OutOfRange {
        quantity,
        found: shown(*found),
        least: shown(inward(*least, f64::ceil)),
        greatest: shown(inward(*greatest, f64::floor)),
    })
}

/// What a field of a plan's file is of.
fn quantity(name: &str) -> Option<TypedQuantity> {
    Some(match name {
        "x_m" | "y_m" | "from_x_m" | "from_y_m" | "to_x_m" | "to_y_m" => TypedQuantity::Place,
        "width_m" => TypedQuantity::Width,
        "depth_m" => TypedQuantity::Depth,
        "thickness_m" => TypedQuantity::Thickness,
        "offset_m" => TypedQuantity::Offset,
        "spacing_m" => TypedQuantity::Spacing,
        "ceiling_height_m" | "outlet_height_m" => TypedQuantity::Height,
        "temperature_degc" | "outdoor_temperature_degc" => TypedQuantity::Temperature,
        "turned_deg" => TypedQuantity::Turn,
        "rise_m" => TypedQuantity::Rise,
        "radius_m" => TypedQuantity::Radius,
        "diameter_m" => TypedQuantity::Diameter,
        "altitude_m" => TypedQuantity::Altitude,
        _ => return None,
    })
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
