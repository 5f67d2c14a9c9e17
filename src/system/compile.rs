//! From the run's path to its elements and their laws.

use super::bore::Bore;
use super::element::{CompiledElement, ElementKind};
use super::law::Law;
use super::{Finding, USER_SOURCE};
use crate::air::MoistAir;
use crate::duct::elbow::{ElbowLaw, Method, mitre, spread_of_methods};
use crate::duct::tables::close_elbows::{self, FAR, Fold};
use crate::duct::tables::make_up_air::{ROOM_CELSIUS, ROOM_HUMIDITY};
use crate::duct::{area_change, blockage};
use crate::plan::{
    Bend, BendMethod, Duct, ElbowKind, ElementId, LegState, NodeId, Part, Piece, PieceKind, Plan,
    RunPath, clashes,
};
use crate::source::{Coefficient, Reach};
use crate::units::{Length, Pressure, Temperature};

/// Two elbows are close enough to be worth a remark below this gap, diameters.
/// Source: [`close_elbows::SOURCE`].
const REMARKED: f64 = 3.0;

/// What comes of compiling.
pub(super) struct Compiled {
    pub elements: Vec<CompiledElement>,
    pub findings: Vec<Finding>,
    pub rise: Length,
}

/// Walks the path's pieces.
pub(super) struct Compiler<'a> {
    plan: &'a Plan,
    compiled: Compiled,
    /// The duct that the air is in.
    bore: Bore,
    /// The last bend, and the length since it.
    last_bend: Option<(Bend, Length)>,
}

impl<'a> Compiler<'a> {
    /// Compiles the run of `plan` at the site's `pressure`; gives the path that it walked too.
    pub(super) fn compile(plan: &'a Plan, pressure: Pressure) -> (Compiled, RunPath) {
        let path = RunPath::of(plan);
        let coinciding = path.coinciding.iter();
        let mut compiler = Self {
            plan,
            compiled: Compiled {
                elements: Vec::with_capacity(path.pieces.len() + 1),
                findings: coinciding
                    .map(|node| Finding::PointsCoincide { node: node.clone() })
                    .collect(),
                rise: path.rise,
            },
            bore: Bore::round(plan.run.diameter),
            last_bend: None,
        };
        compiler.make_up_air(pressure);
        for (index, piece) in path.pieces.iter().enumerate() {
            compiler.piece(piece, path.pieces.get(index + 1));
        }
        let clashes = clashes(plan, &path).into_iter().map(Finding::NoRoom);
        compiler.compiled.findings.extend(clashes);
        (compiler.compiled, path)
    }

    fn push(&mut self, id: ElementId, kind: ElementKind, law: Law) -> &mut CompiledElement {
        let index = self.compiled.elements.len();
        self.compiled.elements.push(CompiledElement {
            id,
            kind,
            developed_length: Length::ZERO,
            rise: Length::ZERO,
            reach: Reach::Within,
            bore: self.bore,
            law,
        });
        &mut self.compiled.elements[index]
    }

    fn reaches(&mut self, id: &ElementId, reach: Reach) {
        if reach == Reach::Beyond {
            self.compiled.findings.push(Finding::OutsideSource {
                element: id.clone(),
            });
        }
    }

    fn make_up_air(&mut self, pressure: Pressure) {
        let Some(free_area) = self.plan.site.make_up_free_area_m2 else {
            return;
        };
        let room = MoistAir::new(
            Temperature::from_celsius(ROOM_CELSIUS),
            pressure,
            ROOM_HUMIDITY,
        );
        let law = Law::MakeUpAir {
            free_area,
            density: room.density(),
        };
        let id = ElementId::new(&NodeId::Outlet, Part::MakeUpAir);
        self.push(
            id,
            ElementKind::MakeUpAir {
                free_area_m2: free_area,
            },
            law,
        );
    }

    fn piece(&mut self, piece: &Piece, next: Option<&Piece>) {
        match &piece.kind {
            PieceKind::Straight {
                length,
                overlap,
                duct,
                ..
            } => {
                if *overlap > Length::ZERO {
                    self.compiled.findings.push(Finding::ElbowsOverlap {
                        element: piece.id.clone(),
                        overlap: *overlap,
                    });
                }
                let rise = next.map_or(Length::ZERO, |next| next.height - piece.height);
                self.straight(piece, *length, *duct, rise);
            }
            PieceKind::Bend(bend) => {
                let leaving = next.and_then(|piece| match piece.kind {
                    PieceKind::Straight { duct, .. } => Some(duct),
                    _ => None,
                });
                self.bend(&piece.id, bend, leaving);
            }
            PieceKind::Termination => {
                let end = self.plan.run.termination;
                let kind = ElementKind::Termination {
                    termination: end.kind,
                    free_area: end.free_area,
                };
                let law = Law::Termination {
                    kind: end.kind,
                    free: end.free_area,
                };
                self.bore = self.bore.as_fitting();
                self.push(piece.id.clone(), kind, law);
            }
        }
    }

    /// What else is known of the leg that a straight belongs to; of a riser no more than its diameter.
    fn leg(&self, piece: &Piece) -> LegState {
        let run = &self.plan.run;
        match (piece.id.part, piece.point) {
            (Part::Leg, Some(index)) => run.points[index].leg,
            (_, at) => LegState {
                diameter: run.duct_of_riser(at).and_then(|leg| leg.leg.diameter),
                ..LegState::default()
            },
        }
    }

    fn straight(&mut self, piece: &Piece, length: Length, duct: Duct, rise: Length) {
        let id = &piece.id;
        let leg = self.leg(piece);
        let (bore, reach) = Bore::of_leg(duct, &leg, self.plan.run.diameter);
        self.change_area(id, &bore);
        self.bore = bore;
        if let Some(free_area) = leg.leak_free_area_m2 {
            let kind = ElementKind::Leak {
                free_area_m2: free_area,
            };
            self.push(
                ElementId::new(&id.node, Part::Leak),
                kind,
                Law::Leak { free_area },
            );
        }
        let diameters = |length: Length| length.metres().max(0.0) / bore.diameter;
        let (less, more) = leg
            .estimate
            .map_or((Length::ZERO, Length::ZERO), |estimate| {
                (estimate.less, estimate.more)
            });
        let law = Law::Straight(Coefficient {
            low: diameters(length - less),
            likely: diameters(length),
            high: diameters(length + more),
            source: &USER_SOURCE,
        });
        let element = self.push(id.clone(), ElementKind::Straight { length, duct }, law);
        element.developed_length = length;
        element.rise = rise;
        element.reach = reach;
        self.reaches(id, reach);
        if let Some((_, since)) = &mut self.last_bend {
            *since += length;
        }
        self.obstructions(id, &leg);
    }

    /// What sits in a leg beside its straight duct.
    fn obstructions(&mut self, id: &ElementId, leg: &LegState) {
        if let Some(elbows) = leg.concealed {
            let (least, most) = (f64::from(elbows.least), f64::from(elbows.most));
            let law = Law::ConcealedElbows(Coefficient {
                low: least,
                likely: f64::midpoint(least, most),
                high: most,
                source: &USER_SOURCE,
            });
            let kind = ElementKind::ConcealedElbows {
                least: elbows.least,
                most: elbows.most,
            };
            self.bore = self.bore.as_fitting();
            self.push(ElementId::new(&id.node, Part::ConcealedElbows), kind, law);
        }
        if let Some(free_area) = leg.blockage_free_area {
            let law = Law::Blockage {
                k: blockage::in_duct(free_area),
            };
            let id = ElementId::new(&id.node, Part::Blockage);
            self.push(id, ElementKind::Blockage { free_area }, law);
        }
        if leg.ends_in_wall_box {
            let id = ElementId::new(&id.node, Part::WallBox);
            self.bore = self.bore.as_fitting();
            self.push(id, ElementKind::WallBox, Law::WallBox);
        }
    }

    /// An element where the duct's area changes; its velocity pressure is that of the narrower duct.
    fn change_area(&mut self, id: &ElementId, next: &Bore) {
        /// Areas closer than this share are one: inches turned into metres. Of the computation.
        const SAME: f64 = 1e-6;
        let area_ratio = next.area / self.bore.area;
        if (area_ratio - 1.0).abs() < SAME {
            return;
        }
        let k = if area_ratio > 1.0 {
            self.bore = self.bore.as_fitting();
            area_change::expansion(self.bore.area, next.area)
        } else {
            let upstream = core::mem::replace(&mut self.bore, next.as_fitting());
            area_change::contraction(upstream.area, next.area)
        };
        let part = match id.part {
            Part::Riser => Part::AreaChangeIntoRiser,
            _ => Part::AreaChange,
        };
        let part = ElementId::new(&id.node, part);
        self.push(
            part,
            ElementKind::AreaChange { area_ratio },
            Law::AreaChange { k },
        );
    }

    fn bend(&mut self, id: &ElementId, bend: &Bend, leaving: Option<Duct>) {
        let ratio = bend.elbow.radius.metres() / self.bore.diameter;
        let close = self.close_to_last(id, bend);
        let method = method(self.plan.bend_method);
        let (law, reach) = match bend.elbow.kind {
            ElbowKind::Smooth => {
                let (law, reach) = method.law(bend.angle, ratio);
                (
                    Law::Elbow {
                        law,
                        spread: Some((method, spread_of_methods(method, bend.angle, ratio))),
                        close,
                    },
                    reach,
                )
            }
            ElbowKind::Segmented => {
                let (law, reach) = ElbowLaw::segmented(bend.angle, ratio);
                (
                    Law::Elbow {
                        law,
                        spread: None,
                        close,
                    },
                    reach,
                )
            }
            ElbowKind::SharpMitre => (
                Law::SharpMitre {
                    k: mitre(bend.angle),
                    close,
                },
                Reach::Within,
            ),
            ElbowKind::BentFlexible => {
                let (law, reach) = ElbowLaw::smooth(bend.angle, ratio);
                (Law::BentFlexible { law, close }, reach)
            }
        };
        let here = self.bore;
        self.bore = if bend.elbow.kind == ElbowKind::BentFlexible {
            flexible_wall(here, leaving)
        } else {
            here.as_fitting()
        };
        let kind = ElementKind::Elbow {
            angle: bend.angle,
            elbow: bend.elbow.kind,
            radius: bend.elbow.radius,
        };
        let element = self.push(id.clone(), kind, law);
        element.developed_length = bend.arc();
        element.reach = reach;
        self.reaches(id, reach);
        self.bore = here;
        self.last_bend = Some((*bend, Length::ZERO));
    }

    /// The wider band of an elbow close behind another, and the remark on it.
    fn close_to_last(&mut self, id: &ElementId, bend: &Bend) -> Option<Coefficient> {
        let (last, since) = self.last_bend?;
        let gap = since.metres() / self.bore.diameter;
        if gap >= FAR {
            return None;
        }
        if gap < REMARKED {
            self.compiled.findings.push(Finding::ElbowsClose {
                element: id.clone(),
                gap_diameters: gap,
            });
        }
        Some(close_elbows::factor(fold(&last, bend), gap))
    }
}

/// The formula that a plan's choice names.
fn method(choice: BendMethod) -> Method {
    match choice {
        BendMethod::Rennels => Method::Rennels,
        BendMethod::Miller => Method::Miller,
        BendMethod::Ito => Method::Ito,
        BendMethod::Idelchik => Method::Idelchik,
    }
}

/// A hand-made bend has the wall of the flexible duct that it is bent from: the one that arrives,
/// else the one that leaves, else semi-rigid.
fn flexible_wall(here: Bore, leaving: Option<Duct>) -> Bore {
    use crate::plan::Input::{FoilRoughness, RigidRoughness, SemiRigidRoughness};
    let roughness = match (here.roughness, leaving) {
        (RigidRoughness, Some(Duct::Foil { .. })) => FoilRoughness,
        (RigidRoughness, _) => SemiRigidRoughness,
        (own, _) => own,
    };
    Bore { roughness, ..here }
}

/// How two bends in a row lie to one another.
fn fold(first: &Bend, second: &Bend) -> Fold {
    let level = |bend: &Bend| Some(bend.before?.cross(bend.after?));
    let sharp = |bend: &Bend| bend.elbow.kind == ElbowKind::SharpMitre;
    let turns_back = match (level(first), level(second)) {
        (Some(first), Some(second)) => Some(first * second < 0.0),
        (None, None) => match (first.before, second.after) {
            // Up and over: straight on is a Z, the way back is a U, sideways is neither.
            (Some(before), Some(after)) => match before.turn_to(after).degrees() {
                turn if turn < 45.0 => Some(true),
                turn if turn > 135.0 => Some(false),
                _ => None,
            },
            // Out of one riser into the next: up and down again is a U, up and up a Z.
            (None, None) => Some(first.is_upward == second.is_upward),
            _ => None,
        },
        _ => None,
    };
    match turns_back {
        Some(false) => Fold::Same,
        Some(true) if sharp(first) && sharp(second) => Fold::OppositeSharp,
        _ => Fold::Other,
    }
}
