//! Texts about suggested runs, one and more of each kind; values are invented.

use crate::message_samples::{NAME, airflow, metres};
use elbowroom::plan::{OutletSide, ZoneKind};
use elbowroom::report::words::RerouteText;
use elbowroom::units::{Angle, Pressure};

fn pascals(pressure: f64) -> Pressure {
    Pressure::from_pascals(pressure)
}

pub fn reroutes() -> Vec<RerouteText> {
    let route = |through_wall| RerouteText::NewRoute {
        through_wall,
        end_moves: metres(1.11),
    };
    let offset = |moves_hood| RerouteText::DropOffset {
        bend: 3,
        aside: metres(0.21),
        moves_hood,
    };
    let why = |after, length| RerouteText::Why {
        bends: (4, after),
        length: (metres(5.0), metres(length)),
    };
    let gain = |is_larger_than_its_doubt| RerouteText::Gain {
        band: (pascals(11.0), pascals(33.0)),
        is_larger_than_its_doubt,
    };
    let blocked = |has_no_way_out, by: &[&str], opens| RerouteText::Blocked {
        has_no_way_out,
        by: by.iter().map(|name| (*name).to_owned()).collect(),
        opens,
    };
    let fixed = [
        RerouteText::Heading,
        RerouteText::Explanation,
        RerouteText::Start,
        RerouteText::Stop,
        RerouteText::NoAnswer,
        RerouteText::PresentHasNoRoom,
        RerouteText::AllowOtherSides,
        RerouteText::AllowMovedDryer,
        RerouteText::Show,
        RerouteText::Take,
        RerouteText::Present,
        RerouteText::Suggested,
        RerouteText::Parts,
    ];
    let valued = [
        RerouteText::Progress {
            done: 2,
            of: 5,
            looked_at: 1234,
        },
        RerouteText::Finished(0),
        RerouteText::Finished(1),
        RerouteText::Finished(7),
        RerouteText::FinishedEarly(8),
        RerouteText::Proven { cools: true },
        RerouteText::Proven { cools: false },
        RerouteText::CloseZone(ZoneKind::Attic),
        route(true),
        route(false),
        RerouteText::OutletSide(OutletSide::Back),
        RerouteText::OutletSide(OutletSide::Left),
        RerouteText::OutletSide(OutletSide::Right),
        RerouteText::TurnDryer(Angle::from_degrees(90.0)),
        RerouteText::MoveDryer(metres(0.61)),
        RerouteText::ShorterTransition(metres(0.62)),
        RerouteText::LongRadius {
            bends: vec![2],
            radius: metres(0.15),
        },
        RerouteText::TwoFortyFives {
            bends: vec![1, 2, 5],
            off: metres(0.17),
        },
        RerouteText::TwoFortyFives {
            bends: vec![4],
            off: metres(0.17),
        },
        RerouteText::Rigid(vec![1, 3]),
        offset(true),
        offset(false),
        RerouteText::DropCorner(6),
        why(3, 4.0),
        why(1, 4.0),
        why(4, 6.0),
        why(5, 6.0),
        why(7, 6.0),
        gain(true),
        gain(false),
        RerouteText::ShorterByCode {
            band: (pascals(-1.5), pascals(2.5)),
            shorter: metres(1.9),
        },
        blocked(true, &[], None),
        blocked(false, &[], None),
        blocked(
            false,
            &[NAME, "qxz18"],
            Some(("qxz19".to_owned(), airflow(0.05))),
        ),
    ];
    fixed.into_iter().chain(valued).collect()
}
