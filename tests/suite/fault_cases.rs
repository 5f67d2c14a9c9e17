//! Runs and faults drawn at random for the fault-finder to be tried on. The odds are written down here
//! a second time, so that a change of the fault-finder's does not move the cases.

use elbowroom::diagnosis::CauseKind;
use elbowroom::plan::{
    Duct, Elbow, ElbowKind, Fitting, LegState, Plan, Point, Riser, RunPoint, Termination,
    TerminationKind, blank,
};
use elbowroom::system::{CompiledRun, ElementKind};
use elbowroom::units::{Length, Temperature};

/// A stream of random numbers (`SplitMix64`: Steele, Lea & Flood 2014; from memory).
pub struct Chance(u64);

impl Chance {
    pub fn of(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5851_f42d_4c95_7f2d)
    }

    /// 0..1.
    #[allow(clippy::cast_precision_loss, reason = "53 bits")]
    pub fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^= mixed >> 31;
        (mixed >> 11) as f64 / (1_u64 << 53) as f64
    }

    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    #[allow(
        clippy::cast_precision_loss,
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "an index into a short list"
    )]
    pub fn below(&mut self, count: usize) -> usize {
        ((self.share() * count as f64) as usize).min(count - 1)
    }

    /// Normal, by the sum of twelve.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.share()).sum::<f64>() - 6.0
    }

    /// One index by its weight.
    pub fn weighted(&mut self, weights: &[f64]) -> usize {
        let mut at = self.share() * weights.iter().sum::<f64>();
        for (index, weight) in weights.iter().enumerate() {
            at -= weight;
            if at < 0.0 {
                return index;
            }
        }
        weights.len() - 1
    }
}

/// What is wrong.
#[derive(Debug, Clone, PartialEq)]
pub struct TrueFault {
    pub kind: CauseKind,
    /// Index of its element in the run.
    pub place: usize,
    /// A free share, a share of a speed, or m².
    pub severity: f64,
}

/// How cases are drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Set {
    /// From the odds that the fault-finder states.
    Stated,
    /// Other places, severities and blowers.
    Other,
    /// Slight ones.
    Slight,
}

/// A run of 5 to 15 elements.
pub fn random_plan(chance: &mut Chance) -> Plan {
    loop {
        let plan = any_plan(chance);
        let (run, _) = CompiledRun::of(&plan);
        if (5..=15).contains(&run.elements.len()) {
            return plan;
        }
    }
}

fn any_plan(chance: &mut Chance) -> Plan {
    let mut plan = blank(String::new());
    plan.exhaust.temperature = Temperature::from_celsius(20.0);
    plan.exhaust.relative_humidity = 0.5;
    let kinds = [
        TerminationKind::WallHood,
        TerminationKind::LouvredHood,
        TerminationKind::RoofCap,
    ];
    plan.run.termination = Termination::clean(kinds[chance.below(3)]);
    plan.run.points.clear();
    let corners = 1 + chance.below(6);
    let mut at = plan.dryer.outlet();
    let mut heading = 0.0_f64;
    let elbow = |chance: &mut Chance| Elbow {
        kind: if chance.share() < 0.7 {
            ElbowKind::Segmented
        } else {
            ElbowKind::Smooth
        },
        radius: Length::from_inches(4.0),
    };
    for corner in 0..corners {
        let leg = chance.between(0.6, 2.5);
        let (sine, cosine) = heading.to_radians().sin_cos();
        at = Point::new(at.x + leg * sine, at.y - leg * cosine);
        let riser = (chance.share() < 0.2).then(|| Riser {
            rise: Length::from_metres(chance.between(0.6, 2.4)),
            elbow: elbow(chance),
        });
        let duct = if corner == 0 && chance.share() < 0.3 {
            Duct::SemiRigid {
                short_of_full_stretch_percent: 0.0,
            }
        } else {
            Duct::Rigid
        };
        plan.run.points.push(RunPoint {
            id: format!("p{corner}").as_str().into(),
            position: at,
            duct,
            leg: LegState::default(),
            fitting: Fitting {
                elbow: elbow(chance),
                riser,
            },
        });
        let turn = if chance.share() < 0.8 { 90.0 } else { 45.0 };
        heading += if chance.share() < 0.5 { turn } else { -turn };
    }
    plan
}

/// The weight of each place, as the fault-finder states it: index, kind, weight.
fn stated_places(run: &CompiledRun) -> Vec<(usize, CauseKind, f64)> {
    let mut places = Vec::new();
    for (index, element) in run.elements.iter().enumerate() {
        match element.kind {
            ElementKind::Elbow { angle, .. } => {
                let weight = if angle.degrees() > 59.0 { 4.0 } else { 2.0 };
                places.push((index, CauseKind::Blockage, weight));
            }
            ElementKind::Straight {
                duct: Duct::SemiRigid { .. },
                ..
            } => places.push((index, CauseKind::CrushedFlex, 3.0)),
            ElementKind::Straight { length, .. } => {
                places.push((index, CauseKind::Blockage, 0.4 + 0.1 * length.metres()));
            }
            ElementKind::Termination { .. } => {
                places.push((index, CauseKind::FlapStuck, 6.0));
                places.push((index, CauseKind::Blockage, 1.5));
            }
            _ => {}
        }
    }
    places
}

/// A fault, or two, or none, as the fault-finder states their odds.
pub fn stated_faults(run: &CompiledRun, chance: &mut Chance) -> Vec<TrueFault> {
    let places = stated_places(run);
    let weights: Vec<f64> = places.iter().map(|(_, _, weight)| *weight).collect();
    // Nothing, one place, two, blower, leak, room; a place with a blower, with a leak, with a room.
    let odds = [0.25, 0.45, 0.08, 0.05, 0.05, 0.08, 0.02, 0.02, 0.03];
    let family = chance.weighted(&odds);
    let one = |chance: &mut Chance| {
        let (place, kind, _) = places[chance.weighted(&weights)];
        TrueFault {
            kind,
            place,
            severity: chance.between(0.15, 0.65),
        }
    };
    match family {
        0 => Vec::new(),
        1 => vec![one(chance)],
        2 => loop {
            let pair = vec![one(chance), one(chance)];
            if pair[0].place != pair[1].place {
                return pair;
            }
        },
        3..=5 => vec![other_than_place(run, family, chance)],
        _ => vec![one(chance), other_than_place(run, family - 3, chance)],
    }
}

/// A blower (3), a leak (4) or a room (5).
fn other_than_place(run: &CompiledRun, family: usize, chance: &mut Chance) -> TrueFault {
    match family {
        3 => TrueFault {
            kind: CauseKind::Blower,
            place: usize::MAX,
            severity: chance.between(0.55, 0.85),
        },
        4 => {
            let first = chance.share() < 0.5;
            let last = run.elements.len() - 1;
            let place = if first { 1 } else { 1 + chance.below(last) };
            TrueFault {
                kind: CauseKind::Leak,
                place,
                severity: chance.between(0.0008, 0.004),
            }
        }
        _ => TrueFault {
            kind: CauseKind::RoomStarved,
            place: usize::MAX,
            severity: chance.between(0.003, 0.012),
        },
    }
}

/// A tenth without fault, else any element as likely as another.
pub fn other_faults(run: &CompiledRun, chance: &mut Chance, free: (f64, f64)) -> Vec<TrueFault> {
    if chance.share() < 0.1 {
        return Vec::new();
    }
    let one = |chance: &mut Chance| {
        let place = chance.below(run.elements.len());
        let kind = match run.elements[place].kind {
            ElementKind::Straight {
                duct: Duct::SemiRigid { .. },
                ..
            } => CauseKind::CrushedFlex,
            ElementKind::Termination { .. } if chance.share() < 0.5 => CauseKind::FlapStuck,
            _ => CauseKind::Blockage,
        };
        TrueFault {
            kind,
            place,
            severity: chance.between(free.0, free.1),
        }
    };
    vec![one(chance)]
}
