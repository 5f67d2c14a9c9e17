//! Where the run dips: water that condenses about a low point stays there.

use super::HeatProfile;
use crate::plan::ElementId;
use crate::system::CompiledRun;
use crate::units::{Length, MassFlow};
use serde::Serialize;

/// A low point between two higher parts of the run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LowPoint {
    /// The element that lies lowest: the last one before the run rises again.
    pub element: ElementId,
    /// How much higher the lower of the two sides is.
    #[serde(rename = "depth_m")]
    pub depth: Length,
    /// Water that condenses between the two high points and runs down to it.
    #[serde(rename = "water_kg_per_s")]
    pub water: MassFlow,
}

/// The low points of `run`: where it goes down and later up again. Water that runs back to the
/// dryer, or out of the termination, stands in none.
pub fn low_points(run: &CompiledRun, profile: Option<&HeatProfile>) -> Vec<LowPoint> {
    /// What rises or falls by less is level as built, m. Of the computation.
    const LEVEL: f64 = 1e-6;
    let water = |range: core::ops::Range<usize>| {
        let elements = profile.and_then(|profile| profile.elements.get(range));
        let elements = elements.into_iter().flatten();
        MassFlow::from_kilograms_per_second(elements.map(|element| element.water).sum())
    };
    let mut found = Vec::new();
    let mut height = 0.0;
    // The last high point, and since it the lowest: place and height.
    let mut high = (0, 0.0_f64);
    let mut low: Option<(usize, f64)> = None;
    // The high point after the low one, while the run still rises.
    let mut next: Option<(usize, f64)> = None;
    let mut close = |low: (usize, f64), high: (usize, f64), next: (usize, f64)| {
        if let Some(element) = run.elements.get(low.0) {
            found.push(LowPoint {
                element: element.id.clone(),
                depth: Length::from_metres(high.1.min(next.1) - low.1),
                water: water(high.0..next.0 + 1),
            });
        }
    };
    for (index, element) in run.elements.iter().enumerate() {
        let rise = element.rise.metres();
        height += rise;
        if rise > LEVEL {
            match low {
                Some(_) => next = Some((index, height)),
                None => high = (index, height),
            }
        } else if rise < -LEVEL {
            if let (Some(lowest), Some(top)) = (low, next.take()) {
                close(lowest, high, top);
                high = top;
            }
            low = Some((index, height));
        } else if let (Some(lowest), None) = (&mut low, next) {
            // A level part at the foot: it is what lies lowest.
            if element.developed_length > Length::ZERO {
                lowest.0 = index;
            }
        }
    }
    if let (Some(lowest), Some(top)) = (low, next) {
        close(lowest, high, top);
    }
    found
}
