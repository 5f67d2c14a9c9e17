//! A suggested run, over the present one.

use super::run::outline;
use super::{Mark, Role};
use crate::plan::{Plan, RunPath};
use crate::units::Length;

/// How wide a ghost is, as a share of the duct: the present run shows beside it.
const WIDTH: f64 = 0.5;

/// The marks of the run of `plan` as a ghost.
pub fn ghost_marks(plan: &Plan) -> Vec<Mark> {
    let path = RunPath::of(plan);
    let diameter: Length = plan.run.diameter;
    let pieces = path.pieces.iter().filter_map(|piece| {
        let (shape, ..) = outline(piece, &path, diameter)?;
        Some(Mark {
            id: format!("ghost:{}", piece.id),
            role: Role::Ghost,
            shape,
            width: diameter * WIDTH,
            weight: 0.0,
            element: None,
            thing: None,
        })
    });
    pieces.collect()
}
