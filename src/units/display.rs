//! How a figure is shown, in US customary units or in SI.
//!
//! Rounding happens here and nowhere earlier. The decimal sign is the point in every language that
//! there are words for: Unicode CLDR gives the point to the Spanish of Mexico (`es_MX`) and of the
//! United States (`es_US`) as to English; only Spain's (`es_ES`) takes the comma. No figure is
//! grouped.

use super::{Airflow, Length, MassFlow, Pressure, Temperature, Velocity};
use serde::{Deserialize, Serialize};

/// Pascals in one inch of water column at 60 °F, the conventional value of US fan practice
/// (248.84 Pa; NIST SP 811, table B.8, "inch of water (60 °F)").
const PASCALS_PER_INCH_OF_WATER: f64 = 248.84;
/// The finest part of an inch that a tape measure shows and the page prints.
const PARTS_OF_AN_INCH: i64 = 16;

/// The units of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, Default)]
#[serde(rename_all = "snake_case")]
pub enum UnitSystem {
    /// Feet and inches, in. w.c., cfm, fpm, °F.
    #[default]
    UsCustomary,
    /// m, Pa, L/s, m/s, °C.
    Si,
}

/// A figure and its unit as text, kept apart so that a table can line the figures up.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// The rounded figure.
    pub figure: String,
    /// The unit's symbol; empty where the figure carries it already, as feet and inches do.
    pub unit: &'static str,
}

impl core::fmt::Display for Shown {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        if self.unit.is_empty() {
            out.write_str(&self.figure)
        } else {
            write!(out, "{} {}", self.figure, self.unit)
        }
    }
}

/// m² K/W in one h ft² °F/Btu, by the international table's Btu. Source: NIST SP 811, appendix B.8.
const R_VALUE: f64 = 0.176_110_2;

/// A US fluid ounce of water is 29.57 g. Source: NIST SP 811, appendix B.8 (2.957 353 E-05 m³), at
/// 1000 kg/m³.
const KILOGRAMS_PER_FLUID_OUNCE: f64 = 0.029_574;

fn shown(value: f64, decimals: usize, unit: &'static str) -> Shown {
    let figure = format!("{value:.decimals$}");
    // A rounded nought has no sign.
    let figure = match figure.strip_prefix('-') {
        Some(rest) if rest.chars().all(|letter| letter == '0' || letter == '.') => rest.to_owned(),
        Some(rest) => format!("\u{2212}{rest}"),
        None => figure,
    };
    Shown { figure, unit }
}

impl UnitSystem {
    /// A length: feet, inches and sixteenths, or metres to the millimetre.
    pub fn length(self, length: Length) -> Shown {
        match self {
            Self::UsCustomary => Shown {
                figure: feet_and_inches(length),
                unit: "",
            },
            Self::Si => shown(length.metres(), 3, "m"),
        }
    }

    /// An equivalent length: one decimal of a foot or of a metre, since no source is finer.
    pub fn equivalent_length(self, length: Length) -> Shown {
        match self {
            Self::UsCustomary => shown(length.feet(), 1, "ft"),
            Self::Si => shown(length.metres(), 1, "m"),
        }
    }

    /// A pressure: in. w.c. to the thousandth, or Pa to the tenth.
    pub fn pressure(self, pressure: Pressure) -> Shown {
        match self {
            Self::UsCustomary => shown(
                pressure.pascals() / PASCALS_PER_INCH_OF_WATER,
                3,
                "in. w.c.",
            ),
            Self::Si => shown(pressure.pascals(), 1, "Pa"),
        }
    }

    /// A part's size: inches alone to the hundredth, without feet, or whole millimetres.
    pub fn part_size(self, size: Length) -> Shown {
        match self {
            Self::UsCustomary => Shown {
                figure: ((size.inches() * 100.0).round() / 100.0).to_string(),
                unit: "in",
            },
            Self::Si => shown(size.metres() * 1000.0, 0, "mm"),
        }
    }

    /// The water of an hour: fluid ounces to the tenth, or whole grams.
    pub fn water_of_an_hour(self, flow: MassFlow) -> Shown {
        let kilograms = flow.kilograms_per_second() * 3600.0;
        match self {
            Self::UsCustomary => shown(kilograms / KILOGRAMS_PER_FLUID_OUNCE, 1, "fl oz"),
            Self::Si => shown(kilograms * 1000.0, 0, "g"),
        }
    }

    /// An airflow: whole cfm, or L/s to the tenth.
    pub fn airflow(self, airflow: Airflow) -> Shown {
        let litres_per_second = airflow.cubic_metres_per_second() * 1000.0;
        match self {
            Self::UsCustomary => {
                let cubic_feet = airflow.cubic_metres_per_second() / super::METRES_PER_FOOT.powi(3);
                shown(cubic_feet * 60.0, 0, "cfm")
            }
            Self::Si => shown(litres_per_second, 1, "L/s"),
        }
    }

    /// The unit of a pressure.
    pub fn pressure_unit(self) -> &'static str {
        self.pressure(Pressure::ZERO).unit
    }

    /// The unit of an airflow.
    pub fn airflow_unit(self) -> &'static str {
        self.airflow(Airflow::from_cubic_metres_per_second(0.0))
            .unit
    }

    /// The unit of a temperature.
    pub fn temperature_unit(self) -> &'static str {
        self.temperature(Temperature::from_celsius(0.0)).unit
    }

    /// The unit of a resistance to heat.
    pub fn resistance_unit(self) -> &'static str {
        self.resistance(0.0).unit
    }

    /// The unit of an equivalent length.
    pub fn equivalent_length_unit(self) -> &'static str {
        self.equivalent_length(Length::ZERO).unit
    }

    /// A velocity: whole feet a minute, or m/s to the tenth.
    pub fn velocity(self, velocity: Velocity) -> Shown {
        match self {
            Self::UsCustomary => shown(
                velocity.metres_per_second() / super::METRES_PER_FOOT * 60.0,
                0,
                "fpm",
            ),
            Self::Si => shown(velocity.metres_per_second(), 1, "m/s"),
        }
    }

    /// A temperature to the whole degree.
    pub fn temperature(self, temperature: Temperature) -> Shown {
        match self {
            Self::UsCustomary => shown(temperature.fahrenheit(), 0, "°F"),
            Self::Si => shown(temperature.celsius(), 0, "°C"),
        }
    }

    /// A resistance to heat, given in m² K/W: an R-value to the tenth, or m² K/W to the hundredth.
    pub fn resistance(self, resistance: f64) -> Shown {
        match self {
            Self::UsCustomary => shown(resistance / R_VALUE, 1, "h·ft²·°F/Btu"),
            Self::Si => shown(resistance, 2, "m²·K/W"),
        }
    }

    /// The resistance in m² K/W that a figure in this system's unit means.
    pub fn resistance_from(self, figure: f64) -> f64 {
        match self {
            Self::UsCustomary => figure * R_VALUE,
            Self::Si => figure,
        }
    }

    /// The airflow that a figure in this system's unit (cfm or L/s) means.
    pub fn airflow_from(self, figure: f64) -> Airflow {
        Airflow::from_cubic_metres_per_second(match self {
            Self::UsCustomary => figure * super::METRES_PER_FOOT.powi(3) / 60.0,
            Self::Si => figure / 1000.0,
        })
    }

    /// The velocity that a figure in this system's unit (fpm or m/s) means.
    pub fn velocity_from(self, figure: f64) -> Velocity {
        Velocity::from_metres_per_second(match self {
            Self::UsCustomary => figure * super::METRES_PER_FOOT / 60.0,
            Self::Si => figure,
        })
    }

    /// A difference of temperatures of so many kelvins in this system's degrees.
    pub fn temperature_span(self, kelvins: f64) -> String {
        let degrees = match self {
            Self::UsCustomary => kelvins * 1.8,
            Self::Si => kelvins,
        };
        shown(degrees, 1, "").figure
    }

    /// The kelvins that a difference in this system's degrees means.
    pub fn temperature_span_from(self, degrees: f64) -> f64 {
        match self {
            Self::UsCustomary => degrees / 1.8,
            Self::Si => degrees,
        }
    }

    /// A small area of `square_metres` in this system's unit, in² or cm².
    pub fn small_area(self, square_metres: f64) -> f64 {
        match self {
            Self::UsCustomary => square_metres / super::METRES_PER_INCH.powi(2),
            Self::Si => square_metres * 1e4,
        }
    }

    /// The area in m² that a figure in this system's unit (in² or cm²) means.
    pub fn small_area_from(self, figure: f64) -> f64 {
        match self {
            Self::UsCustomary => figure * super::METRES_PER_INCH.powi(2),
            Self::Si => figure / 1e4,
        }
    }

    /// The unit of a small area.
    pub fn small_area_unit(self) -> &'static str {
        match self {
            Self::UsCustomary => "in²",
            Self::Si => "cm²",
        }
    }

    /// The pressure that a figure in this system's unit (in. w.c. or Pa) means.
    pub fn pressure_from(self, figure: f64) -> Pressure {
        Pressure::from_pascals(match self {
            Self::UsCustomary => figure * PASCALS_PER_INCH_OF_WATER,
            Self::Si => figure,
        })
    }

    /// The temperature that a figure in this system's unit (°F or °C) means.
    pub fn temperature_from(self, figure: f64) -> Temperature {
        match self {
            Self::UsCustomary => Temperature::from_fahrenheit(figure),
            Self::Si => Temperature::from_celsius(figure),
        }
    }
}

/// Feet, inches and sixteenths, as a tape measure reads: `12' 6 1/2"`, `0' 3"`.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    reason = "a plan is bounded to well under 2^53 sixteenths of an inch"
)]
fn feet_and_inches(length: Length) -> String {
    let sixteenths = (length.inches() * PARTS_OF_AN_INCH as f64).round() as i64;
    let sign = if sixteenths < 0 { "\u{2212}" } else { "" };
    let sixteenths = sixteenths.abs();
    let feet = sixteenths / (12 * PARTS_OF_AN_INCH);
    let inches = sixteenths / PARTS_OF_AN_INCH % 12;
    let (mut over, mut under) = (sixteenths % PARTS_OF_AN_INCH, PARTS_OF_AN_INCH);
    while over > 0 && over % 2 == 0 {
        over /= 2;
        under /= 2;
    }
    if over == 0 {
        format!("{sign}{feet}' {inches}\"")
    } else {
        format!("{sign}{feet}' {inches} {over}/{under}\"")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn feet_and_inches_read_like_a_tape() {
        for (inches, text) in [
            (150.0, "12' 6\""),
            (3.5, "0' 3 1/2\""),
            (-7.0625, "\u{2212}0' 7 1/16\""),
            (11.99, "1' 0\""),
        ] {
            let shown = UnitSystem::UsCustomary.length(Length::from_inches(inches));
            assert_eq!(shown.to_string(), text);
        }
    }

    #[test]
    fn a_rounded_nought_has_no_sign() {
        let shown = UnitSystem::Si.pressure(Pressure::from_pascals(-0.01));
        assert_eq!(shown.to_string(), "0.0 Pa");
    }

    /// 4 in duct: 100 cfm is 1146 fpm (area 0.08727 ft²; derived).
    #[test]
    fn cfm_in_a_four_inch_duct() {
        let airflow = UnitSystem::UsCustomary.airflow_from(100.0);
        let area = core::f64::consts::PI / 4.0 * 0.1016_f64.powi(2);
        let velocity = Velocity::from_metres_per_second(airflow.cubic_metres_per_second() / area);
        assert_eq!(
            UnitSystem::UsCustomary.velocity(velocity).to_string(),
            "1146 fpm"
        );
    }
}
