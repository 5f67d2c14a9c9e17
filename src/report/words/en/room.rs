//! The words of the room.

use crate::plan::{Clash, ClashWith, ObstacleKind, OpeningKind, Thing, ZoneKind};
use crate::scene::Snap;
use crate::units::UnitSystem;

/// A thing in one line: what it is, what it is called, how long.
pub(super) fn thing(units: UnitSystem, thing: &Thing<'_>) -> String {
    match thing {
        Thing::Wall(wall) => {
            let side = if wall.outside { "Outside" } else { "Inside" };
            format!(
                "{side} wall, {}",
                units.length(wall.from().distance(wall.to()))
            )
        }
        Thing::Opening(opening, _) => {
            format!(
                "{}, {}",
                self::opening(opening.kind),
                units.length(opening.width)
            )
        }
        Thing::Obstacle(it) => {
            let name = if it.name.is_empty() {
                obstacle(it.kind)
            } else {
                &it.name
            };
            format!(
                "{name}, {} by {}",
                units.length(it.width),
                units.length(it.depth)
            )
        }
        Thing::Zone(it) => format!("{}, {}", zone(it.kind), units.temperature(it.temperature)),
        Thing::Picture(_) => "Picture to trace".to_owned(),
        Thing::Dryer(_) => "Dryer".to_owned(),
        Thing::Run => "The whole run".to_owned(),
    }
}

fn opening(kind: OpeningKind) -> &'static str {
    match kind {
        OpeningKind::Window => "Window",
        OpeningKind::Door => "Door",
        OpeningKind::AirIntake => "Air intake",
    }
}

pub(super) fn obstacle(kind: ObstacleKind) -> &'static str {
    match kind {
        ObstacleKind::ClosedArea => "Closed area",
        ObstacleKind::Cabinet => "Cabinet",
        ObstacleKind::Beam => "Beam",
        ObstacleKind::Stack => "Stack",
        ObstacleKind::Framing { .. } => "Framing",
    }
}

pub(super) fn zone(kind: ZoneKind) -> &'static str {
    match kind {
        ZoneKind::Heated => "Heated room",
        ZoneKind::Garage => "Garage",
        ZoneKind::Attic => "Attic",
        ZoneKind::CrawlSpace => "Crawl space",
        ZoneKind::Outdoors => "Outdoors",
    }
}

pub(super) fn snap(snap: Snap) -> &'static str {
    match snap {
        Snap::Square => "square",
        Snap::Diagonal => "45°",
        Snap::InLine => "in line",
        Snap::WallEnd => "wall end",
        Snap::WallFace => "wall face",
        Snap::BetweenMembers => "between members",
    }
}

pub(super) fn clash(units: UnitSystem, clash: &Clash) -> String {
    let by = units.length(clash.by);
    match &clash.with {
        ClashWith::Wall => {
            format!("A leg runs {by} into a wall. Move it away from the wall, or through it.")
        }
        ClashWith::Members => {
            format!("A leg cuts {by} into studs or joists. Run it between them, the way they run.")
        }
        ClashWith::Obstacle(kind, name) => {
            let name = if name.is_empty() {
                obstacle(*kind)
            } else {
                name
            };
            format!("A leg cuts {by} into “{name}”. Lead it round.")
        }
    }
}
