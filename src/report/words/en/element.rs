//! The elements of a run: what they are and how large.

use crate::plan::{Duct, ElbowKind, TerminationKind};
use crate::system::ElementKind;
use crate::units::UnitSystem;

pub(super) fn element(kind: ElementKind) -> &'static str {
    match kind {
        ElementKind::Straight { duct, .. } => match duct {
            Duct::Rigid => "Straight, rigid duct",
            Duct::SemiRigid { .. } => "Semi-rigid duct",
            Duct::Foil { .. } => "Foil duct",
            Duct::FlatRectangular { .. } => "Flat rectangular duct",
        },
        ElementKind::Elbow { elbow, .. } => match elbow {
            ElbowKind::Smooth => "Smooth elbow",
            ElbowKind::Segmented => "Segmented elbow",
            ElbowKind::SharpMitre => "Sharp mitre elbow",
            ElbowKind::BentFlexible => "Bend in flexible duct",
        },
        ElementKind::AreaChange { area_ratio } if area_ratio > 1.0 => "Enlargement",
        ElementKind::AreaChange { .. } => "Contraction",
        ElementKind::Blockage { .. } => "Blockage",
        ElementKind::Leak { .. } => "Leaking joint",
        ElementKind::WallBox => "Recessed wall box",
        ElementKind::ConcealedElbows { .. } => "Concealed elbows",
        ElementKind::Termination { termination, .. } => match termination {
            TerminationKind::WallHood => "Wall hood",
            TerminationKind::LouvredHood => "Louvred hood",
            TerminationKind::RoofCap => "Roof cap",
            TerminationKind::OpenEnd => "Open end",
        },
        ElementKind::MakeUpAir { .. } => "Make-up air opening",
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
                format!(
                    "{}, {percent:.0} % short of full stretch",
                    units.length(length)
                )
            }
            Duct::FlatRectangular { width, depth } => {
                let (width, depth) = (units.part_size(width), units.part_size(depth));
                format!("{}, {depth} by {width}", units.length(length))
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
            format!(
                "{:.0}°, radius {}",
                angle.degrees(),
                units.part_size(radius)
            )
        }
        ElementKind::AreaChange { area_ratio } => format!("area times {area_ratio:.2}"),
        ElementKind::Blockage { free_area } => format!("{:.0} % free", free_area * 100.0),
        ElementKind::Leak { free_area_m2 } => {
            let (area, unit) = (units.small_area(free_area_m2), units.small_area_unit());
            format!("gap of {area:.2} {unit}")
        }
        ElementKind::ConcealedElbows { least, most } => format!("{least} to {most} of 90°"),
        ElementKind::Termination { free_area, .. } if free_area < 1.0 => {
            format!("{:.0} % free", free_area * 100.0)
        }
        ElementKind::Termination { .. } | ElementKind::WallBox => String::new(),
        ElementKind::MakeUpAir { free_area_m2 } => {
            let (area, unit) = (units.small_area(free_area_m2), units.small_area_unit());
            format!("{area:.0} {unit} free")
        }
    }
}
