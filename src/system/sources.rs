//! Every source that the physics rests on, to be listed and walked.

use super::{EACH_ELEMENT_SOURCE, USER_SOURCE};
use crate::air::{ALTITUDE_SOURCE, DENSITY_SOURCE, SATURATION_SOURCE, VISCOSITY_SOURCE};
use crate::duct::area_change;
use crate::duct::elbow::{IDELCHIK_SOURCE, ITO_SOURCE, RENNELS_SOURCE};
use crate::duct::friction::FRICTION_SOURCE;
use crate::duct::tables::{
    blockage, blower, close_elbows, fault_odds, flexible_duct, leak, make_up_air, miller_bend,
    mitre_reynolds, rigid_duct, segmented_elbow, sharp_mitre, termination, test_effort,
    velocity_points, wall_box,
};
use crate::source::Source;

/// What a source is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject {
    /// Density of moist air.
    AirDensity,
    /// Viscosity of moist air.
    AirViscosity,
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
    /// Where velocities are read.
    VelocityPoints,
    /// What a velocity on the centre line says of the mean.
    CentreLine,
    /// How likely each fault is.
    FaultOdds,
    /// What a test on site costs.
    TestEffort,
    /// What is worked out for each element.
    EachElement,
    /// What a plan sets in place of the project's own.
    User,
}

/// Every source of the physics with what it is for, in the order in which a run meets them.
pub static SOURCES: [(Subject, &Source); 31] = [
    (Subject::AirDensity, &DENSITY_SOURCE),
    (Subject::AirViscosity, &VISCOSITY_SOURCE),
    (Subject::Saturation, &SATURATION_SOURCE),
    (Subject::Altitude, &ALTITUDE_SOURCE),
    (Subject::Blower, &blower::SOURCE),
    (Subject::Friction, &FRICTION_SOURCE),
    (Subject::RigidDuct, &rigid_duct::ROUGHNESS_SOURCE),
    (Subject::SemiRigidDuct, &flexible_duct::SEMI_RIGID_SOURCE),
    (Subject::FoilDuct, &flexible_duct::FOIL_SOURCE),
    (Subject::BentFlexible, &flexible_duct::BENT_SOURCE),
    (Subject::SmoothElbow, &RENNELS_SOURCE),
    (Subject::SmoothElbow, &miller_bend::SOURCE),
    (Subject::SmoothElbow, &ITO_SOURCE),
    (Subject::SmoothElbow, &IDELCHIK_SOURCE),
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
    (Subject::VelocityPoints, &velocity_points::SOURCE),
    (Subject::CentreLine, &velocity_points::CENTRE_LINE_SOURCE),
    (Subject::FaultOdds, &fault_odds::SOURCE),
    (Subject::TestEffort, &test_effort::SOURCE),
    (Subject::EachElement, &EACH_ELEMENT_SOURCE),
    (Subject::User, &USER_SOURCE),
];
