//! Which part of the plan is on the screen.

use crate::plan::{Bounds, Plan, Point};

/// The screen's window on the plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct View {
    /// The plan's point at the window's top left.
    pub origin: Point,
    /// Metres of the plan a screen pixel.
    pub metres_per_pixel: f64,
    /// Width and height of the window, px.
    pub size: (f64, f64),
}

impl Default for View {
    fn default() -> Self {
        Self {
            origin: Point::new(0.0, 0.0),
            metres_per_pixel: 0.005,
            size: (800.0, 600.0),
        }
    }
}

impl View {
    /// The closest and the widest view, metres a pixel.
    const LEAST: f64 = 0.0002;
    const GREATEST: f64 = 0.2;
    /// Room left above and below a plan that is shown whole, px, and the share of the window that it
    /// never passes.
    const MARGIN: f64 = 52.0;
    const MARGIN_SHARE: f64 = 0.1;
    /// Room left beside it, px: for the room's size where the window is wide.
    const NARROW_SIDE: f64 = 32.0;
    const WIDE_SIDE: f64 = 84.0;

    /// The plan's point under a place on the screen, px from the drawing's top left.
    pub fn point_at(&self, x: f64, y: f64) -> Point {
        Point::new(
            self.origin.x + x * self.metres_per_pixel,
            self.origin.y + y * self.metres_per_pixel,
        )
    }

    /// Where a point of the plan is on the screen, px.
    pub fn place(&self, point: Point) -> (f64, f64) {
        (
            (point.x - self.origin.x) / self.metres_per_pixel,
            (point.y - self.origin.y) / self.metres_per_pixel,
        )
    }

    /// Takes the window's new size, px; a size that no screen has is left out.
    pub fn resize(&mut self, width: f64, height: f64) {
        /// Far wider than any screen, px.
        const WIDEST: f64 = 100_000.0;
        let real = |side: f64| side > 0.0 && side < WIDEST;
        if real(width) && real(height) {
            self.size = (width, height);
        }
    }

    /// Shows all of `plan`, and room to draw in where it has no walls yet.
    pub fn show_plan(&mut self, plan: &Plan) {
        /// About a plan without walls, m.
        const ROOM: f64 = 1.2;
        let mut bounds = Bounds::of(plan);
        if plan.walls.is_empty() {
            let Bounds { least, greatest } = bounds;
            bounds = Bounds {
                least: Point::new(least.x - ROOM, least.y - ROOM / 2.0),
                greatest: Point::new(greatest.x + ROOM * 2.0, greatest.y + ROOM / 2.0),
            };
        }
        self.show(&bounds);
    }

    /// Shows all of `plan` where a point of it that was just drawn lies outside the window.
    pub fn follow(&mut self, plan: &Plan, drawn: Point) {
        /// As near to the window's edge as still counts as inside, px.
        const EDGE: f64 = 12.0;
        let (x, y) = self.place(drawn);
        let (width, height) = self.size;
        let inside = (EDGE..=width - EDGE).contains(&x) && (EDGE..=height - EDGE).contains(&y);
        if !inside {
            self.show(&Bounds::of(plan));
        }
    }

    /// Shows all of `bounds`.
    fn show(&mut self, bounds: &Bounds) {
        let (width, height) = bounds.size();
        let margin = Self::MARGIN.min(self.size.1 * Self::MARGIN_SHARE);
        let side = ((self.size.0 - 200.0) / 5.0).clamp(Self::NARROW_SIDE, Self::WIDE_SIDE);
        let across = (self.size.0 - 2.0 * side).max(40.0);
        let down = (self.size.1 - 2.0 * margin).max(40.0);
        self.metres_per_pixel = (width / across)
            .max(height / down)
            .clamp(Self::LEAST, Self::GREATEST);
        let middle = bounds.least.halfway(bounds.greatest);
        self.origin = Point::new(
            middle.x - self.size.0 / 2.0 * self.metres_per_pixel,
            middle.y - self.size.1 / 2.0 * self.metres_per_pixel,
        );
    }

    /// Moves the paper by `right` and `down`, px.
    pub fn pan(&mut self, right: f64, down: f64) {
        self.move_origin(
            self.origin.x - right * self.metres_per_pixel,
            self.origin.y - down * self.metres_per_pixel,
        );
    }

    /// Comes nearer by `factor` about a place on the screen, px.
    pub fn zoom(&mut self, x: f64, y: f64, factor: f64) {
        if !(factor.is_finite() && factor > 0.0) {
            return;
        }
        let held = self.point_at(x, y);
        self.metres_per_pixel = (self.metres_per_pixel / factor).clamp(Self::LEAST, Self::GREATEST);
        self.move_origin(
            held.x - x * self.metres_per_pixel,
            held.y - y * self.metres_per_pixel,
        );
    }

    fn move_origin(&mut self, x: f64, y: f64) {
        /// Far outside any plan, m: the paper cannot be lost for good.
        const FARTHEST: f64 = 2000.0;
        if x.is_finite() && y.is_finite() {
            self.origin = Point::new(x.clamp(-FARTHEST, FARTHEST), y.clamp(-FARTHEST, FARTHEST));
        }
    }
}
