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
            "{dry_air:.4} kg/s of dry air with {ratio:.4} kg of vapour a kg gives {:.0} W through the \
             walls, cell by cell of at most 0.75 m: h by Gnielinski inside, Churchill and Chu and \
             radiation outside, insulation between; at the termination {}.",
            figures.heat,
            temperature(Some(figures.leaving))
        ),
        HeatFormula::ColdestWall => format!(
            "Where h (T air - T wall) and the heat of what condenses equal what goes outward through \
             insulation, film and radiation; the lowest of all cells is {}.",
            temperature(figures.coldest_wall)
        ),
        HeatFormula::DewPoint => format!(
            "The temperature at which air with {ratio:.4} kg of vapour a kg of dry air is saturated: {}.",
            temperature(figures.dew_point)
        ),
        HeatFormula::Water => format!(
            "Sum over the wet wall of h / (cp Le^(2/3)) (W - W saturated at the wall), Le 0.85, and mist \
             where the air itself is saturated: {}.",
            water(units, figures.water)
        ),
    }
}
