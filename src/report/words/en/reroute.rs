//! What is said of suggested runs.

use crate::plan::OutletSide;
use crate::report::words::RerouteText;
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
        RerouteText::Finished(0) => "No run was found that beats this one.".to_owned(),
        RerouteText::Finished(1) => "One suggestion.".to_owned(),
        RerouteText::Finished(count) => {
            format!("{count} suggestions, the least back pressure first.")
        }
        RerouteText::FinishedEarly(count) => format!(
            "{count} suggestions. The search looked at the shortest routes first and stopped before it \
             had looked at all: a better one may be left."
        ),
        RerouteText::Show => "Show on the drawing".to_owned(),
        RerouteText::Take => "Take this run".to_owned(),
        RerouteText::Present => "Present".to_owned(),
        RerouteText::Suggested => "Suggested".to_owned(),
        RerouteText::Parts => "Straights and elbows".to_owned(),
        RerouteText::NewRoute(true) => {
            "Lay the run anew in rigid duct, out through a wall.".to_owned()
        }
        RerouteText::NewRoute(false) => {
            "Lay the run anew in rigid duct, up through the roof.".to_owned()
        }
        RerouteText::OutletSide(side) => {
            let side = match side {
                OutletSide::Back => "back",
                OutletSide::Left => "left side",
                OutletSide::Right => "right side",
            };
            format!("Needs the dryer's outlet at its {side}: see whether its maker allows that.")
        }
        RerouteText::TurnDryer(degrees) => {
            format!("Turn the dryer {degrees:.0}° clockwise.")
        }
        RerouteText::LongRadius(radius) => {
            format!(
                "Put in a smooth elbow of {} centre-line radius.",
                units.length(*radius)
            )
        }
        RerouteText::TwoFortyFives(off) => {
            format!(
                "Two 45° elbows for the 90°, each {} from the old corner.",
                units.length(*off)
            )
        }
        RerouteText::RigidForFlexible => "Rigid duct for the flexible leg.".to_owned(),
        RerouteText::DropOffset { aside, moves_hood } => {
            let hood = if *moves_hood {
                ", which moves the hood along its wall"
            } else {
                ""
            };
            format!(
                "Leave out the step of {} aside and back{hood}.",
                units.length(*aside)
            )
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
        RerouteText::Blocked { by, opens } => {
            let mut text = "There is no other route past what is drawn.".to_owned();
            if !by.is_empty() {
                text += &format!(" In the way: {}.", by.join(", "));
            }
            if let Some((name, pressure)) = opens {
                text += &format!(
                    " Without {name} one opens, at a back pressure of {}.",
                    units.pressure(*pressure)
                );
            }
            text
        }
    }
}
