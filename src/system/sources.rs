//! Every source that the physics rests on, to be listed and walked.

use super::{EACH_ELEMENT_SOURCE, SURROUNDINGS_SOURCE, USER_SOURCE};
use crate::air::{
    ALTITUDE_SOURCE, CONDUCTIVITY_SOURCE, DENSITY_SOURCE, ENTHALPY_SOURCE, GRAVITY_SOURCE,
    SATURATION_SOURCE, VISCOSITY_SOURCE,
};
use crate::duct::area_change;
use crate::duct::elbow::{EXTENSION_SOURCE, IDELCHIK_SOURCE, ITO_SOURCE, RENNELS_SOURCE};
use crate::duct::friction::{FRICTION_SOURCE, LAMINAR_SOURCE};
use crate::duct::heat_transfer::{
    CONDENSATION_SOURCE, INSIDE_SOURCE, OUTSIDE_SOURCE, RADIATION_SOURCE,
};
use crate::duct::tables::{
    blockage, blower, carry_speed, close_elbows, cycle_phase, emissivity, fault_odds,
    flexible_duct, insulation, leak, make_up_air, miller_bend, mitre_reynolds, rigid_duct,
    segmented_elbow, sharp_mitre, site_reading, termination, test_effort, trade_parts,
    velocity_points, wall_box,
};
use crate::plan::{CEILING_SOURCE, INSTRUMENT_SOURCE, LUMBER_SOURCE, ROUTE_SOURCE};
use crate::source::Source;
use serde::Serialize;

/// What a source is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Subject {
    /// Density of moist air.
    AirDensity,
    /// Viscosity of moist air.
    AirViscosity,
    /// Weight of the air in a riser.
    Gravity,
    /// Conductivity of moist air.
    AirConductivity,
    /// Heat that moist air holds.
    AirEnthalpy,
    /// Heat from the air to the duct's wall.
    InsideHeat,
    /// Heat from the duct to still air.
    OutsideHeat,
    /// Heat by radiation.
    Radiation,
    /// Water on a wall.
    Condensation,
    /// Emissivity of surfaces.
    Emissivity,
    /// Insulation about a duct.
    Insulation,
    /// The temperature about a duct where no zone says it.
    Surroundings,
    /// The air of the phases of a cycle.
    CyclePhase,
    /// The velocity that carries lint.
    CarrySpeed,
    /// Saturation pressure of water.
    Saturation,
    /// Air pressure by altitude.
    Altitude,
    /// Friction factor of a duct.
    Friction,
    /// Roughness of rigid duct.
    RigidDuct,
    /// Semi-rigid duct.
    SemiRigidDuct,
    /// Foil duct.
    FoilDuct,
    /// Flexible duct bent by hand.
    BentFlexible,
    /// Smooth elbows.
    SmoothElbow,
    /// Segmented elbows.
    SegmentedElbow,
    /// Sharp mitres.
    SharpMitre,
    /// How a sharp mitre's loss hangs on the Reynolds number.
    MitreReynolds,
    /// Elbows close together.
    CloseElbows,
    /// Changes of area.
    AreaChange,
    /// Blockages and stuck flaps.
    Blockage,
    /// Leaking joints.
    Leak,
    /// The recessed wall box.
    WallBox,
    /// Hoods and caps.
    Termination,
    /// The open end.
    OpenEnd,
    /// The opening for make-up air.
    MakeUpAir,
    /// The dryer's blower.
    Blower,
    /// Studs and joists.
    Framing,
    /// The ceiling's height.
    Ceiling,
    /// Where velocities are read.
    VelocityPoints,
    /// What a velocity on the centre line says of the mean.
    CentreLine,
    /// The room that new routes keep.
    NewRoutes,
    /// What a reading may be off beside its instrument.
    SiteReading,
    /// What an instrument is taken to have.
    Instruments,
    /// How likely each fault is.
    FaultOdds,
    /// What a test on site costs.
    TestEffort,
    /// What pipe and its small parts are sold and joined as.
    TradeParts,
    /// What is worked out for each element.
    EachElement,
    /// What a plan sets in place of the project's own.
    User,
}

/// Every source of the physics with what it is for, in the order in which a run meets them.
pub static SOURCES: [(Subject, &Source); 54] = [
    (Subject::AirDensity, &DENSITY_SOURCE),
    (Subject::AirViscosity, &VISCOSITY_SOURCE),
    (Subject::Saturation, &SATURATION_SOURCE),
    (Subject::Altitude, &ALTITUDE_SOURCE),
    (Subject::Gravity, &GRAVITY_SOURCE),
    (Subject::Blower, &blower::SOURCE),
    (Subject::Blower, &blower::STANDARD_AIR_SOURCE),
    (Subject::Friction, &FRICTION_SOURCE),
    (Subject::Friction, &LAMINAR_SOURCE),
    (Subject::RigidDuct, &rigid_duct::ROUGHNESS_SOURCE),
    (Subject::SemiRigidDuct, &flexible_duct::SEMI_RIGID_SOURCE),
    (Subject::FoilDuct, &flexible_duct::FOIL_SOURCE),
    (Subject::BentFlexible, &flexible_duct::BENT_SOURCE),
    (Subject::SmoothElbow, &RENNELS_SOURCE),
    (Subject::SmoothElbow, &miller_bend::SOURCE),
    (Subject::SmoothElbow, &ITO_SOURCE),
    (Subject::SmoothElbow, &IDELCHIK_SOURCE),
    (Subject::SmoothElbow, &EXTENSION_SOURCE),
    (Subject::SegmentedElbow, &segmented_elbow::SOURCE),
    (Subject::SharpMitre, &sharp_mitre::SOURCE),
    (Subject::MitreReynolds, &mitre_reynolds::SOURCE),
    (Subject::CloseElbows, &close_elbows::SOURCE),
    (Subject::AreaChange, &area_change::SOURCE),
    (Subject::Blockage, &blockage::SOURCE),
    (Subject::Leak, &leak::SOURCE),
    (Subject::WallBox, &wall_box::SOURCE),
    (Subject::Termination, &termination::SOURCE),
    (Subject::OpenEnd, &termination::OPEN_END_SOURCE),
    (Subject::MakeUpAir, &make_up_air::SOURCE),
    (Subject::MakeUpAir, &make_up_air::ROOM_AIR_SOURCE),
    (Subject::Framing, &LUMBER_SOURCE),
    (Subject::Ceiling, &CEILING_SOURCE),
    (Subject::AirConductivity, &CONDUCTIVITY_SOURCE),
    (Subject::AirEnthalpy, &ENTHALPY_SOURCE),
    (Subject::InsideHeat, &INSIDE_SOURCE),
    (Subject::OutsideHeat, &OUTSIDE_SOURCE),
    (Subject::Radiation, &RADIATION_SOURCE),
    (Subject::Condensation, &CONDENSATION_SOURCE),
    (Subject::Emissivity, &emissivity::SOURCE),
    (Subject::Insulation, &insulation::SOURCE),
    (Subject::Surroundings, &SURROUNDINGS_SOURCE),
    (Subject::CyclePhase, &cycle_phase::SOURCE),
    (Subject::CarrySpeed, &carry_speed::SOURCE),
    (Subject::CarrySpeed, &carry_speed::INDUSTRIAL_SOURCE),
    (Subject::VelocityPoints, &velocity_points::SOURCE),
    (Subject::CentreLine, &velocity_points::CENTRE_LINE_SOURCE),
    (Subject::NewRoutes, &ROUTE_SOURCE),
    (Subject::Instruments, &INSTRUMENT_SOURCE),
    (Subject::SiteReading, &site_reading::SOURCE),
    (Subject::FaultOdds, &fault_odds::SOURCE),
    (Subject::TestEffort, &test_effort::SOURCE),
    (Subject::TradeParts, &trade_parts::SOURCE),
    (Subject::EachElement, &EACH_ELEMENT_SOURCE),
    (Subject::User, &USER_SOURCE),
];

/// What `source` is for; none where it is none of [`SOURCES`].
pub fn subject_of(source: &'static Source) -> Option<Subject> {
    let mut listed = SOURCES.iter();
    listed.find_map(|(subject, other)| (*other == source).then_some(*subject))
}
