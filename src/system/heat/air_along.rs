//! The air's density along the run.

use crate::units::{Density, Viscosity};

/// The air in one element.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LocalAir {
    /// Volume that it takes here over that at the dryer's outlet.
    pub expansion: f64,
    /// Density.
    pub density: Density,
}

/// The air of every element of a run.
#[derive(Debug, Clone, PartialEq)]
pub struct AirAlong {
    /// At the dryer's outlet, and everywhere where the list is empty.
    pub outlet: LocalAir,
    /// At the run's mean temperature: at one mass flow the Reynolds number hangs on nothing else that
    /// changes along the run, and 1 % of it moves friction by 0.2 %.
    pub viscosity: Viscosity,
    /// In the order of the elements.
    pub elements: Vec<LocalAir>,
}

impl AirAlong {
    /// Air that stays as it leaves the dryer.
    pub const fn constant(density: Density, viscosity: Viscosity) -> Self {
        Self {
            outlet: LocalAir {
                expansion: 1.0,
                density,
            },
            viscosity,
            elements: Vec::new(),
        }
    }

    /// The air of the element at this place of the run.
    pub fn at(&self, index: usize) -> &LocalAir {
        self.elements.get(index).unwrap_or(&self.outlet)
    }
}
