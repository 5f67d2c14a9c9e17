//! The words of the room.

use crate::plan::{Clash, ClashWith, ObstacleKind, OpeningKind, Thing, ZoneKind};
use crate::scene::Snap;
use crate::units::UnitSystem;

/// A thing in one line: what it is, what it is called, how long.
pub(super) fn thing(units: UnitSystem, thing: &Thing<'_>) -> String {
    match thing {
        Thing::Wall(wall) => {
            let side = if wall.outside { "exterior" } else { "interior" };
            format!(
                "Muro {side}, {}",
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
                "{name}, {} por {}",
                units.length(it.width),
                units.length(it.depth)
            )
        }
        Thing::Zone(it) => format!("{}, {}", zone(it.kind), units.temperature(it.temperature)),
        Thing::Picture(_) => "Imagen para calcar".to_owned(),
        Thing::Dryer(_) => "Secadora".to_owned(),
        Thing::Run => "Todo el recorrido".to_owned(),
    }
}

fn opening(kind: OpeningKind) -> &'static str {
    match kind {
        OpeningKind::Window => "Ventana",
        OpeningKind::Door => "Puerta",
        OpeningKind::AirIntake => "Toma de aire",
    }
}

pub(super) fn obstacle(kind: ObstacleKind) -> &'static str {
    match kind {
        ObstacleKind::ClosedArea => "Área cerrada",
        ObstacleKind::Cabinet => "Gabinete",
        ObstacleKind::Beam => "Viga",
        ObstacleKind::Stack => "Bajante",
        ObstacleKind::Framing { .. } => "Montantes o viguetas",
    }
}

pub(super) fn zone(kind: ZoneKind) -> &'static str {
    match kind {
        ZoneKind::Heated => "Cuarto con calefacción",
        ZoneKind::Garage => "Garaje",
        ZoneKind::Attic => "Ático",
        ZoneKind::CrawlSpace => "Espacio bajo el piso",
        ZoneKind::Outdoors => "Exterior",
    }
}

pub(super) fn snap(snap: Snap) -> &'static str {
    match snap {
        Snap::Square => "a escuadra",
        Snap::Diagonal => "45°",
        Snap::InLine => "alineado",
        Snap::WallEnd => "extremo del muro",
        Snap::WallFace => "cara del muro",
        Snap::BetweenMembers => "entre montantes o viguetas",
    }
}

pub(super) fn clash(units: UnitSystem, clash: &Clash) -> String {
    let by = units.length(clash.by);
    match &clash.with {
        ClashWith::Wall => {
            format!("Un tramo entra {by} en un muro. Aléjelo del muro o páselo a través.")
        }
        ClashWith::Members => format!(
            "Un tramo corta {by} de montantes o viguetas. Llévelo entre ellos, en su mismo sentido."
        ),
        ClashWith::Obstacle(kind, name) => {
            let name = if name.is_empty() {
                obstacle(*kind)
            } else {
                name
            };
            format!("Un tramo entra {by} en “{name}”. Llévelo alrededor.")
        }
    }
}
