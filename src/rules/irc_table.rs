//! The table of fittings that the International Residential Code 2012 to 2021 (M1502.4.6.1 in 2021),
//! the International Mechanical Code and the International Fuel Gas Code share.

use super::{Deduction, DeductionNote};
use crate::plan::ElbowKind;
use crate::units::{Angle, Length};

/// 35 ft from the transition duct's connection to the outlet terminal.
/// Source: clause [`RuleTopic::Length`](crate::plan::RuleTopic::Length).
pub const IRC_LENGTH_LIMIT: Length = Length::from_feet(35.0);

/// One row of the table: a centre-line radius and its deductions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LengthRow {
    /// Centre-line radius.
    pub radius: Length,
    /// Deduction for 45 deg.
    pub at_45: Length,
    /// Deduction for 90 deg.
    pub at_90: Length,
}

const fn row(radius: f64, at_45: f64, at_90: f64) -> LengthRow {
    LengthRow {
        radius: Length::from_inches(radius),
        at_45: Length::from_inches(at_45),
        at_90: Length::from_inches(at_90),
    }
}

/// Table M1502.4.6.1 by growing radius, in inches. The first row is for mitred (segmented) elbows,
/// the others for smooth ones. Source: clause [`RuleTopic::Length`](crate::plan::RuleTopic::Length).
pub const IRC_LENGTH_TABLE: [LengthRow; 4] = [
    row(4.0, 30.0, 60.0),
    row(6.0, 12.0, 21.0),
    row(8.0, 12.0, 19.0),
    row(10.0, 9.0, 18.0),
];

/// The size that the table is for. Source: clause [`RuleTopic::DuctSize`](crate::plan::RuleTopic::DuctSize).
pub(super) const TABLE_DIAMETER: Length = Length::from_inches(4.0);

/// Sizes that differ by less than this, m, are one size: inches turned into metres and back.
/// Of the computation.
const SAME_SIZE: f64 = 1e-6;
/// Angles that differ by less than this, deg, are one angle on a drawing. Of the computation.
pub(super) const SAME_ANGLE: f64 = 0.05;

/// The deduction of an elbow.
///
/// A segmented elbow of any radius takes the 4 in row. A smooth radius without a row takes the next
/// smaller; an angle without a column the next larger; over 90 deg, 90 and the rest. Under 4 in the
/// deduction is at least the 5 ft of the 4 in row's 90, whatever the angle, and the note says so;
/// a sharp mitre and a bend in flexible duct have no radius and are taken like that.
///
/// ```
/// use elbowroom::{plan::ElbowKind, rules::irc_deduction, units::{Angle, Length}};
/// let smooth = irc_deduction(ElbowKind::Smooth, Angle::from_degrees(90.0), Length::from_inches(6.0));
/// assert!((smooth.length.inches() - 21.0).abs() < 1e-9);
/// ```
pub fn irc_deduction(kind: ElbowKind, angle: Angle, radius: Length) -> Deduction {
    // A sharp mitre has no radius, and the table has no row for flexible duct.
    let has_radius = matches!(kind, ElbowKind::Smooth | ElbowKind::Segmented);
    let fits = |row: &LengthRow| has_radius && radius.metres() >= row.radius.metres() - SAME_SIZE;
    let mut notes = Vec::new();
    let row = match kind {
        ElbowKind::Segmented | ElbowKind::SharpMitre | ElbowKind::BentFlexible => {
            IRC_LENGTH_TABLE[0]
        }
        ElbowKind::Smooth => {
            let row = IRC_LENGTH_TABLE
                .iter()
                .rev()
                .find(|row| fits(row))
                .unwrap_or(&IRC_LENGTH_TABLE[0]);
            if (radius - row.radius).abs().metres() > SAME_SIZE && fits(row) {
                notes.push(DeductionNote::NextSmallerRadius);
            }
            *row
        }
    };
    if !fits(&IRC_LENGTH_TABLE[0]) {
        notes.push(DeductionNote::AtLeast);
    }
    let degrees = angle.degrees();
    if notes.contains(&DeductionNote::AtLeast) && degrees <= 90.0 + SAME_ANGLE {
        return Deduction {
            length: row.at_90,
            notes,
        };
    }
    let length = if degrees <= 90.0 + SAME_ANGLE {
        by_angle(&row, degrees, &mut notes)
    } else {
        notes.push(DeductionNote::OverNinety);
        row.at_90 + by_angle(&row, degrees - 90.0, &mut notes)
    };
    Deduction { length, notes }
}

fn by_angle(row: &LengthRow, degrees: f64, notes: &mut Vec<DeductionNote>) -> Length {
    let (column, deduction) = if degrees <= 45.0 + SAME_ANGLE {
        (45.0, row.at_45)
    } else {
        (90.0, row.at_90)
    };
    if degrees < column - SAME_ANGLE {
        notes.push(DeductionNote::NextLargerAngle);
    }
    deduction
}

/// Whether the table is for a duct of `diameter`.
pub(super) fn table_is_for(diameter: Length) -> bool {
    // A nominal 4 in duct measures from 100 mm to 4 in, as pipe is made.
    /// Of the computation.
    const NOMINAL_SLACK: f64 = 0.002;
    (diameter - TABLE_DIAMETER).abs().metres() <= NOMINAL_SLACK
}
