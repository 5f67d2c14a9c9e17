//! The quantities, each a newtype over `f64` in its SI unit.
//!
//! Two quantities of one kind add and subtract; a quantity scales by a plain number; the ratio of
//! two is a plain number. Nothing else compiles, so a length is never added to a pressure.

use core::ops::{Add, AddAssign, Div, Mul, Neg, Sub};
use serde::{Deserialize, Serialize};

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $from:ident, $get:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            /// Zero.
            pub const ZERO: Self = Self(0.0);

            /// Takes a value in the SI unit that the name says.
            pub const fn $from(value: f64) -> Self {
                Self(value)
            }

            /// The value in the SI unit that the name says.
            pub const fn $get(self) -> f64 {
                self.0
            }

            /// The same size without its sign.
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }

            /// Neither infinite nor not-a-number.
            pub const fn is_finite(self) -> bool {
                self.0.is_finite()
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
        impl core::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(values: I) -> Self {
                Self(values.map(|value| value.0).sum())
            }
        }
    };
}

quantity!(
    /// A length, m.
    Length, from_metres, metres
);
quantity!(
    /// A plane angle, rad.
    Angle, from_radians, radians
);
quantity!(
    /// A pressure or a pressure difference, Pa.
    Pressure, from_pascals, pascals
);
quantity!(
    /// A volume flow, m³/s.
    Airflow, from_cubic_metres_per_second, cubic_metres_per_second
);
quantity!(
    /// A velocity, m/s.
    Velocity, from_metres_per_second, metres_per_second
);
quantity!(
    /// A density, kg/m³.
    Density, from_kilograms_per_cubic_metre, kilograms_per_cubic_metre
);
quantity!(
    /// A dynamic viscosity, Pa·s.
    Viscosity, from_pascal_seconds, pascal_seconds
);
quantity!(
    /// A mass flow, kg/s.
    MassFlow, from_kilograms_per_second, kilograms_per_second
);
quantity!(
    /// The difference of two temperatures, K.
    TemperatureDifference, from_kelvins, kelvins
);

/// Metres in one foot, exact by the international definition of 1959.
pub const METRES_PER_FOOT: f64 = 0.3048;
/// Metres in one inch, exact.
pub const METRES_PER_INCH: f64 = 0.0254;
/// 0 °C in kelvins, exact.
pub const ICE_POINT_KELVINS: f64 = 273.15;

impl Length {
    /// Takes feet.
    pub const fn from_feet(feet: f64) -> Self {
        Self(feet * METRES_PER_FOOT)
    }
    /// Takes inches.
    pub const fn from_inches(inches: f64) -> Self {
        Self(inches * METRES_PER_INCH)
    }
    /// The length in feet.
    pub const fn feet(self) -> f64 {
        self.0 / METRES_PER_FOOT
    }
    /// The length in inches.
    pub const fn inches(self) -> f64 {
        self.0 / METRES_PER_INCH
    }
}

impl Angle {
    /// Takes degrees.
    pub const fn from_degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }
    /// The angle in degrees.
    pub const fn degrees(self) -> f64 {
        self.0.to_degrees()
    }
}

/// A temperature, held in degrees Celsius so that what was typed or read is kept to the last digit.
/// Two temperatures do not add:
///
/// ```compile_fail
/// use elbowroom::units::Temperature;
/// let nonsense = Temperature::from_celsius(20.0) + Temperature::from_celsius(5.0);
/// ```
///
/// A difference does:
///
/// ```
/// use elbowroom::units::{Temperature, TemperatureDifference};
/// let warmer = Temperature::from_celsius(20.0) + TemperatureDifference::from_kelvins(5.0);
/// assert!((warmer.celsius() - 25.0).abs() < 1e-12);
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Temperature(f64);

impl Temperature {
    /// Takes degrees Celsius.
    pub const fn from_celsius(degrees: f64) -> Self {
        Self(degrees)
    }
    /// Takes degrees Fahrenheit.
    pub const fn from_fahrenheit(degrees: f64) -> Self {
        Self((degrees - 32.0) / 1.8)
    }
    /// Takes kelvins.
    pub const fn from_kelvins(kelvins: f64) -> Self {
        Self(kelvins - ICE_POINT_KELVINS)
    }
    /// The temperature in kelvins.
    pub const fn kelvins(self) -> f64 {
        self.0 + ICE_POINT_KELVINS
    }
    /// The temperature in degrees Celsius.
    pub const fn celsius(self) -> f64 {
        self.0
    }
    /// The temperature in degrees Fahrenheit.
    pub const fn fahrenheit(self) -> f64 {
        self.0 * 1.8 + 32.0
    }
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, difference: TemperatureDifference) -> Self {
        Self(self.0 + difference.kelvins())
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::from_kelvins(self.0 - other.0)
    }
}
