//! What a plan's values may be. The limits stand here and nowhere else.

use serde::{Deserialize, Serialize};

/// A kind of value, with the least and the greatest that a plan can hold, in the unit of its field
/// in the file.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Field {
    /// The least value.
    pub least: f64,
    /// The greatest value.
    pub greatest: f64,
}

impl Field {
    /// A coordinate on the sheet, m.
    pub const COORDINATE: Self = Self::new(-500.0, 500.0);
    /// A rise, m; a drop is negative.
    pub const RISE: Self = Self::new(-30.0, 30.0);
    /// A height above the floor, m.
    pub const HEIGHT: Self = Self::new(0.0, 30.0);
    /// The side of a thing in the room, m.
    pub const SIZE: Self = Self::new(0.01, 100.0);
    /// A wall's thickness, m.
    pub const THICKNESS: Self = Self::new(0.005, 2.0);
    /// A distance along a wall, m.
    pub const OFFSET: Self = Self::new(0.0, 500.0);
    /// A duct's inside diameter, m.
    pub const DIAMETER: Self = Self::new(0.05, 0.5);
    /// An elbow's centre-line radius, m.
    pub const RADIUS: Self = Self::new(0.025, 1.5);
    /// Altitude, m.
    pub const ALTITUDE: Self = Self::new(-450.0, 5000.0);
    /// Outdoor temperature, degrees Celsius.
    pub const OUTDOOR_TEMPERATURE: Self = Self::new(-50.0, 60.0);
    /// Exhaust temperature, degrees Celsius.
    pub const EXHAUST_TEMPERATURE: Self = Self::new(-20.0, 100.0);
    /// Relative humidity, a share.
    pub const HUMIDITY: Self = Self::new(0.0, 1.0);
    /// Airflow, m³/s.
    pub const AIRFLOW: Self = Self::new(0.001, 0.5);
    /// A turn on the floor, degrees.
    pub const TURN: Self = Self::new(-360.0, 360.0);
    /// A free share of an area.
    pub const FREE_SHARE: Self = Self::new(0.02, 1.0);
    /// Flexible duct pushed together, percent short of full stretch.
    pub const SHORT_OF_FULL_STRETCH: Self = Self::new(0.0, 80.0);
    /// A side of flat rectangular duct, m.
    pub const RECTANGULAR_SIDE: Self = Self::new(0.02, 1.0);
    /// How far off an estimated length may be, m.
    pub const ESTIMATE: Self = Self::new(0.0, 50.0);
    /// Elbows in a concealed stretch.
    pub const CONCEALED_ELBOWS: Self = Self::new(0.0, 12.0);
    /// The house's pressure less the outdoors', Pa.
    pub const HOUSE_PRESSURE: Self = Self::new(-100.0, 100.0);
    /// Free area for make-up air, m².
    pub const FREE_AREA: Self = Self::new(0.0005, 10.0);
    /// Free area of a leaking joint, m²: from a pinhole to a third of a 6 in duct.
    pub const LEAK_AREA: Self = Self::new(1e-6, 0.006);
    /// Thickness of insulation, m.
    pub const INSULATION_THICKNESS: Self = Self::new(0.001, 0.3);
    /// Resistance of insulation, m² K/W.
    pub const INSULATION_RESISTANCE: Self = Self::new(0.02, 10.0);
    /// A value set by the user.
    pub const OVERRIDE: Self = Self::new(0.0, 1e6);
    /// How many values a plan may set: each settable input once.
    pub const OVERRIDES: Self = Self::new(0.0, 18.0);
    /// A zone's temperature, degrees Celsius.
    pub const ZONE_TEMPERATURE: Self = Self::new(-50.0, 70.0);
    /// A ceiling's height above the floor, m.
    pub const CEILING: Self = Self::new(1.5, 10.0);
    /// From centre to centre of two studs or joists, m.
    pub const SPACING: Self = Self::new(0.1, 3.0);
    /// A picture's Base64 text, characters.
    pub const PICTURE: Self = Self::new(4.0, 2_000_000.0);
    /// A length that a dryer's maker allows, m.
    pub const MAKER_LENGTH: Self = Self::new(0.3, 100.0);
    /// What a dryer's maker takes off it for an elbow, m.
    pub const MAKER_DEDUCTION: Self = Self::new(0.0, 30.0);
    /// A back pressure that a dryer's maker allows, Pa: up to twice what any dryer's blower gives.
    pub const MAKER_BACK_PRESSURE: Self = Self::new(1.0, 1000.0);
    /// A pressure that a gauge reads, Pa.
    pub const READ_PRESSURE: Self = Self::new(-2000.0, 5000.0);
    /// A velocity that an instrument reads, m/s.
    pub const READ_VELOCITY: Self = Self::new(0.0, 60.0);
    /// A temperature that a thermometer reads, degrees Celsius.
    pub const READ_TEMPERATURE: Self = Self::new(-50.0, 200.0);
    /// An instrument's last digit, or how far off it may be, in the unit of what it reads.
    pub const READ_ERROR: Self = Self::new(0.0, 500.0);
    /// How many points a velocity is read at.
    pub const READ_POINTS: Self = Self::new(1.0, 48.0);
    /// How many visits a plan may hold, and entries a visit.
    pub const VISITS: Self = Self::new(0.0, 200.0);
    /// The Base64 text of a visit's picture, characters.
    pub const VISIT_PICTURE: Self = Self::new(4.0, 130_000.0);
    /// How many pictures the visits of a plan may hold together, which leaves room in its file for a
    /// floor plan's picture.
    pub const VISIT_PICTURES: Self = Self::new(0.0, 12.0);
    /// A free text of the handover sheet, characters.
    pub const HANDOVER_TEXT: Self = Self::new(0.0, 10_000.0);
    /// A length that pipe is bought in, m.
    pub const STOCK_LENGTH: Self = Self::new(0.3, 12.0);
    /// How many lengths pipe is bought in.
    pub const STOCK_LENGTHS: Self = Self::new(0.0, 8.0);
    /// How many points, walls or other things a plan may have.
    pub const COUNT: Self = Self::new(0.0, 10_000.0);

    /// A lesson's name, letters.
    pub const LESSON_NAME: Self = Self::new(1.0, 200.0);
    /// A lesson's question, letters.
    pub const LESSON_QUESTION: Self = Self::new(1.0, 2000.0);
    /// A lesson's hint or answer, letters.
    pub const LESSON_TEXT: Self = Self::new(0.0, 2000.0);

    const fn new(least: f64, greatest: f64) -> Self {
        Self { least, greatest }
    }

    /// Whether `value` lies inside; a not-a-number does not.
    pub fn holds(self, value: f64) -> bool {
        (self.least..=self.greatest).contains(&value)
    }

    /// Whether so many lie inside.
    #[allow(clippy::cast_precision_loss, reason = "counts are far below 2^52")]
    pub fn holds_count(self, count: usize) -> bool {
        self.holds(count as f64)
    }
}
