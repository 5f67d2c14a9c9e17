//! Where the figures of heat and moisture come from, with the numbers put in.

use super::heat::water;
use crate::report::HeatFigures;
use crate::report::words::HeatFormula;
use crate::units::{Temperature, UnitSystem};

/// How a figure comes about.
pub(super) fn formula(units: UnitSystem, figures: &HeatFigures, which: HeatFormula) -> String {
    let temperature = |at: Option<Temperature>| {
        at.map_or_else(|| "-".to_owned(), |at| units.temperature(at).to_string())
    };
    let (dry_air, ratio) = (figures.dry_air, figures.humidity_ratio);
    match which {
        HeatFormula::AtEnd => format!(
            "{dry_air:.4} kg/s de aire seco con {ratio:.4} kg de vapor por kg ceden {:.0} W a través de las \
             paredes, celda por celda de 0.75 m como máximo: h según Gnielinski por dentro, Churchill y Chu \
             y radiación por fuera, el aislamiento en medio; en la terminación {}.",
            figures.heat,
            temperature(Some(figures.leaving))
        ),
        HeatFormula::ColdestWall => format!(
            "Donde h (T aire - T pared) más el calor de lo que se condensa iguala lo que sale por el \
             aislamiento, la película de aire y la radiación; la menor de todas las celdas es {}.",
            temperature(figures.coldest_wall)
        ),
        HeatFormula::DewPoint => format!(
            "La temperatura a la que el aire con {ratio:.4} kg de vapor por kg de aire seco está saturado: \
             {}.",
            temperature(figures.dew_point)
        ),
        HeatFormula::Water => format!(
            "Suma sobre la pared mojada de h / (cp Le^(2/3)) (W - W saturado en la pared), Le 0.85, y \
             niebla donde el aire mismo está saturado: {}.",
            water(units, figures.water)
        ),
    }
}
