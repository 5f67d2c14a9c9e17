//! What went wrong, how much, and what would work.

use crate::plan::{Field, FileError, ValueError};
use crate::report::words::Refusal;
use crate::report::words::typed_value::{TypedQuantity, out_of_range};
use crate::units::{LengthTextError, UnitSystem};

pub(super) fn refusal(units: UnitSystem, refusal: &Refusal) -> String {
    match refusal {
        Refusal::TerminationStays => {
            "El recorrido tiene que terminar en algún lado: mueva la terminación en vez de quitarla."
                .to_owned()
        }
        Refusal::NoSuchElement => "Esa parte del recorrido ya no existe.".to_owned(),
        Refusal::LegTooShort => "Así quedaría un tramo de menos de 2 in (50 mm).".to_owned(),
        Refusal::NothingBegun => {
            "Ponga un primer punto y luego escriba la longitud desde ahí.".to_owned()
        }
        Refusal::NoDirection => {
            "Apunte primero en el sentido, o presione una tecla de flecha después de la longitud."
                .to_owned()
        }
        Refusal::NoWallHere => {
            "Aquí no hay muro. Dibuje uno primero, o presione más cerca de uno.".to_owned()
        }
        Refusal::TooSmall => {
            "Eso no tiene tamaño. Dibuje de una esquina a la opuesta.".to_owned()
        }
        Refusal::OpeningPastWall => {
            "La abertura se saldría del extremo de su muro. Córrala o hágala más angosta."
                .to_owned()
        }
        Refusal::DryerAndRunStay => {
            "La secadora y su recorrido no se pueden quitar. Empiece en blanco para un plano nuevo."
                .to_owned()
        }
        Refusal::NothingToCopy => "Seleccione muros, obstáculos o zonas para copiar.".to_owned(),
        Refusal::NothingToTurn => {
            "Una abertura gira con su muro, y una imagen se gira antes de abrirla. Seleccione muros, obstáculos, zonas, la secadora o el recorrido."
                .to_owned()
        }
        Refusal::Value(error) => typed_value(units, error),
    }
}

/// A value that was typed or drawn: in the units in which it was, and not by its place in the file.
fn typed_value(units: UnitSystem, error: &ValueError) -> String {
    let Some(wrong) = out_of_range(units, error) else {
        return value(error);
    };
    let what = match wrong.quantity {
        TypedQuantity::Place => "Un lugar en la hoja",
        TypedQuantity::Width => "El ancho",
        TypedQuantity::Depth => "El fondo",
        TypedQuantity::Thickness => "El espesor",
        TypedQuantity::Offset => "La distancia desde el inicio del muro",
        TypedQuantity::Spacing => "La separación",
        TypedQuantity::Height => "La altura",
        TypedQuantity::Temperature => "La temperatura",
        TypedQuantity::Turn => "El giro",
        TypedQuantity::Rise => "La subida",
        TypedQuantity::Radius => "El radio",
        TypedQuantity::Diameter => "El diámetro",
        TypedQuantity::Altitude => "La altitud",
    };
    format!(
        "{what} sería {}; puede ir de {} a {}.",
        wrong.found, wrong.least, wrong.greatest
    )
}

fn value(error: &ValueError) -> String {
    match error {
        ValueError::OutOfRange {
            path,
            value,
            field: Field { least, greatest },
        } => format!("{path} es {value}; puede ir de {least} a {greatest}."),
        ValueError::BadId { path } => format!(
            "{path} está vacío, es demasiado largo, se usa dos veces o tiene signos distintos de letras, \
             dígitos, - y _."
        ),
        ValueError::NoSuchWall { path } => {
            format!("{path} nombra un muro que no está en el plano.")
        }
        ValueError::NotSettable { path } => {
            format!(
                "{path} se fija dos veces, o se calcula para cada elemento y no se puede fijar."
            )
        }
        ValueError::NotBase64 { path } => {
            format!("{path} no son los bytes de una imagen en Base64.")
        }
        ValueError::TooManyPictures { path, count, field } => format!(
            "{path}: las visitas tienen {count} fotos en total; un plano puede tener {}.",
            field.greatest
        ),
        ValueError::NoPoints => {
            "run.points está vacío; un recorrido necesita al menos un punto, donde termina."
                .to_owned()
        }
    }
}

pub(super) fn length_text(units: UnitSystem, error: &LengthTextError) -> String {
    let example = match units {
        UnitSystem::UsCustomary => "12' 6\", 12.5 ft, 150 in o 3.8 m",
        UnitSystem::Si => "3.8 m, 380 cm, 3800 mm o 12' 6\"",
    };
    let what = match error {
        LengthTextError::Empty => "No se escribió nada.".to_owned(),
        LengthTextError::TooLong => "Es demasiado texto para una longitud.".to_owned(),
        LengthTextError::NotUnderstood { part } => format!("No se entendió “{part}”."),
        LengthTextError::AmbiguousComma { part } => {
            format!("“{part}” podría tener miles o decimales: escríbalo sin la coma.")
        }
        LengthTextError::NumberMissing { unit } => {
            format!("“{unit}” no tiene un número antes.")
        }
        LengthTextError::UnitMissing { number } => {
            format!("“{number}” no tiene una unidad después.")
        }
        LengthTextError::UnitOrder { unit } => {
            format!("“{unit}” llega demasiado tarde: escriba los pies antes que las pulgadas.")
        }
        LengthTextError::ZeroDivisor => {
            "Una fracción no puede tener 0 debajo de la raya.".to_owned()
        }
        LengthTextError::TooLarge {
            metres,
            limit_metres,
        } => {
            format!("{metres:.0} m es más de lo que cabe en un plano ({limit_metres:.0} m).")
        }
    };
    format!("{what} Escríbala como {example}.")
}

pub(super) fn file(error: &FileError) -> String {
    match error {
        FileError::TooLarge { bytes, limit } => {
            format!("El archivo tiene {bytes} bytes; un plano tiene como máximo {limit}.")
        }
        FileError::NotText => "El archivo no es texto.".to_owned(),
        FileError::NotJson { line, column } => {
            format!("El archivo no es JSON completo: línea {line}, columna {column}.")
        }
        FileError::NotAPlan => {
            "El archivo no dice que sea un plano (formato “elbowroom-plan”).".to_owned()
        }
        FileError::UnknownVersion { found, known } if found.is_empty() => {
            format!("El archivo no tiene versión; se puede leer la versión {known}.")
        }
        FileError::UnknownVersion { found, known } => {
            format!("La versión del archivo es {found}; se puede leer la versión {known}.")
        }
        FileError::Field { path, detail } => format!("En {path}: {detail}."),
        FileError::Value(error) => value(error),
    }
}
