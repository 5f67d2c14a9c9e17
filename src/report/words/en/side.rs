//! What is said about two runs side by side, lessons and links.

use super::trouble::file;
use super::{Label, label};
use crate::plan::{
    Difference, Duct, Elbow, ElbowKind, LegDifference, LessonError, LessonPart, LinkError, Part,
    Quantity, TerminationKind,
};
use crate::report::words::SideMessage;
use crate::units::{Length, UnitSystem};

pub(super) fn side(units: UnitSystem, message: SideMessage<'_>) -> String {
    match message {
        SideMessage::Quantity(quantity) => self::quantity(quantity).to_owned(),
        SideMessage::DifferenceCount(0) => "Nothing differs.".to_owned(),
        SideMessage::DifferenceCount(1) => {
            "One thing differs, so the difference in the figures is its doing.".to_owned()
        }
        SideMessage::DifferenceCount(count) => format!(
            "{count} things differ, so the figures do not say which of them did how much. Change one at a time to see."
        ),
        SideMessage::Difference(what) => difference(units, what),
        SideMessage::SameElements(count) => format!("The other {count}, the same in both"),
        SideMessage::More {
            shown,
            is_more,
            percent,
        } => {
            let sign = if is_more { "+" } else { "\u{2212}" };
            let share = percent.map(|percent| format!(" ({sign}{percent:.0} %)"));
            format!("{sign}{shown}{}", share.unwrap_or_default())
        }
        SideMessage::MoreBand(band) => format!("band {band}"),
        SideMessage::Place { part, corner } => match part {
            Part::Leg => format!("Leg {corner}"),
            Part::Termination => "End".to_owned(),
            Part::MakeUpAir => "Room".to_owned(),
            _ => at(corner),
        },
        SideMessage::Guesses {
            spread,
            least,
            median,
            greatest,
            figure,
        } => {
            let guesses = match spread.count {
                1 => "One guess".to_owned(),
                count => format!("{count} guesses"),
            };
            let alike = spread.count - spread.below - spread.above;
            let hit = match alike {
                0 => String::new(),
                count => format!(", {count} on it"),
            };
            format!(
                "{guesses}, from {least} to {greatest}, the middle one {median}; the figure is {figure}: \
                 {} below it, {} above it{hit}.",
                spread.below, spread.above
            )
        }
        SideMessage::LinkLetters(count) => {
            /// Up to here every messenger passes a link whole. Common practice, no source.
            const SHORT: usize = 2000;
            let long = if count > SHORT {
                " Some messengers cut a link of this length: ask whether it opens."
            } else {
                ""
            };
            format!("{count} letters.{long}")
        }
        SideMessage::Link(error) => link(error),
        SideMessage::Lesson(error) => lesson(error),
    }
}

fn quantity(quantity: Quantity) -> &'static str {
    match quantity {
        Quantity::Airflow => label(Label::Airflow),
        Quantity::BackPressure => label(Label::BackPressure),
        Quantity::Velocity => label(Label::Velocity),
        Quantity::Loss => "Loss, all elements",
        Quantity::Draught => "Draught of the rise",
        Quantity::DevelopedLength => label(Label::DevelopedLength),
        Quantity::EquivalentLength => label(Label::EquivalentLength),
        Quantity::CodeLength => label(Label::CodeLength),
    }
}

fn difference(units: UnitSystem, difference: &Difference) -> String {
    let degrees = |temperature| units.temperature(temperature).to_string();
    match difference {
        Difference::MoreCorners(1) => "One corner more".to_owned(),
        Difference::MoreCorners(count) => format!("{count} corners more"),
        Difference::FewerCorners(1) => "One corner fewer".to_owned(),
        Difference::FewerCorners(count) => format!("{count} corners fewer"),
        Difference::Moved { is_end: true, .. } => "The run ends elsewhere".to_owned(),
        Difference::Moved { corner, .. } => format!("{} stands elsewhere", at(*corner)),
        Difference::Elbow { corner, from, to } => format!(
            "Elbow at {}: {}, then {}",
            at(*corner).to_lowercase(),
            elbow(units, *from),
            elbow(units, *to)
        ),
        Difference::Rise { corner, from, to } => {
            let rise = |rise: &Option<Length>| match rise {
                Some(rise) if *rise < Length::ZERO => {
                    format!("down {}", units.length(-*rise))
                }
                Some(rise) => format!("up {}", units.length(*rise)),
                None => "none".to_owned(),
            };
            format!(
                "Rise at {}: {}, then {}",
                at(*corner).to_lowercase(),
                rise(from),
                rise(to)
            )
        }
        Difference::Duct { leg, from, to } => {
            format!("Leg {leg}: {}, then {}", duct(*from), duct(*to))
        }
        Difference::Leg { leg, what } => format!("Leg {leg}: {}", leg_difference(*what)),
        Difference::Termination(from, to) => {
            format!("End: {}, then {}", termination(*from), termination(*to))
        }
        Difference::TerminationFree(from, to) => format!(
            "Opening at the end: {:.0} % free, then {:.0} %",
            from * 100.0,
            to * 100.0
        ),
        Difference::Diameter(from, to) => format!(
            "Diameter: {}, then {}",
            units.part_size(*from),
            units.part_size(*to)
        ),
        Difference::Dryer => "The dryer: its place, turn, size or outlet".to_owned(),
        Difference::ExhaustTemperature(from, to) => format!(
            "Exhaust at the outlet: {}, then {}",
            degrees(*from),
            degrees(*to)
        ),
        Difference::ExhaustHumidity(from, to) => humidity("Exhaust", *from, *to),
        Difference::Cooling => "Whether the air cools along the run, or the phase".to_owned(),
        Difference::OutdoorTemperature(from, to) => {
            format!("Outdoors: {}, then {}", degrees(*from), degrees(*to))
        }
        Difference::OutdoorHumidity(from, to) => humidity("Outdoors", *from, *to),
        Difference::Altitude(from, to) => {
            format!(
                "Altitude: {}, then {}",
                units.length(*from),
                units.length(*to)
            )
        }
        Difference::HousePressure(from, to) => format!(
            "House pressure: {}, then {}",
            units.pressure(*from),
            units.pressure(*to)
        ),
        Difference::MakeUpAir => "The opening for make-up air".to_owned(),
        Difference::Flow => "What moves the air".to_owned(),
        Difference::BendMethod => "The method for smooth elbows".to_owned(),
        Difference::OwnValues => "Values of one's own".to_owned(),
        Difference::Code => "The code, or how it is read".to_owned(),
        Difference::Room => "The room: walls, openings, obstacles, zones or the ceiling".to_owned(),
    }
}

fn at(corner: usize) -> String {
    match corner {
        0 => "Outlet".to_owned(),
        corner => format!("Corner {corner}"),
    }
}

fn humidity(of: &str, from: f64, to: f64) -> String {
    format!(
        "{of}, relative humidity: {:.0} %, then {:.0} %",
        from * 100.0,
        to * 100.0
    )
}

fn elbow(units: UnitSystem, elbow: Elbow) -> String {
    let kind = match elbow.kind {
        ElbowKind::SharpMitre => return "sharp mitre".to_owned(),
        ElbowKind::Smooth => "smooth",
        ElbowKind::Segmented => "segmented",
        ElbowKind::BentFlexible => "bent flexible duct",
    };
    format!("{kind}, radius {}", units.part_size(elbow.radius))
}

fn duct(duct: Duct) -> String {
    let pushed = |name: &str, percent: f64| format!("{name} {percent:.0} % short of full stretch");
    match duct {
        Duct::Rigid => "rigid".to_owned(),
        Duct::SemiRigid {
            short_of_full_stretch_percent: percent,
        } => pushed("semi-rigid", percent),
        Duct::Foil {
            short_of_full_stretch_percent: percent,
        } => pushed("foil", percent),
        Duct::FlatRectangular { .. } => "flat rectangular".to_owned(),
    }
}

fn leg_difference(what: LegDifference) -> String {
    match what {
        LegDifference::Diameter => "its diameter".to_owned(),
        LegDifference::Estimate => "how sure its length is".to_owned(),
        LegDifference::Concealed => "what is hidden in it".to_owned(),
        LegDifference::Blockage(from, to) => format!(
            "{:.0} % of its area free, then {:.0} %",
            from * 100.0,
            to * 100.0
        ),
        LegDifference::Leak => "a leaking joint where it begins".to_owned(),
        LegDifference::WallBox => "the wall box that it ends in".to_owned(),
        LegDifference::Wall => "its insulation or metal".to_owned(),
    }
}

fn termination(kind: TerminationKind) -> &'static str {
    match kind {
        TerminationKind::WallHood => "wall hood",
        TerminationKind::LouvredHood => "louvred hood",
        TerminationKind::RoofCap => "roof cap",
        TerminationKind::OpenEnd => "open end",
    }
}

fn link(error: &LinkError) -> String {
    const AGAIN: &str = "Copy the whole link and open it again, or ask for the job's file.";
    match error {
        LinkError::TooLong { letters, limit } => format!(
            "The link would have {letters} letters, and at most {limit} pass everywhere. Send the job's file instead."
        ),
        LinkError::NotAJob => format!("The link holds no job. {AGAIN}"),
        LinkError::UnknownVersion { found, known } => format!(
            "The link is of version “{found}”, and this page reads version {known}. Reload the page for a newer one, or ask for the job's file."
        ),
        LinkError::StrangeLetter { after } => format!(
            "After {after} letters of the link stands one that no link has: it was broken or changed on its way. {AGAIN}"
        ),
        LinkError::CutShort { letters } => format!(
            "The link ends after {letters} letters, before the job does: a part of it was cut off. {AGAIN}"
        ),
        LinkError::Damaged => format!(
            "The link is not as it was sent: at least one letter was changed on its way. {AGAIN}"
        ),
        LinkError::TooLarge { limit } => format!(
            "The job in the link is larger than the {limit} bytes that a link can hold. Send or ask for the job's file instead."
        ),
        LinkError::Plan(error) => format!(
            "The link is whole, but what it holds is no plan that can be read. {} Ask for the job's file.",
            file(error)
        ),
    }
}

fn lesson(error: &LessonError) -> String {
    match error {
        LessonError::NotALesson => {
            "The file does not say that it is a lesson (format “elbowroom-lesson”).".to_owned()
        }
        LessonError::File(error) => file(error),
        LessonError::Text {
            text,
            letters,
            field,
        } => {
            let name = match text {
                LessonPart::Title => "The lesson's name",
                LessonPart::Question => "The question",
                LessonPart::Hint => "The hint",
                LessonPart::Answer => "The answer",
            };
            let (least, greatest) = (field.least, field.greatest);
            format!("{name} has {letters} letters; it can have from {least} to {greatest}.")
        }
        LessonError::First(error) => format!("The lesson's first run: {}", file(error)),
        LessonError::Second(error) => format!("The lesson's second run: {}", file(error)),
    }
}
