//! Whether a leg, a riser, the curve of an elbow or an end outdoors is clear of all that is drawn.

use super::boxes::{Box2, apart, body, drawn, wall_line};
use super::{FROM_OPENINGS, NEAR, Small, Spot};
use elbowroom::plan::Level;

/// A dryer's body reaches so far above its outlet, as the search documents.
const BODY: f64 = 1.1;

impl Small {
    fn level(&self, height: f64) -> Level {
        if height > self.plan.ceiling_height.metres() {
            Level::CeilingSpace
        } else {
            Level::Room
        }
    }

    pub(super) fn leg_is_clear(&self, a: Spot, b: Spot, height: f64, leaves_dryer: bool) -> bool {
        let level = self.level(height);
        let there = self.plan.obstacles.iter().filter(|it| it.level == level);
        let clear = there
            .map(drawn)
            .all(|it| apart(a, b, it) >= self.reach - NEAR);
        let low = height <= self.outlet_height() + BODY;
        let clear_of_body =
            leaves_dryer || !low || apart(a, b, body(&self.plan)) >= self.reach - NEAR;
        clear && clear_of_body && self.walls_are_clear(a, b, level)
    }

    pub(super) fn outlet_height(&self) -> f64 {
        self.plan.dryer.outlet_height.metres()
    }

    /// A leg keeps beside walls that it runs along; walls indoors may be gone through.
    fn walls_are_clear(&self, a: Spot, b: Spot, level: Level) -> bool {
        self.plan.walls.iter().all(|wall| {
            let line = wall_line(wall);
            let lies_along_x = (a.1 - b.1).abs() < NEAR;
            let lies_along_y = (a.0 - b.0).abs() < NEAR;
            let wall_along_x = (line.0.1 - line.1.1).abs() < NEAR;
            let runs_along = (lies_along_x && wall_along_x) || (lies_along_y && !wall_along_x);
            let off = apart(a, b, line);
            let enough = self.reach + wall.thickness.metres() / 2.0;
            if runs_along && level == Level::Room {
                off >= enough - NEAR
            } else {
                !wall.outside || off > NEAR
            }
        })
    }

    pub(super) fn riser_is_clear(&self, at: Spot, one: f64, other: f64) -> bool {
        let (low, high) = (one.min(other), one.max(other));
        let passed = self.heights.iter().filter(|it| (low..=high).contains(*it));
        let clear_of_body = low > self.outlet_height() + BODY
            || apart(at, at, body(&self.plan)) >= self.reach - NEAR;
        clear_of_body
            && passed.into_iter().all(|height| {
                let level = self.level(*height);
                let there = self.plan.obstacles.iter().filter(|it| it.level == level);
                let clear = there
                    .map(drawn)
                    .all(|it| apart(at, at, it) >= self.reach - NEAR);
                let mut walls = self.plan.walls.iter();
                clear
                    && (level != Level::Room
                        || walls.all(|wall| {
                            let enough = self.reach + wall.thickness.metres() / 2.0;
                            apart(at, at, wall_line(wall)) >= enough - NEAR
                        }))
            })
    }

    /// The curve of an elbow, point by point: a two-hundredth of a quarter turn apart.
    pub(super) fn curve_is_clear(&self, at: Spot, before: Spot, after: Spot, height: f64) -> bool {
        /// Points lie on the curve, where the search's chords may be nearer by this, m.
        const CURVE: f64 = 1e-4;
        let turn = (before.0 * after.0 + before.1 * after.1)
            .clamp(-1.0, 1.0)
            .acos();
        let radius = self.elbow.radius.metres();
        let tangent = radius * (turn / 2.0).tan();
        let start = (at.0 - tangent * before.0, at.1 - tangent * before.1);
        let side = (before.0 * after.1 - before.1 * after.0).signum();
        let inward = (-before.1 * side, before.0 * side);
        let level = self.level(height);
        (0..=200).all(|step| {
            let angle = turn * f64::from(step) / 200.0;
            let (ahead, aside) = (radius * angle.sin(), radius * (1.0 - angle.cos()));
            let p = (
                start.0 + ahead * before.0 + aside * inward.0,
                start.1 + ahead * before.1 + aside * inward.1,
            );
            let there = self.plan.obstacles.iter().filter(|it| it.level == level);
            let mut walls = self.plan.walls.iter();
            there
                .map(drawn)
                .all(|it| apart(p, p, it) >= self.reach - CURVE)
                && (level != Level::Room
                    || walls.all(|wall| {
                        let enough = self.reach + wall.thickness.metres() / 2.0;
                        apart(p, p, wall_line(wall)) >= enough - CURVE
                    }))
        })
    }

    /// Where a leg on `way` ends outdoors, if it may.
    pub(super) fn end(
        &self,
        from: Spot,
        way: Spot,
        height: f64,
        leaves_dryer: bool,
    ) -> Option<Spot> {
        let mut best: Option<(f64, usize)> = None;
        for (index, wall) in self.plan.walls.iter().enumerate() {
            let Box2(least, most) = wall_line(wall);
            let wall_along_x = (least.1 - most.1).abs() < NEAR;
            let (distance, inside) = if wall_along_x && way.0 == 0.0 {
                let x = from.0;
                (
                    (least.1 - from.1) * way.1,
                    x >= least.0 + self.reach && x <= most.0 - self.reach,
                )
            } else if !wall_along_x && way.1 == 0.0 {
                let y = from.1;
                (
                    (least.0 - from.0) * way.0,
                    y >= least.1 + self.reach && y <= most.1 - self.reach,
                )
            } else {
                continue;
            };
            let is_nearer = best.is_none_or(|(other, _)| distance < other);
            if wall.outside && inside && distance > 0.0 && is_nearer {
                best = Some((distance, index));
            }
        }
        let (distance, index) = best?;
        let out = distance + self.plan.walls[index].thickness.metres() / 2.0;
        let end = (from.0 + way.0 * out, from.1 + way.1 * out);
        let mut others = self.plan.walls.iter().enumerate();
        let level = self.level(height);
        let there = self.plan.obstacles.iter().filter(|it| it.level == level);
        let clear = there
            .map(drawn)
            .all(|it| apart(from, end, it) >= self.reach - NEAR);
        let low = height <= self.outlet_height() + BODY;
        let body_clear =
            leaves_dryer || !low || apart(from, end, body(&self.plan)) >= self.reach - NEAR;
        let walls_clear = others.all(|(other, wall)| {
            let line = wall_line(wall);
            let along = ((line.0.1 - line.1.1).abs() < NEAR) == (way.1 == 0.0);
            let off = apart(from, end, line);
            other == index
                || if along && level == Level::Room {
                    off >= self.reach + wall.thickness.metres() / 2.0 - NEAR
                } else {
                    !wall.outside || off > NEAR
                }
        });
        let far_enough = self.plan.openings.iter().all(|opening| {
            let wall = self
                .plan
                .walls
                .iter()
                .find(|wall| wall.id == opening.wall)
                .unwrap();
            let (dx, dy) = (
                (wall.to_x_m - wall.from_x_m).signum(),
                (wall.to_y_m - wall.from_y_m).signum(),
            );
            let half = wall.thickness.metres() / 2.0;
            let (near, wide) = (opening.offset.metres(), opening.width.metres());
            let hole = if (wall.from_y_m - wall.to_y_m).abs() < NEAR {
                let (one, other) = (
                    wall.from_x_m + dx * near,
                    wall.from_x_m + dx * (near + wide),
                );
                Box2(
                    (one.min(other), wall.from_y_m - half),
                    (one.max(other), wall.from_y_m + half),
                )
            } else {
                let (one, other) = (
                    wall.from_y_m + dy * near,
                    wall.from_y_m + dy * (near + wide),
                );
                Box2(
                    (wall.from_x_m - half, one.min(other)),
                    (wall.from_x_m + half, one.max(other)),
                )
            };
            !wall.outside || apart(end, end, hole) >= FROM_OPENINGS - 1e-9
        });
        (clear && body_clear && walls_clear && far_enough).then_some(end)
    }
}
