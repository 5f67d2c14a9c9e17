//! The names of what stands about the run.

use super::{Dryer, Obstacle, Opening, Picture, Plan, Point, Wall, Zone};
use std::sync::Arc;

/// Something on the plan beside the run's elements, or the run as a whole.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ThingId {
    /// A wall.
    Wall(Arc<str>),
    /// An opening.
    Opening(Arc<str>),
    /// An obstacle.
    Obstacle(Arc<str>),
    /// A zone.
    Zone(Arc<str>),
    /// The picture to trace.
    Picture,
    /// The dryer.
    Dryer,
    /// The whole run.
    Run,
}

impl core::fmt::Display for ThingId {
    /// A key such as `wall:w2`, unique in a plan and fit for an attribute.
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Wall(id) => write!(out, "wall:{id}"),
            Self::Opening(id) => write!(out, "opening:{id}"),
            Self::Obstacle(id) => write!(out, "obstacle:{id}"),
            Self::Zone(id) => write!(out, "zone:{id}"),
            Self::Picture => out.write_str("picture"),
            Self::Dryer => out.write_str("dryer"),
            Self::Run => out.write_str("run"),
        }
    }
}

/// A thing by its name, as it is in a plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Thing<'a> {
    /// A wall.
    Wall(&'a Wall),
    /// An opening and its wall.
    Opening(&'a Opening, &'a Wall),
    /// An obstacle.
    Obstacle(&'a Obstacle),
    /// A zone.
    Zone(&'a Zone),
    /// The picture.
    Picture(&'a Picture),
    /// The dryer.
    Dryer(&'a Dryer),
    /// The whole run.
    Run,
}

impl Plan {
    /// The thing called `id`; none where it is no more.
    pub fn thing(&self, id: &ThingId) -> Option<Thing<'_>> {
        Some(match id {
            ThingId::Wall(id) => Thing::Wall(self.walls.iter().find(|wall| wall.id == *id)?),
            ThingId::Opening(id) => {
                let opening = self.openings.iter().find(|opening| opening.id == *id)?;
                let wall = self.walls.iter().find(|wall| wall.id == opening.wall)?;
                Thing::Opening(opening, wall)
            }
            ThingId::Obstacle(id) => {
                Thing::Obstacle(self.obstacles.iter().find(|obstacle| obstacle.id == *id)?)
            }
            ThingId::Zone(id) => Thing::Zone(self.zones.iter().find(|zone| zone.id == *id)?),
            ThingId::Picture => Thing::Picture(self.picture.as_ref()?),
            ThingId::Dryer => Thing::Dryer(&self.dryer),
            ThingId::Run => Thing::Run,
        })
    }

    /// The names of all things, in the order in which they are listed.
    pub fn things(&self) -> Vec<ThingId> {
        let walls = self.walls.iter().map(|it| ThingId::Wall(it.id.clone()));
        let openings = self
            .openings
            .iter()
            .map(|it| ThingId::Opening(it.id.clone()));
        let obstacles = self
            .obstacles
            .iter()
            .map(|it| ThingId::Obstacle(it.id.clone()));
        let zones = self.zones.iter().map(|it| ThingId::Zone(it.id.clone()));
        walls
            .chain(openings)
            .chain(obstacles)
            .chain(zones)
            .chain(self.picture.is_some().then_some(ThingId::Picture))
            .chain([ThingId::Dryer, ThingId::Run])
            .collect()
    }
}

impl Thing<'_> {
    /// Its middle; none for an opening in a wall without length.
    pub fn middle(&self, plan: &Plan) -> Option<Point> {
        let of_box =
            |x: f64, y: f64, width: f64, depth: f64| Point::new(x + width / 2.0, y + depth / 2.0);
        Some(match self {
            Self::Wall(wall) => wall.from().halfway(wall.to()),
            Self::Opening(opening, wall) => {
                let along = wall.from().heading_to(wall.to())?;
                let middle = opening.offset + opening.width / 2.0;
                wall.from().toward(along, middle)
            }
            Self::Obstacle(it) => of_box(it.x_m, it.y_m, it.width.metres(), it.depth.metres()),
            Self::Zone(it) => of_box(it.x_m, it.y_m, it.width.metres(), it.depth.metres()),
            Self::Picture(it) => of_box(it.x_m, it.y_m, it.width.metres(), it.depth.metres()),
            Self::Dryer(dryer) => dryer.centre(),
            Self::Run => plan.run.points.last()?.position,
        })
    }
}
