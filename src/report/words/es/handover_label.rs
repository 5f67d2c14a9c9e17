//! Fixed texts of the handover sheet, its panel and its files.

use crate::report::words::HandoverLabel;

#[allow(clippy::too_many_lines, reason = "one line a text")]
pub(super) const fn handover_label(key: HandoverLabel) -> &'static str {
    match key {
        HandoverLabel::Heading => "Entrega",
        HandoverLabel::Hint => {
            "Una hoja para quien recibe el trabajo después: dibujo, cifras, lo que se encontró, qué hacer y las piezas por comprar. Se hace con el plano como está ahora."
        }
        HandoverLabel::ReadBy => "Hecha para",
        HandoverLabel::Customer => "el cliente, en palabras sencillas",
        HandoverLabel::Trade => "el técnico, completa",
        HandoverLabel::Language => "Idioma de la hoja",
        HandoverLabel::Paper => "Papel",
        HandoverLabel::Letter => "Carta",
        HandoverLabel::A4 => "A4",
        HandoverLabel::Date => "Fecha",
        HandoverLabel::MadeFor => "Para",
        HandoverLabel::MadeBy => "Hecha por",
        HandoverLabel::Remarks => "Comentarios",
        HandoverLabel::Stock => "El ducto se compra en largos de",
        HandoverLabel::StockHint => {
            "Separados por comas, ocho como máximo. Vacío para 2, 3, 5 y 10 ft."
        }
        HandoverLabel::TextsHint => "Se guardan con el trabajo. Nada se llena solo.",
        HandoverLabel::Preview => "Hacer la hoja",
        HandoverLabel::PreviewWait => "Se está haciendo la hoja.",
        HandoverLabel::PreviewFailed => {
            "No se hizo la hoja. El plano está como estaba; intente otra vez o vuelva a cargar la página."
        }
        HandoverLabel::Print => "Imprimir o guardar como PDF",
        HandoverLabel::PrintHint => {
            "Imprima al 100 %, sin ajustar a la página, para que el dibujo conserve su escala."
        }
        HandoverLabel::SaveHtml => "Hoja, un solo archivo HTML",
        HandoverLabel::SaveDrawingSvg => "Dibujo, SVG",
        HandoverLabel::SaveDrawingPng => "Dibujo, PNG",
        HandoverLabel::SavePressureSvg => "Línea de presión, SVG",
        HandoverLabel::SaveHeatSvg => "Línea de temperatura, SVG",
        HandoverLabel::SaveLedgerCsv => "Desglose, CSV",
        HandoverLabel::SaveCutListCsv => "Lista de cortes, CSV",
        HandoverLabel::Files => "Guardar como archivo",
        HandoverLabel::FilesHint => {
            "Todos con las mismas cifras que la página. El SVG está a escala."
        }
        HandoverLabel::NotSaved => {
            "No se hizo el archivo. Quizá no haya nada que dibujar: el plano no mueve aire, o su aire conserva su temperatura."
        }
        HandoverLabel::SheetTitle => "Escape de secadora: hoja de entrega",
        HandoverLabel::DrawingHeading => "Dibujo",
        HandoverLabel::DrawingName => {
            "Plano del cuarto con el recorrido de escape y sus longitudes"
        }
        HandoverLabel::FoundHeading => "Lo que se encontró",
        HandoverLabel::FiguresHeading => "Cifras",
        HandoverLabel::ColumnFigure => "Cifra",
        HandoverLabel::ColumnClean => "Recorrido limpio",
        HandoverLabel::ColumnBand => "Percentil 10 al 90",
        HandoverLabel::ColumnBefore => "Antes",
        HandoverLabel::ColumnAfter => "Después",
        HandoverLabel::ColumnOffered => "Con el cambio",
        HandoverLabel::TakenNote => {
            "El recorrido se cambió. Antes: como estaba dibujado entonces. Después: como está dibujado aquí."
        }
        HandoverLabel::OfferedNote => {
            "Más abajo se propone un cambio del recorrido. Antes: como está dibujado aquí."
        }
        HandoverLabel::PredictedNote => {
            "Calculado, no medido, para el recorrido como está dibujado y limpio."
        }
        HandoverLabel::CodeHeading => "Revisión del código",
        HandoverLabel::ColumnSection => "Sección",
        HandoverLabel::ColumnRule => "Regla",
        HandoverLabel::ColumnVerdict => "Resultado",
        HandoverLabel::ColumnMeasured => "Medido, límite, margen",
        HandoverLabel::OnSiteHeading => "Por verificar en el sitio",
        HandoverLabel::Seen => "revisado",
        HandoverLabel::NotSeen => "sin revisar",
        HandoverLabel::StepsHeading => "Qué hacer, en este orden",
        HandoverLabel::NothingToDo => "No se encontró nada que haya que hacer.",
        HandoverLabel::LedgerHeading => "Desglose",
        HandoverLabel::ColumnNumber => "N.º",
        HandoverLabel::ColumnLength => "Longitud desarrollada",
        HandoverLabel::ColumnLossLow => "Pérdida, percentil 10",
        HandoverLabel::ColumnLossHigh => "Pérdida, percentil 90",
        HandoverLabel::PartsHeading => "Piezas por comprar",
        HandoverLabel::ColumnPart => "Pieza",
        HandoverLabel::ColumnPartSize => "Tamaño",
        HandoverLabel::ColumnCount => "Cantidad",
        HandoverLabel::ColumnPartLength => "Largo",
        HandoverLabel::CutsHeading => "Cómo se corta el ducto",
        HandoverLabel::ColumnStock => "Largo comercial",
        HandoverLabel::ColumnCuts => "Se corta en",
        HandoverLabel::ColumnLeft => "Sobrante",
        HandoverLabel::TooLong => {
            "El recorrido es más largo que el de una casa: aquí no se calculan los cortes de su ducto."
        }
        HandoverLabel::PipeNotKnown => {
            "Los largos marcados como estimados u ocultos se deben medir antes de cortar nada."
        }
        HandoverLabel::SourcesHeading => "Supuestos y fuentes",
        HandoverLabel::BandMeaning => {
            "Una banda va del percentil 10 al 90 de todos los datos inciertos, muestreados en conjunto. Las cifras calculadas son para un recorrido limpio, salvo que el dibujo indique otra cosa."
        }
        HandoverLabel::SignHeading => "Entregado",
        HandoverLabel::Signature => "Firma",
        HandoverLabel::CsvPart => "pieza",
        HandoverLabel::CsvCut => "corte",
        HandoverLabel::CsvKind => "Renglón",
        HandoverLabel::CsvFromPart => "Para el elemento",
        HandoverLabel::AlongTheRun => "longitud desarrollada",
        // Parts of a file's name: without accents, which some programs garble in one.
        HandoverLabel::FileLedger => "desglose",
        HandoverLabel::FileCutList => "lista-de-cortes",
        HandoverLabel::FilePressure => "linea-de-presion",
        HandoverLabel::FileHeat => "linea-de-temperatura",
        HandoverLabel::FileSheet => "entrega",
    }
}
