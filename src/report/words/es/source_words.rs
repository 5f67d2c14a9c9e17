//! Sources in one line. A publication keeps its title and its place in it as published; what is no
//! publication (an assumption, a practice, something typed) is said in words of this language.

use crate::rules::DOOR_SOURCE;
use crate::source::{Source, Standing};
use crate::system::{SOURCES, Subject};

pub(super) fn source(source: &Source) -> String {
    let standing = super::standing(source.standing);
    let [title, edition, locator] =
        own(source).unwrap_or([source.title, source.edition, source.locator]);
    format!("{title}, {edition}; {locator} ({standing}).")
}

/// What a source is called.
pub(super) fn title(source: &Source) -> &'static str {
    own(source).map_or(source.title, |[title, ..]| title)
}

/// Title, edition and place of what is no publication; none for what is one.
fn own(source: &Source) -> Option<[&'static str; 3]> {
    match source.standing {
        Standing::Published | Standing::SecondHand | Standing::Memory => return None,
        Standing::Typed => {
            return Some([
                "Instrucciones de instalación del fabricante de la secadora, como se escribieron en este plano",
                "según lo escrito",
                "longitud, deducciones y contrapresión de este plano",
            ]);
        }
        Standing::CommonPractice | Standing::Assumption => {}
    }
    let listed = SOURCES.iter().find(|(_, other)| **other == *source);
    let Some((subject, _)) = listed else {
        return Some(advice(source));
    };
    of_the_blower_and_the_duct(*subject).or_else(|| of_the_rest(*subject))
}

/// What the code check rests on that is no code.
fn advice(source: &Source) -> [&'static str; 3] {
    if *source == DOOR_SOURCE {
        [
            "Práctica común, sin fuente",
            "sin fecha",
            "una puerta de 80 in sobre el piso",
        ]
    } else {
        [
            "Práctica común, como la da también una guía estatal de climatización de viviendas",
            "sin fecha",
            "terminación sobre el nivel del suelo, aislamiento en espacios sin calefacción, pendiente hacia \
             la terminación",
        ]
    }
}

fn of_the_blower_and_the_duct(subject: Subject) -> Option<[&'static str; 3]> {
    Some(match subject {
        Subject::Blower => [
            "Supuesto nuestro para el soplador de una secadora de tamaño normal; no se encontró ninguna curva \
             abierta",
            "2026",
            "presión estática p = p0 (rho/1.2) (1 - (Q/Q0)^n); da a un recorrido corto y limpio de 106 a 177 \
             cfm y de 0.24 a 0.64 in. w.c.",
        ],
        Subject::BentFlexible => [
            "La curva lisa de Rennels & Hudson con el factor de fricción de la pared rugosa: calculado, no \
             medido",
            "2026",
            "alrededor de 0.67 con r/D 1 y 0.45 con 1.5",
        ],
        Subject::SmoothElbow => [
            "Extensión nuestra de las fórmulas de curvas a giros leves y a curvas cerradas de más de 90°",
            "2026",
            "con menos de 45°, lo menor entre curva e inglete; con menos de 10°, decrece hasta nada; con más \
             de 90° y r/D menor que 1, uno de 90 y el resto",
        ],
        Subject::SegmentedElbow => [
            "Estimación nuestra para codos de gajos de 4 in; los valores de manual para ductos mayores (0.33 \
             a 0.42, de memoria) quedan bajos en este tamaño",
            "2026",
            "90°, r/D 1, cuatro o cinco piezas; la fricción del arco va aparte",
        ],
        Subject::Leak => [
            "Ley del orificio con el coeficiente de descarga de una abertura de arista viva; no se encontró \
             ningún valor para una junta de secadora",
            "2026",
            "Cd 0.6, se cree que de 0.4 a 0.8; el área de la rendija es del usuario",
        ],
        Subject::WallBox => [
            "Supuesto del proyecto para la boca de una caja empotrada en la pared; no se encontró ningún valor \
             medido",
            "2026",
            "K 0.10, se cree que de 0 a 0.3; una curva dentro de la caja es un elemento aparte",
        ],
        Subject::Termination => [
            "Supuesto nuestro para una terminación de 4 in que se mueve libremente; no se encontró ninguna \
             medición abierta",
            "2026",
            "K sobre la presión de velocidad del ducto, con la única presión de velocidad de la salida \
             incluida",
        ],
        Subject::MakeUpAir => [
            "Supuesto nuestro para el aire de la casa",
            "2026",
            "20 °C, medio saturado: su densidad casi no mueve la pérdida",
        ],
        _ => return None,
    })
}

fn of_the_rest(subject: Subject) -> Option<[&'static str; 3]> {
    Some(match subject {
        Subject::Ceiling => [
            "Práctica común, sin fuente",
            "sin fecha",
            "un techo de 8 ft, hasta que el plano dé el suyo",
        ],
        Subject::Insulation => [
            "Supuesto nuestro para forro seco de lana mineral o de vidrio, sin comprimir",
            "2026",
            "conductividad cerca de la temperatura del cuarto; un forro apretado o mojado retiene menos calor",
        ],
        Subject::Surroundings => [
            "Supuesto nuestro donde ninguna zona dice otra cosa",
            "2026",
            "entre piso y techo, 20 °C; arriba del techo y debajo del piso, el aire exterior",
        ],
        Subject::CyclePhase => [
            "Supuesto nuestro para una secadora de tamaño normal de unos 5.5 kW con 0.06 m3/s de aire del \
             cuarto",
            "2026",
            "balance de energía: el calentador menos lo que calienta el aire y la carga; el resto evapora 3 kg \
             por hora mientras la carga está mojada",
        ],
        Subject::CarrySpeed => [
            "Práctica común: la pelusa se asienta en los ductos de secadora por debajo de unos 1200 fpm",
            "2026",
            "sin fuente; una observación, nunca una raya para aprobar o reprobar",
        ],
        Subject::CentreLine => [
            "Perfil de ley de potencia del flujo turbulento en un tubo (Bird, Stewart & Lightfoot, Transport \
             Phenomena); tomas cerca de curvas, supuesto nuestro",
            "2002; 2026",
            "cociente de la velocidad media a la máxima 2 n²/((n + 1)(2 n + 1)) con n alrededor de 7; más amplio donde el \
             perfil no está desarrollado",
        ],
        Subject::NewRoutes => [
            "Supuesto nuestro para recorridos nuevos",
            "2026",
            "1/4 in a cada lado del ducto, el cuerpo de una secadora hasta 1.1 m arriba de su salida, radio \
             largo de 1.5 diámetros",
        ],
        Subject::Instruments => [
            "Supuesto nuestro para manómetros, anemómetros y termómetros de mano",
            "2026",
            "último dígito y tolerancia, hasta que se escriban los del instrumento",
        ],
        Subject::SiteReading => [
            "Supuesto nuestro para lecturas en el sitio: errores además de los del instrumento, y lo que es \
             posible en absoluto",
            "2026",
            "junto a cada valor de la búsqueda de fallas; ninguno se midió",
        ],
        Subject::FaultOdds => [
            "La pelusa se junta primero en accesorios de 90 grados y en una compuerta que se atasca: práctica \
             común, sin fuente; todo valor es supuesto nuestro",
            "2026",
            "probabilidades de un recorrido que alguien tuvo motivo para medir",
        ],
        Subject::TestEffort => [
            "Esfuerzo de cada prueba frente a una lectura en la salida: práctica común, sin fuente; todo valor \
             es supuesto nuestro",
            "2026",
            "1 por una lectura en una toma que ya existe; la mitad es preparar la secadora, lo que toda prueba \
             requiere",
        ],
        Subject::TradeParts => [
            "Largos comerciales del ducto redondo de metal, extremos engarzados, cinta y abrazaderas: práctica \
             común, sin fuente",
            "2026",
            "ducto de 2, 3, 5 y 10 ft; un extremo macho de 1 1/2 in; una vuelta y cuarto de cinta en cada \
             junta; una abrazadera en cada extremo del ducto flexible",
        ],
        Subject::EachElement => [
            "Calculado para cada elemento",
            "2026",
            "diferencia entre métodos, distancia entre codos o la estimación escrita",
        ],
        Subject::User => [
            "Fijado en este plano",
            "según la nota",
            "los valores propios del plano",
        ],
        _ => return None,
    })
}
