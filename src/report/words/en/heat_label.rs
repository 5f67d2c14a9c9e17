//! Fixed texts of heat and moisture.

use crate::report::words::HeatLabel;

pub(super) const fn heat_label(key: HeatLabel) -> &'static str {
    match key {
        HeatLabel::Line => "Temperature along the run",
        HeatLabel::LineMeaning => {
            "Where the wall is colder than the air's dew point, water condenses on it and lint sticks: \
             that stretch is hatched here and on the drawing. The air about the duct is that of the \
             zone it lies in; without a zone, 20 °C (68 °F) in the room and the outdoor air above the \
             ceiling and under the floor."
        }
        HeatLabel::LineAir => "air",
        HeatLabel::LineWall => "wall",
        HeatLabel::LineDewPoint => "dew point",
        HeatLabel::AirKeepsTemperature => {
            "The plan takes the air to keep its temperature. Choose that it cools under Air and site \
             to see where the wall gets wet."
        }
        HeatLabel::Phase => "Phase of the cycle",
        HeatLabel::PhaseHint => {
            "Puts in the temperature and humidity assumed for that phase; both can be changed."
        }
        HeatLabel::PhaseNone => "My own figures",
        HeatLabel::ExhaustHumidity => "Exhaust humidity, %",
        HeatLabel::AlongRun => "Along the run",
        HeatLabel::AlongRunCools => "The air cools",
        HeatLabel::AlongRunKeeps => "The air keeps its temperature",
        HeatLabel::Insulation => "Insulation",
        HeatLabel::InsulationHint => "R-value; 0 for bare duct. R-8 is about 2 in (55 mm) of wrap.",
        HeatLabel::Metal => "Metal",
        HeatLabel::MetalGalvanized => "Galvanized steel",
        HeatLabel::MetalAluminium => "Aluminium",
        HeatLabel::AtEnd => "Air at the termination",
        HeatLabel::ColdestWall => "Coldest wall",
        HeatLabel::DewPoint => "Dew point at the dryer",
        HeatLabel::Water => "Condenses",
        HeatLabel::DryingTime => {
            "How much longer a load takes in a run that lost airflow is not shown: heater, thermostat \
             and load decide it with the airflow, and no open source was found that ties them together \
             for a dryer at home."
        }
    }
}
