//! Heat and moisture in figures.

use crate::plan::Phase;
use crate::system::{
    Assessment, ElementHeat, HeatProfile, LowPoint, WetStretch, low_points, wet_stretches,
};
use crate::units::{MassFlow, Temperature};
use serde::Serialize;

/// Temperature and moisture of the whole run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct HeatFigures {
    /// The phase of the cycle, where the exhaust is of one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub phase: Option<Phase>,
    /// Dew point of the air that leaves the dryer; none for dry air.
    #[serde(rename = "dew_point_degc", skip_serializing_if = "Option::is_none")]
    pub dew_point: Option<Temperature>,
    /// Air at the termination.
    #[serde(rename = "leaving_degc")]
    pub leaving: Temperature,
    /// The coldest wall.
    #[serde(rename = "coldest_wall_degc", skip_serializing_if = "Option::is_none")]
    pub coldest_wall: Option<Temperature>,
    /// Humidity ratio at the dryer's outlet.
    #[serde(rename = "humidity_ratio_kg_per_kg")]
    pub humidity_ratio: f64,
    /// Dry air that the dryer sends out.
    #[serde(rename = "dry_air_kg_per_s")]
    pub dry_air: f64,
    /// Water that condenses in the run.
    #[serde(rename = "water_kg_per_s")]
    pub water: MassFlow,
    /// Heat that goes out through the walls.
    #[serde(rename = "heat_w")]
    pub heat: f64,
    /// Where the wall is wet.
    pub wet_stretches: Vec<WetStretch>,
    /// Where the run dips.
    pub low_points: Vec<LowPoint>,
}

impl HeatFigures {
    /// Those of an assessed run; none where the air keeps its temperature or none moves.
    pub fn of(assessment: &Assessment, phase: Option<Phase>) -> Option<Self> {
        let profile = profile(assessment)?;
        let run = &assessment.run;
        Some(Self {
            phase,
            dew_point: run.dew_point(),
            leaving: profile.leaving(),
            coldest_wall: profile.coldest_wall().map(|(wall, _)| wall),
            humidity_ratio: profile.humidity_ratio,
            dry_air: profile.dry_air,
            water: MassFlow::from_kilograms_per_second(profile.water()),
            heat: profile.heat(),
            wet_stretches: wet_stretches(run, profile),
            low_points: low_points(run, Some(profile)),
        })
    }
}

/// The profile of an assessed run, where heat is followed.
pub(super) fn profile(assessment: &Assessment) -> Option<&HeatProfile> {
    let (point, _) = assessment.working.as_ref()?;
    point.heat.as_ref()
}

/// One element's temperature and moisture.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct ElementHeatFigures {
    /// Air that enters.
    #[serde(rename = "entering_degc")]
    pub entering: Temperature,
    /// Air that leaves.
    #[serde(rename = "leaving_degc")]
    pub leaving: Temperature,
    /// The coldest of its wall, where it has a length.
    #[serde(rename = "coldest_wall_degc", skip_serializing_if = "Option::is_none")]
    pub coldest_wall: Option<Temperature>,
    /// Humidity ratio of the air that leaves.
    #[serde(rename = "humidity_ratio_kg_per_kg")]
    pub humidity_ratio: f64,
    /// Water that condenses in it.
    #[serde(rename = "water_kg_per_s")]
    pub water: MassFlow,
}

impl From<&ElementHeat> for ElementHeatFigures {
    fn from(heat: &ElementHeat) -> Self {
        Self {
            entering: heat.entering,
            leaving: heat.leaving,
            coldest_wall: heat.coldest_wall,
            humidity_ratio: heat.humidity_ratio,
            water: MassFlow::from_kilograms_per_second(heat.water),
        }
    }
}
