//! A reading against the limit that the user typed from the dryer maker's instructions; against
//! nothing else.

use crate::plan::{Against, Measured, Plan, Reading, Spot};
use crate::rules::Verdict;
use crate::units::Pressure;

/// A reading beside the maker's limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AgainstLimit {
    /// What comes of it.
    pub verdict: Verdict,
    /// The limit.
    pub limit: Pressure,
    /// The limit less the reading.
    pub margin: Pressure,
}

/// Holds a static pressure at the joined outlet against the maker's limit, where one was typed. Where
/// the limit lies within the gauge's tolerance of the reading, the verdict stays open.
pub fn against_limit(plan: &Plan, reading: &Reading) -> Option<AgainstLimit> {
    let limit = plan.code.maker.back_pressure?;
    let Measured::StaticPressure {
        pressure,
        against: Against::Room,
        tolerance,
        ..
    } = reading.measured
    else {
        return None;
    };
    if reading.at != Spot::Outlet || reading.conditions.open_joint.is_some() {
        return None;
    }
    let margin = limit - pressure;
    let verdict = if margin.abs() <= tolerance {
        Verdict::CannotTell
    } else if margin > Pressure::ZERO {
        Verdict::Meets
    } else {
        Verdict::DoesNotMeet
    };
    Some(AgainstLimit {
        verdict,
        limit,
        margin,
    })
}
