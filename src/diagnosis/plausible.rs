//! Whether a reading can be at all.

use crate::duct::point_velocity::of_pitot;
use crate::duct::tables::blower::{SHUT_OFF_PRESSURE, STANDARD_DENSITY};
use crate::duct::tables::make_up_air::ROOM_CELSIUS;
use crate::plan::{Input, Measured, Plan, Reading};
use crate::system::CompiledRun;
use crate::units::Density;

/// What is to be said of a reading on entry.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Plausibility {
    /// It can be.
    Fine,
    /// It can be, but hardly.
    Doubted(Objection),
    /// It cannot be, and is not taken.
    Refused(Objection),
}

/// Why a reading is doubted or refused. Figures in SI.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Objection {
    /// A static pressure below nought, where the blower can only push.
    Negative,
    /// A static pressure of so many times the greatest that the blower gives.
    FarAboveShutOff {
        /// So many times.
        times: f64,
    },
    /// A pressure at an open joint, or beyond one.
    PastOpenJoint,
    /// A velocity that no dryer gives.
    TooFast {
        /// m/s.
        most: f64,
    },
    /// No air moves though the blower runs.
    NoAir,
    /// Colder than the air that the dryer draws in, while it heats.
    BelowAmbient,
    /// Hotter than any dryer lets its exhaust become.
    TooHot {
        /// degrees Celsius.
        most: f64,
    },
    /// The velocities of one reading differ by more than a profile can.
    Uneven,
    /// No point was read.
    NoPoints,
}

/// From so many times the blower's shut-off pressure a reading is refused.
/// Source: [`site_reading::SOURCE`].
const IMPOSSIBLE: f64 = 10.0;
/// A gauge may swing this far below nought, Pa. Assumption. Source: [`site_reading::SOURCE`].
const SWING: f64 = 3.0;
/// Twice what the strongest assumed blower gives in a duct of the least size, m/s. Assumption.
/// Source: [`site_reading::SOURCE`].
const FASTEST: f64 = 40.0;
/// Rooms that a dryer stands in are warmer than this, deg C. Assumption.
/// Source: [`site_reading::SOURCE`].
const COLDEST_ROOM: f64 = 0.0;
/// A dryer's thermostats open below this, deg C. Assumption. Source: [`site_reading::SOURCE`].
const HOTTEST: f64 = 100.0;
/// The most that the fastest point of one reading is over the slowest. Assumption.
/// Source: [`site_reading::SOURCE`].
const MOST_UNEVEN: f64 = 4.0;

/// Holds a reading against what can be at all.
pub fn plausibility(plan: &Plan, reading: &Reading) -> Plausibility {
    use Plausibility::{Doubted, Fine, Refused};
    match &reading.measured {
        Measured::StaticPressure { pressure, .. } => {
            let pascals = pressure.pascals();
            let (run, _) = CompiledRun::of(plan);
            let shut_off = run.coefficients[Input::BlowerShutOffPressure as usize].high;
            let times = pascals / shut_off.max(SHUT_OFF_PRESSURE.low);
            if times > IMPOSSIBLE {
                return Refused(Objection::FarAboveShutOff { times });
            }
            if times > 1.0 {
                return Doubted(Objection::FarAboveShutOff { times });
            }
            if reading.conditions.open_joint.as_ref() == Some(&reading.at) && pascals.abs() > SWING
            {
                return Doubted(Objection::PastOpenJoint);
            }
            if pascals < 2.0 * lowest(plan, &run) - SWING {
                return Refused(Objection::Negative);
            }
            if pascals < -SWING {
                return Doubted(Objection::Negative);
            }
            Fine
        }
        Measured::Velocity { points, .. } => {
            velocities(points.iter().map(|point| point.metres_per_second()))
        }
        Measured::VelocityPressure { points, .. } => {
            if points.iter().any(|point| point.pascals() < -SWING) {
                return Refused(Objection::Negative);
            }
            // About the air of a room, which is near enough for what can be at all.
            let density = Density::from_kilograms_per_cubic_metre(STANDARD_DENSITY);
            let points = points.iter();
            velocities(points.map(|point| of_pitot(*point, density).metres_per_second()))
        }
        Measured::Temperature { temperature, .. } => {
            let celsius = temperature.celsius();
            let heats = reading.conditions.heat;
            if celsius > HOTTEST {
                return Refused(Objection::TooHot { most: HOTTEST });
            }
            let coldest =
                COLDEST_ROOM.max(plan.site.outdoor_temperature.celsius().min(ROOM_CELSIUS));
            if heats && celsius < coldest {
                return Refused(Objection::BelowAmbient);
            }
            if heats && celsius < ROOM_CELSIUS {
                return Doubted(Objection::BelowAmbient);
            }
            Fine
        }
    }
}

/// How far draught and house can draw the pressure below nought, Pa.
fn lowest(plan: &Plan, run: &CompiledRun) -> f64 {
    run.stack(run.rise, run.density).pascals().min(0.0)
        - plan.site.house_pressure.pascals().max(0.0)
}

fn velocities(points: impl Iterator<Item = f64>) -> Plausibility {
    let (mut least, mut most, mut count) = (f64::INFINITY, 0.0_f64, 0);
    for point in points {
        least = least.min(point);
        most = most.max(point);
        count += 1;
    }
    if count == 0 {
        Plausibility::Refused(Objection::NoPoints)
    } else if most > FASTEST {
        Plausibility::Refused(Objection::TooFast { most: FASTEST })
    } else if most <= 0.0 {
        Plausibility::Doubted(Objection::NoAir)
    } else if most > MOST_UNEVEN * least {
        Plausibility::Doubted(Objection::Uneven)
    } else {
        Plausibility::Fine
    }
}
