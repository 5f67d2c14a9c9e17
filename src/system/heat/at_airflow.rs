//! Temperature and moisture along a run at an airflow that is known.

use super::{HeatProfile, march};
use crate::system::compiled::Passage;
use crate::system::{AirAlong, CompiledRun, Draw};
use crate::units::Airflow;

/// The profile of `run` with so much air at its termination and the inputs of `draw`; none where the
/// air keeps its temperature.
pub fn heat_at(run: &CompiledRun, airflow_at_end: Airflow, draw: &Draw) -> Option<HeatProfile> {
    /// The second march has the densities of the first; a third would move nothing that shows.
    /// Of the computation.
    const TURNS: usize = 2;
    let heat = run.heat.as_ref()?;
    let values = run.values(draw);
    let mut profile: Option<HeatProfile> = None;
    for _ in 0..TURNS {
        let constant;
        let air: &AirAlong = if let Some(profile) = &profile {
            &profile.air
        } else {
            constant = run.air();
            &constant
        };
        let mut passages: Vec<Passage> = Vec::with_capacity(run.elements.len());
        run.each_from_end(airflow_at_end, &values, air, |_, passage| {
            passages.push(passage);
        });
        passages.reverse();
        profile = Some(march(run, heat, &passages, &values));
    }
    profile
}
