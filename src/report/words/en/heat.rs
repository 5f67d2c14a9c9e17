//! Heat, moisture and lint.

use crate::plan::Phase;
use crate::system::{Finding, InsulationUpgrade, LowPoint, WetStretch};
use crate::units::{MassFlow, UnitSystem};

/// A finding of heat, moisture or lint; none for another.
pub(super) fn finding(units: UnitSystem, finding: &Finding) -> Option<String> {
    Some(match finding {
        Finding::WetWall { stretch, freezes } => wet_wall(units, stretch, *freezes),
        Finding::Dip(low) => dip(units, low),
        Finding::SlowAir {
            velocity, carries, ..
        } => format!(
            "The air slows to {} here. By common practice lint stays in the air above about {}; no \
             source says so, and it is no limit: look for lint here first.",
            units.velocity(*velocity),
            units.velocity(*carries)
        ),
        Finding::UpsizingSlows { before, after, .. } => format!(
            "The wider duct loses less pressure, but slows the air from {} to {}: lint settles \
             sooner.",
            units.velocity(*before),
            units.velocity(*after)
        ),
        _ => return None,
    })
}

fn wet_wall(units: UnitSystem, stretch: &WetStretch, freezes: bool) -> String {
    let ice = if freezes {
        " Part of it is below freezing: ice can narrow the duct."
    } else {
        ""
    };
    format!(
        "From {} to {} of the run the wall is colder than the dew point, {} at its coldest: about {} \
         condenses there, and lint sticks to it.{ice}",
        units.length(stretch.from),
        units.length(stretch.to),
        units.temperature(stretch.coldest_wall),
        water(units, stretch.water)
    )
}

fn dip(units: UnitSystem, low: &LowPoint) -> String {
    let filled = if low.water > MassFlow::ZERO {
        format!(
            " About {} condenses on its two sides and runs down to it.",
            water(units, low.water)
        )
    } else {
        String::new()
    };
    format!(
        "The run dips here and rises again by {}: water and lint collect in it.{filled} Slope the \
         duct one way, or drain the low point.",
        units.length(low.depth)
    )
}

/// A flow of water for each hour of this phase.
pub(super) fn water(units: UnitSystem, flow: MassFlow) -> String {
    format!("{} of water an hour", units.water_of_an_hour(flow))
}

pub(super) fn upgrade(units: UnitSystem, upgrade: &InsulationUpgrade) -> String {
    match upgrade {
        InsulationUpgrade::AlreadyDry => {
            "The wall stays above the dew point everywhere: no insulation is needed to keep it dry."
                .to_owned()
        }
        InsulationUpgrade::Resistance {
            resistance_m2_k_per_w: resistance,
        } => format!(
            "{} about the whole run would keep its wall above the dew point in this air.",
            resistance_words(units, *resistance)
        ),
        InsulationUpgrade::NotByInsulation => {
            "No insulation keeps the wall dry in this air: the air itself cools below its dew point. \
             A shorter or warmer way does."
                .to_owned()
        }
        InsulationUpgrade::Unknown => String::new(),
    }
}

fn resistance_words(units: UnitSystem, resistance: f64) -> String {
    match units {
        UnitSystem::UsCustomary => {
            format!("Insulation of R-{}", units.resistance(resistance).figure)
        }
        UnitSystem::Si => format!("Insulation of {}", units.resistance(resistance)),
    }
}

pub(super) const fn phase(phase: Phase) -> &'static str {
    match phase {
        Phase::WarmUp => "Warm-up",
        Phase::Drying => "Drying",
        Phase::EndOfDrying => "End of drying",
        Phase::CoolDown => "Cool-down",
        Phase::NoHeat => "No heat, for readings",
    }
}
