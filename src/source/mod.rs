//! Where a number comes from, and how sure it is.
//!
//! Knows nothing of formulas.

mod coefficient;
mod reach;

pub use coefficient::{Coefficient, Source, Standing};
pub use reach::{Ranged, Reach};
