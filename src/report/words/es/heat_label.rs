//! Fixed texts of heat and moisture.

use crate::report::words::HeatLabel;

pub(super) fn heat_label(key: HeatLabel) -> &'static str {
    match key {
        HeatLabel::Line => "Temperatura a lo largo del recorrido",
        HeatLabel::LineMeaning => {
            "Donde la pared del ducto está más fría que el punto de rocío del aire, el agua se condensa en \
             ella y la pelusa se pega: ese trecho aparece rayado aquí y en el dibujo. El aire alrededor del \
             ducto es el de la zona en que se encuentra; donde no hay zona, 20 °C (68 °F) en el cuarto y el \
             aire exterior arriba del techo y debajo del piso."
        }
        HeatLabel::LineAir => "aire",
        HeatLabel::LineWall => "pared",
        HeatLabel::LineDewPoint => "punto de rocío",
        HeatLabel::AirKeepsTemperature => {
            "El plano supone que el aire conserva su temperatura. Elija en Aire y sitio que se enfríe \
             para ver dónde se moja la pared."
        }
        HeatLabel::Phase => "Fase del ciclo",
        HeatLabel::PhaseHint => {
            "Pone la temperatura y la humedad supuestas para esa fase; ambas se pueden cambiar."
        }
        HeatLabel::PhaseNone => "Mis propios datos",
        HeatLabel::ExhaustHumidity => "Humedad del aire de escape, %",
        HeatLabel::AlongRun => "A lo largo del recorrido",
        HeatLabel::AlongRunCools => "El aire se enfría",
        HeatLabel::AlongRunKeeps => "El aire conserva su temperatura",
        HeatLabel::Insulation => "Aislamiento",
        HeatLabel::InsulationHint => {
            "Valor R; 0 si el ducto no está aislado. R-8 equivale a unas 2 in (55 mm) de forro."
        }
        HeatLabel::Metal => "Material",
        HeatLabel::MetalGalvanized => "Acero galvanizado",
        HeatLabel::MetalAluminium => "Aluminio",
        HeatLabel::AtEnd => "Aire en la terminación",
        HeatLabel::ColdestWall => "Pared más fría",
        HeatLabel::DewPoint => "Punto de rocío en la secadora",
        HeatLabel::Water => "Se condensa",
        HeatLabel::DryingTime => {
            "No se indica cuánto más tarda una carga cuando el recorrido perdió flujo de aire: junto con el \
             flujo lo deciden el calentador, el termostato y la carga, y no se encontró ninguna fuente \
             abierta que los relacione en una secadora de casa."
        }
    }
}
