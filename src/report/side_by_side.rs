//! Two runs side by side: the totals of both, and the elements that are not the same in both.

use super::Figures;
use crate::plan::{ElementId, Plan, Quantity};
use crate::system::{Band, CompiledRun, Drawn, ElementKind};
use crate::units::{Airflow, Length, Pressure, Shown, UnitSystem, Velocity};
use serde::{Deserialize, Serialize};

/// The figures of two runs, joined for a table.
#[derive(Debug, Clone, PartialEq)]
pub struct SideBySide {
    /// One entry a quantity, in SI.
    pub totals: Vec<TotalPair>,
    /// Each element that is not the same in both, along the second run; what only the first has stands
    /// where it was.
    pub elements: Vec<ElementPair>,
    /// How many elements are the same in both.
    pub same: usize,
    /// What those lose in the first and in the second; none where no air moves.
    pub same_loss: [Option<Pressure>; 2],
}

/// A total of both runs, in SI; none where no air moves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TotalPair {
    /// Which.
    pub quantity: Quantity,
    /// Of the first run.
    pub first: Option<f64>,
    /// Of the second run.
    pub second: Option<f64>,
}

impl TotalPair {
    /// What the second has more than the first.
    pub fn more(&self) -> Option<f64> {
        Some(self.second? - self.first?)
    }

    /// The same as a share of the first; none where that is nought.
    pub fn more_as_share(&self) -> Option<f64> {
        let first = self.first.filter(|first| first.abs() > 0.0)?;
        Some(self.more()? / first.abs())
    }
}

/// An element of two runs.
#[derive(Debug, Clone, PartialEq)]
pub struct ElementPair {
    /// Its name.
    pub id: ElementId,
    /// In the first run; none where it is not there.
    pub first: Option<ElementLoss>,
    /// In the second run; none where it is not there.
    pub second: Option<ElementLoss>,
}

/// What an element is and loses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ElementLoss {
    /// What it is.
    pub element: ElementKind,
    /// Loss of total pressure; none where no air moves.
    pub loss: Option<Pressure>,
}

/// How sure it is what the second run has more than the first: both at the same draws of every uncertain
/// input, so that what they share cancels.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct DifferenceBands {
    /// Of airflow, m³/s.
    pub airflow: Band,
    /// Of back pressure, Pa.
    pub back_pressure: Band,
}

/// The bands of the difference of two plans; none where a drawn blower moves no air.
pub fn difference_bands(first: &Plan, second: &Plan) -> Option<DifferenceBands> {
    let drawn = |plan: &Plan| Drawn::of(&CompiledRun::of(plan).0);
    let (airflow, back_pressure) = drawn(second)?.over(&drawn(first)?);
    Some(DifferenceBands {
        airflow,
        back_pressure,
    })
}

/// Both runs' figures, joined.
pub fn side_by_side(first: &Figures, second: &Figures) -> SideBySide {
    let totals = Quantity::ALL.map(|quantity| TotalPair {
        quantity,
        first: quantity_of(first, quantity),
        second: quantity_of(second, quantity),
    });
    let mut pairs = pairs(first, second);
    let is_same = |pair: &ElementPair| match (&pair.first, &pair.second) {
        (Some(first), Some(second)) => first.element == second.element,
        _ => false,
    };
    let sum = |of: fn(&ElementPair) -> Option<ElementLoss>| {
        let same = pairs.iter().filter(|pair| is_same(pair));
        let mut losses = same.map(|pair| of(pair).and_then(|at| at.loss));
        losses.try_fold(Pressure::ZERO, |sum, loss| Some(sum + loss?))
    };
    let same_loss = [sum(|pair| pair.first), sum(|pair| pair.second)];
    let same = pairs.iter().filter(|pair| is_same(pair)).count();
    pairs.retain(|pair| !is_same(pair));
    SideBySide {
        totals: totals.to_vec(),
        elements: pairs,
        same,
        same_loss,
    }
}

/// Every element of either run by its name, along the second.
fn pairs(first: &Figures, second: &Figures) -> Vec<ElementPair> {
    let loss = |figures: &Figures, at: usize| {
        let element = &figures.elements[at];
        ElementLoss {
            element: element.element,
            loss: element.air.as_ref().map(|air| air.loss),
        }
    };
    let place = |figures: &Figures, id: &ElementId| {
        let mut elements = figures.elements.iter();
        elements.position(|element| element.id == *id)
    };
    let mut pairs = Vec::new();
    // What only the first has comes before the next element that both have.
    let mut told = 0;
    let only_first = |from: usize, until: usize, pairs: &mut Vec<ElementPair>| {
        for at in from..until {
            let id = &first.elements[at].id;
            if place(second, id).is_none() {
                pairs.push(ElementPair {
                    id: id.clone(),
                    first: Some(loss(first, at)),
                    second: None,
                });
            }
        }
    };
    for (at, element) in second.elements.iter().enumerate() {
        let before = place(first, &element.id);
        if let Some(before) = before.filter(|before| *before >= told) {
            only_first(told, before, &mut pairs);
            told = before + 1;
        }
        pairs.push(ElementPair {
            id: element.id.clone(),
            first: before.map(|before| loss(first, before)),
            second: Some(loss(second, at)),
        });
    }
    only_first(told, first.elements.len(), &mut pairs);
    pairs
}

/// A run's figure for `quantity`, in SI; none where no air moves.
pub fn quantity_of(figures: &Figures, quantity: Quantity) -> Option<f64> {
    let totals = figures.totals.as_ref();
    Some(match quantity {
        Quantity::Airflow => totals?.airflow.cubic_metres_per_second(),
        Quantity::BackPressure => totals?.back_pressure.pascals(),
        Quantity::Velocity => totals?.velocity.metres_per_second(),
        Quantity::Loss => totals?.loss.pascals(),
        Quantity::Draught => totals?.stack.pascals(),
        Quantity::DevelopedLength => totals?.developed_length.metres(),
        Quantity::EquivalentLength => totals?.equivalent_length.metres(),
        // A code counts a run through which no air moves too.
        Quantity::CodeLength => figures.code.with_deductions.metres(),
    })
}

/// A figure of `quantity` as the page shows it.
pub fn quantity_shown(units: UnitSystem, quantity: Quantity, figure: f64) -> Shown {
    match quantity {
        Quantity::Airflow => units.airflow(Airflow::from_cubic_metres_per_second(figure)),
        Quantity::BackPressure | Quantity::Loss | Quantity::Draught => {
            units.pressure(Pressure::from_pascals(figure))
        }
        Quantity::Velocity => units.velocity(Velocity::from_metres_per_second(figure)),
        Quantity::EquivalentLength => units.equivalent_length(Length::from_metres(figure)),
        Quantity::DevelopedLength | Quantity::CodeLength => {
            units.length(Length::from_metres(figure))
        }
    }
}
