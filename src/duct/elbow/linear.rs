//! A loss coefficient that is a straight line in the friction factor.

use core::ops::{Add, Mul};

/// K = constant + slope f. Many bend formulas have this shape once angle and radius are known, so
/// an evaluation needs no power or sine.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct LinearInFriction {
    /// K without friction.
    pub constant: f64,
    /// What each unit of f adds.
    pub slope: f64,
}

impl LinearInFriction {
    /// K at the Darcy friction factor `f`.
    pub fn at(self, f: f64) -> f64 {
        self.constant + self.slope * f
    }
}

impl Add for LinearInFriction {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            constant: self.constant + other.constant,
            slope: self.slope + other.slope,
        }
    }
}

impl Mul<f64> for LinearInFriction {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self {
            constant: self.constant * factor,
            slope: self.slope * factor,
        }
    }
}
