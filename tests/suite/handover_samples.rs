//! Messages of the handover sheet and the cut list, one and more of each kind; values are invented.

use crate::message_samples::{NAME, metres};
use elbowroom::plan::{Duct, ElbowKind, Metal, TerminationKind};
use elbowroom::report::cut_list::{PartKind, PipePiece};
use elbowroom::report::words::{HandoverLabel, HandoverMessage};
use elbowroom::units::Angle;

/// The fixed texts with a figure in them.
const WITH_FIGURES: [HandoverLabel; 6] = [
    HandoverLabel::StockHint,
    HandoverLabel::PrintHint,
    HandoverLabel::ColumnBand,
    HandoverLabel::ColumnLossLow,
    HandoverLabel::ColumnLossHigh,
    HandoverLabel::BandMeaning,
];

/// Looks at what is said on the handover sheet and in the cut list.
pub fn each_of_the_handover(mut look: impl FnMut(HandoverMessage<'_>)) {
    for label in WITH_FIGURES {
        look(HandoverMessage::Label(label));
    }
    let parts = parts_of_pipe().into_iter();
    for part in parts.chain(flexible_parts()).chain(other_parts()) {
        look(HandoverMessage::Part(&part));
        look(HandoverMessage::PartSize(&part));
    }
    look(HandoverMessage::CleanRun {
        airflow: "123 cfm",
        back_pressure: "0.456 in. w.c.",
    });
    look(HandoverMessage::Scale(24));
    for is_estimated in [false, true] {
        look(HandoverMessage::Cut(&PipePiece {
            element: 7,
            length: metres(0.83),
            is_estimated,
        }));
    }
    look(HandoverMessage::Allowance {
        crimped_end: metres(0.04),
    });
    for over_least in [None, Some(metres(0.3))] {
        look(HandoverMessage::Waste {
            bought: metres(4.5),
            used: metres(3.8),
            over_least,
        });
    }
    look(HandoverMessage::PutRight(NAME, "12.3", NAME));
    look(HandoverMessage::Settle(NAME, NAME));
    for count in [1, 5] {
        look(HandoverMessage::LookOnSite(count));
    }
    look(HandoverMessage::ChangeRun(NAME));
    look(HandoverMessage::Likely(NAME, "67 %"));
    look(HandoverMessage::MovesNow("76 %"));
    look(HandoverMessage::NothingWrong("89 %"));
    look(HandoverMessage::CodeFound("12", NAME));
}

fn parts_of_pipe() -> Vec<PartKind> {
    let pipe = |metal| PartKind::Pipe {
        diameter: metres(0.1),
        metal,
        stock: metres(1.5),
    };
    let elbow = |elbow| PartKind::Elbow {
        elbow,
        angle: Angle::from_degrees(67.0),
        radius: metres(0.15),
        diameter: metres(0.1),
    };
    let elbows = [
        ElbowKind::Smooth,
        ElbowKind::Segmented,
        ElbowKind::SharpMitre,
        ElbowKind::BentFlexible,
    ];
    let pipes = [Metal::Galvanized, Metal::Aluminium].map(pipe);
    let reducers = [(0.1, 0.15), (0.15, 0.1)].map(|(from, to)| PartKind::Reducer {
        from: metres(from),
        to: metres(to),
    });
    let round = pipes.into_iter().chain(elbows.map(elbow));
    round.chain(reducers).collect()
}

fn flexible_parts() -> Vec<PartKind> {
    let ducts = [
        Duct::SemiRigid {
            short_of_full_stretch_percent: 31.0,
        },
        Duct::Foil {
            short_of_full_stretch_percent: 0.0,
        },
    ];
    let flexible = |duct| {
        [true, false].map(|is_transition| PartKind::Flexible {
            duct,
            diameter: metres(0.1),
            is_transition,
        })
    };
    ducts.into_iter().flat_map(flexible).collect()
}

fn other_parts() -> Vec<PartKind> {
    let ends = [
        TerminationKind::WallHood,
        TerminationKind::LouvredHood,
        TerminationKind::RoofCap,
        TerminationKind::OpenEnd,
    ];
    let ends = ends.map(|termination| PartKind::Termination {
        termination,
        diameter: metres(0.1),
    });
    let rest = [
        PartKind::OffsetDuct {
            width: metres(0.2),
            depth: metres(0.05),
        },
        PartKind::WallBox,
        PartKind::Support {
            spacing: metres(3.6),
        },
        PartKind::Clamp,
        PartKind::FoilTape { joints: 1 },
        PartKind::FoilTape { joints: 8 },
        PartKind::ConcealedElbows { least: 2, most: 4 },
    ];
    ends.into_iter().chain(rest).collect()
}
