//! Code and air side by side: what each element counts for in the code, and what it costs in air.

use super::CodeLength;
use crate::plan::ElementId;
use crate::system::Ledger;
use crate::units::Length;
use serde::Serialize;

/// An element counted twice over.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TwoLengths {
    /// The element.
    pub element: ElementId,
    /// The straight rigid duct that loses as much.
    #[serde(rename = "equivalent_length_m")]
    pub air: Length,
    /// Its path and its deduction, as the code counts them; none where the code does not count it.
    #[serde(rename = "code_length_m", skip_serializing_if = "Option::is_none")]
    pub code: Option<Length>,
}

impl TwoLengths {
    /// How many times longer air finds it than the code; none where the code does not count it.
    pub fn factor(&self) -> Option<f64> {
        let code = self.code?;
        (code.metres() > 0.0 && self.air.metres() > 0.0).then(|| self.air / code)
    }
}

/// Where code and air part.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Disagreement {
    /// Every element, in the order in which the air meets them.
    pub elements: Vec<TwoLengths>,
    /// The run's physical equivalent length.
    #[serde(rename = "equivalent_length_m")]
    pub air: Length,
    /// The run's code length.
    #[serde(rename = "code_length_m")]
    pub code: Length,
    /// Of the elements that the code counts, the one that they differ on by the greatest factor either
    /// way.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub most: Option<ElementId>,
    /// Of those that it does not count, the one that costs the most air.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub uncounted: Option<ElementId>,
}

impl Disagreement {
    /// Of a run whose ledger and code length are given.
    pub fn of(ledger: &Ledger, length: &CodeLength) -> Self {
        let rows = ledger.rows.iter();
        let elements: Vec<TwoLengths> = rows
            .map(|row| TwoLengths {
                element: row.element.id.clone(),
                air: row.equivalent_length,
                code: length.counted(&row.element.id),
            })
            .collect();
        let apart = |it: &TwoLengths| it.factor().map_or(0.0, |factor| factor.ln().abs());
        let most = elements
            .iter()
            .filter(|it| apart(it) > 0.0)
            .max_by(|one, other| apart(one).total_cmp(&apart(other)));
        let uncounted = elements
            .iter()
            .filter(|it| it.code.is_none() && it.air > Length::ZERO)
            .max_by(|one, other| one.air.metres().total_cmp(&other.air.metres()));
        Self {
            air: elements.iter().map(|it| it.air).sum(),
            code: length.with_deductions,
            most: most.map(|it| it.element.clone()),
            uncounted: uncounted.map(|it| it.element.clone()),
            elements,
        }
    }

    /// The element called `id`.
    pub fn element(&self, id: &ElementId) -> Option<&TwoLengths> {
        self.elements.iter().find(|it| it.element == *id)
    }
}
