//! The rectangle that holds a plan.

use super::{Plan, Point};

/// A rectangle along the sheet's sides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// The corner with the least x and y.
    pub least: Point,
    /// The corner with the greatest x and y.
    pub greatest: Point,
}

impl Bounds {
    /// The rectangle about everything that the plan draws.
    pub fn of(plan: &Plan) -> Self {
        let centre = plan.dryer.centre();
        let mut bounds = Self {
            least: centre,
            greatest: centre,
        };
        let dryer_reach = plan.dryer.width.metres().hypot(plan.dryer.depth.metres()) / 2.0;
        bounds.take(centre, dryer_reach);
        bounds.take(plan.dryer.outlet(), 0.0);
        for wall in &plan.walls {
            bounds.take(wall.from(), wall.thickness.metres());
            bounds.take(wall.to(), wall.thickness.metres());
        }
        for obstacle in &plan.obstacles {
            let corner = Point::new(obstacle.x_m, obstacle.y_m);
            bounds.take(corner, 0.0);
            let (width, depth) = (obstacle.width.metres(), obstacle.depth.metres());
            bounds.take(Point::new(corner.x + width, corner.y + depth), 0.0);
        }
        for zone in &plan.zones {
            let (width, depth) = (zone.width.metres(), zone.depth.metres());
            bounds.take(Point::new(zone.x_m, zone.y_m), 0.0);
            bounds.take(Point::new(zone.x_m + width, zone.y_m + depth), 0.0);
        }
        if let Some(picture) = &plan.picture {
            let (width, depth) = (picture.width.metres(), picture.depth.metres());
            bounds.take(Point::new(picture.x_m, picture.y_m), 0.0);
            bounds.take(Point::new(picture.x_m + width, picture.y_m + depth), 0.0);
        }
        for point in &plan.run.points {
            bounds.take(point.position, plan.run.diameter.metres());
        }
        bounds
    }

    fn take(&mut self, point: Point, margin: f64) {
        self.least.x = self.least.x.min(point.x - margin);
        self.least.y = self.least.y.min(point.y - margin);
        self.greatest.x = self.greatest.x.max(point.x + margin);
        self.greatest.y = self.greatest.y.max(point.y + margin);
    }

    /// Width and height, m.
    pub fn size(&self) -> (f64, f64) {
        (
            self.greatest.x - self.least.x,
            self.greatest.y - self.least.y,
        )
    }
}
