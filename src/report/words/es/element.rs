//! The elements of a run: what they are and how large.

use crate::plan::{Duct, ElbowKind, TerminationKind};
use crate::system::ElementKind;
use crate::units::UnitSystem;

pub(super) fn element(kind: ElementKind) -> &'static str {
    match kind {
        ElementKind::Straight { duct, .. } => match duct {
            Duct::Rigid => "Tramo recto de ducto rígido",
            Duct::SemiRigid { .. } => "Ducto semirrígido",
            Duct::Foil { .. } => "Ducto flexible de aluminio",
            Duct::FlatRectangular { .. } => "Ducto rectangular plano",
        },
        ElementKind::Elbow { elbow, .. } => match elbow {
            ElbowKind::Smooth => "Codo liso",
            ElbowKind::Segmented => "Codo segmentado",
            ElbowKind::SharpMitre => "Codo a inglete",
            ElbowKind::BentFlexible => "Curva en ducto flexible",
        },
        ElementKind::AreaChange { area_ratio } if area_ratio > 1.0 => "Ampliación",
        ElementKind::AreaChange { .. } => "Reducción",
        ElementKind::Blockage { .. } => "Obstrucción",
        ElementKind::Leak { .. } => "Junta con fuga",
        ElementKind::WallBox => "Caja empotrada en la pared",
        ElementKind::ConcealedElbows { .. } => "Codos ocultos",
        ElementKind::Termination { termination, .. } => match termination {
            TerminationKind::WallHood => "Campana de pared",
            TerminationKind::LouvredHood => "Campana de persianas",
            TerminationKind::RoofCap => "Sombrerete de techo",
            TerminationKind::OpenEnd => "Extremo abierto",
        },
        ElementKind::MakeUpAir { .. } => "Abertura del aire de reposición",
    }
}

/// The article of an element's name.
pub(super) fn article(kind: ElementKind) -> &'static str {
    match kind {
        ElementKind::Straight { .. } => "el",
        ElementKind::Elbow { elbow, .. } => match elbow {
            ElbowKind::Smooth | ElbowKind::Segmented | ElbowKind::SharpMitre => "el",
            ElbowKind::BentFlexible => "la",
        },
        ElementKind::ConcealedElbows { .. } => "los",
        ElementKind::Termination { termination, .. } => match termination {
            TerminationKind::WallHood | TerminationKind::LouvredHood => "la",
            TerminationKind::RoofCap | TerminationKind::OpenEnd => "el",
        },
        ElementKind::AreaChange { .. }
        | ElementKind::Blockage { .. }
        | ElementKind::Leak { .. }
        | ElementKind::WallBox
        | ElementKind::MakeUpAir { .. } => "la",
    }
}

pub(super) fn element_size(units: UnitSystem, kind: ElementKind) -> String {
    match kind {
        ElementKind::Straight { length, duct } => match duct {
            Duct::SemiRigid {
                short_of_full_stretch_percent: percent,
            }
            | Duct::Foil {
                short_of_full_stretch_percent: percent,
            } if percent > 0.0 => {
                format!("{}, {percent:.0} % por estirar", units.length(length))
            }
            Duct::FlatRectangular { width, depth } => {
                let (width, depth) = (units.part_size(width), units.part_size(depth));
                format!("{}, {depth} por {width}", units.length(length))
            }
            _ => units.length(length).to_string(),
        },
        ElementKind::Elbow {
            angle,
            elbow: ElbowKind::SharpMitre,
            ..
        } => {
            format!("{:.0}°", angle.degrees())
        }
        ElementKind::Elbow { angle, radius, .. } => {
            format!("{:.0}°, radio {}", angle.degrees(), units.part_size(radius))
        }
        ElementKind::AreaChange { area_ratio } => format!("área multiplicada por {area_ratio:.2}"),
        ElementKind::Blockage { free_area } => format!("{:.0} % libre", free_area * 100.0),
        ElementKind::Leak { free_area_m2 } => {
            let (area, unit) = (units.small_area(free_area_m2), units.small_area_unit());
            format!("rendija de {area:.2} {unit}")
        }
        ElementKind::ConcealedElbows { least, most } => format!("{least} a {most} de 90°"),
        ElementKind::Termination { free_area, .. } if free_area < 1.0 => {
            format!("{:.0} % libre", free_area * 100.0)
        }
        ElementKind::Termination { .. } | ElementKind::WallBox => String::new(),
        ElementKind::MakeUpAir { free_area_m2 } => {
            let (area, unit) = (units.small_area(free_area_m2), units.small_area_unit());
            format!("{area:.0} {unit} libres")
        }
    }
}

/// `what` after a preposition, which runs into a masculine article: "del codo", "al codo".
pub(super) fn contracted(preposition: &str, what: &str) -> String {
    match what.strip_prefix("el ") {
        Some(rest) => format!("{preposition}l {rest}"),
        None => format!("{preposition} {what}"),
    }
}
