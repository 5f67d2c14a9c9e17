//! Saturation pressure of water, over ice and over liquid, and its inverse.

use crate::numeric::root;
use crate::source::source;
use crate::units::{ICE_POINT_KELVINS, Pressure, Temperature};

source! {
    /// Of the saturation pressure.
    pub static SATURATION_SOURCE {
        title: "R. W. Hyland and A. Wexler, ASHRAE Transactions 89 (2A); ASHRAE Handbook, Fundamentals",
        edition: "1983",
        locator: "pp. 500-519; Fundamentals, ch. 1, eqs. 5 and 6",
        standing: Published,
    }
}

/// Over ice: ln p = a/T + b + c T + d T² + e T³ + f T⁴ + g ln T.
/// Hyland & Wexler 1983, as in ASHRAE Handbook, Fundamentals, ch. 1, eq. 5.
/// Source: [`SATURATION_SOURCE`].
const OVER_ICE: [f64; 7] = [
    -5.674_535_9e3,
    6.392_524_7,
    -9.677_843e-3,
    6.221_570_1e-7,
    2.074_782_5e-9,
    -9.484_024e-13,
    4.163_501_9,
];
/// Over liquid water, the same form. Hyland & Wexler 1983, ASHRAE Fundamentals, ch. 1, eq. 6.
/// Source: [`SATURATION_SOURCE`].
const OVER_WATER: [f64; 7] = [
    -5.800_220_6e3,
    1.391_499_3,
    -4.864_023_9e-2,
    4.176_476_8e-5,
    -1.445_209_3e-8,
    0.0,
    6.545_967_3,
];
/// The span in which a dew point is looked for, K: the fits' own range, -100..200 °C.
/// Source: [`SATURATION_SOURCE`].
const COLDEST: f64 = 173.15;
const HOTTEST: f64 = 473.15;

/// Pressure of saturated water vapour at `temperature`.
///
/// Range: -100..0 °C over ice, 0..200 °C over liquid; within 0.1 % of IAPWS there.
/// Source: R. W. Hyland and A. Wexler, ASHRAE Transactions 89 (2A), 1983, pp. 500-519.
///
/// ```
/// use elbowroom::{air::saturation_pressure, units::Temperature};
/// let at_20 = saturation_pressure(Temperature::from_celsius(20.0));
/// assert!((at_20.pascals() - 2338.8).abs() < 1.0);
/// ```
pub fn saturation_pressure(temperature: Temperature) -> Pressure {
    let t = temperature.kelvins();
    let [over, constant, first, second, third, fourth, log] = if t < ICE_POINT_KELVINS {
        OVER_ICE
    } else {
        OVER_WATER
    };
    let polynomial = constant + t * (first + t * (second + t * (third + t * fourth)));
    Pressure::from_pascals((over / t + polynomial + log * t.ln()).exp())
}

/// Temperature at which vapour of the partial pressure `vapour` saturates, to 1e-6 K; none where
/// there is no vapour, or more than the fits cover.
pub fn dew_point(vapour: Pressure) -> Option<Temperature> {
    /// Of the computation.
    const TOLERANCE_KELVINS: f64 = 1e-6;
    let pascals = vapour.pascals();
    if pascals <= 0.0 {
        return None;
    }
    let off = |t: f64| {
        saturation_pressure(Temperature::from_kelvins(t))
            .pascals()
            .ln()
            - pascals.ln()
    };
    root(off, COLDEST, HOTTEST, TOLERANCE_KELVINS)
        .ok()
        .map(Temperature::from_kelvins)
}
