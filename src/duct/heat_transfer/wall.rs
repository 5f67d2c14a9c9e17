//! The wall's temperature, where the heat that it gets is the heat that it gives.

use super::{Shell, StillAir};
use crate::air::{latent_heat, saturated_humidity_ratio};
use crate::units::{ICE_POINT_KELVINS, Pressure, Temperature};

/// The air in the duct.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bulk {
    /// Its temperature, °C.
    pub celsius: f64,
    /// Humidity ratio, kg/kg.
    pub humidity_ratio: f64,
    /// Barometric pressure.
    pub pressure: Pressure,
    /// No wall at or above this, °C, can be wet: the dew point here or anywhere before.
    pub dry_above: f64,
}

/// What carries heat and vapour to the wall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Film {
    /// Heat, W/(m² K).
    pub heat: f64,
    /// Vapour, kg/(s m²) for each kg/kg of difference.
    pub vapour: f64,
}

/// A wall in balance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wall {
    /// Its inside's temperature, °C.
    pub celsius: f64,
    /// Heat that goes out for each K that it is warmer than the still air, W/(K m).
    pub outward: f64,
    /// Of that way's resistance the share of the outside film, 0..1: 1 for bare duct.
    pub film_share: f64,
    /// Vapour that turns to water on it, kg/(s m).
    pub water: f64,
    /// Humidity ratio of saturated air at it, where it is wet.
    pub saturated: f64,
}

/// The wall of a stretch: h (t - tw) P + m'' r P = G(tw) (tw - t0), with m'' the vapour that
/// condenses and r its latent heat.
///
/// * `start`: a wall nearby, to begin with.
///
/// Found to 1e-4 K or better. The outside film hangs on the wall's temperature, so it is taken anew
/// in each step of Newton's method on the rest.
pub fn wall(bulk: &Bulk, film: &Film, shell: &Shell, still: &StillAir, start: &Wall) -> Wall {
    /// Of the computation.
    const TOLERANCE_KELVINS: f64 = 1e-4;
    const MOST_STEPS: usize = 40;
    /// The film lags a step behind, and so do the bounds. Of the computation.
    const SLACK: f64 = 0.05;
    let mut at = *start;
    let heat = film.heat * shell.perimeter;
    let vapour = film.vapour * shell.perimeter;
    // Between the two airs; latent heat warms it to the dew point at most.
    let mut low = bulk.celsius.min(still.celsius);
    let mut high = bulk.celsius.max(still.celsius).max(bulk.dry_above);
    let mut last = f64::INFINITY;
    for _ in 0..MOST_STEPS {
        (at.outward, at.film_share) = shell.outward(at.celsius, at.film_share, still);
        let (mut gained, mut slope) = (
            heat * (bulk.celsius - at.celsius) - at.outward * (at.celsius - still.celsius),
            heat + at.outward,
        );
        at.water = 0.0;
        if at.celsius < bulk.dry_above {
            let wall = Temperature::from_celsius(at.celsius);
            at.saturated = saturated_humidity_ratio(wall, bulk.pressure);
            let over = bulk.humidity_ratio - at.saturated;
            if over > 0.0 {
                let latent = latent_heat(Temperature::from_celsius(bulk.celsius), wall);
                at.water = vapour * over;
                gained += at.water * latent;
                slope += vapour * latent * steepness(at.saturated, at.celsius);
            }
        }
        if gained > 0.0 {
            low = low.max(at.celsius);
        } else {
            high = high.min(at.celsius);
        }
        let newton = gained / slope;
        // Where the wall turns from dry to wet the slope jumps, and steps that do not shrink could go
        // to and fro over it for ever: they halve the bounds instead.
        let inside = (low - SLACK..=high + SLACK).contains(&(at.celsius + newton));
        let step = if inside && newton.abs() < last.abs() / 2.0 {
            newton
        } else {
            f64::midpoint(low, high) - at.celsius
        };
        last = step;
        at.celsius += step;
        if step.abs() < TOLERANCE_KELVINS {
            break;
        }
    }
    at
}

/// By how much the humidity ratio of saturated air rises a K, by Clausius and Clapeyron's rule. It
/// steers the steps and moves no result.
fn steepness(saturated: f64, celsius: f64) -> f64 {
    /// Of the computation.
    const LATENT_OVER_GAS_CONSTANT: f64 = 5400.0;
    const VAPOUR_RATIO: f64 = 0.622;
    let kelvins = celsius + ICE_POINT_KELVINS;
    let of_pressure = LATENT_OVER_GAS_CONSTANT / (kelvins * kelvins);
    saturated * (1.0 + saturated / VAPOUR_RATIO) * of_pressure
}
