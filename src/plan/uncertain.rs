//! The uncertain inputs by name, and what a user sets in their place.

use serde::{Deserialize, Serialize};

/// An uncertain input of the analysis. One draw of it is shared by all the elements that use it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Input {
    /// Wall roughness of rigid duct, m.
    RigidRoughness,
    /// Wall roughness of semi-rigid duct at full stretch, m.
    SemiRigidRoughness,
    /// Wall roughness of foil duct at full stretch, m.
    FoilRoughness,
    /// What pushing flexible duct together does to its friction, as a factor on the likely effect.
    FlexibleCompression,
    /// Which published method smooth elbows follow, as a factor on the chosen method's K. Worked out
    /// for each elbow: a plan chooses the method instead.
    #[serde(skip_deserializing)]
    SmoothElbow,
    /// K of a 90 deg segmented elbow of r/D 1.
    SegmentedElbow,
    /// A factor on a sharp mitre's K.
    SharpMitre,
    /// A factor on the K of flexible duct bent by hand.
    BentFlexible,
    /// What an elbow close before another does to the second, from its least to its greatest. Worked
    /// out for each pair.
    #[serde(skip_deserializing)]
    CloseElbows,
    /// A factor on the K of a blockage.
    Blockage,
    /// K of the wall hood, its exit included.
    WallHood,
    /// K of the louvred hood, its exit included.
    LouvredHood,
    /// K of the roof cap, its exit included.
    RoofCap,
    /// Pressure that lifts the wall hood's flap, Pa.
    FlapWeight,
    /// Discharge coefficient of the opening through which make-up air comes.
    MakeUpDischarge,
    /// Lengths that were only estimated, and elbows that are concealed, from least to most. Each leg
    /// has its own.
    #[serde(skip_deserializing)]
    Estimates,
    /// The blower's airflow at no back pressure, m³/s.
    BlowerFreeAirflow,
    /// The blower's static rise at no airflow, Pa.
    BlowerShutOffPressure,
    /// The exponent of the blower's curve.
    BlowerExponent,
    /// Discharge coefficient of a leaking joint's gap.
    LeakDischarge,
    /// K of a recessed wall box.
    WallBox,
}

impl Input {
    /// Every input, in its order.
    pub const ALL: [Self; 21] = [
        Self::RigidRoughness,
        Self::SemiRigidRoughness,
        Self::FoilRoughness,
        Self::FlexibleCompression,
        Self::SmoothElbow,
        Self::SegmentedElbow,
        Self::SharpMitre,
        Self::BentFlexible,
        Self::CloseElbows,
        Self::Blockage,
        Self::WallHood,
        Self::LouvredHood,
        Self::RoofCap,
        Self::FlapWeight,
        Self::MakeUpDischarge,
        Self::Estimates,
        Self::BlowerFreeAirflow,
        Self::BlowerShutOffPressure,
        Self::BlowerExponent,
        Self::LeakDischarge,
        Self::WallBox,
    ];

    /// Whether a plan can set it; the others are worked out for each element.
    pub const fn is_settable(self) -> bool {
        !matches!(
            self,
            Self::SmoothElbow | Self::CloseElbows | Self::Estimates
        )
    }
}

/// The name that it has in files.
impl core::fmt::Display for Input {
    fn fmt(&self, formatter: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        self.serialize(formatter)
    }
}

/// A value that the user sets in place of the project's own.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Override {
    /// Which input.
    pub input: Input,
    /// The least believable value.
    pub low: f64,
    /// The likely value.
    pub likely: f64,
    /// The greatest believable value.
    pub high: f64,
    /// Where the user has it from.
    pub note: String,
}
