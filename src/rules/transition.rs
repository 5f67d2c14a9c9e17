//! The transition duct behind the dryer, as it is drawn.

use super::run_length::{estimate, transition_elements};
use crate::plan::{ElbowKind, ElementId, Level, NodeId, Plan, Point};
use crate::system::{CompiledElement, CompiledRun, ElementKind};
use crate::units::Length;

/// What is drawn of it; nothing of it where the run begins in rigid duct.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Transition {
    /// Its flexible legs.
    pub(super) legs: Vec<ElementId>,
    /// Its length, its bends included, at its least, as drawn, and at its most.
    pub(super) length: [Length; 3],
    /// How many lengths of duct it is made of.
    pub(super) pieces: usize,
    /// The legs of it that are concealed or pass a wall, a floor or a ceiling.
    pub(super) concealed: Vec<ElementId>,
}

impl Transition {
    pub(super) fn of(plan: &Plan, run: &CompiledRun) -> Self {
        let elements = &run.elements[..transition_elements(run)];
        let mut found = Self {
            legs: Vec::new(),
            length: [Length::ZERO; 3],
            pieces: 0,
            concealed: Vec::new(),
        };
        let mut is_joined = false;
        for element in elements {
            match element.kind {
                ElementKind::Straight { length, duct } if duct.is_flexible() => {
                    found.pieces += usize::from(!is_joined);
                    is_joined = true;
                    let (less, more) = estimate(plan, &element.id)
                        .map_or((Length::ZERO, Length::ZERO), |estimate| {
                            (estimate.less, estimate.more)
                        });
                    found.add([length - less, length, length + more]);
                    found.legs.push(element.id.clone());
                    if is_concealed(plan, element) {
                        found.concealed.push(element.id.clone());
                    }
                }
                // An elbow between two lengths of flexible duct is a joint of two.
                ElementKind::Elbow { elbow, .. } => {
                    is_joined &= elbow == ElbowKind::BentFlexible;
                    found.add([element.developed_length; 3]);
                }
                ElementKind::AreaChange { .. } => is_joined = false,
                _ => {}
            }
        }
        found
    }

    fn add(&mut self, more: [Length; 3]) {
        for (length, more) in self.length.iter_mut().zip(more) {
            *length += more;
        }
    }
}

/// Whether a leg is marked as concealed, crosses a wall, or lies over the ceiling or under the floor.
fn is_concealed(plan: &Plan, element: &CompiledElement) -> bool {
    let NodeId::Point(id) = &element.id.node else {
        return false;
    };
    let Some(index) = plan.run.index_of(id) else {
        return false;
    };
    let point = &plan.run.points[index];
    let before = match index {
        0 => plan.dryer.outlet(),
        _ => plan.run.points[index - 1].position,
    };
    let rises = plan.run.outlet.riser.into_iter().chain(
        plan.run.points[..index]
            .iter()
            .filter_map(|point| point.fitting.riser),
    );
    let height = plan.dryer.outlet_height + rises.map(|riser| riser.rise).sum();
    point.leg.concealed.is_some()
        || plan.level_at(height) != Level::Room
        || plan
            .walls
            .iter()
            .any(|wall| crosses((before, point.position), (wall.from(), wall.to())))
}

/// Whether a leg passes through a wall's centre line; one that ends on it does not.
fn crosses((from, to): (Point, Point), (start, end): (Point, Point)) -> bool {
    /// How far past the line an end must be, m, to count as beyond it. Of the computation.
    const ON_THE_LINE: f64 = 1e-6;
    let side = |(a, b): (Point, Point), point: Point| {
        let along = a.heading_to(b);
        along.map_or(0.0, |along| {
            along.x * (point.y - a.y) - along.y * (point.x - a.x)
        })
    };
    let parted = |line, one, other| {
        let (one, other) = (side(line, one), side(line, other));
        one.abs() > ON_THE_LINE && other.abs() > ON_THE_LINE && (one > 0.0) != (other > 0.0)
    };
    parted((start, end), from, to) && parted((from, to), start, end)
}
