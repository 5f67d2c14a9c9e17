//! What is said of suggested runs.

use super::room::zone;
use crate::plan::OutletSide;
use crate::report::words::{RerouteText, listing};
use crate::units::UnitSystem;

#[allow(
    clippy::too_many_lines,
    clippy::format_push_string,
    reason = "one exhaustive match, a line or two a message"
)]
pub(super) fn reroute(units: UnitSystem, text: &RerouteText) -> String {
    match text {
        RerouteText::Heading => "Otros recorridos".to_owned(),
        RerouteText::Explanation => {
            "Busca mejoras de este recorrido y otros recorridos que esquiven \
             todo lo dibujado, y calcula cada uno por completo. Nada cambia hasta que se elige uno."
                .to_owned()
        }
        RerouteText::Start => "Buscar otros recorridos".to_owned(),
        RerouteText::Stop => "Detener la búsqueda".to_owned(),
        RerouteText::Progress {
            done,
            of,
            looked_at,
        } => {
            format!("Etapa {done} de {of} terminada, {looked_at} recorridos parciales revisados.")
        }
        RerouteText::NoAnswer => {
            "La búsqueda se detuvo sola y no dio respuesta. El plano está como estaba; \
             buscar otra vez puede servir."
                .to_owned()
        }
        RerouteText::Finished(0) => "No se encontró ningún recorrido mejor que este.".to_owned(),
        RerouteText::Finished(1) => "Una sugerencia.".to_owned(),
        RerouteText::Finished(count) => {
            format!("{count} sugerencias, primero la de menor contrapresión.")
        }
        RerouteText::FinishedEarly(count) => format!(
            "{count} sugerencias. La búsqueda revisó primero los recorridos más cortos y se detuvo antes \
             de revisarlos todos: puede quedar uno mejor."
        ),
        RerouteText::Proven { cools } => {
            let if_cooling = if *cools {
                ", si el aire conservara su temperatura en el camino"
            } else {
                ""
            };
            format!(
                "Con la salida de la secadora como está, ningún recorrido por las líneas que la búsqueda \
                 traza junto a muros y obstáculos pierde menos que el mejor recorrido nuevo{if_cooling}: \
                 eso quedó demostrado."
            )
        }
        RerouteText::PresentHasNoRoom => {
            "El recorrido actual no cabe donde está dibujado: uno que quepa puede perder más."
                .to_owned()
        }
        RerouteText::AllowOtherSides => {
            "La salida de la secadora puede pasar a otro de sus lados".to_owned()
        }
        RerouteText::AllowMovedDryer => "La secadora se puede mover y girar".to_owned(),
        RerouteText::CloseZone(kind) => format!("No pasar por esta zona: {}", zone(*kind)),
        RerouteText::Show => "Mostrar en el dibujo".to_owned(),
        RerouteText::Take => "Usar este recorrido".to_owned(),
        RerouteText::Present => "Actual".to_owned(),
        RerouteText::Suggested => "Sugerido".to_owned(),
        RerouteText::Parts => "Tramos rectos y codos".to_owned(),
        RerouteText::NewRoute {
            through_wall,
            end_moves,
        } => {
            let out = if *through_wall {
                "con salida por un muro"
            } else {
                "con salida por el techo"
            };
            format!(
                "Tienda el recorrido de nuevo con ducto rígido, {out}, a {} de donde termina ahora.",
                units.length(*end_moves)
            )
        }
        RerouteText::OutletSide(side) => {
            let side = match side {
                OutletSide::Back => "atrás",
                OutletSide::Left => "en el lado izquierdo",
                OutletSide::Right => "en el lado derecho",
            };
            format!(
                "Requiere que la salida de la secadora esté {side}: verifique si el fabricante lo permite."
            )
        }
        RerouteText::TurnDryer(turn) => {
            format!(
                "Gire la secadora {:.0}° en el sentido de las manecillas del reloj.",
                turn.degrees()
            )
        }
        RerouteText::MoveDryer(by) => format!(
            "Mueva la secadora {} de lado, hasta alinearla con lo que sigue.",
            units.length(*by)
        ),
        RerouteText::ShorterTransition(by) => format!(
            "Acerque la secadora {}: su ducto de transición se acorta en lo mismo.",
            units.length(*by)
        ),
        RerouteText::LongRadius { bends, radius } => format!(
            "Un codo liso con radio de {} a la línea central en {}, contando desde la secadora.",
            units.length(*radius),
            numbered("la curva", "las curvas", bends)
        ),
        RerouteText::TwoFortyFives { bends, off } => {
            let more = if bends.len() > 1 { " o más" } else { "" };
            format!(
                "Dos codos de 45°, cada uno a {}{more} de la esquina original, en lugar del codo de 90° en \
                 {}, contando desde la secadora.",
                units.length(*off),
                numbered("la curva", "las curvas", bends)
            )
        }
        RerouteText::Rigid(legs) => format!(
            "Ducto rígido en lugar del flexible en {}, contando desde la secadora.",
            numbered("el tramo", "los tramos", legs)
        ),
        RerouteText::DropOffset {
            bend,
            aside,
            moves_hood,
        } => {
            let hood = if *moves_hood {
                "; la campana se corre a lo largo de su muro"
            } else {
                ""
            };
            format!(
                "Elimine el desvío lateral de {} (ida y vuelta) en la curva {bend}, contando desde la \
                 secadora{hood}.",
                units.length(*aside)
            )
        }
        RerouteText::DropCorner(bend) => {
            format!("Elimine la curva {bend}, contando desde la secadora.")
        }
        RerouteText::Why { bends, length } => {
            let bends = match bends.1.cmp(&bends.0) {
                core::cmp::Ordering::Less if bends.0 - bends.1 == 1 => "una curva menos".to_owned(),
                core::cmp::Ordering::Less => format!("{} curvas menos", bends.0 - bends.1),
                core::cmp::Ordering::Equal => "las mismas curvas".to_owned(),
                core::cmp::Ordering::Greater if bends.1 - bends.0 == 1 => {
                    "una curva más".to_owned()
                }
                core::cmp::Ordering::Greater => format!("{} curvas más", bends.1 - bends.0),
            };
            let way = if length.1 <= length.0 {
                "más corto"
            } else {
                "más largo"
            };
            let off = units.length((length.1 - length.0).abs());
            format!("Tiene {bends} y es {off} {way}.")
        }
        RerouteText::Gain {
            band,
            is_larger_than_its_doubt,
        } => {
            let (low, high) = (units.pressure(band.0), units.pressure(band.1));
            let range = format!("La contrapresión baja entre {} y {high}", low.figure);
            if *is_larger_than_its_doubt {
                format!("{range}, más que su incertidumbre.")
            } else {
                format!("{range}: la ganancia es menor que su incertidumbre.")
            }
        }
        RerouteText::ShorterByCode { band, shorter } => {
            let (low, high) = (units.pressure(band.0), units.pressure(band.1));
            format!(
                "La longitud según el código baja {}, pero la contrapresión cambia entre {} y {high}.",
                units.length(*shorter),
                low.figure
            )
        }
        RerouteText::Blocked {
            has_no_way_out: true,
            ..
        } => "No hay muro exterior por el que el recorrido pueda salir a escuadra.".to_owned(),
        RerouteText::Blocked { by, opens, .. } => {
            let mut text = "No hay otro recorrido que esquive lo dibujado.".to_owned();
            if !by.is_empty() {
                text += &format!(" En el camino: {}.", by.join(", "));
            }
            if let Some((name, airflow)) = opens {
                text += &format!(
                    " Sin {name} se abre uno, con un flujo de aire de {}.",
                    units.airflow(*airflow)
                );
            }
            text
        }
    }
}

/// "la curva 2", "las curvas 1, 2 y 5".
fn numbered(one: &str, more: &str, numbers: &[usize]) -> String {
    let what = if numbers.len() > 1 { more } else { one };
    format!("{what} {}", listing::numbers(numbers, "y"))
}
