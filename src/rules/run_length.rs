//! What of a run a length rule looks at, gathered once for all rule sets and readings.

use super::irc_table;
use crate::plan::{ElbowKind, ElementId, Estimate, NodeId, Part, Plan};
use crate::system::{CompiledRun, ElementKind, Finding};
use crate::units::{Angle, Length};

/// The run past its transition duct, element by element.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct RunLength {
    pub(super) counted: Vec<(ElementId, Counted)>,
    /// The first flexible straight past the transition.
    pub(super) flexible: Option<ElementId>,
    /// The first straight that is not 4 in.
    pub(super) other_size: Option<ElementId>,
    /// The first straight whose elbows overlap.
    pub(super) overlap: Option<ElementId>,
}

/// What a length rule sees of an element.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Counted {
    Straight {
        length: Length,
        estimate: Option<Estimate>,
    },
    Elbow {
        angle: Angle,
        elbow: ElbowKind,
        radius: Length,
        arc: Length,
    },
    ConcealedElbows {
        least: u8,
        most: u8,
    },
}

impl RunLength {
    /// Of `plan`, whose compiled run and findings are given.
    pub(super) fn of(plan: &Plan, run: &CompiledRun, findings: &[Finding]) -> Self {
        let mut lengths = Self {
            counted: Vec::with_capacity(run.elements.len()),
            flexible: None,
            other_size: None,
            overlap: findings.iter().find_map(|finding| match finding {
                Finding::ElbowsOverlap { element, .. } => Some(element.clone()),
                _ => None,
            }),
        };
        for element in run.elements.iter().skip(transition_elements(run)) {
            let item = match element.kind {
                ElementKind::Straight { length, duct } => {
                    if duct.is_flexible() {
                        lengths.flexible.get_or_insert(element.id.clone());
                    }
                    if !irc_table::table_is_for(Length::from_metres(element.bore.diameter)) {
                        lengths.other_size.get_or_insert(element.id.clone());
                    }
                    Counted::Straight {
                        length,
                        estimate: estimate(plan, &element.id),
                    }
                }
                ElementKind::Elbow {
                    angle,
                    elbow,
                    radius,
                } => Counted::Elbow {
                    angle,
                    elbow,
                    radius,
                    arc: element.developed_length,
                },
                ElementKind::ConcealedElbows { least, most } => {
                    Counted::ConcealedElbows { least, most }
                }
                ElementKind::AreaChange { .. }
                | ElementKind::Blockage { .. }
                | ElementKind::Leak { .. }
                | ElementKind::WallBox
                | ElementKind::Termination { .. }
                | ElementKind::MakeUpAir { .. } => continue,
            };
            lengths.counted.push((element.id.clone(), item));
        }
        lengths
    }

    /// Straights and arcs past the transition, as they are carried by supports.
    pub(super) fn developed(&self) -> Length {
        let lengths = self.counted.iter().map(|(_, item)| match *item {
            Counted::Straight { length, .. } => length,
            Counted::Elbow { arc, .. } => arc,
            Counted::ConcealedElbows { .. } => Length::ZERO,
        });
        lengths.sum()
    }
}

/// How many elements at the run's head are its transition duct, which the length leaves out: the
/// flexible legs from the dryer's outlet on, and the bends made of them. A recessed wall box ends it.
pub(super) fn transition_elements(run: &CompiledRun) -> usize {
    let mut transition = 0;
    for (index, element) in run.elements.iter().enumerate() {
        match element.kind {
            ElementKind::Straight { duct, .. } if duct.is_flexible() => transition = index + 1,
            ElementKind::Elbow {
                elbow: ElbowKind::BentFlexible,
                ..
            } if index == transition => {
                transition = index + 1;
            }
            ElementKind::Straight { .. }
            | ElementKind::WallBox
            | ElementKind::Termination { .. } => break,
            _ => {}
        }
    }
    transition
}

/// How far off the leg called `id` may be.
pub(super) fn estimate(plan: &Plan, id: &ElementId) -> Option<Estimate> {
    let NodeId::Point(point) = &id.node else {
        return None;
    };
    let index = plan.run.index_of(point)?;
    (id.part == Part::Leg)
        .then(|| plan.run.points[index].leg.estimate)
        .flatten()
}
