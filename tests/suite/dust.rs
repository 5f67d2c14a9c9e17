//! Dust in the last digits of an angle or a radius moves no loss: a drawing turned on the sheet, or
//! a radius typed in inches beside a diameter in millimetres, differs by no more.
//! Source: continuity; no elbow is made to a billionth.

use crate::tally::Tally;
use elbowroom::duct::elbow::ElbowLaw;
use elbowroom::units::Angle;

/// Degrees, and shares of r/D: far more than doubles lose, far less than anything made.
const DUST: f64 = 1e-9;
/// Of K: a hundred times the dust, since no formula here is that steep.
const TOLERANCE: f64 = 1e-7;
/// Friction factor and Reynolds number: clean rigid duct at about 200 and 60 cfm, and the rough wall
/// of corrugated metal (1.6 mm) at about 110 cfm.
const STATES: [(f64, f64); 3] = [(0.022, 7e4), (0.027, 2e4), (0.040, 4e4)];
const ANGLES: [f64; 9] = [1.0, 10.0, 22.5, 45.0, 60.0, 90.0, 100.0, 135.0, 180.0];
const RATIOS: [f64; 7] = [0.5, 0.6, 0.75, 1.0, 1.5, 2.0, 2.5];

fn k(smooth: bool, degrees: f64, ratio: f64, (f, reynolds): (f64, f64)) -> f64 {
    let angle = Angle::from_degrees(degrees);
    let (law, _) = if smooth {
        ElbowLaw::smooth(angle, ratio)
    } else {
        ElbowLaw::segmented(angle, ratio)
    };
    law.loss_coefficient(f, reynolds, 0.5)
}

#[test]
fn dust_in_an_angle_moves_no_loss() {
    let mut tally = Tally::new("dust in an angle");
    for smooth in [true, false] {
        for (degrees, ratio) in pairs() {
            for state in STATES {
                let label = format!("smooth {smooth}, {degrees} deg, r/D {ratio}, {state:?}");
                let below = k(smooth, degrees - DUST, ratio, state);
                // No turn is over 180 deg.
                let above = k(smooth, (degrees + DUST).min(180.0), ratio, state);
                tally.relative(label, above, below, TOLERANCE);
            }
        }
    }
    tally.finish(2 * 9 * 7 * 3);
}

#[test]
fn dust_in_a_radius_moves_no_loss() {
    let mut tally = Tally::new("dust in a radius");
    for smooth in [true, false] {
        for (degrees, ratio) in pairs() {
            for state in STATES {
                let label = format!("smooth {smooth}, {degrees} deg, r/D {ratio}, {state:?}");
                let below = k(smooth, degrees, ratio * (1.0 - DUST), state);
                let above = k(smooth, degrees, ratio * (1.0 + DUST), state);
                tally.relative(label, above, below, TOLERANCE);
            }
        }
    }
    tally.finish(2 * 9 * 7 * 3);
}

fn pairs() -> impl Iterator<Item = (f64, f64)> {
    ANGLES
        .into_iter()
        .flat_map(|degrees| RATIOS.into_iter().map(move |ratio| (degrees, ratio)))
}
