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
            "Según el cálculo, este recorrido, cuando está limpio, mueve {airflow} de aire con una \
             contrapresión de {back_pressure} en la salida de la secadora."
        ),
        HandoverMessage::Scale(scale) => format!("Escala 1:{scale}, imprima al 100 %"),
        HandoverMessage::Cut(PipePiece {
            element,
            length,
            is_estimated,
        }) => {
            let measure = if *is_estimated {
                ", estimado: mida primero"
            } else {
                ""
            };
            format!("{} (elemento {element}{measure})", units.length(*length))
        }
        HandoverMessage::Allowance { crimped_end } => format!(
            "El largo de un corte es la parte recta entre los extremos de sus accesorios más {} del \
             extremo macho, el engarzado, que entra en la pieza siguiente; los extremos macho apuntan en el \
             sentido del aire. El largo comercial incluye el suyo. Práctica común, sin fuente: pruebe una \
             junta antes de cortar.",
            units.part_size(crimped_end)
        ),
        HandoverMessage::Waste {
            bought,
            used,
            over_least,
        } => {
            let least = match over_least {
                None => "Comprar menos no alcanzaría.".to_owned(),
                Some(over) => format!("Como máximo, {} más que lo mínimo.", units.length(over)),
            };
            format!(
                "Se compran {}, se usan {}, sobran {}. {least}",
                units.length(bought),
                units.length(used),
                units.length(bought - used)
            )
        }
        HandoverMessage::PutRight(topic, section, asks) => {
            format!("Corrija: {topic} ({section}). {asks}")
        }
        HandoverMessage::Settle(topic, what) => format!("Aclare: {topic}. {what}"),
        HandoverMessage::LookOnSite(1) => {
            "Verifique en el sitio una regla que un dibujo no puede mostrar.".to_owned()
        }
        HandoverMessage::LookOnSite(count) => {
            format!("Verifique en el sitio {count} reglas que un dibujo no puede mostrar.")
        }
        HandoverMessage::ChangeRun(what) => format!("Cambie el recorrido: {what}"),
        HandoverMessage::Likely(cause, odds) => format!("Falla más probable: {cause} ({odds})."),
        HandoverMessage::MovesNow(share) => format!(
            "Según las lecturas, el recorrido mueve ahora {share} del flujo de aire que movería limpio."
        ),
        HandoverMessage::NothingWrong(odds) => {
            format!("Según las lecturas, el recorrido no tiene ninguna falla ({odds}).")
        }
        HandoverMessage::CodeFound(counts, set) => {
            format!("Revisión del código ({set}): {counts}.")
        }
    }
}

fn part(part: &PartKind) -> &'static str {
    match part {
        PartKind::Pipe { metal, .. } => match metal {
            Metal::Galvanized => "Ducto redondo, acero galvanizado",
            Metal::Aluminium => "Ducto redondo, aluminio",
        },
        PartKind::Elbow { elbow, .. } => match elbow {
            ElbowKind::Smooth => "Codo liso",
            ElbowKind::Segmented => "Codo segmentado o ajustable",
            ElbowKind::SharpMitre => "Codo a inglete, de arista viva",
            ElbowKind::BentFlexible => "Curva en ducto flexible",
        },
        PartKind::Reducer { from, to } if to > from => "Ampliación",
        PartKind::Reducer { .. } => "Reducción",
        PartKind::Flexible {
            duct,
            is_transition,
            ..
        } => match (duct, is_transition) {
            (Duct::SemiRigid { .. }, true) => "Ducto de transición, semirrígido",
            (Duct::SemiRigid { .. }, false) => "Ducto semirrígido",
            (_, true) => "Ducto de transición, flexible de aluminio",
            (_, false) => "Ducto flexible de aluminio",
        },
        PartKind::OffsetDuct { .. } => "Ducto rectangular plano, para desvío",
        PartKind::WallBox => element(ElementKind::WallBox),
        PartKind::Termination { termination, .. } => element(ElementKind::Termination {
            termination: *termination,
            free_area: 1.0,
        }),
        PartKind::Support { .. } => "Soportes",
        PartKind::Clamp => "Abrazaderas",
        PartKind::FoilTape { .. } => "Cinta de aluminio",
        PartKind::ConcealedElbows { .. } => "Codos ocultos, ya instalados",
    }
}

fn part_size(units: UnitSystem, part: &PartKind) -> String {
    let small = |length: Length| units.part_size(length);
    match part {
        PartKind::Pipe {
            diameter, stock, ..
        } => format!("{} por {}", small(*diameter), units.length(*stock)),
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
            "{}, {:.0}°, radio {}",
            small(*diameter),
            angle.degrees(),
            small(*radius)
        ),
        PartKind::Reducer { from, to } => format!("{} a {}", small(*from), small(*to)),
        PartKind::Flexible { diameter, .. } | PartKind::Termination { diameter, .. } => {
            small(*diameter).to_string()
        }
        PartKind::OffsetDuct { width, depth } => {
            format!("{} por {}", small(*depth), small(*width))
        }
        PartKind::Support { spacing } => format!("cada {} como máximo", units.length(*spacing)),
        PartKind::FoilTape { joints: 1 } => "una junta".to_owned(),
        PartKind::FoilTape { joints } => format!("{joints} juntas"),
        PartKind::ConcealedElbows { least, most } => format!("{least} a {most} de 90°"),
        PartKind::WallBox | PartKind::Clamp => String::new(),
    }
}
