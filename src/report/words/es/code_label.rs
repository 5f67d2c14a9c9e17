//! Fixed texts of the code check.

use crate::report::words::CodeLabel;

pub(super) fn code_label(key: CodeLabel) -> &'static str {
    match key {
        CodeLabel::FindingsHeading => "Lo que dicen las reglas del plano",
        CodeLabel::OnSiteHeading => "Por verificar en el sitio",
        CodeLabel::OnSiteHint => {
            "Un dibujo no puede mostrar esto. Marque lo que se revisó y se encontró así; las marcas se guardan con el plano."
        }
        CodeLabel::ShowOnDrawing => "Mostrar",
        CodeLabel::SourceHeading => "Dónde se leyó esto",
        CodeLabel::SideBySide => "Reglas lado a lado",
        CodeLabel::SideBySideHint => {
            "La longitud de este recorrido según la cuenta cada conjunto de reglas, con el trayecto por los codos y sin él. La lectura elegida está marcada; presione otra para elegirla."
        }
        CodeLabel::ColumnRuleSet => "Reglas",
        CodeLabel::ColumnPath => "Trayecto por los codos",
        CodeLabel::ColumnMeasured => "Medido",
        CodeLabel::ColumnDeductions => "Deduc\u{ad}ciones",
        CodeLabel::ColumnTotal => "Total",
        CodeLabel::ColumnLimit => "Límite",
        CodeLabel::ColumnMargin => "Margen",
        CodeLabel::ColumnVerdict => "Veredicto",
        CodeLabel::PathCounts => "cuenta",
        CodeLabel::PathLeftOut => "no cuenta",
        CodeLabel::Chosen => "elegida",
        CodeLabel::CodeAgainstAir => "El código frente al aire",
        CodeLabel::CodeAgainstAirHint => {
            "El código cuenta pies; el aire pierde presión. Ambos como ducto recto del tamaño del recorrido, elemento por elemento."
        }
        CodeLabel::ColumnAir => "En aire",
        CodeLabel::ColumnCode => "En el código",
        CodeLabel::ColumnTimes => "Aire entre código",
        CodeLabel::NotCounted => "no se cuenta",
        CodeLabel::WholeRun => "Todo el recorrido",
        CodeLabel::MakerHeading => "Límites del fabricante de la secadora",
        CodeLabel::MakerHint => {
            "De las instrucciones de la propia secadora. Nada se compara con lo que no se escribió. La longitud del fabricante va con sus propios valores para los codos, nunca con la tabla de un código."
        }
        CodeLabel::NotTyped => "no escrito",
        CodeLabel::AdviceHeading => "Práctica, no código",
        CodeLabel::LabelHeading => "Etiqueta permanente",
        CodeLabel::LabelAsked => "Las reglas elegidas exigen esta etiqueta.",
        CodeLabel::LabelNotAsked => {
            "Hasta donde muestra el plano, las reglas elegidas no exigen etiqueta. Ponerla no está de más."
        }
        CodeLabel::LabelCardTitle => "Ducto de escape de secadora",
        CodeLabel::LabelCardLength => "Longitud equivalente",
        CodeLabel::LabelCardBy => "Contada según",
        CodeLabel::LabelCardPlace => {
            "Colóquese a no más de 6 ft (1.8 m) de la conexión del ducto. Antes de conectar otra secadora, sus instrucciones deben permitir esta longitud."
        }
        CodeLabel::LabelPrint => "Imprimir la etiqueta",
        CodeLabel::NotCovered => {
            "No se considera aquí: secadoras de varios pisos en un mismo ducto, que el código solo permite en un pozo vertical con diseño de ingeniería."
        }
    }
}
