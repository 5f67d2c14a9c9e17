//! Messages with values in them, one and more of each kind: what the languages are held against each
//! other with. Values are invented; each is a figure that a text can be found by.

use elbowroom::plan::{
    Axis, Clash, ClashWith, Duct, ElbowKind, ElementId, Input, ObstacleKind, TerminationKind,
    ZoneKind,
};
use elbowroom::report::words::Message;
use elbowroom::rules::{Deciding, Doubt};
use elbowroom::scene::{Snap, Text};
use elbowroom::system::{ElementKind, Finding, InsulationUpgrade, LowPoint, WetStretch};
use elbowroom::units::{Airflow, Angle, Length, MassFlow, Temperature, Velocity};

/// A name that stands in no text.
pub const NAME: &str = "qxz17";

pub fn metres(length: f64) -> Length {
    Length::from_metres(length)
}

pub fn airflow(airflow: f64) -> Airflow {
    Airflow::from_cubic_metres_per_second(airflow)
}

fn velocity(velocity: f64) -> Velocity {
    Velocity::from_metres_per_second(velocity)
}

pub fn element() -> ElementId {
    ElementId::from_key("leg:p1").unwrap()
}

/// Every kind of element, and both states where it has two.
pub fn elements() -> Vec<ElementKind> {
    let ducts = [
        Duct::Rigid,
        Duct::SemiRigid {
            short_of_full_stretch_percent: 31.0,
        },
        Duct::Foil {
            short_of_full_stretch_percent: 0.0,
        },
        Duct::FlatRectangular {
            width: metres(0.2),
            depth: metres(0.05),
        },
    ];
    let elbows = [
        ElbowKind::Smooth,
        ElbowKind::Segmented,
        ElbowKind::SharpMitre,
        ElbowKind::BentFlexible,
    ];
    let ends = [
        TerminationKind::WallHood,
        TerminationKind::LouvredHood,
        TerminationKind::RoofCap,
        TerminationKind::OpenEnd,
    ];
    let straight = |duct| ElementKind::Straight {
        length: metres(2.345),
        duct,
    };
    let elbow = |elbow| ElementKind::Elbow {
        angle: Angle::from_degrees(67.0),
        elbow,
        radius: metres(0.15),
    };
    let end = |termination| ElementKind::Termination {
        termination,
        free_area: 0.43,
    };
    let rest = [
        ElementKind::Termination {
            termination: TerminationKind::WallHood,
            free_area: 1.0,
        },
        ElementKind::AreaChange { area_ratio: 1.56 },
        ElementKind::AreaChange { area_ratio: 0.64 },
        ElementKind::Blockage { free_area: 0.37 },
        ElementKind::Leak {
            free_area_m2: 0.0005,
        },
        ElementKind::WallBox,
        ElementKind::ConcealedElbows { least: 2, most: 4 },
        ElementKind::MakeUpAir { free_area_m2: 0.03 },
    ];
    let ducts = ducts.map(straight).into_iter();
    let parts = ducts.chain(elbows.map(elbow)).chain(ends.map(end));
    parts.chain(rest).collect()
}

pub fn texts_of_the_drawing() -> Vec<Text> {
    let snaps = [
        Snap::Square,
        Snap::Diagonal,
        Snap::InLine,
        Snap::WallEnd,
        Snap::WallFace,
        Snap::BetweenMembers,
    ];
    let zones = [
        ZoneKind::Heated,
        ZoneKind::Garage,
        ZoneKind::Attic,
        ZoneKind::CrawlSpace,
        ZoneKind::Outdoors,
    ];
    let zone = |kind| Text::Zone(kind, Temperature::from_celsius(13.0));
    let rest = [
        Text::LegLength(metres(1.234)),
        Text::Rise(metres(1.5)),
        Text::Rise(metres(-1.5)),
        Text::Height(metres(-0.2)),
        Text::Rank(3),
        Text::Suspect(1),
        Text::Dryer,
        Text::Name(NAME.to_owned()),
    ];
    let obstacles = obstacles().map(Text::Obstacle);
    let marks = rest.into_iter().chain(obstacles);
    let marks = marks.chain(zones.map(zone));
    marks.chain(snaps.map(Text::Snap)).collect()
}

fn obstacles() -> [ObstacleKind; 5] {
    [
        ObstacleKind::ClosedArea,
        ObstacleKind::Cabinet,
        ObstacleKind::Beam,
        ObstacleKind::Stack,
        ObstacleKind::Framing {
            members: Axis::AlongX,
            spacing: metres(0.4),
        },
    ]
}

pub fn findings() -> Vec<Finding> {
    let stretch = WetStretch {
        element: element(),
        from: metres(1.25),
        to: metres(2.75),
        coldest_wall: Temperature::from_celsius(7.0),
        water: MassFlow::from_kilograms_per_second(1e-4),
    };
    let dip = |water: f64| {
        Finding::Dip(LowPoint {
            element: element(),
            depth: metres(0.31),
            water: MassFlow::from_kilograms_per_second(water),
        })
    };
    let clash = |with| {
        Finding::NoRoom(Clash {
            element: element(),
            with,
            by: metres(0.11),
        })
    };
    let leak = |escaped: f64| Finding::JointLeaks {
        element: element(),
        escaped: airflow(escaped),
    };
    vec![
        Finding::ElbowsOverlap {
            element: element(),
            overlap: metres(0.07),
        },
        Finding::ElbowsClose {
            element: element(),
            gap_diameters: 1.7,
        },
        Finding::PointsCoincide {
            node: element().node,
        },
        Finding::OutsideSource { element: element() },
        clash(ClashWith::Wall),
        clash(ClashWith::Members),
        clash(ClashWith::Obstacle(ObstacleKind::Beam, String::new())),
        clash(ClashWith::Obstacle(ObstacleKind::Beam, NAME.to_owned())),
        leak(0.004),
        leak(-0.004),
        Finding::WetWall {
            stretch: stretch.clone(),
            freezes: true,
        },
        Finding::WetWall {
            stretch,
            freezes: false,
        },
        dip(0.0),
        dip(2e-5),
        Finding::SlowAir {
            element: element(),
            velocity: velocity(3.3),
            carries: velocity(6.1),
        },
        Finding::UpsizingSlows {
            element: element(),
            before: velocity(6.6),
            after: velocity(4.4),
        },
        Finding::TransitionalFlow,
        Finding::NoAirflow,
    ]
}

pub fn upgrades() -> [InsulationUpgrade; 4] {
    [
        InsulationUpgrade::AlreadyDry,
        InsulationUpgrade::Resistance {
            resistance_m2_k_per_w: 0.71,
        },
        InsulationUpgrade::NotByInsulation,
        InsulationUpgrade::Unknown,
    ]
}

pub fn doubts() -> [Doubt; 8] {
    [
        Doubt::RadiusBelowTable,
        Doubt::DiameterNotInTable,
        Doubt::FlexibleInRun,
        Doubt::EstimatedLength,
        Doubt::ElbowsOverlap,
        Doubt::AngleNotNamed,
        Doubt::MakerElbowNotTyped,
        Doubt::LimitNotTyped,
    ]
}

pub fn deciding() -> Vec<Deciding> {
    let deduction = |doubt, elbows| Deciding::ElbowDeduction {
        doubt,
        element: element(),
        elbows,
        at_most: metres(0.52),
    };
    let part = |doubt| Deciding::Part {
        doubt,
        element: element(),
    };
    let input = |turns_at| move |input| Deciding::Input { input, turns_at };
    let length = |at_most| Deciding::Length {
        element: element(),
        at_most: metres(at_most),
    };
    let elbows = |at_most| Deciding::Elbows {
        element: element(),
        at_most,
    };
    let rest = [
        length(-1.0),
        length(3.21),
        elbows(Some(3)),
        elbows(None),
        Deciding::MakerLength,
        Deciding::OpeningHeight {
            differs_by: metres(0.47),
        },
        Deciding::RectangularDuct { element: element() },
        Deciding::Airflow,
    ];
    let deductions = doubts().map(|doubt| deduction(doubt, 1)).into_iter();
    let deductions = deductions.chain(doubts().map(|doubt| deduction(doubt, 3)));
    let inputs = Input::ALL.map(input(None)).into_iter();
    let inputs = inputs.chain(Input::ALL.map(input(Some(0.37))));
    let found = rest.into_iter().chain(deductions).chain(inputs);
    found.chain(doubts().map(part)).collect()
}

/// Messages that hold a few words or figures of their own.
pub fn each_of_the_rest(mut look: impl FnMut(Message<'_>)) {
    let (elbow, hood) = (elements().remove(4), elements().remove(8));
    let limit = Some(metres(10.668));
    for (length, limit) in [(9.0, limit), (12.0, limit), (9.0, None)] {
        look(Message::CodeLength {
            length: metres(length),
            limit,
        });
    }
    let parted = [
        (None, None),
        (
            Some((&elbow, metres(2.2), metres(1.1))),
            Some((&hood, metres(3.3))),
        ),
        (Some((&elbow, metres(1.1), metres(2.2))), None),
    ];
    for (most, uncounted) in parted {
        look(Message::Disagreement {
            air: metres(21.0),
            code: metres(9.0),
            most,
            uncounted,
        });
    }
    for (rank, code_deduction) in [(1, None), (2, Some(metres(1.5)))] {
        look(Message::Dominant {
            rank,
            element: &elbow,
            share: 0.34,
            equivalent_length: metres(4.5),
            code_deduction,
        });
    }
    for (meet, not, open) in [(1, 1, 1), (7, 2, 3), (5, 0, 0)] {
        look(Message::FindingsCount { meet, not, open });
    }
    for most in [7.0, 6.0] {
        look(Message::CodeLengthSpan {
            least: metres(6.0),
            most: metres(most),
        });
    }
    for factor in [3.4, 12.3] {
        look(Message::Times(factor));
    }
    look(Message::Water(MassFlow::from_kilograms_per_second(3e-5)));
    look(Message::SeenOnSite { seen: 3, of: 11 });
    look(Message::BandFormula { samples: 512 });
    look(Message::Band {
        low: "12",
        high: "34 Pa",
    });
    look(Message::NewTotals {
        airflow: "123 cfm",
        back_pressure: "0.456 in. w.c.",
    });
    look(Message::NotANumber { text: NAME });
    look(Message::NotACount { text: NAME });
    look(Message::ThingsSelected(3));
    look(Message::RunInOrder {
        outlet_height: metres(-0.3),
        elements: &run_in_order(),
        end_height: metres(2.6),
    });
}

/// Every kind of element as a run tells it; the first one rises.
fn run_in_order() -> Vec<(ElementKind, Option<Length>)> {
    let rise = |index| (index == 0).then(|| metres(1.6));
    let numbered = elements().into_iter().enumerate();
    numbered.map(|(index, kind)| (kind, rise(index))).collect()
}
