//! What would settle a verdict that is open.

use super::code::{doubt, named};
use super::contracted;
use crate::plan::Input;
use crate::report::words::input_figure;
use crate::rules::{Deciding, Doubt};
use crate::system::ElementKind;
use crate::units::{Length, UnitSystem};

pub(super) fn deciding(
    units: UnitSystem,
    deciding: &Deciding,
    element: Option<&ElementKind>,
) -> String {
    let part = || element.map_or_else(|| "esa pieza".to_owned(), |kind| named(units, *kind));
    match deciding {
        Deciding::Length { at_most, .. } if *at_most <= Length::ZERO => format!(
            "La longitud {} solo se estimó; con las demás como están dibujadas, no hay valor de esta que \
             respete el límite.",
            contracted("de", &part())
        ),
        Deciding::Length { at_most, .. } => format!(
            "Decide la longitud {}, que solo se estimó. Hasta {} se respeta el límite; con más, no. \
             Mídala.",
            contracted("de", &part()),
            units.length(*at_most)
        ),
        Deciding::Elbows {
            at_most: Some(count),
            ..
        } => format!(
            "Deciden los codos ocultos. Con {count} como máximo se respeta el límite; con más, no. \
             Averigüe cuántos son."
        ),
        Deciding::Elbows { at_most: None, .. } => {
            "Deciden los codos ocultos y otros datos estimados; con las longitudes estimadas como están \
             dibujadas, aun con el mínimo de codos se pasa el límite. Mida esas longitudes."
                .to_owned()
        }
        Deciding::ElbowDeduction {
            doubt,
            elbows,
            at_most,
            ..
        } => elbow_deduction(units, *doubt, *elbows, *at_most, &part()),
        Deciding::Part { doubt: about, .. } => {
            let mend = match about {
                Doubt::FlexibleInRun => "Con ducto metálico rígido ahí queda resuelto.",
                Doubt::DiameterNotInTable => {
                    "Queda resuelto con ducto de 4 in (100 mm) ahí o con la longitud del fabricante de la \
                     secadora."
                }
                _ => "Mueva una esquina para que quepan.",
            };
            format!("Lo que decide: {}. {} {mend}", part(), doubt(*about))
        }
        Deciding::MakerLength => {
            "Escriba el ducto más largo que permiten las instrucciones de la secadora.".to_owned()
        }
        Deciding::OpeningHeight { differs_by } => format!(
            "Decide la altura de la abertura, que un plano no muestra. La distancia se respeta si el borde \
             más cercano de la abertura está al menos {} más arriba o más abajo que la terminación.",
            units.length(*differs_by)
        ),
        Deciding::RectangularDuct { .. } => format!(
            "Lo que decide: {}. El texto da el tamaño como diámetro, y este ducto no lo tiene. Pregunte a \
             quien aplica el código, o use ducto redondo de 4 in (100 mm).",
            part()
        ),
        Deciding::Input { input, turns_at } => match turns_at {
            Some(value) => format!(
                "Lo que decide: {}. Su valor es incierto, y el veredicto cambia en {}.",
                input_name(*input),
                input_figure::value(units, *input, *value)
            ),
            None => format!(
                "Lo que más pesa de lo incierto: {}; junto con lo demás, decide. Una lectura en la salida \
                 de la secadora lo resolvería.",
                input_name(*input)
            ),
        },
        Deciding::Airflow => {
            "Como está dibujado, no pasa aire por el recorrido, así que no hay presión que comparar."
                .to_owned()
        }
    }
}

fn elbow_deduction(
    units: UnitSystem,
    about: Doubt,
    elbows: usize,
    at_most: Length,
    part: &str,
) -> String {
    let which = match elbows {
        1 => part.to_owned(),
        _ => format!("{part} y {} más del mismo tipo", elbows - 1),
    };
    let mend = match about {
        Doubt::RadiusBelowTable => {
            "Con un codo de al menos 4 in (100 mm) de radio ahí queda resuelto."
        }
        Doubt::MakerElbowNotTyped => "Escriba la deducción del fabricante.",
        _ => "Pregunte a quien aplica el código cuánto cuenta por él.",
    };
    format!(
        "Lo que decide: {which}. {} El límite se respeta mientras cada codo descuente como máximo {}. {mend}",
        doubt(about),
        units.length(at_most)
    )
}

fn input_name(input: Input) -> &'static str {
    match input {
        Input::RigidRoughness => "la rugosidad del ducto rígido",
        Input::SemiRigidRoughness => "la rugosidad del ducto semirrígido",
        Input::FoilRoughness => "la rugosidad del ducto flexible de aluminio",
        Input::FlexibleCompression => "el efecto del ducto flexible sin estirar",
        Input::SmoothElbow => "el método para los codos lisos",
        Input::SegmentedElbow => "el coeficiente de pérdida de los codos segmentados",
        Input::SharpMitre => "la pérdida de los codos a inglete, como factor",
        Input::BentFlexible => "la pérdida del ducto flexible doblado a mano, como factor",
        Input::CloseElbows => "el efecto de un codo muy cerca de otro",
        Input::Blockage => "la pérdida de la obstrucción, como factor",
        Input::WallHood => "el coeficiente de pérdida de la campana de pared",
        Input::LouvredHood => "el coeficiente de pérdida de la campana de persianas",
        Input::RoofCap => "el coeficiente de pérdida del sombrerete de techo",
        Input::FlapWeight => "la presión que levanta la compuerta de la campana",
        Input::MakeUpDischarge => {
            "el coeficiente de descarga de la abertura del aire de reposición"
        }
        Input::Estimates => "las longitudes estimadas y los codos ocultos",
        Input::BlowerFreeAirflow => "el flujo de aire que da el soplador sin nada en contra",
        Input::BlowerShutOffPressure => "la presión que da el soplador sin flujo de aire",
        Input::BlowerExponent => "la forma de la curva del soplador",
        Input::LeakDischarge => "el coeficiente de descarga de la junta con fuga",
        Input::WallBox => "el coeficiente de pérdida de la caja empotrada en la pared",
    }
}
