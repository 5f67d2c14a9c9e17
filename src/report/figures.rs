//! Every figure of a plan, joined once: the page, the terminal tool and every file read it here.

use super::code_figures::{CheckFigures, CodeFigures};
use super::heat_figures::{self, ElementHeatFigures, HeatFigures};
use crate::plan::{BendMethod, ElementId, Input, Plan};
use crate::rules::{CodeLength, DeductionNote, code_check};
use crate::source::{Coefficient, Reach, Standing};
use crate::system::{Assessment, Blower, ElementKind, Finding, Subject, assess, subject_of};
use crate::units::{Airflow, Density, Length, Pressure, Velocity, Viscosity};
use serde::Serialize;

/// All figures of a plan; as JSON each field's name carries its SI unit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Figures {
    /// The totals; none where no air moves.
    pub totals: Option<Totals>,
    /// One entry an element, in the order in which the air meets them.
    pub elements: Vec<ElementFigures>,
    /// The code length.
    pub code: CodeFigures,
    /// What every rule of the chosen set says, and the sets side by side.
    pub code_check: CheckFigures,
    /// What the physics rests on that is not published, in the order in which the air meets it.
    pub unpublished: Vec<(Subject, Standing)>,
    /// Temperature and moisture; left out where the air keeps its temperature or none moves.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heat: Option<HeatFigures>,
    /// What is wrong or doubtful.
    pub findings: Vec<Finding>,
}

impl Figures {
    /// What is known of the element called `id`.
    pub fn element(&self, id: &ElementId) -> Option<&ElementFigures> {
        self.elements.iter().find(|element| element.id == *id)
    }

    /// The element with the loss of this rank, 1 for the greatest.
    pub fn ranked(&self, rank: usize) -> Option<(&ElementFigures, &AirFigures)> {
        let mut elements = self.elements.iter();
        elements.find_map(|element| {
            let air = element.air.as_ref().filter(|air| air.rank == rank)?;
            Some((element, air))
        })
    }
}

/// The totals of a run at its operating point, at likely inputs.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Totals {
    /// At the outlet's density.
    #[serde(rename = "airflow_m3_per_s")]
    pub airflow: Airflow,
    /// What of it reaches the termination: less than all where joints leak.
    #[serde(rename = "airflow_at_end_m3_per_s")]
    pub airflow_at_end: Airflow,
    /// Static pressure at the dryer's outlet.
    #[serde(rename = "back_pressure_pa")]
    pub back_pressure: Pressure,
    /// Total pressure at the dryer's outlet.
    #[serde(rename = "total_pressure_pa")]
    pub total_pressure: Pressure,
    /// Velocity pressure in the duct.
    #[serde(rename = "velocity_pressure_pa")]
    pub velocity_pressure: Pressure,
    /// Sum of the elements' losses.
    #[serde(rename = "loss_pa")]
    pub loss: Pressure,
    /// What the weight of the air adds; a warm riser takes off.
    #[serde(rename = "stack_pa")]
    pub stack: Pressure,
    /// Height of the termination above the outlet.
    #[serde(rename = "rise_m")]
    pub rise: Length,
    /// The house's pressure less the outdoors'; what it is above nought helps the blower.
    #[serde(rename = "house_pressure_pa")]
    pub house_pressure: Pressure,
    /// Mean velocity in the duct.
    #[serde(rename = "velocity_m_per_s")]
    pub velocity: Velocity,
    /// Reynolds number in the duct.
    pub reynolds: f64,
    /// Darcy friction factor of the duct.
    pub friction_factor: f64,
    /// Inside diameter at the dryer's outlet.
    #[serde(rename = "diameter_m")]
    pub diameter: Length,
    /// The blower, unless the airflow is stated.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub blower: Option<Blower>,
    /// Of the exhaust.
    #[serde(rename = "density_kg_per_m3")]
    pub density: Density,
    /// Of the air outdoors.
    #[serde(rename = "outdoor_density_kg_per_m3")]
    pub outdoor_density: Density,
    /// Of the exhaust.
    #[serde(rename = "viscosity_pa_s")]
    pub viscosity: Viscosity,
    /// Straights and arcs together.
    #[serde(rename = "developed_length_m")]
    pub developed_length: Length,
    /// Physical equivalent length of all elements.
    #[serde(rename = "equivalent_length_m")]
    pub equivalent_length: Length,
}

/// One element's figures.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ElementFigures {
    /// Its name.
    pub id: ElementId,
    /// What it is.
    pub element: ElementKind,
    /// Along the centre line.
    #[serde(rename = "developed_length_m")]
    pub developed_length: Length,
    /// What it costs in air; none where no air moves.
    pub air: Option<AirFigures>,
    /// What it does to temperature and moisture; left out where that is not followed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heat: Option<ElementHeatFigures>,
    /// What the code deducts for it; none for what has no deduction.
    #[serde(rename = "code_deduction_m")]
    pub code_deduction: Option<Length>,
    /// How the code's table was read for it.
    pub code_notes: Vec<DeductionNote>,
    /// Whether its angle and radius are inside the loss formula's range.
    pub reach: Reach,
}

/// What an element costs in air.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AirFigures {
    /// Loss of total pressure.
    #[serde(rename = "loss_pa")]
    pub loss: Pressure,
    /// Share of the sum of losses, 0..1.
    pub share: f64,
    /// 1 for the costliest.
    pub rank: usize,
    /// The straight rigid duct that would lose as much.
    #[serde(rename = "equivalent_length_m")]
    pub equivalent_length: Length,
    /// Velocity pressure that its loss is on.
    #[serde(rename = "velocity_pressure_pa")]
    pub velocity_pressure: Pressure,
    /// Darcy friction factor of its duct.
    pub friction_factor: f64,
    /// Hydraulic diameter of its duct.
    #[serde(rename = "diameter_m")]
    pub diameter: Length,
    /// What its loss rests on: K of a fitting, or a straight's roughness in m.
    pub coefficient: Coefficient,
    /// What of the airflow leaves the run by it, for a leak; negative where air is drawn in.
    #[serde(rename = "escaped_m3_per_s")]
    pub escaped: Airflow,
    /// K by each published method, for a smooth elbow; none where a method does not cover it.
    pub methods: Vec<(BendMethod, Option<f64>)>,
}

/// The figures of `plan`, with the assessment that they came from.
pub fn figures(plan: &Plan) -> (Figures, Assessment) {
    let assessment = assess(plan);
    let check = code_check(plan, &assessment);
    let figures = Figures {
        totals: totals(&assessment),
        elements: elements(&assessment, &check.length),
        code: CodeFigures::of(&check.length),
        code_check: CheckFigures::of(check),
        unpublished: unpublished(&assessment),
        heat: HeatFigures::of(&assessment, plan.exhaust.phase),
        findings: assessment.findings.clone(),
    };
    (figures, assessment)
}

fn totals(assessment: &Assessment) -> Option<Totals> {
    let (point, ledger) = assessment.working.as_ref()?;
    let at = point.evaluation;
    let run = &assessment.run;
    Some(Totals {
        diameter: assessment.run.diameter,
        blower: point.blower,
        airflow: at.airflow,
        airflow_at_end: at.airflow_at_end,
        back_pressure: at.back_pressure,
        total_pressure: at.total_pressure,
        velocity_pressure: at.velocity_pressure,
        loss: at.loss,
        stack: at.stack,
        rise: run.rise,
        house_pressure: run.house_pressure,
        velocity: at.velocity,
        reynolds: at.reynolds,
        friction_factor: at.friction_factor,
        density: run.density,
        outdoor_density: run.outdoor_density,
        viscosity: run.viscosity,
        developed_length: run
            .elements
            .iter()
            .map(|element| element.developed_length)
            .sum(),
        equivalent_length: ledger.rows.iter().map(|row| row.equivalent_length).sum(),
    })
}

/// What moves the air and what each loss rests on, as far as no published source gives it; each once.
fn unpublished(assessment: &Assessment) -> Vec<(Subject, Standing)> {
    let mut found = Vec::new();
    let Some((point, ledger)) = &assessment.working else {
        return found;
    };
    let blower = point.blower.map(|_| {
        let coefficient = assessment.run.coefficients[Input::BlowerFreeAirflow as usize];
        coefficient.source
    });
    let losses = ledger.rows.iter().map(|row| row.coefficient.source);
    for source in blower.into_iter().chain(losses) {
        let subject = subject_of(source).filter(|_| source.standing != Standing::Published);
        if let Some(subject) = subject
            && !found.contains(&(subject, source.standing))
        {
            found.push((subject, source.standing));
        }
    }
    found
}

fn elements(assessment: &Assessment, code: &CodeLength) -> Vec<ElementFigures> {
    let row = |index: usize| {
        let (_, ledger) = assessment.working.as_ref()?;
        let row = ledger.rows.get(index)?;
        Some(AirFigures {
            loss: row.loss,
            share: row.share,
            rank: row.rank,
            equivalent_length: row.equivalent_length,
            velocity_pressure: row.state.velocity_pressure,
            friction_factor: row.state.friction_factor,
            diameter: Length::from_metres(row.element.bore.diameter),
            coefficient: row.coefficient,
            escaped: row.escaped,
            methods: row.methods(),
        })
    };
    assessment
        .run
        .elements
        .iter()
        .enumerate()
        .map(|(index, element)| {
            let deduction = code.deduction(&element.id);
            ElementFigures {
                id: element.id.clone(),
                element: element.kind,
                developed_length: element.developed_length,
                air: row(index),
                heat: heat_figures::profile(assessment)
                    .and_then(|profile| profile.elements.get(index))
                    .map(ElementHeatFigures::from),
                code_deduction: deduction.map(|deduction| deduction.length),
                code_notes: deduction.map_or_else(Vec::new, |deduction| deduction.notes.clone()),
                reach: element.reach,
            }
        })
        .collect()
}
