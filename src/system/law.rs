//! How an element's loss follows from the air's state.

use super::bore::State;
use super::input::Values;
use crate::duct::elbow::{ElbowLaw, Method, mitre_reynolds_factor};
use crate::duct::{area_change, blockage, orifice, tables};
use crate::plan::{Input, TerminationKind};
use crate::source::Coefficient;
use crate::units::{Airflow, Density, Pressure};

/// How an element's loss is worked out. The velocity pressure is that of the element's own bore.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Law {
    /// K = f times so many diameters; low, likely and high where the length is an estimate.
    Straight(Coefficient),
    /// A smooth elbow with its spread of methods, or a segmented one.
    Elbow {
        law: ElbowLaw,
        spread: Option<(Method, (f64, f64))>,
        close: Option<Coefficient>,
    },
    /// A sharp mitre, by its K at high Reynolds number.
    SharpMitre { k: f64, close: Option<Coefficient> },
    /// Flexible duct bent by hand.
    BentFlexible {
        law: ElbowLaw,
        close: Option<Coefficient>,
    },
    /// A fixed K.
    AreaChange { k: f64 },
    /// A thin blockage.
    Blockage { k: f64 },
    /// So many segmented 90s, nobody knows how many.
    ConcealedElbows(Coefficient),
    /// A hood or cap, by its kind and the free share of its opening.
    Termination { kind: TerminationKind, free: f64 },
    /// A gap of so many m², through which air leaves the run.
    Leak { free_area: f64 },
    /// The port of a recessed wall box.
    WallBox,
    /// An opening of so many m² from the house, with the room's density.
    MakeUpAir { free_area: f64, density: Density },
}

impl Law {
    /// The loss of total pressure.
    pub(super) fn loss(&self, airflow: Airflow, state: &State, values: &Values) -> Pressure {
        match self {
            Self::MakeUpAir { free_area, density } => {
                let discharge = values.get(Input::MakeUpDischarge);
                orifice::pressure_drop(airflow, *free_area, discharge, *density)
            }
            Self::Termination {
                kind: TerminationKind::WallHood,
                ..
            } => {
                let lift = Pressure::from_pascals(values.get(Input::FlapWeight));
                state.velocity_pressure * self.coefficient(state, values) + lift
            }
            _ => state.velocity_pressure * self.coefficient(state, values),
        }
    }

    /// K; nought for what has none.
    pub(super) fn coefficient(&self, state: &State, values: &Values) -> f64 {
        let beside = |close: &Option<Coefficient>| {
            close
                .as_ref()
                .map_or(1.0, |factor| values.of_element(Input::CloseElbows, factor))
        };
        let bend = |law: &ElbowLaw| {
            let k_90 = values.get(Input::SegmentedElbow);
            law.loss_coefficient(state.wall_friction, state.reynolds, k_90)
        };
        match self {
            Self::Straight(diameters) => {
                state.friction_factor * values.of_element(Input::Estimates, diameters)
            }
            Self::Elbow { law, spread, close } => {
                let method = spread.map_or(1.0, |(method, (low, high))| {
                    let coefficient = Coefficient {
                        low,
                        likely: 1.0,
                        high,
                        source: method.source(),
                    };
                    values.of_element(Input::SmoothElbow, &coefficient)
                });
                bend(law) * method * beside(close)
            }
            Self::SharpMitre { k, close } => {
                let factor = values.get(Input::SharpMitre) * beside(close);
                k * factor * mitre_reynolds_factor(state.reynolds)
            }
            Self::BentFlexible { law, close } => {
                bend(law) * values.get(Input::BentFlexible) * beside(close)
            }
            Self::AreaChange { k } => *k,
            Self::Blockage { k } => k * values.get(Input::Blockage),
            Self::ConcealedElbows(count) => {
                values.get(Input::SegmentedElbow) * values.of_element(Input::Estimates, count)
            }
            Self::Termination { kind, free } => {
                let whole = termination_input(*kind).map_or(1.0, |input| values.get(input));
                blockage::at_end(*free, whole)
            }
            Self::WallBox => values.get(Input::WallBox),
            Self::Leak { .. } | Self::MakeUpAir { .. } => 0.0,
        }
    }

    /// The coefficient that the loss rests on, to be shown with its source: K of a fitting at this
    /// state; a straight's roughness, m; an opening's discharge coefficient. `values` are the likely
    /// ones of `coefficients`.
    pub(super) fn grounds(
        &self,
        state: &State,
        coefficients: &[Coefficient; super::input::INPUTS],
        values: &Values,
        roughness: Input,
    ) -> Coefficient {
        let of = |input: Input| coefficients[input as usize];
        let likely = self.coefficient(state, values);
        let scaled = |factor: Coefficient| Coefficient {
            low: likely * factor.low / factor.likely,
            likely,
            high: likely * factor.high / factor.likely,
            source: factor.source,
        };
        let close = |coefficient: Coefficient, close: &Option<Coefficient>| match close {
            None => coefficient,
            Some(factor) => Coefficient {
                low: coefficient.low * factor.low,
                high: coefficient.high * factor.high,
                ..coefficient
            },
        };
        let exact = |source| Coefficient {
            low: likely,
            likely,
            high: likely,
            source,
        };
        match self {
            Self::Straight(_) => of(roughness),
            Self::Elbow {
                spread: Some((method, (low, high))),
                close: beside,
                ..
            } => {
                let methods = Coefficient {
                    low: likely * low,
                    likely,
                    high: likely * high,
                    source: method.source(),
                };
                close(methods, beside)
            }
            Self::Elbow {
                law,
                spread: None,
                close: beside,
            } => {
                let k_90 = of(Input::SegmentedElbow);
                let k = |k_90: f64| law.loss_coefficient(state.wall_friction, state.reynolds, k_90);
                let segmented = Coefficient {
                    low: k(k_90.low),
                    likely,
                    high: k(k_90.high),
                    source: k_90.source,
                };
                close(segmented, beside)
            }
            Self::SharpMitre { close: beside, .. } => close(scaled(of(Input::SharpMitre)), beside),
            Self::BentFlexible { close: beside, .. } => {
                close(scaled(of(Input::BentFlexible)), beside)
            }
            Self::AreaChange { .. } => exact(&area_change::SOURCE),
            Self::Blockage { .. } => scaled(of(Input::Blockage)),
            Self::ConcealedElbows(count) => {
                let k_90 = of(Input::SegmentedElbow);
                Coefficient {
                    low: k_90.low * count.low,
                    likely,
                    high: k_90.high * count.high,
                    source: k_90.source,
                }
            }
            Self::Termination { kind, free } => match termination_input(*kind) {
                None => exact(&tables::termination::OPEN_END_SOURCE),
                Some(input) => {
                    let whole = of(input);
                    Coefficient {
                        low: blockage::at_end(*free, whole.low),
                        likely,
                        high: blockage::at_end(*free, whole.high),
                        source: whole.source,
                    }
                }
            },
            Self::Leak { .. } => of(Input::LeakDischarge),
            Self::WallBox => of(Input::WallBox),
            Self::MakeUpAir { .. } => of(Input::MakeUpDischarge),
        }
    }
}

/// The input that is K of a termination; none for a bare end, whose K is exact.
fn termination_input(kind: TerminationKind) -> Option<Input> {
    match kind {
        TerminationKind::WallHood => Some(Input::WallHood),
        TerminationKind::LouvredHood => Some(Input::LouvredHood),
        TerminationKind::RoofCap => Some(Input::RoofCap),
        TerminationKind::OpenEnd => None,
    }
}
