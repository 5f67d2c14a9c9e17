//! Fixed texts.

use super::handover_label::handover_label;
use super::heat_label::heat_label;
use super::shelf_label::shelf_label;
use super::side_label::side_label;
use crate::report::words::{Caution, Label};

#[allow(clippy::too_many_lines, reason = "one line a key")]
pub(super) fn label(key: Label) -> &'static str {
    match key {
        Label::Handover(key) => handover_label(key),
        Label::Side(key) => side_label(key),
        Label::Heat(key) => heat_label(key),
        Label::Shelf(key) => shelf_label(key),
        Label::GaugeResolution => "Último dígito del instrumento",
        Label::GaugeTolerance => "Puede desviarse hasta",
        Label::ProgramName => "Elbowroom",
        Label::ExampleTitle => "Ejemplo: lavandería con un cuerpo de chimenea",
        Label::ExampleNote => "Un cuarto y un recorrido inventados, para mover a gusto.",
        Label::ExampleObstacle => "Cuerpo de chimenea",
        Label::BlankTitle => "Plano nuevo",
        Label::NotFetched => {
            "No se pudo traer una parte del programa. Revise la conexión y vuelva a cargar."
        }
        Label::FirstSteps => "¿Primera vez? Tres pasos",
        Label::FirstStepDrag => {
            "Arrastre un anillo del ducto: el caudal, la contrapresión y la longitud según el código lo siguen. Deshacer lo devuelve."
        }
        Label::FirstStepRank => {
            "Busque el 1 en el dibujo: esa parte es la que más cuesta. Toque su renglón en el desglose para cambiarla."
        }
        Label::FirstStepReroute => {
            "Pulse Buscar otros recorridos: se dibujan sobre el suyo, cada uno con lo que gana."
        }
        Label::FirstStepsClose => "No volver a mostrar",
        Label::Guide => "Guía",
        Label::OpenExample => "Ejemplo",
        Label::OpenBlank => "Empezar en blanco",
        Label::OpenFile => "Abrir archivo",
        Label::SaveFile => "Guardar archivo",
        Label::SaveDrawing => "Guardar dibujo",
        Label::Undo => "Deshacer",
        Label::Redo => "Rehacer",
        Label::Units => "Unidades",
        Label::UnitsUsCustomary => "ft, in. w.c., cfm",
        Label::UnitsSi => "m, Pa, L/s",
        Label::Drawing => "Dibujo",
        Label::DrawingKeys => {
            "Con el foco en el dibujo: N y P seleccionan el elemento siguiente y el anterior del recorrido, T \
             el siguiente muro u otra cosa (X la conserva mientras T sigue), las flechas mueven lo \
             seleccionado (con Mayús en pasos mayores), L escribe una longitud, B hace una curva en el tramo \
             seleccionado, Supr quita, C copia, M refleja, Q gira un cuarto de vuelta. R dibuja el recorrido, \
             W un muro exterior, I un muro interior, G una ventana, D una puerta, A una toma de aire, O un \
             obstáculo, Z una zona: las flechas mueven el cursor, Intro pone un punto, una longitud escrita y \
             una flecha dibujan esa distancia. Esc suelta."
        }
        Label::ZoomIn => "Acercar",
        Label::ZoomOut => "Alejar",
        Label::ZoomFit => "Ver todo",
        Label::Tools => "Herramientas de dibujo",
        Label::ToolPick => "Seleccionar",
        Label::ToolRun => "Recorrido",
        Label::ToolOutsideWall => "Muro exterior",
        Label::ToolInsideWall => "Muro interior",
        Label::ToolWindow => "Ventana",
        Label::ToolDoor => "Puerta",
        Label::ToolAirIntake => "Toma de aire",
        Label::ToolObstacle => "Obstáculo",
        Label::ToolZone => "Zona",
        Label::ObstacleClosedArea => "Área cerrada",
        Label::ObstacleCabinet => "Gabinete",
        Label::ObstacleBeam => "Viga",
        Label::ObstacleStack => "Bajante",
        Label::ObstacleFramingAlongX => "Montantes o viguetas, de izquierda a derecha",
        Label::ObstacleFramingAlongY => "Montantes o viguetas, de arriba abajo",
        Label::ZoneHeated => "Cuarto con calefacción",
        Label::ZoneGarage => "Garaje",
        Label::ZoneAttic => "Ático",
        Label::ZoneCrawlSpace => "Espacio bajo el piso",
        Label::ZoneOutdoors => "Exterior",
        Label::PictureOpen => "Imagen para calcar",
        Label::PictureScale => "Poner la imagen a escala",
        Label::PictureTooLarge => {
            "La imagen pesa más de 1.5 MB. Guárdela más pequeña y ábrala otra vez."
        }
        Label::FileNotRead => {
            "El navegador no pudo leer el archivo. Elíjalo otra vez: quizá se movió o se modificó."
        }
        Label::NoPicture => {
            "El archivo no es una imagen que se pueda mostrar aquí. Guárdelo como PNG, JPEG o WebP y abra ese."
        }
        Label::DrawDone => "Listo",
        Label::DrawLength => "Longitud desde el último punto",
        Label::DrawLengthHint => "Intro la toma en el sentido de la línea; una flecha, en el suyo.",
        Label::DrawLengthScale => "Longitud real de esta línea",
        Label::HintPick => {
            "Arrastre una esquina redonda para moverla. Jale un rombo pequeño para hacer una curva. Presione un muro, una ventana, un obstáculo o la secadora para seleccionarlo."
        }
        Label::HintPlace => "Presione donde debe ir la pieza seleccionada.",
        Label::HintWall => "Presione cada esquina en orden, o arrastre. Listo termina el muro.",
        Label::HintOpening => "Presione el muro donde va.",
        Label::HintRectangle => "Presione una esquina y luego la opuesta, o arrastre.",
        Label::HintRun => {
            "Presione cada esquina en orden desde la salida de la secadora, o arrastre. La última es la terminación. Listo termina el recorrido."
        }
        Label::HintScale => {
            "Presione los dos extremos de una distancia que conozca y escriba su longitud."
        }
        Label::ThingCopy => "Copiar",
        Label::ThingMirror => "Reflejar",
        Label::ThingTurn => "Cuarto de vuelta",
        Label::ThingRemove => "Quitar",
        Label::PlaceByTap => "Mover presionando",
        Label::SelectMore => "Seleccionar más",
        Label::WallLength => "Largo del muro",
        Label::WallThickness => "Espesor",
        Label::WallOutside => "Al otro lado está el exterior",
        Label::OpeningKind => "Abertura",
        Label::OpeningOffset => "Desde el inicio del muro",
        Label::ThingWidth => "Ancho, de izquierda a derecha",
        Label::ThingDepth => "Fondo, de arriba abajo",
        Label::OpeningWidth => "Ancho a lo largo del muro",
        Label::ThingName => "Nombre",
        Label::ObstacleKind => "Qué es",
        Label::Level => "Nivel",
        Label::LevelCrawlSpace => "Debajo del piso",
        Label::LevelRoom => "Cuarto",
        Label::LevelCeilingSpace => "Arriba del techo",
        Label::FramingSpacing => "Separación, de centro a centro",
        Label::ZoneTemperature => "Temperatura",
        Label::CeilingHeight => "Altura del techo",
        Label::RoofCapHeight => "Altura del sombrerete de techo sobre el piso",
        Label::RoofCapHint => "Vacío si ningún recorrido puede salir por el techo",
        Label::DryerTurned => "Girada en el sentido del reloj (grados)",
        Label::OutletSide => "La salida está",
        Label::OutletBack => "atrás",
        Label::OutletLeft => "en el lado izquierdo",
        Label::OutletRight => "en el lado derecho",
        Label::OutletHeight => "Altura de la salida sobre el piso",
        Label::Energy => "Calienta con",
        Label::EnergyElectric => "electricidad",
        Label::EnergyGas => "gas",
        Label::Stacked => "Está sobre la lavadora",
        Label::Totals => "Recorrido limpio",
        Label::Airflow => "Flujo de aire",
        Label::BackPressure => "Contrapresión",
        Label::BackPressureHint => "estática, en la salida",
        Label::Velocity => "Velocidad",
        Label::CodeLength => "Longitud según el código",
        Label::DevelopedLength => "Longitud desarrollada",
        // Soft hyphens: both stand over narrow columns on a phone.
        Label::EquivalentLength => "Longitud equiva\u{ad}lente",
        Label::NoAirflowFigure => "sin flujo de aire",
        Label::BandPending => "calculando la banda",
        Label::BandMeaning => {
            "Las cifras son valores probables con una banda abajo: 8 de cada 10 combinaciones de los datos \
             inciertos caen dentro de ella."
        }
        Label::OfflineReady => "Listo sin conexión",
        Label::OfflineWaiting => {
            "Hay una versión más reciente. Empieza cuando usted quiera, o cuando no haya ninguna página abierta."
        }
        Label::OfflineOthers => {
            "Hay otras páginas de Elbowroom abiertas. Ciérrelas y empiece aquí la versión más reciente."
        }
        Label::OfflineTakeOver => "Empezar la versión más reciente",
        Label::WhereFrom => "De dónde sale esta cifra",
        Label::MovedMostBy => "Lo que más la mueve",
        Label::FiguresFrom => "De dónde salen las cifras",
        Label::FiguresFromHint => {
            "La fórmula de cada elemento está en su panel: selecciónelo en el dibujo o en el desglose."
        }
        Label::AllSources => "Todas las fuentes",
        Label::Shares => "De qué dependen las bandas",
        Label::SharesMeaning => {
            "Qué parte de la dispersión de una cifra (su varianza) explica por sí solo cada dato incierto, en \
             2,048 combinaciones de los datos. Las partes menores que 1 % se omiten; lo que los datos causan \
             en conjunto no es de ninguno."
        }
        Label::NoSingleInput => {
            "Ningún dato decide por sí solo: con la cuarta parte de las combinaciones manda otro."
        }
        Label::SharePending => "calculando las partes",
        Label::NothingUncertain => "Nada incierto la mueve.",
        Label::Ledger => "Desglose",
        Label::LedgerInRunOrder => "En orden del recorrido",
        Label::LedgerRanked => "Primero lo que más cuesta",
        Label::LedgerOrder => "Orden",
        Label::ColumnElement => "Elemento",
        Label::ColumnSize => "Tamaño",
        Label::ColumnLoss => "Pérdida",
        Label::ColumnShare => "Parte",
        Label::ColumnCodeDeduction => "Deduc\u{ad}ción del código",
        Label::ColumnRank => "Lugar",
        Label::ColumnSum => "Todo el recorrido",
        Label::BalanceDraught => "Tiro de la subida",
        Label::BalanceHouse => "Presión de la casa",
        Label::BalanceVelocityPressure => "Presión de velocidad en la salida",
        Label::Selected => "Seleccionado",
        Label::NothingSelected => {
            "Seleccione un tramo, un codo o la campana en el dibujo o en el desglose para cambiarlo."
        }
        Label::LegLength => "Largo del tramo, de esquina a esquina",
        Label::LegLengthHint => "Todo lo que sigue al tramo se mueve con él.",
        Label::RiseHere => "Subida aquí",
        Label::RiseHint => "0 si no hay; un signo menos la hace bajada.",
        Label::ElbowKind => "Codo",
        Label::ElbowAfterRiserKind => "Codo después del tramo vertical",
        Label::ElbowSegmented => "Segmentado (ajustable)",
        Label::ElbowSmooth => "Liso",
        Label::ElbowRadius => "Radio a la línea central",
        Label::ElbowSharpMitre => "A inglete, de arista viva",
        Label::ElbowBentFlexible => "Ducto flexible doblado a mano",
        Label::Duct => "Ducto de este tramo",
        Label::DuctRigid => "Metal rígido",
        Label::DuctSemiRigid => "Metal corrugado semirrígido",
        Label::DuctFoil => "Flexible de aluminio (solo transición)",
        Label::DuctFlatRectangular => "Metal rectangular plano",
        Label::ShortOfFullStretch => "Por estirar (%)",
        Label::DuctWidth => "Ancho interior",
        Label::DuctDepth => "Fondo interior",
        Label::EstimateLess => "Estimado: más corto a lo sumo",
        Label::EstimateMore => "Estimado: más largo a lo sumo",
        Label::ConcealedLeast => "Codos ocultos, al menos",
        Label::ConcealedMost => "Codos ocultos, a lo sumo",
        Label::BlockageFreeArea => "Área libre en una obstrucción (%)",
        Label::BlockageHint => "100 si no hay.",
        Label::LeakArea => "Rendija de una junta con fuga al inicio",
        Label::LeakHint => {
            "0 si la junta es hermética. Una rendija de 1/16 in (1.6 mm) alrededor de un ducto de 4 in mide 0.8 in² (5 cm²)."
        }
        Label::EndsInWallBox => "Termina en una caja empotrada en la pared",
        Label::MoreAboutLeg => "Estimado, oculto u obstruido",
        Label::TerminationKind => "Terminación",
        Label::TerminationWallHood => "Campana de pared con una compuerta",
        Label::TerminationLouvredHood => "Campana de persianas",
        Label::TerminationRoofCap => "Sombrerete de techo",
        Label::TerminationOpenEnd => "Extremo abierto (para tomar una lectura)",
        Label::TerminationFreeArea => "Área libre de su abertura (%)",
        Label::BendMethods => "Codos lisos de este plano según",
        Label::SetOwnValue => "Usar un valor propio",
        Label::OwnLow => "Bajo",
        Label::OwnLikely => "Probable",
        Label::OwnHigh => "Alto",
        Label::OwnNote => "De dónde sale",
        Label::OwnUse => "Usar estos",
        Label::OwnTakeBack => "Volver al valor incluido",
        Label::HousePressure => "La casa frente al exterior",
        Label::MakeUpArea => "Área libre para el aire de reposición",
        Label::MakeUpHint => "0 si el cuarto está abierto a la casa.",
        Label::Elevation => "Elevación, desarrollada",
        Label::ElevationHint => {
            "Los tramos en una sola línea, vistos de lado. Arrastre una esquina redonda hacia arriba o hacia \
             abajo para subir o bajar ahí el recorrido."
        }
        Label::ElevationKeys => {
            "Con el foco en la elevación: N y P seleccionan el elemento siguiente y el anterior, Re Pág y Av \
             Pág suben y bajan el recorrido en la esquina seleccionada (con Mayús en pasos mayores), Ctrl+Z \
             deshace, Esc suelta."
        }
        Label::PressureLine => "Línea de presión",
        Label::PressureLineTotal => "total",
        Label::PressureLineStatic => "estática",
        Label::PressureLineMeaning => {
            "Presión frente al exterior a lo largo de la longitud desarrollada, desde la salida de la \
             secadora. Un accesorio hace un escalón."
        }
        Label::InsertBend => "Hacer una curva en este tramo",
        Label::DeleteBend => "Quitar esta curva",
        Label::LossCoefficient => "Coeficiente de pérdida K",
        Label::Roughness => "Rugosidad de la pared",
        Label::SourceHeading => "Fuente",
        Label::AirAndSite => "Aire y sitio",
        Label::AirDriver => "Qué mueve el aire",
        Label::DriverTypicalBlower => "Soplador típico de tamaño normal (supuesto)",
        Label::DriverStated => "Un flujo de aire que yo indico",
        Label::Altitude => "Altitud",
        Label::OutdoorTemperature => "Temperatura exterior",
        Label::ExhaustTemperature => "Temperatura del aire de escape",
        Label::CodeCheck => "Revisión del código",
        Label::RuleSet => "Conjunto de reglas",
        Label::PathThroughFittings => {
            "El trayecto por los codos también cuenta como longitud (la lectura más estricta)"
        }
        Label::MeasuredLength => "Longitud medida",
        Label::Deductions => "Deducciones por codos",
        Label::CodeSourceNote => {
            "No se confirmaron ediciones posteriores a 2021. Las filas de la tabla para 8 in de radio a 90° y \
             para 10 in se leyeron de segunda mano. Deciden el código adoptado localmente, las instrucciones \
             del fabricante de la secadora y los profesionales con licencia."
        }
        Label::MakerLength => "Ducto de escape más largo",
        Label::MakerElbow45 => "Descuento por un codo de 45°",
        Label::MakerElbow90 => "Descuento por un codo de 90°",
        Label::MakerBackPressure => "Contrapresión máxima en la salida",
        Label::MakerEmpty => "Vacío mientras no se conozca.",
        Label::Findings => "Observaciones",
        Label::Cautions => "Precauciones",
        Label::ScopeNote => {
            "No se consideran: ventiladores auxiliares, pozos compartidos por varias secadoras, secadoras sin ducto."
        }
        Label::PlanKept => "El plano abierto está como estaba.",
        Label::Dismiss => "Cerrar",
        Label::Legend => "Parte de la pérdida",
        Label::LegendLow => "poca",
        Label::LegendHigh => "la mayor",
        Label::KeepUntouched => "Se guarda en este navegador en cuanto lo cambie",
        Label::KeepSaving => "Guardando",
        Label::KeepSaved => "Guardado en este navegador",
        Label::KeepNotKept => "Los cambios no se guardan",
        Label::KeepRefused => {
            "Este navegador no deja que la página guarde nada, como en una ventana privada: los cambios se \
             pierden al cerrar la página. Guarde un archivo para conservarlos."
        }
        Label::KeepNoAnswer => {
            "El almacenamiento de este navegador no responde, así que los cambios no se guardan. Cierre otras \
             pestañas de esta página y vuelva a cargarla, o guarde un archivo."
        }
        Label::KeepFull => {
            "El almacenamiento de este navegador está lleno, así que los últimos cambios no se guardan. Guarde \
             un archivo o haga espacio: el próximo cambio lo intenta otra vez."
        }
        Label::KeepFailed => {
            "Este navegador no pudo guardar los últimos cambios, así que no están guardados. Guarde un archivo; \
             el próximo cambio lo intenta otra vez."
        }
        Label::KeepElsewhere => {
            "Este navegador guarda otro plano que aquel con el que siguió esta página: quizá lo guardó otra \
             pestaña. Para que no se pierda, los cambios de aquí no se guardan. Guarde un archivo, vuelva a \
             cargar la página para abrir el otro plano, o conserve este en su lugar."
        }
        Label::KeepUnreadable => "No se pudo leer el plano que guarda este navegador.",
        Label::KeepNoRecord => "No es lo que esta página guarda.",
        Label::KeepUnreadableStays => {
            "Se deja como está, y se abrió el ejemplo. Los cambios no se guardan hasta que este plano tome su \
             lugar."
        }
        Label::KeepDownloadStored => "Descargar lo guardado",
        Label::KeepInstead => "Conservar este plano en su lugar",
        Label::More => "Más",
        Label::LargeType => "Letra grande",
        Label::CloseSelected => "Cerrar lo seleccionado",
        Label::Keys => "Teclas",
        Label::KeysOnDrawing => "En el dibujo, mientras tiene el foco",
        Label::KeysEverywhere => "En todas partes",
        Label::KeysColumnKey => "Tecla",
        Label::KeysColumnDoes => "Qué hace",
        Label::KeysCommand => "En una Mac, Comando hace lo que hace Ctrl.",
        Label::KeyNext => "Seleccionar el elemento siguiente",
        Label::KeyPrevious => "Seleccionar el elemento anterior",
        Label::KeyMove => "Mover la esquina seleccionada una pulgada o un centímetro",
        Label::KeyMoveFar => "Lo mismo, un pie o diez centímetros",
        Label::KeyNextThing => {
            "Seleccionar el siguiente muro, abertura, obstáculo, zona o la secadora"
        }
        Label::KeyPreviousThing => "Seleccionar la cosa anterior",
        Label::KeyKeepThings => "Conservar lo seleccionado: T le agrega la cosa siguiente",
        Label::KeyAll => "Seleccionar todo",
        Label::KeyLength => "Escribir la longitud del tramo seleccionado, también vertical",
        Label::KeyDrawRun => "Dibujar el recorrido desde la salida",
        Label::KeyPutPoint => "Al dibujar: poner un punto en el cursor",
        Label::KeyBend => "Hacer una curva en el tramo seleccionado",
        Label::KeyRemove => "Quitar la curva seleccionada",
        Label::KeyLetGo => "Soltar lo seleccionado",
        Label::KeyHelp => "Mostrar estas teclas",
        Label::KeyTab => "Ir al botón o campo siguiente",
        Label::KeyTabBack => "Ir al anterior",
        Label::KeyPress => "Presionar un botón, marcar una casilla",
        Label::KeyTake => "Tomar lo escrito en un campo; presionar un botón",
        Label::KeyClose => "Cerrar estas teclas o, en una página angosta, lo seleccionado",
    }
}

pub(super) fn caution(caution: Caution) -> &'static str {
    match caution {
        Caution::LintBurns => {
            "La pelusa arde. El recorrido de escape de una secadora se mantiene limpio desde el filtro de \
             pelusa hasta la campana."
        }
        Caution::OutdoorsOnly => {
            "El escape va al exterior y a ningún otro lugar, sin malla en la terminación y sin ducto de \
             plástico ni flexible de aluminio dentro de muros."
        }
        Caution::GasExhaust => {
            "El escape de una secadora de gas lleva productos de la combustión. Si se obstruye, puede entrar \
             monóxido de carbono en la casa: detenga la secadora, ventile y pida que le den servicio."
        }
        Caution::BeforeOpening => {
            "Desconecte la electricidad y cierre el gas antes de mover una secadora o de abrir su recorrido. \
             Tenga cuidado al trabajar en altura."
        }
        Caution::CodeDecides => {
            "Deciden el código adoptado localmente, las instrucciones del fabricante de la secadora y los \
             profesionales con licencia, no esta página."
        }
    }
}
