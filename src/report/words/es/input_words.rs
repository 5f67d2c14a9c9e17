//! The uncertain inputs: their names and ranges.

use crate::plan::Input;
use crate::report::words::input_figure::{self, RangeOf};
use crate::source::Coefficient;
use crate::units::UnitSystem;

pub(super) const fn input(input: Input) -> &'static str {
    match input {
        Input::RigidRoughness => "Rugosidad del ducto rígido",
        Input::SemiRigidRoughness => "Rugosidad del ducto semirrígido",
        Input::FoilRoughness => "Rugosidad del ducto flexible de aluminio",
        Input::FlexibleCompression => "Efecto del ducto flexible sin estirar",
        Input::SmoothElbow => "Diferencia entre los métodos para codos lisos",
        Input::SegmentedElbow => "Pérdida de un codo segmentado",
        Input::SharpMitre => "Pérdida de un codo a inglete",
        Input::BentFlexible => "Pérdida del ducto flexible doblado a mano",
        Input::CloseElbows => "Efecto de codos muy juntos",
        Input::Blockage => "Pérdida de una obstrucción",
        Input::WallHood => "Pérdida de la campana de pared",
        Input::LouvredHood => "Pérdida de la campana de persianas",
        Input::RoofCap => "Pérdida del sombrerete de techo",
        Input::FlapWeight => "Peso de la compuerta de la campana",
        Input::MakeUpDischarge => "Coeficiente de descarga de la abertura del aire de reposición",
        Input::Estimates => "Longitudes estimadas y ocultas",
        Input::BlowerFreeAirflow => "Flujo libre del soplador",
        Input::BlowerShutOffPressure => "Presión del soplador sin flujo",
        Input::BlowerExponent => "Forma de la curva del soplador",
        Input::LeakDischarge => "Coeficiente de descarga de una fuga",
        Input::WallBox => "Pérdida de la caja empotrada en la pared",
    }
}

/// Low to high and likely, in the unit that people know the input by.
pub(super) fn range(units: UnitSystem, input: Input, coefficient: &Coefficient) -> String {
    let span = |[low, likely, high]: [String; 3]| format!("de {low} a {high}, probable {likely}");
    match input_figure::range(units, input, coefficient) {
        RangeOf::EachElement => "se calcula para cada elemento".to_owned(),
        RangeOf::Millimetres(figures) => format!("{} mm", span(figures)),
        RangeOf::Plain(figures) => span(figures),
        RangeOf::LossCoefficient(figures) => format!("K {}", span(figures)),
        RangeOf::Exponent(figures) => format!("exponente {}", span(figures)),
        RangeOf::Factor(figures) => format!("factor {}", span(figures)),
    }
}
