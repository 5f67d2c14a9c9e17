//! Runs of any number of elements, to see how the cost grows.

use elbowroom::plan::{ElbowKind, Field, Plan, RunPoint, blank};
use elbowroom::units::Length;

/// Leg and elbow radius, m.
const LEG: f64 = 2.0;
const RADIUS: f64 = 0.25;

/// A staircase of `elements` elements (an even number): legs with smooth and segmented right angles
/// between them in turn, and the hood. In the widest duct that a plan may have, so that air moves
/// through ten thousand of them and the flow is turbulent at every length.
pub fn plan(elements: usize) -> Plan {
    let mut plan = blank(String::new());
    plan.run.diameter = Length::from_metres(Field::DIAMETER.greatest);
    let first = plan.run.points[0].clone();
    let mut at = plan.dryer.outlet();
    plan.run.points = (0..elements / 2)
        .map(|index| {
            let (kind, across) = if index % 2 == 0 {
                (ElbowKind::Smooth, false)
            } else {
                (ElbowKind::Segmented, true)
            };
            if across {
                at.x += LEG;
            } else {
                at.y -= LEG;
            }
            let mut fitting = first.fitting;
            fitting.elbow.kind = kind;
            fitting.elbow.radius = Length::from_metres(RADIUS);
            RunPoint {
                id: format!("p{index}").into(),
                position: at,
                fitting,
                ..first.clone()
            }
        })
        .collect();
    plan
}
