//! How sure the figures are: the run worked out again for a fixed sample of all uncertain inputs.

use super::operating_point::{point_in, point_with};
use super::share::{Share, shares};
use super::{AirAlong, CompiledRun, Draw, INPUTS};
use crate::numeric::Sobol;
use serde::{Deserialize, Serialize};

/// How many runs the band is read from.
pub const BAND_SAMPLES: usize = 512;
/// How many runs the shares and the bands of the elements are read from: 512 points leave shares off
/// by up to 0.05, and now and then an element's percentile by 3 %.
pub const DETAIL_SAMPLES: usize = 2_048;

/// The 10th and 90th percentile of a figure over the sample.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Band {
    /// 10th percentile.
    pub low: f64,
    /// 90th percentile.
    pub high: f64,
}

impl Band {
    /// The band of `values`, of which there is at least one; it leaves them in another order.
    pub fn of(values: &mut [f64]) -> Self {
        Self {
            low: percentile(values, 0.1),
            high: percentile(values, 0.9),
        }
    }
}

/// The bands of one element, in SI.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct ElementBands {
    /// Loss of total pressure, Pa.
    pub loss: Band,
    /// The straight rigid duct that would lose as much, m.
    pub equivalent_length: Band,
}

/// The bands of a run's totals, in SI.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Bands {
    /// Airflow, m³/s.
    pub airflow: Band,
    /// Back pressure, Pa.
    pub back_pressure: Band,
    /// Velocity, m/s.
    pub velocity: Band,
    /// Sum of the elements' losses, Pa.
    pub loss: Band,
    /// Physical equivalent length of all elements, m.
    pub equivalent_length: Band,
}

/// What takes longer than the bands of the totals.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct BandDetail {
    /// Each element's, in the order in which the air meets them.
    pub elements: Vec<ElementBands>,
    /// What moves the airflow, most first; nothing where it is stated.
    pub airflow_shares: Vec<Share>,
    /// What moves the back pressure, most first.
    pub back_pressure_shares: Vec<Share>,
    /// Whether the input that leads the shares of the back pressure leads them over the first
    /// [`BAND_SAMPLES`] points too. Where not, no single input decides.
    pub leading_share_is_settled: bool,
}

/// The bands of `run` over the first [`BAND_SAMPLES`] points of the Sobol sequence, each input
/// triangular over its low, likely and high, one draw shared by all elements that use it. The same
/// run gives the same bands to the last bit. None where any drawn blower moves no air.
pub fn bands(run: &CompiledRun) -> Option<Bands> {
    Some(Sample::of(run, BAND_SAMPLES, 0)?.bands())
}

/// A run's airflow and back pressure at each draw of the bands: two runs' draws are the same, so what
/// they share cancels in their difference.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn {
    airflow: Vec<f64>,
    back_pressure: Vec<f64>,
}

impl Drawn {
    /// The draws of `run`; none where any drawn blower moves no air.
    pub fn of(run: &CompiledRun) -> Option<Self> {
        let sample = Sample::of(run, BAND_SAMPLES, 0)?;
        Some(Self {
            airflow: sample.airflow,
            back_pressure: sample.back_pressure,
        })
    }

    /// By how much more airflow, m³/s, and more back pressure, Pa, this run has than `other`.
    pub fn over(&self, other: &Self) -> (Band, Band) {
        let difference = |own: &[f64], its: &[f64]| {
            let pairs = own.iter().zip(its);
            let mut differences: Vec<f64> = pairs.map(|(own, its)| own - its).collect();
            Band::of(&mut differences)
        };
        (
            difference(&self.airflow, &other.airflow),
            difference(&self.back_pressure, &other.back_pressure),
        )
    }
}

/// The bands of the totals with each draw's own temperatures, solved anew: a test holds [`bands`], whose
/// draws have the likely run's, against them.
pub fn bands_solved_anew(run: &CompiledRun) -> Option<Bands> {
    let mut sample = Sample::with(run, BAND_SAMPLES, 0, None)?;
    Some(sample.bands())
}

/// What takes longer than the bands of the totals, over [`DETAIL_SAMPLES`] points.
pub fn band_detail(run: &CompiledRun) -> Option<BandDetail> {
    let leads = |shares: &[Share]| shares.first().map(|share| share.input);
    let mut sample = Sample::of(run, DETAIL_SAMPLES, run.elements.len())?;
    let [airflow_shares, back_pressure_shares] =
        shares(&sample.quantiles, [&sample.airflow, &sample.back_pressure]);
    let first = ..BAND_SAMPLES;
    let [sooner] = shares(&sample.quantiles[first], [&sample.back_pressure[first]]);
    let elements = sample.elements.iter_mut();
    let elements = elements.map(|(loss, equivalent_length)| ElementBands {
        loss: Band::of(loss),
        equivalent_length: Band::of(equivalent_length),
    });
    Some(BandDetail {
        elements: elements.collect(),
        leading_share_is_settled: leads(&sooner) == leads(&back_pressure_shares),
        airflow_shares,
        back_pressure_shares,
    })
}

/// The figures of a run at many draws, one list a figure.
struct Sample {
    quantiles: Vec<[f64; INPUTS]>,
    airflow: Vec<f64>,
    back_pressure: Vec<f64>,
    velocity: Vec<f64>,
    loss: Vec<f64>,
    equivalent_length: Vec<f64>,
    /// Loss and equivalent length of each element, where they are wanted.
    elements: Vec<(Vec<f64>, Vec<f64>)>,
}

impl Sample {
    fn of(run: &CompiledRun, count: usize, elements: usize) -> Option<Self> {
        // The likely run's temperatures serve every draw.
        let air = point_with(run, &run.values(&Draw::LIKELY))
            .ok()?
            .heat
            .map_or_else(|| run.air(), |profile| profile.air);
        Self::with(run, count, elements, Some(&air))
    }

    fn bands(&mut self) -> Bands {
        Bands {
            airflow: Band::of(&mut self.airflow),
            back_pressure: Band::of(&mut self.back_pressure),
            velocity: Band::of(&mut self.velocity),
            loss: Band::of(&mut self.loss),
            equivalent_length: Band::of(&mut self.equivalent_length),
        }
    }

    /// The figures in `air`, or with none in each draw's own.
    #[allow(clippy::cast_precision_loss, reason = "a few thousand points")]
    fn with(
        run: &CompiledRun,
        count: usize,
        elements: usize,
        air: Option<&AirAlong>,
    ) -> Option<Self> {
        let list = || Vec::with_capacity(count);
        let mut sample = Self {
            quantiles: Vec::with_capacity(count),
            airflow: list(),
            back_pressure: list(),
            velocity: list(),
            loss: list(),
            equivalent_length: list(),
            elements: (0..elements).map(|_| (list(), list())).collect(),
        };
        // The points stand at the low end of the cells that they fill: half a cell on is the middle.
        let half_a_cell = 0.5 / count as f64;
        for point in Sobol::default().take(count) {
            let mut quantiles = [0.0; INPUTS];
            quantiles.copy_from_slice(&point[..INPUTS]);
            for quantile in &mut quantiles {
                *quantile += half_a_cell;
            }
            let values = run.values(&Draw::at(quantiles));
            let own;
            let (at, air) = if let Some(air) = air {
                (point_in(run, &values, air, None).ok()?.0, air)
            } else {
                let point = point_with(run, &values).ok()?;
                own = point.heat.map_or_else(|| run.air(), |profile| profile.air);
                (point.evaluation, &own)
            };
            let per_diameter = at.velocity_pressure * at.friction_factor;
            if elements > 0 {
                let mut columns = sample.elements.iter_mut().rev();
                run.each_from_end(at.airflow_at_end, &values, air, |_, passage| {
                    if let Some((losses, lengths)) = columns.next() {
                        losses.push(passage.loss.pascals());
                        lengths.push((run.diameter * (passage.loss / per_diameter)).metres());
                    }
                });
            }
            sample.quantiles.push(quantiles);
            sample.airflow.push(at.airflow.cubic_metres_per_second());
            sample.back_pressure.push(at.back_pressure.pascals());
            sample.velocity.push(at.velocity.metres_per_second());
            sample.loss.push(at.loss.pascals());
            let length = run.diameter * (at.loss / per_diameter);
            sample.equivalent_length.push(length.metres());
        }
        Some(sample)
    }
}

/// The value below which the share `at` of `values` lies, straight between neighbours.
#[allow(
    clippy::cast_precision_loss,
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "an index into a few thousand values"
)]
fn percentile(values: &mut [f64], at: f64) -> f64 {
    let place = at * (values.len() - 1) as f64;
    let (_, below, above) = values.select_nth_unstable_by(place as usize, f64::total_cmp);
    let below = *below;
    let above = above.iter().copied().min_by(f64::total_cmp);
    below + (above.unwrap_or(below) - below) * place.fract()
}
