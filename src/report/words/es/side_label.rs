//! Fixed texts about two runs side by side, lessons and links.

use crate::report::words::SideLabel;

pub(super) fn side_label(key: SideLabel) -> &'static str {
    match key {
        SideLabel::Heading => "Lado a lado",
        SideLabel::End => "Terminar la comparación",
        SideLabel::First => "Primer recorrido",
        SideLabel::Second => "Segundo recorrido",
        SideLabel::ChangedHere => "los cambios se hacen aquí",
        SideLabel::ChangeThis => "Cambiar este",
        SideLabel::Beside => "Ponerlo al lado del recorrido actual",
        SideLabel::FirstFrom => "Poner a su lado",
        SideLabel::CopyOfThis => "Una copia de este recorrido",
        SideLabel::KeptJobs => "Un trabajo guardado",
        SideLabel::Lessons => "Una lección",
        SideLabel::LessonFile => "Abrir el archivo de una lección",
        SideLabel::LessonFailed => {
            "No se pudo obtener la lección. Cuando la página diga Listo sin conexión, las lecciones se abrirán también sin red."
        }
        SideLabel::FullScreen => "Pantalla completa",
        SideLabel::Differences => "En qué difieren",
        SideLabel::NothingDiffersHint => {
            "Cambie una sola cosa: presione un codo en el dibujo y elija otro tipo de codo."
        }
        SideLabel::More => "y más",
        SideLabel::Figures => "Cifras de ambos recorridos, en sus valores probables",
        SideLabel::ColumnFigure => "Cifra",
        SideLabel::ColumnDifference => "Segundo menos primero",
        SideLabel::NotThere => "no está",
        SideLabel::Hidden => "oculta",
        SideLabel::Pressures => "Línea de presión de ambos, a la misma escala",
        SideLabel::GuessFirst => "Pronosticar primero",
        SideLabel::GuessHint => {
            "Las cifras del segundo recorrido quedan ocultas hasta que haya un pronóstico. Pueden pronosticar varias personas."
        }
        SideLabel::GuessWhat => "Qué se pronostica del segundo recorrido",
        SideLabel::GuessField => "Pronóstico",
        SideLabel::GuessAdd => "Agregar el pronóstico",
        SideLabel::GuessShow => "Mostrar las cifras",
        SideLabel::GuessAgain => "Ocultarlas y pronosticar otra vez",
        SideLabel::GuessNone => "Todavía no hay ningún pronóstico.",
        SideLabel::GuessTakeOut => "Quitar",
        SideLabel::GuessList => "Pronósticos",
        SideLabel::Hint => "Una pista",
        SideLabel::Answer | SideLabel::LessonAnswer => "Respuesta",
        SideLabel::MakeLesson => "Hacer una lección con estos dos",
        SideLabel::MakeLessonHint => {
            "El archivo contiene ambos recorridos como están ahora, con sus imágenes, y estos textos. Cualquiera que tenga esta página puede abrirlo."
        }
        SideLabel::LessonName => "Nombre de la lección",
        SideLabel::LessonQuestion => "Pregunta",
        SideLabel::LessonHint => "Pista",
        SideLabel::LessonSave => "Guardar la lección en un archivo",
        SideLabel::LessonOneElbow => "Un codo más",
        SideLabel::LessonSharpOrLong => "Arista viva o radio largo",
        SideLabel::LessonPushedTogether => "Ducto flexible sin estirar",
        SideLabel::LessonSameCodeLength => "La misma longitud según el código",
        SideLabel::LessonHotOrCold => "Aire caliente y aire frío",
        SideLabel::LessonBlockedFlap => "Una compuerta que se atasca",
        SideLabel::LinkSend => "Enviar como enlace",
        SideLabel::LinkMeaning => {
            "El enlace contiene todo el trabajo como está ahora, también las lecturas y las notas. Quien lo tenga puede abrir el trabajo; ningún servidor lo guarda. Los cambios posteriores requieren un enlace nuevo."
        }
        SideLabel::LinkPicturesStay => {
            "Las imágenes y fotos son demasiado grandes para un enlace y no van en él. En un archivo sí van."
        }
        SideLabel::LinkMaking => "Se está haciendo el enlace.",
        SideLabel::LinkField => "El enlace",
        SideLabel::LinkCopy => "Copiar el enlace",
        SideLabel::LinkCopied => "El enlace está copiado.",
        SideLabel::LinkNotCopied => {
            "Este navegador no dejó que la página lo copiara: el enlace está seleccionado, cópielo de ahí."
        }
        SideLabel::LinkShare => "Compartir",
        SideLabel::LinkNoAnswer => "No se pudo hacer el enlace. Guarde mejor un archivo.",
        SideLabel::LinkNotOpened => {
            "No se pudo extraer el trabajo del enlace. Vuelva a cargar la página y abra el enlace otra vez, o pida el archivo."
        }
    }
}
