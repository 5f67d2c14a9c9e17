//! The code check: sets, verdicts, the length rule, and code beside air.

use super::{article, element, element_size};
use crate::plan::RuleSetId;
use crate::report::words::first_letter::lower_first;
use crate::report::words::listing::those_so;
use crate::report::words::rule_figure::{Side, length_margin, parted};
use crate::rules::{DeductionNote, Doubt, Practice, Verdict};
use crate::system::ElementKind;
use crate::units::{Length, UnitSystem};
use std::fmt::Write;

pub(super) fn rule_set(set: RuleSetId) -> &'static str {
    match set {
        RuleSetId::Irc2021 => "IRC 2021, sección M1502",
        RuleSetId::Irc2018 => "IRC 2018, sección M1502",
        RuleSetId::Irc2015 => "IRC 2015, sección M1502",
        RuleSetId::Irc2012 => "IRC 2012, sección M1502",
        RuleSetId::IrcBefore2012 => "IRC anterior a 2012",
        RuleSetId::Imc504 => "IMC, sección 504",
        RuleSetId::Ifgc614 => "IFGC, sección 614 (gas)",
        RuleSetId::Umc504 => "UMC y CMC, sección 504",
        RuleSetId::DryerMaker => "Límite del fabricante de la secadora",
    }
}

pub(super) fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "Cumple",
        Verdict::DoesNotMeet => "No cumple",
        Verdict::CannotTell => "No se puede determinar",
        Verdict::CheckOnSite => "Verificar en el sitio",
    }
}

pub(super) fn doubt(doubt: Doubt) -> &'static str {
    match doubt {
        Doubt::RadiusBelowTable => {
            "El radio de un codo es menor que 4 in, o el codo no tiene radio: la tabla no tiene fila para \
             él, y su deducción es al menos los 5 ft de la fila de 4 in."
        }
        Doubt::DiameterNotInTable => "La tabla es solo para ducto de 4 in.",
        Doubt::FlexibleInRun => {
            "Hay ducto flexible después de la transición: los códigos no lo permiten ahí, y la tabla no \
             tiene fila para él."
        }
        Doubt::EstimatedLength => {
            "El límite cae dentro de lo que solo se estimó: mida el trecho estimado u oculto para \
             resolverlo."
        }
        Doubt::ElbowsOverlap => {
            "Como están dibujados, los codos se traslapan, así que esa longitud no se puede construir."
        }
        Doubt::AngleNotNamed => {
            "Estas reglas no dicen nada de un codo de este ángulo; aquí se cuenta como cero."
        }
        Doubt::MakerElbowNotTyped => {
            "No se escribió la deducción del fabricante de la secadora para un codo; aquí se cuenta como \
             cero."
        }
        Doubt::LimitNotTyped => "No se escribió la longitud del fabricante de la secadora.",
    }
}

pub(super) fn deduction_note(note: DeductionNote) -> &'static str {
    match note {
        DeductionNote::NextSmallerRadius => "se tomó el radio menor más cercano de la tabla",
        DeductionNote::NextLargerAngle => "se tomó el ángulo mayor más cercano de la tabla",
        DeductionNote::OverNinety => "más de 90°: uno de 90 y el resto",
        DeductionNote::AtLeast => "al menos esto: radio menor que los de la tabla",
        DeductionNote::InTheLimit => "uno de los dos de 90 que el límite ya incluye",
        DeductionNote::NotNamed => "sin valor para este ángulo: se cuenta como cero",
    }
}

pub(super) fn code_length(units: UnitSystem, length: Length, limit: Option<Length>) -> String {
    let Some(limit) = limit else {
        return format!("{}, no se escribió un límite", units.length(length));
    };
    format!(
        "{} de {}, {}",
        units.length(length),
        units.length(limit),
        spare(length_margin(units, length, limit))
    )
}

/// A margin as words: how much, and on which side of the limit.
pub(super) fn spare((margin, side): (String, Side)) -> String {
    match side {
        Side::ToSpare => format!("margen de {margin}"),
        Side::Over => format!("{margin} de más"),
        Side::Short => format!("faltan {margin}"),
    }
}

pub(super) fn practice(practice: Practice) -> &'static str {
    match practice {
        Practice::OverGrade => {
            "Coloque la terminación al menos a 12 in (300 mm) sobre el nivel del suelo."
        }
        Practice::Insulation => "Aísle el ducto en espacios sin calefacción, con R-8.",
        Practice::Fall => {
            "Dele al ducto pendiente hacia la terminación, sin puntos bajos donde se junte agua."
        }
    }
}

pub(super) fn times(factor: f64) -> String {
    if factor >= 10.0 {
        format!("{factor:.0} veces")
    } else {
        format!("{factor:.1} veces")
    }
}

pub(super) fn disagreement(
    units: UnitSystem,
    air: Length,
    code: Length,
    most: Option<(&ElementKind, Length, Length)>,
    uncounted: Option<(&ElementKind, Length)>,
) -> String {
    let length = |length: Length| units.equivalent_length(length).to_string();
    // Writing into a string cannot fail.
    let mut text = format!(
        "Para el aire, el recorrido es tan largo como {} de ducto recto; el código cuenta {}.",
        length(air),
        length(code)
    );
    if let Some((kind, air, code)) = most {
        let (factor, air_is_more) = parted(air, code);
        let (more, less) = if air_is_more {
            ("el aire", "el código")
        } else {
            ("el código", "el aire")
        };
        let _ = write!(
            text,
            " Donde más difieren es en {}: {} en aire y {} en el código; {more} le da {} lo que le da \
             {less}.",
            named(units, *kind),
            length(air),
            length(code),
            times(factor)
        );
    }
    if let Some((kind, air)) = uncounted {
        let _ = write!(
            text,
            " El código no cuenta {}, que cuesta en aire {}.",
            named(units, *kind),
            length(air)
        );
    }
    text
}

/// An element in the middle of a sentence.
pub(super) fn named(units: UnitSystem, kind: ElementKind) -> String {
    let (article, name) = (article(kind), lower_first(element(kind)));
    let size = element_size(units, kind);
    if size.is_empty() {
        format!("{article} {name}")
    } else {
        format!("{article} {name} ({size})")
    }
}

/// How many findings have each verdict, those with none of it left out.
pub(super) fn findings_count(meet: usize, not: usize, open: usize) -> String {
    let verb = |count: usize, one: &'static str, more: &'static str| match count {
        1 => format!("{count} {one}"),
        _ => format!("{count} {more}"),
    };
    those_so([
        (meet > 0, verb(meet, "cumple", "cumplen")),
        (not > 0, verb(not, "no cumple", "no cumplen")),
        (open > 0, format!("{open} sin determinar")),
    ])
}
