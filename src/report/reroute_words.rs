//! From what the search says to the keys of the words.

use crate::plan::Plan;
use crate::report::words::RerouteText;
use crate::search::{Blocked, Change, Figures, Suggestion};
use crate::units::{Length, Pressure};

/// What a change is.
pub fn change(change: &Change) -> RerouteText {
    match change {
        Change::NewRoute { wall, end_moves } => RerouteText::NewRoute {
            through_wall: wall.is_some(),
            end_moves: *end_moves,
        },
        Change::OutletSide { side } => RerouteText::OutletSide(*side),
        Change::TurnDryer { turn } => RerouteText::TurnDryer(*turn),
        Change::MoveDryer { by } => RerouteText::MoveDryer(*by),
        Change::ShorterTransition { by } => RerouteText::ShorterTransition(*by),
        Change::LongRadius { bends, radius } => RerouteText::LongRadius {
            bends: bends.clone(),
            radius: *radius,
        },
        Change::TwoFortyFives { bends, off } => RerouteText::TwoFortyFives {
            bends: bends.clone(),
            off: *off,
        },
        Change::Rigid { legs } => RerouteText::Rigid(legs.clone()),
        Change::DropOffset {
            bend,
            aside,
            moves_hood,
        } => RerouteText::DropOffset {
            bend: *bend,
            aside: *aside,
            moves_hood: *moves_hood,
        },
        Change::DropCorner { bend } => RerouteText::DropCorner(*bend),
    }
}

/// Why a suggestion helps over the present run, and by how much.
pub fn reasons(present: &Figures, suggestion: &Suggestion) -> Vec<RerouteText> {
    let after = &suggestion.figures;
    let why = RerouteText::Why {
        bends: (present.bends, after.bends),
        length: (present.developed_length, after.developed_length),
    };
    let gain = suggestion.gain.and_then(|gain| {
        let doubt = gain.doubt?;
        let pressure = Pressure::from_pascals;
        let band = (
            pressure(doubt.back_pressure.low),
            pressure(doubt.back_pressure.high),
        );
        let loses = gain.back_pressure < Pressure::ZERO;
        Some(if loses && gain.code_length > Length::ZERO {
            RerouteText::ShorterByCode {
                band: (-band.1, -band.0),
                shorter: gain.code_length,
            }
        } else {
            RerouteText::Gain {
                band,
                is_larger_than_its_doubt: doubt.is_below_gain,
            }
        })
    });
    core::iter::once(why).chain(gain).collect()
}

/// What stands in the way, by name, or by id where it has none.
pub fn blocked(plan: &Plan, blocked: &Blocked) -> RerouteText {
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
        has_no_way_out: blocked.has_no_way_out,
        by: blocked.by.iter().take(NAMED).map(|id| name(id)).collect(),
        opens: blocked
            .opens
            .as_ref()
            .map(|(id, airflow)| (name(id), *airflow)),
    }
}
