//! What is bought and cut for a run: parts by kind, and pipe from stock lengths with the least waste.

mod packing;
mod pieces;

pub use packing::{Bar, Packing, pack};

use super::Figures;
use crate::duct::tables::trade_parts::{STOCK_LENGTHS, TAPE_TURNS};
use crate::plan::{Duct, ElbowKind, Metal, Plan, RuleTopic, TerminationKind};
use crate::rules::Measure;
use crate::units::{Angle, Length};
use pieces::{Thing, cut_lengths, things};
use serde::Serialize;

/// So many pieces of one kind of pipe are cut in the best way there is: some million steps.
const EXACT_UP_TO: usize = 12;

/// A longer run, or one of more pieces, is no house's: its pipe is not cut up.
const LONGEST_RUN: Length = Length::from_metres(500.0);
const MOST_PIECES: usize = 2_000;

/// The parts of a run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CutList {
    /// The parts, in the order in which they are told.
    pub parts: Vec<PartLine>,
    /// Pipe by diameter and metal, each with the way it is cut.
    pub pipe: Vec<PipeCuts>,
    /// Whether the run is longer than any house's, so that its pipe is not cut up.
    pub is_too_long: bool,
}

/// A kind of part and how much of it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PartLine {
    /// What.
    pub part: PartKind,
    /// How many; none for what is sold by length.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub count: Option<usize>,
    /// How long, for what is sold by length.
    #[serde(rename = "length_m", skip_serializing_if = "Option::is_none")]
    pub length: Option<Length>,
}

/// A kind of part.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
#[allow(
    missing_docs,
    reason = "each field is a nominal size or is named by its kind"
)]
pub enum PartKind {
    /// A stock length of rigid pipe.
    Pipe {
        #[serde(rename = "diameter_m")]
        diameter: Length,
        metal: Metal,
        #[serde(rename = "stock_m")]
        stock: Length,
    },
    /// An elbow.
    Elbow {
        elbow: ElbowKind,
        #[serde(rename = "angle_rad")]
        angle: Angle,
        #[serde(rename = "centre_line_radius_m")]
        radius: Length,
        #[serde(rename = "diameter_m")]
        diameter: Length,
    },
    /// From one diameter to another.
    Reducer {
        #[serde(rename = "from_m")]
        from: Length,
        #[serde(rename = "to_m")]
        to: Length,
    },
    /// Flexible duct, as the transition duct or elsewhere.
    Flexible {
        duct: Duct,
        #[serde(rename = "diameter_m")]
        diameter: Length,
        is_transition: bool,
    },
    /// Flat rectangular duct, as an offset behind the dryer.
    OffsetDuct {
        #[serde(rename = "width_m")]
        width: Length,
        #[serde(rename = "depth_m")]
        depth: Length,
    },
    /// A recessed wall box.
    WallBox,
    /// The hood or cap.
    Termination {
        termination: TerminationKind,
        #[serde(rename = "diameter_m")]
        diameter: Length,
    },
    /// Supports so far apart at most.
    Support {
        #[serde(rename = "spacing_m")]
        spacing: Length,
    },
    /// Clamps for flexible duct.
    Clamp,
    /// Foil tape for so many joints.
    FoilTape { joints: usize },
    /// Elbows that nobody can see, which are there already.
    ConcealedElbows { least: u8, most: u8 },
}

/// All rigid pipe of one diameter and metal.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PipeCuts {
    /// Nominal diameter.
    #[serde(rename = "diameter_m")]
    pub diameter: Length,
    /// What it is made of.
    pub metal: Metal,
    /// What is cut, in the order in which the air meets it.
    pub pieces: Vec<PipePiece>,
    /// From what it is cut.
    pub packing: Packing,
}

/// One piece of pipe.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PipePiece {
    /// The place of its straight in the run, from 1.
    pub element: usize,
    /// As it is cut, with its crimped end.
    #[serde(rename = "length_m")]
    pub length: Length,
    /// Whether the length is only estimated, and has to be measured first.
    pub is_estimated: bool,
}

/// The lengths that pipe for `plan` is bought in, the shortest first.
pub fn stock_lengths(plan: &Plan) -> Vec<Length> {
    let own = &plan.handover.stock_lengths;
    let mut lengths = if own.is_empty() {
        STOCK_LENGTHS.to_vec()
    } else {
        own.clone()
    };
    lengths.sort_by(|one, other| one.metres().total_cmp(&other.metres()));
    lengths.dedup();
    lengths
}

/// The parts of the run of `plan`, whose figures are given.
pub fn cut_list(plan: &Plan, figures: &Figures) -> CutList {
    let things = things(plan, figures);
    let stock = stock_lengths(plan);
    let is_too_long = is_too_long(&things, &stock);
    let pipe = if is_too_long {
        Vec::new()
    } else {
        pipe(&things, &stock)
    };
    let mut list = Lines::default();
    for cuts in &pipe {
        for bar in &cuts.packing.bars {
            list.count(PartKind::Pipe {
                diameter: cuts.diameter,
                metal: cuts.metal,
                stock: Length::from_metres(bar.stock),
            });
        }
    }
    fittings(&things, &mut list);
    supports(figures, &mut list);
    if !is_too_long {
        joints(plan, &things, &mut list);
    }
    CutList {
        parts: list.0,
        pipe,
        is_too_long,
    }
}

#[derive(Default)]
struct Lines(Vec<PartLine>);

impl Lines {
    fn line(&mut self, part: PartKind) -> &mut PartLine {
        let index = self.0.iter().position(|line| line.part == part);
        let index = index.unwrap_or_else(|| {
            self.0.push(PartLine {
                part,
                count: None,
                length: None,
            });
            self.0.len() - 1
        });
        &mut self.0[index]
    }

    fn count(&mut self, part: PartKind) {
        self.add(part, 1);
    }

    fn add(&mut self, part: PartKind, count: usize) {
        let line = self.line(part);
        line.count = Some(line.count.unwrap_or_default() + count);
    }

    fn lengthen(&mut self, part: PartKind, length: Length) {
        let line = self.line(part);
        line.length = Some(line.length.unwrap_or_default() + length);
    }
}

fn is_too_long(things: &[Thing], stock: &[Length]) -> bool {
    let lengths = things.iter().filter_map(|thing| match thing {
        Thing::Pipe { length, .. } => Some(*length),
        _ => None,
    });
    let longest = stock.last().copied().unwrap_or_default();
    let all: Length = lengths.clone().sum();
    all > LONGEST_RUN
        || lengths
            .map(|length| cut_lengths(length, longest).len())
            .sum::<usize>()
            > MOST_PIECES
}

fn pipe(things: &[Thing], stock: &[Length]) -> Vec<PipeCuts> {
    let longest = stock.last().copied().unwrap_or_default();
    let lengths: Vec<f64> = stock.iter().map(|length| length.metres()).collect();
    let mut groups: Vec<(Length, Metal, Vec<PipePiece>)> = Vec::new();
    for thing in things {
        let Thing::Pipe {
            place,
            diameter,
            metal,
            length,
            is_estimated,
        } = *thing
        else {
            continue;
        };
        let cut = cut_lengths(length, longest)
            .into_iter()
            .map(|length| PipePiece {
                element: place,
                length,
                is_estimated,
            });
        let own =
            |group: &&mut (Length, Metal, Vec<PipePiece>)| group.0 == diameter && group.1 == metal;
        match groups.iter_mut().find(own) {
            Some(group) => group.2.extend(cut),
            None => groups.push((diameter, metal, cut.collect())),
        }
    }
    let cuts = groups.into_iter().filter_map(|(diameter, metal, pieces)| {
        let sizes: Vec<f64> = pieces.iter().map(|piece| piece.length.metres()).collect();
        Some(PipeCuts {
            packing: pack(&sizes, &lengths, EXACT_UP_TO)?,
            diameter,
            metal,
            pieces,
        })
    });
    cuts.collect()
}

fn fittings(things: &[Thing], list: &mut Lines) {
    // Flexible duct is the transition duct as far as the first thing that is none.
    let mut is_transition = true;
    for thing in things {
        is_transition &= thing.is_flexible();
        match *thing {
            Thing::Pipe { .. } => {}
            Thing::Flexible {
                duct,
                diameter,
                length,
            } => list.lengthen(
                PartKind::Flexible {
                    duct: at_full_stretch(duct),
                    diameter,
                    is_transition,
                },
                length,
            ),
            Thing::Flat {
                width,
                depth,
                length,
            } => list.lengthen(PartKind::OffsetDuct { width, depth }, length),
            Thing::Elbow {
                elbow,
                angle,
                radius,
                diameter,
            } => list.count(PartKind::Elbow {
                elbow,
                angle: whole_degrees(angle),
                radius,
                diameter,
            }),
            Thing::ConcealedElbows { least, most } => {
                list.count(PartKind::ConcealedElbows { least, most });
            }
            Thing::Reducer { from, to } => list.count(PartKind::Reducer { from, to }),
            Thing::WallBox => list.count(PartKind::WallBox),
            Thing::Termination { kind, diameter } => list.count(PartKind::Termination {
                termination: kind,
                diameter,
            }),
        }
    }
}

/// A fitting is bought and set by whole degrees.
fn whole_degrees(angle: Angle) -> Angle {
    Angle::from_degrees(angle.degrees().round())
}

/// What is bought does not hang on how it is pushed together.
const fn at_full_stretch(duct: Duct) -> Duct {
    match duct {
        Duct::SemiRigid { .. } => Duct::SemiRigid {
            short_of_full_stretch_percent: 0.0,
        },
        Duct::Foil { .. } => Duct::Foil {
            short_of_full_stretch_percent: 0.0,
        },
        duct => duct,
    }
}

/// As many supports as the code check asks for.
fn supports(figures: &Figures, list: &mut Lines) {
    let mut findings = figures.code_check.findings.iter();
    let finding = findings.find(|finding| finding.topic == RuleTopic::Supports);
    let Some(finding) = finding else {
        return;
    };
    if let (
        Some(Measure::Count(count)),
        Some(crate::rules::Limit::AtMost(Measure::Length(spacing))),
    ) = (finding.measured, finding.limit)
        && count > 0
    {
        list.add(PartKind::Support { spacing }, count);
    }
}

/// Clamps and tape: a joint at the dryer's outlet and one between every two things, clamped where
/// either is flexible and taped elsewhere, and the joints inside a straight of several pieces.
fn joints(plan: &Plan, things: &[Thing], list: &mut Lines) {
    let stock = stock_lengths(plan);
    let longest = stock.last().copied().unwrap_or_default();
    let (mut clamps, mut taped, mut tape) = (0, 0, Length::ZERO);
    let ended: Vec<&Thing> = things.iter().filter(|thing| thing.has_ends()).collect();
    for (index, thing) in ended.iter().enumerate() {
        let before = index.checked_sub(1).map(|before| ended[before]);
        let around = around(plan, thing);
        if thing.is_flexible() || before.is_some_and(Thing::is_flexible) {
            clamps += 1;
        } else {
            taped += 1;
            tape += around * TAPE_TURNS;
        }
        if let Thing::Pipe { length, .. } = thing {
            let inside = cut_lengths(*length, longest).len() - 1;
            taped += inside;
            #[allow(clippy::cast_precision_loss, reason = "a few joints")]
            let inside = inside as f64;
            tape += around * (TAPE_TURNS * inside);
        }
    }
    if clamps > 0 {
        list.add(PartKind::Clamp, clamps);
    }
    if taped > 0 {
        list.lengthen(PartKind::FoilTape { joints: taped }, tape);
    }
}

/// The way round a thing's duct.
fn around(plan: &Plan, thing: &Thing) -> Length {
    match thing {
        Thing::Pipe { diameter, .. }
        | Thing::Flexible { diameter, .. }
        | Thing::Elbow { diameter, .. }
        | Thing::Termination { diameter, .. }
        | Thing::Reducer { from: diameter, .. } => *diameter * core::f64::consts::PI,
        Thing::Flat { width, depth, .. } => (*width + *depth) * 2.0,
        Thing::WallBox | Thing::ConcealedElbows { .. } => plan.run.diameter * core::f64::consts::PI,
    }
}
