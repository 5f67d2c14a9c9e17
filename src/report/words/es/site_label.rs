//! Fixed texts of the site readings.

use crate::report::words::SiteLabel;

#[allow(clippy::too_many_lines, reason = "one line a key")]
pub(super) const fn site_label(key: SiteLabel) -> &'static str {
    match key {
        SiteLabel::Heading => "Lecturas en el sitio",
        SiteLabel::Hint => {
            "Escriba lo que marca el instrumento. Al lado aparece lo que marcaría el recorrido limpio en las mismas condiciones, y abajo lo que significan las lecturas y qué probar después."
        }
        SiteLabel::PreparationHeading => "Antes de la primera lectura",
        SiteLabel::AlwaysHeats => {
            "Esta secadora no puede funcionar sin calor (no se ofrece ninguna prueba con una junta abierta)"
        }
        SiteLabel::EntryHeading => "Nueva lectura",
        SiteLabel::Quantity => "Qué se leyó",
        SiteLabel::StaticPressure => "Presión estática",
        SiteLabel::VelocityVane => "Velocidad, con aspas o hilo caliente",
        SiteLabel::VelocityPitot => "Presión de velocidad, con tubo de Pitot",
        SiteLabel::Temperature => "Temperatura",
        SiteLabel::At => "Dónde",
        SiteLabel::Value => "Lectura",
        SiteLabel::ValueHint => "El valor que marca el instrumento.",
        SiteLabel::ValuesHint => "Un valor, o los de un barrido separados por espacios.",
        SiteLabel::Pattern => "Sonda",
        SiteLabel::AgainstOutdoors => {
            "El otro lado del manómetro está abierto al exterior, no al cuarto"
        }
        SiteLabel::Conditions => "Condiciones e instrumento",
        SiteLabel::Heat => "Con calor",
        SiteLabel::ScreenNotClean => "Filtro de pelusa sin limpiar",
        SiteLabel::DrumNotEmpty => "Tambor con ropa",
        SiteLabel::FlapHeld => "Compuerta sostenida abierta",
        SiteLabel::DoorOpen => "Puerta o ventana abierta",
        SiteLabel::OpenJoint => "Junta que estaba abierta",
        SiteLabel::NoJointOpen => "Ninguna, recorrido conectado",
        SiteLabel::Add => "Agregar lectura",
        SiteLabel::EntriesHeading => "Esta visita, en orden",
        SiteLabel::ColumnRead => "Leído",
        SiteLabel::ColumnClean => "Recorrido limpio",
        SiteLabel::ColumnAgainst => "Límite del fabricante de la secadora",
        SiteLabel::NothingYet => "Todavía no se anotó nada.",
        SiteLabel::Remove => "Quitar",
        SiteLabel::OddsHeading => "Qué significa",
        SiteLabel::OddsHint => {
            "La probabilidad de que cada falla exista ahora. Dos fallas a la vez cuentan para ambas. Las probabilidades de partida y los esfuerzos son práctica común, sin fuente."
        }
        SiteLabel::NothingWrong => "Ninguna falla",
        SiteLabel::NothingThatMatters => "Nada que cueste más del 10 % del flujo de aire",
        SiteLabel::AirflowNow => "Flujo de aire ahora, frente al del recorrido limpio",
        SiteLabel::WouldRead => "Qué explicaría",
        SiteLabel::Mended => "Limpiado o reparado",
        SiteLabel::NextHeading => "Siguiente prueba",
        SiteLabel::RunnerUp => "O bien",
        SiteLabel::Settled => {
            "Resuelto: más pruebas aportarían poco. Limpie o repare lo que se nombra primero y lea otra vez. Si los dos primeros están uno junto al otro, abra la junta entre ellos y revise ambos por dentro."
        }
        SiteLabel::EnterReading => "Anotar esta lectura",
        SiteLabel::FoundClear => "Estaba despejado",
        SiteLabel::FoundBlocked => "Algo estorba",
        SiteLabel::FitBlower => "Tomar el soplador de estas lecturas",
        SiteLabel::FitBlowerHint => {
            "Para ajustar el soplador de esta secadora, lea la presión estática y la velocidad en la salida, una vez con todo el recorrido conectado y otra con la salida abierta."
        }
        SiteLabel::NewVisit => "Iniciar una visita nueva",
        SiteLabel::Date => "Fecha",
        SiteLabel::Note => "Nota",
        SiteLabel::WorkingOut => "calculando qué significa",
        SiteLabel::VisitsHeading => "Visitas a esta secadora",
        SiteLabel::EarlierVisit => {
            "Está abierta una visita anterior. Sus lecturas se comparan con el plano como está ahora, y lo que se agregue va a esta visita."
        }
        SiteLabel::AfterHeading => "Antes y después",
        SiteLabel::AfterHint => {
            "Lea otra vez lo que se leyó antes de la limpieza, en las mismas condiciones: aquí aparecen ambas lecturas lado a lado."
        }
        SiteLabel::ColumnBefore => "Antes",
        SiteLabel::ColumnAfter => "Después",
        SiteLabel::AirflowBefore => "Flujo de aire antes, frente al del recorrido limpio",
        SiteLabel::PicturesHeading => "Fotos",
        SiteLabel::PicturesHint => {
            "Se reducen y se les quitan los datos de lugar y de cámara antes de guardarlas, en el archivo del trabajo y en ningún otro lado. Hasta 12 por trabajo."
        }
        SiteLabel::AddBefore => "Agregar una foto de antes",
        SiteLabel::AddAfter => "Agregar una foto de después",
        SiteLabel::PictureUnreadable => {
            "Este archivo no es una imagen que el navegador pueda leer."
        }
        SiteLabel::Print => "Imprimir esta visita",
        SiteLabel::PrintHint => "En Carta o A4, en negro sobre blanco.",
        SiteLabel::PrintNumber => "N.º",
        SiteLabel::PrintEntry => "Lectura, inspección o reparación",
        SiteLabel::PrintRank => "Orden",
        SiteLabel::PrintFault => "Falla",
        SiteLabel::PrintOdds => "Probabilidad de que exista ahora",
        SiteLabel::PrintFreeArea => "Área",
        SiteLabel::PrintAirflow => "Flujo de aire",
        SiteLabel::PrintSettled => "Resuelto: más pruebas aportarían poco.",
        SiteLabel::PrintFoot => {
            "Recorrido limpio: el dibujo sin pelusa, fugas ni compuerta atascada, en las condiciones de la propia lectura; entre paréntesis, del percentil 10 al 90 de todos los datos inciertos. Solo hay veredicto junto a un límite tomado de las instrucciones del fabricante de la secadora. Las probabilidades de partida son práctica común, sin fuente."
        }
        SiteLabel::Done => "hecho",
        SiteLabel::NotDone => "sin hacer",
        SiteLabel::LikelyPlaces => {
            "Anillos A, B y C en el dibujo: los lugares más probables de la falla."
        }
    }
}
