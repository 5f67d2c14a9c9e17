//! A candidate held against the present run by the full model.

use crate::numeric::Sobol;
use crate::plan::{ElementId, OutletSide, Plan, RunPath};
use crate::rules::{code_length, too_near};
use crate::system::{
    Assessment, CompiledRun, Draw, ElementKind, Finding, INPUTS, assess, operating_point,
};
use crate::units::Length;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// How many draws a gain's band is read from; both runs get the same ones.
const PAIRS: usize = 64;

/// One thing that a suggestion does, with what a sentence about it needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// The run is laid anew, to a wall by its id or with none to the roof.
    NewRoute {
        /// The wall.
        wall: Option<Arc<str>>,
    },
    /// The dryer's outlet goes to another side.
    OutletSide(OutletSide),
    /// The dryer is turned so much, deg clockwise.
    TurnDryer(f64),
    /// An elbow becomes a smooth one of a longer radius.
    LongRadius {
        /// Which.
        element: ElementId,
        /// Its new radius.
        #[serde(rename = "radius_m")]
        radius: Length,
    },
    /// A 90 becomes two 45s, so far off the corner.
    TwoFortyFives {
        /// Which.
        element: ElementId,
        /// From the old corner to each of the new ones.
        #[serde(rename = "off_m")]
        off: Length,
    },
    /// A flexible leg becomes rigid.
    RigidForFlexible {
        /// Which.
        element: ElementId,
    },
    /// Two bends that lead aside and back are left out, and what follows moves over.
    DropOffset {
        /// The first of the two.
        element: ElementId,
        /// How far the run led aside.
        #[serde(rename = "aside_m")]
        aside: Length,
        /// Whether the hood moves along its wall.
        moves_hood: bool,
    },
}

/// A run's figures, in SI.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Figures {
    /// Back pressure, Pa.
    pub back_pressure_pa: f64,
    /// Airflow at the outlet, m³/s.
    pub airflow_m3_per_s: f64,
    /// Length as the plan's rule set counts it, m.
    pub code_length_m: f64,
    /// Straights and arcs, m.
    pub developed_length_m: f64,
    /// Straights and elbows.
    pub parts: usize,
    /// Elbows.
    pub bends: usize,
}

/// A better run and what it gains.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Suggestion {
    /// The plan with it.
    pub plan: Plan,
    /// What changes.
    pub changes: Vec<Change>,
    /// The present run.
    pub before: Figures,
    /// The suggested one.
    pub after: Figures,
    /// 10th and 90th percentile of what the back pressure falls by, Pa, both runs at the same draws.
    pub gain_band_pa: Option<(f64, f64)>,
}

impl Suggestion {
    /// Whether nine draws in ten and more gain something.
    pub fn gain_is_larger_than_its_doubt(&self) -> bool {
        self.gain_band_pa.is_some_and(|(low, _)| low > 0.0)
    }
}

/// A plan worked out.
#[derive(Debug, Clone)]
pub(super) struct Candidate {
    pub plan: Plan,
    pub changes: Vec<Change>,
    pub figures: Figures,
    pub run: CompiledRun,
    /// What the full model finds no room for.
    pub faults: usize,
}

impl Candidate {
    /// None where the blower moves no air.
    pub fn of(plan: Plan, changes: Vec<Change>) -> Option<Self> {
        let assessment = assess(&plan);
        let path = RunPath::of(&plan);
        let faults = faults(&plan, &assessment, &path);
        let (point, _) = assessment.working.as_ref()?;
        let length = code_length(&plan, &assessment.run, &assessment.findings);
        let count = |is: fn(&ElementKind) -> bool| {
            let elements = assessment.run.elements.iter();
            elements.filter(|element| is(&element.kind)).count()
        };
        let bends = count(|kind| matches!(kind, ElementKind::Elbow { .. }));
        let straights = count(
            |kind| matches!(kind, ElementKind::Straight { length, .. } if *length > Length::ZERO),
        );
        let figures = Figures {
            back_pressure_pa: point.evaluation.back_pressure.pascals(),
            airflow_m3_per_s: point.evaluation.airflow.cubic_metres_per_second(),
            code_length_m: length.with_deductions.metres(),
            developed_length_m: path.developed_length().metres(),
            parts: straights + bends,
            bends,
        };
        Some(Self {
            plan,
            changes,
            figures,
            run: assessment.run,
            faults,
        })
    }

    /// The suggestion that it makes against `present`.
    pub fn against(&self, present: &Self) -> Suggestion {
        Suggestion {
            plan: self.plan.clone(),
            changes: self.changes.clone(),
            before: present.figures,
            after: self.figures,
            gain_band_pa: gain_band(&present.run, &self.run),
        }
    }
}

/// Clashes, elbows that overlap, points that coincide and openings too near.
fn faults(plan: &Plan, assessment: &Assessment, path: &RunPath) -> usize {
    let in_the_model = assessment.findings.iter().filter(|finding| {
        matches!(
            finding,
            Finding::NoRoom(_) | Finding::ElbowsOverlap { .. } | Finding::PointsCoincide { .. }
        )
    });
    in_the_model.count() + too_near(plan, path).len()
}

#[allow(clippy::cast_precision_loss, reason = "a few dozen draws")]
fn gain_band(before: &CompiledRun, after: &CompiledRun) -> Option<(f64, f64)> {
    let mut gains = Vec::with_capacity(PAIRS);
    for point in Sobol::default().take(PAIRS) {
        let mut quantiles = [0.0; INPUTS];
        quantiles.copy_from_slice(&point[..INPUTS]);
        for quantile in &mut quantiles {
            *quantile += 0.5 / PAIRS as f64;
        }
        let draw = Draw::at(quantiles);
        let pressure = |run| {
            let point = operating_point(run, &draw).ok()?;
            Some(point.evaluation.back_pressure.pascals())
        };
        gains.push(pressure(before)? - pressure(after)?);
    }
    gains.sort_by(f64::total_cmp);
    Some((gains[PAIRS / 10], gains[PAIRS - 1 - PAIRS / 10]))
}
