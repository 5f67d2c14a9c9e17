//! The run as what is bought and joined: straights into pieces that stock can give, and joints.

use crate::duct::tables::trade_parts::CRIMPED_END;
use crate::plan::{
    Duct, ElbowKind, ElementId, LegState, Metal, NodeId, Part, Plan, TerminationKind,
};
use crate::report::Figures;
use crate::system::ElementKind;
use crate::units::{Angle, Length};

/// A straight shorter than this is none: rounding of the drawing.
const NONE: Length = Length::from_metres(0.001);

/// A thing of the run in the order in which the air meets it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Thing {
    /// Rigid pipe.
    Pipe {
        /// The element's place in the run, from 1.
        place: usize,
        diameter: Length,
        metal: Metal,
        /// Between its fittings.
        length: Length,
        /// Whether its length is only estimated.
        is_estimated: bool,
    },
    /// Flexible duct.
    Flexible {
        duct: Duct,
        diameter: Length,
        length: Length,
    },
    /// Flat rectangular duct.
    Flat {
        width: Length,
        depth: Length,
        length: Length,
    },
    /// An elbow that is a part of its own.
    Elbow {
        elbow: ElbowKind,
        angle: Angle,
        radius: Length,
        diameter: Length,
    },
    /// Elbows that nobody can see.
    ConcealedElbows { least: u8, most: u8 },
    /// From one diameter to another.
    Reducer { from: Length, to: Length },
    /// A recessed wall box.
    WallBox,
    /// The end.
    Termination {
        kind: TerminationKind,
        diameter: Length,
    },
}

impl Thing {
    /// Whether it is joined by clamps.
    pub(super) const fn is_flexible(&self) -> bool {
        matches!(self, Self::Flexible { .. })
    }

    /// Whether it is a thing that has ends.
    pub(super) const fn has_ends(&self) -> bool {
        !matches!(self, Self::ConcealedElbows { .. })
    }
}

/// Everything of the run that is bought, in order.
pub(super) fn things(plan: &Plan, figures: &Figures) -> Vec<Thing> {
    let mut found = Vec::new();
    for (index, element) in figures.elements.iter().enumerate() {
        let diameter = diameter_at(plan, figures, index);
        match element.element {
            ElementKind::Straight { length, .. } if length < NONE => {}
            ElementKind::Straight { length, duct } => {
                reduce(&mut found, duct, diameter);
                found.push(match duct {
                    Duct::Rigid => Thing::Pipe {
                        place: index + 1,
                        diameter,
                        metal: metal(plan, &element.id),
                        length,
                        is_estimated: leg(plan, &element.id)
                            .is_some_and(|leg| leg.estimate.is_some() || leg.concealed.is_some()),
                    },
                    Duct::FlatRectangular { width, depth } => Thing::Flat {
                        width,
                        depth,
                        length,
                    },
                    duct => Thing::Flexible {
                        duct,
                        diameter,
                        length,
                    },
                });
            }
            ElementKind::Elbow {
                angle,
                elbow,
                radius,
            } if elbow != ElbowKind::BentFlexible => found.push(Thing::Elbow {
                elbow,
                angle,
                radius,
                diameter,
            }),
            ElementKind::ConcealedElbows { least, most } => {
                found.push(Thing::ConcealedElbows { least, most });
            }
            ElementKind::WallBox => found.push(Thing::WallBox),
            ElementKind::Termination { termination, .. } => found.push(Thing::Termination {
                kind: termination,
                diameter,
            }),
            // Flexible duct bent by hand is no part of its own; the others are no parts at all.
            ElementKind::Elbow { .. }
            | ElementKind::AreaChange { .. }
            | ElementKind::Blockage { .. }
            | ElementKind::Leak { .. }
            | ElementKind::MakeUpAir { .. } => {}
        }
    }
    found
}

/// A reducer before a round duct that is not as wide as the round duct before it.
fn reduce(found: &mut Vec<Thing>, duct: Duct, to: Length) {
    if matches!(duct, Duct::FlatRectangular { .. }) {
        return;
    }
    let before = found.iter().rev().find_map(|thing| match thing {
        Thing::Pipe { diameter, .. } | Thing::Flexible { diameter, .. } => Some(*diameter),
        _ => None,
    });
    if let Some(from) = before.filter(|from| (*from - to).abs() >= NONE) {
        found.push(Thing::Reducer { from, to });
    }
}

fn leg(plan: &Plan, id: &ElementId) -> Option<LegState> {
    let NodeId::Point(point) = &id.node else {
        return None;
    };
    let index = plan.run.index_of(point)?;
    match id.part {
        Part::Leg => plan.run.points.get(index).map(|point| point.leg),
        _ => None,
    }
}

fn metal(plan: &Plan, id: &ElementId) -> Metal {
    let of_leg = leg(plan, id).map(|leg| leg.metal);
    let metal = of_leg.or_else(|| Some(leg_of_riser(plan, &id.node)?.metal));
    metal.unwrap_or_default()
}

/// The leg that a riser at a node has its duct of.
fn leg_of_riser(plan: &Plan, node: &NodeId) -> Option<LegState> {
    let at = match node {
        NodeId::Outlet => None,
        NodeId::Point(point) => Some(plan.run.index_of(point)?),
    };
    plan.run.duct_of_riser(at).map(|point| point.leg)
}

/// The nominal diameter of the duct at an element: its own, or that of the straight before it, or
/// after it where none is before.
fn diameter_at(plan: &Plan, figures: &Figures, index: usize) -> Length {
    let own = |index: &usize| {
        let element = &figures.elements[*index];
        let is_straight = matches!(element.element, ElementKind::Straight { .. });
        is_straight.then(|| straight_diameter(plan, &element.id))
    };
    let before = (0..=index).rev().find_map(|index| own(&index));
    let after = || (index..figures.elements.len()).find_map(|index| own(&index));
    before.or_else(after).unwrap_or(plan.run.diameter)
}

fn straight_diameter(plan: &Plan, id: &ElementId) -> Length {
    let leg = match id.part {
        Part::Riser => leg_of_riser(plan, &id.node),
        _ => leg(plan, id),
    };
    leg.and_then(|leg| leg.diameter)
        .unwrap_or(plan.run.diameter)
}

/// The cut lengths of a straight of `length`, crimped ends counted: as few pieces as stock of at most
/// `longest` allows, the last two alike where the last would be too short to be joined.
pub(super) fn cut_lengths(length: Length, longest: Length) -> Vec<Length> {
    /// A piece shorter than so many crimped ends cannot be joined well. Common practice, no source.
    const SHORTEST: f64 = 3.0;
    let mut pieces = Vec::new();
    let mut left = length + CRIMPED_END;
    let covers = longest - CRIMPED_END;
    while left > longest && covers > Length::ZERO {
        pieces.push(longest);
        left = left - covers;
    }
    if left < CRIMPED_END * SHORTEST
        && let Some(last) = pieces.pop()
    {
        let half = (last + left) / 2.0;
        pieces.push(half);
        left = half;
    }
    pieces.push(left);
    pieces
}
