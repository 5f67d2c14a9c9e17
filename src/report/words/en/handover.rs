//! The handover sheet, the cut list and the files that leave the page.

use super::element::element;
use super::handover_label::handover_label;
use crate::plan::{Duct, ElbowKind, Metal};
use crate::report::cut_list::{PartKind, PipePiece};
use crate::report::words::HandoverMessage;
use crate::system::ElementKind;
use crate::units::{Length, UnitSystem};

pub(super) fn handover(units: UnitSystem, message: HandoverMessage<'_>) -> String {
    match message {
        HandoverMessage::Label(key) => handover_label(key).to_owned(),
        HandoverMessage::Part(part) => self::part(part).to_owned(),
        HandoverMessage::PartSize(part) => part_size(units, part),
        HandoverMessage::CleanRun {
            airflow,
            back_pressure,
        } => format!(
            "Clean, this run is predicted to move {airflow} of air, at a back pressure of \
             {back_pressure} at the dryer's outlet."
        ),
        HandoverMessage::Scale(scale) => format!("Scale 1:{scale}, print at 100 %"),
        HandoverMessage::Cut(PipePiece {
            element,
            length,
            is_estimated,
        }) => {
            let measure = if *is_estimated {
                ", estimated: measure first"
            } else {
                ""
            };
            format!("{} (part {element}{measure})", units.length(*length))
        }
        HandoverMessage::Allowance { crimped_end } => format!(
            "A cut length is the straight between the ends of its fittings and {} for the crimped end \
             that goes into the next part, crimped ends pointing the way the air goes. Stock is counted \
             with its crimped end. Common practice, no source: try one joint before cutting.",
            units.part_size(crimped_end)
        ),
        HandoverMessage::Waste {
            bought,
            used,
            over_least,
        } => {
            let least = match over_least {
                None => "Nothing less could be bought.".to_owned(),
                Some(over) => format!("At most {} over the least.", units.length(over)),
            };
            format!(
                "{} bought, {} used, {} left over. {least}",
                units.length(bought),
                units.length(used),
                units.length(bought - used)
            )
        }
        HandoverMessage::PutRight(topic, section, asks) => {
            format!("Put right: {topic} ({section}). {asks}")
        }
        HandoverMessage::Settle(topic, what) => format!("Settle: {topic}. {what}"),
        HandoverMessage::LookOnSite(1) => {
            "Look on site at one rule that a drawing cannot show.".to_owned()
        }
        HandoverMessage::LookOnSite(count) => {
            format!("Look on site at {count} rules that a drawing cannot show.")
        }
        HandoverMessage::ChangeRun(what) => format!("Change the run: {what}"),
        HandoverMessage::Likely(cause, odds) => format!("Most likely fault: {cause} ({odds})."),
        HandoverMessage::MovesNow(share) => {
            format!("By the readings the run now moves {share} of its clean airflow.")
        }
        HandoverMessage::NothingWrong(odds) => {
            format!("By the readings nothing is wrong with the run ({odds}).")
        }
        HandoverMessage::CodeFound(counts, set) => format!("Code check by {set}: {counts}."),
    }
}

fn part(part: &PartKind) -> &'static str {
    match part {
        PartKind::Pipe { metal, .. } => match metal {
            Metal::Galvanized => "Round pipe, galvanized",
            Metal::Aluminium => "Round pipe, aluminum",
        },
        PartKind::Elbow { elbow, .. } => match elbow {
            ElbowKind::Smooth => "Elbow, smooth",
            ElbowKind::Segmented => "Elbow, segmented or adjustable",
            ElbowKind::SharpMitre => "Elbow, sharp mitre",
            ElbowKind::BentFlexible => "Bend in flexible duct",
        },
        PartKind::Reducer { from, to } if to > from => "Increaser",
        PartKind::Reducer { .. } => "Reducer",
        PartKind::Flexible {
            duct,
            is_transition,
            ..
        } => match (duct, is_transition) {
            (Duct::SemiRigid { .. }, true) => "Transition duct, semi-rigid",
            (Duct::SemiRigid { .. }, false) => "Semi-rigid duct",
            (_, true) => "Transition duct, foil",
            (_, false) => "Foil duct",
        },
        PartKind::OffsetDuct { .. } => "Flat rectangular offset duct",
        PartKind::WallBox => element(ElementKind::WallBox),
        PartKind::Termination { termination, .. } => element(ElementKind::Termination {
            termination: *termination,
            free_area: 1.0,
        }),
        PartKind::Support { .. } => "Supports",
        PartKind::Clamp => "Clamps",
        PartKind::FoilTape { .. } => "Foil tape",
        PartKind::ConcealedElbows { .. } => "Concealed elbows, there already",
    }
}

fn part_size(units: UnitSystem, part: &PartKind) -> String {
    let small = |length: Length| units.part_size(length);
    match part {
        PartKind::Pipe {
            diameter, stock, ..
        } => format!("{} by {}", small(*diameter), units.length(*stock)),
        PartKind::Elbow {
            elbow: ElbowKind::SharpMitre,
            angle,
            diameter,
            ..
        } => format!("{}, {:.0}°", small(*diameter), angle.degrees()),
        PartKind::Elbow {
            angle,
            radius,
            diameter,
            ..
        } => format!(
            "{}, {:.0}°, radius {}",
            small(*diameter),
            angle.degrees(),
            small(*radius)
        ),
        PartKind::Reducer { from, to } => format!("{} to {}", small(*from), small(*to)),
        PartKind::Flexible { diameter, .. } | PartKind::Termination { diameter, .. } => {
            small(*diameter).to_string()
        }
        PartKind::OffsetDuct { width, depth } => {
            format!("{} by {}", small(*depth), small(*width))
        }
        PartKind::Support { spacing } => format!("at most {} apart", units.length(*spacing)),
        PartKind::FoilTape { joints: 1 } => "one joint".to_owned(),
        PartKind::FoilTape { joints } => format!("{joints} joints"),
        PartKind::ConcealedElbows { least, most } => format!("{least} to {most} of 90°"),
        PartKind::WallBox | PartKind::Clamp => String::new(),
    }
}
