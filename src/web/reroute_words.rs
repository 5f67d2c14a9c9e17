//! From what the search says to the keys of the words.

use crate::plan::Plan;
use crate::report::words::RerouteText;
use crate::search::{Blocked, Change, Suggestion};
use crate::units::{Length, Pressure};

/// What a change is.
pub(super) fn change(change: &Change) -> RerouteText {
    match change {
        Change::NewRoute { wall } => RerouteText::NewRoute(wall.is_some()),
        Change::OutletSide(side) => RerouteText::OutletSide(*side),
        Change::TurnDryer(degrees) => RerouteText::TurnDryer(*degrees),
        Change::LongRadius { radius, .. } => RerouteText::LongRadius(*radius),
        Change::TwoFortyFives { off, .. } => RerouteText::TwoFortyFives(*off),
        Change::RigidForFlexible { .. } => RerouteText::RigidForFlexible,
        Change::DropOffset {
            aside, moves_hood, ..
        } => RerouteText::DropOffset {
            aside: *aside,
            moves_hood: *moves_hood,
        },
    }
}

/// Why a suggestion helps, and by how much.
pub(super) fn reasons(suggestion: &Suggestion) -> Vec<RerouteText> {
    let (before, after) = (&suggestion.before, &suggestion.after);
    let length = Length::from_metres;
    let why = RerouteText::Why {
        bends: (before.bends, after.bends),
        length: (
            length(before.developed_length_m),
            length(after.developed_length_m),
        ),
    };
    let gain = suggestion
        .gain_band_pa
        .map(|(low, high)| RerouteText::Gain {
            band: (Pressure::from_pascals(low), Pressure::from_pascals(high)),
            is_larger_than_its_doubt: suggestion.gain_is_larger_than_its_doubt(),
        });
    core::iter::once(why).chain(gain).collect()
}

/// What stands in the way, by name, or by id where it has none.
pub(super) fn blocked(plan: &Plan, blocked: &Blocked) -> RerouteText {
    /// So many are named.
    const NAMED: usize = 3;
    let name = |id: &str| {
        let obstacle = plan.obstacles.iter().find(|it| &*it.id == id);
        obstacle
            .map(|it| it.name.clone())
            .filter(|name| !name.is_empty())
            .unwrap_or_else(|| id.to_owned())
    };
    RerouteText::Blocked {
        by: blocked.by.iter().take(NAMED).map(|id| name(id)).collect(),
        opens: blocked
            .opens
            .as_ref()
            .map(|(id, pressure)| (name(id), Pressure::from_pascals(*pressure))),
    }
}
