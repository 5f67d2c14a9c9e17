//! The ways on which a run may leave the dryer.

use super::heading::{HEADINGS, Way};
use crate::plan::Plan;
use crate::units::Angle;

/// The turn from the outlet to each of the eight ways, where it faces none of them; none for those that
/// it would have to turn back for.
pub(super) fn odd_turns(plan: &Plan) -> [Option<Angle>; HEADINGS] {
    /// deg. Of the computation.
    const SHARPEST: f64 = 90.0;
    let outlet = plan.dryer.outlet_heading();
    let faces_one = Way::of(outlet).is_some();
    core::array::from_fn(|way| {
        let way = Way(u8::try_from(way).unwrap_or(0));
        let turn = outlet.turn_to(way.heading());
        (!faces_one && turn.degrees() <= SHARPEST).then_some(turn)
    })
}

/// Whether the present run turns or rises right at the outlet: then new ones may too.
pub(super) fn turns_at_outlet(plan: &Plan) -> bool {
    let Some(first) = plan.run.points.first() else {
        return false;
    };
    let outlet = plan.dryer.outlet();
    let turn = outlet
        .heading_to(first.position)
        .map(|heading| plan.dryer.outlet_heading().turn_to(heading));
    plan.run.outlet.riser.is_some() || turn.is_some_and(|turn| turn.degrees() > 0.1)
}
