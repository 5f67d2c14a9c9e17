//! What can be done on site, and what must be said beside it.

use crate::plan::{Conditions, ElementId, Spot};
use serde::{Deserialize, Serialize};

/// Something to do on site.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub enum Test {
    /// Read the static pressure at the dryer's outlet.
    ReadAtOutlet,
    /// Clean the lint screen, then read at the outlet.
    CleanScreen,
    /// Read at the outlet with a door or window open.
    OpenDoor,
    /// Read at the outlet with the flap held open.
    HoldFlap,
    /// Read the velocity at the outlet.
    ReadVelocity,
    /// Read the static pressure at a joint, with the run joined.
    ReadAtJoint(ElementId),
    /// Open the joint before this element, so that the run ends there, and read at the outlet.
    OpenJoint(ElementId),
    /// Take the duct off the dryer and read the velocity at its outlet.
    OpenOutlet,
    /// Open the joint beside a part and look into it.
    LookInto(ElementId),
}

/// A caution that stands at a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum TestCaution {
    /// The dryer runs with a joint open: the full caution.
    JointOpen,
    /// A tap in the duct: no heat, and close it again.
    Tap,
    /// Power and gas off before a part is opened.
    PowerOff,
    /// Work at height.
    Height,
    /// A gas dryer: carbon monoxide.
    CarbonMonoxide,
}

impl Test {
    /// Its name in JSON, without the element.
    pub const fn name(&self) -> &'static str {
        match self {
            Self::ReadAtOutlet => "ReadAtOutlet",
            Self::CleanScreen => "CleanScreen",
            Self::OpenDoor => "OpenDoor",
            Self::HoldFlap => "HoldFlap",
            Self::ReadVelocity => "ReadVelocity",
            Self::ReadAtJoint(_) => "ReadAtJoint",
            Self::OpenJoint(_) => "OpenJoint",
            Self::OpenOutlet => "OpenOutlet",
            Self::LookInto(_) => "LookInto",
        }
    }

    /// The spot that is read at, where one is.
    pub fn spot(&self) -> Option<Spot> {
        match self {
            Self::LookInto(_) => None,
            Self::ReadAtJoint(element) => Some(Spot::Before(element.clone())),
            _ => Some(Spot::Outlet),
        }
    }

    /// The conditions to read under, on a dryer that heats or does not; none for a look.
    pub fn conditions(&self, heat: bool) -> Option<Conditions> {
        let open_joint = match self {
            Self::LookInto(_) => return None,
            Self::OpenJoint(element) => Some(Spot::Before(element.clone())),
            Self::OpenOutlet => Some(Spot::Outlet),
            _ => None,
        };
        Some(Conditions {
            heat,
            door_open: *self == Self::OpenDoor,
            flap_held: *self == Self::HoldFlap,
            open_joint,
            ..Conditions::PLAIN
        })
    }

    /// Whether it reads a velocity.
    pub const fn is_velocity(&self) -> bool {
        matches!(self, Self::ReadVelocity | Self::OpenOutlet)
    }

    /// The element that it names.
    pub const fn element(&self) -> Option<&ElementId> {
        match self {
            Self::ReadAtJoint(element) | Self::OpenJoint(element) | Self::LookInto(element) => {
                Some(element)
            }
            _ => None,
        }
    }

    /// Whether the dryer runs with a joint open.
    pub const fn runs_with_joint_open(&self) -> bool {
        matches!(self, Self::OpenJoint(_) | Self::OpenOutlet)
    }

    /// Whether the dryer must run without heat for it.
    pub const fn must_be_cold(&self) -> bool {
        self.runs_with_joint_open() || matches!(self, Self::ReadAtJoint(_))
    }
}

/// A test with what it is worth.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Suggestion {
    /// The test.
    pub test: Test,
    /// Its effort, against a reading at the outlet.
    pub effort: f64,
    /// What it tells of the fault, bits.
    pub bits: f64,
    /// What must be said beside it.
    pub cautions: Vec<TestCaution>,
}
