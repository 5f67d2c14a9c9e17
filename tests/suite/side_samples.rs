//! Messages about two runs side by side, lessons and links, one and more of each kind; values are
//! invented.

use crate::message_samples::{NAME, metres};
use crate::trouble_samples::file_errors;
use elbowroom::plan::{
    Difference, Duct, Elbow, ElbowKind, Field, LegDifference, LessonError, LessonPart, LinkError,
    Part, Quantity, TerminationKind,
};
use elbowroom::report::GuessSpread;
use elbowroom::report::words::SideMessage;
use elbowroom::units::{Pressure, Temperature};

const PARTS: [Part; 12] = [
    Part::Leg,
    Part::Elbow,
    Part::Riser,
    Part::ElbowAfterRiser,
    Part::AreaChange,
    Part::AreaChangeIntoRiser,
    Part::Blockage,
    Part::ConcealedElbows,
    Part::Leak,
    Part::WallBox,
    Part::Termination,
    Part::MakeUpAir,
];

/// Looks at what is said of two runs side by side, of lessons and of links.
pub fn each_of_the_side(mut look: impl FnMut(SideMessage<'_>)) {
    for quantity in Quantity::ALL {
        look(SideMessage::Quantity(quantity));
    }
    for count in [0, 1, 4] {
        look(SideMessage::DifferenceCount(count));
        look(SideMessage::SameElements(count));
    }
    let along = along_the_run().into_iter();
    for difference in along.chain(of_legs()).chain(about_the_run()) {
        look(SideMessage::Difference(&difference));
    }
    for (is_more, percent) in [(true, Some(12.0)), (false, Some(34.0)), (true, None)] {
        look(SideMessage::More {
            shown: "56 Pa",
            is_more,
            percent,
        });
    }
    look(SideMessage::MoreBand("12 Pa, 34 Pa"));
    for part in PARTS {
        for corner in [0, 3] {
            look(SideMessage::Place { part, corner });
        }
    }
    for (count, below, above) in [(1, 1, 0), (9, 2, 7), (9, 2, 6), (9, 2, 4)] {
        look(SideMessage::Guesses {
            spread: &GuessSpread {
                count,
                least: 81.0,
                median: 92.0,
                greatest: 113.0,
                below,
                above,
            },
            least: "81 cfm",
            median: "92 cfm",
            greatest: "113 cfm",
            figure: "94 cfm",
        });
    }
    for count in [345, 6789] {
        look(SideMessage::LinkLetters(count));
    }
    for error in &link_errors() {
        look(SideMessage::Link(error));
    }
    for error in &lesson_errors() {
        look(SideMessage::Lesson(error));
    }
}

fn along_the_run() -> Vec<Difference> {
    let elbow = |kind, radius| Elbow {
        kind,
        radius: metres(radius),
    };
    let elbows = [
        (ElbowKind::Smooth, ElbowKind::Segmented),
        (ElbowKind::SharpMitre, ElbowKind::BentFlexible),
    ];
    let elbows = elbows.into_iter().flat_map(|(from, to)| {
        let at = move |corner| Difference::Elbow {
            corner,
            from: elbow(from, 0.1),
            to: elbow(to, 0.2),
        };
        [0, 3].map(at)
    });
    let rises = [
        (None, Some(1.7)),
        (Some(1.7), Some(-0.6)),
        (Some(-0.6), None),
    ];
    let rises = rises.map(|(from, to)| Difference::Rise {
        corner: 2,
        from: from.map(metres),
        to: to.map(metres),
    });
    let rest = [
        Difference::MoreCorners(1),
        Difference::MoreCorners(4),
        Difference::FewerCorners(1),
        Difference::FewerCorners(4),
        Difference::Moved {
            corner: 5,
            is_end: true,
        },
        Difference::Moved {
            corner: 2,
            is_end: false,
        },
    ];
    rest.into_iter().chain(elbows).chain(rises).collect()
}

fn of_legs() -> Vec<Difference> {
    let semi_rigid = Duct::SemiRigid {
        short_of_full_stretch_percent: 31.0,
    };
    let foil = Duct::Foil {
        short_of_full_stretch_percent: 0.0,
    };
    let flat = Duct::FlatRectangular {
        width: metres(0.2),
        depth: metres(0.05),
    };
    let ducts = [(Duct::Rigid, semi_rigid), (foil, flat)];
    let ducts = ducts.map(|(from, to)| Difference::Duct { leg: 2, from, to });
    let legs = [
        LegDifference::Diameter,
        LegDifference::Estimate,
        LegDifference::Concealed,
        LegDifference::Blockage(1.0, 0.43),
        LegDifference::Leak,
        LegDifference::WallBox,
        LegDifference::Wall,
    ];
    let legs = legs.map(|what| Difference::Leg { leg: 3, what });
    ducts.into_iter().chain(legs).collect()
}

fn about_the_run() -> Vec<Difference> {
    let degrees = Temperature::from_celsius;
    vec![
        Difference::Termination(TerminationKind::WallHood, TerminationKind::LouvredHood),
        Difference::Termination(TerminationKind::RoofCap, TerminationKind::OpenEnd),
        Difference::TerminationFree(0.87, 0.65),
        Difference::Diameter(metres(0.1), metres(0.15)),
        Difference::Dryer,
        Difference::ExhaustTemperature(degrees(51.0), degrees(62.0)),
        Difference::ExhaustHumidity(0.13, 0.54),
        Difference::Cooling,
        Difference::OutdoorTemperature(degrees(-7.0), degrees(28.0)),
        Difference::OutdoorHumidity(0.35, 0.86),
        Difference::Altitude(metres(12.0), metres(1345.0)),
        Difference::HousePressure(Pressure::from_pascals(-3.0), Pressure::from_pascals(5.0)),
        Difference::MakeUpAir,
        Difference::Flow,
        Difference::BendMethod,
        Difference::OwnValues,
        Difference::Code,
        Difference::Room,
    ]
}

fn link_errors() -> Vec<LinkError> {
    let rest = [
        LinkError::TooLong {
            letters: 45_678,
            limit: 8765,
        },
        LinkError::NotAJob,
        LinkError::UnknownVersion {
            found: NAME.to_owned(),
            known: "3".to_owned(),
        },
        LinkError::StrangeLetter { after: 234 },
        LinkError::CutShort { letters: 345 },
        LinkError::Damaged,
        LinkError::TooLarge { limit: 654_321 },
    ];
    let plans = file_errors().into_iter().map(LinkError::Plan);
    rest.into_iter().chain(plans).collect()
}

fn lesson_errors() -> Vec<LessonError> {
    let texts = [
        LessonPart::Title,
        LessonPart::Question,
        LessonPart::Hint,
        LessonPart::Answer,
    ];
    let texts = texts.map(|text| LessonError::Text {
        text,
        letters: 321,
        field: Field {
            least: 2.0,
            greatest: 123.0,
        },
    });
    let files = file_errors().into_iter().flat_map(|error| {
        [
            LessonError::File(error.clone()),
            LessonError::First(error.clone()),
            LessonError::Second(error),
        ]
    });
    let rest = texts.into_iter().chain(files);
    rest.chain([LessonError::NotALesson]).collect()
}
