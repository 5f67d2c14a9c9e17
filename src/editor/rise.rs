//! A rise under the hand: dragged by a pointer, or stepped by a key.

use super::drag::cancel;
use super::{Gesture, Held, State, change};
use crate::plan::{NodeId, Plan};
use crate::report::words::ActionName;
use crate::units::{Length, UnitSystem};
use std::sync::Arc;

/// Two rises that are closer than this are the same.
const SAME_RISE: Length = Length::from_metres(1e-9);

/// The rise at `node`: nought where no riser stands.
pub fn rise_at(plan: &Plan, node: &NodeId) -> Length {
    let riser = plan.run.fitting(node).and_then(|fitting| fitting.riser);
    riser.map_or(Length::ZERO, |riser| riser.rise)
}

/// `rise` and a step more, to the micrometre: as many steps down as up end at nought itself.
pub fn stepped_rise(rise: Length, step: Length) -> Length {
    const IN_ONE_METRE: f64 = 1e6;
    let metres = (rise + step).metres();
    Length::from_metres((metres * IN_ONE_METRE).round() / IN_ONE_METRE)
}

/// The whole inch or centimetre nearest to `wanted`.
fn snapped(wanted: Length, units: UnitSystem) -> Length {
    let grid = match units {
        UnitSystem::UsCustomary => Length::from_inches(1.0),
        UnitSystem::Si => Length::from_metres(0.01),
    };
    stepped_rise(grid * (wanted / grid).round(), Length::ZERO)
}

/// Drags the rise at `node` to `wanted`. Each move starts from the plan before the drag, so that a
/// riser that was pulled down to nought and up again has its elbow still.
pub(super) fn drag(state: &mut State, node: &NodeId, wanted: Length, slack: Length) {
    let is_held = |gesture: &Gesture| gesture.held == Held::Rise(node.clone());
    if !state.gesture.as_ref().is_some_and(is_held) {
        cancel(state);
        let is_there = state.plan.run.fitting(node).is_some();
        if !is_there || (wanted - rise_at(&state.plan, node)).abs() <= slack {
            return;
        }
        state.gesture = Some(Gesture {
            held: Held::Rise(node.clone()),
            name: ActionName::SetRise,
            before: Arc::clone(&state.plan),
            grip: (0.0, 0.0),
        });
    }
    let Some(before) = state.gesture.as_ref().map(|held| Arc::clone(&held.before)) else {
        return;
    };
    let (rise, held) = (snapped(wanted, state.units), rise_at(&before, node));
    if (rise - held).abs() < SAME_RISE {
        // Back where it was: the last digit is no change.
        state.plan = before;
        return;
    }
    // A rise that cannot be leaves the corner where it last could.
    if let Ok(plan) = change::set_rise(&before, node, rise) {
        state.plan = Arc::new(plan);
    }
}
