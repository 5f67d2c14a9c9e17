//! Heat, moisture and lint.

use crate::plan::Phase;
use crate::system::{Finding, InsulationUpgrade, LowPoint, WetStretch};
use crate::units::{MassFlow, UnitSystem};

/// A finding of heat, moisture or lint; none for another.
pub(super) fn finding(units: UnitSystem, finding: &Finding) -> Option<String> {
    Some(match finding {
        Finding::WetWall { stretch, freezes } => wet_wall(units, stretch, *freezes),
        Finding::Dip(low) => dip(units, low),
        Finding::SlowAir {
            velocity, carries, ..
        } => format!(
            "Aquí el aire baja a {}. Según la práctica común, la pelusa se mantiene en el aire arriba de \
             unos {}; ninguna fuente lo dice y no es un límite: busque la pelusa primero aquí.",
            units.velocity(*velocity),
            units.velocity(*carries)
        ),
        Finding::UpsizingSlows { before, after, .. } => format!(
            "El ducto más ancho pierde menos presión, pero frena el aire de {} a {}: la pelusa se asienta \
             antes.",
            units.velocity(*before),
            units.velocity(*after)
        ),
        _ => return None,
    })
}

fn wet_wall(units: UnitSystem, stretch: &WetStretch, freezes: bool) -> String {
    let ice = if freezes {
        " Una parte está bajo el punto de congelación: el hielo puede estrechar el ducto."
    } else {
        ""
    };
    format!(
        "Entre {} y {} del recorrido la pared está más fría que el punto de rocío, a {} donde más fría \
         está: ahí se condensan alrededor de {}, y la pelusa se pega.{ice}",
        units.length(stretch.from),
        units.length(stretch.to),
        units.temperature(stretch.coldest_wall),
        water(units, stretch.water)
    )
}

fn dip(units: UnitSystem, low: &LowPoint) -> String {
    let filled = if low.water > MassFlow::ZERO {
        format!(
            " En sus dos lados se condensan alrededor de {} y escurren hacia él.",
            water(units, low.water)
        )
    } else {
        String::new()
    };
    format!(
        "Aquí el recorrido baja y vuelve a subir {}: en este punto bajo se juntan agua y pelusa.{filled} \
         Dele al ducto pendiente en un solo sentido o drene el punto bajo.",
        units.length(low.depth)
    )
}

/// A flow of water for each hour of this phase.
pub(super) fn water(units: UnitSystem, flow: MassFlow) -> String {
    format!("{} de agua por hora", units.water_of_an_hour(flow))
}

pub(super) fn upgrade(units: UnitSystem, upgrade: &InsulationUpgrade) -> String {
    match upgrade {
        InsulationUpgrade::AlreadyDry => {
            "La pared se mantiene en todas partes arriba del punto de rocío: no hace falta aislamiento \
             para que esté seca."
                .to_owned()
        }
        InsulationUpgrade::Resistance {
            resistance_m2_k_per_w: resistance,
        } => format!(
            "{} en todo el recorrido mantendría la pared arriba del punto de rocío con este aire.",
            resistance_words(units, *resistance)
        ),
        InsulationUpgrade::NotByInsulation => {
            "Con este aire ningún aislamiento mantiene seca la pared: el aire mismo se enfría por debajo \
             de su punto de rocío. Sirve un recorrido más corto o por un lugar más cálido."
                .to_owned()
        }
        InsulationUpgrade::Unknown => String::new(),
    }
}

fn resistance_words(units: UnitSystem, resistance: f64) -> String {
    match units {
        UnitSystem::UsCustomary => {
            format!("Un aislamiento R-{}", units.resistance(resistance).figure)
        }
        UnitSystem::Si => format!("Un aislamiento de {}", units.resistance(resistance)),
    }
}

pub(super) const fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::WarmUp => "Calentamiento",
        Phase::Drying => "Secado",
        Phase::EndOfDrying => "Fin del secado",
        Phase::CoolDown => "Enfriamiento",
        Phase::NoHeat => "Sin calor, para lecturas",
    }
}
