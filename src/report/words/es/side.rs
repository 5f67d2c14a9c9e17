//! What is said about two runs side by side, lessons and links.

use super::trouble::file;
use super::{Label, label, lower_first};
use crate::plan::{
    Difference, Duct, Elbow, ElbowKind, LegDifference, LessonError, LessonPart, LinkError, Part,
    Quantity, TerminationKind,
};
use crate::report::words::SideMessage;
use crate::units::{Length, UnitSystem};

pub(super) fn side(units: UnitSystem, message: SideMessage<'_>) -> String {
    match message {
        SideMessage::Quantity(quantity) => self::quantity(quantity).to_owned(),
        SideMessage::DifferenceCount(0) => "No difieren en nada.".to_owned(),
        SideMessage::DifferenceCount(1) => {
            "Difieren en una sola cosa: a ella se debe la diferencia de las cifras.".to_owned()
        }
        SideMessage::DifferenceCount(count) => format!(
            "Difieren en {count} cosas, así que las cifras no dicen cuánto se debe a cada una. Cambie una a la vez para verlo."
        ),
        SideMessage::Difference(what) => difference(units, what),
        SideMessage::SameElements(count) => format!("Los demás, iguales en ambos: {count}"),
        SideMessage::More {
            shown,
            is_more,
            percent,
        } => {
            let sign = if is_more { "+" } else { "\u{2212}" };
            let share = percent.map(|percent| format!(" ({sign}{percent:.0} %)"));
            format!("{sign}{shown}{}", share.unwrap_or_default())
        }
        SideMessage::MoreBand(band) => format!("banda {band}"),
        SideMessage::Place { part, corner } => match part {
            Part::Leg => format!("Tramo {corner}"),
            Part::Termination => "Fin".to_owned(),
            Part::MakeUpAir => "Cuarto".to_owned(),
            _ => at(corner),
        },
        SideMessage::Guesses {
            spread,
            least,
            median,
            greatest,
            figure,
        } => {
            let guesses = match spread.count {
                1 => "Un pronóstico".to_owned(),
                count => format!("{count} pronósticos"),
            };
            let alike = spread.count - spread.below - spread.above;
            let hit = match alike {
                0 => String::new(),
                1 => ", 1 igual a ella".to_owned(),
                count => format!(", {count} iguales a ella"),
            };
            format!(
                "{guesses}, de {least} a {greatest}; el de en medio es {median} y la cifra, {figure}: \
                 {} por debajo de ella, {} por encima{hit}.",
                spread.below, spread.above
            )
        }
        SideMessage::LinkLetters(count) => {
            /// Up to here every messenger passes a link whole. Common practice, no source.
            const SHORT: usize = 2000;
            let long = if count > SHORT {
                " Algunos servicios de mensajería cortan un enlace así de largo: pregunte si se abre."
            } else {
                ""
            };
            format!("{count} caracteres.{long}")
        }
        SideMessage::Link(error) => link(error),
        SideMessage::Lesson(error) => lesson(error),
    }
}

fn quantity(quantity: Quantity) -> &'static str {
    match quantity {
        Quantity::Airflow => label(Label::Airflow),
        Quantity::BackPressure => label(Label::BackPressure),
        Quantity::Velocity => label(Label::Velocity),
        Quantity::Loss => "Pérdida, todos los elementos",
        Quantity::Draught => "Tiro de la subida",
        Quantity::DevelopedLength => label(Label::DevelopedLength),
        Quantity::EquivalentLength => label(Label::EquivalentLength),
        Quantity::CodeLength => label(Label::CodeLength),
    }
}

fn difference(units: UnitSystem, difference: &Difference) -> String {
    let degrees = |temperature| units.temperature(temperature).to_string();
    match difference {
        Difference::MoreCorners(1) => "Una esquina más".to_owned(),
        Difference::MoreCorners(count) => format!("{count} esquinas más"),
        Difference::FewerCorners(1) => "Una esquina menos".to_owned(),
        Difference::FewerCorners(count) => format!("{count} esquinas menos"),
        Difference::Moved { is_end: true, .. } => "El recorrido termina en otro lugar".to_owned(),
        Difference::Moved { corner, .. } => {
            format!("La {} está en otro lugar", lower_first(&at(*corner)))
        }
        Difference::Elbow { corner, from, to } => format!(
            "Codo en la {}: {}; luego {}",
            lower_first(&at(*corner)),
            elbow(units, *from),
            elbow(units, *to)
        ),
        Difference::Rise { corner, from, to } => {
            let rise = |rise: &Option<Length>| match rise {
                Some(rise) if *rise < Length::ZERO => {
                    format!("baja {}", units.length(-*rise))
                }
                Some(rise) => format!("sube {}", units.length(*rise)),
                None => "ninguno".to_owned(),
            };
            format!(
                "Tramo vertical en la {}: {}; luego {}",
                lower_first(&at(*corner)),
                rise(from),
                rise(to)
            )
        }
        Difference::Duct { leg, from, to } => {
            format!("Tramo {leg}: {}; luego {}", duct(*from), duct(*to))
        }
        Difference::Leg { leg, what } => format!("Tramo {leg}: {}", leg_difference(*what)),
        Difference::Termination(from, to) => {
            format!(
                "Terminación: {}; luego {}",
                termination(*from),
                termination(*to)
            )
        }
        Difference::TerminationFree(from, to) => format!(
            "Abertura de la terminación: {:.0} % libre; luego {:.0} %",
            from * 100.0,
            to * 100.0
        ),
        Difference::Diameter(from, to) => format!(
            "Diámetro: {}; luego {}",
            units.part_size(*from),
            units.part_size(*to)
        ),
        Difference::Dryer => "La secadora: su lugar, giro, tamaño o salida".to_owned(),
        Difference::ExhaustTemperature(from, to) => format!(
            "Aire de escape en la salida: {}; luego {}",
            degrees(*from),
            degrees(*to)
        ),
        Difference::ExhaustHumidity(from, to) => humidity("Aire de escape", *from, *to),
        Difference::Cooling => {
            "Si el aire se enfría a lo largo del recorrido, o la fase del ciclo".to_owned()
        }
        Difference::OutdoorTemperature(from, to) => {
            format!("Exterior: {}; luego {}", degrees(*from), degrees(*to))
        }
        Difference::OutdoorHumidity(from, to) => humidity("Exterior", *from, *to),
        Difference::Altitude(from, to) => {
            format!(
                "Altitud: {}; luego {}",
                units.length(*from),
                units.length(*to)
            )
        }
        Difference::HousePressure(from, to) => format!(
            "Presión de la casa: {}; luego {}",
            units.pressure(*from),
            units.pressure(*to)
        ),
        Difference::MakeUpAir => "La abertura del aire de reposición".to_owned(),
        Difference::Flow => "Qué mueve el aire".to_owned(),
        Difference::BendMethod => "El método para los codos lisos".to_owned(),
        Difference::OwnValues => "Los valores propios".to_owned(),
        Difference::Code => "El código, o cómo se lee".to_owned(),
        Difference::Room => {
            "El cuarto: muros, aberturas, obstáculos, zonas o la altura del techo".to_owned()
        }
    }
}

/// Where a corner is; both nouns are feminine, as the articles before them are.
fn at(corner: usize) -> String {
    match corner {
        0 => "Salida".to_owned(),
        corner => format!("Esquina {corner}"),
    }
}

fn humidity(of: &str, from: f64, to: f64) -> String {
    format!(
        "{of}, humedad relativa: {:.0} %; luego {:.0} %",
        from * 100.0,
        to * 100.0
    )
}

fn elbow(units: UnitSystem, elbow: Elbow) -> String {
    let kind = match elbow.kind {
        ElbowKind::SharpMitre => return "a inglete, de arista viva".to_owned(),
        ElbowKind::Smooth => "liso",
        ElbowKind::Segmented => "segmentado",
        ElbowKind::BentFlexible => "ducto flexible doblado",
    };
    format!("{kind}, radio {}", units.part_size(elbow.radius))
}

fn duct(duct: Duct) -> String {
    let pushed = |name: &str, percent: f64| format!("{name}, {percent:.0} % por estirar");
    match duct {
        Duct::Rigid => "rígido".to_owned(),
        Duct::SemiRigid {
            short_of_full_stretch_percent: percent,
        } => pushed("semirrígido", percent),
        Duct::Foil {
            short_of_full_stretch_percent: percent,
        } => pushed("flexible de aluminio", percent),
        Duct::FlatRectangular { .. } => "rectangular plano".to_owned(),
    }
}

fn leg_difference(what: LegDifference) -> String {
    match what {
        LegDifference::Diameter => "su diámetro".to_owned(),
        LegDifference::Estimate => "qué tan seguro es su largo".to_owned(),
        LegDifference::Concealed => "lo que tiene oculto".to_owned(),
        LegDifference::Blockage(from, to) => format!(
            "{:.0} % de su área libre; luego {:.0} %",
            from * 100.0,
            to * 100.0
        ),
        LegDifference::Leak => "una junta con fuga donde empieza".to_owned(),
        LegDifference::WallBox => "la caja empotrada en la pared donde termina".to_owned(),
        LegDifference::Wall => "su aislamiento o su metal".to_owned(),
    }
}

fn termination(kind: TerminationKind) -> &'static str {
    match kind {
        TerminationKind::WallHood => "campana de pared",
        TerminationKind::LouvredHood => "campana de persianas",
        TerminationKind::RoofCap => "sombrerete de techo",
        TerminationKind::OpenEnd => "extremo abierto",
    }
}

fn link(error: &LinkError) -> String {
    const AGAIN: &str =
        "Copie el enlace completo y ábralo otra vez, o pida el archivo del trabajo.";
    match error {
        LinkError::TooLong { letters, limit } => format!(
            "El enlace tendría {letters} caracteres, y solo hasta {limit} pasan en todas partes. Envíe mejor el archivo del trabajo."
        ),
        LinkError::NotAJob => format!("El enlace no contiene ningún trabajo. {AGAIN}"),
        LinkError::UnknownVersion { found, known } => format!(
            "El enlace es de la versión “{found}”, y esta página lee la versión {known}. Vuelva a cargar la página para tener una más reciente, o pida el archivo del trabajo."
        ),
        LinkError::StrangeLetter { after } => format!(
            "Después de {after} caracteres del enlace hay uno que ningún enlace tiene: se partió o se alteró en el camino. {AGAIN}"
        ),
        LinkError::CutShort { letters } => format!(
            "El enlace termina después de {letters} caracteres, antes que el trabajo: se perdió una parte. {AGAIN}"
        ),
        LinkError::Damaged => format!(
            "El enlace no está como se envió: al menos un carácter se alteró en el camino. {AGAIN}"
        ),
        LinkError::TooLarge { limit } => format!(
            "El trabajo del enlace pasa de los {limit} bytes que un enlace puede contener. Envíe o pida mejor el archivo del trabajo."
        ),
        LinkError::Plan(error) => format!(
            "El enlace está completo, pero lo que contiene no es un plano que se pueda leer. {} Pida el archivo del trabajo.",
            file(error)
        ),
    }
}

fn lesson(error: &LessonError) -> String {
    match error {
        LessonError::NotALesson => {
            "El archivo no dice que sea una lección (formato “elbowroom-lesson”).".to_owned()
        }
        LessonError::File(error) => file(error),
        LessonError::Text {
            text,
            letters,
            field,
        } => {
            let name = match text {
                LessonPart::Title => "El nombre de la lección",
                LessonPart::Question => "La pregunta",
                LessonPart::Hint => "La pista",
                LessonPart::Answer => "La respuesta",
            };
            let (least, greatest) = (field.least, field.greatest);
            format!("{name} tiene {letters} caracteres; puede tener de {least} a {greatest}.")
        }
        LessonError::First(error) => format!("Primer recorrido de la lección: {}", file(error)),
        LessonError::Second(error) => format!("Segundo recorrido de la lección: {}", file(error)),
    }
}
