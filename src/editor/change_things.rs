//! Changes of what stands about the run. Each gives the changed plan or a refusal.

use super::change::{Changed, SHORTEST_LEG, alter, checked};
use super::change_openings::openings_held;
use super::snap::{along, as_exact_as, exact};
use super::{NewThing, Pen};
use crate::plan::{
    Level, Obstacle, ObstacleKind, Opening, Picture, Plan, Point, ThingId, Wall, Zone, ZoneKind,
};
use crate::report::words::Refusal;
use crate::units::{Length, Temperature};
use std::collections::BTreeSet;
use std::sync::Arc;

/// Thickness of a drawn wall: 2 by 6 studs with their boards outside, 2 by 4 inside. Common
/// practice, no source.
const OUTSIDE_THICKNESS: Length = Length::from_inches(6.0);
const INSIDE_THICKNESS: Length = Length::from_inches(4.5);
/// A side of a drawn thing is at least this.
const LEAST_SIDE: Length = Length::from_inches(1.0);
/// Ends of walls that are closer than this, m, meet.
pub(super) const MEETING: Length = Length::from_metres(1e-6);
/// A copy lies this far to the right and down of its original, m.
const COPY_ASIDE: f64 = 0.3048;

/// The plan after a thing was added, and its name.
pub(super) type Added = Result<(Plan, ThingId), Refusal>;

pub(super) fn add_wall(plan: &Plan, from: Point, to: Point, outside: bool) -> Added {
    let id = free_id("w", plan.walls.iter().map(|wall| &wall.id));
    let wall = Wall {
        id: id.clone(),
        from_x_m: from.x,
        from_y_m: from.y,
        to_x_m: to.x,
        to_y_m: to.y,
        thickness: if outside {
            OUTSIDE_THICKNESS
        } else {
            INSIDE_THICKNESS
        },
        outside,
    };
    let plan = alter(plan, |plan| plan.walls.push(wall))?;
    Ok((plan, ThingId::Wall(id)))
}

pub(super) fn add_obstacle(plan: &Plan, kind: ObstacleKind, from: Point, to: Point) -> Added {
    let (corner, width, depth) = sides(from, to)?;
    let id = free_id("b", plan.obstacles.iter().map(|obstacle| &obstacle.id));
    let obstacle = Obstacle {
        id: id.clone(),
        name: String::new(),
        kind,
        // Joists and beams are mostly met overhead.
        level: match kind {
            ObstacleKind::Framing { .. } | ObstacleKind::Beam => Level::CeilingSpace,
            _ => Level::Room,
        },
        x_m: corner.x,
        y_m: corner.y,
        width,
        depth,
    };
    let plan = alter(plan, |plan| plan.obstacles.push(obstacle))?;
    Ok((plan, ThingId::Obstacle(id)))
}

pub(super) fn add_zone(plan: &Plan, kind: ZoneKind, from: Point, to: Point) -> Added {
    let (corner, width, depth) = sides(from, to)?;
    let id = free_id("z", plan.zones.iter().map(|zone| &zone.id));
    let outdoors = plan.site.outdoor_temperature;
    // Assumptions, to be set by whoever knows.
    let (temperature, level) = match kind {
        ZoneKind::Heated => (Temperature::from_celsius(20.0), Level::Room),
        ZoneKind::Garage | ZoneKind::Outdoors => (outdoors, Level::Room),
        ZoneKind::Attic => (outdoors, Level::CeilingSpace),
        ZoneKind::CrawlSpace => (outdoors, Level::CrawlSpace),
    };
    let zone = Zone {
        id: id.clone(),
        kind,
        level,
        temperature,
        x_m: corner.x,
        y_m: corner.y,
        width,
        depth,
    };
    let plan = alter(plan, |plan| plan.zones.push(zone))?;
    Ok((plan, ThingId::Zone(id)))
}

fn sides(from: Point, to: Point) -> Result<(Point, Length, Length), Refusal> {
    let corner = Point::new(from.x.min(to.x), from.y.min(to.y));
    let width = Length::from_metres(exact((to.x - from.x).abs()));
    let depth = Length::from_metres(exact((to.y - from.y).abs()));
    if width < LEAST_SIDE || depth < LEAST_SIDE {
        return Err(Refusal::TooSmall);
    }
    Ok((corner, width, depth))
}

/// The first of `w1`, `w2` and so on that is not taken.
pub(super) fn free_id<'a>(letter: &str, taken: impl Iterator<Item = &'a Arc<str>>) -> Arc<str> {
    let taken: BTreeSet<&str> = taken.map(|id| &**id).collect();
    (1..=taken.len() + 1)
        .map(|number| format!("{letter}{number}"))
        .find(|id| !taken.contains(id.as_str()))
        .unwrap_or_default()
        .into()
}

/// Scales the picture so that the distance of the pen is `length`; where it began stays put.
pub(super) fn scale_picture(plan: &Plan, pen: &Pen, length: Length) -> Changed {
    let picture = plan.picture.as_ref().ok_or(Refusal::NoSuchElement)?;
    let drawn = pen.from.distance(pen.to);
    if drawn <= Length::ZERO || length <= Length::ZERO {
        return Err(Refusal::TooSmall);
    }
    let factor = length / drawn;
    let scaled = Picture {
        x_m: pen.from.x + (picture.x_m - pen.from.x) * factor,
        y_m: pen.from.y + (picture.y_m - pen.from.y) * factor,
        width: picture.width * factor,
        depth: picture.depth * factor,
        ..picture.clone()
    };
    alter(plan, |plan| plan.picture = Some(scaled))
}

/// The middle of the rectangle about the things' middles; none where there are none.
pub(super) fn middle(plan: &Plan, things: &BTreeSet<ThingId>) -> Option<Point> {
    let middles = things.iter().filter_map(|id| plan.thing(id)?.middle(plan));
    let mut span: Option<(Point, Point)> = None;
    for point in middles {
        let (least, greatest) = span.get_or_insert((point, point));
        *least = Point::new(least.x.min(point.x), least.y.min(point.y));
        *greatest = Point::new(greatest.x.max(point.x), greatest.y.max(point.y));
    }
    span.map(|(least, greatest)| least.halfway(greatest))
}

/// Puts a thing in the place of the one with its id.
pub(super) fn set(plan: &Plan, new: NewThing) -> Changed {
    fn put<T>(list: &mut [T], new: T, is_it: impl Fn(&T, &T) -> bool) -> Result<(), Refusal> {
        let old = list.iter_mut().find(|old| is_it(old, &new));
        *old.ok_or(Refusal::NoSuchElement)? = new;
        Ok(())
    }
    let before = plan;
    let mut plan = plan.clone();
    match new {
        NewThing::Wall(wall) => put(&mut plan.walls, wall, |a, b| a.id == b.id)?,
        NewThing::Opening(it) => put(&mut plan.openings, it, |a, b| a.id == b.id)?,
        NewThing::Obstacle(it) => put(&mut plan.obstacles, it, |a, b| a.id == b.id)?,
        NewThing::Zone(zone) => put(&mut plan.zones, zone, |a, b| a.id == b.id)?,
        NewThing::Dryer(dryer) => plan.dryer = dryer,
    }
    checked(openings_held(before, plan)?)
}

/// Moves a wall's end, and the ends of other walls that meet it there.
pub(super) fn move_wall_end(plan: &Plan, wall: &ThingId, start: bool, to: Point) -> Changed {
    let ThingId::Wall(id) = wall else {
        return Err(Refusal::NoSuchElement);
    };
    let held = plan.walls.iter().find(|wall| wall.id == *id);
    let held = held.ok_or(Refusal::NoSuchElement)?;
    let (from, fixed) = if start {
        (held.from(), held.to())
    } else {
        (held.to(), held.from())
    };
    if to.distance(fixed) < SHORTEST_LEG {
        return Err(Refusal::TooSmall);
    }
    let meets = |point: Point| point.distance(from) < MEETING;
    let changed = alter(plan, |plan| {
        for wall in &mut plan.walls {
            if meets(wall.from()) {
                (wall.from_x_m, wall.from_y_m) = (to.x, to.y);
            }
            if meets(wall.to()) {
                (wall.to_x_m, wall.to_y_m) = (to.x, to.y);
            }
        }
    })?;
    openings_held(plan, changed)
}

/// Moves a corner of what is rectangular; the picture keeps its shape.
pub(super) fn move_box_corner(plan: &Plan, thing: &ThingId, corner: u8, to: Point) -> Changed {
    let handles = super::handles(plan, thing);
    let opposite = handles.get(usize::from((corner + 2) % 4));
    let (_, opposite) = opposite.ok_or(Refusal::NoSuchElement)?;
    let (least, width, depth) = sides(*opposite, to)?;
    alter(plan, |plan| match thing {
        ThingId::Obstacle(id) => {
            for it in plan.obstacles.iter_mut().filter(|it| it.id == *id) {
                (it.x_m, it.y_m, it.width, it.depth) = (least.x, least.y, width, depth);
            }
        }
        ThingId::Zone(id) => {
            for it in plan.zones.iter_mut().filter(|it| it.id == *id) {
                (it.x_m, it.y_m, it.width, it.depth) = (least.x, least.y, width, depth);
            }
        }
        ThingId::Picture => {
            if let Some(picture) = &mut plan.picture {
                let deep = picture.depth * (width / picture.width);
                let lifts = to.y < opposite.y;
                let top = if lifts {
                    opposite.y - deep.metres()
                } else {
                    opposite.y
                };
                (picture.x_m, picture.y_m) = (least.x, top);
                (picture.width, picture.depth) = (width, deep);
            }
        }
        _ => {}
    })
}

/// Moves things to the right and down, m. An opening moves along its wall, and with it.
pub(super) fn shift(plan: &Plan, things: &BTreeSet<ThingId>, right: f64, down: f64) -> Changed {
    let moved = |x: f64, y: f64| (as_exact_as(x, x + right), as_exact_as(y, y + down));
    let mut shifted = plan.clone();
    for wall in &mut shifted.walls {
        if things.contains(&ThingId::Wall(wall.id.clone())) {
            (wall.from_x_m, wall.from_y_m) = moved(wall.from_x_m, wall.from_y_m);
            (wall.to_x_m, wall.to_y_m) = moved(wall.to_x_m, wall.to_y_m);
        }
    }
    for opening in &mut shifted.openings {
        let own = things.contains(&ThingId::Opening(opening.id.clone()));
        let carried = things.contains(&ThingId::Wall(opening.wall.clone()));
        let wall = plan.walls.iter().find(|wall| wall.id == opening.wall);
        if let (true, false, Some(wall)) = (own, carried, wall)
            && let Some((heading, _, length)) = along(wall, wall.from())
        {
            let offset = opening.offset.metres() + right * heading.x + down * heading.y;
            let most = (length - opening.width.metres()).max(0.0);
            opening.offset = Length::from_metres(exact(offset.clamp(0.0, most)));
        }
    }
    for obstacle in &mut shifted.obstacles {
        if things.contains(&ThingId::Obstacle(obstacle.id.clone())) {
            (obstacle.x_m, obstacle.y_m) = moved(obstacle.x_m, obstacle.y_m);
        }
    }
    for zone in &mut shifted.zones {
        if things.contains(&ThingId::Zone(zone.id.clone())) {
            (zone.x_m, zone.y_m) = moved(zone.x_m, zone.y_m);
        }
    }
    if let Some(picture) = &mut shifted.picture
        && things.contains(&ThingId::Picture)
    {
        (picture.x_m, picture.y_m) = moved(picture.x_m, picture.y_m);
    }
    if things.contains(&ThingId::Dryer) {
        let dryer = &mut shifted.dryer;
        (dryer.x_m, dryer.y_m) = moved(dryer.x_m, dryer.y_m);
    }
    if things.contains(&ThingId::Run) {
        for point in &mut shifted.run.points {
            let (x, y) = moved(point.position.x, point.position.y);
            point.position = Point::new(x, y);
        }
    }
    checked(shifted)
}

/// Removes things; the dryer and the run stay.
pub(super) fn remove(plan: &Plan, things: &BTreeSet<ThingId>) -> Changed {
    if things.contains(&ThingId::Dryer) || things.contains(&ThingId::Run) {
        return Err(Refusal::DryerAndRunStay);
    }
    let gone = |id: ThingId| things.contains(&id);
    alter(plan, |plan| {
        plan.openings.retain(|it| {
            !gone(ThingId::Opening(it.id.clone())) && !gone(ThingId::Wall(it.wall.clone()))
        });
        plan.walls.retain(|it| !gone(ThingId::Wall(it.id.clone())));
        plan.obstacles
            .retain(|it| !gone(ThingId::Obstacle(it.id.clone())));
        plan.zones.retain(|it| !gone(ThingId::Zone(it.id.clone())));
        if gone(ThingId::Picture) {
            plan.picture = None;
        }
    })
}

/// Copies walls with their openings, obstacles and zones; gives the copies' names.
pub(super) fn copy(
    plan: &Plan,
    things: &BTreeSet<ThingId>,
) -> Result<(Plan, BTreeSet<ThingId>), Refusal> {
    let mut copied = plan.clone();
    let mut names = BTreeSet::new();
    for wall in &plan.walls {
        if !things.contains(&ThingId::Wall(wall.id.clone())) {
            continue;
        }
        let id = free_id("w", copied.walls.iter().map(|wall| &wall.id));
        copied.walls.push(Wall {
            id: id.clone(),
            ..wall.clone()
        });
        for opening in plan.openings.iter().filter(|it| it.wall == wall.id) {
            let own = free_id("o", copied.openings.iter().map(|it| &it.id));
            copied.openings.push(Opening {
                id: own,
                wall: id.clone(),
                ..opening.clone()
            });
        }
        names.insert(ThingId::Wall(id));
    }
    for obstacle in &plan.obstacles {
        if things.contains(&ThingId::Obstacle(obstacle.id.clone())) {
            let id = free_id("b", copied.obstacles.iter().map(|it| &it.id));
            copied.obstacles.push(Obstacle {
                id: id.clone(),
                ..obstacle.clone()
            });
            names.insert(ThingId::Obstacle(id));
        }
    }
    for zone in &plan.zones {
        if things.contains(&ThingId::Zone(zone.id.clone())) {
            let id = free_id("z", copied.zones.iter().map(|it| &it.id));
            copied.zones.push(Zone {
                id: id.clone(),
                ..zone.clone()
            });
            names.insert(ThingId::Zone(id));
        }
    }
    if names.is_empty() {
        return Err(Refusal::NothingToCopy);
    }
    Ok((shift(&copied, &names, COPY_ASIDE, COPY_ASIDE)?, names))
}
