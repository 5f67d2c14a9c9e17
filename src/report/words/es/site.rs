//! Readings on site.

use super::{element, element_size, site_grounds};
use crate::diagnosis::{CauseKind, Caveat, Objection, Test, TestCaution};
use crate::plan::{Conditions, Found, Pattern, Preparation, Spot, Taken};
use crate::report::words::chance::{Bound, Chance, percent};
use crate::report::words::first_letter::lower_first;
use crate::report::words::listing::those_so;
use crate::report::words::{Placed, SiteMessage};
use crate::units::{Temperature, UnitSystem, Velocity};

pub(super) fn site(units: UnitSystem, message: SiteMessage<'_>) -> String {
    match message {
        SiteMessage::Label(key) => super::site_label::site_label(key).to_owned(),
        SiteMessage::Preparation(line) => preparation(line).to_owned(),
        SiteMessage::Cause(kind, at) => cause(units, kind, at),
        SiteMessage::Test(test, at) => self::test(units, test, at),
        SiteMessage::Caution(caution) => self::caution(caution).to_owned(),
        SiteMessage::Caveat(caveat) => self::caveat(caveat),
        SiteMessage::Refused(why) => format!("No se tomó: {}", objection(units, why)),
        SiteMessage::Doubted(why) => format!("Se tomó, pero revise: {}", objection(units, why)),
        SiteMessage::Odds(odds) => self::odds(odds),
        SiteMessage::FreeArea(likely, low, high) => format!(
            "{:.0} % del área libre ({:.0} a {:.0} %)",
            likely * 100.0,
            low * 100.0,
            high * 100.0
        ),
        SiteMessage::AirflowLeft(share) => {
            let percent = share * 100.0;
            if share > 1.0 {
                format!(
                    "{percent:.0} % del flujo del recorrido limpio en la secadora, y no todo llega al \
                     exterior"
                )
            } else {
                format!("queda {percent:.0} % del flujo del recorrido limpio")
            }
        }
        SiteMessage::AirflowNow(mean, low, high) => format!(
            "{:.0} % ({:.0} a {:.0} %)",
            mean * 100.0,
            low * 100.0,
            high * 100.0
        ),
        SiteMessage::Spot(spot, at) => self::spot(units, spot, at),
        SiteMessage::Conditions(conditions) => self::conditions(conditions),
        SiteMessage::Pattern(pattern) => match pattern {
            Pattern::CentreLineAfterStraight => {
                "En la línea central, con diez diámetros rectos antes"
            }
            Pattern::CentreLine => "En la línea central",
            Pattern::Traverse => "Barrido por puntos, o toda la abertura",
        }
        .to_owned(),
        SiteMessage::Look(found, at) => {
            let found = match found {
                Found::Clear => "despejado",
                Found::Blocked => "algo estorba",
            };
            format!("Se revisó por dentro {}: {found}", placed(units, at))
        }
        SiteMessage::Done(kind, at) => done(units, kind, at),
        SiteMessage::Prepared(ticked, of) => format!("{ticked} de {of} listos"),
        SiteMessage::BlowerPoints(points) => format!(
            "Se leyeron {points} puntos de la curva de este soplador. Si se toman en lugar del soplador \
             supuesto, estrechan todas las bandas; quedan entre los valores propios del plano y se pueden \
             deshacer."
        ),
        SiteMessage::WouldRead(read, expected) => format!("leído {read}, esperado {expected}"),
        SiteMessage::Limit(limit, margin) => format!("límite {limit}, margen {margin}"),
        SiteMessage::Visit {
            number,
            date,
            entries,
        } => {
            let date = if date.is_empty() { "sin fecha" } else { date };
            let entries = match entries {
                1 => "1 anotación".to_owned(),
                entries => format!("{entries} anotaciones"),
            };
            format!("Visita {number}, {date}, {entries}")
        }
        SiteMessage::Picture(taken, number) => format!(
            "{} de la limpieza, foto {number}",
            match taken {
                Taken::Before => "Antes",
                Taken::After => "Después",
            }
        ),
        SiteMessage::Restored(airflow) => format!("Alrededor de {airflow} más de aire que antes"),
        SiteMessage::CleanGrounds(grounds) => site_grounds::clean(units, &grounds),
        SiteMessage::OddsGrounds(before, now) => site_grounds::odds(before, now),
        SiteMessage::AirflowGrounds(clean) => site_grounds::airflow(clean),
        SiteMessage::Worth { effort, bits } => {
            format!(
                "Esfuerzo {effort:.1} (una lectura en la salida vale 1); reduce la duda a la mitad {bits:.1} veces en promedio"
            )
        }
    }
}

/// An element with its place, so that two of a kind are told apart.
fn placed(units: UnitSystem, at: Option<Placed<'_>>) -> String {
    let Some((place, kind)) = at else {
        return "una pieza que ya no está en el plano".to_owned();
    };
    let size = element_size(units, *kind);
    let comma = if size.is_empty() { "" } else { ", " };
    let name = lower_first(element(*kind));
    format!("la pieza {place}, {name}{comma}{size}")
}

fn preparation(line: Preparation) -> &'static str {
    match line {
        Preparation::ScreenCleaned => "Filtro de pelusa limpio",
        Preparation::DrumEmpty => "Tambor vacío",
        Preparation::NoHeatCycle => "Ciclo sin calor seleccionado",
        Preparation::GaugeZeroed => "Manómetro en cero con ambos lados abiertos",
    }
}

fn cause(units: UnitSystem, kind: CauseKind, at: Option<Placed<'_>>) -> String {
    match kind {
        CauseKind::Blockage => format!("Pelusa u obstrucción en {}", placed(units, at)),
        CauseKind::CrushedFlex => format!("Ducto aplastado o tapado: {}", placed(units, at)),
        CauseKind::FlapStuck => format!("Compuerta atascada en {}", placed(units, at)),
        CauseKind::Blower => "Soplador débil, lento o cubierto de pelusa".to_owned(),
        CauseKind::Leak => "Una junta con fuga".to_owned(),
        CauseKind::RoomStarved => "Falta aire de reposición en el cuarto".to_owned(),
        CauseKind::LintScreen => "Filtro de pelusa lleno".to_owned(),
    }
}

fn done(units: UnitSystem, kind: CauseKind, at: Option<Placed<'_>>) -> String {
    match (kind, at) {
        (CauseKind::Blower, _) => "Se reparó el soplador".to_owned(),
        (CauseKind::Leak, _) => "Se selló la junta".to_owned(),
        (CauseKind::RoomStarved, _) => "Se abrió paso al aire de reposición".to_owned(),
        (CauseKind::LintScreen, _) => "Se limpió el filtro de pelusa".to_owned(),
        (_, Some(_)) => format!("Se limpió o reparó {}", placed(units, at)),
        (_, None) => "Se limpió todo el recorrido".to_owned(),
    }
}

fn test(units: UnitSystem, test: &Test, at: Option<Placed<'_>>) -> String {
    match test {
        Test::ReadAtOutlet => {
            "Lea la presión estática en la salida de la secadora, con todo el recorrido conectado".to_owned()
        }
        Test::CleanScreen => {
            "Limpie el filtro de pelusa y lea otra vez en la salida de la secadora".to_owned()
        }
        Test::OpenDoor => {
            "La misma lectura en la salida de la secadora, con una puerta o ventana del cuarto abierta"
                .to_owned()
        }
        Test::HoldFlap => {
            "Sostenga abierta la compuerta y lea en la salida de la secadora".to_owned()
        }
        Test::ReadVelocity => {
            "Lea la velocidad en la salida de la secadora, en la línea central".to_owned()
        }
        Test::ReadAtJoint(_) => format!(
            "Lea la presión estática en la junta antes de {}, con todo el recorrido conectado",
            placed(units, at)
        ),
        Test::OpenJoint(_) => format!(
            "Abra la junta antes de {} y lea en la salida de la secadora",
            placed(units, at)
        ),
        Test::OpenOutlet => {
            "Quite el ducto de la secadora y lea la velocidad en su salida".to_owned()
        }
        Test::LookInto(_) => format!("Revise por dentro {}", placed(units, at)),
    }
}

const fn caution(caution: TestCaution) -> &'static str {
    match caution {
        TestCaution::JointOpen => {
            "La secadora funciona con una junta abierta. Gas cerrado en la llave. Solo el ciclo sin calor. \
             Una ventana abierta. Saldrá pelusa. Nadie se retira mientras funciona. Vuelva a unir y \
             sellar la junta antes de usar calor."
        }
        TestCaution::Tap => {
            "Un orificio pequeño en el ducto: ciclo sin calor, bordes lisos; ciérrelo después con cinta de \
             aluminio, nunca con un tornillo que entre en el ducto."
        }
        TestCaution::PowerOff => {
            "Desconecte la electricidad y cierre el gas antes de abrir el recorrido. Vuelva a unirlo y \
             sellarlo antes de poner en marcha la secadora."
        }
        TestCaution::Height => {
            "Trabajo en altura: una escalera sobre suelo firme y alguien que la sostenga, o deje el techo \
             a un profesional."
        }
        TestCaution::CarbonMonoxide => {
            "Secadora de gas: un escape obstruido puede meter monóxido de carbono en la casa. Si alguien se \
             siente mal o suena una alarma, deténgala, ventile y pida que le den servicio."
        }
    }
}

fn caveat(caveat: Caveat) -> String {
    match caveat {
        Caveat::NothingRead => {
            "Todavía no se leyó nada: estas son las probabilidades según la costumbre del oficio, antes de \
             cualquier lectura."
                .to_owned()
        }
        Caveat::Contradiction(entry) => format!(
            "Ninguna falla sola, ni dos juntas, explican todas estas lecturas. La anotación {} es la que \
             peor concuerda: léala otra vez o compare el dibujo con el recorrido.",
            entry + 1
        ),
        Caveat::StatedAirflow => {
            "El plano indica su flujo de aire. Las lecturas se comparan en cambio con el soplador supuesto."
                .to_owned()
        }
        Caveat::FaultInPlan => {
            "El propio plano tiene una obstrucción, una fuga o un extremo cerrado en parte. El recorrido \
             limpio se toma sin ellos."
                .to_owned()
        }
        Caveat::PlaceGone(entry) => format!(
            "La anotación {} nombra un lugar que ya no está en el plano, y no se toma en cuenta.",
            entry + 1
        ),
        Caveat::TemperatureOnly(entry) => format!(
            "La anotación {} es una temperatura para la que no se predice nada, porque el aire del plano \
             conserva su temperatura o el recorrido estaba abierto antes de ella. Las probabilidades no se \
             basan en ella.",
            entry + 1
        ),
    }
}

fn objection(units: UnitSystem, objection: Objection) -> String {
    match objection {
        Objection::Negative => {
            "una presión menor que cero donde el soplador solo empuja. ¿Están cambiadas las mangueras? \
             ¿Está en cero el manómetro?"
                .to_owned()
        }
        Objection::FarAboveShutOff { times } => format!(
            "{times:.1} veces la presión máxima que da un soplador así. ¿Es correcta la unidad?"
        ),
        Objection::PastOpenJoint => {
            "en una junta abierta casi no hay presión estática.".to_owned()
        }
        Objection::TooFast { most } => format!(
            "más rápido que {}, que ninguna secadora alcanza. ¿Es correcta la unidad?",
            units.velocity(Velocity::from_metres_per_second(most))
        ),
        Objection::NoAir => "no se mueve aire aunque la secadora funciona.".to_owned(),
        Objection::BelowAmbient => {
            "más frío que el cuarto del que toma aire la secadora, mientras calienta.".to_owned()
        }
        Objection::TooHot { most } => format!(
            "más caliente que {}, temperatura a la que cualquier secadora se apaga.",
            units.temperature(Temperature::from_celsius(most))
        ),
        Objection::Uneven => {
            "los puntos difieren más de lo que difiere el aire en un ducto. ¿Estaba girada la sonda?"
                .to_owned()
        }
        Objection::NoPoints => "no hay ningún valor.".to_owned(),
    }
}

pub(super) fn odds(odds: f64) -> String {
    let word = match Chance::of(odds) {
        Chance::AlmostSure => "casi seguro",
        Chance::Likely => "probable",
        Chance::Possible => "posible",
        Chance::LessLikely => "menos probable",
        Chance::Unlikely => "poco probable",
        Chance::VeryUnlikely => "muy poco probable",
    };
    let (bound, figure) = percent(odds);
    let bound = match bound {
        Bound::Under => "menos de ",
        Bound::About => "",
        Bound::Over => "más de ",
    };
    format!("{bound}{figure}, {word}")
}

fn spot(units: UnitSystem, spot: &Spot, at: Option<Placed<'_>>) -> String {
    match spot {
        Spot::Outlet => "Salida de la secadora".to_owned(),
        Spot::Hood => "Campana o sombrerete".to_owned(),
        Spot::Before(_) => format!("Junta antes de {}", placed(units, at)),
    }
}

fn conditions(conditions: &Conditions) -> String {
    those_so([
        (conditions.heat, "con calor"),
        (
            !conditions.lint_screen_clean,
            "filtro de pelusa sin limpiar",
        ),
        (!conditions.drum_empty, "tambor con ropa"),
        (conditions.flap_held, "compuerta sostenida abierta"),
        (conditions.door_open, "puerta abierta"),
        (conditions.open_joint.is_some(), "junta abierta"),
    ])
}
