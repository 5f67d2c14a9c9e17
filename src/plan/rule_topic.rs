//! What the rules are about, by name: a plan's file keeps which of them were seen on site.

use serde::{Deserialize, Serialize};

/// What a rule is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RuleTopic {
    /// The exhaust duct's length, less what its elbows take off.
    Length,
    /// 4 in nominal duct.
    DuctSize,
    /// Metal duct, smooth inside.
    DuctMaterial,
    /// The duct's metal is thick enough.
    DuctThickness,
    /// The transition duct's length.
    TransitionLength,
    /// The transition duct is in one length.
    TransitionOnePiece,
    /// The transition duct is not concealed.
    TransitionConcealed,
    /// The transition duct is listed.
    TransitionListing,
    /// Supports, so far apart at most.
    Supports,
    /// Joints run with the air and are sealed.
    Joints,
    /// Screws do not reach into the duct.
    Fasteners,
    /// Shield plates where the duct is close behind the framing's face.
    ShieldPlates,
    /// A permanent label with the equivalent length.
    Label,
    /// The run ends outdoors, on its own.
    OutdoorTermination,
    /// A backdraft damper at the end.
    BackdraftDamper,
    /// No screen at the end.
    NoScreen,
    /// The open area of the termination.
    OpenArea,
    /// The termination's distance from openings into the building.
    OpeningDistance,
    /// The termination's distance from air intakes.
    IntakeDistance,
    /// The termination's distance from the property line.
    PropertyLine,
    /// No outlet into an attic, a chimney, another duct and the like.
    ForbiddenOutlets,
    /// No fire damper in the duct.
    FireDampers,
    /// No fan in the duct but a listed ventilator.
    PowerVentilators,
    /// Make-up air for a strong dryer.
    MakeUpAir,
    /// An opening into a dryer's closet.
    ClosetOpening,
    /// The duct passes no other duct or plenum.
    OtherDucts,
    /// Where the duct passes a garage's separation.
    GarageSeparation,
    /// Where the duct passes a fire-rated assembly.
    RatedAssemblies,
    /// The duct is not crushed in the framing.
    StudSpaces,
    /// An unused duct is capped and marked.
    UnusedDuct,
    /// A clean-out at each riser.
    CleanOut,
    /// Dryers of several storeys on one duct.
    SharedShaft,
    /// The dryer maker's length.
    MakerLength,
    /// The dryer maker's back pressure at the outlet.
    MakerBackPressure,
}
