//! What lies about a place of the run: its level, and the zone that it is in.

use super::{Level, Plan, Point, Zone, ZoneKind};
use crate::units::Length;

impl Plan {
    /// The level of a height above the room's floor; floor and ceiling themselves are the room's.
    ///
    /// ```
    /// use elbowroom::plan::{Level, blank};
    /// use elbowroom::units::Length;
    /// let plan = blank(String::new());
    /// assert_eq!(plan.level_at(plan.ceiling_height), Level::Room);
    /// let above = plan.ceiling_height + Length::from_metres(0.001);
    /// assert_eq!(plan.level_at(above), Level::CeilingSpace);
    /// ```
    pub fn level_at(&self, height: Length) -> Level {
        if height < Length::ZERO {
            Level::CrawlSpace
        } else if height > self.ceiling_height {
            Level::CeilingSpace
        } else {
            Level::Room
        }
    }

    /// The zone at a place and height; of several the one that was drawn last.
    pub fn zone_at(&self, place: Point, height: Length) -> Option<&Zone> {
        let level = self.level_at(height);
        let mut zones = self.zones.iter().rev();
        zones.find(|zone| zone.level == level && zone.covers(place))
    }

    /// Whether a place and height are in a drawn space of the building.
    pub fn is_indoors(&self, place: Point, height: Length) -> bool {
        let level = self.level_at(height);
        let is_of_building = |zone: &&Zone| zone.kind != ZoneKind::Outdoors && zone.level == level;
        let mut building = self.zones.iter().filter(is_of_building);
        building.any(|zone| zone.covers(place))
    }
}

impl Zone {
    /// Whether it lies under or over `place`, its edge among it.
    pub fn covers(&self, place: Point) -> bool {
        let (width, depth) = (self.width.metres(), self.depth.metres());
        (self.x_m..=self.x_m + width).contains(&place.x)
            && (self.y_m..=self.y_m + depth).contains(&place.y)
    }

    /// Where the straight from `from` to `to` crosses the lines of its edges, as shares of the way.
    pub fn crossings(&self, from: Point, to: Point) -> impl Iterator<Item = f64> {
        let share = |edge: f64, from: f64, to: f64| (edge - from) / (to - from);
        let across = [self.x_m, self.x_m + self.width.metres()];
        let down = [self.y_m, self.y_m + self.depth.metres()];
        let across = across.map(|edge| share(edge, from.x, to.x));
        let down = down.map(|edge| share(edge, from.y, to.y));
        // A straight along an edge's own direction gives no number or one far outside.
        let inside = |share: &f64| *share > 0.0 && *share < 1.0;
        across.into_iter().chain(down).filter(inside)
    }
}
