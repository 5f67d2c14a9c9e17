//! Random rooms on whole inches: always the same for the same number.

use elbowroom::plan::{
    AlongRun, Elbow, ElbowKind, Fitting, Level, Obstacle, ObstacleKind, Opening, OpeningKind, Plan,
    Point, Riser, Wall, blank,
};
use elbowroom::units::Length;

/// SplitMix64 (Steele, Lea and Flood 2014, from memory): any generator would do.
pub struct Dice(u64);

impl Dice {
    pub fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15))
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// One of `least..=most`.
    pub fn whole(&mut self, least: u32, most: u32) -> u32 {
        let span = u64::from(most - least + 1);
        least + u32::try_from(self.next() % span).unwrap()
    }

    /// A multiple of `step` inches from `least` to `most`, in inches.
    pub fn inches(&mut self, least: u32, most: u32, step: u32) -> f64 {
        f64::from(least + step * self.whole(0, (most - least) / step))
    }

    pub fn chance(&mut self, in_ten: u32) -> bool {
        self.whole(1, 10) <= in_ten
    }
}

pub fn metres(inches: f64) -> f64 {
    Length::from_inches(inches).metres()
}

pub fn wall(id: &str, (x, y): (f64, f64), (to_x, to_y): (f64, f64), outside: bool) -> Wall {
    Wall {
        id: id.into(),
        from_x_m: metres(x),
        from_y_m: metres(y),
        to_x_m: metres(to_x),
        to_y_m: metres(to_y),
        thickness: Length::from_inches(6.0),
        outside,
    }
}

pub fn obstacle(
    id: &str,
    level: Level,
    (x, y): (f64, f64),
    (width, depth): (f64, f64),
) -> Obstacle {
    Obstacle {
        id: id.into(),
        name: String::new(),
        kind: ObstacleKind::ClosedArea,
        level,
        x_m: metres(x),
        y_m: metres(y),
        width: Length::from_inches(width),
        depth: Length::from_inches(depth),
    }
}

/// A room of `width` by `depth` in inches, measured between its faces, outside walls where `outside`
/// says (top, right, foot, left), and a dryer whose back faces the top, its outlet at `outlet`.
pub fn room(width: f64, depth: f64, outside: [bool; 4], outlet: (f64, f64)) -> Plan {
    let mut plan = blank("Random room, invented".to_owned());
    // What the search proves, it proves of air that keeps its temperature.
    plan.exhaust.along_run = AlongRun::KeepsTemperature;
    let (right, foot) = (width + 3.0, depth + 3.0);
    plan.walls = vec![
        wall("w1", (-3.0, -3.0), (right, -3.0), outside[0]),
        wall("w2", (right, -3.0), (right, foot), outside[1]),
        wall("w3", (right, foot), (-3.0, foot), outside[2]),
        wall("w4", (-3.0, foot), (-3.0, -3.0), outside[3]),
    ];
    plan.dryer.x_m = metres(outlet.0);
    plan.dryer.y_m = metres(outlet.1) + plan.dryer.depth.metres() / 2.0;
    plan
}

/// A small plan: three obstacles, two levels, a run that climbs behind the dryer and leaves by the
/// top; whether that run has room is left to chance.
pub fn small(seed: u64) -> Plan {
    let mut dice = Dice::new(seed);
    let (width, depth) = (dice.inches(84, 132, 12), dice.inches(84, 120, 12));
    let outside = [true, dice.chance(6), dice.chance(2), dice.chance(5)];
    let outlet = (dice.inches(24, 60, 6), dice.inches(24, 42, 6));
    let mut plan = room(width, depth, outside, outlet);
    if dice.chance(7) {
        plan.openings.push(Opening {
            id: "o1".into(),
            wall: "w1".into(),
            kind: OpeningKind::Window,
            offset: Length::from_inches(dice.inches(6, 48, 6)),
            width: Length::from_inches(24.0),
        });
    }
    for index in 0..3 {
        let size = (dice.inches(6, 24, 6), dice.inches(6, 18, 6));
        let at = (dice.inches(0, 96, 12), dice.inches(0, 60, 12));
        let id = format!("b{index}");
        plan.obstacles.push(obstacle(&id, Level::Room, at, size));
    }
    let kind = if dice.chance(5) {
        ElbowKind::Segmented
    } else {
        ElbowKind::Smooth
    };
    let elbow = Elbow {
        kind,
        radius: Length::from_inches(dice.inches(3, 4, 1)),
    };
    let level = Fitting { elbow, riser: None };
    plan.run.outlet = level;
    let riser = Riser {
        rise: Length::from_inches(dice.inches(36, 60, 12)),
        elbow,
    };
    let end = plan.run.points[0].clone();
    let mut corner = end.clone();
    corner.id = "p0".into();
    corner.position = Point::new(metres(outlet.0), metres(outlet.1 - 12.0));
    corner.fitting = Fitting {
        elbow,
        riser: Some(riser),
    };
    plan.run.points = vec![corner, end];
    plan.run.points[1].position = Point::new(metres(outlet.0), metres(-6.0));
    plan.run.points[1].fitting = level;
    plan
}

/// A larger one: eight to twenty obstacles on two levels, walls indoors, and a run that winds.
pub fn large(seed: u64) -> Plan {
    let mut dice = Dice::new(seed ^ 0x5eed);
    let (width, depth) = (dice.inches(144, 300, 6), dice.inches(120, 240, 6));
    let outside = [true, dice.chance(7), dice.chance(3), dice.chance(7)];
    let outlet = (dice.inches(30, 110, 5), dice.inches(30, 80, 5));
    let mut plan = room(width, depth, outside, outlet);
    plan.walls.push(wall(
        "w5",
        (dice.inches(100, 140, 4), -3.0),
        (dice.inches(100, 140, 4), dice.inches(24, 96, 6)),
        false,
    ));
    plan.walls[4].to_x_m = plan.walls[4].from_x_m;
    for (id, on) in [("o1", "w1"), ("o2", "w2"), ("o3", "w4")] {
        if dice.chance(5) {
            plan.openings.push(Opening {
                id: id.into(),
                wall: on.into(),
                kind: if dice.chance(3) {
                    OpeningKind::Door
                } else {
                    OpeningKind::Window
                },
                offset: Length::from_inches(dice.inches(6, 70, 1)),
                width: Length::from_inches(dice.inches(20, 48, 1)),
            });
        }
    }
    for index in 0..dice.whole(8, 20) {
        let level = if dice.chance(3) {
            Level::CeilingSpace
        } else {
            Level::Room
        };
        let size = (dice.inches(4, 40, 1), dice.inches(4, 30, 1));
        let at = (dice.inches(0, 280, 1), dice.inches(0, 220, 1));
        let id = format!("b{index}");
        plan.obstacles.push(obstacle(&id, level, at, size));
    }
    let kind = [
        ElbowKind::Segmented,
        ElbowKind::Smooth,
        ElbowKind::SharpMitre,
    ][dice.whole(0, 2) as usize];
    let elbow = Elbow {
        kind,
        radius: Length::from_inches(dice.inches(3, 6, 1)),
    };
    let level = Fitting { elbow, riser: None };
    plan.run.outlet = level;
    let end = plan.run.points[0].clone();
    let (mut x, mut y) = outlet;
    y -= 14.0;
    let mut points = vec![(x, y)];
    for step in 0..dice.whole(1, 5) {
        if step % 2 == 0 {
            x += dice.inches(14, 40, 2);
        } else {
            y += dice.inches(14, 30, 2);
        }
        points.push((x, y));
    }
    points.push(if points.len() % 2 == 0 {
        (x, -6.0)
    } else {
        (width + 6.0, y)
    });
    plan.run.points = points
        .iter()
        .enumerate()
        .map(|(index, (x, y))| {
            let mut point = end.clone();
            point.id = format!("p{index}").as_str().into();
            point.position = Point::new(metres(*x), metres(*y));
            point.fitting = level;
            point
        })
        .collect();
    if dice.chance(3) {
        plan.run.points[0].fitting.riser = Some(Riser {
            rise: Length::from_inches(dice.inches(24, 60, 6)),
            elbow,
        });
    }
    plan
}
