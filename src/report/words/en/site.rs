//! Readings on site.

use super::{element, element_size, site_grounds};
use crate::diagnosis::{CauseKind, Caveat, Objection, Test, TestCaution};
use crate::plan::{Conditions, Found, Pattern, Preparation, Spot, Taken};
use crate::report::words::chance::{Bound, Chance, percent};
use crate::report::words::listing::those_so;
use crate::report::words::{Placed, SiteMessage};
use crate::units::{Temperature, UnitSystem, Velocity};

pub(super) fn site(units: UnitSystem, message: SiteMessage<'_>) -> String {
    match message {
        SiteMessage::Label(key) => super::site_label::site_label(key).to_owned(),
        SiteMessage::Preparation(line) => preparation(line).to_owned(),
        SiteMessage::Cause(kind, at) => cause(units, kind, at),
        SiteMessage::Test(test, at) => self::test(units, test, at),
        SiteMessage::Caution(caution) => self::caution(caution).to_owned(),
        SiteMessage::Caveat(caveat) => self::caveat(caveat),
        SiteMessage::Refused(why) => format!("Not taken: {}", objection(units, why)),
        SiteMessage::Doubted(why) => format!("Taken, but look again: {}", objection(units, why)),
        SiteMessage::Odds(odds) => self::odds(odds),
        SiteMessage::FreeArea(likely, low, high) => format!(
            "{:.0} % of the area free ({:.0} to {:.0} %)",
            likely * 100.0,
            low * 100.0,
            high * 100.0
        ),
        SiteMessage::AirflowLeft(share) => {
            let percent = share * 100.0;
            if share > 1.0 {
                format!("{percent:.0} % of the clean airflow at the dryer, not all of it outdoors")
            } else {
                format!("{percent:.0} % of the clean airflow left")
            }
        }
        SiteMessage::AirflowNow(mean, low, high) => format!(
            "{:.0} % ({:.0} to {:.0} %)",
            mean * 100.0,
            low * 100.0,
            high * 100.0
        ),
        SiteMessage::Spot(spot, at) => self::spot(units, spot, at),
        SiteMessage::Conditions(conditions) => self::conditions(conditions),
        SiteMessage::Pattern(pattern) => match pattern {
            Pattern::CentreLineAfterStraight => {
                "On the centre line, ten diameters of straight before it"
            }
            Pattern::CentreLine => "On the centre line",
            Pattern::Traverse => "Traverse, or the whole opening",
        }
        .to_owned(),
        SiteMessage::Look(found, at) => {
            let found = match found {
                Found::Clear => "clear",
                Found::Blocked => "something in the way",
            };
            format!("Looked into {}: {found}", placed(units, at))
        }
        SiteMessage::Done(kind, at) => done(units, kind, at),
        SiteMessage::Prepared(ticked, of) => format!("{ticked} of {of} ready"),
        SiteMessage::BlowerPoints(points) => format!(
            "{points} points of this blower's curve were read. Taken in place of the assumed blower, \
             they narrow every band; they stand among the plan's own values and can be undone."
        ),
        SiteMessage::WouldRead(read, expected) => format!("{read} read, {expected} expected"),
        SiteMessage::Limit(limit, margin) => format!("limit {limit}, margin {margin}"),
        SiteMessage::Visit {
            number,
            date,
            entries,
        } => {
            let date = if date.is_empty() { "no date" } else { date };
            let entries = match entries {
                1 => "1 entry".to_owned(),
                entries => format!("{entries} entries"),
            };
            format!("Visit {number}, {date}, {entries}")
        }
        SiteMessage::Picture(taken, number) => format!(
            "{} cleaning, picture {number}",
            match taken {
                Taken::Before => "Before",
                Taken::After => "After",
            }
        ),
        SiteMessage::Restored(airflow) => format!("About {airflow} more air than before"),
        SiteMessage::CleanGrounds(grounds) => site_grounds::clean(units, &grounds),
        SiteMessage::OddsGrounds(before, now) => site_grounds::odds(before, now),
        SiteMessage::AirflowGrounds(clean) => site_grounds::airflow(clean),
        SiteMessage::Worth { effort, bits } => {
            format!(
                "Effort {effort:.1} (a reading at the outlet is 1); halves the doubt {bits:.1} times on average"
            )
        }
    }
}

/// An element with its place, so that two of a kind are told apart.
fn placed(units: UnitSystem, at: Option<Placed<'_>>) -> String {
    let Some((place, kind)) = at else {
        return "a part that is no more in the plan".to_owned();
    };
    let size = element_size(units, *kind);
    let comma = if size.is_empty() { "" } else { ", " };
    let name = element(*kind).to_lowercase();
    format!("part {place}, {name}{comma}{size}")
}

fn preparation(line: Preparation) -> &'static str {
    match line {
        Preparation::ScreenCleaned => "Lint screen cleaned",
        Preparation::DrumEmpty => "Drum empty",
        Preparation::NoHeatCycle => "No-heat cycle chosen",
        Preparation::GaugeZeroed => "Gauge set to zero with both sides open",
    }
}

fn cause(units: UnitSystem, kind: CauseKind, at: Option<Placed<'_>>) -> String {
    match kind {
        CauseKind::Blockage => format!("Lint or a blockage in {}", placed(units, at)),
        CauseKind::CrushedFlex => format!("Crushed or clogged: {}", placed(units, at)),
        CauseKind::FlapStuck => format!("Flap stuck at {}", placed(units, at)),
        CauseKind::Blower => "Weak blower, slow or caked with lint".to_owned(),
        CauseKind::Leak => "A joint that leaks".to_owned(),
        CauseKind::RoomStarved => "Room short of make-up air".to_owned(),
        CauseKind::LintScreen => "Lint screen full".to_owned(),
    }
}

fn done(units: UnitSystem, kind: CauseKind, at: Option<Placed<'_>>) -> String {
    match (kind, at) {
        (CauseKind::Blower, _) => "Blower mended".to_owned(),
        (CauseKind::Leak, _) => "Joint sealed".to_owned(),
        (CauseKind::RoomStarved, _) => "Way for make-up air opened".to_owned(),
        (CauseKind::LintScreen, _) => "Lint screen cleaned".to_owned(),
        (_, Some(_)) => format!("Cleaned or mended: {}", placed(units, at)),
        (_, None) => "Whole run cleaned".to_owned(),
    }
}

fn test(units: UnitSystem, test: &Test, at: Option<Placed<'_>>) -> String {
    match test {
        Test::ReadAtOutlet => {
            "Read the static pressure at the dryer's outlet, run joined".to_owned()
        }
        Test::CleanScreen => "Clean the lint screen and read at the outlet again".to_owned(),
        Test::OpenDoor => {
            "Same reading at the outlet with a door or window of the room open".to_owned()
        }
        Test::HoldFlap => "Hold the flap open and read at the outlet".to_owned(),
        Test::ReadVelocity => {
            "Read the velocity at the dryer's outlet, on the centre line".to_owned()
        }
        Test::ReadAtJoint(_) => format!(
            "Read the static pressure at the joint before {}, run joined",
            placed(units, at)
        ),
        Test::OpenJoint(_) => format!(
            "Open the joint before {} and read at the outlet",
            placed(units, at)
        ),
        Test::OpenOutlet => {
            "Take the duct off the dryer and read the velocity at its outlet".to_owned()
        }
        Test::LookInto(_) => format!("Look into {}", placed(units, at)),
    }
}

const fn caution(caution: TestCaution) -> &'static str {
    match caution {
        TestCaution::JointOpen => {
            "The dryer runs with a joint open. Gas shut at the valve. No-heat cycle only. A window \
             open. Lint will blow. Nobody leaves while it runs. Rejoin and seal the joint before any \
             heat."
        }
        TestCaution::Tap => {
            "A small hole in the duct: no-heat cycle, smooth edges, and close it with foil tape \
             afterwards, never with a screw that reaches inside."
        }
        TestCaution::PowerOff => {
            "Disconnect power and shut the gas before the run is opened. Rejoin and seal it before \
             the dryer runs."
        }
        TestCaution::Height => {
            "Work at height: a ladder on firm ground, someone to hold it, or leave the roof to a \
             trade."
        }
        TestCaution::CarbonMonoxide => {
            "Gas dryer: a blocked exhaust can put carbon monoxide in the house. If anyone feels \
             unwell or an alarm sounds, stop, ventilate, have it serviced."
        }
    }
}

fn caveat(caveat: Caveat) -> String {
    match caveat {
        Caveat::NothingRead => {
            "Nothing was read yet: these are the odds that trade habit gives, before any reading."
                .to_owned()
        }
        Caveat::Contradiction(entry) => format!(
            "No single fault, and no two, explain these readings together. Entry {} fits worst: read \
             it again, or check the drawing against the run.",
            entry + 1
        ),
        Caveat::StatedAirflow => {
            "The plan states its airflow. Readings are held against the assumed blower instead."
                .to_owned()
        }
        Caveat::FaultInPlan => {
            "The plan itself has a blockage, a leak or a part-shut end. The clean run is taken \
             without them."
                .to_owned()
        }
        Caveat::PlaceGone(entry) => format!(
            "Entry {} names a place that is no more in the plan, and is left out.",
            entry + 1
        ),
        Caveat::TemperatureOnly(entry) => format!(
            "Entry {} is a temperature that nothing is predicted for, because the plan's air keeps its \
             temperature or the run was open before it. The odds do not rest on it.",
            entry + 1
        ),
    }
}

fn objection(units: UnitSystem, objection: Objection) -> String {
    match objection {
        Objection::Negative => {
            "a pressure below zero where the blower only pushes. Are the tubes swapped, is the gauge \
             at zero?"
                .to_owned()
        }
        Objection::FarAboveShutOff { times } => format!(
            "{times:.1} times the greatest pressure that such a blower gives. Is the unit right?"
        ),
        Objection::PastOpenJoint => {
            "at an open joint there is no static pressure to speak of.".to_owned()
        }
        Objection::TooFast { most } => format!(
            "faster than {}, which no dryer gives. Is the unit right?",
            units.velocity(Velocity::from_metres_per_second(most))
        ),
        Objection::NoAir => "no air moves though the dryer runs.".to_owned(),
        Objection::BelowAmbient => {
            "colder than the room that the dryer draws from, while it heats.".to_owned()
        }
        Objection::TooHot { most } => format!(
            "hotter than {}, at which any dryer shuts off.",
            units.temperature(Temperature::from_celsius(most))
        ),
        Objection::Uneven => {
            "the points differ by more than air in a duct does. Was the probe turned?".to_owned()
        }
        Objection::NoPoints => "no figure.".to_owned(),
    }
}

pub(super) fn odds(odds: f64) -> String {
    let word = match Chance::of(odds) {
        Chance::AlmostSure => "almost sure",
        Chance::Likely => "likely",
        Chance::Possible => "possible",
        Chance::LessLikely => "less likely",
        Chance::Unlikely => "unlikely",
        Chance::VeryUnlikely => "very unlikely",
    };
    let (bound, figure) = percent(odds);
    let bound = match bound {
        Bound::Under => "under ",
        Bound::About => "",
        Bound::Over => "over ",
    };
    format!("{bound}{figure}, {word}")
}

fn spot(units: UnitSystem, spot: &Spot, at: Option<Placed<'_>>) -> String {
    match spot {
        Spot::Outlet => "Dryer's outlet".to_owned(),
        Spot::Hood => "Hood or cap".to_owned(),
        Spot::Before(_) => format!("Joint before {}", placed(units, at)),
    }
}

fn conditions(conditions: &Conditions) -> String {
    those_so([
        (conditions.heat, "heat on"),
        (!conditions.lint_screen_clean, "lint screen not cleaned"),
        (!conditions.drum_empty, "drum not empty"),
        (conditions.flap_held, "flap held open"),
        (conditions.door_open, "door open"),
        (conditions.open_joint.is_some(), "joint open"),
    ])
}
