//! The uncertain inputs: their names and ranges.

use crate::plan::Input;
use crate::source::Coefficient;
use crate::units::{Airflow, Pressure, UnitSystem};

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
    let Coefficient {
        low, likely, high, ..
    } = *coefficient;
    let span = |show: &dyn Fn(f64) -> String| {
        let [low, likely, high] = [low, likely, high].map(show);
        format!("{low} to {high}, likely {likely}")
    };
    match input {
        Input::SmoothElbow | Input::CloseElbows | Input::Estimates => {
            "worked out for each element".to_owned()
        }
        Input::RigidRoughness | Input::SemiRigidRoughness | Input::FoilRoughness => {
            format!("{} mm", span(&|metres| format!("{:.2}", metres * 1e3)))
        }
        Input::FlapWeight | Input::BlowerShutOffPressure => {
            span(&|pascals| units.pressure(Pressure::from_pascals(pascals)).to_string())
        }
        Input::BlowerFreeAirflow => span(&|airflow| {
            units
                .airflow(Airflow::from_cubic_metres_per_second(airflow))
                .to_string()
        }),
        Input::WallHood
        | Input::LouvredHood
        | Input::RoofCap
        | Input::WallBox
        | Input::SegmentedElbow => {
            format!("K {}", span(&|k| format!("{k:.2}")))
        }
        Input::BlowerExponent => format!("exponent {}", span(&|exponent| format!("{exponent:.2}"))),
        Input::MakeUpDischarge | Input::LeakDischarge => span(&|value| format!("{value:.2}")),
        Input::FlexibleCompression | Input::SharpMitre | Input::BentFlexible | Input::Blockage => {
            format!("factor {}", span(&|factor| format!("{factor:.2}")))
        }
    }
}
