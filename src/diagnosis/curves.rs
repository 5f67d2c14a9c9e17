//! One draw of the uncertain inputs: the run's loss as a function of airflow, and its blower.

use crate::plan::{Input, TerminationKind};
use crate::system::{AirAlong, CompiledRun, Draw, ElementKind};
use crate::units::Airflow;

/// Airflows at which the losses are worked out, m³/s: from the first, evenly.
const NODES: usize = 16;
/// Of the computation.
const FIRST_NODE: f64 = 0.005;
const NODE_STEP: f64 = 0.008;
/// The least and greatest airflow that a solution may have, m³/s. Of the computation.
const LEAST: f64 = 1e-5;
/// Of the computation.
const GREATEST: f64 = 0.4;
/// Steps of Newton's method: it starts on the side from which it runs straight in.
const STEPS: usize = 24;
/// An airflow is found to this, m³/s. Of the computation.
const TOLERANCE: f64 = 1e-8;

/// A run under one draw. Resistances are in Pa per (m³/s)².
#[derive(Debug, Clone)]
pub(super) struct Curves {
    /// The resistance of all elements before the one at this place, at each node.
    before: Vec<[f64; NODES]>,
    /// The pressure that lifts the flap, Pa.
    pub flap: f64,
    /// Of the opening for make-up air that the plan has.
    pub make_up: f64,
    /// Of a free area of 1 m² for make-up air.
    pub unit_opening: f64,
    /// The airflow that 1 Pa drives through a leak of 1 m².
    pub unit_leak: f64,
    /// A factor on the K of a blockage.
    pub blockage: f64,
    /// Blower: free airflow, m³/s.
    pub free_airflow: f64,
    /// Blower: static rise at no airflow and the air's density, Pa.
    pub shut_off: f64,
    /// Blower: exponent.
    pub exponent: f64,
    /// Where in its cell each fault's severity lies, 0..1.
    pub within_cell: [f64; 2],
    /// What one leak's and one opening's place in their cell is, 0..1.
    pub within_other: f64,
    /// Where between its least and its greatest the exhaust's temperature lies, -1..1.
    pub exhaust_off: f64,
}

impl Curves {
    /// The curves of a run without leaks whose air is `air`. `room_density` in kg/m³; `within` has the
    /// quantiles of what is no input of the plan.
    pub fn of(
        run: &CompiledRun,
        draw: &Draw,
        room_density: f64,
        within: [f64; 4],
        air: &AirAlong,
    ) -> Self {
        let count = run.elements.len();
        let mut before = vec![[0.0; NODES]];
        let is_make_up =
            |index: usize| matches!(run.elements[index].kind, ElementKind::MakeUpAir { .. });
        let has_flap = matches!(
            run.elements.last().map(|end| end.kind),
            Some(ElementKind::Termination {
                termination: TerminationKind::WallHood,
                ..
            })
        );
        let flap = if has_flap {
            run.value(Input::FlapWeight, draw)
        } else {
            0.0
        };
        before.extend(
            (0..count)
                .filter(|index| !is_make_up(*index))
                .map(|_| [0.0; NODES]),
        );
        let mut make_up = 0.0;
        for node in 0..NODES {
            let airflow = airflow_of(node);
            let losses = run.losses_in(Airflow::from_cubic_metres_per_second(airflow), draw, air);
            let mut sum = 0.0;
            let mut next = before.iter_mut().skip(1);
            for (index, loss) in losses.iter().enumerate() {
                let mut loss = loss.pascals();
                if index + 1 == count {
                    loss -= flap;
                }
                let resistance = loss / (airflow * airflow);
                if is_make_up(index) {
                    make_up = resistance;
                    continue;
                }
                sum += resistance;
                if let Some(nodes) = next.next() {
                    nodes[node] = sum;
                }
            }
        }
        let density = run.density.kilograms_per_cubic_metre();
        let discharge = run.value(Input::MakeUpDischarge, draw);
        Self {
            before,
            flap,
            make_up,
            unit_opening: room_density / 2.0 / (discharge * discharge),
            unit_leak: run.value(Input::LeakDischarge, draw) * (2.0 / density).sqrt(),
            blockage: run.value(Input::Blockage, draw),
            free_airflow: run.value(Input::BlowerFreeAirflow, draw),
            shut_off: run.value(Input::BlowerShutOffPressure, draw) * density
                / crate::duct::tables::blower::STANDARD_DENSITY,
            exponent: run.value(Input::BlowerExponent, draw),
            within_cell: [within[0], within[1]],
            within_other: within[2],
            exhaust_off: triangular(within[3]),
        }
    }

    /// The resistance of all elements before the one at `place`, at an airflow.
    pub fn before(&self, place: usize, airflow: f64) -> f64 {
        self.between(0, place, airflow)
    }

    /// The resistance of the elements from one place to before another, at an airflow.
    pub fn between(&self, from: usize, to: usize, airflow: f64) -> f64 {
        let at = ((airflow - FIRST_NODE) / NODE_STEP).clamp(0.0, LAST);
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "between nought and the number of nodes"
        )]
        let node = (at as usize).min(NODES - 2);
        #[allow(clippy::cast_precision_loss, reason = "a few nodes")]
        let share = at - node as f64;
        let (from, to) = (&self.before[from], &self.before[to]);
        let here = to[node] - from[node];
        here + (to[node + 1] - from[node + 1] - here) * share
    }

    /// The blower's static rise, Pa, where it turns at the share `speed` of its speed (fan laws).
    pub fn rise(&self, airflow: f64, speed: f64) -> f64 {
        let share = (airflow / (self.free_airflow * speed)).max(0.0);
        self.shut_off * speed * speed * (1.0 - share.powf(self.exponent))
    }

    /// The airflow at which the blower's rise equals `constant` and `resistance(airflow)` times the
    /// airflow squared; next to none where it cannot. `start` must lie above it for the fastest way.
    pub fn airflow(
        &self,
        constant: f64,
        speed: f64,
        start: f64,
        resistance: impl Fn(f64) -> f64,
    ) -> f64 {
        let free = self.free_airflow * speed;
        let shut_off = self.shut_off * speed * speed;
        if shut_off <= constant {
            return LEAST;
        }
        let mut airflow = start;
        for _ in 0..STEPS {
            let share = (airflow / free).powf(self.exponent);
            let resistance = resistance(airflow);
            let spare = shut_off * (1.0 - share) - constant - resistance * airflow * airflow;
            let slope =
                shut_off * self.exponent * share / airflow + 2.0 * resistance.max(0.0) * airflow;
            let next = (airflow + spare / slope).clamp(LEAST, GREATEST);
            let moved = (next - airflow).abs();
            airflow = next;
            if moved < TOLERANCE {
                break;
            }
        }
        airflow
    }
}

/// The quantile `at` of a triangle over -1, 0 and 1.
fn triangular(at: f64) -> f64 {
    if at < 0.5 {
        (2.0 * at).sqrt() - 1.0
    } else {
        1.0 - (2.0 * (1.0 - at)).sqrt()
    }
}

/// Of the computation.
#[allow(clippy::cast_precision_loss, reason = "a few nodes")]
const LAST: f64 = (NODES - 1) as f64;

#[allow(clippy::cast_precision_loss, reason = "a few nodes")]
fn airflow_of(node: usize) -> f64 {
    FIRST_NODE + NODE_STEP * node as f64
}
