//! The run's path: from the drawn points to straights and bends with their true lengths.

use super::{Duct, Elbow, ElementId, Fitting, Heading, NodeId, Part, Plan, Point};
use crate::units::{Angle, Length};

/// A turn smaller than this is a straight, deg: half a millimetre over a foot. Of the computation.
const SLIGHTEST_TURN_DEGREES: f64 = 0.1;
/// A tangent is not drawn longer than this many radii; a turn that asks for more (over about
/// 157 deg) does not fit in any case, and the path says so. Of the computation.
const LONGEST_TANGENT_RADII: f64 = 5.0;

/// The run's pieces in the order in which the air meets them.
#[derive(Debug, Clone, PartialEq)]
pub struct RunPath {
    /// Straights, bends and, at the end, the termination.
    pub pieces: Vec<Piece>,
    /// Height of the termination above the dryer's outlet.
    pub rise: Length,
    /// Where the run ends on the sheet, and the way it faces there (none where it ends upward).
    pub end: (Point, Option<Heading>),
    /// Points that lie on the corner before them: nothing there can be built or counted.
    pub coinciding: Vec<NodeId>,
}

/// One piece of the path.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// Its name.
    pub id: ElementId,
    /// The index of the run's point that it is named by; none at the dryer's outlet.
    pub point: Option<usize>,
    /// What it is.
    pub kind: PieceKind,
    /// Height above the floor where the air enters it.
    pub height: Length,
}

/// What a piece of the path is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum PieceKind {
    /// A level or vertical straight.
    Straight {
        /// From fitting to fitting, never below nought.
        length: Length,
        /// By how much the fittings at its ends overlap; nought where they fit.
        overlap: Length,
        /// Its material.
        duct: Duct,
        /// The corners that it was drawn between; one and the same for a vertical straight.
        corners: (Point, Point),
        /// Where it truly starts and ends on the sheet, between its fittings.
        ends: (Point, Point),
    },
    /// A bend.
    Bend(Bend),
    /// The end of the run.
    Termination,
}

/// A bend of the path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// The turn.
    pub angle: Angle,
    /// How it is made.
    pub elbow: Elbow,
    /// The corner on the sheet.
    pub corner: Point,
    /// Level heading before it; none where the air comes vertically.
    pub before: Option<Heading>,
    /// Level heading after it; none where the air leaves vertically.
    pub after: Option<Heading>,
    /// Whether the air goes up where it goes vertically.
    pub is_upward: bool,
}

impl Bend {
    /// Length of its centre line.
    pub fn arc(&self) -> Length {
        self.elbow.radius * self.angle.radians()
    }

    /// From the corner to where the curve begins.
    pub fn tangent(&self) -> Length {
        let radii = (self.angle.radians() / 2.0).tan();
        let radii = if (0.0..LONGEST_TANGENT_RADII).contains(&radii) {
            radii
        } else {
            LONGEST_TANGENT_RADII
        };
        self.elbow.radius * radii
    }
}

/// A straight whose ends are not settled yet.
struct OpenStraight {
    id: ElementId,
    point: Option<usize>,
    drawn: Length,
    tangents: (Length, Length),
    duct: Duct,
    corners: (Point, Point),
    height: Length,
}

struct Walk {
    pieces: Vec<Piece>,
    straight: Option<OpenStraight>,
    /// The tangent that the next straight starts with.
    tangent: Length,
    height: Length,
    /// The point that the next piece is named by.
    point: Option<usize>,
}

impl Walk {
    fn settle(&mut self) {
        if let Some(open) = self.straight.take() {
            let (first, last) = open.tangents;
            let length = open.drawn - first - last;
            let (from, to) = open.corners;
            let ends = from.heading_to(to).map_or(open.corners, |heading| {
                (from.toward(heading, first), to.toward(heading, -last))
            });
            self.pieces.push(Piece {
                id: open.id,
                point: open.point,
                kind: PieceKind::Straight {
                    length: if length > Length::ZERO {
                        length
                    } else {
                        Length::ZERO
                    },
                    overlap: if length < Length::ZERO {
                        -length
                    } else {
                        Length::ZERO
                    },
                    duct: open.duct,
                    corners: open.corners,
                    ends,
                },
                height: open.height,
            });
        }
    }

    fn bend(&mut self, id: ElementId, bend: Bend) {
        let tangent = bend.tangent();
        if let Some(open) = &mut self.straight {
            open.tangents.1 += tangent;
        }
        self.settle();
        self.tangent = tangent;
        self.pieces.push(Piece {
            id,
            point: self.point,
            kind: PieceKind::Bend(bend),
            height: self.height,
        });
    }

    fn straight(&mut self, id: ElementId, drawn: Length, duct: Duct, corners: (Point, Point)) {
        self.settle();
        self.straight = Some(OpenStraight {
            id,
            point: self.point,
            drawn,
            tangents: (self.tangent, Length::ZERO),
            duct,
            corners,
            height: self.height,
        });
        self.tangent = Length::ZERO;
    }

    /// The elbow and riser of one node. `before` is the level heading that arrives, `after` the one
    /// that leaves (none at the run's end).
    fn node(
        &mut self,
        node: &NodeId,
        at: Point,
        fitting: &Fitting,
        duct: Duct,
        before: Heading,
        after: Option<Heading>,
    ) {
        let quarter = Angle::from_degrees(90.0);
        if let Some(riser) = fitting.riser.filter(|riser| riser.rise != Length::ZERO) {
            let lower = Bend {
                angle: quarter,
                elbow: fitting.elbow,
                corner: at,
                before: Some(before),
                after: None,
                is_upward: riser.rise > Length::ZERO,
            };
            self.bend(ElementId::new(node, Part::Elbow), lower);
            self.straight(
                ElementId::new(node, Part::Riser),
                riser.rise.abs(),
                duct,
                (at, at),
            );
            self.height += riser.rise;
            if after.is_some() {
                let upper = Bend {
                    angle: quarter,
                    elbow: riser.elbow,
                    corner: at,
                    before: None,
                    after,
                    is_upward: riser.rise > Length::ZERO,
                };
                self.bend(ElementId::new(node, Part::ElbowAfterRiser), upper);
            }
        } else if let Some(after) = after {
            let angle = before.turn_to(after);
            if angle.degrees() >= SLIGHTEST_TURN_DEGREES {
                let bend = Bend {
                    angle,
                    elbow: fitting.elbow,
                    corner: at,
                    before: Some(before),
                    after: Some(after),
                    is_upward: false,
                };
                self.bend(ElementId::new(node, Part::Elbow), bend);
            }
        }
    }
}

impl RunPath {
    /// Walks the plan's run. Each bend's tangents are taken off the straights beside it; the first
    /// bend at the outlet has no straight before it.
    pub fn of(plan: &Plan) -> Self {
        let run = &plan.run;
        let mut walk = Walk {
            pieces: Vec::with_capacity(run.points.len() * 2 + 2),
            straight: None,
            tangent: Length::ZERO,
            height: plan.dryer.outlet_height,
            point: None,
        };
        let mut at = plan.dryer.outlet();
        let mut heading = plan.dryer.outlet_heading();
        let mut node = NodeId::Outlet;
        let mut fitting = &run.outlet;
        let duct_of_riser = |at| run.duct_of_riser(at).map_or(Duct::Rigid, |leg| leg.duct);
        let mut duct = duct_of_riser(None);
        let mut coinciding = Vec::new();
        for (index, point) in run.points.iter().enumerate() {
            let Some(next) = at.heading_to(point.position) else {
                coinciding.push(NodeId::Point(point.id.clone()));
                continue;
            };
            walk.node(&node, at, fitting, duct, heading, Some(next));
            let id = NodeId::Point(point.id.clone());
            walk.point = Some(index);
            walk.straight(
                ElementId::new(&id, Part::Leg),
                at.distance(point.position),
                point.duct,
                (at, point.position),
            );
            let riser = duct_of_riser(Some(index));
            (at, heading, node, fitting, duct) = (point.position, next, id, &point.fitting, riser);
        }
        walk.node(&node, at, fitting, duct, heading, None);
        walk.settle();
        let ends_upward = matches!(
            walk.pieces.last(),
            Some(Piece {
                id: ElementId {
                    part: Part::Riser,
                    ..
                },
                ..
            })
        );
        walk.pieces.push(Piece {
            id: ElementId::new(&node, Part::Termination),
            point: walk.point,
            kind: PieceKind::Termination,
            height: walk.height,
        });
        Self {
            rise: walk.height - plan.dryer.outlet_height,
            pieces: walk.pieces,
            end: (at, (!ends_upward).then_some(heading)),
            coinciding,
        }
    }

    /// Straights and arcs together.
    pub fn developed_length(&self) -> Length {
        self.pieces
            .iter()
            .map(|piece| match &piece.kind {
                PieceKind::Straight { length, .. } => *length,
                PieceKind::Bend(bend) => bend.arc(),
                PieceKind::Termination => Length::ZERO,
            })
            .sum()
    }
}
