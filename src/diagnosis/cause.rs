//! What can be wrong with a run, and how likely each is before anything is read.

use super::model::Model;
use crate::duct::tables::fault_odds as odds;
use crate::plan::{Duct, ElementId, Input, Mended, TerminationKind};
use crate::system::ElementKind;
use serde::{Deserialize, Serialize};

/// A fault by its kind.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum CauseKind {
    /// Something in the way inside an element.
    Blockage,
    /// A flexible leg that is crushed or full of lint.
    CrushedFlex,
    /// The flap at the end hangs.
    FlapStuck,
    /// The blower turns too slowly, or its wheel is caked.
    Blower,
    /// A joint leaks.
    Leak,
    /// The room cannot draw enough air.
    RoomStarved,
    /// The lint screen is full.
    LintScreen,
}

/// A fault at its place.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Cause {
    /// What.
    pub kind: CauseKind,
    /// The element that it sits in; none for what is no part of the run.
    pub element: Option<ElementId>,
}

impl CauseKind {
    /// Whether it sits at a place of the run, where a look shows it.
    pub const fn is_place(self) -> bool {
        matches!(self, Self::Blockage | Self::CrushedFlex | Self::FlapStuck)
    }
}

impl Cause {
    /// Whether it is a place of the run that can be looked into.
    pub fn is_place(&self) -> bool {
        self.kind.is_place()
    }

    /// Whether mending `what` takes it away.
    pub fn is_mended_by(&self, what: &Mended) -> bool {
        match what {
            Mended::LintScreen => self.kind == CauseKind::LintScreen,
            Mended::Blower => self.kind == CauseKind::Blower,
            Mended::Leak => self.kind == CauseKind::Leak,
            Mended::MakeUpAir => self.kind == CauseKind::RoomStarved,
            Mended::WholeRun => self.is_place(),
            Mended::Element(element) => self.element.as_ref() == Some(element),
        }
    }

    /// What mends it.
    pub fn mended(&self) -> Mended {
        match (&self.element, self.kind) {
            (Some(element), _) => Mended::Element(element.clone()),
            (None, CauseKind::Blower) => Mended::Blower,
            (None, CauseKind::Leak) => Mended::Leak,
            (None, CauseKind::RoomStarved) => Mended::MakeUpAir,
            (None, CauseKind::LintScreen) => Mended::LintScreen,
            (None, _) => Mended::WholeRun,
        }
    }
}

/// A cause with its place in the run and its odds against the other places.
#[derive(Debug, Clone)]
pub(super) struct PlacedCause {
    pub cause: Cause,
    /// Index of its element among the model's.
    pub place: usize,
    /// Of one place against another.
    pub weight: f64,
}

/// Every cause of a run: the places first, in run order, then the rest.
pub(super) fn causes(model: &Model) -> Vec<PlacedCause> {
    let mut causes = Vec::new();
    let end = model.elements.len() - 1;
    for (place, element) in model.elements.iter().enumerate() {
        let mut add = |kind: CauseKind, weight: f64| {
            causes.push(PlacedCause {
                cause: Cause {
                    kind,
                    element: Some(element.id.clone()),
                },
                place,
                weight,
            });
        };
        match element.kind {
            ElementKind::Elbow { angle, .. } if angle.degrees() >= LEAST_SHARP => {
                add(CauseKind::Blockage, odds::ELBOW);
            }
            ElementKind::Elbow { .. } => add(CauseKind::Blockage, odds::SLIGHT_ELBOW),
            ElementKind::Straight { duct, length } => match duct {
                Duct::SemiRigid { .. } | Duct::Foil { .. } => {
                    add(CauseKind::CrushedFlex, odds::FLEXIBLE);
                }
                _ => add(
                    CauseKind::Blockage,
                    odds::STRAIGHT + odds::STRAIGHT_METRE * length.metres(),
                ),
            },
            ElementKind::WallBox => add(CauseKind::Blockage, odds::WALL_BOX),
            ElementKind::ConcealedElbows { least, most } => {
                let likely = f64::midpoint(f64::from(least), f64::from(most)).max(0.5);
                add(CauseKind::Blockage, odds::ELBOW * likely);
            }
            ElementKind::Termination { termination, .. } => {
                if termination != TerminationKind::OpenEnd {
                    add(CauseKind::FlapStuck, odds::FLAP);
                }
                add(CauseKind::Blockage, odds::OPENING);
            }
            ElementKind::AreaChange { .. }
            | ElementKind::Blockage { .. }
            | ElementKind::Leak { .. }
            | ElementKind::MakeUpAir { .. } => {}
        }
    }
    for kind in [
        CauseKind::Blower,
        CauseKind::Leak,
        CauseKind::RoomStarved,
        CauseKind::LintScreen,
    ] {
        let cause = Cause {
            kind,
            element: None,
        };
        causes.push(PlacedCause {
            cause,
            place: end,
            weight: 0.0,
        });
    }
    causes
}

/// A turn from here on gathers lint as a right angle does, deg. Source: [`fault_odds::SOURCE`].
const LEAST_SHARP: f64 = 60.0;

/// The inputs of the blower.
pub(super) const BLOWER_INPUTS: [Input; 3] = [
    Input::BlowerFreeAirflow,
    Input::BlowerShutOffPressure,
    Input::BlowerExponent,
];
