//! Each rule in words for somebody without a code book: its name, what it asks, what was measured.

use super::code::spare;
use crate::plan::{OpeningKind, RuleTopic};
use crate::report::words::rule_figure::{self, measure, plain_limit};
use crate::rules::{Limit, Measure, RuleFinding};
use crate::units::UnitSystem;

pub(super) fn topic(topic: RuleTopic) -> &'static str {
    match topic {
        RuleTopic::Length => "Longitud del ducto de escape",
        RuleTopic::DuctSize => "Tamaño del ducto",
        RuleTopic::DuctMaterial => "Material del ducto",
        RuleTopic::DuctThickness => "Espesor del ducto",
        RuleTopic::TransitionLength => "Longitud del ducto de transición",
        RuleTopic::TransitionOnePiece => "Ducto de transición de una sola pieza",
        RuleTopic::TransitionConcealed => "Ducto de transición a la vista",
        RuleTopic::TransitionListing => "Listado del ducto de transición",
        RuleTopic::Supports => "Soportes",
        RuleTopic::Joints => "Juntas",
        RuleTopic::Fasteners => "Tornillos",
        RuleTopic::ShieldPlates => "Placas protectoras",
        RuleTopic::Label => "Etiqueta permanente",
        RuleTopic::OutdoorTermination => "Fin del recorrido",
        RuleTopic::BackdraftDamper => "Compuerta antirretorno",
        RuleTopic::NoScreen => "Sin malla",
        RuleTopic::OpenArea => "Área libre de la terminación",
        RuleTopic::OpeningDistance => "Distancia a las aberturas",
        RuleTopic::IntakeDistance => "Distancia a las tomas de aire",
        RuleTopic::PropertyLine => "Distancia al lindero",
        RuleTopic::ForbiddenOutlets => "Salidas prohibidas",
        RuleTopic::FireDampers => "Compuertas cortafuego",
        RuleTopic::PowerVentilators => "Ventiladores en el ducto",
        RuleTopic::MakeUpAir => "Aire de reposición",
        RuleTopic::ClosetOpening => "Secadora en un clóset",
        RuleTopic::OtherDucts => "Otros ductos",
        RuleTopic::GarageSeparation => "Garaje",
        RuleTopic::RatedAssemblies => "Muros y pisos con clasificación contra fuego",
        RuleTopic::StudSpaces => "Ducto entre montantes y viguetas",
        RuleTopic::UnusedDuct => "Ducto sin uso",
        RuleTopic::CleanOut => "Registro de limpieza",
        RuleTopic::SharedShaft => "Varios pisos en un mismo ducto",
        RuleTopic::MakerLength => "Longitud del fabricante de la secadora",
        RuleTopic::MakerBackPressure => "Contrapresión del fabricante de la secadora",
    }
}

#[allow(clippy::too_many_lines, reason = "one sentence a rule")]
pub(super) fn asks(units: UnitSystem, finding: &RuleFinding) -> String {
    let limit = || {
        finding
            .limit
            .map_or_else(String::new, |it| limit(units, it))
    };
    let text = match finding.topic {
        RuleTopic::Length => {
            "El ducto, desde el de transición hasta el exterior, solo puede medir cierta longitud, y cada \
             codo descuenta una parte de ella."
        }
        RuleTopic::DuctSize => "El ducto de escape es de 4 in (100 mm).",
        RuleTopic::DuctMaterial => {
            "El ducto de escape es metálico y liso por dentro: nada de ducto flexible después del de \
             transición."
        }
        RuleTopic::DuctThickness => {
            return format!(
                "El metal del ducto tiene un espesor de {} (calibre 28).",
                limit()
            );
        }
        RuleTopic::TransitionLength => {
            return format!(
                "El ducto de transición, la pieza flexible detrás de la secadora, mide {}.",
                limit()
            );
        }
        RuleTopic::TransitionOnePiece => "El ducto de transición es una sola pieza, no dos unidas.",
        RuleTopic::TransitionConcealed => {
            "El ducto de transición queda a la vista: no atraviesa ningún muro, piso ni techo."
        }
        RuleTopic::TransitionListing => {
            "El ducto de transición está listado para secadoras (UL 2158A); lo lleva impreso."
        }
        RuleTopic::Supports => return supports(units, finding),
        RuleTopic::Joints => {
            "Las juntas del ducto están selladas, y cada extremo macho apunta en el sentido del aire."
        }
        RuleTopic::Fasteners if finding.limit.is_some() => {
            return format!("Los tornillos y remaches entran en el ducto {}.", limit());
        }
        RuleTopic::Fasteners => "Ningún tornillo entra en el ducto, donde atraparía pelusa.",
        RuleTopic::ShieldPlates => {
            return format!(
                "Donde el ducto está a menos de {} de la cara de los montantes o viguetas, lo protegen de \
                 los clavos placas de acero de 0.062 in (1.6 mm), que rebasan 2 in (50 mm) la estructura.",
                plain_limit(units, finding)
            );
        }
        RuleTopic::Label => {
            "Una etiqueta permanente a no más de 6 ft (1.8 m) de la conexión del ducto indica la longitud \
             equivalente."
        }
        RuleTopic::OutdoorTermination => {
            "El recorrido termina en el exterior y sirve solo a esta secadora."
        }
        RuleTopic::BackdraftDamper => {
            "Una compuerta antirretorno en la terminación se cierra cuando la secadora se detiene. Un \
             extremo abierto no la tiene."
        }
        RuleTopic::NoScreen => "No hay malla en la terminación, donde se juntaría la pelusa.",
        RuleTopic::OpenArea => {
            return format!(
                "El área libre de la terminación, con su compuerta abierta, es de {}.",
                limit()
            );
        }
        RuleTopic::OpeningDistance => {
            return format!(
                "La terminación está a {} de {}, salvo que el fabricante de la secadora indique otra cosa.",
                limit(),
                opening(
                    finding,
                    "ventanas, puertas y otras aberturas hacia el edificio"
                )
            );
        }
        RuleTopic::IntakeDistance => {
            return format!(
                "La terminación está a {} de {}. Es una regla general sobre escapes, citada de memoria.",
                limit(),
                opening(finding, "las tomas de aire del edificio")
            );
        }
        RuleTopic::PropertyLine => {
            return format!(
                "La terminación está a {} del lindero. Es una regla general sobre escapes, citada de \
                 memoria.",
                limit()
            );
        }
        RuleTopic::ForbiddenOutlets => {
            "El recorrido no termina en un ático, un espacio bajo el piso, un respiradero de alero o de \
             cumbrera, una chimenea, un conducto de gases de combustión ni otro ducto."
        }
        RuleTopic::FireDampers => "No hay compuerta cortafuego en el ducto.",
        RuleTopic::PowerVentilators => {
            "No hay ventilador auxiliar en el ducto. Se permite uno listado para secadoras (UL 705), y \
             entonces rige su propia longitud máxima."
        }
        RuleTopic::MakeUpAir => {
            return format!(
                "Una secadora que mueve más de {} necesita que se lleve aire de reposición a su cuarto.",
                plain_limit(units, finding)
            );
        }
        RuleTopic::ClosetOpening => {
            return format!(
                "Un clóset hecho para una secadora tiene una abertura para el aire de {}.",
                limit()
            );
        }
        RuleTopic::OtherDucts => "El ducto no pasa por otro ducto ni por un pleno.",
        RuleTopic::GarageSeparation => {
            "Donde el ducto atraviesa el muro o el techo entre la casa y el garaje, es de acero calibre 26 y \
             no tiene aberturas hacia el garaje."
        }
        RuleTopic::RatedAssemblies => {
            "Donde el ducto atraviesa un muro o un piso con clasificación contra fuego, el hueco está \
             sellado."
        }
        RuleTopic::StudSpaces => "El ducto cabe entre montantes y viguetas sin aplastarse.",
        RuleTopic::UnusedDuct => "Un ducto sin uso está tapado y marcado.",
        RuleTopic::CleanOut => "Cada tramo vertical tiene un registro de limpieza.",
        RuleTopic::SharedShaft => {
            "Las secadoras de varios pisos comparten un ducto solo en un pozo vertical con diseño de \
             ingeniería."
        }
        RuleTopic::MakerLength => {
            "Las instrucciones de la secadora permiten cierta longitud de ducto, con las deducciones del \
             propio fabricante para los codos. Los códigos pueden dejar que rijan en lugar de su propia \
             longitud."
        }
        RuleTopic::MakerBackPressure => {
            "Las instrucciones de la secadora permiten cierta presión estática en la salida con la \
             secadora en marcha."
        }
    };
    text.to_owned()
}

fn supports(units: UnitSystem, finding: &RuleFinding) -> String {
    let spacing = plain_limit(units, finding);
    match finding.measured {
        Some(Measure::Count(count)) => format!(
            "El ducto se sujeta al menos cada {spacing}: {count} {} para lo dibujado.",
            if count == 1 { "soporte" } else { "soportes" }
        ),
        _ => format!("El ducto se sujeta al menos cada {spacing}."),
    }
}

fn opening(finding: &RuleFinding, all: &'static str) -> &'static str {
    match finding.opening.as_ref().map(|opening| opening.kind) {
        Some(OpeningKind::Window) => "esta ventana",
        Some(OpeningKind::Door) => "esta puerta",
        Some(OpeningKind::AirIntake) => "esta toma de aire",
        None => all,
    }
}

/// What was measured, its limit, and the margin.
pub(super) fn measured(units: UnitSystem, finding: &RuleFinding) -> String {
    // Supports are counted for information; their limit is of another kind.
    let (Some(found), false) = (finding.measured, finding.topic == RuleTopic::Supports) else {
        return String::new();
    };
    let is_transition = matches!(
        finding.topic,
        RuleTopic::TransitionLength | RuleTopic::TransitionOnePiece
    );
    if is_transition && finding.elements.is_empty() {
        return "No hay ducto de transición dibujado.".to_owned();
    }
    if let (Measure::Count(count), Some(asked)) = (found, finding.limit) {
        let drawn = match count {
            0 => "ninguno".to_owned(),
            count => count.to_string(),
        };
        let what = match finding.topic {
            RuleTopic::DuctMaterial => "Tramos flexibles después del ducto de transición",
            RuleTopic::TransitionOnePiece => "Tramos de ducto de transición",
            _ => "Según lo dibujado",
        };
        return format!("{what}: {drawn}; se permite: {}.", limit(units, asked));
    }
    let found = measure(units, found);
    let Some(limit) = finding.limit else {
        return format!("Se midió {found}.");
    };
    let asked = self::limit(units, limit);
    match finding.margin {
        Some(margin) if !matches!(limit, Limit::Nominally(_)) => {
            let margin = spare(rule_figure::margin(units, margin, limit));
            format!("Se midió {found}; se exige {asked}; {margin}.")
        }
        _ => format!("Se midió {found}; se exige {asked}."),
    }
}

fn limit(units: UnitSystem, limit: Limit) -> String {
    match limit {
        Limit::AtMost(Measure::Count(0)) => "ninguno".to_owned(),
        Limit::AtMost(it) => format!("{} como máximo", measure(units, it)),
        Limit::AtLeast(it) => format!("{} como mínimo", measure(units, it)),
        Limit::Nominally(it) => format!("{} nominales", measure(units, it)),
    }
}
