//! The finished example that the page opens with, and the blank plan.
//!
//! The laundry is invented; what people read of it (title, note, the name of the chimney breast)
//! comes from the caller.

use super::document::COMMON_CEILING;
use super::{
    AlongRun, BendMethod, CodeChoice, Dryer, Duct, Elbow, ElbowKind, Energy, Exhaust, Fitting,
    Flow, Handover, LegState, Level, Obstacle, ObstacleKind, Opening, OpeningKind, OutletSide,
    Phase, Plan, Point, Riser, RuleSetId, Run, RunPoint, Site, Termination, TerminationKind, Wall,
};
use crate::units::{Length, Pressure, Temperature};

const SEGMENTED_4_INCH: Elbow = Elbow {
    kind: ElbowKind::Segmented,
    radius: Length::from_inches(4.0),
};
const LEVEL: Fitting = Fitting {
    elbow: SEGMENTED_4_INCH,
    riser: None,
};

fn inches(x: f64, y: f64) -> Point {
    Point::new(
        Length::from_inches(x).metres(),
        Length::from_inches(y).metres(),
    )
}

fn wall(id: &str, from: Point, to: Point, outside: bool) -> Wall {
    Wall {
        id: id.into(),
        from_x_m: from.x,
        from_y_m: from.y,
        to_x_m: to.x,
        to_y_m: to.y,
        thickness: Length::from_inches(if outside { 6.0 } else { 4.5 }),
        outside,
    }
}

fn point(id: &str, position: Point, fitting: Fitting) -> RunPoint {
    RunPoint {
        id: id.into(),
        position,
        duct: Duct::Rigid,
        leg: LegState::default(),
        fitting,
    }
}

/// A laundry of 9 ft by 7 ft 6 in, invented: the run climbs behind the dryer, goes round a chimney
/// breast and leaves through the side wall, since a window is where the short way out would be.
pub fn example(title: String, note: String, breast: String) -> Plan {
    let riser = Riser {
        rise: Length::from_inches(58.0),
        elbow: SEGMENTED_4_INCH,
    };
    Plan {
        title,
        note,
        walls: vec![
            wall("w1", inches(-3.0, -3.0), inches(111.0, -3.0), true),
            wall("w2", inches(111.0, -3.0), inches(111.0, 92.25), true),
            wall("w3", inches(111.0, 92.25), inches(-3.0, 92.25), false),
            wall("w4", inches(-3.0, 92.25), inches(-3.0, -3.0), false),
        ],
        openings: vec![
            Opening {
                id: "o1".into(),
                wall: "w1".into(),
                kind: OpeningKind::Window,
                offset: Length::from_inches(8.0),
                width: Length::from_inches(36.0),
            },
            Opening {
                id: "o2".into(),
                wall: "w3".into(),
                kind: OpeningKind::Door,
                offset: Length::from_inches(14.0),
                width: Length::from_inches(32.0),
            },
        ],
        obstacles: vec![Obstacle {
            id: "b1".into(),
            name: breast,
            kind: ObstacleKind::ClosedArea,
            level: Level::Room,
            x_m: inches(58.0, 0.0).x,
            y_m: 0.0,
            width: Length::from_inches(16.0),
            depth: Length::from_inches(14.0),
        }],
        dryer: Dryer {
            x_m: inches(24.0, 0.0).x,
            y_m: inches(0.0, 28.0).y,
            width: Length::from_inches(27.0),
            depth: Length::from_inches(30.0),
            turned_deg: 0.0,
            outlet_height: Length::from_inches(5.0),
            outlet_side: OutletSide::Back,
            stacked: false,
            energy: Energy::Electric,
        },
        run: Run {
            diameter: Length::from_inches(4.0),
            outlet: LEVEL,
            points: vec![
                point(
                    "p1",
                    inches(24.0, 5.0),
                    Fitting {
                        elbow: SEGMENTED_4_INCH,
                        riser: Some(riser),
                    },
                ),
                point("p2", inches(48.0, 5.0), LEVEL),
                point("p3", inches(48.0, 22.0), LEVEL),
                point("p4", inches(114.0, 22.0), LEVEL),
            ],
            termination: Termination::clean(TerminationKind::WallHood),
        },
        ..blank(String::new())
    }
}

/// A dryer and a straight way out behind it, to be pulled into shape.
pub fn blank(title: String) -> Plan {
    Plan {
        title,
        note: String::new(),
        site: Site {
            altitude: Length::ZERO,
            outdoor_temperature: Temperature::from_celsius(10.0),
            outdoor_relative_humidity: 0.5,
            house_pressure: Pressure::ZERO,
            make_up_free_area_m2: None,
        },
        exhaust: Exhaust {
            temperature: Temperature::from_celsius(50.0),
            relative_humidity: 0.3,
            phase: Some(Phase::Drying),
            along_run: AlongRun::Cools,
        },
        flow: Flow::TypicalBlower {},
        code: CodeChoice::of(RuleSetId::Irc2021),
        bend_method: BendMethod::default(),
        overrides: Vec::new(),
        walls: Vec::new(),
        openings: Vec::new(),
        obstacles: Vec::new(),
        zones: Vec::new(),
        ceiling_height: COMMON_CEILING,
        picture: None,
        dryer: Dryer {
            x_m: inches(48.0, 0.0).x,
            y_m: inches(0.0, 66.0).y,
            width: Length::from_inches(27.0),
            depth: Length::from_inches(30.0),
            turned_deg: 0.0,
            outlet_height: Length::from_inches(5.0),
            outlet_side: OutletSide::Back,
            stacked: false,
            energy: Energy::Electric,
        },
        run: Run {
            diameter: Length::from_inches(4.0),
            outlet: LEVEL,
            points: vec![point("p1", inches(48.0, -3.0), LEVEL)],
            termination: Termination::clean(TerminationKind::WallHood),
        },
        visits: Vec::new(),
        handover: Handover::default(),
    }
}
