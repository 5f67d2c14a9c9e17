//! Each set of faults weighed by what was read and seen.

use super::cause::PlacedCause;
use super::evidence::{Fact, Observed, Planned};
use super::gaussian::{Joint, Sample};
use super::model::{DRAWS, Model};
use super::particle::{Fault, Particle, particles};
use super::predict::predict;
use crate::duct::tables::fault_odds::{LOOK_MISSES, LOOK_MISTAKES};

/// A particle that is still believed in, with what the facts say of it.
pub(super) struct Weighed {
    pub particle: Particle,
    pub weight: f64,
    pub joint: Joint,
    /// Its faults that are not mended by now.
    pub left: Vec<Fault>,
    /// The airflow that these leave, as a share of the clean run's; of a set of faults that is hardly
    /// believed in, all of it.
    pub airflow_left: f64,
}

/// So much of the odds stays with what was believed before anything was read: a probability is never
/// nought or one. Of the computation.
pub(super) const KEPT_PRIOR: f64 = 0.002;

fn leak_joints(model: &Model) -> Vec<usize> {
    let joints: Vec<usize> = (0..model.elements.len())
        .filter(|place| model.has_joint(*place))
        .collect();
    let mut chosen: Vec<usize> = [0, joints.len() / 2, joints.len().saturating_sub(1)]
        .into_iter()
        .filter_map(|index| joints.get(index).copied())
        .collect();
    chosen.dedup();
    chosen
}

/// Every set of faults with its weight after the facts.
pub(super) fn weigh(
    model: &Model,
    causes: &[PlacedCause],
    facts: &[(usize, Fact)],
    mended: &[bool],
) -> Vec<Weighed> {
    let dirty = |planned: &Planned| !planned.screen_clean;
    let screen = facts
        .iter()
        .any(|(_, fact)| matches!(&fact.what, Observed::Read(planned) if dirty(planned)));
    let mut weighed: Vec<Weighed> = particles(model, causes, screen, &leak_joints(model))
        .into_iter()
        .map(|particle| weigh_one(model, facts, mended, particle))
        .collect();
    let greatest = weighed
        .iter()
        .map(|it| it.weight)
        .fold(f64::NEG_INFINITY, f64::max);
    let mut whole = 0.0;
    for it in &mut weighed {
        it.weight = (it.weight - greatest).exp();
        whole += it.weight;
    }
    for it in &mut weighed {
        it.weight = it.weight / whole * (1.0 - KEPT_PRIOR) + it.particle.prior * KEPT_PRIOR;
    }
    weighed.sort_by(|one, other| other.weight.total_cmp(&one.weight));
    weighed
}

/// One set of faults; its weight is the logarithm of prior times likelihood.
fn weigh_one(
    model: &Model,
    facts: &[(usize, Fact)],
    mended: &[bool],
    particle: Particle,
) -> Weighed {
    let still = |mended: &[bool]| -> Vec<Fault> {
        let faults = particle.faults.iter();
        faults
            .filter(|fault| !mended[fault.cause])
            .cloned()
            .collect()
    };
    let mut samples = Vec::with_capacity(facts.len());
    let mut looks = 0.0;
    for (_, fact) in facts {
        let there = still(&fact.mended);
        match &fact.what {
            Observed::Read(planned) => samples.push(sample(model, planned, &there)),
            Observed::Looked { place, blocked } => {
                let is_there = there
                    .iter()
                    .any(|fault| fault.place == *place && fault.kind.is_place());
                looks += look_odds(is_there, *blocked).ln();
            }
        }
    }
    let joint = Joint::of(&samples);
    Weighed {
        weight: particle.prior.ln() + joint.log_likelihood + looks,
        left: still(mended),
        airflow_left: 1.0,
        joint,
        particle,
    }
}

/// The odds that a look shows something, where something is there or is not.
pub(super) const fn look_odds(is_there: bool, blocked: bool) -> f64 {
    match (is_there, blocked) {
        (true, true) => 1.0 - LOOK_MISSES,
        (true, false) => LOOK_MISSES,
        (false, true) => LOOK_MISTAKES,
        (false, false) => 1.0 - LOOK_MISTAKES,
    }
}

/// A reading over the draws with the variance of the reading itself.
pub(super) fn sample(model: &Model, planned: &Planned, faults: &[Fault]) -> Sample {
    let mut values = Vec::with_capacity(DRAWS);
    let q = predict(model, planned, faults, &mut values);
    #[allow(clippy::cast_precision_loss, reason = "a few hundred draws")]
    let mean = values.iter().sum::<f64>() / values.len() as f64;
    let relative = planned.relative * mean;
    let swirl = planned.swirl * q;
    Sample {
        values,
        read: planned.value,
        variance: planned.error.powi(2) + relative * relative + swirl * swirl,
    }
}
