//! Smooth bends by Miller.

use crate::duct::friction;
use crate::duct::tables::miller_bend::{
    ANGLES, BASE_LOSS, FACTOR_RATIOS, RATIOS, REYNOLDS, REYNOLDS_FACTOR,
};
use crate::numeric::bilinear;
use crate::units::Angle;

/// Miller's K of one bend at Re 1e6 in smooth duct, and what its Reynolds factor hangs on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Miller {
    base: f64,
    radius_ratio: f64,
}

impl Miller {
    /// The bend of `angle` (10..180 deg) and r/D `radius_ratio` (0.75..4); the chart's rim holds
    /// beyond.
    ///
    /// Source: [`SOURCE`](crate::duct::tables::miller_bend::SOURCE). Within 5 % of the chart.
    pub fn of(angle: Angle, radius_ratio: f64) -> Self {
        Self {
            base: bilinear(
                (&ANGLES, angle.degrees()),
                (&RATIOS, radius_ratio),
                |row, column| BASE_LOSS[row][column],
            ),
            radius_ratio,
        }
    }

    /// Loss of total pressure in velocity pressures, friction along the arc included, at the
    /// duct's friction factor `f` and `reynolds` (1e4..3e5), with a long straight after the bend:
    /// base loss, Reynolds factor, and the duct's friction over that of a smooth one.
    ///
    /// ```
    /// use elbowroom::{duct::elbow::Miller, units::Angle};
    /// // The chart's 0.248 for a 90 of r/D 1 at Re 2e5, in smooth duct.
    /// let f = elbowroom::duct::friction::colebrook(2e5, 0.0);
    /// let k = Miller::of(Angle::from_degrees(90.0), 1.0).at(f, 2e5);
    /// assert!((k - 0.251).abs() < 0.003);
    /// ```
    pub fn at(self, f: f64, reynolds: f64) -> f64 {
        let factor = bilinear(
            (&REYNOLDS, reynolds),
            (&FACTOR_RATIOS, self.radius_ratio),
            |row, column| REYNOLDS_FACTOR[row][column],
        );
        self.base * factor * f / friction::factor(reynolds, 0.0).value
    }
}
