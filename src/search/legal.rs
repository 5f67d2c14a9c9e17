//! Whether a plan's run can be built where it is drawn.

use super::blocker::{in_zones, on_level};
use super::request::Options;
use super::terminal::is_allowed;
use crate::plan::{
    Field, Fitting, LEAST_CUT, Part, PieceKind, Plan, RunPath, clashes, segment_distance,
};

/// Whether the plan's run can be built where it is drawn: no clash, no overlap of elbows, no two
/// points in one, no leg through another or through a closed zone, an allowed end, and values that a
/// plan may have.
pub(super) fn is_legal(plan: &Plan, options: &Options) -> bool {
    /// Fittings that overlap by less than this, m, fit. Of the computation.
    const ROUNDING: f64 = 1e-9;
    let path = RunPath::of(plan);
    let fits = path.pieces.iter().all(|piece| match piece.kind {
        PieceKind::Straight { overlap, .. } => overlap.metres() < ROUNDING,
        _ => true,
    });
    fits && path.coinciding.is_empty()
        && is_allowed(plan, &path)
        && risers_are_clear(plan, &path)
        && clashes(plan, &path).is_empty()
        && !crosses_itself(plan, &path)
        && !is_in_closed_zone(plan, &path, options)
        && can_be_held(plan)
}

/// Whether a plan can hold the values that the search may have changed: the rest of it was asked for.
fn can_be_held(plan: &Plan) -> bool {
    let run = &plan.run;
    let is_on_sheet = |x: f64, y: f64| Field::COORDINATE.holds(x) && Field::COORDINATE.holds(y);
    let rises = |fitting: &Fitting| {
        let riser = fitting.riser.as_ref();
        riser.is_none_or(|riser| Field::RISE.holds(riser.rise.metres()))
    };
    #[allow(clippy::cast_precision_loss, reason = "a few points")]
    let count = run.points.len() as f64;
    Field::COUNT.holds(count)
        && is_on_sheet(plan.dryer.x_m, plan.dryer.y_m)
        && rises(&run.outlet)
        && run
            .points
            .iter()
            .all(|point| rises(&point.fitting) && is_on_sheet(point.position.x, point.position.y))
}

/// Whether every riser has room on the levels that it begins and ends on: `clashes` looks at level legs
/// alone.
fn risers_are_clear(plan: &Plan, path: &RunPath) -> bool {
    let reach = (plan.run.diameter / 2.0 - LEAST_CUT).metres();
    path.pieces.windows(2).all(|pair| {
        let (riser, next) = (&pair[0], &pair[1]);
        let PieceKind::Straight { corners, .. } = riser.kind else {
            return true;
        };
        let levels = [riser.height, next.height];
        riser.id.part != Part::Riser
            || levels.into_iter().all(|height| {
                let level = plan.level_at(height);
                let mut there = on_level(&plan.obstacles, level);
                !there.any(|(_, it)| it.is_nearer(corners.0, corners.0, reach))
            })
    })
}

/// Whether two straights with three elbows and more between them meet: with fewer they cannot.
fn crosses_itself(plan: &Plan, path: &RunPath) -> bool {
    /// Straights so many pieces on have three elbows between them.
    const APART: usize = 6;
    let width = (plan.run.diameter - LEAST_CUT).metres();
    let end = path.pieces.len().saturating_sub(1);
    let straight = |index: usize| {
        let piece = &path.pieces[index];
        let PieceKind::Straight { ends, .. } = piece.kind else {
            return None;
        };
        let heights = (piece.height, path.pieces[(index + 1).min(end)].height);
        let (low, high) = (heights.0.metres(), heights.1.metres());
        Some((ends, low.min(high), low.max(high)))
    };
    let straights: Vec<_> = (0..end).map(straight).collect();
    straights.iter().enumerate().any(|(index, own)| {
        straights.iter().skip(index + APART).any(|other| {
            let (Some((a, low, high)), Some((b, its_low, its_high))) = (own, other) else {
                return false;
            };
            low - width < *its_high
                && its_low - width < *high
                && segment_distance(a.0, a.1, b.0, b.1) < width
        })
    })
}

fn is_in_closed_zone(plan: &Plan, path: &RunPath, options: &Options) -> bool {
    if options.closed_zones.is_empty() {
        return false;
    }
    let reach = (plan.run.diameter / 2.0 - LEAST_CUT).metres();
    path.pieces.iter().any(|piece| {
        let PieceKind::Straight { ends, .. } = piece.kind else {
            return false;
        };
        let level = plan.level_at(piece.height);
        let zones = in_zones(&plan.zones, &options.closed_zones, level);
        zones
            .iter()
            .any(|zone| zone.is_nearer(ends.0, ends.1, reach))
    })
}
