//! Messages about readings on site, one and more of each kind; values are invented.

use crate::message_samples::{NAME, element, elements};
use elbowroom::diagnosis::{CauseKind, Caveat, CleanReading, Objection, Test, TestCaution};
use elbowroom::plan::{
    Against, Conditions, Found, Measured, Pattern, Preparation, Reading, Spot, Taken,
};
use elbowroom::report::words::{CleanGrounds, Placed, SiteMessage};
use elbowroom::system::Band;
use elbowroom::units::{Pressure, Temperature, TemperatureDifference, Velocity};

fn conditions() -> [Conditions; 2] {
    let open = Conditions {
        heat: true,
        lint_screen_clean: false,
        drum_empty: false,
        flap_held: true,
        door_open: true,
        open_joint: Some(Spot::Outlet),
    };
    [Conditions::PLAIN, open]
}

const CLEAN: CleanReading = CleanReading {
    read: 61.0,
    likely: 52.0,
    band: Band {
        low: 43.0,
        high: 64.0,
    },
    error: 3.5,
    airflow: 0.06,
    velocity_pressure: 31.0,
};

fn measured() -> [Measured; 4] {
    let pressure = Pressure::from_pascals;
    let velocity = Velocity::from_metres_per_second;
    let kelvins = TemperatureDifference::from_kelvins;
    [
        Measured::StaticPressure {
            pressure: pressure(61.0),
            against: Against::Room,
            resolution: pressure(1.0),
            tolerance: pressure(2.5),
        },
        Measured::Velocity {
            points: vec![velocity(6.0)],
            pattern: Pattern::CentreLine,
            resolution: velocity(0.1),
            tolerance: velocity(0.3),
        },
        Measured::VelocityPressure {
            points: vec![pressure(31.0)],
            pattern: Pattern::Traverse,
            resolution: pressure(1.0),
            tolerance: pressure(2.5),
        },
        Measured::Temperature {
            temperature: Temperature::from_celsius(61.0),
            resolution: kelvins(0.1),
            tolerance: kelvins(1.0),
        },
    ]
}

fn tests() -> [Test; 9] {
    [
        Test::ReadAtOutlet,
        Test::CleanScreen,
        Test::OpenDoor,
        Test::HoldFlap,
        Test::ReadVelocity,
        Test::ReadAtJoint(element()),
        Test::OpenJoint(element()),
        Test::OpenOutlet,
        Test::LookInto(element()),
    ]
}

const CAUSES: [CauseKind; 7] = [
    CauseKind::Blockage,
    CauseKind::CrushedFlex,
    CauseKind::FlapStuck,
    CauseKind::Blower,
    CauseKind::Leak,
    CauseKind::RoomStarved,
    CauseKind::LintScreen,
];

/// Looks at what is said of readings on site, with and without a part of the run.
pub fn each_of_the_site(mut look: impl FnMut(SiteMessage<'_>)) {
    let elbow = elements().remove(4);
    let places: [Option<Placed<'_>>; 2] = [Some((3, &elbow)), None];
    for at in places {
        for kind in CAUSES {
            look(SiteMessage::Cause(kind, at));
            look(SiteMessage::Done(kind, at));
        }
        for test in tests() {
            look(SiteMessage::Test(&test, at));
        }
        for found in [Found::Clear, Found::Blocked] {
            look(SiteMessage::Look(found, at));
        }
        for spot in [Spot::Outlet, Spot::Hood, Spot::Before(element())] {
            look(SiteMessage::Spot(&spot, at));
        }
    }
    for line in Preparation::ALL {
        look(SiteMessage::Preparation(line));
    }
    for caution in [
        TestCaution::JointOpen,
        TestCaution::Tap,
        TestCaution::PowerOff,
        TestCaution::Height,
        TestCaution::CarbonMonoxide,
    ] {
        look(SiteMessage::Caution(caution));
    }
    for caveat in [
        Caveat::NothingRead,
        Caveat::Contradiction(3),
        Caveat::StatedAirflow,
        Caveat::FaultInPlan,
        Caveat::PlaceGone(4),
        Caveat::TemperatureOnly(5),
    ] {
        look(SiteMessage::Caveat(caveat));
    }
    for objection in [
        Objection::Negative,
        Objection::FarAboveShutOff { times: 3.4 },
        Objection::PastOpenJoint,
        Objection::TooFast { most: 31.0 },
        Objection::NoAir,
        Objection::BelowAmbient,
        Objection::TooHot { most: 111.0 },
        Objection::Uneven,
        Objection::NoPoints,
    ] {
        look(SiteMessage::Refused(objection));
        look(SiteMessage::Doubted(objection));
    }
    for odds in [0.001, 0.05, 0.2, 0.4, 0.7, 0.93, 0.999] {
        look(SiteMessage::Odds(odds));
    }
    look(SiteMessage::FreeArea(0.41, 0.32, 0.53));
    look(SiteMessage::AirflowLeft(0.76));
    look(SiteMessage::AirflowLeft(1.04));
    look(SiteMessage::AirflowNow(0.81, 0.72, 0.93));
    for conditions in conditions() {
        look(SiteMessage::Conditions(&conditions));
    }
    for pattern in [
        Pattern::CentreLineAfterStraight,
        Pattern::CentreLine,
        Pattern::Traverse,
    ] {
        look(SiteMessage::Pattern(pattern));
    }
    look(SiteMessage::Prepared(2, 4));
    look(SiteMessage::BlowerPoints(3));
    look(SiteMessage::WouldRead("123 Pa", "45 Pa"));
    look(SiteMessage::Limit("150.0 Pa", "12.5 Pa"));
    for (date, entries) in [("", 1), (NAME, 6)] {
        look(SiteMessage::Visit {
            number: 2,
            date,
            entries,
        });
    }
    look(SiteMessage::Picture(Taken::Before, 1));
    look(SiteMessage::Picture(Taken::After, 2));
    look(SiteMessage::Restored("34 cfm"));
    each_ground(&mut look);
    look(SiteMessage::OddsGrounds(0.12, 0.67));
    look(SiteMessage::AirflowGrounds("123 cfm"));
    look(SiteMessage::Worth {
        effort: 2.5,
        bits: 0.81,
    });
}

fn each_ground(look: &mut impl FnMut(SiteMessage<'_>)) {
    for measured in measured() {
        for conditions in conditions() {
            let reading = Reading {
                at: Spot::Outlet,
                measured: measured.clone(),
                conditions,
            };
            look(SiteMessage::CleanGrounds(CleanGrounds {
                reading: &reading,
                clean: &CLEAN,
                draws: 512,
            }));
        }
    }
}
