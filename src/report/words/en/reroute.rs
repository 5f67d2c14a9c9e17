//! What is said of suggested runs.

use super::room::zone;
use crate::plan::OutletSide;
use crate::report::words::{RerouteText, listing};
use crate::units::UnitSystem;

#[allow(
    clippy::too_many_lines,
    clippy::format_push_string,
    reason = "one exhaustive match, a line or two a message"
)]
pub(super) fn reroute(units: UnitSystem, text: &RerouteText) -> String {
    match text {
        RerouteText::Heading => "Reroutes".to_owned(),
        RerouteText::Explanation => "Looks for upgrades of this run and for other runs that pass \
             everything drawn, and works each out in full. Nothing changes until one is taken."
            .to_owned(),
        RerouteText::Start => "Look for reroutes".to_owned(),
        RerouteText::Stop => "Stop looking".to_owned(),
        RerouteText::Progress {
            done,
            of,
            looked_at,
        } => {
            format!("Stage {done} of {of} done, {looked_at} partial routes looked at.")
        }
        RerouteText::NoAnswer => {
            "The search stopped by itself and gave no answer. The plan is as it was; \
             looking again may help."
                .to_owned()
        }
        RerouteText::Finished(0) => "No run was found that beats this one.".to_owned(),
        RerouteText::Finished(1) => "One suggestion.".to_owned(),
        RerouteText::Finished(count) => {
            format!("{count} suggestions, the least back pressure first.")
        }
        RerouteText::FinishedEarly(count) => format!(
            "{count} suggestions. The search looked at the shortest routes first and stopped before it \
             had looked at all: a better one may be left."
        ),
        RerouteText::Proven { cools } => {
            let if_cooling = if *cools {
                ", were the air to keep its temperature on the way"
            } else {
                ""
            };
            format!(
                "From the outlet as it is, no run along the lines that the search draws beside walls and \
                 obstacles loses less than the best new route{if_cooling}: that was proved."
            )
        }
        RerouteText::PresentHasNoRoom => {
            "The present run has no room where it is drawn: a run that has room may lose more."
                .to_owned()
        }
        RerouteText::AllowOtherSides => {
            "The dryer's outlet may go to another of its sides".to_owned()
        }
        RerouteText::AllowMovedDryer => "The dryer may be moved and turned".to_owned(),
        RerouteText::CloseZone(kind) => format!("Keep out of this zone: {}", zone(*kind)),
        RerouteText::Show => "Show on the drawing".to_owned(),
        RerouteText::Take => "Take this run".to_owned(),
        RerouteText::Present => "Present".to_owned(),
        RerouteText::Suggested => "Suggested".to_owned(),
        RerouteText::Parts => "Straights and elbows".to_owned(),
        RerouteText::NewRoute {
            through_wall,
            end_moves,
        } => {
            let out = if *through_wall {
                "out through a wall"
            } else {
                "up through the roof"
            };
            format!(
                "Lay the run anew in rigid duct, {out}, {} from where it ends now.",
                units.length(*end_moves)
            )
        }
        RerouteText::OutletSide(side) => {
            let side = match side {
                OutletSide::Back => "back",
                OutletSide::Left => "left side",
                OutletSide::Right => "right side",
            };
            format!("Needs the dryer's outlet at its {side}: see whether its maker allows that.")
        }
        RerouteText::TurnDryer(turn) => {
            format!("Turn the dryer {:.0}° clockwise.", turn.degrees())
        }
        RerouteText::MoveDryer(by) => format!(
            "Move the dryer {} aside, into line with what follows.",
            units.length(*by)
        ),
        RerouteText::ShorterTransition(by) => format!(
            "Move the dryer {} nearer, so that its transition duct is shorter by as much.",
            units.length(*by)
        ),
        RerouteText::LongRadius { bends, radius } => format!(
            "A smooth elbow of {} centre-line radius at {}, counted from the dryer.",
            units.length(*radius),
            numbered("bend", bends)
        ),
        RerouteText::TwoFortyFives { bends, off } => {
            let least = if bends.len() > 1 { "at least " } else { "" };
            format!(
                "Two 45° elbows, each {least}{} from the old corner, for the 90° at {}, counted from the \
                 dryer.",
                units.length(*off),
                numbered("bend", bends)
            )
        }
        RerouteText::Rigid(legs) => format!(
            "Rigid duct for the flexible duct of {}, counted from the dryer.",
            numbered("leg", legs)
        ),
        RerouteText::DropOffset {
            bend,
            aside,
            moves_hood,
        } => {
            let hood = if *moves_hood {
                ", which moves the hood along its wall"
            } else {
                ""
            };
            format!(
                "Leave out the step of {} aside and back at bend {bend}, counted from the dryer{hood}.",
                units.length(*aside)
            )
        }
        RerouteText::DropCorner(bend) => {
            format!("Leave out bend {bend}, counted from the dryer.")
        }
        RerouteText::Why { bends, length } => {
            let bends = match bends.1.cmp(&bends.0) {
                core::cmp::Ordering::Less if bends.0 - bends.1 == 1 => "one bend fewer".to_owned(),
                core::cmp::Ordering::Less => format!("{} fewer bends", bends.0 - bends.1),
                core::cmp::Ordering::Equal => "as many bends".to_owned(),
                core::cmp::Ordering::Greater if bends.1 - bends.0 == 1 => {
                    "one bend more".to_owned()
                }
                core::cmp::Ordering::Greater => format!("{} more bends", bends.1 - bends.0),
            };
            let way = if length.1 <= length.0 {
                "shorter"
            } else {
                "longer"
            };
            let off = units.length((length.1 - length.0).abs());
            format!("It has {bends} and is {off} {way}.")
        }
        RerouteText::Gain {
            band,
            is_larger_than_its_doubt,
        } => {
            let (low, high) = (units.pressure(band.0), units.pressure(band.1));
            let range = format!("The back pressure falls by {} to {high}", low.figure);
            if *is_larger_than_its_doubt {
                format!("{range}, more than the doubt about it.")
            } else {
                format!("{range}: the gain is smaller than the doubt about it.")
            }
        }
        RerouteText::ShorterByCode { band, shorter } => {
            let (low, high) = (units.pressure(band.0), units.pressure(band.1));
            format!(
                "The code length falls by {}, but the back pressure changes by {} to {high}.",
                units.length(*shorter),
                low.figure
            )
        }
        RerouteText::Blocked {
            has_no_way_out: true,
            ..
        } => "There is no outside wall that a run could leave by, square to it.".to_owned(),
        RerouteText::Blocked { by, opens, .. } => {
            let mut text = "There is no other route past what is drawn.".to_owned();
            if !by.is_empty() {
                text += &format!(" In the way: {}.", by.join(", "));
            }
            if let Some((name, airflow)) = opens {
                text += &format!(
                    " Without {name} one opens, at an airflow of {}.",
                    units.airflow(*airflow)
                );
            }
            text
        }
    }
}

/// "bend 2", "bends 1, 2 and 5".
fn numbered(what: &str, numbers: &[usize]) -> String {
    let plural = if numbers.len() > 1 { "s" } else { "" };
    format!("{what}{plural} {}", listing::numbers(numbers, "and"))
}
