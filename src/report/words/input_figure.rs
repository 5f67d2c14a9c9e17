//! Figures of the uncertain inputs, in the units that people know them by.

use crate::plan::Input;
use crate::source::Coefficient;
use crate::units::{Airflow, Pressure, UnitSystem};

/// An input's value, in the unit that people know it by.
pub(super) fn value(units: UnitSystem, input: Input, value: f64) -> String {
    match input {
        Input::RigidRoughness | Input::SemiRigidRoughness | Input::FoilRoughness => {
            format!("{:.3} mm", value * 1000.0)
        }
        Input::FlapWeight | Input::BlowerShutOffPressure => {
            units.pressure(Pressure::from_pascals(value)).to_string()
        }
        Input::BlowerFreeAirflow => units
            .airflow(Airflow::from_cubic_metres_per_second(value))
            .to_string(),
        _ => format!("{value:.2}"),
    }
}

/// What the figures of an input's range are.
pub(super) enum RangeOf {
    /// They are worked out for each element, and there are none of the whole.
    EachElement,
    /// Millimetres, without their unit.
    Millimetres([String; 3]),
    /// Figures that need no word: pressures, airflows, discharge coefficients.
    Plain([String; 3]),
    /// Loss coefficients.
    LossCoefficient([String; 3]),
    /// Exponents.
    Exponent([String; 3]),
    /// Factors.
    Factor([String; 3]),
}

/// Low, likely and high of an input.
pub(super) fn range(units: UnitSystem, input: Input, coefficient: &Coefficient) -> RangeOf {
    let Coefficient {
        low, likely, high, ..
    } = *coefficient;
    let figures = [low, likely, high];
    let hundredths = || figures.map(|figure| format!("{figure:.2}"));
    match input {
        Input::SmoothElbow | Input::CloseElbows | Input::Estimates => RangeOf::EachElement,
        Input::RigidRoughness | Input::SemiRigidRoughness | Input::FoilRoughness => {
            RangeOf::Millimetres(figures.map(|metres| format!("{:.2}", metres * 1e3)))
        }
        Input::FlapWeight | Input::BlowerShutOffPressure | Input::BlowerFreeAirflow => {
            RangeOf::Plain(figures.map(|figure| value(units, input, figure)))
        }
        Input::WallHood
        | Input::LouvredHood
        | Input::RoofCap
        | Input::WallBox
        | Input::SegmentedElbow => RangeOf::LossCoefficient(hundredths()),
        Input::BlowerExponent => RangeOf::Exponent(hundredths()),
        Input::MakeUpDischarge | Input::LeakDischarge => RangeOf::Plain(hundredths()),
        Input::FlexibleCompression | Input::SharpMitre | Input::BentFlexible | Input::Blockage => {
            RangeOf::Factor(hundredths())
        }
    }
}
