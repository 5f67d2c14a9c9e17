//! Each rule in words for somebody without a code book: its name, what it asks, what was measured.

use super::code::spare;
use crate::plan::{OpeningKind, RuleTopic};
use crate::report::words::rule_figure::{self, measure, plain_limit};
use crate::rules::{Limit, Measure, RuleFinding};
use crate::units::UnitSystem;

pub(super) fn topic(topic: RuleTopic) -> &'static str {
    match topic {
        RuleTopic::Length => "Length of the exhaust duct",
        RuleTopic::DuctSize => "Duct size",
        RuleTopic::DuctMaterial => "Duct material",
        RuleTopic::DuctThickness => "Duct thickness",
        RuleTopic::TransitionLength => "Length of the transition duct",
        RuleTopic::TransitionOnePiece => "Transition duct in one length",
        RuleTopic::TransitionConcealed => "Transition duct in sight",
        RuleTopic::TransitionListing => "Listing of the transition duct",
        RuleTopic::Supports => "Supports",
        RuleTopic::Joints => "Joints",
        RuleTopic::Fasteners => "Screws",
        RuleTopic::ShieldPlates => "Shield plates",
        RuleTopic::Label => "Permanent label",
        RuleTopic::OutdoorTermination => "End of the run",
        RuleTopic::BackdraftDamper => "Backdraft damper",
        RuleTopic::NoScreen => "No screen",
        RuleTopic::OpenArea => "Open area of the termination",
        RuleTopic::OpeningDistance => "Distance from openings",
        RuleTopic::IntakeDistance => "Distance from air intakes",
        RuleTopic::PropertyLine => "Distance from the property line",
        RuleTopic::ForbiddenOutlets => "Forbidden outlets",
        RuleTopic::FireDampers => "Fire dampers",
        RuleTopic::PowerVentilators => "Fans in the duct",
        RuleTopic::MakeUpAir => "Make-up air",
        RuleTopic::ClosetOpening => "Dryer in a closet",
        RuleTopic::OtherDucts => "Other ducts",
        RuleTopic::GarageSeparation => "Garage",
        RuleTopic::RatedAssemblies => "Fire-rated walls and floors",
        RuleTopic::StudSpaces => "Duct in the framing",
        RuleTopic::UnusedDuct => "Unused duct",
        RuleTopic::CleanOut => "Clean-out",
        RuleTopic::SharedShaft => "Several storeys on one duct",
        RuleTopic::MakerLength => "Dryer maker's length",
        RuleTopic::MakerBackPressure => "Dryer maker's back pressure",
    }
}

#[allow(clippy::too_many_lines, reason = "one sentence a rule")]
pub(super) fn asks(units: UnitSystem, finding: &RuleFinding) -> String {
    let limit = || {
        finding
            .limit
            .map_or_else(String::new, |it| limit(units, it))
    };
    let text = match finding.topic {
        RuleTopic::Length => {
            "The duct from the transition duct to the outdoors may be only so long, and each elbow takes \
             some of that length away."
        }
        RuleTopic::DuctSize => "The exhaust duct is 4 in (100 mm) duct.",
        RuleTopic::DuctMaterial => {
            "The exhaust duct is metal and smooth inside: no flexible duct past the transition duct."
        }
        RuleTopic::DuctThickness => {
            return format!("The duct's metal is {} thick (28 gage).", limit());
        }
        RuleTopic::TransitionLength => {
            return format!(
                "The transition duct, the flexible piece behind the dryer, is {} long.",
                limit()
            );
        }
        RuleTopic::TransitionOnePiece => {
            "The transition duct is a single length, not joined of two."
        }
        RuleTopic::TransitionConcealed => {
            "The transition duct stays in sight: it passes no wall, floor or ceiling."
        }
        RuleTopic::TransitionListing => {
            "The transition duct is listed for dryers (UL 2158A); its print says so."
        }
        RuleTopic::Supports => return supports(units, finding),
        RuleTopic::Joints => {
            "The duct's joints are sealed, and each male end points the way that the air goes."
        }
        RuleTopic::Fasteners if finding.limit.is_some() => {
            return format!("Screws and rivets reach {} into the duct.", limit());
        }
        RuleTopic::Fasteners => "No screw reaches into the duct, where it would catch lint.",
        RuleTopic::ShieldPlates => {
            return format!(
                "Where the duct lies less than {} behind the face of studs or joists, steel plates of \
                 0.062 in (1.6 mm) shield it from nails, 2 in (50 mm) past the framing.",
                plain_limit(units, finding)
            );
        }
        RuleTopic::Label => {
            "A permanent label within 6 ft (1.8 m) of the duct's connection gives the equivalent length."
        }
        RuleTopic::OutdoorTermination => "The run ends outdoors, and serves this dryer alone.",
        RuleTopic::BackdraftDamper => {
            "A backdraft damper at the outlet closes when the dryer stops. A bare end has none."
        }
        RuleTopic::NoScreen => "There is no screen over the outlet, where lint would collect.",
        RuleTopic::OpenArea => {
            return format!(
                "The outlet's open area, with its damper open, is {}.",
                limit()
            );
        }
        RuleTopic::OpeningDistance => {
            return format!(
                "The outlet is {} away from {}, unless the dryer's maker says otherwise.",
                limit(),
                opening(
                    finding,
                    "windows, doors and other openings into the building"
                )
            );
        }
        RuleTopic::IntakeDistance => {
            return format!(
                "The outlet is {} away from {}. This is a general rule on exhaust, held from memory.",
                limit(),
                opening(finding, "air intakes of the building")
            );
        }
        RuleTopic::PropertyLine => {
            return format!(
                "The outlet is {} away from the property line. This is a general rule on exhaust, held \
                 from memory.",
                limit()
            );
        }
        RuleTopic::ForbiddenOutlets => {
            "The run does not end in an attic, a crawl space, a soffit or ridge vent, a chimney, a gas \
             vent or another duct."
        }
        RuleTopic::FireDampers => "There is no fire damper in the duct.",
        RuleTopic::PowerVentilators => {
            "There is no booster fan in the duct. A ventilator that is listed for dryers (UL 705) is \
             allowed, and then its own greatest length governs."
        }
        RuleTopic::MakeUpAir => {
            return format!(
                "A dryer that moves more than {} needs make-up air brought into its room.",
                plain_limit(units, finding)
            );
        }
        RuleTopic::ClosetOpening => {
            return format!(
                "A closet that is made for a dryer has an opening of {} for air.",
                limit()
            );
        }
        RuleTopic::OtherDucts => "The duct does not pass through another duct or a plenum.",
        RuleTopic::GarageSeparation => {
            "Where the duct passes the wall or ceiling between house and garage, it is steel of 26 gage \
             and has no openings into the garage."
        }
        RuleTopic::RatedAssemblies => {
            "Where the duct passes a fire-rated wall or floor, the gap is sealed."
        }
        RuleTopic::StudSpaces => "The duct fits between studs and joists without being crushed.",
        RuleTopic::UnusedDuct => "A duct that is not in use is capped and marked.",
        RuleTopic::CleanOut => "Each vertical riser has a clean-out.",
        RuleTopic::SharedShaft => {
            "Dryers of several storeys share a duct only in an engineered shaft."
        }
        RuleTopic::MakerLength => {
            "The dryer's instructions allow so much duct, with the maker's own deductions for elbows. \
             Codes may let them govern instead of the code's own length."
        }
        RuleTopic::MakerBackPressure => {
            "The dryer's instructions allow so much static pressure at the outlet of the running dryer."
        }
    };
    text.to_owned()
}

fn supports(units: UnitSystem, finding: &RuleFinding) -> String {
    let spacing = plain_limit(units, finding);
    match finding.measured {
        Some(Measure::Count(count)) => format!(
            "The duct is held at least every {spacing}: {count} {} for what is drawn.",
            if count == 1 { "support" } else { "supports" }
        ),
        _ => format!("The duct is held at least every {spacing}."),
    }
}

fn opening(finding: &RuleFinding, all: &'static str) -> &'static str {
    match finding.opening.as_ref().map(|opening| opening.kind) {
        Some(OpeningKind::Window) => "this window",
        Some(OpeningKind::Door) => "this door",
        Some(OpeningKind::AirIntake) => "this air intake",
        None => all,
    }
}

/// What was measured, its limit, and the margin.
pub(super) fn measured(units: UnitSystem, finding: &RuleFinding) -> String {
    // Supports are counted for information; their limit is of another kind.
    let (Some(found), false) = (finding.measured, finding.topic == RuleTopic::Supports) else {
        return String::new();
    };
    let is_transition = matches!(
        finding.topic,
        RuleTopic::TransitionLength | RuleTopic::TransitionOnePiece
    );
    if is_transition && finding.elements.is_empty() {
        return "No transition duct is drawn.".to_owned();
    }
    if let (Measure::Count(count), Some(asked)) = (found, finding.limit) {
        let drawn = match count {
            0 => "none".to_owned(),
            count => count.to_string(),
        };
        let what = match finding.topic {
            RuleTopic::DuctMaterial => "Flexible legs past the transition duct",
            RuleTopic::TransitionOnePiece => "Pieces of transition duct",
            _ => "As drawn",
        };
        return format!("{what}: {drawn}; allowed: {}.", limit(units, asked));
    }
    let found = measure(units, found);
    let Some(limit) = finding.limit else {
        return format!("Measured {found}.");
    };
    let asked = self::limit(units, limit);
    match finding.margin {
        Some(margin) if !matches!(limit, Limit::Nominally(_)) => {
            let margin = spare(rule_figure::margin(units, margin, limit));
            format!("Measured {found}; asked for is {asked}; {margin}.")
        }
        _ => format!("Measured {found}; asked for is {asked}."),
    }
}

fn limit(units: UnitSystem, limit: Limit) -> String {
    match limit {
        Limit::AtMost(Measure::Count(0)) => "none".to_owned(),
        Limit::AtMost(it) => format!("at most {}", measure(units, it)),
        Limit::AtLeast(it) => format!("at least {}", measure(units, it)),
        Limit::Nominally(it) => format!("nominally {}", measure(units, it)),
    }
}
