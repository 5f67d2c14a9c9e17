//! The uncertain inputs: their names and ranges.

use crate::plan::Input;
use crate::report::words::input_figure::{self, RangeOf};
use crate::source::Coefficient;
use crate::units::UnitSystem;

pub(super) const fn input(input: Input) -> &'static str {
    match input {
        Input::RigidRoughness => "Roughness of rigid duct",
        Input::SemiRigidRoughness => "Roughness of semi-rigid duct",
        Input::FoilRoughness => "Roughness of foil duct",
        Input::FlexibleCompression => "Effect of flexible duct pushed together",
        Input::SmoothElbow => "Spread of the methods for smooth elbows",
        Input::SegmentedElbow => "Loss of a segmented elbow",
        Input::SharpMitre => "Loss of a sharp mitre",
        Input::BentFlexible => "Loss of flexible duct bent by hand",
        Input::CloseElbows => "Effect of elbows close together",
        Input::Blockage => "Loss of a blockage",
        Input::WallHood => "Loss of the wall hood",
        Input::LouvredHood => "Loss of the louvred hood",
        Input::RoofCap => "Loss of the roof cap",
        Input::FlapWeight => "Weight of the hood's flap",
        Input::MakeUpDischarge => "Discharge coefficient of the make-up air opening",
        Input::Estimates => "Estimated and concealed lengths",
        Input::BlowerFreeAirflow => "Blower's free airflow",
        Input::BlowerShutOffPressure => "Blower's pressure at no airflow",
        Input::BlowerExponent => "Shape of the blower's curve",
        Input::LeakDischarge => "Discharge coefficient of a leak",
        Input::WallBox => "Loss of the recessed wall box",
    }
}

/// Low to high and likely, in the unit that people know the input by.
pub(super) fn range(units: UnitSystem, input: Input, coefficient: &Coefficient) -> String {
    let span = |[low, likely, high]: [String; 3]| format!("{low} to {high}, likely {likely}");
    match input_figure::range(units, input, coefficient) {
        RangeOf::EachElement => "worked out for each element".to_owned(),
        RangeOf::Millimetres(figures) => format!("{} mm", span(figures)),
        RangeOf::Plain(figures) => span(figures),
        RangeOf::LossCoefficient(figures) => format!("K {}", span(figures)),
        RangeOf::Exponent(figures) => format!("exponent {}", span(figures)),
        RangeOf::Factor(figures) => format!("factor {}", span(figures)),
    }
}
