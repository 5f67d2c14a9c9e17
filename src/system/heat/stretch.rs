//! The run cut where its surroundings change.

use super::surroundings::surrounding_temperature;
use crate::duct::heat_transfer::{Shell, StillAir};
use crate::duct::tables::{emissivity, insulation};
use crate::plan::{
    Duct, Insulation, LegState, Metal, Part, Piece, PieceKind, Plan, Point, RunPath,
};
use crate::system::element::CompiledElement;
use crate::units::{Length, Pressure, Temperature};

/// A stretch of one element in one surrounding.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(in crate::system) struct Stretch {
    /// The element's place in the run.
    pub element: usize,
    /// m.
    pub length: f64,
    pub shell: Shell,
    /// Place in the list of still airs.
    pub still: usize,
    /// Into how many cells it is cut.
    pub cells: u32,
}

/// The stretches of a run, and the still airs about them.
pub(super) struct Stretches<'a> {
    plan: &'a Plan,
    pressure: Pressure,
    pub list: Vec<Stretch>,
    pub still: Vec<StillAir>,
}

impl<'a> Stretches<'a> {
    /// Cuts the `elements` of `plan`'s run along its `path`.
    pub fn of(
        plan: &'a Plan,
        path: &RunPath,
        elements: &[CompiledElement],
        pressure: Pressure,
    ) -> Self {
        let mut cut = Self {
            plan,
            pressure,
            list: Vec::with_capacity(elements.len() * 2),
            still: Vec::new(),
        };
        // Elements without length stand between the pieces; the rest is in the same order.
        let mut pieces = path.pieces.iter().enumerate();
        for (index, element) in elements.iter().enumerate() {
            if element.developed_length <= Length::ZERO {
                continue;
            }
            if let Some((place, piece)) = pieces.find(|(_, piece)| piece.id == element.id) {
                let leg = cut.leg_of(place, path);
                cut.piece(index, element, piece, leg);
            }
        }
        cut
    }

    fn piece(
        &mut self,
        index: usize,
        element: &CompiledElement,
        piece: &Piece,
        (duct, leg): (Duct, LegState),
    ) {
        let bore = element.bore;
        let perimeter = 4.0 * bore.area / bore.diameter;
        let is_riser = piece.id.part == Part::Riser;
        let length = element.developed_length;
        let height = is_riser.then(|| length.metres());
        let shell = shell(perimeter, bore.diameter, duct, &leg, height);
        let mut add = |share: f64, place: Point, at: Length| {
            let temperature = surrounding_temperature(self.plan, place, at);
            let still = still_air(&mut self.still, temperature, self.pressure);
            let length = length.metres() * share;
            self.list.push(Stretch {
                element: index,
                length,
                shell,
                still,
                cells: cells(length),
            });
        };
        match &piece.kind {
            PieceKind::Straight { corners, .. } if is_riser => {
                let rise = element.rise.metres();
                let levels = [0.0, self.plan.ceiling_height.metres()];
                let cuts = levels.map(|level| (level - piece.height.metres()) / rise);
                each_share(cuts.into_iter(), |from, to| {
                    let at = Length::from_metres(rise * f64::midpoint(from, to)) + piece.height;
                    add(to - from, corners.0, at);
                });
            }
            PieceKind::Straight { ends, .. } => {
                let (from, to) = *ends;
                let level = self.plan.level_at(piece.height);
                let zones = self.plan.zones.iter().filter(|zone| zone.level == level);
                let cuts = zones.flat_map(|zone| zone.crossings(from, to));
                each_share(cuts, |start, end| {
                    let middle = f64::midpoint(start, end);
                    let place = Point::new(
                        from.x + (to.x - from.x) * middle,
                        from.y + (to.y - from.y) * middle,
                    );
                    add(end - start, place, piece.height);
                });
            }
            PieceKind::Bend(bend) => add(1.0, bend.corner, piece.height),
            PieceKind::Termination => {}
        }
    }

    /// Duct and state of the leg that the piece with this index belongs to: a bend is made and wrapped
    /// like the straight before it, at the outlet like the first leg.
    fn leg_of(&self, index: usize, path: &RunPath) -> (Duct, LegState) {
        let run = &self.plan.run;
        let pieces = path.pieces[..=index].iter().rev();
        let straight = pieces
            .filter(|piece| matches!(piece.kind, PieceKind::Straight { .. }))
            .find_map(|piece| match (piece.id.part, piece.point) {
                (Part::Leg, Some(index)) => run.points.get(index),
                (_, at) => run.duct_of_riser(at),
            });
        straight
            .or(run.points.first())
            .map_or((Duct::Rigid, LegState::default()), |point| {
                (point.duct, point.leg)
            })
    }
}

/// Calls `take` with each share of a way between 0, the cuts and 1.
fn each_share(cuts: impl Iterator<Item = f64>, mut take: impl FnMut(f64, f64)) {
    /// A stretch of less than this share is none: the last digit of a coordinate.
    /// Of the computation.
    const LEAST: f64 = 1e-9;
    let mut cuts: Vec<f64> = cuts.filter(|cut| *cut > 0.0 && *cut < 1.0).collect();
    cuts.sort_by(f64::total_cmp);
    cuts.push(1.0);
    let mut from = 0.0;
    for to in cuts {
        if to - from > LEAST {
            take(from, to);
            from = to;
        }
    }
}

fn still_air(list: &mut Vec<StillAir>, temperature: Temperature, pressure: Pressure) -> usize {
    let celsius = temperature.celsius();
    #[allow(clippy::float_cmp, reason = "the same number, from the same field")]
    let known = list.iter().position(|air| air.celsius == celsius);
    known.unwrap_or_else(|| {
        list.push(StillAir::new(temperature, pressure));
        list.len() - 1
    })
}

/// Cells of at most 0.75 m: half that moves no outlet by more than 0.01 K.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a length over a cell is a small whole number above nought"
)]
fn cells(length: f64) -> u32 {
    /// Of the computation.
    const LONGEST_CELL: f64 = 0.75;
    /// The last digit of a length is no reason for another cell. Of the computation.
    const ROUNDING: f64 = 1e-9;
    (length / LONGEST_CELL - ROUNDING).ceil().max(1.0) as u32
}

fn shell(
    perimeter: f64,
    hydraulic_diameter: f64,
    duct: Duct,
    leg: &LegState,
    height: Option<f64>,
) -> Shell {
    let metal = match (duct, leg.metal) {
        (Duct::Rigid | Duct::FlatRectangular { .. }, Metal::Galvanized) => emissivity::GALVANIZED,
        _ => emissivity::ALUMINIUM,
    };
    let bare = Shell::bare(perimeter, hydraulic_diameter, metal.likely, height);
    let conductivity = insulation::CONDUCTIVITY.likely;
    let thickness = match leg.insulation {
        None => return bare,
        Some(Insulation::Thickness(thickness)) => thickness.metres(),
        Some(Insulation::Resistance(resistance)) => resistance * conductivity,
    };
    bare.insulated(thickness, conductivity, emissivity::JACKET.likely)
}
